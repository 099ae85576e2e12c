package gaugeglass.steam.reckon;

import static gaugeglass.engine.quantity.Unit.BTU_PER_HOUR;
import static gaugeglass.engine.quantity.Unit.GALLON;
import static gaugeglass.engine.quantity.Unit.MINUTE;
import static gaugeglass.engine.quantity.Unit.POUND;
import static gaugeglass.engine.quantity.Unit.POUND_PER_GALLON;
import static gaugeglass.engine.quantity.Unit.POUND_PER_HOUR;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.quantity.Unit;
import java.math.BigDecimal;

/**
 * How long full fire takes to boil the water down from its normal level to the cutoff's, with no feed and nothing coming
 * back.
 *
 * <p>Formula: minutes = volume between the levels x density of boiling water / (output / hfg) x 60. Density and latent heat
 * are those of IAPWS-IF97, rounded to 0.001 lb/gal and 0.1 Btu/lb; the rest is exact.
 */
public final class LowWaterTime {
    /** The line that gives the time. */
    public static final String TIME = "normal level to cutoff";

    private static final Quantity NONE = Quantity.of(0, GALLON);
    private static final Quantity MOST = Quantity.of(10_000, GALLON);
    private static final Quantity NO_OUTPUT = Quantity.of(0, BTU_PER_HOUR);
    private static final Quantity MOST_OUTPUT = Quantity.of(100_000_000, BTU_PER_HOUR);
    private static final int PLACES = 3;
    private static final double LITRES = 1000;

    private LowWaterTime() {}

    /**
     * Minutes from normal level to the cutoff.
     *
     * @param volume water between the two levels, above zero to 10,000 gal: what runs into a bucket when the cold boiler is
     *     let down from one to the other
     * @param output at full fire, above zero to 100 million Btu/h
     * @param gauge pressure of the steam; with the barometer 0.1 to 240 psia
     * @param barometer at the place, 8 to 16 psia, ends included
     * @throws IllegalArgumentException outside those ranges, or for another dimension
     */
    public static Worked minutes(Quantity volume, Quantity output, Quantity gauge, Quantity barometer) {
        Ranges.above("water between the levels", volume, NONE, MOST);
        Ranges.above("output", output, NO_OUTPUT, MOST_OUTPUT);
        Working sheet = Saturation.sheet(gauge, barometer);
        double kelvins =
                Saturation.temperature(gauge, barometer).in(Unit.KELVIN).doubleValue();
        // kg/m3 are g/L.
        Quantity density = Quantity.of(
                        Rational.of(BigDecimal.valueOf(SteamTable.waterDensity(kelvins) * LITRES)),
                        Unit.MILLIGRAM_PER_LITRE)
                .inUnit(POUND_PER_GALLON)
                .rounded(PLACES);
        return sheet.looked(
                        "density of boiling water",
                        "dens",
                        "steam table at gauge + air",
                        density,
                        POUND_PER_GALLON,
                        "iapws-if97")
                .let("volume", "water between the levels", volume, GALLON)
                .let("output", "output at full fire", output, BTU_PER_HOUR)
                .constant("sixty", "minutes-an-hour")
                .line("water to boil away", "water", "volume x dens", POUND)
                .line("steam made", "steam", "output / hfg", POUND_PER_HOUR)
                .line(TIME, "time", "water / steam x sixty", MINUTE)
                .warn(
                        "Only how much is held in reserve while water shows in the glass. A boiler whose water is out of sight"
                                + " has no minutes at all: burner off, no water in, let it cool, call somebody licensed.")
                .worked();
    }
}
