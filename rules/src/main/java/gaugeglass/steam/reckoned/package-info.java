/**
 * The reckonings that turn answers into facts before the rules run: each reads what was seen, asks a pure function of
 * {@code gaugeglass.steam.reckon}, and gives a fact that rules can look at like any other.
 *
 * <p>An answer that is wanting ends a reckoning by itself, so none of them tests for it.
 */
package gaugeglass.steam.reckoned;
