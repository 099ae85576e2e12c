/** Reports on paper and as a file for a browser, and lists of work; start at {@link gaugeglass.cli.printed.PrintedReport}. */
@org.jspecify.annotations.NullMarked
package gaugeglass.cli.printed;
