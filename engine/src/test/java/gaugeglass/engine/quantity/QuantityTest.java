package gaugeglass.engine.quantity;

import static gaugeglass.engine.quantity.Unit.*;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.MathContext;
import org.junit.jupiter.api.Test;

class QuantityTest {

    @Test
    void sixteen_ounces_per_square_inch_equal_one_psi_and_hash_alike() {
        Quantity ounces = Quantity.of(16, OUNCE_PER_SQUARE_INCH);
        Quantity pound = Quantity.of(1, PSI);
        assertThat(ounces).isEqualTo(pound).hasSameHashCodeAs(pound).isEqualByComparingTo(pound);
        assertThat(ounces.isAbove(pound)).isFalse();
        assertThat(ounces.isBelow(pound)).isFalse();
        assertThat(ounces.isAtLeast(pound)).isTrue();
        assertThat(ounces.isAtMost(pound)).isTrue();
    }

    @Test
    void a_product_that_doubles_get_wrong_is_exact() {
        assertThat(0.07 * 100 > 7.0).as("what doubles say").isTrue();
        assertThat(Quantity.of("0.07", PSI).times(100).isAbove(Quantity.of(7, PSI)))
                .isFalse();
    }

    @Test
    void neighbours_of_a_limit_are_told_apart_at_any_closeness() {
        Quantity limit = Quantity.of(15, PSI);
        Quantity justOver = Quantity.of("15.0000000000001", PSI).inUnit(KILOPASCAL);
        assertThat(justOver.isAbove(limit)).isTrue();
        assertThat(Quantity.of(15, PSI).inUnit(INCH_OF_MERCURY).isAbove(limit)).isFalse();
    }

    @Test
    void different_dimensions_are_unequal_and_refuse_to_be_ordered_naming_both() {
        Quantity pressure = Quantity.of(5, PSI);
        Quantity length = Quantity.of(5, INCH);
        assertThat(pressure).isNotEqualTo(length);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> pressure.compareTo(length))
                .withMessage("cannot compare 5 psi (gauge pressure) and 5 in (length)");
        assertThatIllegalArgumentException().isThrownBy(() -> pressure.plus(length));
        assertThatIllegalArgumentException().isThrownBy(() -> pressure.minus(length));
        assertThatIllegalArgumentException().isThrownBy(() -> pressure.ratioTo(length));
        assertThatIllegalArgumentException().isThrownBy(() -> pressure.in(INCH));
    }

    @Test
    void an_ounce_of_weight_is_no_ounce_of_pressure() {
        assertThat(Quantity.of(8, OUNCE)).isNotEqualTo(Quantity.of(8, OUNCE_PER_SQUARE_INCH));
    }

    @Test
    void a_sum_is_in_the_first_ones_unit() {
        assertThat(Quantity.of(1, PSI).plus(Quantity.of(8, OUNCE_PER_SQUARE_INCH)))
                .hasToString("1.5 psi");
        assertThat(Quantity.of(1, FOOT).minus(Quantity.of(3, INCH))).hasToString("0.75 ft");
    }

    @Test
    void temperatures_differ_by_a_difference_and_do_not_add_up() {
        Quantity boiling = Quantity.of(212, FAHRENHEIT);
        Quantity tenCelsius = Quantity.of(10, CELSIUS_DEGREE);
        assertThat(boiling.minus(Quantity.of(100, CELSIUS))).isEqualTo(Quantity.of(0, FAHRENHEIT_DEGREE));
        assertThat(boiling.minus(Quantity.of(200, FAHRENHEIT))).isEqualTo(Quantity.of(12, FAHRENHEIT_DEGREE));
        assertThat(boiling.plus(tenCelsius)).isEqualTo(Quantity.of(230, FAHRENHEIT));
        assertThat(tenCelsius.plus(boiling)).isEqualTo(Quantity.of(230, FAHRENHEIT));
        assertThat(boiling.minus(tenCelsius)).isEqualTo(Quantity.of(194, FAHRENHEIT));
        assertThatIllegalArgumentException().isThrownBy(() -> boiling.plus(boiling));
        assertThatIllegalArgumentException().isThrownBy(() -> tenCelsius.minus(boiling));
        assertThatIllegalArgumentException().isThrownBy(() -> boiling.times(2));
        assertThatIllegalArgumentException().isThrownBy(() -> boiling.ratioTo(boiling));
    }

    @Test
    void an_absolute_pressure_and_a_gauge_pressure_make_an_absolute_one() {
        Quantity air = Quantity.of("14.7", PSI_ABSOLUTE);
        Quantity gauge = Quantity.of(32, OUNCE_PER_SQUARE_INCH);
        assertThat(gauge.plus(air)).isEqualTo(Quantity.of("16.7", PSI_ABSOLUTE));
        assertThat(air.plus(gauge).minus(air)).isEqualTo(gauge);
        assertThat(air).isNotEqualTo(Quantity.of("14.7", PSI));
    }

    @Test
    void a_typed_quantity_prints_as_typed_and_a_reckoned_one_in_short_form() {
        assertThat(Quantity.parse(" 1-1/2\u00a0in. ", Dimension.LENGTH)).hasToString("1-1/2 in.");
        assertThat(Quantity.parse("8 oz", Dimension.PRESSURE).times(2)).hasToString("16 oz/in2");
        assertThat(Quantity.of(1, PSI).inUnit(INCH_OF_WATER)).hasToString("27.68 inH2O");
        assertThat(Quantity.of(400_000, BTU_PER_HOUR)).hasToString("400000 Btu/h");
        assertThat(Quantity.of("-0.020", INCH_OF_WATER)).hasToString("-0.02 inH2O");
        assertThat(Quantity.of(0, PSI)).hasToString("0 psi");
    }

    @Test
    void a_typed_text_is_kept_only_while_it_is_true() {
        Quantity typed = Quantity.parse("8 oz", Dimension.PRESSURE);
        assertThat(typed.typed()).contains("8 oz");
        assertThat(typed.inUnit(OUNCE_PER_SQUARE_INCH).typed()).contains("8 oz");
        assertThat(typed.inUnit(PSI).typed()).isEmpty();
        assertThat(Quantity.of(8, OUNCE).typed()).isEmpty();
    }

    @Test
    void converted_numbers_are_rounded_to_the_digits_asked_for() {
        Quantity quantity = Quantity.of("1.5", PSI);
        assertThat(quantity.in(INCH_OF_WATER, 4)).isEqualTo(new BigDecimal("41.52"));
        assertThat(quantity.in(KILOPASCAL, 5)).isEqualTo(new BigDecimal("10.342"));
        assertThat(quantity.in(PSI, 7)).isEqualByComparingTo("1.5");
        assertThat(quantity.in(PASCAL, MathContext.DECIMAL32)).isEqualTo(new BigDecimal("10342.14"));
        assertThatIllegalArgumentException().isThrownBy(() -> quantity.in(PASCAL, MathContext.UNLIMITED));
    }

    @Test
    void ratios_and_shares_are_exact() {
        assertThat(Quantity.of(1, PSI).ratioTo(Quantity.of(3, PSI))).isEqualTo(Rational.of(1, 3));
        assertThat(Quantity.of(30, PSI).dividedBy(7).times(7)).isEqualTo(Quantity.of(30, PSI));
        assertThatThrownBy(() -> Quantity.of(1, PSI).ratioTo(Quantity.of(0, PSI)))
                .isInstanceOf(ArithmeticException.class);
        assertThat(Quantity.of(-3, PSI).abs()).isEqualTo(Quantity.of(3, PSI));
    }

    @Test
    void rounding_takes_halves_away_from_zero_and_is_exact_after() {
        assertThat(Quantity.of("0.125", PSI).rounded(2)).isEqualTo(Quantity.of("0.13", PSI));
        assertThat(Quantity.of("-0.125", PSI).rounded(2)).isEqualTo(Quantity.of("-0.13", PSI));
        assertThat(Quantity.of("0.1249999", PSI).rounded(2)).isEqualTo(Quantity.of("0.12", PSI));
        assertThat(Quantity.of("1/3", PSI).rounded(0)).isEqualTo(Quantity.of(0, PSI));
        assertThat(Quantity.of(12_345, PSI).roundedToDigits(3)).isEqualTo(Quantity.of(12_300, PSI));
        assertThat(Quantity.of("1/3", PSI).roundedToDigits(3)).isEqualTo(Quantity.of("0.333", PSI));
    }
}
