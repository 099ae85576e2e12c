package gaugeglass.engine.toy;

/** How a brake works. */
public enum BrakeSort {
    RIM,
    DISC,
    BACK_PEDAL
}
