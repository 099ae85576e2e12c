package gaugeglass.cli.picture;

import static gaugeglass.cli.picture.Picture.box;
import static gaugeglass.cli.picture.Picture.label;
import static gaugeglass.cli.picture.Picture.line;

import gaugeglass.cli.picture.Picture.Anchor;
import gaugeglass.cli.picture.Picture.Label;
import gaugeglass.cli.picture.Picture.Point;
import gaugeglass.cli.picture.Picture.Shape;
import gaugeglass.cli.picture.Picture.Stroke;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The gauge glass with the levels that were measured at it. Every height is counted from the lowest part in which water
 * can be seen; how high the glass reaches was not asked for, so its top is drawn open.
 */
final class Glass {
    private static final int WIDTH = 330;
    private static final int HEIGHT = 168;
    private static final double TOP = 26;
    private static final double BOTTOM = 156;
    private static final double LEFT = 150;
    private static final double RIGHT = 180;

    /** Lines of words closer together would touch. */
    private static final double LEAST_GAP = 13;

    /** The water's words take two lines. */
    private static final double LEAST_GAP_OF_TWO = 25;

    private Glass() {}

    /**
     * A level.
     *
     * @param name what stands there
     * @param height above the lowest visible part of the glass; negative below it
     */
    record Level(String name, Quantity height) {}

    /**
     * What was measured.
     *
     * @param proven where the water stood once the glass was blown down; empty where that was not seen
     * @param whyNotProven why it was not; may be empty
     * @param apparent where the line seemed to stand before; empty where that was not seen
     * @param marks everything else with a height, such as cutoffs
     * @param unread what was looked for and could not be read, in words
     */
    record Seen(
            Optional<Quantity> proven,
            String whyNotProven,
            Optional<Quantity> apparent,
            List<Level> marks,
            List<String> unread) {
        Seen {
            marks = List.copyOf(marks);
            unread = List.copyOf(unread);
        }

        boolean hasHeights() {
            return proven.isPresent() || apparent.isPresent() || !marks.isEmpty();
        }
    }

    static Picture of(String id, Seen seen) {
        List<Shape> shapes = new ArrayList<>();
        List<String> told = new ArrayList<>();
        List<Level> water = new ArrayList<>();
        seen.apparent().ifPresent(height -> water.add(new Level("seemed to stand", height)));
        seen.proven().ifPresent(height -> water.add(new Level("proven", height)));
        double least = 0;
        double most = 1;
        List<Level> all = new ArrayList<>(water);
        all.addAll(seen.marks());
        for (Level level : all) {
            least = Math.min(least, inches(level.height()));
            most = Math.max(most, inches(level.height()));
        }
        double scale = (BOTTOM - TOP - 24) / (most - least);
        double zero = BOTTOM - 12 + least * scale;
        double end = TOP + 2;

        seen.proven().ifPresent(height -> {
            double y = zero - inches(height) * scale;
            // Thin lines stand for water: grey would not survive a copier.
            for (double at = y; at < zero; at += 4) {
                shapes.add(line(LEFT + 1, at, RIGHT - 1, at, 0.6, false));
            }
        });
        shapes.add(line(LEFT, end, LEFT, zero, 1.5, false));
        shapes.add(line(RIGHT, end, RIGHT, zero, 1.5, false));
        shapes.add(box(LEFT - 6, zero, RIGHT - LEFT + 12, 10, true));
        shapes.add(new Label(
                new Point(WIDTH / 2.0, 12),
                "heights above the lowest visible part of the glass",
                9.5,
                false,
                Anchor.MIDDLE));
        told.add("Heights are above the lowest visible part of the glass.");

        side(shapes, told, water, zero, scale, true);
        List<Level> marks = new ArrayList<>(seen.marks());
        marks.sort(Comparator.comparing(Level::height).reversed().thenComparing(Level::name));
        side(shapes, told, marks, zero, scale, false);
        if (seen.proven().isEmpty()) {
            told.add("Where the water really stands was not proven"
                    + (seen.whyNotProven().isEmpty() ? "" : " (" + seen.whyNotProven() + ")") + ".");
        }
        told.addAll(seen.unread());
        return new Picture(id, "Gauge glass", String.join(" ", told), WIDTH, HEIGHT, shapes);
    }

    private static void side(
            List<Shape> shapes, List<String> told, List<Level> levels, double zero, double scale, boolean isWater) {
        List<Level> fromTop = new ArrayList<>(levels);
        fromTop.sort(Comparator.comparing(Level::height).reversed());
        double[] at = Picture.apart(
                fromTop.stream()
                        .mapToDouble(level -> zero - inches(level.height()) * scale)
                        .toArray(),
                isWater ? LEAST_GAP_OF_TWO : LEAST_GAP,
                BOTTOM);
        for (int i = 0; i < at.length; i++) {
            Level level = fromTop.get(i);
            double y = zero - inches(level.height()) * scale;
            boolean dashed = isWater && level.name().equals("seemed to stand");
            String words = (isWater ? "water " : "") + level.name() + " " + level.height();
            if (isWater) {
                shapes.add(line(LEFT - 12, y, RIGHT, y, 1.5, dashed));
                shapes.add(new Stroke(List.of(new Point(LEFT - 12, y), new Point(LEFT - 20, at[i])), 0.6, false));
                shapes.add(new Label(new Point(LEFT - 22, at[i] + 3.5), level.name(), 10, !dashed, Anchor.END));
                shapes.add(new Label(
                        new Point(LEFT - 22, at[i] + 14), level.height().toString(), 9.5, false, Anchor.END));
            } else {
                shapes.add(line(RIGHT, y, RIGHT + 12, y, 2.5, false));
                shapes.add(new Stroke(List.of(new Point(RIGHT + 12, y), new Point(RIGHT + 20, at[i])), 0.6, false));
                shapes.add(label(RIGHT + 22, at[i] + 3.5, level.name() + " " + level.height(), 10, Anchor.START));
            }
            told.add(Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".");
        }
    }

    private static double inches(Quantity height) {
        return height.in(Unit.INCH, MathContext.DECIMAL64).doubleValue();
    }
}
