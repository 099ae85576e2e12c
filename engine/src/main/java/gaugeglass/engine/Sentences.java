package gaugeglass.engine;

import gaugeglass.engine.text.Words;
import java.util.Map;

/** Fills the {@code {bound}} words of a card's sentence with what was seen. */
final class Sentences {
    private Sentences() {}

    static String fill(String sentence, Map<String, Object> bound) {
        StringBuilder filled = new StringBuilder(sentence.length() + 32);
        int from = 0;
        for (int open = sentence.indexOf('{'); open >= 0; open = sentence.indexOf('{', from)) {
            int close = sentence.indexOf('}', open);
            String word = sentence.substring(open + 1, close);
            Object value = bound.get(word);
            if (value == null) {
                throw new IllegalStateException(
                        "\"" + sentence + "\" uses {" + word + "}, which the rule does not bind");
            }
            filled.append(sentence, from, open).append(Words.spoken(value));
            from = close + 1;
        }
        return filled.append(sentence, from, sentence.length()).toString();
    }
}
