package gaugeglass.steam.reckon;

import static gaugeglass.engine.quantity.Unit.BTU_PER_POUND;
import static gaugeglass.engine.quantity.Unit.CUBIC_FOOT_PER_POUND;
import static gaugeglass.engine.quantity.Unit.CUBIC_METRE_PER_KILOGRAM;
import static gaugeglass.engine.quantity.Unit.FAHRENHEIT;
import static gaugeglass.engine.quantity.Unit.KELVIN;
import static gaugeglass.engine.quantity.Unit.KILOJOULE_PER_KILOGRAM;
import static gaugeglass.engine.quantity.Unit.KILOPASCAL_ABSOLUTE;
import static gaugeglass.engine.quantity.Unit.PSI;
import static gaugeglass.engine.quantity.Unit.PSI_ABSOLUTE;

import gaugeglass.engine.book.Basis;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import java.math.BigDecimal;

/**
 * Which temperature goes with which gauge pressure when steam and water stand together.
 *
 * <p>A gauge counts from the air around it and the steam table from nothing, so every answer needs the barometer
 * <em>at the place</em>: the station pressure, not the figure that weather reports reduce to sea level. At 2 psi on the
 * gauge the steam has 218.5 F by the sea and 210.2 F where the barometer stands at 12.2 psia.
 *
 * <p>The table holds for steam alone. Air mixed with it makes the temperature lower than the gauge says, superheat
 * higher.
 *
 * <p>Source: IAPWS R7-97(2012), region 4, as implemented by the if97 library; its saturation pressure is within 0.025 %
 * of the scientific formulation, which at these pressures is about 0.01 F.
 */
public final class Saturation {
    /** The barometer of the standard atmosphere, 101.325 kPa (14.696 psia); use it only where saying so. */
    public static final Quantity STANDARD_ATMOSPHERE = Quantity.of("101.325", KILOPASCAL_ABSOLUTE);

    private static final Quantity LOWEST_BAROMETER = Quantity.of(8, PSI_ABSOLUTE);
    private static final Quantity HIGHEST_BAROMETER = Quantity.of(16, PSI_ABSOLUTE);
    private static final Quantity LOWEST_PRESSURE = Quantity.of("0.1", PSI_ABSOLUTE);
    private static final Quantity HIGHEST_PRESSURE = Quantity.of(240, PSI_ABSOLUTE);
    private static final Quantity LOWEST_TEMPERATURE = Quantity.of(33, FAHRENHEIT);
    private static final Quantity HIGHEST_TEMPERATURE = Quantity.of(400, FAHRENHEIT);

    private static final int PLACES = 2;
    private static final String TABLE = "steam table at gauge + air";
    private static final String SOURCE = "iapws-if97";

    /** The line of {@link #at} that gives the temperature. */
    public static final String TEMPERATURE = "temperature of the steam";

    /** The line of {@link #at} that gives the latent heat. */
    public static final String LATENT_HEAT = "latent heat";

    /** The line of {@link #at} that gives the volume. */
    public static final String VOLUME = "volume of dry steam";

    private Saturation() {}

    /**
     * The temperature of steam at a gauge pressure: Tsat(gauge + barometer), in F, rounded to 0.01 F.
     *
     * @param gauge gauge pressure; with the barometer it must make 0.1 to 240 psia, ends included
     * @param barometer absolute pressure of the air at the place, 8 to 16 psia, ends included
     * @throws IllegalArgumentException outside those ranges, or for another dimension
     */
    public static Quantity temperature(Quantity gauge, Quantity barometer) {
        return Quantity.of(
                        Rational.of(BigDecimal.valueOf(SteamTable.saturationTemperature(pascals(gauge, barometer)))),
                        KELVIN)
                .inUnit(FAHRENHEIT)
                .rounded(PLACES);
    }

    /**
     * The gauge pressure that belongs to a steam temperature: psat(temperature) - barometer, in psi, rounded to 0.01 psi;
     * below zero for vacuum.
     *
     * @param steam temperature of the steam, 33 to 400 F, ends included
     * @param barometer absolute pressure of the air at the place, 8 to 16 psia, ends included
     * @throws IllegalArgumentException outside those ranges, or for another dimension
     */
    public static Quantity pressure(Quantity steam, Quantity barometer) {
        Quantity air = barometer(barometer);
        Ranges.within("steam temperature", steam, LOWEST_TEMPERATURE, HIGHEST_TEMPERATURE);
        double kelvins = steam.in(KELVIN).doubleValue();
        Quantity absolute = Quantity.of(
                Rational.of(BigDecimal.valueOf(SteamTable.saturationPressure(kelvins) / 1000)), KILOPASCAL_ABSOLUTE);
        return absolute.minus(air).inUnit(PSI).rounded(PLACES);
    }

    /**
     * The heat that boils a pound of water, and that a pound of steam gives back: hfg(gauge + barometer), in Btu/lb, rounded
     * to 0.1 Btu/lb.
     *
     * @param gauge gauge pressure; with the barometer it must make 0.1 to 240 psia, ends included
     * @param barometer absolute pressure of the air at the place, 8 to 16 psia, ends included
     * @throws IllegalArgumentException outside those ranges, or for another dimension
     */
    public static Quantity latentHeat(Quantity gauge, Quantity barometer) {
        double joules = SteamTable.latentHeat(pascals(gauge, barometer));
        return Quantity.of(Rational.of(BigDecimal.valueOf(joules / 1000)), KILOJOULE_PER_KILOGRAM)
                .inUnit(BTU_PER_POUND)
                .rounded(1);
    }

    /**
     * The room that a pound of dry steam takes: vg(gauge + barometer), in ft3/lb, rounded to 0.01 ft3/lb.
     *
     * @param gauge gauge pressure; with the barometer it must make 0.1 to 240 psia, ends included
     * @param barometer absolute pressure of the air at the place, 8 to 16 psia, ends included
     * @throws IllegalArgumentException outside those ranges, or for another dimension
     */
    public static Quantity steamVolume(Quantity gauge, Quantity barometer) {
        double cubicMetres = SteamTable.steamVolume(pascals(gauge, barometer));
        return Quantity.of(Rational.of(BigDecimal.valueOf(cubicMetres)), CUBIC_METRE_PER_KILOGRAM)
                .inUnit(CUBIC_FOOT_PER_POUND)
                .rounded(PLACES);
    }

    /**
     * What a gauge pressure means: the temperature, latent heat and volume of the steam, worked on a sheet.
     *
     * @param gauge gauge pressure; with the barometer it must make 0.1 to 240 psia, ends included
     * @param barometer absolute pressure of the air at the place, 8 to 16 psia, ends included
     * @throws IllegalArgumentException outside those ranges, or for another dimension
     */
    public static Worked at(Quantity gauge, Quantity barometer) {
        return sheet(gauge, barometer)
                .looked(VOLUME, "vg", TABLE, steamVolume(gauge, barometer), CUBIC_FOOT_PER_POUND, SOURCE)
                .looked(TEMPERATURE, "T", TABLE, temperature(gauge, barometer), FAHRENHEIT, SOURCE)
                .worked();
    }

    /**
     * The gauge pressure that a steam temperature means, worked on a sheet.
     *
     * @param steam temperature of the steam, 33 to 400 F, ends included
     * @param barometer absolute pressure of the air at the place, 8 to 16 psia, ends included
     * @throws IllegalArgumentException outside those ranges, or for another dimension
     */
    public static Worked of(Quantity steam, Quantity barometer) {
        Quantity pressure = pressure(steam, barometer);
        return Working.on(Basis.CALCULATED)
                .let("T", "temperature of the steam", steam, FAHRENHEIT)
                .let("air", "barometer at the place", barometer, PSI_ABSOLUTE)
                .looked("gauge pressure", "gauge", "steam table at T, less air", pressure, PSI, SOURCE)
                .warn(
                        "Air in the steam lowers its temperature, and a probe strapped to a pipe reads some degrees low: the"
                                + " pressure may well be higher than this.")
                .worked();
    }

    /** A sheet with gauge, air and the latent heat on it, named gauge, air and hfg. */
    static Working sheet(Quantity gauge, Quantity barometer) {
        Quantity heat = latentHeat(gauge, barometer);
        return Working.on(Basis.CALCULATED)
                .let("gauge", "pressure of the steam", gauge, PSI)
                .let("air", "barometer at the place", barometer, PSI_ABSOLUTE)
                .looked(LATENT_HEAT, "hfg", TABLE, heat, BTU_PER_POUND, SOURCE);
    }

    private static double pascals(Quantity gauge, Quantity barometer) {
        Quantity air = barometer(barometer);
        Quantity absolute = Ranges.within("absolute pressure", air.plus(gauge), LOWEST_PRESSURE, HIGHEST_PRESSURE);
        return absolute.in(KILOPASCAL_ABSOLUTE).doubleValue() * 1000;
    }

    /** The barometer itself, when it is one that a place can have. */
    static Quantity barometer(Quantity barometer) {
        return Ranges.within("barometer", barometer, LOWEST_BAROMETER, HIGHEST_BAROMETER);
    }
}
