package gaugeglass.steam.reckon;

import static gaugeglass.engine.quantity.Unit.BTU_PER_HOUR;
import static gaugeglass.engine.quantity.Unit.PERCENT;

import gaugeglass.engine.book.Basis;
import gaugeglass.engine.quantity.Quantity;

/** What comes of an input: a share of the nameplate, and an output. Exact. */
public final class Firing {
    /** The line that gives the share of the nameplate. */
    public static final String SHARE = "share of the nameplate";

    /** The line that gives that share at the lowest input. */
    public static final String LEAST = "at least";

    /** The line that gives that share at the highest input. */
    public static final String MOST = "at most";

    /** The line that gives the output. */
    public static final String OUTPUT = "output";

    private static final Quantity NONE = Quantity.of(0, BTU_PER_HOUR);
    private static final Quantity MOST_INPUT = Quantity.of(100_000_000, BTU_PER_HOUR);
    private static final Quantity POOREST = Quantity.of(40, PERCENT);
    private static final Quantity BEST = Quantity.of(100, PERCENT);

    private Firing() {}

    /**
     * An input as a share of the nameplate's: input / nameplate x 100, with the lowest and highest beside it.
     *
     * @param input above zero, to 100 million Btu/h
     * @param lowest the input at the reading's lowest, not above the input
     * @param highest the input at the reading's highest, not below the input
     * @param nameplate highest input on the nameplate, above zero, to 100 million Btu/h
     * @throws IllegalArgumentException outside those ranges, or for another dimension
     */
    public static Worked againstNameplate(Quantity input, Quantity lowest, Quantity highest, Quantity nameplate) {
        Ranges.above("input", input, NONE, MOST_INPUT);
        Ranges.above("nameplate", nameplate, NONE, MOST_INPUT);
        if (lowest.isAbove(input) || highest.isBelow(input)) {
            throw new IllegalArgumentException("input of " + input + " is not between " + lowest + " and " + highest);
        }
        return Working.on(Basis.CALCULATED)
                .let("input", "input", input, BTU_PER_HOUR)
                .let("low", "lowest input", lowest, BTU_PER_HOUR)
                .let("high", "highest input", highest, BTU_PER_HOUR)
                .let("plate", "input on the nameplate", nameplate, BTU_PER_HOUR)
                .source("physics")
                .line(LEAST, "least", "low / plate x 100", PERCENT)
                .line(MOST, "most", "high / plate x 100", PERCENT)
                .line(SHARE, "share", "input / plate x 100", PERCENT)
                .warn("The nameplate is a ceiling.")
                .worked();
    }

    /**
     * What the boiler gives out: input x efficiency / 100.
     *
     * @param input above zero, to 100 million Btu/h, on the gross heating value
     * @param efficiency on the gross heating value, 40 to 100 %, ends included
     * @throws IllegalArgumentException outside those ranges, or for another dimension
     */
    public static Worked output(Quantity input, Quantity efficiency) {
        Ranges.above("input", input, NONE, MOST_INPUT);
        Ranges.within("efficiency", efficiency, POOREST, BEST);
        return Working.on(Basis.CALCULATED)
                .let("input", "input, gross", input, BTU_PER_HOUR)
                .let("eff", "efficiency, gross", efficiency, PERCENT)
                .source("physics")
                .line(OUTPUT, "output", "input x eff / 100", BTU_PER_HOUR)
                .warn(
                        "Input and efficiency must stand on one heating value, gross here; combustion efficiency leaves out"
                                + " what the jacket loses.")
                .worked();
    }
}
