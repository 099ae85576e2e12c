/** Reads YAML and JSON into nodes that know their place; the only package that touches a parser. */
@org.jspecify.annotations.NullMarked
package gaugeglass.engine.reading;
