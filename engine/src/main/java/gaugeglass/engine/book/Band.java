package gaugeglass.engine.book;

import java.util.Map;

/**
 * One degree of a practice: how urgent it is that far past its limit, and what is said to have been
 * seen.
 *
 * @param name the second part of the names of its rules
 * @param urgency meaningless on a sign
 * @param seen a sentence with {@code {bound}} words
 * @param variants other sentences, for rules whose name has a third part
 */
public record Band(String name, Urgency urgency, String seen, Map<String, String> variants) {
    public Band {
        variants = Map.copyOf(variants);
    }

    /** The sentence for a rule of this band; the variant may be empty. */
    public String seen(String variant) {
        return variants.getOrDefault(variant, seen);
    }
}
