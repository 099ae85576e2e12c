package gaugeglass.cli.bench;

import gaugeglass.engine.Rulebook;
import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.InspectionReader;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.reading.SourceText;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Measures how judging grows with a visit: an inspection whose equipment is copied until there is as much of each kind as
 * in a large building, then four and sixteen times that.
 *
 * <p>Kinds that the rulebook does not know, or of which the inspection describes none, are left out and said. The counts go
 * beyond what a file may hold for some kinds: here it is the judging that is measured, not what is believed.
 */
public final class LargeVisit {
    private static final Map<String, Integer> LARGE = new LinkedHashMap<>();

    static {
        LARGE.put("cutoff", 12);
        LARGE.put("main", 24);
        LARGE.put("trap", 400);
        LARGE.put("radiator", 60);
        LARGE.put("meter-reading", 800);
    }

    private LargeVisit() {}

    /**
     * Measures and prints a table.
     *
     * @param args a file with an inspection; its first unit is taken
     */
    public static void main(String[] args) {
        Rulebook rulebook = Rulebook.load(LargeVisit.class.getClassLoader());
        Inspection inspection =
                new InspectionReader(rulebook.vocabulary()).read(args[0], SourceText.read(Path.of(args[0])));
        Observations one = inspection.units().get(0).observations();
        System.out.printf("%-8s %10s %12s %14s  %s%n", "size", "answers", "outcomes", "ms, median", "of each kind");
        for (int factor : new int[] {1, 4, 16}) {
            StringBuilder kinds = new StringBuilder();
            Observations grown = grown(one, factor, kinds);
            int outcomes = 0;
            double[] times = new double[15];
            for (int round = -10; round < times.length; round++) {
                long start = System.nanoTime();
                outcomes = rulebook.assess(grown, inspection.date()).outcomes().size();
                if (round >= 0) {
                    times[round] = (System.nanoTime() - start) / 1e6;
                }
            }
            Arrays.sort(times);
            System.out.printf(
                    Locale.ROOT,
                    "%-8s %,10d %,12d %14.1f  %s%n",
                    factor + "x",
                    grown.answers().size(),
                    outcomes,
                    times[times.length / 2],
                    kinds);
        }
    }

    private static Observations grown(Observations one, int factor, StringBuilder kinds) {
        Observations.Builder grown = one.toBuilder();
        for (Map.Entry<String, Integer> large : LARGE.entrySet()) {
            List<String> tags = tags(one, large.getKey());
            kinds.append(kinds.isEmpty() ? "" : ", ").append(large.getKey());
            if (tags.isEmpty()) {
                kinds.append(" none");
                continue;
            }
            int wanted = large.getValue() * factor;
            kinds.append(' ').append(wanted);
            for (int i = tags.size(); i < wanted; i++) {
                String old = tags.get(i % tags.size());
                copy(one, large.getKey(), old, old + " " + i, grown);
            }
            grown.fitted(large.getKey(), State.AS_FOUND, wanted);
        }
        return grown.build();
    }

    private static List<String> tags(Observations one, String kind) {
        Vocabulary vocabulary = one.vocabulary();
        boolean isKnown = vocabulary.kinds().stream().map(Kind::id).anyMatch(kind::equals);
        return isKnown ? new ArrayList<>(one.roster(kind).tags(State.AS_FOUND)) : List.of();
    }

    private static void copy(Observations one, String kind, String old, String tag, Observations.Builder grown) {
        grown.tag(kind, tag);
        Set<String> kinds = one.vocabulary().kinds().stream()
                .filter(other -> other.id().equals(kind) || other.parent().equals(kind))
                .map(Kind::id)
                .collect(Collectors.toSet());
        for (Answer answer : one.answers()) {
            ItemType item = answer.item();
            if (!kinds.contains(item.kind()) || !answer.keys().get(0).equals(old)) {
                continue;
            }
            List<Object> keys = new ArrayList<>(answer.keys());
            keys.set(0, tag);
            grown.put(
                    answer.fact().isPresent()
                            ? Answer.seen(
                                    item,
                                    keys,
                                    answer.state(),
                                    item.make(keys, item.valuesOf(answer.fact().get())))
                            : Answer.unread(item, keys, answer.state(), answer.unread()));
        }
    }
}
