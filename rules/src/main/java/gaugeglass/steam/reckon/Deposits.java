package gaugeglass.steam.reckon;

import static gaugeglass.engine.quantity.Unit.CELSIUS;
import static gaugeglass.engine.quantity.Unit.GALLON;
import static gaugeglass.engine.quantity.Unit.GRAIN_PER_GALLON;
import static gaugeglass.engine.quantity.Unit.MILLIGRAM_PER_LITRE;
import static gaugeglass.engine.quantity.Unit.POUND;
import static gaugeglass.engine.quantity.Unit.TIMES;

import gaugeglass.engine.book.Basis;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import java.util.List;

/** What make-up water carries into a boiler and leaves there. Exact. */
public final class Deposits {
    /** The line that gives the hardness brought in. */
    public static final String SCALE = "hardness brought in";

    /** The line that gives the oxygen brought in. */
    public static final String OXYGEN = "oxygen brought in";

    /** The line that gives the iron that oxygen can turn to rust. */
    public static final String IRON = "iron it can turn to rust";

    /** The line that gives the cycles of concentration. */
    public static final String CYCLES = "cycles of concentration";

    private static final Table TABLE = Table.read("dissolved-oxygen.csv");
    private static final Quantity NONE = Quantity.of(0, GALLON);
    private static final Quantity MOST = Quantity.of(10_000_000, GALLON);
    private static final Quantity SOFT = Quantity.of(0, GRAIN_PER_GALLON);
    private static final Quantity HARDEST = Quantity.of(100, GRAIN_PER_GALLON);
    private static final Quantity PUREST = Quantity.of(0, MILLIGRAM_PER_LITRE);
    private static final Quantity SALTIEST = Quantity.of(50_000, MILLIGRAM_PER_LITRE);

    private Deposits() {}

    /**
     * Scale that can come of make-up: gal x grains a gallon / 7000, in lb. An upper bound, as if all hardness stayed.
     *
     * @param water make-up since the last cleaning, zero to ten million gal, ends included
     * @param hardness of the make-up, 0 to 100 gr/gal as calcium carbonate, ends included
     * @throws IllegalArgumentException outside those ranges, or for another dimension
     */
    public static Worked scale(Quantity water, Quantity hardness) {
        Ranges.within("make-up", water, NONE, MOST);
        Ranges.within("hardness", hardness, SOFT, HARDEST);
        return Working.on(Basis.CALCULATED)
                .let("water", "make-up", water, GALLON)
                .let("hard", "hardness of it", hardness, GRAIN_PER_GALLON)
                .constant("pound", "grains-a-pound")
                .line(SCALE, "scale", "water x hard / pound", POUND)
                .warn("An upper bound, counted as calcium carbonate: not all of it settles on the iron.")
                .worked();
    }

    /**
     * Oxygen that make-up brings in, and the iron it can eat: gal x 8.345 x mg/L / 1,000,000, then x 2.327, in lb. The
     * mg/L is that of water that stood in air at one atmosphere, straight lines between the figures of the table.
     *
     * @param water make-up, zero to ten million gal, ends included
     * @param temperature of the make-up, 0 to 30 C, ends included
     * @throws IllegalArgumentException outside those ranges, or for another dimension
     */
    public static Worked oxygen(Quantity water, Quantity temperature) {
        Ranges.within("make-up", water, NONE, MOST);
        List<Table.Row> rows = TABLE.rows();
        Quantity coldest = rows.get(0).quantity("celsius", CELSIUS);
        Quantity warmest = rows.get(rows.size() - 1).quantity("celsius", CELSIUS);
        Ranges.within("make-up temperature", temperature, coldest, warmest);
        int row = 0;
        while (row < rows.size() - 2 && temperature.isAbove(rows.get(row + 1).quantity("celsius", CELSIUS))) {
            row++;
        }
        Rational from = rows.get(row).number("celsius");
        Rational way = temperature
                .valueIn(CELSIUS)
                .minus(from)
                .dividedBy(rows.get(row + 1).number("celsius").minus(from));
        Rational low = rows.get(row).number("oxygen");
        Rational found = low.plus(rows.get(row + 1).number("oxygen").minus(low).times(way));
        return Working.on(Basis.CALCULATED)
                .let("water", "make-up", water, GALLON)
                .let("temp", "temperature of it", temperature, temperature.unit())
                .looked(
                        "oxygen dissolved in it",
                        "O2",
                        "table of dissolved oxygen at temp",
                        Quantity.of(found, MILLIGRAM_PER_LITRE),
                        MILLIGRAM_PER_LITRE,
                        "standard-methods")
                .constant("weight", "make-up-weight")
                .constant("mg", "mg-l-a-million")
                .constant("iron", "iron-a-pound-of-oxygen")
                .line(OXYGEN, "oxygen", "water x weight x O2 / mg", POUND)
                .line(IRON, "rust", "oxygen x iron", POUND)
                .warn(
                        "Water that stood in air; mains water may hold a little more under pressure. Heating it at once drives"
                                + " most of it off through the vents.")
                .worked(OXYGEN);
    }

    /**
     * How many times the boiler's water is more concentrated than what is fed: boiler / feed.
     *
     * @param boiler dissolved solids of the boiler's water, 0 to 50,000 mg/L, ends included
     * @param feed dissolved solids of the feed, above 0 to 50,000 mg/L
     * @throws IllegalArgumentException outside those ranges, or for another dimension
     */
    public static Worked cycles(Quantity boiler, Quantity feed) {
        Ranges.within("boiler water solids", boiler, PUREST, SALTIEST);
        Ranges.above("feed solids", feed, PUREST, SALTIEST);
        return Working.on(Basis.CALCULATED)
                .let("boiler", "dissolved solids of the boiler's water", boiler, MILLIGRAM_PER_LITRE)
                .let("feed", "dissolved solids of the feed", feed, MILLIGRAM_PER_LITRE)
                .source("physics")
                .line(CYCLES, "cycles", "boiler / feed", TIMES)
                .worked();
    }
}
