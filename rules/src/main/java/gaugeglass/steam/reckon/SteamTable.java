package gaugeglass.steam.reckon;

import com.hummeling.if97.IF97;
import com.hummeling.if97.OutOfRangeException;

/**
 * The industrial formulation IAPWS-IF97 for water and steam, in SI units and doubles.
 *
 * <p>Loaded on the first question and not before: most starts of the program never ask one.
 */
final class SteamTable {
    private SteamTable() {}

    /** Saturation temperature in K at an absolute pressure in Pa. */
    static double saturationTemperature(double pressure) {
        try {
            return Loaded.TABLE.saturationTemperatureP(pressure);
        } catch (OutOfRangeException e) {
            throw new IllegalArgumentException("pressure outside the steam table: " + pressure + " Pa", e);
        }
    }

    /** Saturation pressure in Pa, absolute, at a temperature in K. */
    static double saturationPressure(double temperature) {
        try {
            return Loaded.TABLE.saturationPressureT(temperature);
        } catch (OutOfRangeException e) {
            throw new IllegalArgumentException("temperature outside the steam table: " + temperature + " K", e);
        }
    }

    /** Density in kg/m3 of water about to boil, at a temperature in K. */
    static double waterDensity(double temperature) {
        try {
            return 1 / Loaded.TABLE.specificVolumeSaturatedLiquidT(temperature);
        } catch (OutOfRangeException e) {
            throw new IllegalArgumentException("temperature outside the steam table: " + temperature + " K", e);
        }
    }

    /** Heat in J/kg that boiling takes at an absolute pressure in Pa. */
    static double latentHeat(double pressure) {
        try {
            return Loaded.TABLE.specificEnthalpySaturatedVapourP(pressure)
                    - Loaded.TABLE.specificEnthalpySaturatedLiquidP(pressure);
        } catch (OutOfRangeException e) {
            throw new IllegalArgumentException("pressure outside the steam table: " + pressure + " Pa", e);
        }
    }

    /** Volume in m3/kg of dry saturated steam at an absolute pressure in Pa. */
    static double steamVolume(double pressure) {
        try {
            return Loaded.TABLE.specificVolumeSaturatedVapourP(pressure);
        } catch (OutOfRangeException e) {
            throw new IllegalArgumentException("pressure outside the steam table: " + pressure + " Pa", e);
        }
    }

    private static final class Loaded {
        static final IF97 TABLE = new IF97(IF97.UnitSystem.SI);
    }
}
