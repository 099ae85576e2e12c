package gaugeglass.engine.build;

import gaugeglass.engine.book.RuleEntry;
import java.util.List;

/**
 * A rule as it stands in a rule file.
 *
 * @param card the first part of its name
 * @param band the second part
 * @param variant the third part; may be empty
 * @param file the file
 * @param line its line there
 * @param patterns its patterns in order
 */
public record WrittenRule(
        String card, String band, String variant, String file, int line, List<WrittenPattern> patterns) {

    /**
     * One pattern.
     *
     * @param type the fact's simple class name
     * @param line its line
     * @param binds variables with the parts they are bound to
     * @param constraints the constraints as written
     */
    public record WrittenPattern(String type, int line, List<WrittenBind> binds, List<String> constraints) {}

    /** One binding: {@code $variable : part}. */
    public record WrittenBind(String variable, String part) {}

    /** The rule as text again, so that a changed copy can be compiled. */
    public String text() {
        StringBuilder text = new StringBuilder("rule \"")
                .append(RuleEntry.name(card, band, variant))
                .append("\"\nwhen\n");
        for (WrittenPattern pattern : patterns) {
            text.append("    ").append(pattern.type()).append("( ");
            String comma = "";
            for (WrittenBind bind : pattern.binds()) {
                text.append(comma).append(bind.variable()).append(" : ").append(bind.part());
                comma = ", ";
            }
            for (String constraint : pattern.constraints()) {
                text.append(comma).append(constraint);
                comma = ", ";
            }
            text.append(" )\n");
        }
        return text.append("then\nend\n").toString();
    }
}
