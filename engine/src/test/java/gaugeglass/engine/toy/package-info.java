/** A toy trade for the tests of the engine. */
@org.jspecify.annotations.NullMarked
package gaugeglass.engine.toy;
