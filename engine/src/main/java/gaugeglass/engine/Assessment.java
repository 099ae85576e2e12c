package gaugeglass.engine;

import gaugeglass.engine.book.Basis;
import gaugeglass.engine.book.Consequence;
import gaugeglass.engine.book.Urgency;
import gaugeglass.engine.book.Waiver;
import gaugeglass.engine.facts.Missing;
import gaugeglass.engine.text.Words;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What one visit to one unit comes to. Every list has a stated order, and equal inputs give equal assessments.
 *
 * @param unit the unit's id
 * @param date the day it was judged for
 * @param testFiring whether it may be fired with somebody standing by
 * @param release whether it may be left to itself
 * @param findings most urgent first: by urgency, then consequence, then rule, then subject
 * @param diagnoses the likely causes, best supported first, then by id
 * @param outcomes what became of every rule and subject, in the rulebook's order, subjects in the roster's
 * @param wanting the answers that are missing, those first that keep a gate from being known, then those that would
 *     settle most
 * @param waived findings that a waiver covers, in the order of findings, which do not hold them
 * @param waiversLeft the waivers for this unit that covered nothing, in the order of the packs
 */
public record Assessment(
        String unit,
        LocalDate date,
        Gate testFiring,
        Gate release,
        List<Finding> findings,
        List<Cause> diagnoses,
        List<Outcome> outcomes,
        List<Wanting> wanting,
        List<Waived> waived,
        List<WaiverLeft> waiversLeft) {

    public Assessment {
        waived = List.copyOf(waived);
        waiversLeft = List.copyOf(waiversLeft);
        findings = List.copyOf(findings);
        diagnoses = List.copyOf(diagnoses);
        outcomes = List.copyOf(outcomes);
        wanting = List.copyOf(wanting);
    }

    /** A finding that a waiver covers. */
    public record Waived(Finding finding, Waiver waiver) {}

    /**
     * A waiver that covered nothing.
     *
     * @param reason why, as a sentence without a full stop
     */
    public record WaiverLeft(Waiver waiver, String reason) {}

    /** Whether one gate lets a visit go on. It never says that anything is safe. */
    public enum Permit {
        FORBIDDEN,
        NOT_KNOWN,
        NOTHING_FOUND_AGAINST;

        public String word() {
            return Words.of(this);
        }
    }

    /**
     * One gate.
     *
     * @param permit what it says
     * @param against what forbids it, in the order of findings
     * @param open what keeps it from being known, in the rulebook's order
     */
    public record Gate(Permit permit, List<Ref> against, List<Ref> open) {
        public Gate {
            against = List.copyOf(against);
            open = List.copyOf(open);
        }
    }

    /**
     * One practice about one subject; with the site and unit it is a finding's identity over years.
     *
     * @param rule the card's id
     * @param subject the tag; empty for the unit
     */
    public record Ref(String rule, String subject) {
        // Written out: a record's own are made with generated code, dear on a cold start.
        @Override
        public boolean equals(Object other) {
            return other instanceof Ref ref && ref.rule.equals(rule) && ref.subject.equals(subject);
        }

        @Override
        public int hashCode() {
            return 31 * rule.hashCode() + subject.hashCode();
        }
    }

    /** Whether a finding still stands at the end of the visit. */
    public enum Standing {
        /** Found, and not shown to be put right. */
        STANDING,
        /** Found at arrival; what was seen after work rules it out. */
        PUT_RIGHT,
        /** Not found at arrival; it came up during the visit. */
        ARISEN;

        public String word() {
            return Words.of(this);
        }
    }

    /**
     * One finding.
     *
     * @param rule the card's id
     * @param subject the tag; empty for the unit
     * @param urgency of the highest band found
     * @param band the band's name
     * @param state whether it still stands
     * @param title what is found
     * @param seen what was seen, a sentence for each piece of evidence
     * @param limits the limits it was held against
     * @param why the reason
     * @param action what to do
     * @param remedy the id of the work; empty where there is none
     * @param cautions the ids of the cautions that apply
     * @param consequence what suffers
     * @param basis what the rule stands on
     * @param evidence the observations it rests on
     * @param retest for a finding put right, the observations after the work that show it
     * @param dispute why the person on the spot believes it wrong; empty where nobody does
     */
    public record Finding(
            String rule,
            String subject,
            Urgency urgency,
            String band,
            Standing state,
            String title,
            List<String> seen,
            List<LimitUsed> limits,
            String why,
            String action,
            String remedy,
            List<String> cautions,
            Consequence consequence,
            Basis basis,
            List<Object> evidence,
            List<Object> retest,
            String dispute) {
        public Finding {
            seen = List.copyOf(seen);
            limits = List.copyOf(limits);
            cautions = List.copyOf(cautions);
            evidence = List.copyOf(evidence);
            retest = List.copyOf(retest);
        }

        public boolean isStanding() {
            return state != Standing.PUT_RIGHT;
        }
    }

    /**
     * A limit as a finding used it.
     *
     * @param id its name
     * @param value as written
     * @param meaning what it limits
     * @param setBy the document or kind of authority behind it
     * @param layer whose value it is
     */
    public record LimitUsed(String id, String value, String meaning, String setBy, String layer) {}

    /** The four things that can become of a rule. */
    public enum Word {
        FOUND,
        UNDETERMINED,
        IN_ORDER,
        NOT_APPLICABLE;

        public String word() {
            return Words.of(this);
        }
    }

    /**
     * What became of one practice for one subject at the end of the visit.
     *
     * @param rule the card's id
     * @param subject the tag; empty for the unit
     * @param outcome one of four
     * @param mayBe how urgent it may yet turn out, where an answer is missing; empty where it is settled
     * @param missing the answers that would settle it
     */
    public record Outcome(String rule, String subject, Word outcome, Optional<Urgency> mayBe, List<Missing> missing) {
        public Outcome {
            missing = List.copyOf(missing);
        }
    }

    /**
     * A missing answer and what hangs on it.
     *
     * @param answer which
     * @param settles the practices it bears on, in the rulebook's order
     * @param holdsGate whether one of them keeps a gate from being known
     */
    public record Wanting(Missing answer, List<Ref> settles, boolean holdsGate) {
        public Wanting {
            settles = List.copyOf(settles);
        }
    }

    /**
     * A likely cause of several findings.
     *
     * @param id its name
     * @param subject the tag; empty for the unit
     * @param cause in words
     * @param points evidence for it
     * @param against evidence against it
     * @param weight the weight of the evidence for, less that against
     * @param settledBy the id of the observation that would settle it
     * @param settle how to settle it
     */
    public record Cause(
            String id,
            String subject,
            String cause,
            List<Said> points,
            List<Said> against,
            int weight,
            String settledBy,
            String settle) {
        public Cause {
            points = List.copyOf(points);
            against = List.copyOf(against);
        }
    }

    /**
     * One piece of evidence.
     *
     * @param rule the card behind it
     * @param subject the tag it is about
     * @param text in words
     */
    public record Said(String rule, String subject, String text) {}

    /**
     * A finding that is on its way: it comes by waiting alone, if nothing is done before. It is a look ahead, no outcome.
     *
     * @param rule the card's id
     * @param subject the tag; empty for the unit
     * @param item the id of the dated answer
     * @param limit the id of the span of time that runs out
     * @param since the day from which it runs; empty where that was not seen
     * @param day the first day on which it is found; it may be past; empty where {@code since} is
     */
    public record Due(
            String rule,
            String subject,
            String item,
            String limit,
            Optional<LocalDate> since,
            Optional<LocalDate> day) {}

    /** How many practices came out how. */
    public long count(Word word) {
        return outcomes.stream().filter(outcome -> outcome.outcome() == word).count();
    }
}
