package gaugeglass.checklists;

import java.util.List;

/**
 * One condition under which a question is asked: an earlier answer that is one of some words.
 *
 * @param item the item answered earlier; a count's id ({@code cutoff.fitted}) tests for {@code some} or {@code none}
 * @param words the answers that let the question be asked
 */
public record AskWhen(String item, List<String> words) {
    /** The word for a count of one or more. */
    public static final String SOME = "some";

    /** The word for a count of nothing. */
    public static final String NONE = "none";

    public AskWhen {
        words = List.copyOf(words);
    }
}
