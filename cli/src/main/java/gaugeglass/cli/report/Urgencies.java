package gaugeglass.cli.report;

import gaugeglass.cli.paper.Style;
import gaugeglass.engine.book.Urgency;

/** How each urgency is said to people. */
public final class Urgencies {
    private Urgencies() {}

    public static String heading(Urgency urgency) {
        return urgency.told();
    }

    /** How soon, behind a number of findings. */
    static String counted(Urgency urgency) {
        return switch (urgency) {
            case STOP -> "that forbid firing";
            case NOW -> "to put right before leaving";
            case SEASON -> "for this season";
            case PLAN -> "to plan";
            case WATCH -> "to watch";
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
