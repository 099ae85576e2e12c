/**
 * What a rulebook says besides its conditions: cards, limits, cautions, remedies, diagnoses, and
 * the index of rules.
 */
@org.jspecify.annotations.NullMarked
package gaugeglass.engine.book;
