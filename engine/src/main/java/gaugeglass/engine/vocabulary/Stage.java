package gaugeglass.engine.vocabulary;

import gaugeglass.engine.text.Words;

/**
 * The part of a visit in which something is looked at; a stage opens when the one before it is
 * proven.
 */
public enum Stage {
    ARRIVAL,
    COLD,
    FIRING,
    HOT,
    LEAVING;

    /** Whether what belongs to this stage is settled before anything is fired. */
    public boolean isBeforeFiring() {
        return this == ARRIVAL || this == COLD;
    }

    public String word() {
        return Words.of(this);
    }
}
