package gaugeglass.steam.reckon;

import static gaugeglass.engine.quantity.Unit.FAHRENHEIT;
import static gaugeglass.engine.quantity.Unit.INCH;
import static gaugeglass.engine.quantity.Unit.PSI;

import gaugeglass.engine.book.Basis;
import gaugeglass.engine.quantity.Quantity;

/**
 * How high the end of the main must lie over the boiler's water line for the water to come back by itself.
 *
 * <p>One-pipe gravity: the water stands up by the pressure <em>drop</em> to the end of the main, not by the cut-out, plus
 * friction and a margin: drop x in per psi + 6 in + 8 in. Two-pipe gravity with traps: the returns are at no pressure, so the
 * whole cut-out must be balanced: cut-out x 30 in per psi. Pumped returns: nothing to reckon.
 *
 * <p>Sources: balance from IAPWS-IF97 (see {@link ReturnHead}); allowances from handbooks of the trade, memory, high
 * certainty; 30 in per psi common practice.
 */
public final class StaticHead {
    /** The line that gives the height needed. */
    public static final String NEEDED = "height needed";

    /** The line that gives what is there above that. */
    public static final String SPARE = "to spare";

    private static final Quantity NO_PRESSURE = Quantity.of(0, PSI);
    private static final Quantity MOST_DROP = Quantity.of(5, PSI);
    private static final Quantity MOST_CUT_OUT = Quantity.of(15, PSI);
    private static final Quantity NO_HEIGHT = Quantity.of(0, INCH);
    private static final Quantity MOST_HEIGHT = Quantity.of(900, INCH);

    private StaticHead() {}

    /** How the water comes back. */
    public enum Returns {
        ONE_PIPE_GRAVITY,
        TWO_PIPE_GRAVITY,
        PUMPED
    }

    /**
     * The height for a kind of system.
     *
     * @param returns how the water comes back; pumped is refused, as a pump lifts it whatever the height
     * @param pressure one-pipe: drop to the end of the main, 0 to 5 psi; two-pipe: cut-out, 0 to 15 psi; ends included
     * @param water temperature of the water in the return, 40 to 275 F, ends included
     * @throws IllegalArgumentException outside those ranges, for pumped returns, or for another dimension
     */
    public static Worked needed(Returns returns, Quantity pressure, Quantity water) {
        return sheet(returns, pressure, water).worked();
    }

    /**
     * The same, and what is to spare of the height that is there; below zero is lacking.
     *
     * @param there end of the main over the water line, 0 to 900 in, ends included
     * @throws IllegalArgumentException as above
     */
    public static Worked needed(Returns returns, Quantity pressure, Quantity water, Quantity there) {
        Ranges.within("height", there, NO_HEIGHT, MOST_HEIGHT);
        return sheet(returns, pressure, water)
                .let("there", "end of the main over the water line", there, INCH)
                .line(SPARE, "spare", "there - need", INCH)
                .worked(NEEDED);
    }

    private static Working sheet(Returns returns, Quantity pressure, Quantity water) {
        switch (returns) {
            case ONE_PIPE_GRAVITY:
                Ranges.within("pressure drop", pressure, NO_PRESSURE, MOST_DROP);
                return balance(Basis.STANDARD, "drop", "pressure drop to the end of the main", pressure, water)
                        .constant("fric", "one-pipe-friction")
                        .constant("margin", "one-pipe-margin")
                        .line(NEEDED, "need", "drop x each + fric + margin", INCH)
                        .warn("Counts from the boiler's water line to the lowest end of the main.");
            case TWO_PIPE_GRAVITY:
                Ranges.within("cut-out", pressure, NO_PRESSURE, MOST_CUT_OUT);
                return balance(Basis.PRACTICE, "out", "cut-out of the operating control", pressure, water)
                        .line("balance alone", "alone", "out x each", INCH)
                        .constant("rule", "two-pipe-head")
                        .line(NEEDED, "need", "out x rule", INCH)
                        .warn("Counts from the boiler's water line to the lowest steam-carrying end or trap outlet.");
            default:
                throw new IllegalArgumentException(
                        "returns that are pumped need no height; expected one-pipe-gravity or two-pipe-gravity");
        }
    }

    private static Working balance(Basis basis, String symbol, String what, Quantity pressure, Quantity water) {
        return Working.on(basis)
                .let(symbol, what, pressure, PSI)
                .let("temp", "water in the return", water, FAHRENHEIT)
                .looked(
                        "water that balances one psi",
                        "each",
                        "steam table at temp",
                        ReturnHead.perPsi(water),
                        INCH,
                        "iapws-if97");
    }
}
