package gaugeglass.steam.reckon;

import static gaugeglass.engine.quantity.Unit.BTU_PER_HOUR;
import static gaugeglass.engine.quantity.Unit.BTU_PER_HOUR_FOOT;
import static gaugeglass.engine.quantity.Unit.FAHRENHEIT;
import static gaugeglass.engine.quantity.Unit.FAHRENHEIT_DEGREE;
import static gaugeglass.engine.quantity.Unit.FOOT;
import static gaugeglass.engine.quantity.Unit.INCH;

import gaugeglass.engine.book.Basis;
import gaugeglass.engine.quantity.Quantity;

/**
 * What a bare, horizontal steam pipe gives off in still air.
 *
 * <p>Formula: Btu/h per ft = pi x outside / 12 x (hc x rise + hr), with hc after Heilman: 1.016 x (1 / d)^0.2 x (1 /
 * Tmean)^0.181 x rise^0.266, d in inches, Tmean in degrees Rankine; hr by Stefan and Boltzmann, with an emittance of 0.8. The
 * pipe's surface is taken to be as hot as the steam. Broken powers are given to twelve digits.
 *
 * <p>Source: R. H. Heilman (1929) in the form of ASTM C680, memory, medium certainty. Checked against the table of US DOE
 * Steam Tip Sheet 2, whose 1 to 12 in lines at 15 and 150 psi it meets within 5 %.
 */
public final class PipeLoss {
    /** The line that gives the loss of a foot. */
    public static final String PER_FOOT = "loss of a foot";

    /** The line that gives the loss of the whole length. */
    public static final String ALL = "loss of the whole length";

    private static final Quantity COLDEST_ROOM = Quantity.of(-40, FAHRENHEIT);
    private static final Quantity HOTTEST_ROOM = Quantity.of(140, FAHRENHEIT);
    private static final Quantity HOTTEST_PIPE = Quantity.of(500, FAHRENHEIT);
    private static final Quantity LEAST_RISE = Quantity.of(20, FAHRENHEIT_DEGREE);
    private static final Quantity NO_LENGTH = Quantity.of(0, FOOT);
    private static final Quantity LONGEST = Quantity.of(10_000, FOOT);

    private PipeLoss() {}

    /**
     * The loss of a bare pipe.
     *
     * @param size nominal size, schedule 40
     * @param length above zero to 10,000 ft
     * @param steam temperature of the steam, from 20 F above the room's to 500 F, ends included
     * @param room temperature of the air around it, -40 to 140 F, ends included
     * @throws IllegalArgumentException outside those ranges, or for another dimension
     */
    public static Worked bare(Quantity size, Quantity length, Quantity steam, Quantity room) {
        PipeSize pipe = PipeSize.of(size);
        Ranges.above("length", length, NO_LENGTH, LONGEST);
        Ranges.within("room temperature", room, COLDEST_ROOM, HOTTEST_ROOM);
        Ranges.within("steam temperature", steam, room.plus(LEAST_RISE), HOTTEST_PIPE);
        return Working.on(Basis.CALCULATED)
                .let("d", "outside diameter of " + pipe.name() + " in pipe", pipe.outside(), INCH)
                .let("length", "bare length", length, FOOT)
                .let("T", "temperature of the pipe, that of the steam", steam, FAHRENHEIT)
                .let("room", "temperature of the air around it", room, FAHRENHEIT)
                .constant("c", "heilman-c")
                .constant("nd", "heilman-d")
                .constant("nt", "heilman-t")
                .constant("nr", "heilman-dt")
                .constant("R", "rankine")
                .constant("s", "stefan-boltzmann")
                .constant("e", "emittance")
                .constant("pi", "pi")
                .constant("foot", "inches-a-foot")
                .source("asme-b36-10")
                .source("doe-steam-2")
                .line("rise", "rise", "T - room", FAHRENHEIT_DEGREE)
                .count(
                        "carried off by air",
                        "conv",
                        "c x (1 / d)^nd x (1 / ((T + room) / 2 + R))^nt x rise^nr x rise",
                        1,
                        "Btu/h ft2")
                .count("radiated", "rad", "s x e x (((T + R) / 100)^4 - ((room + R) / 100)^4)", 1, "Btu/h ft2")
                .line(PER_FOOT, "each", "pi x d / foot x (conv + rad)", BTU_PER_HOUR_FOOT)
                .line(ALL, "all", "each x length", BTU_PER_HOUR)
                .warn("Still air and a horizontal pipe of dull steel; wind makes it more, bright paint or metal less.")
                .worked();
    }
}
