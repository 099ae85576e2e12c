package gaugeglass.engine.toy;

/** What a frame is made of. */
public enum Material {
    STEEL,
    ALUMINIUM,
    CARBON
}
