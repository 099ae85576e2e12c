package gaugeglass.engine.observation;

/** When on the visit an answer held. */
public enum State {
    /** Before anything was put right. */
    AS_FOUND,
    /** After something was put right, or tested again. */
    AS_LEFT
}
