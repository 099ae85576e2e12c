package gaugeglass.engine.toy;

/** Where a wheel sits. */
public enum Place {
    FRONT,
    REAR
}
