package gaugeglass.steam.reckon;

import static gaugeglass.engine.quantity.Unit.FOOT;
import static gaugeglass.engine.quantity.Unit.INCH;
import static gaugeglass.engine.quantity.Unit.SQUARE_FOOT;

import gaugeglass.engine.quantity.Dimension;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.text.Nearest;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Something that steam heats a room with: sections of a cast-iron radiator, wall sections, bare pipe, or an area known from
 * elsewhere.
 *
 * <p>Square feet EDR a section come from {@code radiators.csv} and {@code walls.csv}; bare pipe is pi x outside / 12 a foot. What
 * is not in the tables is refused with what is: a height in between is no figure.
 */
public sealed interface Radiator {
    /** As the trade writes it: {@code 6 x 3-column 26 in}. */
    String words();

    /** How many of what has the area of one. */
    Rational count();

    /** Area of one section or of one foot of pipe, ft2 EDR; exact but for pi. */
    Quantity each();

    /**
     * Sections of a column or tube radiator.
     *
     * @param count 1 to 100 sections
     * @param pattern a pattern of the table: {@code 3-column}, {@code 5-tube}
     * @param height a height that the table has for it
     */
    record Sections(Rational count, String pattern, Quantity height) implements Radiator {
        private record Listed(String pattern, Quantity height, Quantity edr) {}

        private static final List<Listed> TABLE = Table.read("radiators.csv").rows().stream()
                .map(row ->
                        new Listed(row.text("pattern"), row.quantity("height", INCH), row.quantity("edr", SQUARE_FOOT)))
                .toList();

        public Sections {
            Ranges.within("sections", count, 1, 100);
            List<String> patterns =
                    TABLE.stream().map(Listed::pattern).distinct().toList();
            if (!patterns.contains(pattern)) {
                throw new IllegalArgumentException("no radiator pattern '" + pattern + "'; expected one of "
                        + String.join(", ", patterns) + near(pattern, patterns));
            }
            if (find(pattern, height).isEmpty()) {
                List<String> heights = TABLE.stream()
                        .filter(row -> row.pattern().equals(pattern))
                        .map(row -> row.height().toString().replace(" in", ""))
                        .toList();
                throw new IllegalArgumentException("no figure for a " + pattern + " radiator " + height
                        + " high; known heights: " + String.join(", ", heights)
                        + " in. Measure again from the floor, or give its square feet EDR");
            }
        }

        @Override
        public Quantity each() {
            return find(pattern, height).orElseThrow().edr();
        }

        /**
         * Whether the table has a figure for it.
         *
         * @throws IllegalArgumentException if the height is no length
         */
        public static boolean isTabulated(String pattern, Quantity height) {
            return find(pattern, height).isPresent();
        }

        @Override
        public String words() {
            return count + " x " + pattern + " " + height;
        }

        private static Optional<Listed> find(String pattern, Quantity height) {
            if (height.dimension() != Dimension.LENGTH) {
                throw new IllegalArgumentException("radiator height: expected a length, but " + height + " is of "
                        + height.dimension().words());
            }
            return TABLE.stream()
                    .filter(row -> row.pattern().equals(pattern) && row.height().equals(height))
                    .findFirst();
        }
    }

    /**
     * Wall sections.
     *
     * @param count 1 to 100 sections
     * @param mark a mark of the table: {@code 7A}
     */
    record Wall(Rational count, String mark) implements Radiator {
        private static final Table TABLE = Table.read("walls.csv");

        public Wall {
            Ranges.within("sections", count, 1, 100);
            List<String> marks = TABLE.column("mark");
            if (!marks.contains(mark)) {
                throw new IllegalArgumentException(
                        "no wall section '" + mark + "'; expected one of " + String.join(", ", marks));
            }
        }

        @Override
        public Quantity each() {
            return TABLE.row("mark", mark).quantity("edr", SQUARE_FOOT);
        }

        @Override
        public String words() {
            return count + " x wall " + mark;
        }
    }

    /**
     * Bare pipe that heats the room it runs through.
     *
     * @param length above zero to 10,000 ft
     * @param size nominal size
     */
    record BarePipe(Quantity length, PipeSize size) implements Radiator {
        public BarePipe {
            Ranges.above("pipe length", length, Quantity.of(0, FOOT), Quantity.of(10_000, FOOT));
        }

        @Override
        public Rational count() {
            return length.valueIn(FOOT);
        }

        @Override
        public Quantity each() {
            Rational round = Constant.of("pi")
                    .value()
                    .times(size.outside().valueIn(INCH))
                    .dividedBy(Constant.of("inches-a-foot").value());
            return Quantity.of(round, SQUARE_FOOT);
        }

        @Override
        public String words() {
            return length + " x " + size.name() + " in pipe";
        }
    }

    /**
     * An area known from elsewhere.
     *
     * @param area ft2 EDR, above zero to 100,000
     */
    record Known(Quantity area) implements Radiator {
        public Known {
            Ranges.above("radiation", area, Quantity.of(0, SQUARE_FOOT), Quantity.of(100_000, SQUARE_FOOT));
        }

        @Override
        public Rational count() {
            return Rational.ONE;
        }

        @Override
        public Quantity each() {
            return area;
        }

        @Override
        public String words() {
            return area.toString();
        }
    }

    /**
     * Reads a survey: entries parted by semicolons, each {@code COUNT x PATTERN HEIGHT} ({@code 6 x 3-column 26 in}), {@code COUNT x
     * wall MARK}, {@code LENGTH x SIZE pipe} ({@code 20 ft x 1 1/4 in pipe}) or an area ({@code 45 ft2}).
     *
     * @throws IllegalArgumentException for the first entry that cannot be read or is not in the tables
     */
    static List<Radiator> parse(String survey) {
        List<Radiator> all = new ArrayList<>();
        for (String entry : survey.split(";")) {
            if (!entry.isBlank()) {
                all.add(one(entry.strip()));
            }
        }
        if (all.isEmpty()) {
            throw new IllegalArgumentException("no radiators; expected entries like 6 x 3-column 26 in, parted by ;");
        }
        return List.copyOf(all);
    }

    private static Radiator one(String entry) {
        int times = entry.indexOf(" x ");
        if (times < 0) {
            return new Known(Quantity.parse(entry, Dimension.AREA));
        }
        String before = entry.substring(0, times).strip();
        String after = entry.substring(times + 3).strip();
        if (after.endsWith(" pipe")) {
            String size = after.substring(0, after.length() - " pipe".length());
            return new BarePipe(
                    Quantity.parse(before, Dimension.LENGTH), PipeSize.of(Quantity.parse(size, Dimension.LENGTH)));
        }
        Rational count =
                Quantity.of(before, gaugeglass.engine.quantity.Unit.TIMES).value();
        int space = after.indexOf(' ');
        if (space < 0) {
            throw new IllegalArgumentException(
                    "'" + entry + "': no height; expected an entry like 6 x 3-column 26 in or 4 x wall 7A");
        }
        String pattern = after.substring(0, space);
        String rest = after.substring(space + 1).strip();
        return pattern.equals("wall")
                ? new Wall(count, rest)
                : new Sections(count, pattern, Quantity.parse(rest, Dimension.LENGTH));
    }

    private static String near(String word, List<String> known) {
        return Nearest.to(word, known).map(n -> "; did you mean " + n + "?").orElse("");
    }
}
