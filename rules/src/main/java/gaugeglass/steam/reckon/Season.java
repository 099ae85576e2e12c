package gaugeglass.steam.reckon;

import static gaugeglass.engine.quantity.Unit.FAHRENHEIT_DAY;
import static gaugeglass.engine.quantity.Unit.FAHRENHEIT_DEGREE;
import static gaugeglass.engine.quantity.Unit.HOUR;

import gaugeglass.engine.book.Basis;
import gaugeglass.engine.quantity.Quantity;

/** How many hours at full load a heating season comes to. Exact. */
public final class Season {
    /** The line that gives the hours. */
    public static final String HOURS = "hours at full load";

    private static final Quantity NONE = Quantity.of(0, FAHRENHEIT_DAY);
    private static final Quantity MOST = Quantity.of(20_000, FAHRENHEIT_DAY);
    private static final Quantity LEAST_RISE = Quantity.of(20, FAHRENHEIT_DEGREE);
    private static final Quantity MOST_RISE = Quantity.of(150, FAHRENHEIT_DEGREE);

    private Season() {}

    /**
     * Hours at full load: degree days x 24 / design rise.
     *
     * @param degreeDays of the season, 0 to 20,000 F-days, ends included
     * @param rise indoor less outdoor temperature for which the load was reckoned, 20 to 150 F, ends included
     * @throws IllegalArgumentException outside those ranges, or for another dimension
     */
    public static Worked hours(Quantity degreeDays, Quantity rise) {
        Ranges.within("degree days", degreeDays, NONE, MOST);
        Ranges.within("design rise", rise, LEAST_RISE, MOST_RISE);
        return Working.on(Basis.CALCULATED)
                .let("DD", "degree days", degreeDays, FAHRENHEIT_DAY)
                .let("rise", "design rise, indoor less outdoor", rise, FAHRENHEIT_DEGREE)
                .constant("day", "hours-a-day")
                .source("season-hours")
                .line(HOURS, "hours", "DD x day / rise", HOUR)
                .worked();
    }
}
