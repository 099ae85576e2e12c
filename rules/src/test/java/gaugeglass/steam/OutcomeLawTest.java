package gaugeglass.steam;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.Assessment;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.build.MadeUpVisits;
import gaugeglass.engine.build.OutcomeLaw;
import gaugeglass.engine.build.Scenario;
import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.InspectionReader;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.steam.proof.SteamProof;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The law of outcomes over the steam rulebook: taking answers away only turns outcomes into undetermined. */
class OutcomeLawTest {
    private static final LocalDate DAY = LocalDate.of(2026, 9, 14);
    private static final Path EXAMPLES = Path.of("../docs/examples");
    private static final int VISITS = 12;
    private static final int TRIES = 40;
    private static final int PAIRS = 2500;

    private final Rulebook rulebook = SteamProof.runner().rulebook();

    @Test
    void no_answer_of_a_scenario_turns_an_outcome_when_it_is_taken_away() {
        for (Scenario scenario : SteamProof.scenarios()) {
            if (scenario.given().hasAsLeft()) {
                continue;
            }
            OutcomeLaw law = new OutcomeLaw(rulebook, scenario.date());
            Assessment before = rulebook.assess(scenario.given(), scenario.date());
            for (Answer answer : scenario.given().answers()) {
                assertThat(law.broken(before, scenario.given(), List.of(answer)))
                        .as(scenario.title())
                        .isEmpty();
            }
        }
    }

    /**
     * Of every answer at arrival of every example, and of a throw of pairs: an example has some three hundred answers, and
     * all its pairs would take minutes. What was answered again as left is left alone.
     */
    @TestFactory
    Stream<DynamicTest> no_two_answers_of_an_example_turn_an_outcome_when_they_are_taken_away() throws IOException {
        if (!Files.isDirectory(EXAMPLES)) {
            return Stream.of();
        }
        List<DynamicTest> tests = new ArrayList<>();
        try (Stream<Path> files = Files.list(EXAMPLES)) {
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
                String name = file.getFileName().toString();
                Inspection inspection = InspectionReader.read(rulebook.vocabulary(), name, Files.readString(file));
                for (Inspection.Visited unit : inspection.units()) {
                    tests.add(DynamicTest.dynamicTest(
                            name + ", " + unit.id(), () -> pairs(unit.observations(), inspection.date())));
                }
            }
        }
        return tests.stream();
    }

    private void pairs(Observations visit, LocalDate date) {
        OutcomeLaw law = new OutcomeLaw(rulebook, date);
        Assessment before = rulebook.assess(visit, date);
        List<Answer> answers = visit.answers().stream()
                .filter(answer -> answer.state() == State.AS_FOUND)
                .toList();
        for (Answer answer : answers) {
            assertThat(law.broken(before, visit, List.of(answer))).isEmpty();
        }
        Random random = new Random(9);
        for (int i = 0; i < PAIRS; i++) {
            Answer one = answers.get(random.nextInt(answers.size()));
            Answer other = answers.get(random.nextInt(answers.size()));
            assertThat(law.broken(before, visit, List.of(one, other))).isEmpty();
        }
        assertThat(law.weaker()).isPositive();
    }

    @Test
    void no_two_answers_of_a_random_visit_turn_an_outcome_when_they_are_taken_away() {
        MadeUpVisits visits =
                new MadeUpVisits(rulebook.vocabulary(), rulebook.book().allLimits(), DAY, 7);
        OutcomeLaw law = new OutcomeLaw(rulebook, DAY);
        Random random = new Random(8);
        for (int i = 0; i < VISITS; i++) {
            Observations visit = visits.next(0.6 + i % 5 / 10.0, 0);
            Assessment before = rulebook.assess(visit, DAY);
            List<Answer> answers = List.copyOf(visit.answers());
            for (int j = 0; j < TRIES; j++) {
                Answer one = answers.get(random.nextInt(answers.size()));
                Answer other = answers.get(random.nextInt(answers.size()));
                assertThat(law.broken(before, visit, List.of(one))).isEmpty();
                assertThat(law.broken(before, visit, List.of(one, other))).isEmpty();
            }
            for (Kind kind : rulebook.vocabulary().kinds()) {
                if (kind.isCounted()) {
                    assertThat(law.broken(before, visit, kind.id())).isEmpty();
                }
            }
        }
        assertThat(law.weaker()).as("outcomes that became undetermined").isGreaterThan(VISITS);
    }

    @Test
    void no_gate_says_that_nothing_was_found_against_it_when_next_to_nothing_was_seen() {
        Observations.Builder uncounted = Observations.of(rulebook.vocabulary(), "1");
        Observations.Builder counted = Observations.of(rulebook.vocabulary(), "1");
        rulebook.vocabulary().kinds().stream()
                .filter(Kind::isCounted)
                .forEach(kind -> counted.fitted(kind.id(), State.AS_FOUND, 1));
        for (Observations visit : List.of(uncounted.build(), counted.build())) {
            Assessment assessment = rulebook.assess(visit, DAY);
            assertThat(assessment.testFiring().permit()).isEqualTo(Assessment.Permit.NOT_KNOWN);
            assertThat(assessment.release().permit()).isEqualTo(Assessment.Permit.NOT_KNOWN);
            assertThat(assessment.count(Assessment.Word.IN_ORDER)).isZero();
        }
    }
}
