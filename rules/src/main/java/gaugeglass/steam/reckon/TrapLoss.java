package gaugeglass.steam.reckon;

import static gaugeglass.engine.quantity.Unit.BTU;
import static gaugeglass.engine.quantity.Unit.BTU_PER_POUND;
import static gaugeglass.engine.quantity.Unit.HOUR;
import static gaugeglass.engine.quantity.Unit.INCH;
import static gaugeglass.engine.quantity.Unit.PERCENT;
import static gaugeglass.engine.quantity.Unit.POUND;
import static gaugeglass.engine.quantity.Unit.POUND_PER_HOUR;
import static gaugeglass.engine.quantity.Unit.PSI;
import static gaugeglass.engine.quantity.Unit.PSI_ABSOLUTE;

import gaugeglass.engine.book.Basis;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.text.Words;

/**
 * The steam that a trap failed open lets through, and what it costs.
 *
 * <p>Formula: lb/h = k x psia x inches^2. Three constants go about: 29.45 gives US DOE Steam Tip Sheet 1's table, 40.39 is
 * Napier's full flow, 24.24 a utility programme's. Below about 12 psi on the gauge steam that flows to open air is not
 * choked, and all three overstate: the answer says so.
 */
public final class TrapLoss {
    /** The line that gives the steam lost. */
    public static final String LOSS = "steam lost";

    /** The line that gives the steam lost over the hours. */
    public static final String OVER_TIME = "steam lost over the hours";

    /** The line that gives the fuel it cost. */
    public static final String FUEL = "fuel it took";

    /** The line that gives the money. */
    public static final String COST = "cost";

    private static final Quantity NONE = Quantity.of(0, INCH);
    private static final Quantity LARGEST = Quantity.of(1, INCH);
    private static final Quantity LOWEST = Quantity.of(0, PSI);
    private static final Quantity HIGHEST = Quantity.of(150, PSI);
    private static final Quantity NO_LOSS = Quantity.of(0, POUND_PER_HOUR);
    private static final Quantity MOST_LOSS = Quantity.of(100_000, POUND_PER_HOUR);
    private static final Quantity NO_TIME = Quantity.of(0, HOUR);
    private static final Quantity A_YEAR = Quantity.of(8784, HOUR);
    private static final Quantity LEAST_HEAT = Quantity.of(800, BTU_PER_POUND);
    private static final Quantity MOST_HEAT = Quantity.of(1250, BTU_PER_POUND);
    private static final Quantity POOREST = Quantity.of(40, PERCENT);
    private static final Quantity BEST = Quantity.of(100, PERCENT);

    private TrapLoss() {}

    /** Whose constant is used. */
    public enum Constants {
        DOE,
        NAPIER,
        UTILITY
    }

    /**
     * The steam through an orifice.
     *
     * @param orifice of the trap's seat, above zero to 1 in
     * @param gauge pressure ahead of it, 0 to 150 psi, ends included
     * @param barometer at the place, 8 to 16 psia, ends included
     * @param constant whose constant
     * @throws IllegalArgumentException outside those ranges, or for another dimension
     */
    public static Worked through(Quantity orifice, Quantity gauge, Quantity barometer, Constants constant) {
        Ranges.above("orifice", orifice, NONE, LARGEST);
        Ranges.within("pressure", gauge, LOWEST, HIGHEST);
        Quantity choked = Constant.of("choked-above").in(PSI);
        return Working.on(Basis.STANDARD)
                .let("gauge", "pressure ahead of the trap", gauge, PSI)
                .let("air", "barometer at the place", Saturation.barometer(barometer), PSI_ABSOLUTE)
                .let("d", "orifice", orifice, INCH)
                .constant("k", "trap-" + Words.of(constant))
                .line("absolute pressure", "abs", "air + gauge", PSI_ABSOLUTE)
                .line(LOSS, "loss", "k x abs x d^2", POUND_PER_HOUR)
                .warnIf(
                        gauge.isBelow(choked),
                        "Below " + choked
                                + " on the gauge the flow to open air is not choked: the true loss is less than this,"
                                + " by whichever of the three constants.")
                .warn("A trap with its orifice partly covered, or with water in its way, loses less.")
                .worked();
    }

    /**
     * What a loss costs: lb/h x hours x latent heat / efficiency / 1,000,000 x price.
     *
     * @param loss steam lost, 0 to 100,000 lb/h, ends included
     * @param hours it went on, above zero to 8784 h
     * @param latentHeat of the steam, 800 to 1250 Btu/lb, ends included
     * @param efficiency of the boiler, gross, 40 to 100 %, ends included
     * @param price of a million Btu of fuel, zero or more
     * @param currency the word for its money
     * @throws IllegalArgumentException outside those ranges, or for another dimension
     */
    public static Worked cost(
            Quantity loss, Quantity hours, Quantity latentHeat, Quantity efficiency, Rational price, String currency) {
        Ranges.within("steam lost", loss, NO_LOSS, MOST_LOSS);
        Ranges.above("hours", hours, NO_TIME, A_YEAR);
        Ranges.within("latent heat", latentHeat, LEAST_HEAT, MOST_HEAT);
        Ranges.within("efficiency", efficiency, POOREST, BEST);
        Ranges.within("price", price, 0, 1_000_000);
        return Working.on(Basis.CALCULATED)
                .let("lost", "steam lost", loss, POUND_PER_HOUR)
                .let("hours", "hours it goes on", hours, HOUR)
                .let("latent", "latent heat", latentHeat, BTU_PER_POUND)
                .let("eff", "efficiency of the boiler, gross", efficiency, PERCENT)
                .let("price", "price of a million Btu of fuel", price, currency)
                .constant("million", "million")
                .line(OVER_TIME, "all", "lost x hours", POUND)
                .line(FUEL, "fuel", "all x latent / (eff / 100)", BTU)
                .count(COST, "cost", "fuel / million x price", 2, currency)
                .warn("Only the heat of boiling is counted; water lost with it, and what hot returns do, are not.")
                .worked();
    }
}
