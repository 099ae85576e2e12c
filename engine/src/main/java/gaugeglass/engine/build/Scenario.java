package gaugeglass.engine.build;

import gaugeglass.engine.Assessment.Word;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.State;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One proof of a card: a made-up visit and what must become of the card on it.
 *
 * @param card the card's id
 * @param name what is told apart by it among the card's scenarios
 * @param file the file it stands in
 * @param line its line there
 * @param date the day of the visit
 * @param given what was seen
 * @param expect what must become of the card at the end of the visit, by subject; the key {@link #ALL} stands for every
 *     subject
 * @param expectAsFound the same at arrival; empty where nothing was done on the visit
 * @param missing the items that must be named as wanting
 * @param onLimits the limits that a reading lies on exactly
 */
public record Scenario(
        String card,
        String name,
        String file,
        int line,
        LocalDate date,
        Observations given,
        Map<String, Expected> expect,
        Map<String, Expected> expectAsFound,
        List<String> missing,
        List<String> onLimits) {

    /** Stands for every subject of the card. */
    public static final String ALL = "*";

    /**
     * What must become of a card.
     *
     * @param word one of the four outcomes
     * @param band the highest band found; empty for the other outcomes
     */
    public record Expected(Word word, String band) {
        @Override
        public String toString() {
            return band.isEmpty() ? word.word() : word.word() + " " + band;
        }
    }

    public Scenario {
        expect = Collections.unmodifiableMap(new LinkedHashMap<>(expect));
        expectAsFound = Collections.unmodifiableMap(new LinkedHashMap<>(expectAsFound));
        missing = List.copyOf(missing);
        onLimits = List.copyOf(onLimits);
    }

    /** The card and the name together, unlike those of every other scenario. */
    public String title() {
        return card + ": " + name;
    }

    /** What is expected in a state; empty where nothing is. */
    public Map<String, Expected> expected(State state) {
        return state == State.AS_LEFT ? expect : expectAsFound;
    }
}
