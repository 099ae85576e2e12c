package gaugeglass.engine.toy;

/** How the workshop's floor lies. */
public enum Floor {
    LEVEL,
    SLOPING
}
