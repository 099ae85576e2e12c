package gaugeglass.engine.vocabulary;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Marks a record as one observation: one thing that somebody can see, and answer, on its own.
 *
 * <p>Every component of the record is required. What can go unseen on its own is a record of its
 * own.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
public @interface Item {
    /**
     * The item's name for good: {@code group.name}, lower case with hyphens. For equipment that is
     * counted the group is the kind's id ({@code cutoff.kind}); elsewhere it is the heading it
     * stands under in a file.
     */
    String id();

    /** The id of the kind of thing that is observed. */
    String of();

    Stage stage();

    /** The question, in the words of the trade. */
    String ask();

    /** How to look, in a sentence or two; of what is reckoned, how it is worked out. May be empty. */
    String look() default "";

    /** Whether it tells what is fitted (kind, role, piping) rather than how it is doing. */
    boolean structural() default false;

    /**
     * Whether last visit's answer may be shown beside the question: identity and dates, never a
     * reading or a test.
     */
    boolean carried() default false;

    /** The usual reasons for which this cannot be read. */
    String[] unreadBecause() default {};
}
