/** The interview in a terminal: one question at a time, every answer on disk before the next. */
package gaugeglass.cli.walk;
