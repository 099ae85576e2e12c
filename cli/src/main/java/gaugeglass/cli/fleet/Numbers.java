package gaugeglass.cli.fleet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Texts with a number for each, from 0 on in the order in which they came; a number takes less room than a text. */
final class Numbers {
    private final Map<String, Integer> numbers = new HashMap<>();
    private final List<String> texts = new ArrayList<>();

    /** The text's number; a new text gets the next. */
    int of(String text) {
        Integer known = numbers.get(text);
        if (known == null) {
            known = texts.size();
            numbers.put(text, known);
            texts.add(text);
        }
        return known;
    }

    /** The number of a text that must be there. */
    int known(String text) {
        Integer known = numbers.get(text);
        if (known == null) {
            throw new IllegalStateException("\"" + text + "\" has no number");
        }
        return known;
    }

    String text(int number) {
        return texts.get(number);
    }

    int size() {
        return texts.size();
    }
}
