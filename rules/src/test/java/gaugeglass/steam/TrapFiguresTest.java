package gaugeglass.steam;

import static gaugeglass.steam.proof.OneBoiler.RULEBOOK;
import static gaugeglass.steam.proof.OneBoiler.visit;
import static gaugeglass.steam.proof.OneBoiler.word;
import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.Assessment;
import gaugeglass.engine.Assessment.Finding;
import gaugeglass.engine.Assessment.Word;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.steam.proof.OneBoiler;
import gaugeglass.steam.reckon.Saturation;
import gaugeglass.steam.reckon.Season;
import gaugeglass.steam.reckon.TrapLoss;
import gaugeglass.steam.reckon.TrapLoss.Constants;
import java.time.Period;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Published figures about traps and returns. */
class TrapFiguresTest {
    private static final String BY_THE_SEA = "air-pressure-from: barometer, barometer: 14.696 psia";

    private static Assessment assess(String site, String boiler) {
        return OneBoiler.assess(visit(", " + site, "", boiler));
    }

    private static String system(String kind, String traps) {
        int fitted = traps.split("tag:", -1).length - 1;
        return "system: {kind: " + kind + ", return: gravity}\ntraps: {fitted: " + fitted + ", each: [" + traps + "]}";
    }

    private static String thermostatic(String tag, String inlet, String outlet, String others) {
        return "{tag: " + tag
                + ", kind: thermostatic, mounting: as-it-should, judged: by-temperature, row: {ahead: full, inlet: "
                + inlet + ", outlet: " + outlet + ", others: " + others + "}}";
    }

    /** IAPWS-IF97: water boils at 211.95 F at 14.696 psia. Common practice: 205 F behind a trap is suspect. */
    @Test
    void a_blowing_trap_is_held_against_the_return_and_not_against_the_boilers_steam() {
        assertThat(Saturation.temperature(Quantity.of(0, Unit.PSI), Quantity.of("14.696", Unit.PSI_ABSOLUTE)))
                .isEqualTo(Quantity.of("211.95", Unit.FAHRENHEIT));
        String steamAtFivePsi = "227 F";
        assertThat(word(
                        assess(
                                BY_THE_SEA,
                                system("two-pipe-traps", thermostatic("A", steamAtFivePsi, "211 F", "none-hot"))),
                        "trap.failed-open"))
                .isEqualTo(Word.FOUND);
        assertThat(word(
                        assess(BY_THE_SEA, system("two-pipe-traps", thermostatic("A", "214 F", "205 F", "none-hot"))),
                        "trap.failed-open"))
                .isEqualTo(Word.FOUND);
    }

    /** Thermostatic traps open 10 to 30 F below the steam's temperature (from memory, high certainty). */
    @Test
    void water_let_out_ten_degrees_below_steam_is_no_steam() {
        assertThat(word(
                        assess(BY_THE_SEA, system("two-pipe-traps", thermostatic("A", "214 F", "204 F", "none-hot"))),
                        "trap.failed-open"))
                .isEqualTo(Word.IN_ORDER);
        assertThat(word(
                        assess(BY_THE_SEA, system("two-pipe-traps", thermostatic("A", "214 F", "184 F", "none-hot"))),
                        "trap.failed-open"))
                .isEqualTo(Word.IN_ORDER);
    }

    /** IAPWS-IF97 at 12.2 psia, some 5000 ft up: water boils near 202.7 F, so 200 F there is what 210 F is by the sea. */
    @Test
    void the_same_outlet_is_steam_on_a_mountain_and_water_by_the_sea() {
        String trap = system("two-pipe-traps", thermostatic("A", "206 F", "200 F", "none-hot"));
        assertThat(word(assess("air-pressure-from: barometer, barometer: 12.2 psia", trap), "trap.failed-open"))
                .isEqualTo(Word.FOUND);
        assertThat(word(assess(BY_THE_SEA, trap), "trap.failed-open")).isEqualTo(Word.IN_ORDER);
    }

    /** Common practice: a hot outlet among hot outlets may be heated by them; isolate, then judge. */
    @Test
    void a_hot_outlet_among_hot_ones_is_suspect_only() {
        Assessment among =
                assess(BY_THE_SEA, system("two-pipe-traps", thermostatic("A", "214 F", "211 F", "some-hot")));
        assertThat(among.findings()).extracting(Finding::rule).contains("trap.failed-open");
        assertThat(among.findings())
                .filteredOn(finding -> finding.rule().equals("trap.failed-open"))
                .allMatch(finding -> finding.urgency().word().equals("watch"));
    }

    /** On one pipe there is nothing for a trap to do at a radiator: none of it applies, and nothing of it is open. */
    @Test
    void on_one_pipe_no_practice_about_traps_applies() {
        Assessment onePipe = assess(BY_THE_SEA, "system: {kind: one-pipe, return: gravity}");
        assertThat(onePipe.outcomes())
                .filteredOn(outcome -> outcome.rule().startsWith("trap."))
                .isNotEmpty()
                .allMatch(outcome -> outcome.outcome() == Word.NOT_APPLICABLE);
        assertThat(onePipe.outcomes())
                .filteredOn(outcome -> Stream.of(
                                "return.condensate-hot", "return.receiver", "return.feed-control", "condensate.pump")
                        .anyMatch(outcome.rule()::equals))
                .hasSize(4)
                .allMatch(outcome -> outcome.outcome() == Word.NOT_APPLICABLE);
    }

    /** US DOE Steam Tip Sheet 1: test yearly below 30 psig; 15 to 30 % failed after 3 to 5 years without maintenance. */
    @Test
    void interval_and_shares_are_the_tip_sheets() {
        assertThat(RULEBOOK.book().limits().get("trap.survey-interval").period())
                .isEqualTo(Period.ofYears(1));
        assertThat(RULEBOOK.book().limits().get("trap.failed-share-plan").quantity())
                .isEqualTo(Quantity.of(15, Unit.PERCENT));
        assertThat(RULEBOOK.book().limits().get("trap.failed-share-season").quantity())
                .isEqualTo(Quantity.of(30, Unit.PERCENT));
    }

    /** US DOE Steam Tip Sheet 1, 15 psig: 1/16 in 3.4, 1/8 in 13.7, 1/4 in 54.7 lb/h. */
    @Test
    void the_constant_used_gives_the_tip_sheets_table() {
        String[][] table = {{"0.0625", "3.4"}, {"0.125", "13.7"}, {"0.25", "54.7"}};
        for (String[] row : table) {
            Quantity loss = TrapLoss.through(
                            Quantity.of(row[0], Unit.INCH),
                            Quantity.of(15, Unit.PSI),
                            Saturation.STANDARD_ATMOSPHERE,
                            Constants.DOE)
                    .quantity(TrapLoss.LOSS);
            assertThat(loss.rounded(1)).isEqualTo(Quantity.of(row[1], Unit.POUND_PER_HOUR));
        }
    }

    /** A published worked example: 7699 F-days x 24 / 80 F is 2310 h. */
    @Test
    void season_hours_are_degree_days_by_the_design_rise() {
        Quantity hours = Season.hours(Quantity.of(7699, Unit.FAHRENHEIT_DAY), Quantity.of(80, Unit.FAHRENHEIT_DEGREE))
                .quantity(Season.HOURS);
        assertThat(hours.rounded(0)).isEqualTo(Quantity.of(2310, Unit.HOUR));
    }

    /** What the rules say is lost is those sums: 29.45 x 29.696 psia x (3/16 in)^2 is 30.75 lb/h a trap at 15 psi. */
    @Test
    void the_loss_that_is_told_is_that_sum_for_each_trap_that_blows() {
        String blowing = "{tag: %s, kind: float-and-thermostatic, judged: by-sight-or-sound, heard: blows}";
        Assessment two = assess(
                BY_THE_SEA + ", season-degree-days: 5000 F-days",
                system("two-pipe-traps", blowing.formatted("A") + ", " + blowing.formatted("B"))
                        + "\ncontrols: {fitted: 1, each: [{tag: O, role: operating, dial: cut-out-only, cut-out-mark: 15 psi}]}");
        assertThat(two.findings())
                .filteredOn(finding -> finding.rule().equals("trap.loss"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.seen().toString()).contains("61 lb/h", "at most"));
    }
}
