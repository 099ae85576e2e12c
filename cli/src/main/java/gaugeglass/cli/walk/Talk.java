package gaugeglass.cli.walk;

/** The two ends of a conversation in a terminal; a test plays the other end. */
interface Talk {
    /** Shows lines. They are plain text; long ones are wrapped. */
    void say(String text);

    /** Begins a screen, as far as the terminal can: what was shown before is out of the way or above a rule. */
    void page();

    /**
     * Asks for a line.
     *
     * @throws Ended when the other end is closed
     */
    String line(String prompt);

    /**
     * Waits for one key.
     *
     * @throws Ended when the other end is closed
     */
    Key key();

    /** The time, on a clock that only runs forward. */
    long millis();

    /**
     * A key and when it was pressed.
     *
     * @param letter the character; a line feed for Enter
     * @param millis on a clock that only runs forward
     */
    record Key(char letter, long millis) {}

    /** Thrown when the person at the other end is gone. */
    final class Ended extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Ended() {
            super("the conversation was ended", null, false, false);
        }
    }
}
