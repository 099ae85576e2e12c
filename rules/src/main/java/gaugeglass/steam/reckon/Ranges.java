package gaugeglass.steam.reckon;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;

/** The one way a reckoning refuses what lies outside its range. */
final class Ranges {
    private Ranges() {}

    /** The quantity itself, when it is above the lowest, which is not included, and at most the highest. */
    static Quantity above(String what, Quantity quantity, Quantity lowest, Quantity highest) {
        sameDimension(what, quantity, lowest);
        if (quantity.isAtMost(lowest) || quantity.isAbove(highest)) {
            throw new IllegalArgumentException(
                    what + " of " + quantity + "; expected more than " + lowest + ", to " + highest);
        }
        return quantity;
    }

    /** The number itself, when it is from the lowest to the highest, both included. */
    static Rational within(String what, Rational number, long lowest, long highest) {
        if (number.compareTo(Rational.of(lowest)) < 0 || number.compareTo(Rational.of(highest)) > 0) {
            throw new IllegalArgumentException(what + " of " + number + "; expected " + lowest + " to " + highest);
        }
        return number;
    }

    /** The quantity itself, when it is from the lowest to the highest, both included. */
    static Quantity within(String what, Quantity quantity, Quantity lowest, Quantity highest) {
        sameDimension(what, quantity, lowest);
        if (quantity.isBelow(lowest) || quantity.isAbove(highest)) {
            throw new IllegalArgumentException(what + " of " + quantity + "; expected " + lowest + " to " + highest);
        }
        return quantity;
    }

    private static void sameDimension(String what, Quantity quantity, Quantity wanted) {
        if (quantity.dimension() != wanted.dimension()) {
            throw new IllegalArgumentException(
                    what + ": expected " + wanted.dimension().words() + ", but " + quantity + " is of "
                            + quantity.dimension().words());
        }
    }
}
