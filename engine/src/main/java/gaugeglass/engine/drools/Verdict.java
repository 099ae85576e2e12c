package gaugeglass.engine.drools;

import gaugeglass.engine.book.RuleEntry;
import gaugeglass.engine.facts.Missing;
import java.util.List;

/**
 * What became of one rule for one subject.
 *
 * @param rule the rule
 * @param subject the tag it is about; empty for the unit
 * @param outcome one of four
 * @param evidence the matches, when it was found
 * @param missing what would settle it, when it is open
 */
public record Verdict(RuleEntry rule, String subject, Outcome outcome, List<Evidence> evidence, List<Missing> missing) {

    /** The four things that can become of a rule. */
    public enum Outcome {
        FOUND,
        UNDETERMINED,
        IN_ORDER,
        NOT_APPLICABLE
    }
}
