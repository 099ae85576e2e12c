package gaugeglass.steam;

import static gaugeglass.steam.proof.OneBoiler.RULEBOOK;
import static gaugeglass.steam.proof.OneBoiler.seen;
import static gaugeglass.steam.proof.OneBoiler.visit;
import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.steam.reckoned.GrossOutputReckoning;
import gaugeglass.steam.reckoned.MakeUpYear;
import gaugeglass.steam.reckoned.WaterUsed;
import gaugeglass.steam.reckoned.WaterUsed.ShareOfSteam;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A meter's log told year by year, and the latest year against the share that is judged. */
class MakeUpYearTest {
    private static final String PLATE = "plate: {output-mark: marked, output: 400000 Btu/h}\n";
    private static final String METER = "water-use: {meter: fitted}\n";

    private static List<MakeUpYear> years(String boiler) {
        Inspection inspection = visit(boiler);
        return MakeUpYear.of(
                seen(inspection), limit(GrossOutputReckoning.SHARE), inspection.date(), limit(WaterUsed.LOOK_BACK));
    }

    private static Optional<Quantity> judged(String boiler) {
        Inspection inspection = visit(boiler);
        return RULEBOOK.reckoned(seen(inspection), inspection.date()).stream()
                .filter(ShareOfSteam.class::isInstance)
                .map(fact -> ((ShareOfSteam) fact).share())
                .findFirst();
    }

    private static Quantity limit(String id) {
        return RULEBOOK.book().limits().get(id).quantity();
    }

    private static String rows(String... rows) {
        StringBuilder log = new StringBuilder("meter-readings: {fitted: " + rows.length + ", each: [");
        for (int i = 0; i < rows.length; i++) {
            String[] parts = rows[i].split(" ");
            log.append("{tag: r").append(i).append(", row: {on: ").append(parts[0]);
            log.append(", dial: ").append(parts[1]).append(" gal, since: ").append(parts[2]);
            log.append('}').append(parts.length > 3 ? ", burner-hours: " + parts[3] + " h" : "");
            log.append("}, ");
        }
        return log + "]}";
    }

    /** Calculated: 60 gal in the 365 days to the visit, 120 gal in the 365 before: 0.164 and 0.329 gal a day. */
    @Test
    void a_log_is_told_year_by_year_and_the_latest_comes_first() {
        List<MakeUpYear> years = years(
                PLATE + METER + rows("2024-09-14 0 fired 0", "2025-09-14 120 fired 300", "2026-09-14 180 fired 300"));
        assertThat(years)
                .extracting(MakeUpYear::until)
                .containsExactly(LocalDate.of(2026, 9, 14), LocalDate.of(2025, 9, 14));
        assertThat(years)
                .extracting(MakeUpYear::perDay)
                .containsExactly(
                        Quantity.of(60, Unit.GALLON_PER_DAY).dividedBy(365),
                        Quantity.of(120, Unit.GALLON_PER_DAY).dividedBy(365));
        // Steam table (IAPWS-IF97) and 8.345 lb/gal: 60 gal in 300 h at 400,000 Btu/h is 0.405 %; twice that the year
        // before.
        assertThat(years.get(0).share().orElseThrow().in(Unit.PERCENT, 3)).isEqualByComparingTo("0.405");
        assertThat(years.get(1)
                        .share()
                        .orElseThrow()
                        .ratioTo(years.get(0).share().orElseThrow()))
                .isEqualByComparingTo(Rational.of(2));
    }

    /** The rules' own fact is what the latest year is held against. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "2024-09-14 0 fired 0|2025-09-14 120 fired 300|2026-09-14 180 fired 300",
                "2025-09-14 0 fired 0|2025-12-14 37 fired 250|2026-03-14 81 fired 610|2026-09-14 83 unfired 0",
                "2025-09-14 900 fired 0|2025-12-14 937 fired 250|2025-12-14 0 new-start 0|2026-09-14 83 fired 400",
                "2025-09-14 9990 fired 0|2026-09-14 31 fired 400"
            })
    void the_latest_years_share_is_the_one_that_is_judged(String rows) {
        String boiler =
                PLATE + "water-use: {meter: fitted, dial: {digits: 4, counts: gallons}}\n" + rows(rows.split("\\|"));

        assertThat(years(boiler).get(0).share()).isPresent().isEqualTo(judged(boiler));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    no meter, whatever is written             | water-use: {meter: not-fitted}   | 2025-09-14 0 fired 0;2026-09-14 60 fired 300          | 0
                    one reading                               | water-use: {meter: fitted}       | 2026-09-14 60 fired 300                               | 0
                    less than half a year's readings          | water-use: {meter: fitted}       | 2026-04-18 0 fired 0;2026-09-14 60 fired 300          | 0
                    half of the 300 days                      | water-use: {meter: fitted}       | 2026-04-17 0 fired 0;2026-09-14 60 fired 300          | 1
                    a year before that is not filled          | water-use: {meter: fitted}       | 2025-01-01 0 fired 0;2025-09-14 9 fired 9;2026-09-14 60 fired 300 | 1
                    a reading that fell                       | water-use: {meter: fitted}       | 2025-09-14 70 fired 0;2026-09-14 60 fired 300         | 0
                    one that fell the year before             | water-use: {meter: fitted}       | 2024-09-14 70 fired 0;2025-09-14 0 fired 0;2026-09-14 60 fired 300 | 1
                    """)
    void a_year_that_is_not_known_is_not_told(String why, String meter, String rows, int years) {
        assertThat(years(PLATE + meter + "\n" + rows(rows.split(";")))).as(why).hasSize(years);
    }

    @Test
    void a_row_that_cannot_be_read_or_is_not_described_leaves_no_year() {
        String known = rows("2025-09-14 0 fired 0", "2026-09-14 60 fired 300");

        assertThat(years(PLATE + METER + known)).hasSize(1);
        assertThat(years(PLATE + METER + known.replace("fitted: 2", "fitted: 3")))
                .isEmpty();
        assertThat(years(PLATE
                        + METER
                        + known.replace("{on: 2025-09-14, dial: 0 gal, since: fired}", "{unread: not legible}")))
                .isEmpty();
    }

    @Test
    void without_the_burners_hours_or_the_output_a_year_has_no_share() {
        String hours = rows("2025-09-14 0 fired 0", "2026-09-14 60 fired 300");

        assertThat(years(METER + hours).get(0).share()).isEmpty();
        assertThat(years(PLATE + METER + rows("2025-09-14 0 fired 0", "2026-03-14 60 fired", "2026-09-14 60 fired 300"))
                        .get(0)
                        .share())
                .isEmpty();
        assertThat(years(PLATE + METER + rows("2025-09-14 0 fired 0", "2026-09-14 60 fired 0"))
                        .get(0)
                        .share())
                .isEmpty();
        assertThat(years(METER + hours).get(0).perDay())
                .isEqualTo(Quantity.of(60, Unit.GALLON_PER_DAY).dividedBy(365));
    }
}
