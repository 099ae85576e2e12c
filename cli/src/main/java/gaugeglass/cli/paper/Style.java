package gaugeglass.cli.paper;

/** How a line is set off on a screen with colour. */
public enum Style {
    PLAIN(""),
    STRONG("1"),
    /** Forbids something. */
    ALARM("1;31"),
    /** Asks for work, or for an answer. */
    WARNING("1;33"),
    FAINT("2");

    private final String code;

    Style(String code) {
        this.code = code;
    }

    String on() {
        return code.isEmpty() ? "" : "\u001b[" + code + "m";
    }

    String off() {
        return code.isEmpty() ? "" : "\u001b[0m";
    }
}
