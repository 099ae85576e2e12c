/**
 * Exact quantities with units, and the parsers for the way people write them.
 *
 * <p>Start at {@link gaugeglass.engine.quantity.Quantity#parse Quantity.parse}. Values are exact
 * fractions, so a verdict never depends on how a number happened to be rounded; doubles do not
 * occur here.
 */
@NullMarked
package gaugeglass.engine.quantity;

import org.jspecify.annotations.NullMarked;
