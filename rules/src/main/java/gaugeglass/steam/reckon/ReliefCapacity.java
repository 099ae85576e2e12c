package gaugeglass.steam.reckon;

import static gaugeglass.engine.quantity.Unit.BTU_PER_HOUR;
import static gaugeglass.engine.quantity.Unit.POUND_PER_HOUR;
import static gaugeglass.engine.quantity.Unit.SQUARE_FOOT;

import gaugeglass.engine.quantity.Quantity;

/**
 * How much steam the safety valves of a low-pressure boiler must be able to pass, where the boiler itself is not marked
 * with it.
 *
 * <p>Sources: gross output in Btu/h over 1000, or so many lb/h for each square foot of heating surface by how the boiler is
 * built; New York code rule 4, section 4-5.2, gives one or the other. The figures are those that {@link Sizes#safetyValve}
 * shows on its sheets.
 */
public final class ReliefCapacity {
    private static final Quantity NO_OUTPUT = Quantity.of(0, BTU_PER_HOUR);
    private static final Quantity HIGHEST_OUTPUT = Quantity.of(20_000_000, BTU_PER_HOUR);
    private static final Quantity NO_SURFACE = Quantity.of(0, SQUARE_FOOT);
    private static final Quantity HIGHEST_SURFACE = Quantity.of(5000, SQUARE_FOOT);

    private ReliefCapacity() {}

    /** Where the fire is in a steel boiler that burns oil or gas; it tells how hard a square foot works. */
    public enum Tubes {
        /** 8 lb/h for each square foot. */
        FIRE("firetube-surface"),
        /** 10 lb/h for each square foot. */
        WATER("watertube-surface");

        private final String constant;

        Tubes(String constant) {
            this.constant = constant;
        }
    }

    /**
     * By output: Btu/h / 1000, in lb/h, exactly. 320,000 Btu/h needs 320 lb/h.
     *
     * @param grossOutput 0 to 20,000,000 Btu/h, ends included
     * @throws IllegalArgumentException outside that range, or for another dimension
     */
    public static Quantity byOutput(Quantity grossOutput) {
        Ranges.within("gross output", grossOutput, NO_OUTPUT, HIGHEST_OUTPUT);
        return Quantity.of(
                grossOutput
                        .valueIn(BTU_PER_HOUR)
                        .dividedBy(Constant.of("valve-heat-a-pound").value()),
                POUND_PER_HOUR);
    }

    /**
     * By heating surface of a steel boiler: ft2 x 8 or 10, in lb/h, exactly. 60 ft2 of a firetube boiler needs 480 lb/h.
     *
     * @param surface 0 to 5000 ft2, ends included
     * @throws IllegalArgumentException outside that range, or for another dimension
     */
    public static Quantity bySurface(Quantity surface, Tubes tubes) {
        Ranges.within("heating surface", surface, NO_SURFACE, HIGHEST_SURFACE);
        return Quantity.of(
                surface.valueIn(SQUARE_FOOT).times(Constant.of(tubes.constant).value()), POUND_PER_HOUR);
    }
}
