package gaugeglass.steam.reckon;

import static gaugeglass.engine.quantity.Unit.BTU_PER_HOUR;
import static gaugeglass.engine.quantity.Unit.POUND_PER_HOUR;
import static gaugeglass.engine.quantity.Unit.SQUARE_FOOT;
import static gaugeglass.engine.quantity.Unit.TIMES;

import gaugeglass.engine.book.Basis;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import java.util.List;

/**
 * What the radiators take, and what boiler that asks for.
 *
 * <p>Formulas: heat = EDR x 240 Btu/h; condensing = heat / hfg; required gross output = heat x 4/3 for piping and pickup;
 * oversize = gross output / required. Exact but for pi in bare pipe and the steam table.
 *
 * <p>Source: ASHRAE Journal, September 2009 (240 Btu/h, and 1.33).
 */
public final class Load {
    /** The line that gives the connected radiation. */
    public static final String EDR = "connected radiation";

    /** The line that gives the heat it takes. */
    public static final String HEAT = "connected load";

    /** The line that gives the steam it condenses. */
    public static final String CONDENSING = "condensing rate";

    /** The line that gives the gross output asked for. */
    public static final String REQUIRED = "required gross output";

    /** The line that gives how many times that the boiler has. */
    public static final String OVERSIZE = "oversize ratio";

    private static final Quantity NONE = Quantity.of(0, SQUARE_FOOT);
    private static final Quantity MOST = Quantity.of(100_000, SQUARE_FOOT);
    private static final Quantity NO_OUTPUT = Quantity.of(0, BTU_PER_HOUR);
    private static final Quantity MOST_OUTPUT = Quantity.of(100_000_000, BTU_PER_HOUR);
    private static final int MOST_ENTRIES = 2000;

    private Load() {}

    /**
     * The connected radiation of a survey: the sum of count x ft2 each.
     *
     * @param radiators 1 to 2000 entries
     * @throws IllegalArgumentException for none or too many
     */
    public static Worked survey(List<Radiator> radiators) {
        Ranges.within("radiators in the survey", Rational.of(radiators.size()), 1, MOST_ENTRIES);
        Working sheet = Working.on(Basis.STANDARD).source("radiator-tables");
        StringBuilder sum = new StringBuilder();
        int number = 0;
        for (Radiator radiator : radiators) {
            number++;
            sheet.let("n" + number, "how many: " + radiator.words(), radiator.count(), "")
                    .let("a" + number, "EDR of one", radiator.each(), SQUARE_FOOT)
                    .line(number + ". " + radiator.words(), "r" + number, "n" + number + " x a" + number, SQUARE_FOOT);
            sum.append(number == 1 ? "r" : " + r").append(number);
            if (radiator instanceof Radiator.BarePipe) {
                sheet.source("asme-b36-10");
            }
        }
        return sheet.line(EDR, "EDR", sum.toString(), SQUARE_FOOT)
                .warn(
                        "Measured as found: a cover, a deep enclosure or many coats of metallic paint make a radiator give less.")
                .worked();
    }

    /**
     * What so much radiation takes.
     *
     * @param edr connected radiation, above zero to 100,000 ft2 EDR
     * @param gauge pressure of the steam; with the barometer 0.1 to 240 psia
     * @param barometer at the place, 8 to 16 psia, ends included
     * @throws IllegalArgumentException outside those ranges, or for another dimension
     */
    public static Worked of(Quantity edr, Quantity gauge, Quantity barometer) {
        return sheet(edr, gauge, barometer).worked();
    }

    /**
     * The same, and how many times the required output a boiler has.
     *
     * @param gross gross output of the boiler, above zero to 100 million Btu/h
     * @throws IllegalArgumentException as above
     */
    public static Worked oversize(Quantity edr, Quantity gauge, Quantity barometer, Quantity gross) {
        Ranges.above("gross output", gross, NO_OUTPUT, MOST_OUTPUT);
        return sheet(edr, gauge, barometer)
                .let("gross", "gross output of the boiler", gross, BTU_PER_HOUR)
                .line(OVERSIZE, "ratio", "gross / required", TIMES)
                .worked();
    }

    /**
     * The gross output that so much radiation asks for, exact.
     *
     * @param edr connected radiation
     * @return EDR x 240 Btu/h x 4/3
     * @throws IllegalArgumentException for another dimension
     */
    public static Quantity required(Quantity edr) {
        return Quantity.of(
                edr.valueIn(SQUARE_FOOT)
                        .times(Constant.of("edr-heat").value())
                        .times(Constant.of("pickup").value()),
                BTU_PER_HOUR);
    }

    private static Working sheet(Quantity edr, Quantity gauge, Quantity barometer) {
        Ranges.above("connected radiation", edr, NONE, MOST);
        return Saturation.sheet(gauge, barometer)
                .let("EDR", "connected radiation, EDR", edr, SQUARE_FOOT)
                .constant("each", "edr-heat")
                .constant("pickup", "pickup")
                .line(HEAT, "heat", "EDR x each", BTU_PER_HOUR)
                .line(CONDENSING, "steam", "heat / hfg", POUND_PER_HOUR)
                .line(REQUIRED, "required", "heat x pickup", BTU_PER_HOUR)
                .warn("Piping and pickup are counted for insulated mains; bare mains take more.");
    }
}
