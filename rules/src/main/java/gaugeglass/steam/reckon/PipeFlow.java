package gaugeglass.steam.reckon;

import static gaugeglass.engine.quantity.Unit.CUBIC_FOOT_PER_POUND;
import static gaugeglass.engine.quantity.Unit.FOOT;
import static gaugeglass.engine.quantity.Unit.FOOT_PER_SECOND;
import static gaugeglass.engine.quantity.Unit.INCH;
import static gaugeglass.engine.quantity.Unit.PERCENT;
import static gaugeglass.engine.quantity.Unit.POUND_PER_HOUR;
import static gaugeglass.engine.quantity.Unit.SQUARE_FOOT;

import gaugeglass.engine.book.Basis;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.text.Words;
import java.util.List;

/** How fast steam goes in a pipe, and how much radiation a pipe carries. */
public final class PipeFlow {
    /** The line that gives the speed. */
    public static final String SPEED = "speed of the steam";

    /** The line that gives what the pipe carries. */
    public static final String CAPACITY = "carries at most";

    /** The line that gives the load as a share of that. */
    public static final String SHARE = "load as a share of that";

    private static final Quantity NO_STEAM = Quantity.of(0, POUND_PER_HOUR);
    private static final Quantity MOST_STEAM = Quantity.of(100_000, POUND_PER_HOUR);
    private static final Quantity NO_LOAD = Quantity.of(0, SQUARE_FOOT);
    private static final Quantity MOST_LOAD = Quantity.of(100_000, SQUARE_FOOT);

    private PipeFlow() {}

    /** What a pipe does; the main's capacity goes with its length, that of the others does not. */
    public enum Service {
        MAIN,
        TWO_PIPE_RISER,
        TWO_PIPE_RUNOUT,
        ONE_PIPE_RISER,
        ONE_PIPE_RUNOUT,
        ONE_PIPE_VALVE
    }

    /**
     * The speed of dry steam: lb/h x vg / (3600 x pi / 4 x inside^2 / 144), in ft/s. Exact but for pi and the steam table.
     *
     * @param steam what goes through, above zero to 100,000 lb/h
     * @param size nominal size, schedule 40
     * @param gauge pressure of the steam; with the barometer 0.1 to 240 psia
     * @param barometer at the place, 8 to 16 psia, ends included
     * @throws IllegalArgumentException outside those ranges, or for another dimension
     */
    public static Worked speed(Quantity steam, Quantity size, Quantity gauge, Quantity barometer) {
        Ranges.above("steam", steam, NO_STEAM, MOST_STEAM);
        PipeSize pipe = PipeSize.of(size);
        Quantity volume = Saturation.steamVolume(gauge, barometer);
        return Saturation.sheet(gauge, barometer)
                .looked(
                        Saturation.VOLUME,
                        "vg",
                        "steam table at gauge + air",
                        volume,
                        CUBIC_FOOT_PER_POUND,
                        "iapws-if97")
                .let("steam", "steam that goes through", steam, POUND_PER_HOUR)
                .let("d", "inside diameter of " + pipe.name() + " in pipe", pipe.inside(), INCH)
                .constant("pi", "pi")
                .constant("sq", "square-inches")
                .constant("hour", "seconds-an-hour")
                .source("asme-b36-10")
                .line("bore", "bore", "pi / 4 x d^2 / sq", SQUARE_FOOT)
                .line(SPEED, "speed", "steam x vg / (hour x bore)", FOOT_PER_SECOND)
                .worked();
    }

    /**
     * The radiation that a pipe carries, in ft2 EDR, from the tables of the ASHVE Guide. A main's is that of the next longer
     * column where its length stands between two; straight lines would promise more than the table does.
     *
     * @param service what the pipe does
     * @param size nominal size that has a row
     * @param length equivalent length of run of a main, above zero to 400 ft; not used for the others
     * @throws IllegalArgumentException for a size or length without a figure, with those that have one
     */
    public static Worked capacity(Service service, Quantity size, Quantity length) {
        return sheet(service, size, length).worked();
    }

    /**
     * The same, and a load as a share of it, in percent.
     *
     * @param load connected radiation, 0 to 100,000 ft2 EDR, ends included
     * @throws IllegalArgumentException as above, or outside that range
     */
    public static Worked capacity(Service service, Quantity size, Quantity length, Quantity load) {
        Ranges.within("load", load, NO_LOAD, MOST_LOAD);
        return sheet(service, size, length)
                .let("load", "connected radiation, EDR", load, SQUARE_FOOT)
                .line(SHARE, "share", "load / most x 100", PERCENT)
                .worked(CAPACITY);
    }

    private static Working sheet(Service service, Quantity size, Quantity length) {
        boolean isMain = service == Service.MAIN;
        Table table = Table.read(isMain ? "mains.csv" : "branches.csv");
        String column = isMain ? column(table, length) : Words.of(service);
        Table.Row row = row(table, PipeSize.of(size), column);
        Working sheet = Working.on(Basis.STANDARD).let("size", "nominal size", size, INCH);
        if (isMain) {
            sheet.let("length", "equivalent length of run", length, FOOT)
                    .looked(
                            CAPACITY,
                            "most",
                            "table of dripped mains, 2 oz total drop, " + column + " ft column",
                            row.quantity(column, SQUARE_FOOT),
                            SQUARE_FOOT,
                            "ashve-1930")
                    .warn("Square feet EDR. Steam and water must flow the same way, and the far end must be dripped.");
        } else {
            sheet.looked(
                            CAPACITY,
                            "most",
                            "table of risers and runouts, " + column.replace('-', ' '),
                            row.quantity(column, SQUARE_FOOT),
                            SQUARE_FOOT,
                            "ashve-1955")
                    .warn("Square feet EDR, with the water running back against the steam.");
        }
        return sheet;
    }

    private static String column(Table table, Quantity length) {
        List<String> lengths = table.columns().subList(1, table.columns().size());
        Ranges.above("length of run", length, Quantity.of(0, FOOT), Quantity.of(lengths.get(lengths.size() - 1), FOOT));
        for (String column : lengths) {
            if (length.isAtMost(Quantity.of(column, FOOT))) {
                return column;
            }
        }
        throw new IllegalStateException("no column for " + length);
    }

    private static Table.Row row(Table table, PipeSize size, String column) {
        List<String> known = table.rows().stream()
                .filter(row -> !row.isEmpty(column))
                .map(row -> row.text("size"))
                .toList();
        if (!known.contains(size.name())) {
            throw new IllegalArgumentException("no figure for " + size.nominal() + " pipe as "
                    + column.replace('-', ' ') + "; expected one of " + String.join(", ", known) + " in");
        }
        return table.row("size", size.name());
    }
}
