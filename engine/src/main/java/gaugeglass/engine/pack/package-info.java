/**
 * Packs: what a jurisdiction or a company lays over a rulebook. {@link gaugeglass.engine.pack.PackFiles} takes up a
 * folder or zip, {@link gaugeglass.engine.pack.Pack} is what it says, and {@link gaugeglass.engine.pack.Tailoring} lays
 * packs over a rulebook.
 */
@org.jspecify.annotations.NullMarked
package gaugeglass.engine.pack;
