package gaugeglass.steam.reckoned;

import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.steam.observed.BoilerPlate.PlateInput;
import gaugeglass.steam.observed.BoilerPlate.PlateMark;
import gaugeglass.steam.observed.BoilerPlate.PlateOutput;
import gaugeglass.steam.observed.BoilerPlate.PlateOutputMark;
import gaugeglass.steam.observed.WaterUse.MeterDial;
import gaugeglass.steam.observed.WaterUse.MeterReading;
import gaugeglass.steam.observed.WaterUse.ReadingHours;
import gaugeglass.steam.reckon.MakeUp;
import gaugeglass.steam.reckon.MeterLog;
import gaugeglass.steam.reckon.MeterLog.Reading;
import gaugeglass.steam.reckon.MeterLog.Span;
import gaugeglass.steam.reckon.Saturation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The whole log of the make-up meter as a report shows it: what went through from reading to reading, beside the steam that
 * was made. It decides nothing; what is judged is worked out in {@link WaterUsed} from the same functions.
 *
 * @param steps from reading to reading, in the order of their days; none where fewer than two readings were seen
 * @param unread how many readings were looked at and could not be read, or are counted and not described
 */
public record MakeUpHistory(List<Step> steps, int unread) {
    private static final Quantity ONE_GALLON = Quantity.of(1, Unit.GALLON);

    public MakeUpHistory {
        steps = List.copyOf(steps);
    }

    /**
     * The time between two readings.
     *
     * @param span the readings and how the meter went
     * @param percent as much water as one percent of the steam made meanwhile; empty where burner hours or the boiler's
     *     output are not known, or nothing was fired
     */
    public record Step(Span span, Optional<Quantity> percent) {
        /** What went through by the day; empty where it is not known, or within one day. */
        public Optional<Quantity> perDay() {
            return span.isKnown() && span.days() > 0
                    ? Optional.of(byDay(span.used().valueIn(Unit.GALLON)))
                    : Optional.empty();
        }

        /** As much by the day as so many percent of the steam made; empty where that is not known. */
        public Optional<Quantity> perDayAt(Quantity share) {
            return span.days() == 0
                    ? Optional.empty()
                    : percent.map(water -> byDay(water.valueIn(Unit.GALLON).times(share.valueIn(Unit.PERCENT))));
        }

        private Quantity byDay(Rational gallons) {
            return Quantity.of(gallons.dividedBy(Rational.of(span.days())), Unit.GALLON_PER_DAY);
        }
    }

    /**
     * Reads the log of one boiler.
     *
     * @param observations what was seen
     * @param outputOfInput the share of the plate's input that counts as output where no output is marked, as the limit
     *     {@link GrossOutputReckoning#SHARE} sets it
     */
    public static MakeUpHistory of(Observations observations, Quantity outputOfInput) {
        List<Reading> readings = new ArrayList<>();
        int unread = 0;
        for (String tag : observations.roster("meter-reading").tags(State.AS_LEFT)) {
            Optional<MeterReading> row = seen(observations, MeterReading.class, List.of(tag));
            row.ifPresent(read -> readings.add(WaterUsed.reading(read)));
            unread += row.isEmpty() ? 1 : 0;
        }
        // Without the dial's size a reading that fell is explained by nothing.
        Quantity dial = seen(observations, MeterDial.class, List.of())
                .map(WaterUsed::whole)
                .orElse(Quantity.of(0, Unit.GALLON));
        Optional<Quantity> output = output(observations, outputOfInput);
        List<Step> steps = new ArrayList<>();
        for (Span span : MeterLog.spans(MeterLog.inOrder(readings), () -> dial)) {
            Optional<Quantity> hours = seen(
                            observations, ReadingHours.class, List.of(span.to().tag()))
                    .map(ReadingHours::hours)
                    .filter(time -> time.signum() > 0 && span.isKnown());
            steps.add(new Step(span, output.flatMap(heat -> hours.map(time -> percent(heat, time)))));
        }
        return new MakeUpHistory(steps, unread);
    }

    private static Quantity percent(Quantity output, Quantity hours) {
        Quantity share = MakeUp.shareOfSteam(
                        ONE_GALLON, output, hours, WaterUsed.OPEN_AIR, Saturation.STANDARD_ATMOSPHERE)
                .quantity(MakeUp.SHARE);
        return ONE_GALLON.dividedBy(share.valueIn(Unit.PERCENT));
    }

    static Optional<Quantity> output(Observations observations, Quantity outputOfInput) {
        boolean isMarked = seen(observations, PlateOutputMark.class, List.of())
                .filter(plate -> plate.mark() == PlateMark.MARKED)
                .isPresent();
        Optional<Quantity> output = isMarked
                ? seen(observations, PlateOutput.class, List.of()).map(PlateOutput::output)
                : seen(observations, PlateOutputMark.class, List.of())
                        .flatMap(plate -> seen(observations, PlateInput.class, List.of()))
                        .map(plate -> GrossOutputReckoning.ofInput(plate.input(), outputOfInput));
        return output.filter(heat -> heat.signum() > 0);
    }

    /** An answer as left, or else as found. */
    static <T extends Record> Optional<T> seen(Observations observations, Class<T> type, List<Object> keys) {
        Optional<ItemType> item = observations.vocabulary().item(type);
        return item.flatMap(known -> observations
                        .answer(known, keys, State.AS_LEFT)
                        .or(() -> observations.answer(known, keys, State.AS_FOUND)))
                .flatMap(answer -> answer.fact())
                .map(type::cast);
    }
}
