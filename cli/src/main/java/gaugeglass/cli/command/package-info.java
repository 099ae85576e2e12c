/** The commands, and the reading of command lines. */
@org.jspecify.annotations.NullMarked
package gaugeglass.cli.command;
