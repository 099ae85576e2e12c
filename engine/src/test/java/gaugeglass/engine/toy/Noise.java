package gaugeglass.engine.toy;

/** What was heard on the ride. */
public enum Noise {
    NONE_HEARD,
    CLICK,
    GRINDING
}
