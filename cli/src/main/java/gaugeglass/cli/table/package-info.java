/** Tables for spreadsheets, whose cells can do no harm there. */
@org.jspecify.annotations.NullMarked
package gaugeglass.cli.table;
