/** What an assessment looks like, for people and for programs. */
@org.jspecify.annotations.NullMarked
package gaugeglass.cli.report;
