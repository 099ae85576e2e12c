package gaugeglass.steam.reckon;

import static gaugeglass.engine.quantity.Unit.INCH;
import static gaugeglass.engine.quantity.Unit.INCH_OF_MERCURY;
import static gaugeglass.engine.quantity.Unit.INCH_OF_WATER;
import static gaugeglass.engine.quantity.Unit.OUNCE_PER_SQUARE_INCH;
import static gaugeglass.engine.quantity.Unit.PERCENT;
import static gaugeglass.engine.quantity.Unit.PSI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import gaugeglass.engine.quantity.Dimension;
import gaugeglass.engine.quantity.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Grades are those of ASME B40.100, from memory with high certainty. */
class GaugeScaleTest {
    private static final GaugeScale THIRTY = GaugeScale.to(Quantity.of(30, PSI));

    @Test
    void the_ordinary_dial_does_not_know_a_heating_pressure_within_half_of_it() {
        Quantity working = Quantity.of("1.5", PSI);
        assertThat(THIRTY.shareAt(working)).isEqualTo(Quantity.of(5, PERCENT));
        assertThat(THIRTY.uncertaintyAt(working, GaugeGrade.GRADE_B)).isEqualTo(Quantity.of("0.9", PSI));
    }

    @ParameterizedTest(name = "grade {0}: {1} % at the ends, {2} % in the middle")
    @CsvSource({"4A, 0.1, 0.1", "3A, 0.25, 0.25", "2A, 0.5, 0.5", "1A, 1, 1", "A, 2, 1", "B, 3, 2", "C, 4, 3", "D, 5, 5"
    })
    void grades_by_part_of_the_scale(String mark, String ends, String middle) {
        GaugeGrade grade = GaugeGrade.valueOf("GRADE_" + mark);
        GaugeScale hundred = GaugeScale.to(Quantity.of(100, PSI));
        assertThat(grade.mark()).isEqualTo(mark);
        for (int low : new int[] {0, 10, 25}) {
            assertThat(hundred.uncertaintyAt(Quantity.of(low, PSI), grade)).isEqualTo(Quantity.of(ends, PSI));
            assertThat(hundred.uncertaintyAt(Quantity.of(100 - low, PSI), grade))
                    .isEqualTo(Quantity.of(ends, PSI));
        }
        for (String inside : new String[] {"25.001", "50", "74.999"}) {
            assertThat(hundred.uncertaintyAt(Quantity.of(inside, PSI), grade)).isEqualTo(Quantity.of(middle, PSI));
        }
    }

    @Test
    void shares_are_exact_whatever_the_units_and_go_beyond_the_ends() {
        GaugeScale low = GaugeScale.to(Quantity.of(30, INCH_OF_WATER));
        assertThat(low.shareAt(Quantity.of("22.5", INCH_OF_WATER))).isEqualTo(Quantity.of(75, PERCENT));
        assertThat(THIRTY.shareAt(Quantity.of(24, OUNCE_PER_SQUARE_INCH))).isEqualTo(Quantity.of(5, PERCENT));
        assertThat(low.shareAt(Quantity.of(2, PSI))).isGreaterThan(Quantity.of(100, PERCENT));
        assertThat(THIRTY.shareAt(Quantity.of(-3, PSI))).isEqualTo(Quantity.of(-10, PERCENT));
    }

    @Test
    void a_compound_scale_counts_from_its_vacuum_end() {
        GaugeScale compound = new GaugeScale(
                Quantity.parse("30 inHg vacuum", Dimension.PRESSURE), Quantity.parse("15 psi", Dimension.PRESSURE));
        assertThat(compound.shareAt(Quantity.of(-30, INCH_OF_MERCURY))).isEqualTo(Quantity.of(0, PERCENT));
        assertThat(compound.shareAt(Quantity.of(15, PSI))).isEqualTo(Quantity.of(100, PERCENT));
        // 30 inHg is 14.73 psi (conventional, NIST SP 811), so zero is just below the middle.
        assertThat(compound.shareAt(Quantity.of(0, PSI)).rounded(1)).isEqualTo(Quantity.of("49.6", PERCENT));
    }

    @Test
    void impossible_scales_and_readings_off_the_scale_are_refused() {
        assertThatIllegalArgumentException().isThrownBy(() -> GaugeScale.to(Quantity.of(0, PSI)));
        assertThatIllegalArgumentException().isThrownBy(() -> GaugeScale.to(Quantity.of(-5, PSI)));
        assertThatIllegalArgumentException().isThrownBy(() -> GaugeScale.to(Quantity.of(5, INCH)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new GaugeScale(Quantity.of(1, PSI), Quantity.of(30, PSI)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> THIRTY.uncertaintyAt(Quantity.of("30.1", PSI), GaugeGrade.GRADE_B))
                .withMessage("reading of 30.1 psi; expected 0 psi to 30 psi");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> THIRTY.uncertaintyAt(Quantity.of("-0.1", PSI), GaugeGrade.GRADE_B));
        assertThatIllegalArgumentException().isThrownBy(() -> THIRTY.shareAt(Quantity.of(1, INCH)));
    }
}
