package gaugeglass.steam;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.book.Limit;
import gaugeglass.engine.quantity.Dimension;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.steam.observed.Gauges.DialUnit;
import gaugeglass.steam.proof.SteamProof;
import gaugeglass.steam.reckon.GaugeGrade;
import gaugeglass.steam.reckon.GaugeScale;
import gaugeglass.steam.reckon.ReturnHead;
import gaugeglass.steam.reckon.Saturation;
import gaugeglass.steam.reckon.StandardAtmosphere;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The figures that decide on gauges, siphons and pressure controls, beside where they come from. */
class PressureFiguresTest {
    private static final Quantity BAROMETER = Quantity.of("12.2", Unit.PSI_ABSOLUTE);

    private static Quantity limit(String id) {
        Limit limit = SteamProof.stored().book().limits().get(id);
        return limit.quantity();
    }

    private static Quantity psi(String number) {
        return Quantity.of(number, Unit.PSI);
    }

    /** New York Industrial Code Rule 4; Indiana and Michigan boiler rules: a dial of 30 psi or more. */
    @Test
    void the_boilers_own_dial_goes_to_thirty_psi_at_least() {
        assertThat(limit("gauge.dial-least")).isEqualTo(psi("30"));
    }

    /** North Dakota boiler rules: not more than 60 psi. */
    @Test
    void where_a_dial_is_capped_it_is_at_sixty_psi() {
        assertThat(limit("gauge.dial-most")).isEqualTo(psi("60"));
    }

    /** ASME Section IV, HG-605 (from memory, high certainty); District of Columbia boiler rules: not above 15 psi. */
    @Test
    void no_control_is_set_above_fifteen_psi() {
        assertThat(limit("control.legal-pressure"))
                .isEqualTo(psi("15"))
                .isEqualTo(psi("15").inUnit(Unit.KILOPASCAL));
    }

    /** A state weatherization field guide: 2 psi at most for heating, about 8 ounces for vapor. */
    @Test
    void heating_takes_two_psi_at_most_and_vapor_eight_ounces() {
        assertThat(limit("control.heating-most")).isEqualTo(psi("2"));
        assertThat(limit("control.vapor-most")).isEqualTo(Quantity.of(8, Unit.OUNCE_PER_SQUARE_INCH));
    }

    /** ASME B40.100 (from memory, high certainty): the middle half of the dial ends at three quarters. */
    @Test
    void a_low_range_dial_is_worked_up_to_the_end_of_its_middle_half() {
        assertThat(limit("gauge.low-range-most-share")).isEqualTo(Quantity.of(75, Unit.PERCENT));
    }

    /** ASME B40.100, grade B, 3-2-3 % of span (from memory, high certainty): 1.5 psi on 0-30 psi is known within 0.9 psi. */
    @Test
    void the_ordinary_dial_is_in_doubt_by_more_than_the_limit_at_a_pound_and_a_half() {
        Quantity doubt = GaugeScale.to(psi("30")).uncertaintyAt(psi("1.5"), GaugeGrade.GRADE_B);
        assertThat(doubt).isEqualTo(psi("0.9"));
        assertThat(doubt.ratioTo(psi("1.5")))
                .isGreaterThan(limit("gauge.most-doubt").valueIn(Unit.TIMES));
    }

    /** NIST SP 811, conventional inch of water 249.0889 Pa and psi 6894.757 Pa: 30 inches are 1.084 psi. */
    @Test
    void thirty_inches_of_water_are_a_little_over_one_psi() {
        Quantity top = Quantity.of(30, DialUnit.INCHES_OF_WATER.unit());
        assertThat(top.in(Unit.PSI, 4)).isEqualByComparingTo("1.084");
        assertThat(top).isLessThan(limit("gauge.dial-least"));
    }

    /** NIST SP 811: 1 psi = 16 oz/in2 = 27.680 inH2O = 2.0360 inHg = 6.8948 kPa = 68.948 mbar. */
    @ParameterizedTest(name = "{0}: {1} to the psi")
    @CsvSource({
        "PSI, 1.0000",
        "OUNCES, 16.000",
        "INCHES_OF_WATER, 27.680",
        "INCHES_OF_MERCURY, 2.0360",
        "KILOPASCALS, 6.8948",
        "MILLIBARS, 68.948",
        "BARS, 0.068948"
    })
    void each_printed_unit_stands_for_its_pressure(DialUnit printed, String toThePsi) {
        assertThat(psi("1").in(printed.unit(), 5)).isEqualByComparingTo(toThePsi);
    }

    /** IAPWS-IF97 saturation: 2 psi on the gauge is 210.23 F at 12.2 psia and 218.46 F at sea level. */
    @Test
    void two_psi_on_a_hill_are_cooler_than_by_the_sea() {
        assertThat(Saturation.temperature(psi("2"), BAROMETER)
                        .in(Unit.FAHRENHEIT)
                        .doubleValue())
                .isCloseTo(210.23, org.assertj.core.data.Offset.offset(0.05));
        assertThat(Saturation.temperature(psi("2"), Saturation.STANDARD_ATMOSPHERE)
                        .in(Unit.FAHRENHEIT)
                        .doubleValue())
                .isCloseTo(218.46, org.assertj.core.data.Offset.offset(0.05));
    }

    /** 12.2 psia is the weather about 5000 ft (U.S. Standard Atmosphere 1976, from memory, high certainty). */
    @Test
    void the_barometer_of_the_hill_lies_inside_what_its_elevation_gives() {
        Quantity average = StandardAtmosphere.at(Quantity.of(5000, Unit.FOOT));
        Quantity swing = limit("site.weather-swing");
        assertThat(BAROMETER).isBetween(average.minus(swing), average.plus(swing));
        assertThat(Saturation.temperature(psi("2"), average)).isLessThan(Quantity.of(211, Unit.FAHRENHEIT));
    }

    /** The handbook rule for small one-pipe gravity systems (from memory, high certainty): 14 + 6 + 8 = 28 in. */
    @Test
    void one_pipe_wants_twenty_eight_inches() {
        Rational drop = limit("return.one-pipe-drop").valueIn(Unit.PSI);
        Quantity needed = limit("return.one-pipe-head-per-psi")
                .times(drop)
                .plus(limit("return.one-pipe-friction"))
                .plus(limit("return.one-pipe-margin"));
        assertThat(needed).isEqualTo(Quantity.of(28, Unit.INCH));
    }

    /** Density of saturated water, IAPWS-IF97: 27.7 in per psi at 60 F, 28.9 in at 212 F. */
    @Test
    void heads_per_psi_are_those_of_cold_and_of_hot_water() {
        Quantity cold = ReturnHead.perPsi(Quantity.of(60, Unit.FAHRENHEIT));
        Quantity hot = ReturnHead.perPsi(Quantity.of(212, Unit.FAHRENHEIT));
        assertThat(limit("return.one-pipe-head-per-psi")).isBetween(cold, hot);
        assertThat(limit("return.two-pipe-head-per-psi"))
                .isBetween(hot, hot.plus(Quantity.parse("1.5 in", Dimension.LENGTH)));
    }
}
