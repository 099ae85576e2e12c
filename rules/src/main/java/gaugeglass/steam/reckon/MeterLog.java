package gaugeglass.steam.reckon;

import gaugeglass.engine.quantity.Dimension;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;

/**
 * What a water meter's readings tell one after another: how much went through between each and the next. Exact; one pass in
 * the order of the days, whatever their number.
 *
 * <p>It follows {@link WaterMeter}: a reading that fell counts as rolled over only if that comes to half the dial or less.
 */
public final class MeterLog {
    private MeterLog() {}

    /** What went on between a reading and the one before it. */
    public enum Since {
        /** The boiler was in service for at least part of it. */
        FIRED,
        /** The boiler stood unfired all the time. */
        UNFIRED,
        /** Another meter was put in, or the dial was set: this is the first reading of a new count. */
        NEW_START
    }

    /**
     * A row of the log.
     *
     * @param tag what names it
     * @param on the day
     * @param dial what the meter showed, zero or more
     * @param since what went on since the row before
     */
    public record Reading(String tag, LocalDate on, Quantity dial, Since since) {
        public Reading {
            if (dial.dimension() != Dimension.VOLUME || dial.signum() < 0) {
                throw new IllegalArgumentException("meter reading of " + dial + "; expected a volume of zero or more");
            }
        }
    }

    /** How the meter went from one reading to the next. */
    public enum Course {
        RAN_ON,
        /** It fell, and passing its highest figure explains that. */
        ROLLED_OVER,
        /** It fell, and nothing explains that. */
        FELL,
        /** It began anew, so nothing is known of what went through. */
        BEGAN_ANEW
    }

    /**
     * The time between two readings that follow one another.
     *
     * @param from the earlier reading
     * @param to the later reading; on the same day or later
     * @param course how the meter went
     * @param used what went through; nothing where that is not known
     */
    public record Span(Reading from, Reading to, Course course, Quantity used) {
        /** Whether it is known how much went through. */
        public boolean isKnown() {
            return course == Course.RAN_ON || course == Course.ROLLED_OVER;
        }

        /** Days from reading to reading. */
        public long days() {
            return ChronoUnit.DAYS.between(from.on(), to.on());
        }
    }

    /**
     * The readings in the order of their days; those of one day stay as they were given.
     *
     * @param readings in any order
     */
    public static List<Reading> inOrder(List<Reading> readings) {
        List<Reading> sorted = new ArrayList<>(readings);
        sorted.sort(Comparator.comparing(Reading::on));
        return sorted;
    }

    /**
     * The time between each reading and the next.
     *
     * @param readings in order
     * @param dial what the dial counts before it begins again; asked for only if a reading fell
     */
    public static List<Span> spans(List<Reading> readings, Supplier<Quantity> dial) {
        List<Span> spans = new ArrayList<>();
        for (int i = 1; i < readings.size(); i++) {
            spans.add(span(readings.get(i - 1), readings.get(i), dial));
        }
        return spans;
    }

    private static Span span(Reading from, Reading to, Supplier<Quantity> dial) {
        Quantity nothing = Quantity.of(0, Unit.GALLON);
        if (to.since() == Since.NEW_START) {
            return new Span(from, to, Course.BEGAN_ANEW, nothing);
        }
        if (to.dial().isAtLeast(from.dial())) {
            return new Span(from, to, Course.RAN_ON, to.dial().minus(from.dial()));
        }
        Quantity whole = dial.get();
        Quantity rolled = to.dial().plus(whole).minus(from.dial());
        boolean explained = from.dial().isBelow(whole) && rolled.isAtMost(whole.dividedBy(2));
        return explained ? new Span(from, to, Course.ROLLED_OVER, rolled) : new Span(from, to, Course.FELL, nothing);
    }

    /**
     * The spans that reach back so many days from a day: they begin at the last reading that is so old, or, where none is,
     * at the first.
     *
     * @param spans in order
     * @param day counted from
     * @param days how far back, zero or more
     */
    public static List<Span> last(List<Span> spans, LocalDate day, long days) {
        LocalDate back = day.minusDays(days);
        int first = 0;
        for (int i = 0; i < spans.size(); i++) {
            if (!spans.get(i).from().on().isAfter(back)) {
                first = i;
            }
        }
        return spans.subList(first, spans.size());
    }

    /** What went through, where that is known. */
    public static Quantity used(List<Span> spans) {
        Quantity sum = Quantity.of(0, Unit.GALLON);
        for (Span span : spans) {
            if (span.isKnown()) {
                sum = sum.plus(span.used());
            }
        }
        return sum;
    }

    /** The days over which it is known what went through. */
    public static long days(List<Span> spans) {
        long sum = 0;
        for (Span span : spans) {
            sum += span.isKnown() ? span.days() : 0;
        }
        return sum;
    }
}
