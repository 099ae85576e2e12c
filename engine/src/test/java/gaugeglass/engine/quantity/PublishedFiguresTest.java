package gaugeglass.engine.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Conversion factors as printed, to the last digit printed.
 *
 * <p>NIST Special Publication 811 (2008), Appendix B.8, is quoted from memory, with high certainty;
 * bold figures there are exact. "Ratio" rows follow from the rows above and are what handbooks of
 * the trade print. "Common practice" is said where no document stands behind a figure.
 */
class PublishedFiguresTest {

    @ParameterizedTest(name = "{0} = {1} {2}, {3}")
    @CsvSource({
        // written, printed figure, unit, source
        "1 psi,              6894.757,     PASCAL,              NIST SP 811",
        "1 psi,              6894.757293,  PASCAL,              from the pound-force 4.4482216152605 N and the inch",
        "1 inH2O,            249.0889,     PASCAL,              NIST SP 811 (conventional)",
        "1 ftH2O,            2989.067,     PASCAL,              NIST SP 811 (conventional)",
        "1 inHg,             3386.389,     PASCAL,              NIST SP 811 (conventional)",
        "1 psi,              27.680,       INCH_OF_WATER,       ratio",
        "1 psi,              2.0360,       INCH_OF_MERCURY,     ratio",
        "1.5 psi,            24,           OUNCE_PER_SQUARE_INCH, exact by definition",
        "1.5 psi,            41.52,        INCH_OF_WATER,       ratio",
        "1.5 psi,            10.342,       KILOPASCAL,          ratio",
        "12 oz,              0.75,         PSI,                 exact by definition",
        "15 psi,             30.54,        INCH_OF_MERCURY,     ratio",
        "30 inH2O,           1.084,        PSI,                 ratio; common practice: a little more than a pound",
    })
    void pressure(String written, BigDecimal printed, Unit unit, String source) {
        check(Quantity.parse(written, Dimension.PRESSURE), printed, unit);
    }

    @ParameterizedTest(name = "{1} = {2} {3}, {4}")
    @CsvSource({
        "ABSOLUTE_PRESSURE, 101.325 kPa,   14.696,       PSI_ABSOLUTE,        the standard atmosphere",
        "ABSOLUTE_PRESSURE, 1013.25 mbar,  29.921,       INCH_OF_MERCURY_ABSOLUTE, the standard atmosphere",
        "LENGTH,            1 in,          25.4,         MILLIMETRE,          exact; NIST SP 811",
        "LENGTH,            1 ft,          0.3048,       METRE,               exact; NIST SP 811",
        "VOLUME,            1 gal,         3.785412,     LITRE,               NIST SP 811",
        "VOLUME,            1 imp gal,     4.54609,      LITRE,               exact; NIST SP 811",
        "VOLUME,            1 ft3,         28.31685,     LITRE,               NIST SP 811",
        "VOLUME,            1 ft3,         7.4805,       GALLON,              ratio",
        "MASS,              1 lb,          0.45359237,   KILOGRAM,            exact; NIST SP 811",
        "MASS,              1 oz,          0.02834952,   KILOGRAM,            NIST SP 811",
        "POWER,             1 MBH,         0.2930711,    KILOWATT,            NIST SP 811 (Btu of the International Table)",
        "POWER,             1 bhp,         33475,        BTU_PER_HOUR,        US DOE Steam Tip Sheet 16",
        "POWER,             1 bhp,         9.81,         KILOWATT,            ratio; NIST SP 811 rounds another convention: 9.80950",
        "MASS_FLOW,         1 lb/h,        0.45359237,   KILOGRAM_PER_HOUR,   exact",
        "VOLUME_FLOW,       1 gpm,         3.785412,     LITRE_PER_MINUTE,    NIST SP 811",
        "VOLUME_FLOW,       0.01 m3/h,     0.3531467,    CUBIC_FOOT_PER_HOUR, ratio",
        "TEMPERATURE,       212 F,         100,          CELSIUS,             exact",
        "TEMPERATURE,       -40 F,         -40,          CELSIUS,             exact",
        "TEMPERATURE,       0 C,           273.15,       KELVIN,              exact",
        "TEMPERATURE_DIFFERENCE, 10 C,     18,           FAHRENHEIT_DEGREE,   exact",
        "VELOCITY,          1 ft/min,      0.00508,      METRE_PER_SECOND,    exact; NIST SP 811",
        "HEAT,              1 kWh,         3412.14,      BTU,                 ratio",
        "HEAT,              1 therm,       105.5056,     MEGAJOULE,           NIST SP 811 (EC therm)",
        "HEAT_BY_WEIGHT,    1 Btu/lb,      2.326,        KILOJOULE_PER_KILOGRAM, exact; NIST SP 811",
        "HEAT_BY_VOLUME,    1 Btu/ft3,     0.03725895,   MEGAJOULE_PER_CUBIC_METRE, NIST SP 811",
        "POWER_BY_LENGTH,   1 Btu/h ft,    0.9615,       WATT_PER_METRE,      ratio",
        "VOLUME_BY_WEIGHT,  1 ft3/lb,      0.06242796,   CUBIC_METRE_PER_KILOGRAM, NIST SP 811",
        "WEIGHT_BY_VOLUME,  1 gr/gal,      17.11806,     MILLIGRAM_PER_LITRE, NIST SP 811",
        "WEIGHT_BY_VOLUME,  1 lb/gal,      119826.4,     MILLIGRAM_PER_LITRE, NIST SP 811",
        "FREQUENCY,         1 per hour,    24,           PER_DAY,             exact",
        "DEGREE_DAYS,       5000 C-days,   9000,         FAHRENHEIT_DAY,      exact",
        "VOLUME_BY_DEGREE_DAY, 1 gal/F-day, 6.8137,      LITRE_PER_CELSIUS_DAY, ratio",
        "RATIO,             0.405 %,       4050,         PARTS_PER_MILLION,   exact",
    })
    void everything_else(Dimension dimension, String written, BigDecimal printed, Unit unit, String source) {
        check(Quantity.parse(written, dimension), printed, unit);
    }

    private static void check(Quantity quantity, BigDecimal printed, Unit unit) {
        assertThat(quantity.in(unit).setScale(printed.scale(), java.math.RoundingMode.HALF_UP))
                .isEqualTo(printed);
    }
}
