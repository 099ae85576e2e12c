/** Makes a rulebook from what people write: checks it, compiles the rules, and leaves an index. Not used at run time. */
@org.jspecify.annotations.NullMarked
package gaugeglass.engine.build;
