package gaugeglass.engine.history;

import gaugeglass.engine.text.Words;

/** What an id of a rulebook is the id of. */
public enum Sort {
    LIMIT,
    CHECK,
    ITEM,
    CAUTION,
    REMEDY;

    /** The word for it. */
    public String word() {
        return Words.of(this);
    }
}
