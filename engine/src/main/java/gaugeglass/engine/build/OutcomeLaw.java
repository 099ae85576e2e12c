package gaugeglass.engine.build;

import gaugeglass.engine.Assessment;
import gaugeglass.engine.Assessment.Finding;
import gaugeglass.engine.Assessment.Outcome;
import gaugeglass.engine.Assessment.Permit;
import gaugeglass.engine.Assessment.Ref;
import gaugeglass.engine.Assessment.Word;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.book.Urgency;
import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.Observations;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Checks that taking answers away from a visit only turns outcomes into undetermined.
 *
 * <p>The one exception: a practice that does not apply may come to be in order, when an answer that told what is fitted
 * is taken away and another answer still rules it out.
 */
public final class OutcomeLaw {
    private final Rulebook rulebook;
    private final LocalDate date;
    private int weaker;

    public OutcomeLaw(Rulebook rulebook, LocalDate date) {
        this.rulebook = rulebook;
        this.date = date;
    }

    /** How many outcomes became undetermined so far; none at all would mean that nothing was tried. */
    public int weaker() {
        return weaker;
    }

    /** What breaks the law when these answers are taken from a visit judged before, a sentence each. */
    public List<String> broken(Assessment before, Observations visit, List<Answer> taken) {
        Observations.Builder less = visit.toBuilder();
        taken.forEach(less::without);
        boolean structural = taken.stream().anyMatch(answer -> answer.item().isStructural());
        return broken(before, less.build(), structural, "without " + words(taken));
    }

    /** What breaks the law when a kind's number is taken from a visit judged before. */
    public List<String> broken(Assessment before, Observations visit, String kind) {
        return broken(before, visit.toBuilder().withoutCount(kind).build(), true, "without the number of " + kind);
    }

    private static String words(List<Answer> taken) {
        List<String> words = new ArrayList<>();
        taken.forEach(answer ->
                words.add(answer.item().id() + (answer.subject().isEmpty() ? "" : " of " + answer.subject())));
        return String.join(" and ", words);
    }

    private List<String> broken(Assessment before, Observations less, boolean structural, String how) {
        Assessment after = rulebook.assess(less, date);
        List<String> broken = new ArrayList<>();
        Map<Ref, Outcome> left = new HashMap<>();
        after.outcomes().forEach(outcome -> left.put(new Ref(outcome.rule(), outcome.subject()), outcome));
        for (Outcome was : before.outcomes()) {
            Outcome is = left.get(new Ref(was.rule(), was.subject()));
            if (is == null) {
                // Where nothing was fitted there is now somebody not listed.
                if (was.outcome() != Word.NOT_APPLICABLE || !was.subject().isEmpty()) {
                    broken.add(was + " vanished " + how);
                }
                continue;
            }
            weaker += was.outcome() != is.outcome() ? 1 : 0;
            if (!isLawful(before, after, was, is, structural)) {
                broken.add(was + " became " + is + " " + how);
            }
        }
        for (Ref against : before.testFiring().against()) {
            boolean early = rulebook.book().card(against.rule()).stage().isBeforeFiring();
            if (early
                    && !after.testFiring().against().contains(against)
                    && !after.testFiring().open().contains(against)) {
                broken.add(against + " is no longer against firing " + how);
            }
        }
        if (isLet(after.testFiring()) && !isLet(before.testFiring()) && !isOfLateStopOnly(before)) {
            broken.add("firing was " + before.testFiring().permit() + " and is let go on " + how);
        }
        if (isLet(after.release()) && !isLet(before.release())) {
            broken.add("release was " + before.release().permit() + " and is let go on " + how);
        }
        return broken;
    }

    private static boolean isLet(Assessment.Gate gate) {
        return gate.permit() == Permit.NOTHING_FOUND_AGAINST;
    }

    /** A stop of a later stage forbids firing while it is seen, and is not asked for before firing. */
    private boolean isOfLateStopOnly(Assessment before) {
        return before.testFiring().open().isEmpty()
                && before.testFiring().against().stream()
                        .noneMatch(
                                ref -> rulebook.book().card(ref.rule()).stage().isBeforeFiring());
    }

    private static boolean isLawful(Assessment before, Assessment after, Outcome was, Outcome is, boolean structural) {
        return switch (was.outcome()) {
            case FOUND ->
                is.outcome() == Word.UNDETERMINED || is.outcome() == Word.FOUND && !isLower(before, after, was, is);
            case UNDETERMINED -> is.outcome() == Word.UNDETERMINED;
            case IN_ORDER -> is.outcome() == Word.IN_ORDER || is.outcome() == Word.UNDETERMINED;
            case NOT_APPLICABLE ->
                is.outcome() == Word.NOT_APPLICABLE
                        || is.outcome() == Word.UNDETERMINED
                        || is.outcome() == Word.IN_ORDER && structural;
        };
    }

    /** A lower degree than before, with nothing said of the higher. */
    private static boolean isLower(Assessment before, Assessment after, Outcome was, Outcome is) {
        Urgency high = urgency(before, was);
        return high.isAbove(urgency(after, is))
                && is.mayBe().filter(urgency -> !high.isAbove(urgency)).isEmpty();
    }

    private static Urgency urgency(Assessment assessment, Outcome outcome) {
        return assessment.findings().stream()
                .filter(f -> f.rule().equals(outcome.rule()) && f.subject().equals(outcome.subject()))
                .map(Finding::urgency)
                .findFirst()
                .orElseThrow();
    }
}
