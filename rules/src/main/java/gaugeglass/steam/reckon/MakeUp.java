package gaugeglass.steam.reckon;

import static gaugeglass.engine.quantity.Unit.BTU_PER_HOUR;
import static gaugeglass.engine.quantity.Unit.DAY;
import static gaugeglass.engine.quantity.Unit.FAHRENHEIT_DAY;
import static gaugeglass.engine.quantity.Unit.GALLON;
import static gaugeglass.engine.quantity.Unit.GALLON_PER_DAY;
import static gaugeglass.engine.quantity.Unit.GALLON_PER_FAHRENHEIT_DAY;
import static gaugeglass.engine.quantity.Unit.HOUR;
import static gaugeglass.engine.quantity.Unit.PERCENT;
import static gaugeglass.engine.quantity.Unit.POUND;

import gaugeglass.engine.book.Basis;
import gaugeglass.engine.quantity.Quantity;

/** Make-up water put in proportion: to time, to cold, to the steam that was made. Exact but for the steam table. */
public final class MakeUp {
    /** The line that gives the use per day. */
    public static final String PER_DAY = "per day";

    /** The line that gives the use per degree day. */
    public static final String PER_DEGREE_DAY = "per degree day";

    /** The line that gives the share of the steam made. */
    public static final String SHARE = "share of the steam made";

    private static final Quantity NONE = Quantity.of(0, GALLON);
    private static final Quantity MOST = Quantity.of(10_000_000, GALLON);
    private static final Quantity NO_TIME = Quantity.of(0, DAY);
    private static final Quantity LONGEST = Quantity.of(3660, DAY);
    private static final Quantity NO_COLD = Quantity.of(0, FAHRENHEIT_DAY);
    private static final Quantity COLDEST = Quantity.of(200_000, FAHRENHEIT_DAY);
    private static final Quantity NO_OUTPUT = Quantity.of(0, BTU_PER_HOUR);
    private static final Quantity MOST_OUTPUT = Quantity.of(100_000_000, BTU_PER_HOUR);

    private MakeUp() {}

    /**
     * Gallons a day: used / days.
     *
     * @param used zero to ten million gal, ends included
     * @param time between the readings, above zero to 3660 days
     * @throws IllegalArgumentException outside those ranges, or for another dimension
     */
    public static Worked perDay(Quantity used, Quantity time) {
        Ranges.within("water used", used, NONE, MOST);
        Ranges.above("time between the readings", time, NO_TIME, LONGEST);
        return Working.on(Basis.CALCULATED)
                .let("used", "water used", used, GALLON)
                .let("days", "time between the readings", time, DAY)
                .source("physics")
                .line(PER_DAY, "daily", "used / days", GALLON_PER_DAY)
                .worked();
    }

    /**
     * Gallons a degree day: used / degree days.
     *
     * @param used zero to ten million gal, ends included
     * @param cold degree days between the readings, above zero to 200,000 F-days
     * @throws IllegalArgumentException outside those ranges, or for another dimension
     */
    public static Worked perDegreeDay(Quantity used, Quantity cold) {
        Ranges.within("water used", used, NONE, MOST);
        Ranges.above("degree days", cold, NO_COLD, COLDEST);
        return Working.on(Basis.CALCULATED)
                .let("used", "water used", used, GALLON)
                .let("DD", "degree days between the readings", cold, FAHRENHEIT_DAY)
                .source("physics")
                .line(PER_DEGREE_DAY, "each", "used / DD", GALLON_PER_FAHRENHEIT_DAY)
                .worked();
    }

    /**
     * Make-up in percent of the steam made: used x 8.345 / (output / hfg x burner hours) x 100.
     *
     * @param used zero to ten million gal, ends included
     * @param output of the boiler while the burner runs, above zero to 100 million Btu/h
     * @param hours the burner ran between the readings, above zero to 3660 days
     * @param gauge pressure of the steam; with the barometer 0.1 to 240 psia
     * @param barometer at the place, 8 to 16 psia, ends included
     * @throws IllegalArgumentException outside those ranges, or for another dimension
     */
    public static Worked shareOfSteam(
            Quantity used, Quantity output, Quantity hours, Quantity gauge, Quantity barometer) {
        Ranges.within("water used", used, NONE, MOST);
        Ranges.above("output", output, NO_OUTPUT, MOST_OUTPUT);
        Ranges.above("burner hours", hours, NO_TIME, LONGEST);
        Working sheet = Saturation.sheet(gauge, barometer)
                .let("used", "water used", used, GALLON)
                .let("output", "output while the burner runs", output, BTU_PER_HOUR)
                .let("hours", "hours the burner ran", hours, HOUR)
                .constant("weight", "make-up-weight")
                .line("water used, by weight", "water", "used x weight", POUND)
                .line("steam made", "steam", "output / hfg x hours", POUND)
                .line(SHARE, "share", "water / steam x 100", PERCENT);
        boolean isMoreThanAll = sheet.value("water").compareTo(sheet.value("steam")) > 0;
        return sheet.warnIf(
                        isMoreThanAll,
                        "More water than steam was made: a figure is wrong, or it left below the water line.")
                .worked();
    }
}
