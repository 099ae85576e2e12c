package gaugeglass.steam.reckon;

import static gaugeglass.engine.quantity.Unit.BTU_PER_HOUR;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;

/**
 * How much opening, or how much air from a fan, the fires of one room need.
 *
 * <p>The provision for each million Btu/h is a limit, as codes differ. North Carolina, 13 NCAC 13 .0419: 1 in2 of free area
 * for each 2000 Btu/h, which is 500 in2 a million; or 0.2 ft3/min for each 1000 Btu/h by fan, which is 200 ft3/min a million.
 */
public final class CombustionAir {
    private static final Quantity NO_INPUT = Quantity.of(0, BTU_PER_HOUR);
    private static final Quantity HIGHEST_INPUT = Quantity.of(50_000_000, BTU_PER_HOUR);
    private static final Rational MILLION = Rational.of(1_000_000);

    private CombustionAir() {}

    /**
     * What an input needs: input / 1,000,000 Btu/h x what a million needs, in the latter's unit, exactly.
     *
     * @param input of everything in the room that burns, 0 to 50,000,000 Btu/h, ends included
     * @param perMillion free area or flow of air for each million Btu/h
     * @throws IllegalArgumentException outside that range, or for another dimension of input
     */
    public static Quantity needed(Quantity input, Quantity perMillion) {
        Ranges.within("input", input, NO_INPUT, HIGHEST_INPUT);
        return perMillion.times(input.valueIn(BTU_PER_HOUR).dividedBy(MILLION));
    }
}
