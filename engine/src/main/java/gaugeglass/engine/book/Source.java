package gaugeglass.engine.book;

import gaugeglass.engine.text.Words;

/**
 * Where a fact or figure comes from.
 *
 * @param name the document, precisely enough to find the place
 * @param known how surely it is known
 */
public record Source(String name, Known known) {
    // Written out, as what a record makes of these by itself is spun anew at each start, which takes longer than most
    // reckonings.
    @Override
    public boolean equals(Object other) {
        return other instanceof Source source && source.name.equals(name) && source.known == known;
    }

    @Override
    public int hashCode() {
        return 31 * name.hashCode() + known.ordinal();
    }

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
