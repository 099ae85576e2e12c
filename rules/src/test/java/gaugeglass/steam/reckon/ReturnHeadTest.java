package gaugeglass.steam.reckon;

import static gaugeglass.engine.quantity.Unit.FAHRENHEIT;
import static gaugeglass.engine.quantity.Unit.FOOT;
import static gaugeglass.engine.quantity.Unit.INCH;
import static gaugeglass.engine.quantity.Unit.OUNCE_PER_SQUARE_INCH;
import static gaugeglass.engine.quantity.Unit.PSI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import gaugeglass.engine.quantity.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReturnHeadTest {

    /**
     * Densities of water, lb/ft3, as handbooks print them: 62.37 at 60 F, 59.83 at 212 F (from memory, high certainty;
     * NIST Chemistry WebBook gives 999.02 and 958.4 kg/m3). One psi over a density is 1728 / density inches.
     */
    @ParameterizedTest
    @CsvSource({"60, 62.37, 27.7", "212, 59.83, 28.9"})
    void hot_water_must_stand_higher(int fahrenheit, double poundsPerCubicFoot, double handbookInches) {
        double inches =
                ReturnHead.perPsi(Quantity.of(fahrenheit, FAHRENHEIT)).in(INCH).doubleValue();
        assertThat(inches).isCloseTo(1728 / poundsPerCubicFoot, within(0.02));
        assertThat(inches).isCloseTo(handbookInches, within(0.05));
    }

    @Test
    void the_factor_is_rounded_once_and_all_after_it_is_exact() {
        Quantity hot = Quantity.of(212, FAHRENHEIT);
        assertThat(ReturnHead.perPsi(hot)).isEqualTo(Quantity.of("28.88", INCH));
        assertThat(ReturnHead.forPressure(Quantity.of(8, OUNCE_PER_SQUARE_INCH), hot))
                .isEqualTo(Quantity.of("14.44", INCH))
                .isEqualTo(ReturnHead.perPsi(hot).dividedBy(2));
        assertThat(ReturnHead.forPressure(Quantity.of(0, PSI), hot)).isEqualTo(Quantity.of(0, INCH));
        for (int ounces = 0; ounces <= 480; ounces += 7) {
            Quantity pressure = Quantity.of(ounces, OUNCE_PER_SQUARE_INCH);
            assertThat(ReturnHead.pressureOf(ReturnHead.forPressure(pressure, hot), hot))
                    .isEqualTo(pressure);
        }
    }

    @Test
    void what_lies_outside_the_ranges_is_refused() {
        Quantity hot = Quantity.of(212, FAHRENHEIT);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ReturnHead.forPressure(Quantity.of(-1, PSI), hot))
                .withMessage("pressure of -1 psi; expected 0 psi to 30 psi");
        assertThatIllegalArgumentException().isThrownBy(() -> ReturnHead.forPressure(Quantity.of("30.01", PSI), hot));
        assertThatIllegalArgumentException().isThrownBy(() -> ReturnHead.perPsi(Quantity.of(39, FAHRENHEIT)));
        assertThatIllegalArgumentException().isThrownBy(() -> ReturnHead.perPsi(Quantity.of(276, FAHRENHEIT)));
        assertThatIllegalArgumentException().isThrownBy(() -> ReturnHead.pressureOf(Quantity.of(76, FOOT), hot));
        assertThatIllegalArgumentException().isThrownBy(() -> ReturnHead.perPsi(Quantity.of(60, INCH)));
        assertThat(ReturnHead.perPsi(Quantity.of(40, FAHRENHEIT)))
                .isLessThan(ReturnHead.perPsi(Quantity.of(275, FAHRENHEIT)));
    }
}
