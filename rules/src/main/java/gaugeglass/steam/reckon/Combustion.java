package gaugeglass.steam.reckon;

import static gaugeglass.engine.quantity.Unit.CELSIUS_DEGREE;
import static gaugeglass.engine.quantity.Unit.FAHRENHEIT;
import static gaugeglass.engine.quantity.Unit.FAHRENHEIT_DEGREE;
import static gaugeglass.engine.quantity.Unit.PARTS_PER_MILLION;
import static gaugeglass.engine.quantity.Unit.PERCENT;
import static gaugeglass.engine.quantity.Unit.TIMES;

import gaugeglass.engine.book.Basis;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import java.util.List;

/** What a flue gas sample says. Oxygen and carbon dioxide are those of the dry gas, as analysers show them. Exact. */
public final class Combustion {
    /** The line that gives carbon monoxide free of excess air. */
    public static final String AIR_FREE = "air-free CO";

    /** The line that gives excess air. */
    public static final String EXCESS_AIR = "excess air";

    /** The line that gives the carbon dioxide that goes with an oxygen reading. */
    public static final String EXPECTED = "CO2 that goes with it";

    /** The line that gives how far the CO2 reading lies above that; below zero is under it. */
    public static final String APART = "reading less that";

    /** The line that gives the flue gas loss. */
    public static final String LOSS = "flue gas loss, net";

    /** The line that gives the combustion efficiency. */
    public static final String EFFICIENCY = "combustion efficiency, gross";

    /** The line that gives the share of fuel saved. */
    public static final String SAVED = "fuel saved";

    private static final Quantity NO_CO = Quantity.of(0, PARTS_PER_MILLION);
    private static final Quantity MOST_CO = Quantity.of(50_000, PARTS_PER_MILLION);
    private static final Quantity NO_OXYGEN = Quantity.of(0, PERCENT);
    private static final Quantity MOST_CO2 = Quantity.of(20, PERCENT);
    private static final Quantity COLDEST_AIR = Quantity.of(-40, FAHRENHEIT);
    private static final Quantity HOTTEST_FLUE = Quantity.of(1500, FAHRENHEIT);
    private static final Quantity POOREST = Quantity.of(40, PERCENT);
    private static final Quantity BEST = Quantity.of(100, PERCENT);

    private Combustion() {}

    /**
     * Carbon monoxide as it would be with no air left over: CO x 20.9 / (20.9 - O2), in ppm.
     *
     * <p>Source: the air-free basis of ANSI Z21.13 and of field practice, second hand. A figure of 21 instead of 20.9 changes
     * the answer by less than 0.2 % below 6 % oxygen.
     *
     * @param co carbon monoxide in the sample, 0 to 50,000 ppm, ends included
     * @param oxygen oxygen in the sample, 0 % to below 20.9 %; above 15 % the answer is warned of
     * @throws IllegalArgumentException outside those ranges (at 20.9 % and above there is no flue gas in the sample), or
     *     for another dimension
     */
    public static Worked airFreeCo(Quantity co, Quantity oxygen) {
        Ranges.within("carbon monoxide", co, NO_CO, MOST_CO);
        checkOxygen(oxygen);
        return thin(
                        oxygen,
                        Working.on(Basis.STANDARD)
                                .let("CO", "carbon monoxide in the sample", co, PARTS_PER_MILLION)
                                .let("O2", "oxygen in the sample", oxygen, PERCENT)
                                .constant("air", "air-free-oxygen"))
                .line(AIR_FREE, "free", "CO x air / (air - O2)", PARTS_PER_MILLION)
                .worked();
    }

    /**
     * Air that was left over, in percent of what burning needed: O2 / (21 - O2) x 0.79 / (1 - CO2max) x 100.
     *
     * <p>The second factor is dry flue gas over air at no excess; with it the formula gives the excess-air column of US DOE
     * Steam Tip Sheet 4 for natural gas. Nitrogen and sulphur in the fuel are left out.
     *
     * @param fuel natural gas, propane, No. 1 or No. 2 oil
     * @param oxygen oxygen in the sample, 0 % to below 20.9 %
     * @throws IllegalArgumentException outside that range, for a fuel whose CO2max is not known, or for another dimension
     */
    public static Worked excessAir(Fuel fuel, Quantity oxygen) {
        checkOxygen(oxygen);
        Quantity most = fuel.mostCarbonDioxide();
        return thin(
                        oxygen,
                        Working.on(Basis.CALCULATED)
                                .let("O2", "oxygen in the sample", oxygen, PERCENT)
                                .let("max", "CO2 of " + fuel.words() + " without excess air", most, PERCENT)
                                .constant("air", "combustion-oxygen")
                                .constant("N", "nitrogen")
                                .source("doe-steam-4"))
                .line(EXCESS_AIR, "excess", "O2 / (air - O2) x N / (1 - max / 100) x 100", PERCENT)
                .worked();
    }

    /**
     * The carbon dioxide that must go with an oxygen reading of a fuel: CO2max x (21 - O2) / 21, in percent.
     *
     * @param fuel natural gas, propane, No. 1 or No. 2 oil
     * @param oxygen oxygen in the sample, 0 % to below 20.9 %
     * @throws IllegalArgumentException outside that range, for a fuel whose CO2max is not known, or for another dimension
     */
    public static Worked expectedCarbonDioxide(Fuel fuel, Quantity oxygen) {
        return carbonDioxide(fuel, oxygen).worked();
    }

    /**
     * The same, and how far a reading lies from it; two points or more apart, the three cannot all be true.
     *
     * @param read carbon dioxide in the sample, 0 to 20 %, ends included
     * @throws IllegalArgumentException as above
     */
    public static Worked expectedCarbonDioxide(Fuel fuel, Quantity oxygen, Quantity read) {
        Ranges.within("carbon dioxide", read, NO_OXYGEN, MOST_CO2);
        return carbonDioxide(fuel, oxygen)
                .let("CO2", "carbon dioxide in the sample", read, PERCENT)
                .line(APART, "apart", "CO2 - goes", PERCENT)
                .worked(EXPECTED);
    }

    /**
     * The heat that leaves with the flue gas, in percent of the <em>net</em> heating value, after Siegert: (flue - air in C) x
     * (A2 / (21 - O2) + B).
     *
     * <p>Source: 1. BImSchV (2010), Annex 2; constants from memory with high certainty.
     *
     * @param fuel natural gas, propane, No. 1 or No. 2 oil
     * @param flue temperature of the flue gas, at least the air's, to 1500 F
     * @param air temperature of the combustion air, -40 F to the flue's
     * @param oxygen oxygen in the sample, 0 % to below 20.9 %
     * @throws IllegalArgumentException outside those ranges, for a fuel without constants, or for another dimension
     */
    public static Worked stackLoss(Fuel fuel, Quantity flue, Quantity air, Quantity oxygen) {
        checkOxygen(oxygen);
        Ranges.within("combustion air temperature", air, COLDEST_AIR, HOTTEST_FLUE);
        Ranges.within("flue gas temperature", flue, air, HOTTEST_FLUE);
        Quantity rise = flue.minus(air);
        return thin(
                        oxygen,
                        Working.on(Basis.STANDARD)
                                .let("rise", "flue gas " + flue + " less combustion air " + air, rise, CELSIUS_DEGREE)
                                .let("O2", "oxygen in the sample", oxygen, PERCENT)
                                .constant("air", "siegert-oxygen")
                                .let(
                                        "A2",
                                        "constant for " + fuel.words(),
                                        fuel.siegertA2().value(),
                                        "")
                                .let(
                                        "B",
                                        "constant for " + fuel.words(),
                                        fuel.siegertB().value(),
                                        ""))
                .line(LOSS, "loss", "rise x (A2 / (air - O2) + B)", PERCENT)
                .warn(
                        "On the net heating value. Efficiencies in US tables stand on the gross one and are lower by some 10 %"
                                + " for gas and 6 % for oil; do not mix them.")
                .worked();
    }

    /**
     * Combustion efficiency for natural gas on the <em>gross</em> heating value, between the figures of US DOE Steam Tip Sheet 4,
     * straight lines between neighbours both ways; exact between them.
     *
     * @param oxygen oxygen in the sample, 2 to 10 %, ends included
     * @param rise flue gas temperature less combustion air temperature, 200 to 600 F, ends included
     * @throws IllegalArgumentException outside those ranges, which the table does not cover, or for another dimension
     */
    public static Worked grossEfficiency(Quantity oxygen, Quantity rise) {
        List<String> columns = EfficiencyTable.RISES;
        Ranges.within("oxygen", oxygen, EfficiencyTable.oxygen(0), EfficiencyTable.oxygen(EfficiencyTable.last()));
        Ranges.within(
                "flue gas rise",
                rise,
                Quantity.of(columns.get(0), FAHRENHEIT_DEGREE),
                Quantity.of(columns.get(columns.size() - 1), FAHRENHEIT_DEGREE));
        int row = 0;
        while (row < EfficiencyTable.last() - 1 && oxygen.isAbove(EfficiencyTable.oxygen(row + 1))) {
            row++;
        }
        int column = 0;
        while (column < columns.size() - 2 && rise.isAbove(Quantity.of(columns.get(column + 1), FAHRENHEIT_DEGREE))) {
            column++;
        }
        return Working.on(Basis.STANDARD)
                .let("O2", "oxygen in the sample", oxygen, PERCENT)
                .let("rise", "flue gas less combustion air", rise, FAHRENHEIT_DEGREE)
                .let("O2a", "row below", EfficiencyTable.oxygen(row), PERCENT)
                .let("O2b", "row above", EfficiencyTable.oxygen(row + 1), PERCENT)
                .let("ra", "column below", Quantity.of(columns.get(column), FAHRENHEIT_DEGREE), FAHRENHEIT_DEGREE)
                .let("rb", "column above", Quantity.of(columns.get(column + 1), FAHRENHEIT_DEGREE), FAHRENHEIT_DEGREE)
                .let("aa", "table at O2a, ra", EfficiencyTable.cell(row, column), PERCENT)
                .let("ab", "table at O2a, rb", EfficiencyTable.cell(row, column + 1), PERCENT)
                .let("ba", "table at O2b, ra", EfficiencyTable.cell(row + 1, column), PERCENT)
                .let("bb", "table at O2b, rb", EfficiencyTable.cell(row + 1, column + 1), PERCENT)
                .source("doe-steam-4")
                .line("way between the columns", "u", "(rise - ra) / (rb - ra)", TIMES)
                .line("row below, there", "low", "aa + (ab - aa) x u", PERCENT)
                .line("row above, there", "high", "ba + (bb - ba) x u", PERCENT)
                .line(EFFICIENCY, "eff", "low + (high - low) x (O2 - O2a) / (O2b - O2a)", PERCENT)
                .warn(
                        "Natural gas, gross heating value, complete burning; losses of the jacket and of cycling are not in it.")
                .worked();
    }

    /**
     * The share of fuel that a better efficiency saves for the same heat: (1 - before / after) x 100.
     *
     * @param before efficiency before, 40 to 100 %, ends included
     * @param after efficiency after, on the same heating value, 40 to 100 %, ends included
     * @throws IllegalArgumentException outside those ranges, or for another dimension
     */
    public static Worked fuelSaved(Quantity before, Quantity after) {
        Ranges.within("efficiency before", before, POOREST, BEST);
        Ranges.within("efficiency after", after, POOREST, BEST);
        return Working.on(Basis.CALCULATED)
                .let("before", "efficiency before", before, PERCENT)
                .let("after", "efficiency after", after, PERCENT)
                .source("doe-steam-4")
                .line(SAVED, "saved", "(1 - before / after) x 100", PERCENT)
                .warnIf(after.isBelow(before), "Below zero: it got worse.")
                .worked();
    }

    private static Working carbonDioxide(Fuel fuel, Quantity oxygen) {
        checkOxygen(oxygen);
        return Working.on(Basis.CALCULATED)
                .let("O2", "oxygen in the sample", oxygen, PERCENT)
                .let("max", "CO2 of " + fuel.words() + " without excess air", fuel.mostCarbonDioxide(), PERCENT)
                .constant("air", "combustion-oxygen")
                .line(EXPECTED, "goes", "max x (air - O2) / air", PERCENT);
    }

    private static void checkOxygen(Quantity oxygen) {
        Quantity air = Constant.of("air-free-oxygen").in(PERCENT);
        Ranges.within("oxygen", oxygen, NO_OXYGEN, Quantity.of(Rational.of(100), PERCENT));
        if (oxygen.isAtLeast(air)) {
            throw new IllegalArgumentException("oxygen of " + oxygen
                    + ": that is air and no flue sample; expected 0 % to below " + air + " in the dry flue gas");
        }
    }

    private static Working thin(Quantity oxygen, Working working) {
        Quantity most = Constant.of("inconclusive-oxygen").in(PERCENT);
        return working.warnIf(
                oxygen.isAbove(most),
                "Oxygen above " + most
                        + ": the sample is mostly air, and nothing can be concluded from it. Sample before"
                        + " dilution air comes in, when the flame is steady.");
    }
}
