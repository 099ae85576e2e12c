package gaugeglass.engine.book;

import gaugeglass.engine.text.Words;

/** What a rule or a limit stands on. */
public enum Basis {
    /**
     * A published standard, code or government document, named as a source. Such a limit is never
     * loosened.
     */
    STANDARD,
    /** It follows from physics. */
    CALCULATED,
    /** Common practice of the trade, without a source. */
    PRACTICE,
    /** This project's own choice. */
    OURS;

    public String word() {
        return Words.of(this);
    }

    /** What it is, as people read it. */
    public String told() {
        return switch (this) {
            case STANDARD -> "a published standard";
            case CALCULATED -> "calculation";
            case PRACTICE -> "common practice";
            case OURS -> "this rulebook's own choice";
        };
    }

    /** What it means, for somebody who reads the rulebook itself. */
    public String explained() {
        return switch (this) {
            case STANDARD -> "a published standard, code or government document";
            case CALCULATED -> "follows from physics";
            case PRACTICE -> "common practice of the trade";
            case OURS -> told();
        };
    }
}
