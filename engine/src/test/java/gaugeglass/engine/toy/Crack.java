package gaugeglass.engine.toy;

/** Whether a crack was seen. */
public enum Crack {
    NONE_SEEN,
    HAIRLINE,
    OPEN
}
