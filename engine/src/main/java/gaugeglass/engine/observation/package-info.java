/**
 * What was observed on one visit: answers with their state, rosters, and the reading of inspection
 * files.
 */
@org.jspecify.annotations.NullMarked
package gaugeglass.engine.observation;
