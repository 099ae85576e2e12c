package gaugeglass.steam.reckoned;

import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.Roster;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.steam.observed.WaterUse.MakeUpMeter;
import gaugeglass.steam.observed.WaterUse.MeterDial;
import gaugeglass.steam.observed.WaterUse.MeterPresence;
import gaugeglass.steam.observed.WaterUse.MeterReading;
import gaugeglass.steam.observed.WaterUse.ReadingHours;
import gaugeglass.steam.reckon.MeterLog;
import gaugeglass.steam.reckon.MeterLog.Course;
import gaugeglass.steam.reckon.MeterLog.Reading;
import gaugeglass.steam.reckon.MeterLog.Span;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a year of a boiler's make-up came to, as its meter's log tells: for holding boilers and years against one another. It
 * decides nothing; the latest year is worked out by the same functions as the share that is judged.
 *
 * @param until the day of the year's last reading
 * @param days over which it is known what went through, one or more
 * @param used what went through
 * @param share of the steam made meanwhile; empty where the output or some of the burner's hours are not known, or nothing
 *     was fired
 */
public record MakeUpYear(LocalDate until, long days, Quantity used, Optional<Quantity> share) {
    /** What went through by the day. */
    public Quantity perDay() {
        return Quantity.of(used.valueIn(Unit.GALLON), Unit.GALLON_PER_DAY).dividedBy(days);
    }

    /**
     * The years of a boiler's log, latest first. It ends before a year in which the meter fell for no reason or that the
     * readings do not fill; the latest may be filled by half.
     *
     * @param observations what was seen
     * @param outputOfInput as {@link MakeUpHistory#of} takes it
     * @param day of the visit
     * @param lookBack what counts as a year, as the limit {@link WaterUsed#LOOK_BACK} sets it
     * @return none where make-up is not metered, or not every reading is known
     */
    public static List<MakeUpYear> of(
            Observations observations, Quantity outputOfInput, LocalDate day, Quantity lookBack) {
        List<Span> left = spans(observations);
        Optional<Quantity> output = MakeUpHistory.output(observations, outputOfInput);
        long back = WaterUsed.days(lookBack);
        LocalDate until = day;
        List<MakeUpYear> years = new ArrayList<>();
        while (!left.isEmpty()) {
            List<Span> year = MeterLog.last(left, until, back);
            long days = MeterLog.days(year);
            LocalDate from = year.get(0).from().on();
            boolean isFilled =
                    years.isEmpty() ? days > 0 && 2 * days >= back : days > 0 && !from.isAfter(until.minusDays(back));
            if (!isFilled || year.stream().anyMatch(span -> span.course() == Course.FELL)) {
                break;
            }
            Quantity used = WaterUsed.most(MeterLog.used(year), WaterUsed.MOST);
            years.add(new MakeUpYear(
                    year.get(year.size() - 1).to().on(), days, used, output.flatMap(heat -> hours(observations, year)
                            .map(time -> WaterUsed.share(used, heat, time)))));
            left = left.subList(0, left.size() - year.size());
            until = from;
        }
        return years;
    }

    private static List<Span> spans(Observations observations) {
        Roster rows = observations.roster("meter-reading");
        List<String> tags = rows.tags(State.AS_LEFT);
        boolean isMetered = MakeUpHistory.seen(observations, MakeUpMeter.class, List.of())
                .filter(meter -> meter.presence() == MeterPresence.FITTED)
                .isPresent();
        if (!isMetered || rows.fitted(State.AS_LEFT).orElse(-1) != tags.size()) {
            return List.of();
        }
        List<Reading> readings = new ArrayList<>();
        for (String tag : tags) {
            Optional<MeterReading> row = MakeUpHistory.seen(observations, MeterReading.class, List.of(tag));
            if (row.isEmpty()) {
                return List.of();
            }
            readings.add(WaterUsed.reading(row.get()));
        }
        // Without the dial's size a reading that fell is explained by nothing.
        Quantity dial = MakeUpHistory.seen(observations, MeterDial.class, List.of())
                .map(WaterUsed::whole)
                .orElse(Quantity.of(0, Unit.GALLON));
        return MeterLog.spans(MeterLog.inOrder(readings), () -> dial);
    }

    /** The burner's hours over a year; empty where some are not known, or there are none. */
    private static Optional<Quantity> hours(Observations observations, List<Span> year) {
        for (Span span : year) {
            if (span.isKnown() && hours(observations, span.to().tag()).isEmpty()) {
                return Optional.empty();
            }
        }
        return Optional.of(WaterUsed.hours(
                        year, tag -> hours(observations, tag).orElseThrow().hours()))
                .filter(time -> time.signum() > 0);
    }

    private static Optional<ReadingHours> hours(Observations observations, String tag) {
        return MakeUpHistory.seen(observations, ReadingHours.class, List.of(tag));
    }
}
