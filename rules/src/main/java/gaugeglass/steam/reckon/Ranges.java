package gaugeglass.steam.reckon;

import gaugeglass.engine.quantity.Quantity;

/** The one way a reckoning refuses what lies outside its range. */
final class Ranges {
    private Ranges() {}

    /** The quantity itself, when it is from the lowest to the highest, both included. */
    static Quantity within(String what, Quantity quantity, Quantity lowest, Quantity highest) {
        if (quantity.dimension() != lowest.dimension()) {
            throw new IllegalArgumentException(
                    what + ": expected " + lowest.dimension().words() + ", but " + quantity + " is of "
                            + quantity.dimension().words());
        }
        if (quantity.isBelow(lowest) || quantity.isAbove(highest)) {
            throw new IllegalArgumentException(what + " of " + quantity + "; expected " + lowest + " to " + highest);
        }
        return quantity;
    }
}
