/** From the words of a command line to judged inspections: finding files, reading them, judging them in order. */
@org.jspecify.annotations.NullMarked
package gaugeglass.cli.visit;
