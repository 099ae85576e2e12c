package gaugeglass.engine.book;

import gaugeglass.engine.text.Words;

/** What suffers when a finding is left alone, worst first. */
public enum Consequence {
    PEOPLE,
    PLANT,
    WATER_AND_FUEL,
    COMFORT;

    public String word() {
        return Words.of(this);
    }
}
