package gaugeglass.steam.handbook;

import gaugeglass.engine.quantity.Dimension;
import java.util.List;
import java.util.Optional;

/**
 * One thing that a reckoning wants to be told.
 *
 * @param name what it is called on a command line, lower case with hyphens
 * @param kind how it is written
 * @param what what it is, in words
 * @param need whether it must be told
 * @param otherwise what is taken when it is not told, as it would be written; empty when nothing is
 */
public record Input(String name, Kind kind, String what, Need need, String otherwise) {

    /** Whether something must be told. */
    public enum Need {
        REQUIRED,
        /** Something stands in for it. */
        DEFAULTED,
        /** Without it, the reckoning gives less. */
        OPTIONAL
    }

    /** How something is written. */
    public sealed interface Kind {
        /** The form, as a phrase. */
        String form();
    }

    /** A number and a unit. */
    public record Measure(Dimension dimension) implements Kind {
        @Override
        public String form() {
            return dimension.words() + " (" + dimension.usualUnits() + ")";
        }
    }

    /** A number without a unit. */
    public record Number() implements Kind {
        @Override
        public String form() {
            return "a number";
        }
    }

    /** One of some words. */
    public record Choice(List<String> words) implements Kind {
        public Choice {
            words = List.copyOf(words);
        }

        @Override
        public String form() {
            return "one of " + String.join(", ", words);
        }
    }

    /** An amount of money and the word for it. */
    public record Money() implements Kind {
        @Override
        public String form() {
            return "a number and the word for the money, as in 6.23 dollars";
        }
    }

    /** A list of radiators. */
    public record Survey() implements Kind {
        @Override
        public String form() {
            return "radiators parted by ; as in 6 x 3-column 26 in; 4 x wall 7A; 20 ft x 1 1/4 in pipe; 45 ft2";
        }
    }

    /** A list of burner times. */
    public record Burns() implements Kind {
        @Override
        public String form() {
            return "times the flame came and went, as in 10:00-10:04:30 10:09-10:13";
        }
    }

    /** What stands in for it, as it would be written. */
    public Optional<String> standIn() {
        return otherwise.isEmpty() ? Optional.empty() : Optional.of(otherwise);
    }
}
