package gaugeglass.steam.reckon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import gaugeglass.engine.quantity.Rational;
import java.math.MathContext;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FormulaTest {
    private static final Map<String, Rational> VALUES =
            Map.of("a", Rational.of(3), "b", Rational.of(1, 3), "O2", Rational.of(-2), "x1", Rational.of(5));

    @ParameterizedTest
    @CsvSource({
        "1 + 2 x 3, 7",
        "(1 + 2) x 3, 9",
        "12 / 3 / 2, 2",
        "12 - 3 - 2, 7",
        "a x b, 1",
        "a - O2, 5",
        "2 x 3^2, 18",
        "2^(0 - 2), 0.25",
        "x1 x x1, 25",
        "1 / 8, 0.125",
        "sqrt(16), 4",
        "sqrt(a^2 + 4^2), 5"
    })
    void is_worked_out_in_the_usual_order(String formula, String value) {
        assertThat(Formula.value(formula, VALUES)).hasToString(value);
    }

    @Test
    void thirds_stay_exact_and_roots_have_twelve_digits() {
        assertThat(Formula.value("b + b + b", VALUES)).isEqualTo(Rational.ONE);
        assertThat(Formula.value("sqrt(2)", VALUES))
                .hasToString(Rational.of(141421356237L, 100000000000L).toString());
        assertThat(number("9^0.5")).isCloseTo(3, within(1e-11));
        assertThat(number("148.46^0.266")).isCloseTo(Math.pow(148.46, 0.266), within(1e-10));
    }

    @Test
    void numbers_are_put_in_place_of_names() {
        assertThat(Formula.withNumbers("a x sqrt(b) - O2 + unknown", VALUES))
                .isEqualTo("3 x sqrt(0.333333) - (-2) + unknown");
    }

    @Test
    void what_is_no_formula_is_a_fault() {
        for (String wrong : new String[] {"", "1 +", "(1", "1)", "1 2", "c", "a b", "+", "^2"}) {
            assertThatIllegalStateException().as(wrong).isThrownBy(() -> Formula.value(wrong, VALUES));
        }
        assertThatThrownBy(() -> Formula.value("1 / (a - 3)", VALUES)).isInstanceOf(ArithmeticException.class);
    }

    private static double number(String formula) {
        return Formula.value(formula, VALUES)
                .toBigDecimal(MathContext.DECIMAL64)
                .doubleValue();
    }
}
