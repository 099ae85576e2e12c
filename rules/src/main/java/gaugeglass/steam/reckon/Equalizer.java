package gaugeglass.steam.reckon;

import static gaugeglass.engine.quantity.Unit.BTU_PER_HOUR;
import static gaugeglass.engine.quantity.Unit.POUND_PER_HOUR;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;

/**
 * How large the pipe that ties a steam header to the return must be.
 *
 * <p>Source: District of Columbia mechanical code, Table 1007.2: to 250 lb/h 1 1/2 in, from 251 to 2000 2 1/2 in, above that
 * 4 in, all nominal. A boiler that makes more than 250 and less than 251 lb/h is given the larger pipe. The table is the one
 * that {@link Sizes#equalizer} shows on its sheet.
 */
public final class Equalizer {
    private static final Quantity NO_STEAM = Quantity.of(0, POUND_PER_HOUR);
    private static final Quantity MOST_STEAM = Quantity.of(20_000, POUND_PER_HOUR);

    /** One boiler horsepower as heat (US DOE Steam Tip Sheet 16) and as steam from and at 212 F. */
    private static final Rational BTU_PER_HORSEPOWER = Rational.of(33_475);

    private static final Rational POUNDS_PER_HORSEPOWER = Rational.of(69, 2);

    private Equalizer() {}

    /**
     * The steam that an output makes, from and at 212 F: Btu/h x 34.5 / 33,475, in lb/h, exactly.
     *
     * @param grossOutput heat rate, zero or more
     */
    public static Quantity steam(Quantity grossOutput) {
        Rational heat = grossOutput.valueIn(BTU_PER_HOUR);
        return Quantity.of(heat.times(POUNDS_PER_HORSEPOWER).dividedBy(BTU_PER_HORSEPOWER), POUND_PER_HOUR);
    }

    /**
     * The least nominal size for the steam that a boiler makes.
     *
     * @param steam 0 to 20,000 lb/h, ends included
     * @throws IllegalArgumentException outside that range, or for another dimension
     */
    public static Quantity leastSize(Quantity steam) {
        Ranges.within("steam", steam, NO_STEAM, MOST_STEAM);
        return Sizes.leastSize(Sizes.EQUALIZERS, steam);
    }
}
