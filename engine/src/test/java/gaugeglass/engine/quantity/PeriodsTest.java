package gaugeglass.engine.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.time.Period;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PeriodsTest {

    @ParameterizedTest
    @CsvSource({
        "10 years, P10Y",
        "1 year, P1Y",
        "10yr, P10Y",
        "10 yrs., P10Y",
        "6 months, P6M",
        "6 mo, P6M",
        "7 days, P7D",
        "1 day, P1D",
        "2 weeks, P14D",
        "0 days, P0D",
        "' 3 Years ', P3Y",
        "90 d, P90D",
        "5 y, P5Y",
    })
    void is_taken_as(String written, Period period) {
        assertThat(Periods.parse(written)).isEqualTo(period);
    }

    @Test
    void a_printed_period_reads_back_as_the_same() {
        for (int count : new int[] {0, 1, 2, 10, 9999}) {
            for (Period period : new Period[] {Period.ofYears(count), Period.ofMonths(count), Period.ofDays(count)}) {
                assertThat(Periods.parse(Periods.print(period))).isEqualTo(period);
            }
        }
        assertThat(Periods.print(Period.ofYears(1))).isEqualTo("1 year");
        assertThat(Periods.print(Period.ofMonths(6))).isEqualTo("6 months");
        assertThatIllegalArgumentException().isThrownBy(() -> Periods.print(Period.of(1, 6, 0)));
        assertThatIllegalArgumentException().isThrownBy(() -> Periods.print(Period.ofDays(-1)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "''              | nothing is written                             |",
                "years           | does not begin with a whole number             |",
                "-1 year         | does not begin with a whole number             |",
                "10              | a unit is needed                               |",
                "1.5 years       | not one whole number and one unit       |",
                "1,5 years       | not one whole number and one unit              |",
                "1 1/2 years     | not one whole number and one unit              |",
                "1\u00bd years   | not one whole number and one unit              |",
                "1 year 6 months | not one whole number and one unit              |",
                "10 yaers        | no calendar unit is spelled 'yaers'            | years",
                "6 mnths         | no calendar unit is spelled 'mnths'            | months",
                "6 m             | m may be minutes or months                     |",
                "6 hours         | no calendar unit is spelled 'hours'            |",
                "P10Y            | does not begin with a whole number             |",
                "10000 days      | longer than anything lasts                     |",
                "1 ye\u0007ar    | no calendar unit is spelled 'ye?ar'            | year",
            },
            quoteCharacter = '\u0001')
    void is_refused_with(String written, String problem, String nearest) {
        String text = "''".equals(written) ? "" : written;
        QuantityFormatException refusal =
                catchThrowableOfType(QuantityFormatException.class, () -> Periods.parse(text));
        assertThat(refusal).as("must be refused").isNotNull();
        assertThat(refusal.problem()).isEqualTo(problem);
        assertThat(refusal.nearest().orElse(null)).isEqualTo(nearest);
        assertThat(refusal.getMessage())
                .contains("a whole number and days, weeks, months or years")
                .doesNotContain("\u0007");
    }
}
