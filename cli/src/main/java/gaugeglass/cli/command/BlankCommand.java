package gaugeglass.cli.command;

import gaugeglass.engine.Assessment.Wanting;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.observation.BlankInspection;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.vocabulary.Component;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Writes an inspection without answers, to be filled in.
 *
 * <p>For a kind of system it leaves out what no longer matters there. Nobody keeps a list of that: the rulebook is asked
 * which answers it still wants once the system is known.
 */
final class BlankCommand {
    /** The question whose answer tells the kind of system. */
    private static final String SYSTEM = "system.kind";

    private final Rulebook rulebook;
    private final Vocabulary vocabulary;
    private final LocalDate date;

    /**
     * What {@code blank} is asked to do.
     *
     * @param system a word for the kind of system; empty for all questions
     */
    record Options(String system, String site, String unit, LocalDate date) {}

    private BlankCommand(Rulebook rulebook, LocalDate date) {
        this.rulebook = rulebook;
        this.vocabulary = rulebook.vocabulary();
        this.date = date;
    }

    /** The words that a kind of system can be told by; empty where the vocabulary has no such question. */
    static List<String> systems(Vocabulary vocabulary) {
        return vocabulary
                .item(SYSTEM)
                .map(item -> item.values().get(0).choices())
                .orElse(List.of());
    }

    static String text(Options options, Shell shell) {
        if (options.system().isEmpty()) {
            Set<String> notAsked = shell.notAsked();
            return BlankInspection.of(shell.vocabulary(), options.site(), options.date())
                    .unit(options.unit())
                    .askingOnly(one -> !notAsked.contains(one.id()))
                    .write();
        }
        return new BlankCommand(shell.rulebook(), options.date()).of(options);
    }

    private String of(Options options) {
        ItemType item = vocabulary.item(SYSTEM).orElseThrow();
        Component part = item.values().get(0);
        Object answer = item.constants(part)[part.choices().indexOf(options.system())];
        Record known = item.make(List.of(), List.of(answer));

        Set<String> kinds = wanted(Optional.of(known), false);
        Set<String> always = wanted(Optional.empty(), true);
        Set<String> here = wanted(Optional.of(known), true);
        here.add(SYSTEM);
        // What no finding waits for, but only a likely cause, is in neither and is kept.
        always.removeAll(here);
        always.addAll(rulebook.notAsked());
        String blank = BlankInspection.of(vocabulary, options.site(), options.date())
                .unit(options.unit())
                .askingOnly(one -> !always.contains(one.id()))
                .countingOnly(kind -> kinds.contains(kind.countId()))
                .write();
        return answered(blank, item, options.system());
    }

    /** The items and counts that the rulebook wants, with one piece of each kind of equipment or with none counted. */
    private Set<String> wanted(Optional<Record> known, boolean withEquipment) {
        Observations.Builder visit = Observations.of(vocabulary, "any");
        known.ifPresent(visit::seen);
        if (withEquipment) {
            for (Kind kind : vocabulary.kinds()) {
                if (kind.isCounted()) {
                    visit.fitted(kind.id(), State.AS_FOUND, 1).tag(kind.id(), "any");
                }
            }
        }
        Set<String> wanted = new HashSet<>();
        for (Wanting one : rulebook.assess(visit.build(), date).wanting()) {
            wanted.add(one.answer().item());
        }
        return wanted;
    }

    /** Puts the answer that is known already behind its key. */
    private static String answered(String blank, ItemType item, String word) {
        StringBuilder out = new StringBuilder(blank.length() + 32);
        boolean inGroup = false;
        for (String line : (Iterable<String>) blank.lines()::iterator) {
            String key = line.strip();
            if (key.equals(item.group() + ":")) {
                inGroup = true;
            } else if (inGroup && key.equals(item.name() + ":")) {
                out.append(line.stripTrailing()).append(' ').append(word).append('\n');
                inGroup = false;
                continue;
            }
            out.append(line).append('\n');
        }
        return out.toString();
    }
}
