package gaugeglass.engine.book;

import gaugeglass.engine.text.Words;

/** How soon something must be done, most urgent first. */
public enum Urgency {
    STOP,
    NOW,
    SEASON,
    PLAN,
    WATCH;

    public boolean isAbove(Urgency other) {
        return compareTo(other) < 0;
    }

    public String word() {
        return Words.of(this);
    }

    /** How soon, as people read it. */
    public String told() {
        return switch (this) {
            case STOP -> "Do not fire";
            case NOW -> "Put right before leaving";
            case SEASON -> "This heating season";
            case PLAN -> "Plan and budget";
            case WATCH -> "Watch and record";
        };
    }
}
