package gaugeglass.steam.reckon;

import static gaugeglass.engine.quantity.Unit.GALLON;

import gaugeglass.engine.book.Basis;
import gaugeglass.engine.quantity.Dimension;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.quantity.Unit;

/**
 * What went through a water meter between two readings, in gallons; exact.
 *
 * <p>A reading that fell is never taken for use by itself: it may have rolled over, been replaced, run backwards or been
 * misread. It counts as rolled over only if the number of digits is said and the use comes to half the dial or less.
 */
public final class WaterMeter {
    /** The line that gives the water used. */
    public static final String USED = "water used";

    private static final Rational TEN = Rational.of(10);
    private static final int MOST_DIGITS = 9;

    private WaterMeter() {}

    /**
     * After - before, for a meter that only counted up.
     *
     * @param before reading then, zero or more
     * @param after reading now, not below it
     * @throws IllegalArgumentException when the reading fell, with what it may mean; or for another dimension
     */
    public static Worked used(Quantity before, Quantity after) {
        checkVolumes(before, after);
        if (after.isBelow(before)) {
            throw new IllegalArgumentException("meter reading fell from " + before + " to " + after
                    + ": rolled over, replaced, run backwards or misread; expected the number of its digits if it rolled"
                    + " over, or the old meter's last and the new one's first reading if it was replaced");
        }
        return sheet(before, after).line(USED, "used", "after - before", GALLON).worked();
    }

    /**
     * After - before, or after + 10^digits - before when the dial has passed its highest figure.
     *
     * @param before reading then, zero or more, with no more digits than the dial has
     * @param after reading now
     * @param digits how many digits the dial counts, 2 to 9, in the unit of {@code before}
     * @throws IllegalArgumentException when rolling over would make it more than half the dial, which a meter that ran
     *     backwards or was misread looks like; outside the ranges; or for another dimension
     */
    public static Worked used(Quantity before, Quantity after, int digits) {
        checkVolumes(before, after);
        if (digits < 2 || digits > MOST_DIGITS) {
            throw new IllegalArgumentException("digits of " + digits + "; expected 2 to " + MOST_DIGITS);
        }
        Rational whole = Rational.ONE;
        for (int i = 0; i < digits; i++) {
            whole = whole.times(TEN);
        }
        Unit unit = before.unit();
        Quantity dial = Quantity.of(whole, unit);
        if (before.isAtLeast(dial) || after.isAtLeast(dial)) {
            throw new IllegalArgumentException("meter readings of " + before + " and " + after + "; expected at most "
                    + digits + " digits of " + unit.symbol());
        }
        if (after.isAtLeast(before)) {
            return used(before, after);
        }
        Quantity rolled = after.plus(dial).minus(before);
        if (rolled.isAbove(dial.dividedBy(2))) {
            throw new IllegalArgumentException("meter reading fell from " + before + " to " + after
                    + ": rolled over it would have counted " + rolled.inUnit(unit)
                    + ", more than half its dial; more likely it"
                    + " ran backwards, was misread or was replaced");
        }
        return sheet(before, after)
                .let("dial", "what the dial counts before it begins again", dial, GALLON)
                .line(USED, "used", "after + dial - before", GALLON)
                .warn("Taken as rolled over, because the reading fell.")
                .worked();
    }

    /**
     * (old meter's last - before) + (after - new meter's first), for a meter that was replaced between the readings.
     *
     * @param before reading of the old meter then
     * @param last reading of the old meter when it was taken out, not below {@code before}
     * @param first reading of the new meter when it was put in
     * @param after reading of the new meter now, not below {@code first}
     * @throws IllegalArgumentException when a reading fell, or for another dimension
     */
    public static Worked replaced(Quantity before, Quantity last, Quantity first, Quantity after) {
        used(before, last);
        used(first, after);
        return sheet(before, after)
                .let("last", "last reading of the old meter", last, GALLON)
                .let("first", "first reading of the new meter", first, GALLON)
                .line(USED, "used", "(last - before) + (after - first)", GALLON)
                .worked();
    }

    private static Working sheet(Quantity before, Quantity after) {
        return Working.on(Basis.CALCULATED)
                .let("before", "reading then", before, GALLON)
                .let("after", "reading now", after, GALLON)
                .source("definition");
    }

    private static void checkVolumes(Quantity... readings) {
        for (Quantity reading : readings) {
            if (reading.dimension() != Dimension.VOLUME || reading.signum() < 0) {
                throw new IllegalArgumentException(
                        "meter reading of " + reading + "; expected a volume of zero or more");
            }
        }
    }
}
