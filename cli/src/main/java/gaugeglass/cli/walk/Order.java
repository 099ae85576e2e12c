package gaugeglass.cli.walk;

import java.util.Locale;
import java.util.Optional;

/**
 * Something other than an answer that is typed at a question.
 *
 * @param verb what is wanted
 * @param words what was typed after it; may be empty
 */
record Order(Verb verb, String words) {
    /** What can be wanted, by its letter and its word. */
    enum Verb {
        BACK('b', "back"),
        SKIP('s', "skip"),
        CANNOT('u', "unread"),
        NOTE('n', "note"),
        PHOTO('p', "photo"),
        AS_LEFT('l', "left"),
        DISPUTE('d', "dispute"),
        FINDINGS('f', "findings"),
        TABLE('t', "table"),
        HELP('?', "help"),
        QUIT('q', "quit");

        private final char letter;
        private final String word;

        Verb(char letter, String word) {
            this.letter = letter;
            this.word = word;
        }

        char letter() {
            return letter;
        }
    }

    /**
     * Reads an order. Where the answer is free text, only an order that begins with a full stop is one.
     *
     * @return empty where the text is an answer
     */
    static Optional<Order> of(String typed, boolean freeText) {
        String text = typed;
        if (text.startsWith(".") && text.length() > 1) {
            text = text.substring(1);
        } else if (freeText && !text.equals("?")) {
            return Optional.empty();
        }
        int space = text.indexOf(' ');
        String head = (space < 0 ? text : text.substring(0, space)).toLowerCase(Locale.ROOT);
        String rest = space < 0 ? "" : text.substring(space + 1).strip();
        for (Verb verb : Verb.values()) {
            if (head.equals(verb.word) || head.length() == 1 && head.charAt(0) == verb.letter) {
                return Optional.of(new Order(verb, rest));
            }
        }
        return Optional.empty();
    }
}
