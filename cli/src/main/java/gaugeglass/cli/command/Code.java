package gaugeglass.cli.command;

/** What the process tells its caller; of several that apply, the greatest. */
final class Code {
    /** Everything was judged. */
    static final int JUDGED = 0;

    /** Asked with {@code --fail-at}: something that urgent stands, or a permit is not given. */
    static final int FOUND = 1;

    /** The command line is wrong; nothing was done. */
    static final int WRONG_LINE = 2;

    /** A file could not be used; the others were. */
    static final int UNUSABLE = 3;

    /** The program failed, or could not write its results. */
    static final int FAULT = 4;

    private Code() {}
}
