package gaugeglass.engine.quantity;

import java.util.Optional;

/**
 * A written quantity or period that cannot be read without guessing.
 *
 * <p>The message is made of the parts, so that a caller who knows the place (file, line, key) can
 * set it in front. What was typed is shown without characters that could steer a terminal, and
 * shortened when long.
 */
public final class QuantityFormatException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;
    private static final int LONGEST_SHOWN = 40;

    private final String typed;
    private final String problem;
    private final String expected;

    /** Empty when there is none: an exception must be serializable, and Optional is not. */
    private final String nearest;

    /** The nearest word may be empty, when none is near. */
    QuantityFormatException(String typed, String problem, String expected, String nearest) {
        super(message(shown(typed), problem, expected, nearest));
        this.typed = shown(typed);
        this.problem = problem;
        this.expected = expected;
        this.nearest = nearest;
    }

    /** What was typed, fit for showing. */
    public String typed() {
        return typed;
    }

    /** What is wrong with it. */
    public String problem() {
        return problem;
    }

    /** What would have been right. */
    public String expected() {
        return expected;
    }

    /** The known word nearest to the one that is not known. */
    public Optional<String> nearest() {
        return nearest.isEmpty() ? Optional.empty() : Optional.of(nearest);
    }

    private static String message(String shown, String problem, String expected, String nearest) {
        String message = "'" + shown + "': " + problem + "; expected " + expected;
        return nearest.isEmpty() ? message : message + "; nearest known: " + nearest;
    }

    /** The text with every character that has no shape of its own replaced by a question mark. */
    static String shown(String text) {
        StringBuilder result = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            if (result.length() == LONGEST_SHOWN) {
                return result.append("...").toString();
            }
            char c = text.charAt(i);
            result.append(Characters.isSpace(c) ? ' ' : Characters.isShapeless(c) ? '?' : c);
        }
        return result.toString();
    }
}
