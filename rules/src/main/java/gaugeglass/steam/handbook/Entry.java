package gaugeglass.steam.handbook;

import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import gaugeglass.steam.reckon.Worked;
import java.util.List;
import java.util.function.Function;

/** A reckoning that can be asked for by name. */
public final class Entry {
    private final String name;
    private final String title;
    private final String range;
    private final List<Input> inputs;
    private final List<String> example;
    private final Function<Told, Worked> work;

    Entry(
            String name,
            String title,
            String range,
            List<Input> inputs,
            List<String> example,
            Function<Told, Worked> work) {
        this.name = name;
        this.title = title;
        this.range = range;
        this.inputs = List.copyOf(inputs);
        this.example = List.copyOf(example);
        this.work = work;
    }

    /** What it is called: lower case with hyphens. */
    public String name() {
        return name;
    }

    /** What it reckons, as a phrase. */
    public String title() {
        return title;
    }

    /** Between which ends it answers, as a phrase; outside it refuses. */
    public String range() {
        return range;
    }

    /** What it wants to be told, in order. */
    public List<Input> inputs() {
        return inputs;
    }

    /** An example, as {@code name=value} pairs that it takes. */
    public List<String> example() {
        return example;
    }

    /**
     * Works it out.
     *
     * @param place what messages name as the place, say the command
     * @param pairs {@code name=value}
     * @throws Mistakes with everything that is wrong in the pairs, or with what lies outside the range
     */
    public Worked work(String place, List<String> pairs) {
        Told told = Told.read(place, inputs, pairs);
        try {
            return work.apply(told);
        } catch (IllegalArgumentException e) {
            throw new Mistakes(List.of(new Mistake(place, 0, 0, "", String.valueOf(e.getMessage()), "", "")));
        }
    }

    @Override
    public String toString() {
        return name;
    }
}
