package gaugeglass.cli.printed;

/** The sheets that a report is laid out for. */
public enum PaperSize {
    LETTER,
    A4;

    /** The word for it in a style sheet. */
    String css() {
        return this == LETTER ? "letter" : "A4";
    }
}
