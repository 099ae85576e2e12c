package gaugeglass.steam.reckon;

import static gaugeglass.engine.quantity.Unit.FOOT;
import static gaugeglass.engine.quantity.Unit.METRE;
import static gaugeglass.engine.quantity.Unit.PSI_ABSOLUTE;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * What a barometer would read at a height above sea level on a day of average weather.
 *
 * <p>Formula: 101.325 kPa x (1 - 0.0065 h / 288.15)^5.25588, h in metres; 12.23 psia at 5000 ft. Weather moves a real
 * barometer about this figure, so it brackets one and never replaces it.
 *
 * <p>Source: U.S. Standard Atmosphere 1976, troposphere, from memory with high certainty.
 */
public final class StandardAtmosphere {
    private static final Quantity LOWEST = Quantity.of(-1000, FOOT);
    private static final Quantity HIGHEST = Quantity.of(12000, FOOT);
    private static final double LAPSE = 0.0065;
    private static final double SEA_LEVEL_KELVINS = 288.15;
    private static final double EXPONENT = 5.25588;
    private static final int PLACES = 3;

    private StandardAtmosphere() {}

    /**
     * The absolute pressure of the air at a height, in psia, rounded to 0.001 psia.
     *
     * @param height above sea level, -1000 to 12,000 ft, ends included
     * @throws IllegalArgumentException outside that range, or for another dimension
     */
    public static Quantity at(Quantity height) {
        Ranges.within("elevation", height, LOWEST, HIGHEST);
        double metres = height.in(METRE).doubleValue();
        double share = Math.pow(1 - LAPSE * metres / SEA_LEVEL_KELVINS, EXPONENT);
        double psia = Saturation.STANDARD_ATMOSPHERE.in(PSI_ABSOLUTE).doubleValue() * share;
        return Quantity.of(Rational.of(BigDecimal.valueOf(psia).setScale(PLACES, RoundingMode.HALF_UP)), PSI_ABSOLUTE);
    }
}
