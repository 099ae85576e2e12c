package gaugeglass.steam.oracle;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import gaugeglass.engine.book.Book;
import gaugeglass.engine.book.RuleEntry;
import gaugeglass.engine.build.MadeUpVisits;
import gaugeglass.engine.build.Scenario;
import gaugeglass.engine.drools.Judges;
import gaugeglass.engine.drools.Verdict;
import gaugeglass.engine.drools.Verdict.Outcome;
import gaugeglass.engine.facts.Facts;
import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.reading.Form;
import gaugeglass.engine.reading.NodeReader;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Vocabulary;
import gaugeglass.steam.SteamTrade;
import gaugeglass.steam.oracle.DrlText.ORule;
import gaugeglass.steam.oracle.Oracle.Fate;
import gaugeglass.steam.proof.SteamProof;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

/**
 * The engine's outcomes against an oracle that tries out answers and shares no code with either judge.
 *
 * <p>The law: wherever some answer to what was not seen would make a rule match, the engine says found or undetermined;
 * and found exactly where what is known makes it match. Where the engine says undetermined and the oracle finds no such
 * answer, the engine is over-cautious; that is allowed, counted, and held to what is listed for each rule.
 */
class OracleTest {
    private static final Path ALLOWED = Path.of("src/test/resources/over-caution.yaml");
    private static final LocalDate DAY = LocalDate.of(2026, 9, 14);
    private static final int RANDOM_VISITS = 60;
    private static final int SUBSETS = 3;
    private static final int MOST_SINGLY = 24;

    private final Book book = SteamProof.stored().book();
    private final Vocabulary vocabulary = SteamProof.stored().vocabulary();
    private final List<Reckoning> reckonings = new SteamTrade().reckonings();
    private final Judges judges = Judges.of(book.models(), book.rules(), OracleTest.class.getClassLoader());
    private final Oracle oracle = new Oracle(vocabulary, book.limits(), reckonings);
    private final Map<String, ORule> rules = rules();
    private final Map<String, int[]> cautious = new TreeMap<>();
    private final Set<String> wrong = new LinkedHashSet<>();
    private int compared;

    private static Map<String, ORule> rules() {
        Map<String, ORule> rules = new LinkedHashMap<>();
        SteamProof.texts().forEach((name, text) -> {
            if (name.endsWith(".drl")) {
                DrlText.read(text).forEach(rule -> rules.put(rule.name(), rule));
            }
        });
        return rules;
    }

    @Test
    void the_oracle_reads_the_rules_that_the_engine_reads() {
        assertThat(rules.keySet())
                .containsExactlyInAnyOrderElementsOf(
                        book.rules().stream().map(RuleEntry::name).toList());
    }

    @Test
    void the_oracle_shares_no_code_with_the_judges() {
        ArchRuleDefinition.noClasses()
                .that()
                .haveSimpleName("Oracle")
                .or()
                .haveSimpleName("DrlText")
                .or()
                .haveSimpleName("Chooser")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "gaugeglass.engine.drools..",
                        "gaugeglass.engine.facts..",
                        "gaugeglass.engine.build..",
                        "org.drools..",
                        "org.kie..")
                .because("a mistake that both sides share is noticed by neither")
                .check(new ClassFileImporter().importPackages("gaugeglass.steam.oracle"));
    }

    @Test
    void no_outcome_is_decided_that_an_answer_could_still_turn() throws IOException {
        Random random = new Random(20260914);
        for (Scenario scenario : SteamProof.scenarios()) {
            Predicate<String> own = card -> card.equals(scenario.card());
            for (Observations visit : fewer(scenario.given(), random)) {
                compare(visit, scenario.date(), scenario.title(), own);
            }
        }
        compare(Observations.of(vocabulary, "1").build(), DAY, "the empty visit", card -> true);
        MadeUpVisits visits = new MadeUpVisits(vocabulary, book.allLimits(), DAY, 20260914);
        for (int i = 0; i < RANDOM_VISITS; i++) {
            double share = i % 6 / 5.0;
            compare(visits.next(share, i % 3 == 0 ? 0.2 : 0), DAY, "random visit " + i, card -> true);
        }
        report();
        assertThat(wrong).as("where the engine breaks its law").isEmpty();
        Map<String, Integer> allowed = allowed();
        List<String> more = new ArrayList<>();
        cautious.forEach((rule, counts) -> {
            int percent = allowed.getOrDefault(rule, 0);
            if (counts[0] > most(percent, counts[1])) {
                more.add(rule + ": " + counts[0] + " of " + counts[1] + " undetermined, allowed " + percent + " %");
            }
        });
        assertThat(more)
                .as("rules that stay undetermined more often than need be; mend the rule, or list it with its reason in"
                        + " over-caution.yaml")
                .isEmpty();
    }

    /**
     * How many of some drawn visits may be undetermined where a share of all is allowed: three standard errors more, as the draw
     * is another one with each new observation. Where nothing is allowed, none.
     */
    private static double most(int percent, int drawn) {
        double share = percent / 100.0;
        return drawn * share + 3 * Math.sqrt(drawn * share * (1 - share));
    }

    /** The visit, and the visit with answers and counts taken away. */
    private List<Observations> fewer(Observations visit, Random random) {
        List<Observations> fewer = new ArrayList<>(List.of(visit));
        List<Answer> answers = List.copyOf(visit.answers());
        // The oracle is slow where there are many of a kind; of a large visit a throw of its answers is taken away.
        List<Answer> singly = new ArrayList<>(answers);
        if (singly.size() > MOST_SINGLY) {
            Collections.shuffle(singly, random);
            singly = singly.subList(0, MOST_SINGLY / 4);
        }
        for (Answer answer : singly) {
            fewer.add(visit.toBuilder().without(answer).build());
        }
        for (int i = 0; i < SUBSETS && answers.size() > 1; i++) {
            Observations.Builder two = visit.toBuilder();
            Observations.Builder some = visit.toBuilder();
            two.without(answers.get(random.nextInt(answers.size())));
            two.without(answers.get(random.nextInt(answers.size())));
            for (Answer answer : answers) {
                if (random.nextBoolean()) {
                    some.without(answer);
                }
            }
            fewer.add(two.build());
            fewer.add(some.build());
        }
        for (Kind kind : vocabulary.kinds()) {
            if (kind.isCounted() && visit.roster(kind.id()).asFound().isPresent()) {
                fewer.add(visit.toBuilder().withoutCount(kind.id()).build());
                int number = visit.roster(kind.id()).asFound().getAsInt();
                if (number < kind.most()) {
                    fewer.add(visit.toBuilder()
                            .fitted(kind.id(), State.AS_FOUND, number + 1)
                            .build());
                }
            }
        }
        return fewer;
    }

    private void compare(Observations visit, LocalDate date, String name, Predicate<String> cards) {
        List<State> states = visit.hasAsLeft() ? List.of(State.AS_FOUND, State.AS_LEFT) : List.of(State.AS_LEFT);
        for (State state : states) {
            Facts facts = Facts.of(visit, state, date, book.allLimits(), reckonings);
            Map<String, Map<String, Fate>> fates = new LinkedHashMap<>();
            for (Verdict verdict : judges.judge(facts, this::about)) {
                if (!cards.test(verdict.rule().card())) {
                    continue;
                }
                String rule = verdict.rule().name();
                Map<String, Fate> byRule = fates.computeIfAbsent(
                        rule, r -> oracle.judge(rules.get(r), about(verdict.rule()), visit, state, date));
                Fate fate = byRule.getOrDefault(verdict.subject(), new Fate(false, false));
                compared++;
                compare(verdict, fate, name + ", " + state);
            }
        }
    }

    private void compare(Verdict verdict, Fate fate, String name) {
        String what = verdict.rule().name() + " of \"" + verdict.subject() + "\" on " + name + ": ";
        boolean found = verdict.outcome() == Outcome.FOUND;
        boolean open = verdict.outcome() == Outcome.UNDETERMINED;
        if (found != fate.found()) {
            wrong.add(what + "the engine says " + verdict.outcome() + ", the oracle "
                    + (fate.found() ? "finds it" : "does not find it"));
        } else if (fate.possible() && !found && !open) {
            wrong.add(what + "the engine says " + verdict.outcome() + ", but an answer would make it found");
        } else if (open) {
            int[] counts = cautious.computeIfAbsent(verdict.rule().name(), rule -> new int[2]);
            counts[0] += fate.possible() ? 0 : 1;
            counts[1]++;
        }
    }

    private String about(RuleEntry rule) {
        String about = book.card(rule.card()).about();
        return about.equals(vocabulary.unit().id()) ? "" : about;
    }

    private void report() {
        int over = cautious.values().stream().mapToInt(counts -> counts[0]).sum();
        int open = cautious.values().stream().mapToInt(counts -> counts[1]).sum();
        System.out.println("oracle: " + compared + " outcomes compared, " + open + " undetermined, " + over
                + " of them over-cautious");
        cautious.forEach((rule, counts) -> {
            if (counts[0] > 0) {
                System.out.println("  over-cautious: " + rule + ": " + counts[0] + " of " + counts[1]);
            }
        });
    }

    private static Map<String, Integer> allowed() throws IOException {
        List<Mistake> mistakes = new ArrayList<>();
        Form form = Form.of(
                ALLOWED.toString(),
                "",
                NodeReader.read(ALLOWED.toString(), Files.readString(ALLOWED), mistakes),
                mistakes);
        Map<String, Integer> allowed = new TreeMap<>();
        for (Form one : form.forms("over-cautious")) {
            one.text("because");
            allowed.put(one.text("rule"), Integer.parseInt(one.text("percent")));
            one.close();
        }
        form.close();
        assertThat(mistakes).as("what is wrong in the list").isEmpty();
        return allowed;
    }
}
