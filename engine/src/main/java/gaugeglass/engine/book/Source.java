package gaugeglass.engine.book;

import gaugeglass.engine.text.Words;

/**
 * Where a fact or figure comes from.
 *
 * @param name the document, precisely enough to find the place
 * @param known how surely it is known
 */
public record Source(String name, Known known) {

    /** How surely the project knows what a source says. */
    public enum Known {
        /** The figure was read in that source or in an excerpt of it. */
        READ,
        /** Read in another document that quotes the source. */
        READ_SECOND_HAND,
        /** From memory, with high certainty. */
        MEMORY_HIGH,
        /** From memory, with medium certainty. */
        MEMORY_MEDIUM,
        /** From memory, with low certainty. */
        MEMORY_LOW;

        /** Whether it may carry a verdict that forbids firing. */
        public boolean isFirm() {
            return compareTo(MEMORY_HIGH) <= 0;
        }

        public String word() {
            return Words.of(this);
        }
    }
}
