package gaugeglass.steam.observed;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Counted;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Of;
import gaugeglass.engine.vocabulary.Stage;
import java.time.LocalDate;
import java.util.List;

/**
 * What is known of the water that the boiler was given: its meter, the log of readings, and where water may get lost unseen.
 *
 * <p>A row of the log is one reading with its day. What else may stand in the row, hours and degree days, is an observation
 * of its own, since it may be missing.
 */
public final class WaterUse {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS = List.of(
            MakeUpMeter.class,
            MeterDial.class,
            DegreeDayRecord.class,
            MeterReading.class,
            ReadingHours.class,
            ReadingDegreeDays.class,
            LeakSearch.class,
            MakeUpHardness.class,
            WatersideCleaned.class);

    private WaterUse() {}

    /** Whether make-up is metered. */
    public enum MeterPresence {
        FITTED,
        NOT_FITTED
    }

    /** Whether the water that is made up goes through a meter of its own. */
    @Item(
            id = "water-use.meter",
            of = "boiler",
            stage = Stage.ARRIVAL,
            structural = true,
            carried = true,
            ask = "Does a meter, or a counter on the feeder, count the water that is made up?",
            look = "All of it, the hand bypass too; a meter that the bypass goes round does not count.")
    public record MakeUpMeter(MeterPresence presence) {}

    /** What a meter counts in. */
    public enum MeterUnit {
        GALLONS(Unit.GALLON),
        CUBIC_FEET(Unit.CUBIC_FOOT),
        LITRES(Unit.LITRE),
        CUBIC_METRES(Unit.CUBIC_METRE);

        private final Unit unit;

        MeterUnit(Unit unit) {
            this.unit = unit;
        }

        /** The unit of volume that the word stands for. */
        public Unit unit() {
            return unit;
        }
    }

    /**
     * How far the meter counts before it begins again.
     *
     * @param digits of whole units
     * @param counts the unit of the last of them
     */
    @Item(
            id = "water-use.dial",
            of = "boiler",
            stage = Stage.ARRIVAL,
            structural = true,
            carried = true,
            ask = "How many digits of whole units does the meter count, and of what unit?",
            look = "The unit is printed on the dial. Digits behind the comma or in red are no whole units.",
            unreadBecause = {"dial not legible"})
    public record MeterDial(@Counted(from = 2, to = 9) int digits, MeterUnit counts) {}

    /** Whether degree days are written beside the readings. */
    public enum DegreeDayNote {
        KEPT,
        NOT_KEPT
    }

    /** Whether the log tells how cold it was. */
    @Item(
            id = "water-use.degree-day-record",
            of = "boiler",
            stage = Stage.ARRIVAL,
            structural = true,
            ask = "Are degree days at hand for the time between the readings?",
            look = "From a weather record for the place. Without them use is compared by the day.")
    public record DegreeDayRecord(DegreeDayNote note) {}

    /** What went on between a reading and the one before it. */
    public enum SinceBefore {
        FIRED,
        UNFIRED,
        NEW_START
    }

    /**
     * One reading of the make-up meter.
     *
     * @param which the row's tag
     * @param on the day
     * @param dial what the meter showed
     * @param since what went on since the row before
     */
    @Item(
            id = "meter-reading.row",
            of = "meter-reading",
            stage = Stage.ARRIVAL,
            ask =
                    "On what day was the meter read, what did it show, and since the reading before: fired, unfired, or a new"
                            + " start of the count?",
            look =
                    "Today's is read before anything is fed. A meter that was replaced or set back has two rows for that day: the"
                            + " old count's last, then the new count's first, marked new-start.",
            unreadBecause = {"not legible"})
    public record MeterReading(
            @Of String which,
            LocalDate on,

            @Measured(unit = Unit.GALLON, from = "0", to = "1000000")
            Quantity dial,

            SinceBefore since) {}

    /** How long the burner ran between a reading and the one before it. */
    @Item(
            id = "meter-reading.burner-hours",
            of = "meter-reading",
            stage = Stage.ARRIVAL,
            ask = "How many hours did the burner run since the reading before this one?",
            look =
                    "An hour counter; or fuel burnt times its heat, over the measured input. The first reading of all: 0 h.",
            unreadBecause = {"no hour counter and no fuel record"})
    public record ReadingHours(
            @Of String which,

            @Measured(unit = Unit.HOUR, from = "0", to = "9000")
            Quantity hours) {}

    /** How cold it was between a reading and the one before it. */
    @Item(
            id = "meter-reading.degree-days",
            of = "meter-reading",
            stage = Stage.ARRIVAL,
            ask = "How many degree days went by since the reading before this one?",
            look = "The first reading of all: 0 F-days.",
            unreadBecause = {"no record for that time"})
    public record ReadingDegreeDays(
            @Of String which,

            @Measured(unit = Unit.FAHRENHEIT_DAY, from = "0", to = "20000")
            Quantity cold) {}

    /** What a search for leaks brought to light. */
    public enum LeakFound {
        NONE_FOUND,
        FOUND
    }

    /** Whether a leak that explains lost water can be seen anywhere. */
    @Item(
            id = "water-use.leak-search",
            of = "boiler",
            stage = Stage.COLD,
            ask = "Does water leave at any place that can be seen?",
            look =
                    "Returns, valve stems, vents that spit, the drain, the safety valve's outlet, the boiler's own joints.",
            unreadBecause = {"system not walked"})
    public record LeakSearch(LeakFound found) {}

    /** How hard the make-up is. */
    @Item(
            id = "water-use.hardness",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "How hard is the water that is made up?",
            look = "A test strip, or the water company's report; after a softener, behind it.",
            unreadBecause = {"not tested", "report not at hand"})
    public record MakeUpHardness(
            @Measured(unit = Unit.GRAIN_PER_GALLON, from = "0", to = "100")
            Quantity hardness) {}

    /** When the water side was last cleaned of scale. */
    @Item(
            id = "water-use.last-cleaning",
            of = "boiler",
            stage = Stage.ARRIVAL,
            carried = true,
            ask = "When was the boiler's water side last cleaned of scale, or the boiler put in new?",
            unreadBecause = {"not on record"})
    public record WatersideCleaned(LocalDate on) {}
}
