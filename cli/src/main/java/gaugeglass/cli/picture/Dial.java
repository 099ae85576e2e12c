package gaugeglass.cli.picture;

import static gaugeglass.cli.picture.Picture.arc;
import static gaugeglass.cli.picture.Picture.label;
import static gaugeglass.cli.picture.Picture.line;
import static gaugeglass.cli.picture.Picture.onCircle;

import gaugeglass.cli.picture.Picture.Anchor;
import gaugeglass.cli.picture.Picture.Area;
import gaugeglass.cli.picture.Picture.Label;
import gaugeglass.cli.picture.Picture.Point;
import gaugeglass.cli.picture.Picture.Shape;
import gaugeglass.cli.picture.Picture.Stroke;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A pressure gauge's dial with what was seen of it, and the settings of the pressure controls laid on its scale.
 *
 * <p>Without the printed unit and the figure at its top end there is no scale to lay anything on: the dial is then drawn
 * empty, and says why.
 */
final class Dial {
    /** Dials commonly sweep three quarters of a circle. */
    private static final double SWEEP = 270;

    private static final double START = -135;

    /** The share of the sweep that a vacuum scale takes; it is drawn without figures, as none was asked for. */
    private static final double VACUUM = 60;

    private static final Point CENTRE = new Point(110, 92);
    private static final double RADIUS = 70;
    private static final int WIDTH = 220;
    private static final int HEIGHT = 208;

    private final Seen seen;
    private final List<Shape> shapes = new ArrayList<>();
    private final List<String> told = new ArrayList<>();

    private Dial(Seen seen) {
        this.seen = seen;
    }

    /**
     * What was seen of one gauge and of the controls.
     *
     * @param tag the gauge's
     * @param unit what is printed; empty where it was not read
     * @param top the figure at the upper end; empty where it was not read
     * @param hasVacuum whether a vacuum scale lies below zero
     * @param whyNoScale why unit or figure could not be read; may be empty
     * @param readings pressures that the gauge showed
     * @param ranges what each control is set to
     */
    record Seen(
            String tag,
            Optional<Unit> unit,
            Optional<Integer> top,
            boolean hasVacuum,
            String whyNoScale,
            List<Reading> readings,
            List<Range> ranges) {
        Seen {
            readings = List.copyOf(readings);
            ranges = List.copyOf(ranges);
        }
    }

    /** A pressure that the gauge showed, and when. */
    record Reading(String when, Quantity pressure) {}

    /**
     * What a control is set to.
     *
     * @param name the control, in words
     * @param cutIn where it lets the burner start; empty where that was not seen, or there is none
     * @param cutOut where it stops the burner; empty where that was not seen
     * @param isLimit whether it only stops it when another has not
     */
    record Range(String name, Optional<Quantity> cutIn, Optional<Quantity> cutOut, boolean isLimit) {}

    static Picture of(String id, Seen seen) {
        return new Dial(seen).draw(id);
    }

    private Picture draw(String id) {
        shapes.add(new Stroke(arc(CENTRE, RADIUS + 14, 0, 360), 1.5, false));
        if (seen.unit().isPresent() && seen.top().isPresent()) {
            scale(seen.unit().get(), seen.top().get());
        } else {
            shapes.add(label(CENTRE.x(), CENTRE.y() - 6, "No scale drawn:", 11, Anchor.MIDDLE));
            String lacking = seen.unit().isEmpty() ? "unit not read" : "top figure not read";
            shapes.add(label(CENTRE.x(), CENTRE.y() + 10, lacking, 11, Anchor.MIDDLE));
            told.add("No scale is drawn, because the "
                    + (seen.unit().isEmpty() ? "unit printed on the dial" : "figure at the top of the dial")
                    + " was not read" + (seen.whyNoScale().isEmpty() ? "" : " (" + seen.whyNoScale() + ")") + ".");
            for (Range range : seen.ranges()) {
                told.add(words(range));
            }
            for (Reading reading : seen.readings()) {
                told.add("The gauge showed " + reading.pressure() + " " + reading.when() + ".");
            }
        }
        String title = "Dial of pressure gauge " + seen.tag();
        return new Picture(id, title, String.join(" ", told), WIDTH, HEIGHT, shapes);
    }

    private void scale(Unit unit, int top) {
        shapes.add(new Stroke(arc(CENTRE, RADIUS, START, START + SWEEP), 1, false));
        int step = step(top);
        for (int figure = 0; figure <= top; figure += step) {
            figure(figure, top);
        }
        if (top % step != 0) {
            figure(top, top);
        }
        shapes.add(new Label(new Point(CENTRE.x(), CENTRE.y() + 34), unit.symbol(), 12, true, Anchor.MIDDLE));
        told.add("Scale: " + (seen.hasVacuum() ? "a vacuum scale, then " : "") + "0 to " + top + " " + unit.symbol()
                + ".");
        if (seen.hasVacuum()) {
            shapes.add(line2(RADIUS - 8, RADIUS, START, 1));
            Point at = onCircle(CENTRE, RADIUS - 22, START + VACUUM / 2);
            shapes.add(label(at.x(), at.y(), "vacuum", 9, Anchor.MIDDLE));
        }
        double below = CENTRE.y() + RADIUS + 26;
        for (Range range : seen.ranges()) {
            boolean isBeyond = range.cutOut()
                    .filter(out -> out.isAbove(Quantity.of(top, unit)))
                    .isPresent();
            if (!isBeyond || !range.isLimit()) {
                range(range, unit, top);
            }
            told.add(words(range) + (isBeyond ? " That lies beyond this scale." : ""));
        }
        for (Reading reading : seen.readings()) {
            pointer(reading.pressure(), unit, top);
            told.add("The pointer stands where the gauge showed " + reading.pressure() + " " + reading.when() + ".");
        }
        for (String line : legend()) {
            shapes.add(label(CENTRE.x(), below, line, 9.5, Anchor.MIDDLE));
            below += 12;
        }
    }

    private List<String> legend() {
        List<String> lines = new ArrayList<>();
        if (seen.ranges().stream().anyMatch(range -> !range.isLimit())) {
            lines.add("thick arc: the range the control works in");
        }
        if (seen.ranges().stream().anyMatch(Range::isLimit)) {
            lines.add("triangle: cut-out of the high limit");
        }
        return lines;
    }

    private void figure(int figure, int top) {
        double angle = angle(BigDecimal.valueOf(figure), top);
        shapes.add(line2(RADIUS - 8, RADIUS, angle, 1));
        Point at = onCircle(CENTRE, RADIUS - 18, angle);
        shapes.add(label(at.x(), at.y() + 3.5, String.valueOf(figure), 10, Anchor.MIDDLE));
    }

    private static Stroke line2(double inner, double outer, double angle, double width) {
        return new Stroke(List.of(onCircle(CENTRE, inner, angle), onCircle(CENTRE, outer, angle)), width, false);
    }

    private void range(Range range, Unit unit, int top) {
        if (range.cutOut().isEmpty()) {
            return;
        }
        double out = angle(in(range.cutOut().get(), unit), top);
        if (range.isLimit()) {
            shapes.add(new Area(
                    List.of(
                            onCircle(CENTRE, RADIUS + 1, out),
                            onCircle(CENTRE, RADIUS + 13, out - 5),
                            onCircle(CENTRE, RADIUS + 13, out + 5)),
                    true));
        } else if (range.cutIn().isPresent()) {
            double in = angle(in(range.cutIn().get(), unit), top);
            shapes.add(new Stroke(arc(CENTRE, RADIUS + 6, in, out), 7, false));
        } else {
            shapes.add(line2(RADIUS, RADIUS + 13, out, 4));
        }
    }

    private void pointer(Quantity pressure, Unit unit, int top) {
        double angle = angle(in(pressure, unit), top);
        shapes.add(new Stroke(List.of(CENTRE, onCircle(CENTRE, RADIUS - 30, angle)), 2.5, false));
        shapes.add(new Area(arc(CENTRE, 4, 0, 360), true));
    }

    private static String words(Range range) {
        String name = "The " + range.name();
        if (range.cutOut().isEmpty()) {
            return name + ": where it stops the burner was not read.";
        }
        return name
                + (range.cutIn().isPresent()
                        ? " lets the burner start at " + range.cutIn().get() + " and"
                        : "") + " stops it at " + range.cutOut().get() + ".";
    }

    private static BigDecimal in(Quantity pressure, Unit unit) {
        return pressure.in(unit, MathContext.DECIMAL64);
    }

    /** Where a figure stands; what lies off the scale stands just beyond its end. */
    private double angle(BigDecimal figure, int top) {
        double zero = seen.hasVacuum() ? START + VACUUM : START;
        double share = figure.doubleValue() / top;
        double angle = zero + (START + SWEEP - zero) * share;
        return Math.max(START - 6, Math.min(START + SWEEP + 6, angle));
    }

    /** Figures a round step apart, at most ten of them. */
    private static int step(int top) {
        int step = 1;
        int[] factors = {2, 5, 10};
        for (int decade = 1; ; decade *= 10) {
            for (int factor : factors) {
                if (top / step <= 10) {
                    return step;
                }
                step = factor * decade;
            }
        }
    }
}
