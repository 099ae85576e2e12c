package gaugeglass.steam.reckon;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.text.Words;

/**
 * A fuel, with the figures that are known of it in {@code fuels.csv}.
 *
 * <p>Heating values are gross: 40 CFR 98 Table C-1. Where a figure is not known for a fuel, asking for it is refused.
 */
public enum Fuel {
    NATURAL_GAS,
    PROPANE,
    OIL_1,
    OIL_2,
    OIL_4,
    OIL_5,
    OIL_6;

    private static final Table TABLE = Table.read("fuels.csv");

    /** The fuel in words: {@code No. 2 fuel oil}. */
    public String words() {
        return row().text("what");
    }

    /** Whether it is clocked at a gas meter. */
    public boolean isGas() {
        return this == NATURAL_GAS || this == PROPANE;
    }

    /** Gross heating value, Btu/ft3 or Btu/gal. */
    public Quantity heatingValue() {
        return row().quantity("heat", isGas() ? Unit.BTU_PER_CUBIC_FOOT : Unit.BTU_PER_GALLON);
    }

    /**
     * Carbon dioxide of the dry flue gas when no air is left over, percent.
     *
     * @throws IllegalArgumentException when it is not known
     */
    public Quantity mostCarbonDioxide() {
        return known("co2-max", Unit.PERCENT);
    }

    /** The constant A2 of the Siegert formula, as a plain number. */
    Quantity siegertA2() {
        return known("a2", Unit.TIMES);
    }

    /** The constant B of the Siegert formula, as a plain number. */
    Quantity siegertB() {
        return known("b", Unit.TIMES);
    }

    private Quantity known(String column, Unit unit) {
        if (row().isEmpty(column)) {
            throw new IllegalArgumentException("for " + words()
                    + " this figure is not known here; expected natural gas, propane, No. 1 or No. 2 oil");
        }
        return row().quantity(column, unit);
    }

    private Table.Row row() {
        return TABLE.row("fuel", Words.of(this));
    }
}
