package gaugeglass.steam.reckon;

import static gaugeglass.engine.quantity.Dimension.ABSOLUTE_PRESSURE;
import static gaugeglass.engine.quantity.Dimension.PRESSURE;
import static gaugeglass.engine.quantity.Dimension.TEMPERATURE;
import static gaugeglass.engine.quantity.Unit.FAHRENHEIT;
import static gaugeglass.engine.quantity.Unit.KELVIN;
import static gaugeglass.engine.quantity.Unit.PSI;
import static gaugeglass.engine.quantity.Unit.PSI_ABSOLUTE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import com.hummeling.if97.IF97;
import gaugeglass.engine.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SaturationTest {
    private static final Quantity SEA_LEVEL = Saturation.STANDARD_ATMOSPHERE;
    private static final double ATMOSPHERE_PASCALS = 101_325;
    private static final double BTU_PER_LB = 2326; // J/kg, exact: both are of the International Table
    private static final double FT3_PER_LB = 0.028316846592 / 0.45359237; // m3/kg, exact

    /** IAPWS R7-97(2012), computer-program verification of region 4, tables 35 and 36. */
    @ParameterizedTest
    @CsvSource({"300, 0.00353658941", "500, 2.63889776", "600, 12.3443146"})
    void the_steam_table_gives_the_verification_pressures(double kelvins, double megapascals) {
        assertThat(SteamTable.saturationPressure(kelvins) / 1e6).isCloseTo(megapascals, within(megapascals * 5e-9));
    }

    @ParameterizedTest
    @CsvSource({"0.1, 372.755919", "1, 453.035632", "10, 584.149488"})
    void the_steam_table_gives_the_verification_temperatures(double megapascals, double kelvins) {
        assertThat(SteamTable.saturationTemperature(megapascals * 1e6)).isCloseTo(kelvins, within(5e-7));
    }

    /** Rows reckoned from IAPWS-IF97 beforehand and apart from this project; tolerances 0.05 F, 0.3 Btu/lb, 0.1 %. */
    @ParameterizedTest(name = "{0} psig: {1} F, {2} Btu/lb, {3} ft3/lb")
    @CsvSource({
        "0,  211.95, 970.1, 26.80",
        "2,  218.46, 966.0, 23.79",
        "5,  227.10, 960.5, 20.38",
        "10, 239.36, 952.5, 16.49"
    })
    void saturated_steam_at_sea_level(int gauge, double fahrenheit, double latentHeat, double volume) throws Exception {
        Quantity pressure = Quantity.of(gauge, PSI);
        assertThat(number(Saturation.temperature(pressure, SEA_LEVEL))).isCloseTo(fahrenheit, within(0.05));

        IF97 table = new IF97(IF97.UnitSystem.SI);
        double pascals = pascals(pressure);
        assertThat((table.specificEnthalpySaturatedVapourP(pascals) - table.specificEnthalpySaturatedLiquidP(pascals))
                        / BTU_PER_LB)
                .isCloseTo(latentHeat, within(0.3));
        assertThat(table.specificVolumeSaturatedVapourP(pascals) / FT3_PER_LB).isCloseTo(volume, within(volume * 1e-3));
    }

    /** Keenan and Keyes, Thermodynamic Properties of Steam (1936): 16 psia, 216.32 F, 967.6 Btu/lb, 24.75 ft3/lb. */
    @Test
    void a_table_sixty_years_older_agrees() throws Exception {
        Quantity sixteen = Quantity.of(16, PSI_ABSOLUTE);
        assertThat(number(Saturation.temperature(Quantity.of(0, PSI), sixteen))).isCloseTo(216.32, within(0.05));
        assertThat(number(Saturation.pressure(Quantity.of("216.32", FAHRENHEIT), Quantity.of("14.7", PSI_ABSOLUTE))))
                .isCloseTo(1.3, within(0.02));

        IF97 table = new IF97(IF97.UnitSystem.SI);
        double pascals = 16 * 6894.757293168;
        assertThat((table.specificEnthalpySaturatedVapourP(pascals) - table.specificEnthalpySaturatedLiquidP(pascals))
                        / BTU_PER_LB)
                .isCloseTo(967.6, within(0.3));
        assertThat(table.specificVolumeSaturatedVapourP(pascals) / FT3_PER_LB).isCloseTo(24.75, within(0.03));
    }

    @Test
    void two_psi_in_the_mountains_is_eight_degrees_cooler_than_by_the_sea() {
        Quantity two = Quantity.of(2, PSI);
        Quantity mountains = Quantity.parse("12.2 psia", ABSOLUTE_PRESSURE);
        assertThat(Saturation.temperature(two, mountains)).isEqualTo(Quantity.of("210.23", FAHRENHEIT));
        assertThat(Saturation.temperature(two, SEA_LEVEL)).isEqualTo(Quantity.of("218.46", FAHRENHEIT));
    }

    @Test
    void the_unit_something_is_given_in_does_not_matter() {
        Quantity barometer = Quantity.parse("24.84 inHg", ABSOLUTE_PRESSURE);
        assertThat(Saturation.temperature(Quantity.parse("32 oz", PRESSURE), barometer))
                .isEqualTo(Saturation.temperature(Quantity.parse("2 psi", PRESSURE), barometer));
        assertThat(Saturation.pressure(Quantity.parse("105 C", TEMPERATURE), barometer))
                .isEqualTo(Saturation.pressure(Quantity.parse("221 F", TEMPERATURE), barometer));
    }

    /**
     * A second formulation that shares no coefficient with IF97: the auxiliary equation of IAPWS SR1-86(1992) (Wagner and
     * Pruss), from memory with high certainty; it is checked itself at the normal boiling point, 373.1243 K.
     */
    @Test
    void an_equation_of_another_kind_agrees_from_deep_vacuum_to_thirty_psi() {
        assertThat(wagnerPruss(373.1243)).isCloseTo(ATMOSPHERE_PASCALS, within(1.0));
        for (int fahrenheit = 100; fahrenheit <= 275; fahrenheit += 5) {
            Quantity steam = Quantity.of(fahrenheit, FAHRENHEIT);
            double expected = (wagnerPruss(steam.in(KELVIN).doubleValue()) - ATMOSPHERE_PASCALS) / 6894.757293168;
            assertThat(number(Saturation.pressure(steam, SEA_LEVEL)))
                    .as("%s", steam)
                    .isCloseTo(expected, within(0.005 + 0.0003 * (expected + 14.7)));
        }
    }

    @Test
    void there_and_back_comes_to_the_same_pressure() {
        for (int tenths = -100; tenths <= 300; tenths++) {
            Quantity gauge = Quantity.of(tenths, PSI).dividedBy(10);
            Quantity steam = Saturation.temperature(gauge, SEA_LEVEL);
            Quantity back = Saturation.pressure(steam, SEA_LEVEL);
            assertThat(back.minus(gauge).abs()).as("%s", gauge).isLessThanOrEqualTo(Quantity.of("0.01", PSI));
        }
    }

    @Test
    void answers_are_rounded_to_a_hundredth_and_exact_from_there() {
        Quantity steam = Saturation.temperature(Quantity.of("1.5", PSI), SEA_LEVEL);
        assertThat(steam.value()
                        .times(gaugeglass.engine.quantity.Rational.of(100))
                        .isWhole())
                .isTrue();
        assertThat(steam.unit()).isEqualTo(FAHRENHEIT);
        assertThat(Saturation.pressure(Quantity.of(200, FAHRENHEIT), SEA_LEVEL)).isLessThan(Quantity.of(0, PSI));
    }

    @Test
    void one_psi_is_about_three_degrees_at_low_pressure() {
        // Common practice, and what a strap-on thermometer must be able to tell apart.
        Quantity two = Saturation.temperature(Quantity.of(2, PSI), SEA_LEVEL);
        Quantity three = Saturation.temperature(Quantity.of(3, PSI), SEA_LEVEL);
        assertThat(number(three.minus(two))).isCloseTo(3, within(0.1));
    }

    @Test
    void what_lies_outside_the_ranges_is_refused_with_the_range() {
        Quantity two = Quantity.of(2, PSI);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Saturation.temperature(two, Quantity.parse("30.1 psia", ABSOLUTE_PRESSURE)))
                .withMessage("barometer of 30.1 psia; expected 8 psia to 16 psia");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Saturation.temperature(two, Quantity.of("7.99", PSI_ABSOLUTE)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Saturation.temperature(Quantity.of(-15, PSI), SEA_LEVEL))
                .withMessageContaining("expected 0.1 psia to 240 psia");
        assertThatIllegalArgumentException().isThrownBy(() -> Saturation.temperature(Quantity.of(230, PSI), SEA_LEVEL));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Saturation.pressure(Quantity.of(32, FAHRENHEIT), SEA_LEVEL))
                .withMessage("steam temperature of 32 F; expected 33 F to 400 F");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Saturation.pressure(Quantity.of(401, FAHRENHEIT), SEA_LEVEL));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Saturation.temperature(two, two))
                .withMessage("barometer: expected absolute pressure, but 2 psi is of gauge pressure");
        assertThat(Saturation.pressure(Quantity.of(33, FAHRENHEIT), SEA_LEVEL).isAbove(Quantity.of(-15, PSI)))
                .isTrue();
        assertThat(Saturation.temperature(two, Quantity.of(16, PSI_ABSOLUTE)))
                .isGreaterThan(Saturation.temperature(two, Quantity.of(8, PSI_ABSOLUTE)));
    }

    @Test
    void many_threads_get_the_same_answers_as_one() {
        List<Quantity> alone = new ArrayList<>();
        for (int i = 0; i < 500; i++) {
            alone.add(Saturation.temperature(Quantity.of(i, PSI).dividedBy(20), SEA_LEVEL));
        }
        List<Quantity> together = IntStream.range(0, 500)
                .parallel()
                .mapToObj(i -> Saturation.temperature(Quantity.of(i, PSI).dividedBy(20), SEA_LEVEL))
                .toList();
        assertThat(together).isEqualTo(alone);
    }

    private static double pascals(Quantity gauge) {
        return ATMOSPHERE_PASCALS
                + gauge.in(gaugeglass.engine.quantity.Unit.PASCAL).doubleValue();
    }

    private static double number(Quantity quantity) {
        return quantity.in(quantity.unit()).doubleValue();
    }

    private static double wagnerPruss(double kelvins) {
        double t = 1 - kelvins / 647.096;
        double sum = -7.85951783 * t
                + 1.84408259 * Math.pow(t, 1.5)
                - 11.7866497 * Math.pow(t, 3)
                + 22.6807411 * Math.pow(t, 3.5)
                - 15.9618719 * Math.pow(t, 4)
                + 1.80122502 * Math.pow(t, 7.5);
        return 22.064e6 * Math.exp(647.096 / kelvins * sum);
    }
}
