package gaugeglass.steam;

import static gaugeglass.steam.proof.OneBoiler.RULEBOOK;
import static gaugeglass.steam.proof.OneBoiler.assess;
import static gaugeglass.steam.proof.OneBoiler.word;
import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.Assessment;
import gaugeglass.engine.Assessment.Word;
import gaugeglass.engine.book.Urgency;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.steam.reckon.MeterLog;
import gaugeglass.steam.reckon.MeterLog.Course;
import gaugeglass.steam.reckon.MeterLog.Reading;
import gaugeglass.steam.reckon.MeterLog.Since;
import gaugeglass.steam.reckon.MeterLog.Span;
import gaugeglass.steam.reckon.WaterMeter;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures of make-up water that decide a verdict, a long log of readings, and the causes that water use points to. */
class WaterUseFiguresTest {
    private static Urgency urgency(Assessment assessment, String rule) {
        return assessment.findings().stream()
                .filter(finding -> finding.rule().equals(rule))
                .findFirst()
                .orElseThrow()
                .urgency();
    }

    private static String log(int outputBtu, String used, String hours) {
        return "plate: {output-mark: marked, output: " + outputBtu + " Btu/h}\n"
                + "water-use: {meter: fitted}\n"
                + "meter-readings: {fitted: 2, each: [{tag: a, row: {on: 2025-09-14, dial: 0 gal, since: fired}}, "
                + "{tag: b, row: {on: 2026-09-14, dial: " + used + ", since: fired}, burner-hours: " + hours + "}]}";
    }

    /** Steam table (IAPWS-IF97, 970.1 Btu/lb at 14.696 psia) and 8.345 lb/gal: 60 gal in 300 h at 400,000 Btu/h is 0.405 %. */
    @Test
    void sixty_gallons_of_a_small_boilers_season_are_four_tenths_of_a_per_cent() {
        assertThat(word(assess(log(400_000, "60 gal", "300 h")), "water-use.share-of-steam"))
                .isEqualTo(Word.IN_ORDER);
        // 74.1 gal would be 0.5 % of the same steam.
        assertThat(word(assess(log(400_000, "74 gal", "300 h")), "water-use.share-of-steam"))
                .isEqualTo(Word.IN_ORDER);
        assertThat(urgency(assess(log(400_000, "75 gal", "300 h")), "water-use.share-of-steam"))
                .isEqualTo(Urgency.WATCH);
    }

    /** UFC 3-240-13FN, Table 3-18: the line is drawn at 95 % condensate return. The bands below it are our own. */
    @ParameterizedTest
    @CsvSource({"5, treatment-share", "2, act-share", "1, search-share", "0.5, watch-share"})
    void the_bands_stand_at_a_published_line_and_three_of_our_own(String percent, String limit) {
        assertThat(RULEBOOK.book().limits().get("water-use." + limit).quantity())
                .isEqualTo(Quantity.of(percent, Unit.PERCENT));
    }

    /** NIST SP 811: a cubic foot is 7.4805 gal. Ten of them are 74.8 gal, above what 0.5 % comes to in the case above. */
    @Test
    void a_meter_in_cubic_feet_counts_as_much_as_one_in_gallons() {
        assertThat(urgency(assess(log(400_000, "10 ft3", "300 h")), "water-use.share-of-steam"))
                .isEqualTo(Urgency.WATCH);
    }

    /** Arithmetic: 9998 and then 0012 on four digits is 14. */
    @Test
    void a_meter_that_passed_its_highest_figure_used_what_lies_between() {
        Span span = spans(9998, 12).get(0);
        assertThat(span.course()).isEqualTo(Course.ROLLED_OVER);
        assertThat(span.used()).isEqualTo(Quantity.of(14, Unit.GALLON));
    }

    /** The log and the reckoning at the boiler must say the same of two readings. */
    @ParameterizedTest
    @CsvSource({"0, 0", "10, 25", "9998, 12", "5000, 0", "4999, 0", "6000, 999", "6000, 1001", "300, 200"})
    void a_log_says_of_two_readings_what_the_reckoning_of_them_says(long before, long after) {
        Quantity from = Quantity.of(before, Unit.GALLON);
        Quantity to = Quantity.of(after, Unit.GALLON);
        Span span = spans(before, after).get(0);
        if (span.isKnown()) {
            assertThat(WaterMeter.used(from, to, 4).quantity(WaterMeter.USED)).isEqualTo(span.used());
        } else {
            Assertions.assertThrows(IllegalArgumentException.class, () -> WaterMeter.used(from, to, 4));
        }
    }

    private static List<Span> spans(long before, long after) {
        LocalDate day = LocalDate.of(2026, 9, 14);
        return MeterLog.spans(
                List.of(
                        new Reading("a", day.minusDays(9), Quantity.of(before, Unit.GALLON), Since.FIRED),
                        new Reading("b", day, Quantity.of(after, Unit.GALLON), Since.FIRED)),
                () -> Quantity.of(10_000, Unit.GALLON));
    }

    /** Calculated: grains over 7000 are pounds, so 1000 gal at 10 gr/gal bring 1.43 lb: more than a pound, less than four. */
    @Test
    void a_thousand_gallons_of_hard_water_bring_more_than_a_pound_of_scale() {
        String water = "water-use: {meter: fitted, hardness: 10 gr/gal, last-cleaning: 2025-09-14}\n";
        assertThat(urgency(
                        assess(log(400_000, "1000 gal", "300 h").replace("water-use: {meter: fitted}\n", water)),
                        "water-use.scale-burden"))
                .isEqualTo(Urgency.WATCH);
    }

    /** No figure without what it takes: without hours the share is open, whatever was used. */
    @Test
    void without_burner_hours_no_share_is_told() {
        assertThat(word(
                        assess(log(400_000, "9000 gal", "{unread: no hour counter and no fuel record}")),
                        "water-use.share-of-steam"))
                .isEqualTo(Word.UNDETERMINED);
    }

    /** Eight hundred readings take some tenfold of eighty, where comparing each with each would take a hundredfold. */
    @Test
    void a_log_of_eight_hundred_readings_is_judged_in_linear_time() {
        LocalDate day = LocalDate.of(2026, 9, 14);
        StringBuilder rows = new StringBuilder();
        for (int i = 799; i >= 0; i--) {
            rows.append("    - {tag: r")
                    .append(i)
                    .append(", row: {on: ")
                    .append(day.minusDays(i))
                    .append(", dial: ")
                    .append(799 - i)
                    .append(" gal, since: fired}, burner-hours: 5 h, degree-days: 20 F-days}\n");
        }
        String boiler = "plate: {output-mark: marked, output: 400000 Btu/h}\n"
                + "water-use: {meter: fitted, degree-day-record: kept, hardness: 10 gr/gal, last-cleaning: 2024-08-01}\n"
                + "meter-readings:\n  fitted: 800\n  each:\n" + rows;
        assess(boiler);
        Assessment assessment = Assertions.assertTimeoutPreemptively(Duration.ofSeconds(10), () -> assess(boiler));
        // 300 gal in 1500 h at 400,000 Btu/h is 0.405 % again; day by day it is always the same.
        assertThat(word(assessment, "water-use.share-of-steam")).isEqualTo(Word.IN_ORDER);
        assertThat(word(assessment, "water-use.rising")).isEqualTo(Word.IN_ORDER);
        assertThat(word(assessment, "water-use.reading-missing")).isEqualTo(Word.IN_ORDER);
    }

    /** A reckoning over twice the readings takes about twice the steps. */
    @Test
    void going_over_the_log_takes_one_step_for_each_reading() {
        int[] asked = {0};
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < 800; i++) {
            readings.add(new Reading(
                    "r" + i,
                    LocalDate.of(2020, 1, 1).plusDays(i),
                    Quantity.of(i % 2 == 0 ? 9999 : 0, Unit.GALLON),
                    Since.FIRED));
        }
        List<Span> spans = MeterLog.spans(readings, () -> {
            asked[0]++;
            return Quantity.of(10_000, Unit.GALLON);
        });
        assertThat(spans).hasSize(799);
        assertThat(asked[0]).isEqualTo(400);
    }

    // ---- what several findings point to, and what looks like it

    private static List<String> causes(String boiler) {
        return assess(boiler).diagnoses().stream().map(Assessment.Cause::id).toList();
    }

    @Test
    void a_locked_out_feeder_stands_first_and_one_that_delivers_speaks_against_it() {
        assertThat(causes("feeder: {make-up: automatic, power: locked-out, trial: no-water}"))
                .first()
                .isEqualTo("feeder-locked-out-or-dry");
        assertThat(causes("feeder: {make-up: automatic, power: live, trial: water-came}"))
                .doesNotContain("feeder-locked-out-or-dry");
    }

    @Test
    void a_passing_valve_stands_first_and_a_leaking_coil_only_looks_like_it() {
        assertThat(causes(
                        "feeder: {make-up: by-hand, entry: return-or-own-tapping, tightness: rose-until-supply-was-shut}"
                                + "\nlevel: {line: in-glass, normal: 4 in, proven: 8 in}"))
                .first()
                .isEqualTo("feed-valve-passes");
        assertThat(causes("feeder: {make-up: by-hand, entry: return-or-own-tapping, tightness: held}"
                        + "\nlevel: {line: in-glass, normal: 4 in, proven: 8 in}"
                        + "\ncoil: {presence: fitted, test: rose-until-coil-was-shut}"))
                .first()
                .isEqualTo("coil-leaking-into-boiler");
    }

    private static final String MUCH = log(400_000, "400 gal", "300 h")
            .replace("{meter: fitted}", "{meter: fitted, degree-day-record: not-kept, leak-search: none-found}");

    @Test
    void a_buried_return_stands_first_and_a_plume_points_elsewhere() {
        assertThat(causes("return: {buried: buried-unwatched}\n" + MUCH))
                .first()
                .isEqualTo("buried-return-leaks");
        assertThat(causes("return: {buried: none-buried}\ncondition: {leak: none, plume: stayed-white}\n" + MUCH))
                .contains("leak-above-water-line")
                .doesNotContain("buried-return-leaks");
    }

    @Test
    void a_meter_that_fell_is_not_believed_and_one_that_was_replaced_is() {
        String fell = "water-use: {meter: fitted, dial: {digits: 5, counts: gallons}}\n"
                + "meter-readings: {fitted: 2, each: [{tag: a, row: {on: 2025-09-14, dial: 4000 gal, since: fired}}, ";
        assertThat(causes(fell + "{tag: b, row: {on: 2026-09-14, dial: 30 gal, since: fired}}]}"))
                .first()
                .isEqualTo("meter-not-to-be-believed");
        assertThat(causes(fell + "{tag: b, row: {on: 2026-09-14, dial: 30 gal, since: new-start}}]}"))
                .doesNotContain("meter-not-to-be-believed");
    }
}
