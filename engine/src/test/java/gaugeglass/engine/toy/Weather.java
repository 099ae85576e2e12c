package gaugeglass.engine.toy;

/** In which weather a brake is pulled. */
public enum Weather {
    DRY,
    WET
}
