package gaugeglass.engine.build;

import gaugeglass.engine.Assessment;
import gaugeglass.engine.Assessment.Word;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.book.Band;
import gaugeglass.engine.book.Card;
import gaugeglass.engine.book.Limit;
import gaugeglass.engine.book.RuleEntry;
import gaugeglass.engine.book.StoredBook;
import gaugeglass.engine.build.Scenario.Expected;
import gaugeglass.engine.drools.Judges;
import gaugeglass.engine.drools.Verdict;
import gaugeglass.engine.facts.Facts;
import gaugeglass.engine.facts.Missing;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.Roster;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.observation.Subjects;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Trade;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Runs scenarios against a built rulebook and tells what does not come out as expected.
 *
 * <p>Every card is judged rule by rule, the signs too; what an assessment says of the same visit must be the same.
 */
public final class ScenarioRunner {
    private final Rulebook rulebook;
    private final Judges judges;
    private final List<Reckoning> reckonings;

    /**
     * Takes up a rulebook.
     *
     * @param trade the trade it was built for
     * @param loader where its compiled rules are
     */
    public ScenarioRunner(StoredBook stored, Trade trade, ClassLoader loader) {
        this.rulebook = Rulebook.of(stored, loader);
        this.judges = Judges.of(stored.book().models(), stored.book().rules(), loader);
        this.reckonings = trade.reckonings();
    }

    public Rulebook rulebook() {
        return rulebook;
    }

    /**
     * What became of a card for one subject.
     *
     * @param word one of the four outcomes
     * @param band the highest band found; empty where nothing was
     * @param rules the names of the rules that found it
     * @param missing the answers that would settle what is open
     */
    public record Came(Word word, String band, Set<String> rules, List<Missing> missing) {
        public Came {
            rules = Set.copyOf(rules);
            missing = List.copyOf(missing);
        }

        /** Whether it is what was expected. */
        public boolean is(Expected expected) {
            return word == expected.word() && band.equals(expected.band());
        }

        @Override
        public String toString() {
            return new Expected(word, band)
                    + (missing.isEmpty()
                            ? ""
                            : missing.stream().map(Came::text).collect(Collectors.joining(", ", " (missing: ", ")")));
        }

        private static String text(Missing missing) {
            return missing.item()
                    + (missing.subject().isEmpty() ? "" : " of " + missing.subject())
                    + (missing.reason().isEmpty() ? "" : ", " + missing.reason());
        }
    }

    /**
     * How one scenario went.
     *
     * @param asLeft what became of its card at the end of the visit, by subject
     * @param faults what is not as expected, a sentence each; empty when all is
     */
    public record Ran(Scenario scenario, Map<String, Came> asLeft, List<String> faults) {
        /** Everything that is wrong, with the place of the scenario, for a person who must mend it. */
        public String report() {
            return scenario.file() + ":" + scenario.line() + ": " + scenario.title() + "\n  "
                    + String.join("\n  ", faults);
        }
    }

    /** Runs one scenario. */
    public Ran run(Scenario scenario) {
        List<String> faults = new ArrayList<>();
        Map<String, Came> asLeft = came(scenario, State.AS_LEFT, rulebook.book().allLimits());
        compare(scenario, State.AS_LEFT, asLeft, faults);
        if (!scenario.expectAsFound().isEmpty()) {
            Map<String, Came> asFound =
                    came(scenario, State.AS_FOUND, rulebook.book().allLimits());
            compare(scenario, State.AS_FOUND, asFound, faults);
        }
        Set<String> named = new TreeSet<>();
        asLeft.values().forEach(came -> came.missing().forEach(missing -> named.add(missing.item())));
        for (String item : scenario.missing()) {
            if (!named.contains(item)) {
                faults.add("expected " + item + " among what is missing; named is " + named);
            }
        }
        for (String limit : scenario.onLimits()) {
            onLimit(scenario, limit, asLeft, faults);
        }
        if (!rulebook.book().card(scenario.card()).sign()) {
            same(scenario, State.AS_LEFT, scenario.given(), asLeft, faults);
            if (scenario.given().hasAsLeft()) {
                same(
                        scenario,
                        State.AS_FOUND,
                        atArrival(scenario.given()),
                        came(scenario, State.AS_FOUND, rulebook.book().allLimits()),
                        faults);
            }
        }
        return new Ran(scenario, asLeft, faults);
    }

    private void compare(Scenario scenario, State state, Map<String, Came> came, List<String> faults) {
        String when = state == State.AS_FOUND ? " at arrival" : "";
        scenario.expected(state).forEach((subject, expected) -> {
            if (subject.equals(Scenario.ALL)) {
                came.forEach((each, one) -> {
                    if (!one.is(expected)) {
                        faults.add("expected " + expected + when + of(each) + ", came out " + one);
                    }
                });
            } else if (!came.containsKey(subject)) {
                faults.add("expected " + expected + when + of(subject) + ", which is not there; there is "
                        + came.keySet());
            } else if (!came.get(subject).is(expected)) {
                faults.add("expected " + expected + when + of(subject) + ", came out " + came.get(subject));
            }
        });
        if (!scenario.expected(state).containsKey(Scenario.ALL)) {
            came.forEach((subject, one) -> {
                if (!scenario.expected(state).containsKey(subject)) {
                    faults.add("nothing is expected" + when + of(subject) + ", which came out " + one);
                }
            });
        }
    }

    private static String of(String subject) {
        return subject.isEmpty() ? "" : " for " + subject;
    }

    /** A reading lies on a limit when the limit's smallest step, up or down, makes a difference. */
    private void onLimit(Scenario scenario, String id, Map<String, Came> asLeft, List<String> faults) {
        Limit limit = rulebook.book().limits().get(id);
        for (Limit moved : Limits.moved(limit)) {
            Map<String, Limit> all = new LinkedHashMap<>(rulebook.book().limits());
            all.put(id, moved);
            Map<String, Came> other = came(scenario, State.AS_LEFT, all.values());
            if (!rules(other).equals(rules(asLeft))) {
                return;
            }
        }
        faults.add("it is said to lie on the limit " + id + " (" + limit.written() + "), but moving that by "
                + limit.step() + " either way changes nothing");
    }

    private static Map<String, Set<String>> rules(Map<String, Came> came) {
        Map<String, Set<String>> rules = new LinkedHashMap<>();
        came.forEach((subject, one) -> rules.put(subject, one.rules()));
        return rules;
    }

    /** What a whole assessment says of the card must be what its rules say. */
    private void same(Scenario scenario, State state, Observations given, Map<String, Came> came, List<String> faults) {
        Assessment assessment = rulebook.assess(given, scenario.date());
        for (Assessment.Outcome outcome : assessment.outcomes()) {
            if (!outcome.rule().equals(scenario.card())) {
                continue;
            }
            String band = assessment.findings().stream()
                    .filter(f -> f.rule().equals(outcome.rule())
                            && f.subject().equals(outcome.subject())
                            && outcome.outcome() == Word.FOUND)
                    .map(Assessment.Finding::band)
                    .findFirst()
                    .orElse("");
            Expected said = new Expected(outcome.outcome(), band);
            Came one = came.get(outcome.subject());
            if (one == null || !one.is(said)) {
                faults.add("a fault of the program: " + state + of(outcome.subject()) + " the assessment says " + said
                        + ", its rules say " + one);
            }
        }
    }

    /** The visit as if it had ended before anything was put right. */
    public static Observations atArrival(Observations observations) {
        Observations.Builder builder = Observations.of(observations.vocabulary(), observations.unit());
        observations.vocabulary().kinds().forEach(kind -> {
            Roster roster = observations.roster(kind.id());
            roster.tags(State.AS_FOUND).forEach(tag -> builder.tag(kind.id(), tag));
            roster.fitted(State.AS_FOUND).ifPresent(number -> builder.fitted(kind.id(), State.AS_FOUND, number));
            if (!roster.unread().isEmpty()) {
                builder.uncounted(kind.id(), roster.unread());
            }
        });
        observations.answers().stream()
                .filter(answer -> answer.state() == State.AS_FOUND)
                .forEach(builder::put);
        return builder.build();
    }

    /** What becomes of the scenario's card in one state, by subject, with these limits in force. */
    public Map<String, Came> came(Scenario scenario, State state, Collection<Limit> limits) {
        return came(scenario.card(), scenario.given(), scenario.date(), state, limits);
    }

    /** What becomes of one card in one state of a visit, by subject, with these limits in force. */
    public Map<String, Came> came(
            String card, Observations given, LocalDate date, State state, Collection<Limit> limits) {
        Facts facts = Facts.of(given, state, date, limits, reckonings);
        Map<String, List<Verdict>> bySubject = new LinkedHashMap<>();
        for (Verdict verdict : judges.judge(facts, this::counted)) {
            if (verdict.rule().card().equals(card)) {
                bySubject
                        .computeIfAbsent(verdict.subject(), s -> new ArrayList<>())
                        .add(verdict);
            }
        }
        Map<String, Came> came = new LinkedHashMap<>();
        bySubject.forEach(
                (subject, verdicts) -> came.put(subject, came(rulebook.book().card(card), verdicts)));
        return came;
    }

    private String counted(RuleEntry rule) {
        String about = rulebook.book().card(rule.card()).about();
        return about.equals(rulebook.vocabulary().unit().id()) ? Subjects.UNIT : about;
    }

    private static Came came(Card card, List<Verdict> verdicts) {
        Set<String> rules = new TreeSet<>();
        List<Band> bands = new ArrayList<>();
        for (Verdict verdict : verdicts) {
            if (verdict.outcome() == Verdict.Outcome.FOUND) {
                rules.add(verdict.rule().name());
                bands.add(card.band(verdict.rule().band()).orElseThrow());
            }
        }
        List<String> order = List.copyOf(card.bands().keySet());
        String band = bands.stream()
                .min(Comparator.comparing(Band::urgency).thenComparing(one -> order.indexOf(one.name())))
                .map(Band::name)
                .orElse("");
        // A band that is open matters only where it is more urgent than what was found.
        Set<Missing> missing = new TreeSet<>();
        boolean open = false;
        boolean applies = false;
        for (Verdict verdict : verdicts) {
            applies |= verdict.outcome() == Verdict.Outcome.IN_ORDER;
            open |= verdict.outcome() == Verdict.Outcome.UNDETERMINED;
            boolean above = band.isEmpty()
                    || card.band(verdict.rule().band())
                            .orElseThrow()
                            .urgency()
                            .isAbove(card.band(band).orElseThrow().urgency());
            if (above) {
                missing.addAll(verdict.missing());
            }
        }
        Word word =
                !band.isEmpty() ? Word.FOUND : open ? Word.UNDETERMINED : applies ? Word.IN_ORDER : Word.NOT_APPLICABLE;
        return new Came(word, band, rules, List.copyOf(missing));
    }
}
