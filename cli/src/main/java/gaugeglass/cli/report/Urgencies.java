package gaugeglass.cli.report;

import gaugeglass.cli.paper.Style;
import gaugeglass.engine.book.Urgency;

/** How each urgency is said to people. */
public final class Urgencies {
    private Urgencies() {}

    public static String heading(Urgency urgency) {
        return switch (urgency) {
            case STOP -> "Do not fire";
            case NOW -> "Put right before leaving";
            case SEASON -> "This heating season";
            case PLAN -> "Plan and budget";
            case WATCH -> "Watch and record";
        };
    }

    static Style style(Urgency urgency) {
        return switch (urgency) {
            case STOP -> Style.ALARM;
            case NOW -> Style.WARNING;
            default -> Style.STRONG;
        };
    }
}
