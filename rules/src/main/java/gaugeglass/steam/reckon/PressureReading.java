package gaugeglass.steam.reckon;

import gaugeglass.engine.book.Basis;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;

/** A gauge pressure in every unit that dials carry, and where it stands on a dial. */
public final class PressureReading {
    /** The line that gives the share of the scale. */
    public static final String SHARE = "share of the scale";

    /** The line that gives how far the reading may be off. */
    public static final String UNCERTAINTY = "off either way";

    private PressureReading() {}

    /**
     * The pressure in psi, oz/in2, inH2O, inHg and kPa; exact.
     *
     * @param pressure gauge pressure; below zero is vacuum
     * @throws IllegalArgumentException for another dimension
     */
    public static Worked of(Quantity pressure) {
        return sheet(pressure).worked("in psi");
    }

    /**
     * The same, and where it stands on a dial: (pressure - bottom) / (top - bottom), exact, in percent.
     *
     * @param scale the dial
     * @throws IllegalArgumentException for another dimension
     */
    public static Worked on(Quantity pressure, GaugeScale scale) {
        return dial(pressure, scale).worked(SHARE);
    }

    /**
     * The same, and how far the reading may be off either way: what the grade allows there x span, exact.
     *
     * @param pressure what the dial shows, from its bottom to its top, ends included
     * @param grade accuracy grade of the gauge
     * @throws IllegalArgumentException off the scale, or for another dimension
     */
    public static Worked on(Quantity pressure, GaugeScale scale, GaugeGrade grade) {
        Quantity off = scale.uncertaintyAt(pressure, grade);
        Quantity allowed = Quantity.of(off.ratioTo(scale.span()), Unit.TIMES).inUnit(Unit.PERCENT);
        return dial(pressure, scale)
                .let("grade", "percent of span that grade " + grade.mark() + " allows there", allowed, Unit.PERCENT)
                .line(UNCERTAINTY, "off", "grade / 100 x (top - bottom)", Unit.PSI)
                .worked();
    }

    private static Working dial(Quantity pressure, GaugeScale scale) {
        return sheet(pressure)
                .let("bottom", "lowest figure of the dial", scale.bottom(), Unit.PSI)
                .let("top", "highest figure of the dial", scale.top(), Unit.PSI)
                .line(SHARE, "share", "(psi - bottom) / (top - bottom) x 100", Unit.PERCENT);
    }

    private static Working sheet(Quantity pressure) {
        Pressures all = Pressures.of(pressure);
        Working sheet = Working.on(Basis.CALCULATED)
                .let("p", "gauge pressure", pressure, pressure.unit())
                .source("nist-811");
        return sheet.looked("in psi", "psi", "p in psi", all.psi(), Unit.PSI, "definition")
                .looked("in oz/in2", "oz", "p in oz/in2", all.ounces(), Unit.OUNCE_PER_SQUARE_INCH, "definition")
                .looked("in inH2O", "water", "p in inH2O", all.inchesOfWater(), Unit.INCH_OF_WATER, "nist-811")
                .looked("in inHg", "mercury", "p in inHg", all.inchesOfMercury(), Unit.INCH_OF_MERCURY, "nist-811")
                .looked("in kPa", "kPa", "p in kPa", all.kilopascals(), Unit.KILOPASCAL, "nist-811");
    }
}
