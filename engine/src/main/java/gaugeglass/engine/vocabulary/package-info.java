/** What can be observed: kinds of equipment, and the one small record for each observation. */
@org.jspecify.annotations.NullMarked
package gaugeglass.engine.vocabulary;
