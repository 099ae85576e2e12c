package gaugeglass.engine.toy;

/** What a pulled brake did. */
public enum Grip {
    HELD,
    SLIPPED,
    NOT_PULLED
}
