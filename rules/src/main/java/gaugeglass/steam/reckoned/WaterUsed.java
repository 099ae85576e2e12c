package gaugeglass.steam.reckoned;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Seen;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.steam.observed.WaterUse.DegreeDayNote;
import gaugeglass.steam.observed.WaterUse.DegreeDayRecord;
import gaugeglass.steam.observed.WaterUse.MakeUpHardness;
import gaugeglass.steam.observed.WaterUse.MakeUpMeter;
import gaugeglass.steam.observed.WaterUse.MeterDial;
import gaugeglass.steam.observed.WaterUse.MeterPresence;
import gaugeglass.steam.observed.WaterUse.MeterReading;
import gaugeglass.steam.observed.WaterUse.ReadingDegreeDays;
import gaugeglass.steam.observed.WaterUse.ReadingHours;
import gaugeglass.steam.observed.WaterUse.WatersideCleaned;
import gaugeglass.steam.reckon.Deposits;
import gaugeglass.steam.reckon.MakeUp;
import gaugeglass.steam.reckon.MeterLog;
import gaugeglass.steam.reckon.MeterLog.Course;
import gaugeglass.steam.reckon.MeterLog.Reading;
import gaugeglass.steam.reckon.MeterLog.Since;
import gaugeglass.steam.reckon.MeterLog.Span;
import gaugeglass.steam.reckon.Saturation;
import gaugeglass.steam.reckoned.GrossOutputReckoning.GrossOutput;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * What the log of the make-up meter tells: each figure goes over the readings once, in the order of their days, so that
 * eight hundred of them cost eight hundred steps and no rule compares one with another.
 *
 * <p>All but the scale look back over about a year: from the last reading that is at least {@code water-use.look-back} old,
 * or else from the first. Where readings do not reach, or one of them fell without a reason, a figure is unknown for want
 * of another reading, and not nothing.
 */
public final class WaterUsed {
    /** How far back the figures look. */
    public static final String LOOK_BACK = "water-use.look-back";

    /** How many days in service without any use nobody believes. */
    static final String ZERO_DAYS = "water-use.zero-days";

    private static final String READING = "meter-reading";
    static final Quantity MOST = Quantity.of(10_000_000, Unit.GALLON);
    static final Quantity OPEN_AIR = Quantity.of(0, Unit.PSI);
    private static final Quantity MOST_TIME = Quantity.of(3660, Unit.DAY);
    private static final Quantity MOST_TIMES = Quantity.of(1000, Unit.TIMES);

    /** In the order in which they may use one another's results. */
    public static final List<Reckoning> ALL =
            List.of(new Today(), new Doubt(), new Share(), new ByDay(), new ByDegreeDay(), new Idle(), new Scale());

    private WaterUsed() {}

    /** Whether the meter was read on the day of the visit. */
    public enum ReadToday {
        READ,
        NOT_READ
    }

    /** Whether the meter was read today. */
    @Item(
            id = "water-use.read-today",
            look = "Read if a row of the log has the day of the visit.",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "Whether the make-up meter was read on the day of the visit.")
    public record MeterReadToday(ReadToday read) {}

    /** Why the meter is not to be believed as it stands. */
    public enum MeterFault {
        NONE,
        FELL,
        STOOD_STILL,
        ROLLED_OVER
    }

    /**
     * What speaks against the meter over the last year.
     *
     * @param fault the gravest
     * @param since the day of the reading before it; where there is none, of the first
     * @param until the day of the reading that shows it; where there is none, of the last
     */
    @Item(
            id = "water-use.meter-fault",
            look =
                    "A reading that fell and is not explained by the dial beginning again; no use over the limit's days in service; a dial that began again.",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "What in the readings of the last year speaks against the make-up meter.")
    public record MeterDoubt(MeterFault fault, LocalDate since, LocalDate until) {}

    /**
     * Make-up as a share of the steam made over the last year.
     *
     * @param share of the weight of the steam
     * @param used the make-up
     */
    @Item(
            id = "water-use.share",
            look =
                    "share = water / steam x 100; water = used x weight; steam = output / hfg x hours (IAPWS-IF97, at the open air's pressure).",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "The make-up of the last year as a share of the steam made.")
    public record ShareOfSteam(
            @Measured(unit = Unit.PERCENT, from = "0", to = "10000")
            Quantity share,

            @Measured(unit = Unit.GALLON, from = "0", to = "10000000")
            Quantity used) {}

    /**
     * The last year's use by the day beside that of the year before.
     *
     * @param times the year before's
     * @param used over the last year
     */
    @Item(
            id = "water-use.by-day",
            look = "times = (used / days) of the last year / (used / days) of the year before.",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "The last year's make-up by the day, against the year before.")
    public record UseByDay(
            @Measured(unit = Unit.TIMES, from = "0", to = "1000")
            Quantity times,

            @Measured(unit = Unit.GALLON, from = "0", to = "10000000")
            Quantity used) {}

    /**
     * The last year's use by the degree day beside that of the year before.
     *
     * @param times the year before's
     * @param used over the last year
     */
    @Item(
            id = "water-use.by-degree-day",
            look = "times = (used / DD) of the last year / (used / DD) of the year before.",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "The last year's make-up by the degree day, against the year before.")
    public record UseByDegreeDay(
            @Measured(unit = Unit.TIMES, from = "0", to = "1000")
            Quantity times,

            @Measured(unit = Unit.GALLON, from = "0", to = "10000000")
            Quantity used) {}

    /** What was used over the last year while the boiler stood unfired. */
    @Item(
            id = "water-use.unfired",
            look = "Sum of what went through over the rows marked unfired in the last year.",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "The make-up of the last year while nothing was fired.")
    public record UnfiredUse(
            @Measured(unit = Unit.GALLON, from = "0", to = "10000000")
            Quantity used) {}

    /**
     * The hardness brought in since the water side was last cleaned; an upper bound of the scale.
     *
     * @param scale as calcium carbonate
     * @param used the make-up that brought it
     */
    @Item(
            id = "water-use.scale",
            look = "scale = water x hard / pound; an upper bound, as calcium carbonate.",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "The hardness that make-up has brought in since the water side was last cleaned.")
    public record ScaleBurden(
            @Measured(unit = Unit.POUND, from = "0", to = "200000")
            Quantity scale,

            @Measured(unit = Unit.GALLON, from = "0", to = "10000000")
            Quantity used) {}

    // ---- the log

    private static boolean isMetered(Seen seen) {
        return seen.the(MakeUpMeter.class).presence() == MeterPresence.FITTED;
    }

    private static List<Reading> readings(Seen seen) {
        List<Reading> readings = new ArrayList<>();
        seen.each(MeterReading.class).forEach(row -> readings.add(reading(row)));
        return MeterLog.inOrder(readings);
    }

    /** A row of the log as it is reckoned with. */
    static Reading reading(MeterReading row) {
        Since since =
                switch (row.since()) {
                    case FIRED -> Since.FIRED;
                    case UNFIRED -> Since.UNFIRED;
                    case NEW_START -> Since.NEW_START;
                };
        return new Reading(row.which(), row.on(), row.dial(), since);
    }

    private static List<Span> spans(Seen seen) {
        return MeterLog.spans(readings(seen), () -> whole(seen.the(MeterDial.class)));
    }

    /** What a dial counts before it begins again. */
    static Quantity whole(MeterDial dial) {
        Rational whole = Rational.ONE;
        for (int i = 0; i < dial.digits(); i++) {
            whole = whole.times(Rational.of(10));
        }
        return Quantity.of(whole, dial.counts().unit());
    }

    private static long lookBack(Seen seen) {
        return days(seen.limit(LOOK_BACK));
    }

    static long days(Quantity time) {
        Rational days = time.valueIn(Unit.DAY);
        return days.numerator().divide(days.denominator()).longValueExact();
    }

    private static List<Span> lastYear(Seen seen, List<Span> spans) {
        if (spans.isEmpty()) {
            throw seen.another(READING, "one reading tells no use");
        }
        return MeterLog.last(spans, seen.date(), lookBack(seen));
    }

    /** The spans, if what went through is known in all of them but where the count began anew. */
    private static List<Span> believed(Seen seen, List<Span> spans) {
        for (Span span : spans) {
            if (span.course() == Course.FELL) {
                throw seen.another(READING, "the reading of " + span.to().on() + " fell");
            }
        }
        return spans;
    }

    /** The year before the spans, as far as it is known. */
    private static List<Span> yearBefore(Seen seen, List<Span> all, List<Span> year) {
        List<Span> earlier = all.subList(0, all.size() - year.size());
        LocalDate from = year.get(0).from().on();
        List<Span> before = MeterLog.last(earlier, from, lookBack(seen));
        if (before.isEmpty() || before.get(0).from().on().isAfter(from.minusDays(lookBack(seen)))) {
            throw seen.another(READING, "none is a year older than the last year's first");
        }
        return believed(seen, before);
    }

    static Quantity most(Quantity quantity, Quantity most) {
        return quantity.isAbove(most) ? most : quantity;
    }

    /** How many times as much as before: once where both are nothing, the most there is where only the later is something. */
    private static Quantity times(Rational now, Rational before) {
        if (before.signum() == 0) {
            return now.signum() == 0 ? Quantity.of(1, Unit.TIMES) : MOST_TIMES;
        }
        return most(Quantity.of(now.dividedBy(before), Unit.TIMES), MOST_TIMES);
    }

    /** Use by some measure of the spans whose use is known. */
    private static Rational rate(Seen seen, List<Span> spans, Function<Span, Rational> measure, String why) {
        Rational sum = Rational.ZERO;
        for (Span span : spans) {
            if (span.isKnown()) {
                sum = sum.plus(measure.apply(span));
            }
        }
        if (sum.signum() == 0) {
            throw seen.another(READING, why);
        }
        return MeterLog.used(spans).valueIn(Unit.GALLON).dividedBy(sum);
    }

    /** The burner's hours over the spans whose use is known. */
    static Quantity hours(List<Span> spans, Function<String, Quantity> ofReading) {
        Quantity hours = Quantity.of(0, Unit.HOUR);
        for (Span span : spans) {
            if (span.isKnown()) {
                hours = hours.plus(ofReading.apply(span.to().tag()));
            }
        }
        return hours;
    }

    /** Make-up as a share of the steam that so much output makes in so many hours, above zero. */
    static Quantity share(Quantity used, Quantity output, Quantity hours) {
        return MakeUp.shareOfSteam(used, output, most(hours, MOST_TIME), OPEN_AIR, Saturation.STANDARD_ATMOSPHERE)
                .quantity(MakeUp.SHARE);
    }

    // ---- the reckonings

    private static final class Today implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return MeterReadToday.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(MeterReading.class);
        }

        @Override
        public List<MeterReadToday> work(Seen seen, String which) {
            boolean read = seen.any(MeterReading.class, row -> row.on().equals(seen.date()));
            return List.of(new MeterReadToday(read ? ReadToday.READ : ReadToday.NOT_READ));
        }
    }

    private static final class Doubt implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return MeterDoubt.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(MakeUpMeter.class, MeterReading.class, MeterDial.class);
        }

        @Override
        public List<String> limits() {
            return List.of(LOOK_BACK, ZERO_DAYS);
        }

        @Override
        public List<MeterDoubt> work(Seen seen, String which) {
            if (!isMetered(seen)) {
                return List.of();
            }
            List<Span> spans = spans(seen);
            List<Span> year = lastYear(seen, spans);
            for (Span span : year) {
                if (span.course() == Course.FELL) {
                    return doubt(MeterFault.FELL, span, span);
                }
            }
            List<Span> fired = year.stream()
                    .filter(span -> span.to().since() == Since.FIRED)
                    .toList();
            if (MeterLog.used(fired).signum() == 0 && MeterLog.days(fired) >= days(seen.limit(ZERO_DAYS))) {
                return doubt(MeterFault.STOOD_STILL, fired.get(0), fired.get(fired.size() - 1));
            }
            for (Span span : year) {
                if (span.course() == Course.ROLLED_OVER) {
                    return doubt(MeterFault.ROLLED_OVER, span, span);
                }
            }
            return doubt(MeterFault.NONE, year.get(0), year.get(year.size() - 1));
        }

        private static List<MeterDoubt> doubt(MeterFault fault, Span first, Span last) {
            return List.of(new MeterDoubt(fault, first.from().on(), last.to().on()));
        }
    }

    private static final class Share implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return ShareOfSteam.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(
                    MakeUpMeter.class, MeterReading.class, MeterDial.class, ReadingHours.class, GrossOutput.class);
        }

        @Override
        public List<String> limits() {
            return List.of(LOOK_BACK);
        }

        @Override
        public List<ShareOfSteam> work(Seen seen, String which) {
            if (!isMetered(seen)) {
                return List.of();
            }
            List<Span> year = believed(seen, lastYear(seen, spans(seen)));
            Quantity hours = hours(year, tag -> seen.of(ReadingHours.class, tag).hours());
            if (hours.signum() == 0) {
                throw seen.another(READING, "none with burner hours");
            }
            Quantity used = most(MeterLog.used(year), MOST);
            Quantity share = share(used, seen.the(GrossOutput.class).output(), hours);
            return List.of(new ShareOfSteam(share, used));
        }
    }

    private static final class ByDay implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return UseByDay.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(MakeUpMeter.class, DegreeDayRecord.class, MeterReading.class, MeterDial.class);
        }

        @Override
        public List<String> limits() {
            return List.of(LOOK_BACK);
        }

        @Override
        public List<UseByDay> work(Seen seen, String which) {
            if (!isMetered(seen) || seen.the(DegreeDayRecord.class).note() == DegreeDayNote.KEPT) {
                return List.of();
            }
            List<Span> all = spans(seen);
            List<Span> year = believed(seen, lastYear(seen, all));
            List<Span> before = yearBefore(seen, all, year);
            Function<Span, Rational> days = span -> Rational.of(span.days());
            Rational now = rate(seen, year, days, "none with days between");
            return List.of(new UseByDay(
                    times(now, rate(seen, before, days, "none with days between")), most(MeterLog.used(year), MOST)));
        }
    }

    private static final class ByDegreeDay implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return UseByDegreeDay.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(
                    MakeUpMeter.class,
                    DegreeDayRecord.class,
                    MeterReading.class,
                    MeterDial.class,
                    ReadingDegreeDays.class);
        }

        @Override
        public List<String> limits() {
            return List.of(LOOK_BACK);
        }

        @Override
        public List<UseByDegreeDay> work(Seen seen, String which) {
            if (!isMetered(seen) || seen.the(DegreeDayRecord.class).note() == DegreeDayNote.NOT_KEPT) {
                return List.of();
            }
            List<Span> all = spans(seen);
            List<Span> year = believed(seen, lastYear(seen, all));
            List<Span> before = yearBefore(seen, all, year);
            Function<Span, Rational> cold = span ->
                    seen.of(ReadingDegreeDays.class, span.to().tag()).cold().valueIn(Unit.FAHRENHEIT_DAY);
            Rational now = rate(seen, year, cold, "none with degree days");
            return List.of(new UseByDegreeDay(
                    times(now, rate(seen, before, cold, "none with degree days")), most(MeterLog.used(year), MOST)));
        }
    }

    private static final class Idle implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return UnfiredUse.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(MakeUpMeter.class, MeterReading.class, MeterDial.class);
        }

        @Override
        public List<String> limits() {
            return List.of(LOOK_BACK);
        }

        @Override
        public List<UnfiredUse> work(Seen seen, String which) {
            if (!isMetered(seen)) {
                return List.of();
            }
            List<Span> unfired = lastYear(seen, spans(seen)).stream()
                    .filter(span -> span.to().since() == Since.UNFIRED)
                    .toList();
            if (unfired.isEmpty()) {
                throw seen.another(READING, "none tells the unfired time from the fired");
            }
            return List.of(new UnfiredUse(most(MeterLog.used(believed(seen, unfired)), MOST)));
        }
    }

    private static final class Scale implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return ScaleBurden.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(
                    MakeUpMeter.class,
                    MeterReading.class,
                    MeterDial.class,
                    WatersideCleaned.class,
                    MakeUpHardness.class);
        }

        @Override
        public List<ScaleBurden> work(Seen seen, String which) {
            if (!isMetered(seen)) {
                return List.of();
            }
            List<Reading> readings = readings(seen);
            LocalDate cleaned = seen.the(WatersideCleaned.class).on();
            if (readings.isEmpty() || readings.get(0).on().isAfter(cleaned)) {
                throw seen.another(READING, "none is as old as the last cleaning");
            }
            List<Span> since = believed(seen, MeterLog.last(spans(seen), cleaned, 0));
            Quantity used = most(MeterLog.used(since), MOST);
            Quantity scale = Deposits.scale(used, seen.the(MakeUpHardness.class).hardness())
                    .quantity(Deposits.SCALE);
            return List.of(new ScaleBurden(scale, used));
        }
    }
}
