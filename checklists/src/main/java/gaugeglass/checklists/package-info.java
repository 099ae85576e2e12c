/** What to ask, in what order, for which system: checklists composed from questions, and the interview over them. */
@org.jspecify.annotations.NullMarked
package gaugeglass.checklists;
