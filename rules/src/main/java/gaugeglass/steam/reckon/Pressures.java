package gaugeglass.steam.reckon;

import gaugeglass.engine.quantity.Dimension;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import java.util.List;

/**
 * One gauge pressure in the five units that dials and controls are marked in, each exactly the same amount.
 *
 * <p>Conversions are those of {@link Unit}: the conventional inches of water and of mercury.
 *
 * @param psi in pounds per square inch
 * @param ounces in ounces per square inch
 * @param inchesOfWater in inches of water
 * @param inchesOfMercury in inches of mercury
 * @param kilopascals in kilopascals
 */
public record Pressures(
        Quantity psi, Quantity ounces, Quantity inchesOfWater, Quantity inchesOfMercury, Quantity kilopascals) {
    /** A dial is read to three digits; a fourth keeps the conversion from adding an error of its own. */
    private static final int DIGITS = 4;

    /**
     * @throws IllegalArgumentException if a part has another unit than its own, or another amount than the rest
     */
    public Pressures {
        boolean units = psi.unit() == Unit.PSI
                && ounces.unit() == Unit.OUNCE_PER_SQUARE_INCH
                && inchesOfWater.unit() == Unit.INCH_OF_WATER
                && inchesOfMercury.unit() == Unit.INCH_OF_MERCURY
                && kilopascals.unit() == Unit.KILOPASCAL;
        if (!units
                || !psi.equals(ounces)
                || !psi.equals(inchesOfWater)
                || !psi.equals(inchesOfMercury)
                || !psi.equals(kilopascals)) {
            throw new IllegalArgumentException("not one pressure in five units: " + psi + ", " + ounces + ", "
                    + inchesOfWater + ", " + inchesOfMercury + ", " + kilopascals);
        }
    }

    /**
     * The five faces of a gauge pressure; below zero is vacuum.
     *
     * @throws IllegalArgumentException for another dimension
     */
    public static Pressures of(Quantity pressure) {
        if (pressure.dimension() != Dimension.PRESSURE) {
            throw new IllegalArgumentException(
                    pressure + " is of " + pressure.dimension().words() + "; expected gauge pressure");
        }
        return new Pressures(
                pressure.inUnit(Unit.PSI),
                pressure.inUnit(Unit.OUNCE_PER_SQUARE_INCH),
                pressure.inUnit(Unit.INCH_OF_WATER),
                pressure.inUnit(Unit.INCH_OF_MERCURY),
                pressure.inUnit(Unit.KILOPASCAL));
    }

    /** The five in the order psi, oz/in2, inH2O, inHg, kPa, each rounded to four significant digits, for showing. */
    public List<Quantity> shown() {
        return List.of(shown(psi), shown(ounces), shown(inchesOfWater), shown(inchesOfMercury), shown(kilopascals));
    }

    private static Quantity shown(Quantity quantity) {
        return quantity.roundedToDigits(DIGITS);
    }
}
