package gaugeglass.engine;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.Assessment.Outcome;
import gaugeglass.engine.Assessment.Permit;
import gaugeglass.engine.Assessment.Ref;
import gaugeglass.engine.Assessment.Word;
import gaugeglass.engine.book.Urgency;
import gaugeglass.engine.build.MadeUpVisits;
import gaugeglass.engine.build.OutcomeLaw;
import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.toy.FrameMade;
import gaugeglass.engine.toy.FrameMaterial;
import gaugeglass.engine.toy.Material;
import gaugeglass.engine.toy.Workshop;
import gaugeglass.engine.vocabulary.Kind;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The law of outcomes, over random visits of the toy trade. */
class OutcomeLawTest {
    private static final LocalDate DAY = LocalDate.of(2026, 9, 14);
    private static final int VISITS = 40;

    private final Rulebook rulebook = Workshop.rulebook();

    @Test
    void taking_answers_away_only_turns_outcomes_into_undetermined() {
        MadeUpVisits visits =
                new MadeUpVisits(rulebook.vocabulary(), rulebook.book().allLimits(), DAY, 1);
        OutcomeLaw law = new OutcomeLaw(rulebook, DAY);
        Random random = new Random(2);
        for (int i = 0; i < VISITS; i++) {
            Observations visit = visits.next(0.5 + i % 6 / 10.0, 0);
            Assessment before = rulebook.assess(visit, DAY);
            List<Answer> answers = List.copyOf(visit.answers());
            for (Answer one : answers) {
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
    void the_one_exception_cannot_be_avoided() {
        // Steel tells that the practice does not apply, the year of making that it is in order. Without either the
        // other still rules it out, each with its own word: see docs/decisions.
        Observations.Builder both = Observations.of(rulebook.vocabulary(), "1")
                .seen(new FrameMaterial(Material.STEEL))
                .seen(new FrameMade(DAY));
        assertThat(old(both.build())).isEqualTo(Word.NOT_APPLICABLE);
        assertThat(old(without(both, "frame.made"))).isEqualTo(Word.NOT_APPLICABLE);
        assertThat(old(without(both, "frame.material"))).isEqualTo(Word.IN_ORDER);
    }

    private Word old(Observations visit) {
        return rulebook.assess(visit, DAY).outcomes().stream()
                .filter(outcome -> outcome.rule().equals("frame.old"))
                .findFirst()
                .orElseThrow()
                .outcome();
    }

    private static Observations without(Observations.Builder all, String item) {
        Observations.Builder less = all.build().toBuilder();
        all.build().answers().stream()
                .filter(answer -> answer.item().id().equals(item))
                .forEach(less::without);
        return less.build();
    }

    @Test
    void taking_an_answer_as_left_away_brings_back_the_one_as_found() {
        MadeUpVisits visits =
                new MadeUpVisits(rulebook.vocabulary(), rulebook.book().allLimits(), DAY, 3);
        for (int i = 0; i < VISITS; i++) {
            Observations visit = visits.next(0.9, 0.2);
            Observations.Builder early = visit.toBuilder();
            visit.answers().stream()
                    .filter(answer -> answer.state() == State.AS_LEFT)
                    .forEach(early::without);
            Observations asFound = early.build();
            Observations.Builder once = Observations.of(rulebook.vocabulary(), "1");
            rulebook.vocabulary().kinds().forEach(kind -> visit.roster(kind.id())
                    .tags(State.AS_LEFT)
                    .forEach(tag -> once.tag(kind.id(), tag)));
            rulebook.vocabulary().kinds().forEach(kind -> visit.roster(kind.id())
                    .fitted(State.AS_LEFT)
                    .ifPresent(number -> once.fitted(kind.id(), State.AS_FOUND, number)));
            asFound.answers().stream()
                    .filter(answer -> answer.keys().isEmpty()
                            || visit.roster(rulebook.vocabulary()
                                            .counted(rulebook.vocabulary()
                                                    .kind(answer.item().kind())
                                                    .orElseThrow())
                                            .id())
                                    .tags(State.AS_LEFT)
                                    .contains(answer.keys().get(0)))
                    .forEach(once::put);
            assertThat(rulebook.assess(asFound, DAY).outcomes())
                    .isEqualTo(rulebook.assess(once.build(), DAY).outcomes());
        }
    }

    @Test
    void the_order_of_answers_does_not_matter() {
        MadeUpVisits visits =
                new MadeUpVisits(rulebook.vocabulary(), rulebook.book().allLimits(), DAY, 4);
        Random random = new Random(5);
        for (int i = 0; i < VISITS; i++) {
            Observations visit = visits.next(0.7, 0.1);
            List<Answer> answers = new ArrayList<>(visit.answers());
            Observations.Builder other = visit.toBuilder();
            answers.forEach(other::without);
            Collections.shuffle(answers, random);
            answers.forEach(other::put);
            Assessment one = rulebook.assess(visit, DAY);
            Assessment two = rulebook.assess(other.build(), DAY);
            assertThat(two.outcomes()).isEqualTo(one.outcomes());
            assertThat(two.findings())
                    .usingRecursiveComparison()
                    .ignoringFields("retest")
                    .isEqualTo(one.findings());
            assertThat(two.testFiring()).isEqualTo(one.testFiring());
            assertThat(two.release()).isEqualTo(one.release());
            assertThat(two.diagnoses()).isEqualTo(one.diagnoses());
            assertThat(two.wanting()).isEqualTo(one.wanting());
        }
    }

    @Test
    void an_empty_visit_leaves_everything_undetermined_and_both_gates_not_known() {
        Assessment empty =
                rulebook.assess(Observations.of(rulebook.vocabulary(), "1").build(), DAY);

        assertThat(empty.outcomes()).isNotEmpty().allMatch(outcome -> outcome.outcome() == Word.UNDETERMINED);
        assertThat(empty.outcomes()).allMatch(outcome -> !outcome.missing().isEmpty());
        assertThat(empty.testFiring().permit()).isEqualTo(Permit.NOT_KNOWN);
        assertThat(empty.release().permit()).isEqualTo(Permit.NOT_KNOWN);
        assertThat(empty.findings()).isEmpty();
    }

    @Test
    void a_visit_is_judged_the_same_with_every_answer_that_is_missing_named() {
        MadeUpVisits visits =
                new MadeUpVisits(rulebook.vocabulary(), rulebook.book().allLimits(), DAY, 6);
        for (int i = 0; i < VISITS; i++) {
            Assessment assessment = rulebook.assess(visits.next(0.4, 0), DAY);
            for (Outcome outcome : assessment.outcomes()) {
                Optional<Urgency> mayBe = outcome.mayBe();
                assertThat(outcome.missing().isEmpty()).isEqualTo(mayBe.isEmpty());
                assertThat(outcome.outcome() == Word.UNDETERMINED)
                        .isEqualTo(mayBe.isPresent() && outcome.outcome() != Word.FOUND);
                outcome.missing().forEach(missing -> assertThat(assessment.wanting())
                        .anyMatch(wanting -> wanting.answer().equals(missing)
                                && wanting.settles().contains(new Ref(outcome.rule(), outcome.subject()))));
            }
        }
    }
}
