package gaugeglass.cli.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * A black and white drawing of a few shapes, with its meaning in words for whoever cannot see it.
 *
 * <p>Measures are in points of the drawing, from its upper left corner.
 *
 * @param id its name within one document
 * @param title what it shows, in a few words
 * @param description everything that can be read off it, in sentences
 * @param width greater than 0
 * @param height greater than 0
 * @param shapes drawn in this order, later ones over earlier ones
 */
public record Picture(String id, String title, String description, int width, int height, List<Shape> shapes) {
    private static final int WIDEST_OF_TWO = 340;

    public Picture {
        shapes = List.copyOf(shapes);
    }

    /** One stroke, area or word of a drawing. */
    public sealed interface Shape permits Stroke, Area, Label {}

    /** A point of a drawing. */
    public record Point(double x, double y) {}

    /**
     * A line through points.
     *
     * @param points two or more
     * @param width of the line; greater than 0
     * @param dashed whether it is broken
     */
    public record Stroke(List<Point> points, double width, boolean dashed) implements Shape {
        public Stroke {
            points = List.copyOf(points);
        }
    }

    /**
     * A closed area with a thin edge.
     *
     * @param points three or more
     * @param black whether it is filled black; white otherwise
     */
    public record Area(List<Point> points, boolean black) implements Shape {
        public Area {
            points = List.copyOf(points);
        }
    }

    /**
     * Words.
     *
     * @param at the left end, middle or right end of their base line
     * @param words short, and on one line
     * @param size of the letters; greater than 0
     * @param bold whether the letters are heavy
     * @param from which end of the words stands at the point
     */
    public record Label(Point at, String words, double size, boolean bold, Anchor from) implements Shape {}

    /** Which end of some words stands at their point. */
    public enum Anchor {
        START,
        MIDDLE,
        END;

        /** The word for it in SVG. */
        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /** A straight line. */
    static Stroke line(double x1, double y1, double x2, double y2, double width, boolean dashed) {
        return new Stroke(List.of(new Point(x1, y1), new Point(x2, y2)), width, dashed);
    }

    static Area box(double x, double y, double width, double height, boolean black) {
        return new Area(
                List.of(
                        new Point(x, y),
                        new Point(x + width, y),
                        new Point(x + width, y + height),
                        new Point(x, y + height)),
                black);
    }

    /**
     * Points along an arc.
     *
     * @param from the angle it begins at, in degrees clockwise from straight up
     * @param to the angle it ends at
     */
    static List<Point> arc(Point centre, double radius, double from, double to) {
        int steps = (int) Math.max(2, Math.ceil(Math.abs(to - from) / 3));
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            points.add(onCircle(centre, radius, from + (to - from) * i / steps));
        }
        return points;
    }

    /** The point of a circle at an angle in degrees clockwise from straight up. */
    static Point onCircle(Point centre, double radius, double degrees) {
        double angle = Math.toRadians(degrees);
        // StrictMath: the last digit of a sine may differ between machines, and a report's bytes may not.
        return new Point(centre.x() + radius * StrictMath.sin(angle), centre.y() - radius * StrictMath.cos(angle));
    }

    static Label label(double x, double y, String words, double size, Anchor from) {
        return new Label(new Point(x, y), words, size, false, from);
    }

    /**
     * Places for words, in the order given, none nearer to the next than can be read.
     *
     * @param wanted from the top down
     * @param gap between one and the next
     * @param lowest no place lies below it, if there is room above
     */
    static double[] apart(double[] wanted, double gap, double lowest) {
        double[] at = wanted.clone();
        for (int i = 1; i < at.length; i++) {
            at[i] = Math.max(at[i], at[i - 1] + gap);
        }
        if (at.length > 0 && at[at.length - 1] > lowest) {
            at[at.length - 1] = lowest;
            for (int i = at.length - 2; i >= 0; i--) {
                at[i] = Math.min(at[i], at[i + 1] - gap);
            }
        }
        return at;
    }

    /** Whether it needs the width of the page for itself. */
    public boolean isWide() {
        return width > WIDEST_OF_TWO;
    }

    /** Points as SVG writes them, to a hundredth. */
    public static String points(List<Point> points) {
        StringBuilder text = new StringBuilder();
        for (Point point : points) {
            if (text.length() > 0) {
                text.append(' ');
            }
            text.append(number(point.x())).append(',').append(number(point.y()));
        }
        return text.toString();
    }

    /** A measure as SVG writes it, to a hundredth. */
    public static String number(double value) {
        long hundredths = Math.round(value * 100);
        String sign = hundredths < 0 ? "-" : "";
        long whole = Math.abs(hundredths) / 100;
        long rest = Math.abs(hundredths) % 100;
        return sign
                + whole
                + (rest == 0 ? "" : rest < 10 ? ".0" + rest : rest % 10 == 0 ? "." + rest / 10 : "." + rest);
    }
}
