package gaugeglass.cli.picture;

import static gaugeglass.cli.picture.Picture.box;
import static gaugeglass.cli.picture.Picture.label;
import static gaugeglass.cli.picture.Picture.line;

import gaugeglass.cli.picture.Picture.Anchor;
import gaugeglass.cli.picture.Picture.Point;
import gaugeglass.cli.picture.Picture.Shape;
import gaugeglass.cli.picture.Picture.Stroke;
import gaugeglass.engine.book.Book;
import gaugeglass.engine.book.Limit;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.steam.reckon.MeterLog.Course;
import gaugeglass.steam.reckon.MeterLog.Since;
import gaugeglass.steam.reckon.MeterLog.Span;
import gaugeglass.steam.reckoned.GrossOutputReckoning;
import gaugeglass.steam.reckoned.MakeUpHistory;
import gaugeglass.steam.reckoned.MakeUpHistory.Step;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Make-up over time: a column from each reading of the meter to the next, as high as the gallons a day, with the shares of
 * the steam made at which something is done. Where the meter was replaced or set, or fell, the picture breaks.
 */
public final class MakeUpChart {
    /** The limits that are drawn, least first, with what is done beyond each. */
    private static final List<Line> LINES = List.of(
            new Line("water-use.watch-share", "watch"),
            new Line("water-use.search-share", "look for leaks"),
            new Line("water-use.act-share", "stop it at once"),
            new Line("water-use.treatment-share", "treat the water"));

    private static final int WIDTH = 620;
    private static final int HEIGHT = 236;
    private static final double LEFT = 44;
    private static final double RIGHT = 500;
    private static final double TOP = 34;
    private static final double BOTTOM = 192;
    private static final double DATE_WIDTH = 62;
    private static final double LINE_GAP = 12;

    /** So many steps are told one by one; of a longer log the earlier ones are told together. */
    private static final int MOST_TOLD = 8;

    private static final int MOST_FIGURES = 6;

    /** Figures are written to a hundredth of a gallon. */
    private static final double LEAST_TOP = 0.06;

    private record Line(String id, String does) {}

    private final MakeUpHistory history;
    private final Book book;
    private final List<Shape> shapes = new ArrayList<>();
    private final List<String> told = new ArrayList<>();
    private final LocalDate first;
    private final double days;
    private final double top;

    private MakeUpChart(MakeUpHistory history, Book book) {
        this.history = history;
        this.book = book;
        List<Step> steps = history.steps();
        this.first = steps.get(0).span().from().on();
        this.days = ChronoUnit.DAYS.between(
                first, steps.get(steps.size() - 1).span().to().on());
        this.top = top();
    }

    /**
     * Draws the log of a boiler's make-up meter.
     *
     * @param id of the picture
     * @param observations what was seen
     * @param book whose limits are drawn
     * @return nothing where no two readings lie a day apart
     */
    public static Optional<Picture> of(String id, Observations observations, Book book) {
        MakeUpHistory history = MakeUpHistory.of(
                observations, book.limits().get(GrossOutputReckoning.SHARE).quantity());
        boolean hasColumns =
                history.steps().stream().anyMatch(step -> step.span().days() > 0);
        return hasColumns ? Optional.of(new MakeUpChart(history, book).draw(id)) : Optional.empty();
    }

    private Picture draw(String id) {
        frame();
        for (Step step : history.steps()) {
            column(step);
        }
        lines();
        breaks();
        dates();
        legend();
        tellSteps();
        tellLines();
        if (history.unread() > 0) {
            told.add(
                    history.unread() == 1
                            ? "One reading is not known and not drawn."
                            : history.unread() + " readings are not known and not drawn.");
        }
        return new Picture(id, "Make-up over time", String.join(" ", told), WIDTH, HEIGHT, shapes);
    }

    // ---- where things stand

    private Limit limit(Line line) {
        return book.limits().get(line.id());
    }

    /** The highest a line comes to; 0 where no step has it. */
    private double highest(Line line) {
        double most = 0;
        for (Step step : history.steps()) {
            most = Math.max(
                    most,
                    step.perDayAt(limit(line).quantity())
                            .map(MakeUpChart::gallons)
                            .orElse(0.0));
        }
        return most;
    }

    /** The scale reaches over the highest column, and to the first line above it. */
    private double top() {
        double most = 0;
        for (Step step : history.steps()) {
            most = Math.max(most, step.perDay().map(MakeUpChart::gallons).orElse(0.0));
        }
        for (Line line : LINES) {
            double high = highest(line);
            if (high > most) {
                return Math.max(high, LEAST_TOP);
            }
        }
        return most == 0 ? 1 : Math.max(most, LEAST_TOP);
    }

    private boolean isDrawn(Line line) {
        double high = highest(line);
        return high > 0 && high <= top;
    }

    private double x(LocalDate day) {
        return LEFT + (RIGHT - LEFT) * ChronoUnit.DAYS.between(first, day) / days;
    }

    private double y(double gallons) {
        return BOTTOM - (BOTTOM - TOP) * gallons / top;
    }

    private static double gallons(Quantity perDay) {
        return perDay.in(Unit.GALLON_PER_DAY).doubleValue();
    }

    // ---- drawing

    private void frame() {
        shapes.add(line(LEFT, TOP - 6, LEFT, BOTTOM, 1, false));
        shapes.add(line(LEFT, BOTTOM, RIGHT, BOTTOM, 1, false));
        shapes.add(label(4, TOP - 16, "gallons a day", 9.5, Anchor.START));
        double step = 1;
        // Round figures apart, whatever the scale.
        while (top / step > MOST_FIGURES) {
            step *= 10;
        }
        while (top / step <= MOST_FIGURES / 10.0) {
            step /= 10;
        }
        for (double finer : new double[] {step / 5, step / 2}) {
            if (top / finer <= MOST_FIGURES) {
                step = finer;
                break;
            }
        }
        for (int i = 0; i * step <= top * 1.0001; i++) {
            double at = y(i * step);
            shapes.add(line(LEFT - 4, at, LEFT, at, 0.75, false));
            shapes.add(label(LEFT - 6, at + 3.5, Picture.number(i * step), 9.5, Anchor.END));
        }
    }

    private void column(Step step) {
        if (step.perDay().isEmpty()) {
            return;
        }
        double left = x(step.span().from().on());
        double right = x(step.span().to().on());
        double height = y(gallons(step.perDay().get()));
        shapes.add(box(
                left, height, right - left, BOTTOM - height, step.span().to().since() == Since.UNFIRED));
    }

    private void lines() {
        List<Line> drawn = LINES.stream().filter(this::isDrawn).toList();
        double[] wanted = new double[drawn.size()];
        for (int i = 0; i < drawn.size(); i++) {
            // From the top down, as words are laid.
            Line line = drawn.get(drawn.size() - 1 - i);
            double last = 0;
            double end = RIGHT;
            for (Step step : history.steps()) {
                Optional<Quantity> perDay = step.perDayAt(limit(line).quantity());
                if (perDay.isPresent()) {
                    last = y(gallons(perDay.get()));
                    double left = x(step.span().from().on());
                    end = x(step.span().to().on());
                    shapes.add(line(left, last, end, last, 1.25, true));
                }
            }
            // A thin line leads to the words over what follows.
            shapes.add(line(end, last, RIGHT + 2, last, 0.3, false));
            wanted[i] = last;
        }
        double[] at = Picture.apart(wanted, LINE_GAP, BOTTOM - 2);
        for (int i = 0; i < drawn.size(); i++) {
            Line line = drawn.get(drawn.size() - 1 - i);
            shapes.add(new Stroke(List.of(new Point(RIGHT + 2, wanted[i]), new Point(RIGHT + 9, at[i])), 0.6, false));
            shapes.add(label(RIGHT + 11, at[i] + 3.5, limit(line).written() + ": " + line.does(), 9.5, Anchor.START));
        }
    }

    /** Where nothing is known of what went through, or its count began anew. */
    private void breaks() {
        double free = LEFT;
        for (Step step : history.steps()) {
            Optional<String> why = broken(step.span());
            if (why.isEmpty()) {
                continue;
            }
            double x = (x(step.span().from().on()) + x(step.span().to().on())) / 2;
            List<Point> zigzag = new ArrayList<>();
            int side = 1;
            for (double y = TOP - 4; y <= BOTTOM + 4; y += 6) {
                zigzag.add(new Point(x + 2.5 * side, y));
                side = -side;
            }
            shapes.add(new Stroke(zigzag, 1, false));
            if (x - 30 >= free) {
                shapes.add(label(Math.min(x, RIGHT - 24), TOP - 7, why.get(), 9.5, Anchor.MIDDLE));
                free = x + 30;
            }
        }
    }

    private static Optional<String> broken(Span span) {
        return switch (span.course()) {
            case BEGAN_ANEW -> Optional.of("new count");
            case FELL -> Optional.of("fell");
            case RAN_ON, ROLLED_OVER -> Optional.empty();
        };
    }

    private void dates() {
        List<LocalDate> readings = new ArrayList<>(List.of(first));
        history.steps().forEach(step -> readings.add(step.span().to().on()));
        LocalDate last = readings.get(readings.size() - 1);
        double free = 0;
        for (LocalDate day : readings) {
            double x = x(day);
            shapes.add(line(x, BOTTOM, x, BOTTOM + 4, 0.75, false));
            boolean isEnd = day.equals(last);
            boolean hasRoom = x - DATE_WIDTH / 2 >= free && (isEnd || x <= RIGHT - DATE_WIDTH);
            if (hasRoom) {
                shapes.add(label(x, BOTTOM + 15, day.toString(), 9.5, Anchor.MIDDLE));
                free = x + DATE_WIDTH / 2;
            }
        }
    }

    private void legend() {
        double y = HEIGHT - 8;
        shapes.add(box(LEFT, y - 8, 12, 9, false));
        shapes.add(label(LEFT + 16, y, "fired", 9.5, Anchor.START));
        shapes.add(box(LEFT + 56, y - 8, 12, 9, true));
        shapes.add(label(LEFT + 72, y, "unfired", 9.5, Anchor.START));
        if (LINES.stream().anyMatch(this::isDrawn)) {
            shapes.add(line(LEFT + 124, y - 3.5, LEFT + 148, y - 3.5, 1.25, true));
            shapes.add(label(LEFT + 152, y, "share of the steam made", 9.5, Anchor.START));
        }
        if (history.steps().stream().anyMatch(step -> broken(step.span()).isPresent())) {
            shapes.add(label(LEFT + 280, y, "jagged: the meter began anew, or fell", 9.5, Anchor.START));
        }
    }

    // ---- the same in words

    private void tellSteps() {
        List<Step> steps = history.steps();
        int earlier = Math.max(0, steps.size() - MOST_TOLD);
        told.add("Gallons a day from each reading of the meter to the next.");
        if (earlier > 0) {
            double most = 0;
            for (Step step : steps.subList(0, earlier)) {
                most = Math.max(most, step.perDay().map(MakeUpChart::gallons).orElse(0.0));
            }
            told.add("From " + first + " to "
                    + steps.get(earlier - 1).span().to().on() + ", over " + earlier + " readings: at most "
                    + rounded(most) + ".");
        }
        for (Step step : steps.subList(earlier, steps.size())) {
            told.add(told(step));
        }
    }

    private static String told(Step step) {
        Span span = step.span();
        String when = span.days() == 0
                ? "On " + span.to().on()
                : "From " + span.from().on() + " to " + span.to().on();
        if (span.course() == Course.BEGAN_ANEW) {
            return when + ": the meter was replaced or set, and nothing is known of what went through.";
        }
        if (span.course() == Course.FELL) {
            return when + ": the reading fell, and nothing is known of what went through.";
        }
        String how = (span.to().since() == Since.UNFIRED ? ", unfired" : "")
                + (span.course() == Course.ROLLED_OVER ? ", the dial having begun again" : "");
        return when + ": "
                + step.perDay()
                        .map(perDay -> rounded(gallons(perDay)))
                        .orElse(span.used().roundedToDigits(3) + " within one day")
                + how + ".";
    }

    private void tellLines() {
        List<Step> known = history.steps().stream()
                .filter(step -> step.percent().isPresent() && step.span().days() > 0)
                .toList();
        if (known.isEmpty()) {
            told.add("No limit is drawn, as burner hours or the boiler's output are not known.");
            return;
        }
        Step last = known.get(known.size() - 1);
        List<String> shares = new ArrayList<>();
        for (Line line : LINES) {
            Limit limit = limit(line);
            shares.add(limit.written() + " (" + line.does() + ") "
                    + rounded(gallons(last.perDayAt(limit.quantity()).orElseThrow()))
                    + (isDrawn(line) ? "" : ", above the picture"));
        }
        told.add("Shares of the steam made, in gallons a day from "
                + last.span().from().on() + " to " + last.span().to().on() + ": " + String.join("; ", shares) + ".");
    }

    private static String rounded(double gallons) {
        return Quantity.of(Rational.of(java.math.BigDecimal.valueOf(gallons)), Unit.GALLON_PER_DAY)
                .in(Unit.GALLON_PER_DAY, 2)
                .stripTrailingZeros()
                .toPlainString();
    }
}
