package gaugeglass.engine.drools;

import gaugeglass.engine.facts.Facts;
import java.util.List;
import java.util.Map;

/** What the first judge does, whether it holds all rules or only those that a visit can match. */
interface FirstJudge {
    /** Adds every match to those of each rule, by the rule's name. */
    void matches(Facts facts, Map<String, List<Evidence>> matches);
}
