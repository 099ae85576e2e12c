package gaugeglass.engine.book;

import java.util.List;

/**
 * What the index knows of one rule: where it stands and what it looks at.
 *
 * @param card the card it belongs to
 * @param band the card's band it finds
 * @param variant tells apart several rules of one band; may be empty
 * @param file the file it stands in
 * @param line its line there
 * @param needs the ids of the items it looks at
 * @param limits the ids of the limits it uses
 * @param steps its patterns in order
 */
public record RuleEntry(
        String card,
        String band,
        String variant,
        String file,
        int line,
        List<String> needs,
        List<String> limits,
        List<Step> steps) {

    /**
     * One pattern of a rule.
     *
     * @param type the fact's class
     * @param checks for each constraint in order, {@code k} where it looks only at keys, else
     *     {@code v}
     * @param keyBinds the variables that are bound to keys
     * @param join the variable that the first key must equal; empty where there is none
     * @param literal the text that the first key must equal; empty where there is none
     */
    public record Step(String type, String checks, List<String> keyBinds, String join, String literal) {}

    /** The rule's full name, as it stands in the rule file. */
    public String name() {
        return name(card, band, variant);
    }

    /** The name of a rule with these parts. */
    public static String name(String card, String band, String variant) {
        return card + " / " + band + (variant.isEmpty() ? "" : " / " + variant);
    }
}
