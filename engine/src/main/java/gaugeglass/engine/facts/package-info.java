/**
 * Observations of one state as facts and slots: what is known, what is not, and for want of what.
 */
@org.jspecify.annotations.NullMarked
package gaugeglass.engine.facts;
