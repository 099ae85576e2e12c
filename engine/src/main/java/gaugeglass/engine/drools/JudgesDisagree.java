package gaugeglass.engine.drools;

/**
 * Thrown when the two judges do not see the same matches. It is a fault of the program, and there
 * is no verdict.
 */
public final class JudgesDisagree extends IllegalStateException {
    private static final long serialVersionUID = 1L;

    JudgesDisagree(String message) {
        super(message);
    }
}
