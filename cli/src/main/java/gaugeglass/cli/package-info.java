/** The entry of the command line: the only place that knows the process, its streams and its clock. */
@org.jspecify.annotations.NullMarked
package gaugeglass.cli;
