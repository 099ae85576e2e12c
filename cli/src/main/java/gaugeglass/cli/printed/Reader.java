package gaugeglass.cli.printed;

/** Whom a report is for. */
public enum Reader {
    /** Somebody who pays and decides, and is no technician. */
    OWNER,
    /** Whoever has to know later what was seen, and what followed from it. */
    FILE
}
