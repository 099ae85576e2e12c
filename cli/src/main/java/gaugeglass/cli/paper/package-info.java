/** Putting text on a screen: columns, wrapping, colour, and characters that the screen can show. */
@org.jspecify.annotations.NullMarked
package gaugeglass.cli.paper;
