package gaugeglass.steam.reckon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import gaugeglass.engine.quantity.Dimension;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import org.junit.jupiter.api.Test;

class PressuresTest {

    /** 24 oz, 41.52 inH2O and 10.34 kPa follow from NIST SP 811 (from memory, high certainty); 3.054 inHg likewise. */
    @Test
    void one_and_a_half_psi_in_five_units() {
        assertThat(Pressures.of(Quantity.parse("1-1/2 psi", Dimension.PRESSURE)).shown())
                .extracting(Quantity::toString)
                .containsExactly("1.5 psi", "24 oz/in2", "41.52 inH2O", "3.054 inHg", "10.34 kPa");
    }

    @Test
    void the_small_dial_in_inches_of_water_is_a_little_over_a_pound() {
        // Common practice says "a little more than a pound"; 1.084 psi by NIST SP 811.
        Pressures pressures = Pressures.of(Quantity.of(30, Unit.INCH_OF_WATER));
        assertThat(pressures.shown().get(0)).isEqualTo(Quantity.of("1.084", Unit.PSI));
        assertThat(pressures.psi()).isEqualTo(Quantity.of(30, Unit.INCH_OF_WATER));
    }

    @Test
    void vacuum_keeps_its_sign_in_every_unit() {
        assertThat(Pressures.of(Quantity.of(-5, Unit.INCH_OF_MERCURY)).shown()).allMatch(shown -> shown.signum() < 0);
    }

    @Test
    void what_is_no_gauge_pressure_or_not_one_pressure_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Pressures.of(Quantity.parse("14.7 psia", Dimension.ABSOLUTE_PRESSURE)))
                .withMessage("14.7 psia is of absolute pressure; expected gauge pressure");
        Pressures one = Pressures.of(Quantity.of(1, Unit.PSI));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Pressures(
                        one.psi(),
                        Quantity.of(15, Unit.OUNCE_PER_SQUARE_INCH),
                        one.inchesOfWater(),
                        one.inchesOfMercury(),
                        one.kilopascals()));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Pressures(
                        one.ounces(), one.psi(), one.inchesOfWater(), one.inchesOfMercury(), one.kilopascals()));
    }
}
