package gaugeglass.steam.reckon;

import static gaugeglass.engine.quantity.Unit.BTU_PER_CUBIC_FOOT;
import static gaugeglass.engine.quantity.Unit.BTU_PER_HOUR;
import static gaugeglass.engine.quantity.Unit.CUBIC_FOOT;
import static gaugeglass.engine.quantity.Unit.CUBIC_FOOT_PER_HOUR;
import static gaugeglass.engine.quantity.Unit.SECOND;

import gaugeglass.engine.book.Basis;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;

/**
 * What a gas burner takes in, clocked at the meter.
 *
 * <p>Formula: ft3/h = 3600 x dial x turns / seconds; input = ft3/h x gross heating value. A time taken by hand is trusted to
 * one second either way, so every figure has a lowest and a highest beside it. Exact.
 *
 * <p>Source: the arithmetic of the dial; default heating values 40 CFR 98 Table C-1.
 */
public final class GasInput {
    /** The line that gives the input. */
    public static final String INPUT = "input";

    /** The line that gives the input if the time was a second longer. */
    public static final String LOWEST = "lowest input";

    /** The line that gives the input if the time was a second shorter. */
    public static final String HIGHEST = "highest input";

    /** The line that gives the gas burnt in an hour. */
    public static final String GAS = "gas burnt";

    private static final Quantity SMALLEST_DIAL = Quantity.of("0.01", CUBIC_FOOT);
    private static final Quantity LARGEST_DIAL = Quantity.of(1000, CUBIC_FOOT);
    private static final Quantity SHORTEST = Quantity.of(5, SECOND);
    private static final Quantity LONGEST = Quantity.of(3600, SECOND);
    private static final Quantity POOREST = Quantity.of(400, BTU_PER_CUBIC_FOOT);
    private static final Quantity RICHEST = Quantity.of(3500, BTU_PER_CUBIC_FOOT);

    private GasInput() {}

    /**
     * The input of a burner that runs alone on the meter.
     *
     * @param dial gas for one turn of the test dial, 0.01 to 1000 ft3, ends included
     * @param turns turns timed, 1 to 1000, whole or not
     * @param time the time they took, 5 s to 1 h, ends included; under 60 s is warned of
     * @param heat gross heating value as the gas supplier gives it, 400 to 3500 Btu/ft3, ends included
     * @throws IllegalArgumentException outside those ranges, or for another dimension
     */
    public static Worked clocked(Quantity dial, Rational turns, Quantity time, Quantity heat) {
        Ranges.within("dial", dial, SMALLEST_DIAL, LARGEST_DIAL);
        Ranges.within("turns", turns, 1, 1000);
        Ranges.within("time", time, SHORTEST, LONGEST);
        Ranges.within("heating value", heat, POOREST, RICHEST);
        boolean isShort = time.isBelow(Constant.of("steady-time").in(SECOND));
        return Working.on(Basis.CALCULATED)
                .let("dial", "gas for one turn of the dial", dial, CUBIC_FOOT)
                .let("turns", "turns timed", turns, "")
                .let("time", "time they took", time, SECOND)
                .let("heat", "gross heating value", heat, BTU_PER_CUBIC_FOOT)
                .constant("hour", "seconds-an-hour")
                .constant("hand", "one-second")
                .source("cfr-40-98")
                .line(GAS, "gas", "hour x dial x turns / time", CUBIC_FOOT_PER_HOUR)
                .line(LOWEST, "low", "hour x dial x turns / (time + hand) x heat", BTU_PER_HOUR)
                .line(HIGHEST, "high", "hour x dial x turns / (time - hand) x heat", BTU_PER_HOUR)
                .line(INPUT, "input", "gas x heat", BTU_PER_HOUR)
                .warnIf(
                        isShort,
                        "Timed for less than a minute: one second either way moves the answer as far as the lowest and"
                                + " the highest input show. Time more turns.")
                .warn("Holds when nothing else on the meter burns. A meter that does not correct for pressure and"
                        + " temperature counts a few percent off.")
                .worked(INPUT);
    }
}
