package gaugeglass.engine;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.Assessment.Outcome;
import gaugeglass.engine.Assessment.Permit;
import gaugeglass.engine.Assessment.Ref;
import gaugeglass.engine.Assessment.Word;
import gaugeglass.engine.book.Urgency;
import gaugeglass.engine.build.MadeUpVisits;
import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.toy.Workshop;
import gaugeglass.engine.vocabulary.Kind;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
        Random random = new Random(2);
        int weaker = 0;
        for (int i = 0; i < VISITS; i++) {
            Observations visit = visits.next(0.5 + i % 6 / 10.0, 0);
            Assessment before = rulebook.assess(visit, DAY);
            List<Answer> answers = List.copyOf(visit.answers());
            for (Answer one : answers) {
                Answer other = answers.get(random.nextInt(answers.size()));
                weaker += law(before, visit.toBuilder().without(one).build(), one);
                weaker += law(
                        before, visit.toBuilder().without(one).without(other).build(), one, other);
            }
            for (Kind kind : rulebook.vocabulary().kinds()) {
                if (kind.isCounted()) {
                    law(before, visit.toBuilder().withoutCount(kind.id()).build());
                }
            }
        }
        assertThat(weaker).as("outcomes that became undetermined").isGreaterThan(VISITS);
    }

    private int law(Assessment before, Observations less, Answer... taken) {
        Assessment after = rulebook.assess(less, DAY);
        Map<Ref, Outcome> left = new LinkedHashMap<>();
        after.outcomes().forEach(outcome -> left.put(new Ref(outcome.rule(), outcome.subject()), outcome));
        int weaker = 0;
        for (Outcome was : before.outcomes()) {
            Outcome is = left.get(new Ref(was.rule(), was.subject()));
            if (is == null) {
                // Nothing fitted, so nothing to judge: with the count gone it is about those not listed.
                assertThat(was.subject()).isEmpty();
                assertThat(was.outcome()).isEqualTo(Word.NOT_APPLICABLE);
                continue;
            }
            weaker += was.outcome() != is.outcome() ? 1 : 0;
            boolean lawful =
                    switch (was.outcome()) {
                        case FOUND ->
                            is.outcome() == Word.FOUND && !isLower(before, after, was, is)
                                    || is.outcome() == Word.UNDETERMINED;
                        case UNDETERMINED -> is.outcome() == Word.UNDETERMINED;
                        case IN_ORDER -> is.outcome() == Word.IN_ORDER || is.outcome() == Word.UNDETERMINED;
                        case NOT_APPLICABLE ->
                            is.outcome() == Word.NOT_APPLICABLE
                                    || is.outcome() == Word.UNDETERMINED
                                    || is.outcome() == Word.IN_ORDER && isStructural(taken);
                    };
            assertThat(lawful)
                    .as("%s became %s when %s was taken away", was, is, List.of(taken))
                    .isTrue();
        }
        for (Ref against : before.testFiring().against()) {
            assertThat(after.testFiring().against().contains(against)
                            || after.testFiring().open().contains(against)
                            || !isEarly(against))
                    .as("%s stays against firing, or open", against)
                    .isTrue();
        }
        if (before.release().permit() == Permit.NOT_KNOWN) {
            assertThat(after.release().permit()).isEqualTo(Permit.NOT_KNOWN);
        }
        return weaker;
    }

    private boolean isEarly(Ref ref) {
        return rulebook.book().card(ref.rule()).stage().isBeforeFiring();
    }

    /** A lower degree than before, with nothing said of the higher. */
    private static boolean isLower(Assessment before, Assessment after, Outcome was, Outcome is) {
        Urgency high = urgency(before, was);
        return urgency(after, is).compareTo(high) > 0
                && is.mayBe().filter(urgency -> urgency.compareTo(high) <= 0).isEmpty();
    }

    private static Urgency urgency(Assessment assessment, Outcome outcome) {
        return assessment.findings().stream()
                .filter(f -> f.rule().equals(outcome.rule()) && f.subject().equals(outcome.subject()))
                .findFirst()
                .orElseThrow()
                .urgency();
    }

    private static boolean isStructural(Answer[] taken) {
        for (Answer answer : taken) {
            if (answer.item().isStructural()) {
                return true;
            }
        }
        return taken.length == 0;
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
