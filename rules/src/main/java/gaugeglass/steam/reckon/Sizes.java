package gaugeglass.steam.reckon;

import static gaugeglass.engine.quantity.Unit.BTU_PER_HOUR;
import static gaugeglass.engine.quantity.Unit.PERCENT;
import static gaugeglass.engine.quantity.Unit.POUND_PER_HOUR;
import static gaugeglass.engine.quantity.Unit.SQUARE_FOOT;
import static gaugeglass.engine.quantity.Unit.SQUARE_INCH;

import gaugeglass.engine.book.Basis;
import gaugeglass.engine.quantity.Dimension;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.text.Words;

/** The least sizes of what keeps a boiler in order. Local code and the boiler's own marking come before every one. */
public final class Sizes {
    /** The line that gives the equalizer's size. */
    public static final String EQUALIZER = "equalizer, at least";

    /** The table of equalizers. */
    static final String EQUALIZERS = "equalizer.csv";

    /** The line that gives the drain's size. */
    public static final String DRAIN = "bottom drain, at least";

    /** The line that gives the safety valve's capacity. */
    public static final String VALVE = "safety valve capacity, at least";

    /** The line that gives the free area. */
    public static final String FREE = "free area";

    /** The line that gives the gross area. */
    public static final String GROSS = "gross area";

    private static final Quantity NO_STEAM = Quantity.of(0, POUND_PER_HOUR);
    private static final Quantity MOST_STEAM = Quantity.of(100_000, POUND_PER_HOUR);
    private static final Quantity NO_HEAT = Quantity.of(0, BTU_PER_HOUR);
    private static final Quantity MOST_HEAT = Quantity.of(100_000_000, BTU_PER_HOUR);
    private static final Quantity NO_SURFACE = Quantity.of(0, SQUARE_FOOT);
    private static final Quantity MOST_SURFACE = Quantity.of(20_000, SQUARE_FOOT);
    private static final Quantity NO_SHARE = Quantity.of(0, PERCENT);
    private static final Quantity WHOLE = Quantity.of(100, PERCENT);
    private static final String CODE = "The local code and the maker's instructions come first.";

    private Sizes() {}

    /** How the heating surface of a steel boiler stands to the water. */
    public enum Surface {
        FIRETUBE,
        WATERTUBE
    }

    /** Which rule for combustion air applies. */
    public enum AirRule {
        NORTH_CAROLINA,
        OUTDOORS_VERTICAL,
        OUTDOORS_HORIZONTAL,
        OUTDOORS_ONE_OPENING
    }

    /** What stands in an air opening. */
    public enum Louver {
        NONE,
        METAL,
        WOOD
    }

    /**
     * The least equalizing pipe for so much steam, from the District of Columbia's Table 1007.2.
     *
     * @param steam what the boiler makes, above zero to 100,000 lb/h
     * @throws IllegalArgumentException outside that range, or for another dimension
     */
    public static Worked equalizer(Quantity steam) {
        return looked(EQUALIZERS, "dc-1007", EQUALIZER, "table of equalizing pipe at steam", steam);
    }

    /**
     * The least bottom drain for so much steam, from ASME Section IV HG-715 (memory, high certainty).
     *
     * @param steam what the boiler makes, above zero to 100,000 lb/h
     * @throws IllegalArgumentException outside that range, or for another dimension
     */
    public static Worked drain(Quantity steam) {
        return looked("drain.csv", "asme-hg-715", DRAIN, "table of bottom drains at steam", steam);
    }

    /**
     * The safety valve capacity that an output asks for: output / 1000 Btu/lb, in lb/h. Where the boiler is marked with a
     * capacity, the marking governs and not this.
     *
     * @param output most that the boiler can give, above zero to 100 million Btu/h
     * @throws IllegalArgumentException outside that range, or for another dimension
     */
    public static Worked safetyValve(Quantity output) {
        Ranges.above("output", output, NO_HEAT, MOST_HEAT);
        return Working.on(Basis.STANDARD)
                .let("output", "most that the boiler can give", output, BTU_PER_HOUR)
                .constant("each", "valve-heat-a-pound")
                .source("md-09-12")
                .line(VALVE, "need", "output / each", POUND_PER_HOUR)
                .warn("A capacity marked on the boiler governs, not this figure. " + CODE)
                .worked();
    }

    /**
     * The safety valve capacity that heating surface asks for, for steel boilers fired with oil or gas: surface x 8 (firetube)
     * or x 10 (watertube) lb/h per ft2.
     *
     * @param surface heating surface, above zero to 20,000 ft2
     * @param kind how it stands to the water
     * @throws IllegalArgumentException outside that range, or for another dimension
     */
    public static Worked safetyValve(Quantity surface, Surface kind) {
        Ranges.above("heating surface", surface, NO_SURFACE, MOST_SURFACE);
        return Working.on(Basis.STANDARD)
                .let("surface", "heating surface, " + Words.of(kind), surface, SQUARE_FOOT)
                .constant("each", Words.of(kind) + "-surface")
                .source("md-09-12")
                .line(VALVE, "need", "surface x each", POUND_PER_HOUR)
                .warn(
                        "For steel boilers fired with oil or gas only. A capacity marked on the boiler governs, not this figure. "
                                + CODE)
                .worked();
    }

    /**
     * The opening that combustion air needs: free = input / Btu/h per in2; gross = free / share of the louver that is free.
     *
     * @param input of everything that burns in the room, above zero to 100 million Btu/h
     * @param rule which rule applies
     * @param louver what stands in the opening, when the maker's free share is not known
     * @throws IllegalArgumentException outside that range, or for another dimension
     */
    public static Worked combustionAir(Quantity input, AirRule rule, Louver louver) {
        Quantity free =
                Table.read("louvers.csv").row("louver", Words.of(louver)).quantity("free", PERCENT);
        String what = louver == Louver.NONE
                ? "free share of an open hole"
                : "free share of a " + Words.of(louver) + " louver whose maker's figure is not known";
        return combustionAir(input, rule, free, what).worked();
    }

    /**
     * The same, with the free share that the louver's maker gives.
     *
     * @param share of the gross area that is free, above 0 to 100 %
     * @throws IllegalArgumentException outside those ranges, or for another dimension
     */
    public static Worked combustionAir(Quantity input, AirRule rule, Quantity share) {
        Ranges.above("free share", share, NO_SHARE, WHOLE);
        return combustionAir(input, rule, share, "free share of the louver, from its maker")
                .worked();
    }

    private static Working combustionAir(Quantity input, AirRule rule, Quantity share, String what) {
        Ranges.above("input", input, NO_HEAT, MOST_HEAT);
        Table.Row row = Table.read("combustion-air.csv").row("rule", Words.of(rule));
        boolean isEach = row.text("each").equals("yes");
        return Working.on(Basis.STANDARD)
                .let("input", "input of everything that burns in the room", input, BTU_PER_HOUR)
                .let("rule", "input for a square inch: " + row.text("what"), row.number("btu-an-inch"), "Btu/h in2")
                .let("share", what, share, PERCENT)
                .source(row.text("source"))
                .source("nfpa-54")
                .line(GROSS, "gross", "input / rule / (share / 100)", SQUARE_INCH)
                .line(FREE, "free", "input / rule", SQUARE_INCH)
                .warn("Free area is what counts; a louver or screen takes its share of the hole. " + CODE)
                .warnIf(isEach, "Each of the two openings must have it.");
    }

    private static Worked looked(String file, String source, String what, String where, Quantity steam) {
        Ranges.above("steam", steam, NO_STEAM, MOST_STEAM);
        Quantity size = leastSize(file, steam);
        return Working.on(Basis.STANDARD)
                .let("steam", "steam that the boiler makes", steam, POUND_PER_HOUR)
                .looked(what, "size", where, size, Unit.INCH, source)
                .warn(CODE)
                .worked();
    }

    /** The size in a table's first row that reaches so far; what lies between two rows is given the larger. */
    static Quantity leastSize(String file, Quantity steam) {
        for (Table.Row row : Table.read(file).rows()) {
            if (row.isEmpty("to") || steam.isAtMost(row.quantity("to", POUND_PER_HOUR))) {
                return Quantity.parse(row.text("size") + " in", Dimension.LENGTH);
            }
        }
        throw new IllegalStateException(file + " has no last row");
    }
}
