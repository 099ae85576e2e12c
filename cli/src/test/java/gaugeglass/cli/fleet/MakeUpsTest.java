package gaugeglass.cli.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.steam.reckoned.MakeUpYear;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The arithmetic of what is usual, and what is kept of many years. */
class MakeUpsTest {
    /** The seventh of the definitions that Hyndman and Fan list (The American Statistician, 1996): 1 + (n - 1) p, from memory. */
    @ParameterizedTest
    @CsvSource({"10, 3.25, 5.5, 7.75", "11, 3.5, 6, 8.5", "12, 3.75, 6.5, 9.25", "13, 4, 7, 10", "1, 1, 1, 1"})
    void quarters_of_the_numbers_from_one_on_lie_where_the_definition_has_them(
            int to, String lower, String middle, String upper) {
        List<Rational> numbers = new ArrayList<>();
        for (int i = to; i > 0; i--) {
            numbers.add(Rational.of(i));
        }

        assertThat(List.of(
                        MakeUps.told(MakeUps.quantile(numbers, 1, 4), 2),
                        MakeUps.told(MakeUps.quantile(numbers, 1, 2), 2),
                        MakeUps.told(MakeUps.quantile(numbers, 3, 4), 2)))
                .usingElementComparator((a, b) -> new java.math.BigDecimal(a).compareTo(new java.math.BigDecimal(b)))
                .containsExactly(lower, middle, upper);
    }

    private static MakeUpYear year(int year, int gallons) {
        return new MakeUpYear(
                LocalDate.of(year, 9, 14), 365, Quantity.of(gallons * 365L, Unit.GALLON), Optional.empty());
    }

    private static List<String> kept(WaterYears years) {
        List<String> all = new ArrayList<>();
        for (int i = 0; i < years.count(); i++) {
            all.add(years.year(i) + ":" + MakeUps.told(years.perDay(i), 0));
        }
        return all;
    }

    @Test
    void the_later_visit_counts_for_a_year_in_whatever_order_they_are_read() {
        WaterYears early = WaterYears.of(List.of(year(2025, 1), year(2024, 2), year(2023, 3)), 100);
        WaterYears late = WaterYears.of(List.of(year(2026, 4), year(2025, 5)), 200);

        assertThat(kept(early.and(late, 200))).containsExactly("2026:4", "2025:5", "2024:2", "2023:3");
        assertThat(kept(late.and(early, 100))).containsExactly("2026:4", "2025:5", "2024:2", "2023:3");
    }

    @Test
    void of_two_visits_on_one_day_the_one_read_later_counts_alone() {
        WaterYears wrong = WaterYears.of(List.of(year(2026, 9), year(2025, 9)), 200);
        WaterYears right = WaterYears.of(List.of(year(2026, 4)), 200);

        assertThat(kept(wrong.and(right, 200))).containsExactly("2026:4");
    }

    @Test
    void no_more_than_the_latest_six_years_are_kept() {
        WaterYears all = WaterYears.of(List.of(), 0);
        for (int i = 2010; i < 2030; i++) {
            all = all.and(WaterYears.of(List.of(year(i, i)), i), i);
        }

        assertThat(kept(all)).hasSize(6).startsWith("2029:2029").endsWith("2024:2024");
        assertThat(all.isTold(2029)).isTrue();
        assertThat(all.isTold(2030)).isFalse();
    }
}
