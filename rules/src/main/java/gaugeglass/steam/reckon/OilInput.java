package gaugeglass.steam.reckon;

import static gaugeglass.engine.quantity.Unit.BTU_PER_GALLON;
import static gaugeglass.engine.quantity.Unit.BTU_PER_HOUR;
import static gaugeglass.engine.quantity.Unit.GALLON_PER_HOUR;
import static gaugeglass.engine.quantity.Unit.PSI;

import gaugeglass.engine.book.Basis;
import gaugeglass.engine.quantity.Quantity;

/**
 * What an oil burner takes in, from its nozzle and the pump's pressure.
 *
 * <p>Formula: gal/h = rated x sqrt(pressure / 100 psi); input = gal/h x gross heating value. The root is given to twelve
 * digits. The reading of the pump's gauge is trusted within what is said, so a lowest and a highest stand beside it.
 *
 * <p>Source: common practice (nozzles are marked at 100 psi, flow goes with the root of pressure); default heating values
 * 40 CFR 98 Table C-1.
 */
public final class OilInput {
    /** The line that gives the oil burnt in an hour. */
    public static final String OIL = "oil burnt";

    /** The line that gives the input. */
    public static final String INPUT = "input";

    /** The line that gives the input with the pressure at its lowest. */
    public static final String LOWEST = "lowest input";

    /** The line that gives the input with the pressure at its highest. */
    public static final String HIGHEST = "highest input";

    private static final Quantity SMALLEST = Quantity.of("0.2", GALLON_PER_HOUR);
    private static final Quantity LARGEST = Quantity.of(50, GALLON_PER_HOUR);
    private static final Quantity LOWEST_PRESSURE = Quantity.of(60, PSI);
    private static final Quantity HIGHEST_PRESSURE = Quantity.of(300, PSI);
    private static final Quantity EXACT = Quantity.of(0, PSI);
    private static final Quantity ROUGHEST = Quantity.of(20, PSI);
    private static final Quantity POOREST = Quantity.of(100_000, BTU_PER_GALLON);
    private static final Quantity RICHEST = Quantity.of(180_000, BTU_PER_GALLON);

    private OilInput() {}

    /**
     * The input of one nozzle.
     *
     * @param nozzle what the nozzle is marked at 100 psi, 0.2 to 50 gal/h, ends included
     * @param pressure at the nozzle, 60 to 300 psi, ends included
     * @param within how far the pressure's reading may be off either way, 0 to 20 psi, ends included
     * @param heat gross heating value, 100,000 to 180,000 Btu/gal, ends included
     * @throws IllegalArgumentException outside those ranges, or for another dimension
     */
    public static Worked nozzle(Quantity nozzle, Quantity pressure, Quantity within, Quantity heat) {
        Ranges.within("nozzle", nozzle, SMALLEST, LARGEST);
        Ranges.within("pressure", pressure, LOWEST_PRESSURE, HIGHEST_PRESSURE);
        Ranges.within("off either way", within, EXACT, ROUGHEST);
        Ranges.within("heating value", heat, POOREST, RICHEST);
        return Working.on(Basis.PRACTICE)
                .let("rated", "what the nozzle is marked", nozzle, GALLON_PER_HOUR)
                .let("p", "pressure at the nozzle", pressure, PSI)
                .let("off", "how far that reading may be off", within, PSI)
                .let("heat", "gross heating value", heat, BTU_PER_GALLON)
                .constant("mark", "nozzle-rating")
                .source("cfr-40-98")
                .line(OIL, "oil", "rated x sqrt(p / mark)", GALLON_PER_HOUR)
                .line(LOWEST, "low", "rated x sqrt((p - off) / mark) x heat", BTU_PER_HOUR)
                .line(HIGHEST, "high", "rated x sqrt((p + off) / mark) x heat", BTU_PER_HOUR)
                .line(INPUT, "input", "oil x heat", BTU_PER_HOUR)
                .warn("A worn nozzle passes more, a dirty one less, and warm oil less than cold, than the mark says.")
                .worked(INPUT);
    }
}
