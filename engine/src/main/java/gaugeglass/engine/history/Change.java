package gaugeglass.engine.history;

/**
 * One difference between two releases.
 *
 * @param sort what the id is the id of
 * @param id the id
 * @param fate what became of it
 * @param told the difference as a clause, with the values before and after where they are short
 */
public record Change(Sort sort, String id, Fate fate, String told) {
    /** What became of an id. */
    public enum Fate {
        /** The later release has it first. */
        NEW,
        /** Both have it, and it says something else. */
        CHANGED,
        /** The later release does not have it. */
        GONE
    }

    /** On one line. */
    public String line() {
        return sort.word() + " " + id + ": " + told;
    }
}
