package gaugeglass.cli.walk;

import gaugeglass.engine.vocabulary.Kind;
import java.util.Optional;

/** How many of a kind there are, as typed. */
final class Count {
    private Count() {}

    /** The number; empty where it is none, or none that is believed. */
    static Optional<Integer> read(String typed, Kind kind) {
        try {
            int number = Integer.parseInt(typed);
            return number < 0 || number > kind.most() ? Optional.empty() : Optional.of(number);
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    /** What is wrong with a text that is not read. */
    static String wrong(String typed, Kind kind) {
        return "\"" + typed + "\" is no number of a " + kind.label() + " that is believed. Type how many, 0 to "
                + kind.most() + ".";
    }
}
