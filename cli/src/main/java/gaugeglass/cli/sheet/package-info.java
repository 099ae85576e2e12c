/** The checklist on one page for a phone, with what that page needs to know of the rulebook and the vocabulary. */
@org.jspecify.annotations.NullMarked
package gaugeglass.cli.sheet;
