package gaugeglass.engine.reading;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A piece of a file that a person wrote, with its place. */
public sealed interface Node {
    /** Longer texts are cut in messages. */
    int LONGEST_SHOWN = 60;

    int line();

    int column();

    /** What it is, in words for a message. */
    String shape();

    /** A text short enough for a message. */
    static String shortened(String text) {
        int end = Math.min(text.length(), LONGEST_SHOWN);
        if (end == text.length()) {
            return text;
        }
        // Not between the two halves of one character.
        return text.substring(0, Character.isHighSurrogate(text.charAt(end - 1)) ? end - 1 : end) + "...";
    }

    /**
     * A value as it was written.
     *
     * @param isQuoted whether it was written as a string, so that it cannot have been meant as a
     *     number or nothing
     */
    record Scalar(String text, boolean isQuoted, int line, int column) implements Node {
        @Override
        public String shape() {
            return isBlank() ? "nothing" : "\"" + shortened(text) + "\"";
        }

        /** Whether the key stands there with nothing after it. */
        public boolean isBlank() {
            return !isQuoted && (text.isEmpty() || text.equals("null") || text.equals("~"));
        }
    }

    /** A list of nodes. */
    record Items(List<Node> all, int line, int column) implements Node {
        @Override
        public String shape() {
            return "a list";
        }
    }

    /** Keys and their nodes, in the order written. */
    record Fields(Map<String, Field> all, int line, int column) implements Node {
        @Override
        public String shape() {
            return "a group of keys";
        }

        public Optional<Node> get(String key) {
            return Optional.ofNullable(all.get(key)).map(Field::value);
        }

        static Fields at(int line, int column) {
            return new Fields(new LinkedHashMap<>(), line, column);
        }
    }

    /** A key with its place, and what stands under it. */
    record Field(String key, Node value, int line, int column) {}
}
