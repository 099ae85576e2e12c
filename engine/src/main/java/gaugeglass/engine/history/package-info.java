/**
 * What a rulebook said at each of its releases. {@link gaugeglass.engine.history.Release} is one record,
 * {@link gaugeglass.engine.history.History} finds them, and {@link gaugeglass.engine.history.Change} is what differs between
 * two.
 */
@org.jspecify.annotations.NullMarked
package gaugeglass.engine.history;
