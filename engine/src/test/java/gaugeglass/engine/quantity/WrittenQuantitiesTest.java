package gaugeglass.engine.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The corpus of written quantities: what is taken and as what, what is refused and with which
 * words.
 */
class WrittenQuantitiesTest {

    @ParameterizedTest(name = "{0}: {1}")
    @CsvFileSource(resources = "taken.txt", delimiter = '|', quoteCharacter = '\0')
    void is_taken_as(Dimension expected, String written, String number, Unit unit) {
        Quantity quantity = Quantity.parse(unescaped(written), expected);
        assertThat(quantity.unit()).isEqualTo(unit);
        assertThat(quantity.value()).isEqualTo(fraction(number));
        assertThat(Quantity.parse(quantity.toString(), expected)).isEqualTo(quantity);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvFileSource(resources = "refused.txt", delimiter = '|', quoteCharacter = '\0', emptyValue = "")
    void is_refused_with(Dimension expected, String written, String message) {
        QuantityFormatException refusal =
                catchThrowableOfType(QuantityFormatException.class, () -> Quantity.parse(unescaped(written), expected));
        assertThat(refusal).as("must be refused").isNotNull();
        assertThat(refusal.getMessage()).isEqualTo(unescaped(message));
        assertThat(refusal.getMessage().chars()).as("no control characters").allMatch(c -> c >= ' ' && c != 0x7f);
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void every_spelling_of_a_unit_is_read_as_that_unit_and_as_no_other(Unit unit) {
        assertThat(unit.spellings()).isNotEmpty().doesNotHaveDuplicates();
        for (String spelling : unit.spellings()) {
            for (String written : new String[] {"2 " + spelling, "2" + spelling, "2 " + spelling.toUpperCase()}) {
                assertThat(Quantity.parse(written, unit.dimension()).unit())
                        .as(written)
                        .isEqualTo(unit);
            }
            for (Unit other : Unit.of(unit.dimension())) {
                assertThat(other == unit || !other.spellings().contains(spelling))
                        .as("%s is a spelling of %s and of %s", spelling, unit, other)
                        .isTrue();
            }
        }
        assertThat(Unit.spelled(unit.symbol(), unit.dimension()))
                .as("its own symbol")
                .contains(unit);
        assertThat(unit.symbol().chars()).as("ASCII").allMatch(c -> c >= ' ' && c < 0x7f);
    }

    @Test
    void a_refusal_keeps_its_parts_apart() {
        QuantityFormatException refusal =
                catchThrowableOfType(QuantityFormatException.class, () -> Quantity.parse("5 pis", Dimension.PRESSURE));
        assertThat(refusal.typed()).isEqualTo("5 pis");
        assertThat(refusal.problem()).isEqualTo("no unit of gauge pressure is spelled 'pis'");
        assertThat(refusal.expected())
                .isEqualTo("a number and a unit of gauge pressure (psi, oz/in2, inH2O, inHg or kPa)");
        assertThat(refusal.nearest()).contains("psi");
    }

    private static String unescaped(String text) {
        StringBuilder result = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            if (text.startsWith("\\u", i)) {
                result.append((char) Integer.parseInt(text.substring(i + 2, i + 6), 16));
                i += 5;
            } else {
                result.append(text.charAt(i));
            }
        }
        return result.toString();
    }

    private static Rational fraction(String number) {
        int stroke = number.indexOf('/');
        return stroke < 0
                ? Rational.of(new java.math.BigDecimal(number))
                : Rational.of(
                        Long.parseLong(number.substring(0, stroke)), Long.parseLong(number.substring(stroke + 1)));
    }
}
