package gaugeglass.steam.reckon;

import static gaugeglass.engine.quantity.Unit.FAHRENHEIT;
import static gaugeglass.engine.quantity.Unit.KELVIN;
import static gaugeglass.engine.quantity.Unit.KILOPASCAL_ABSOLUTE;
import static gaugeglass.engine.quantity.Unit.PSI;
import static gaugeglass.engine.quantity.Unit.PSI_ABSOLUTE;

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

    private Saturation() {}

    /**
     * The temperature of steam at a gauge pressure: Tsat(gauge + barometer), in F, rounded to 0.01 F.
     *
     * @param gauge gauge pressure; with the barometer it must make 0.1 to 240 psia, ends included
     * @param barometer absolute pressure of the air at the place, 8 to 16 psia, ends included
     * @throws IllegalArgumentException outside those ranges, or for another dimension
     */
    public static Quantity temperature(Quantity gauge, Quantity barometer) {
        Quantity air = barometer(barometer);
        Quantity absolute = Ranges.within("absolute pressure", air.plus(gauge), LOWEST_PRESSURE, HIGHEST_PRESSURE);
        double pascals = absolute.in(KILOPASCAL_ABSOLUTE).doubleValue() * 1000;
        return Quantity.of(Rational.of(BigDecimal.valueOf(SteamTable.saturationTemperature(pascals))), KELVIN)
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

    private static Quantity barometer(Quantity barometer) {
        return Ranges.within("barometer", barometer, LOWEST_BAROMETER, HIGHEST_BAROMETER);
    }
}
