package gaugeglass.engine.vocabulary;

import gaugeglass.engine.quantity.Quantity;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Predicate;

/**
 * The answers that a reckoning may read. Each call ends the reckoning when what it asks for was not
 * seen.
 */
public interface Seen {
    /** The visit's date. */
    LocalDate date();

    /** The value of a limit that is a quantity. */
    Quantity limit(String id);

    /** The answer about the unit or the site. */
    <T extends Record> T the(Class<T> item);

    /**
     * The answer about one piece of equipment; {@code keys} are its tag and, for a fixed kind, its
     * member.
     */
    <T extends Record> T of(Class<T> item, Object... keys);

    /**
     * Every answer of this item, one for each piece of equipment fitted; all must be described and
     * seen.
     */
    <T extends Record> List<T> each(Class<T> item);

    /**
     * Whether at least one answer of this item passes: true as soon as one seen answer does, false
     * only when all are described, seen and fail.
     */
    <T extends Record> boolean any(Class<T> item, Predicate<T> test);

    /**
     * Whether at least one answer of this item about one piece of equipment passes, over every
     * member of a fixed kind: true as soon as one seen answer does, whatever else is missing; false
     * only when all are seen and fail.
     */
    <T extends Record> boolean any(Class<T> item, String which, Predicate<T> test);

    /**
     * Whether at least so many answers of this item pass: true as soon as so many seen ones do, whatever else is missing;
     * false only when all are described and seen, and too few pass.
     */
    <T extends Record> boolean atLeast(int number, Class<T> item, Predicate<T> test);

    /** The tags of a counted kind; all must be described. */
    List<String> tags(String kind);

    /**
     * Ends the reckoning because those of a counted kind that are described do not suffice, and another of them would; to
     * be thrown. What was to be worked out is then unknown for want of that one.
     *
     * @param kind the counted kind
     * @param why what is wanting, as a phrase
     */
    RuntimeException another(String kind, String why);
}
