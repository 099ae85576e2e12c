package gaugeglass.engine.vocabulary;

import java.util.List;

/**
 * A fact worked out from observations before the rules run.
 *
 * <p>It reads answers only through {@link Seen}: reading one that was not seen ends the reckoning
 * there, and its result is then unknown for want of that answer. So a reckoning never guesses and
 * never tests for absence.
 */
public interface Reckoning {
    /**
     * The record class of the result; it carries {@link Item} with {@code of} naming the kind it is
     * worked out for.
     */
    Class<? extends Record> gives();

    /** The observation records it may read. */
    List<Class<? extends Record>> needs();

    /** The limits it may read, by id. */
    default List<String> limits() {
        return List.of();
    }

    /**
     * Works out the fact for one subject.
     *
     * @param seen the answers
     * @param which the tag of the subject; empty for the unit or the site
     * @return the fact, or an empty list where the answers seen tell that there is nothing to work
     *     out
     */
    List<? extends Record> work(Seen seen, String which);
}
