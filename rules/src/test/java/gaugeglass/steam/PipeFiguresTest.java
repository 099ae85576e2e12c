package gaugeglass.steam;

import static gaugeglass.steam.proof.OneBoiler.RULEBOOK;
import static gaugeglass.steam.proof.OneBoiler.visit;
import static gaugeglass.steam.proof.OneBoiler.word;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gaugeglass.engine.Assessment;
import gaugeglass.engine.book.Limit;
import gaugeglass.engine.book.Source;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.steam.proof.OneBoiler;
import gaugeglass.steam.reckon.PipeFlow;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The figures that decide what is found of pipes and mains, beside the documents they come from. */
class PipeFiguresTest {
    private static final String WET_STEAM = "wet-steam-from-near-boiler-piping";
    private static final String STUCK_VENT = "main-vent-stuck";

    private static Limit limit(String id) {
        return RULEBOOK.book().limits().get(id);
    }

    private static Assessment assess(String boiler) {
        return OneBoiler.assess(visit(", air-pressure-from: barometer, barometer: 29.92 inHg", "", boiler));
    }

    private static String outcome(String boiler, String rule) {
        return word(assess(boiler), rule).toString();
    }

    /** Worked by hand from IAPWS-IF97 (25.2 ft3/lb at 1 psig) and a bore of 2.067 in: 125 lb/h go at 37.5 ft/s. */
    @Test
    void steam_in_a_two_inch_pipe_goes_as_fast_as_worked_by_hand() {
        Quantity speed = PipeFlow.speed(
                        Quantity.of(125, Unit.POUND_PER_HOUR),
                        Quantity.of(2, Unit.INCH),
                        Quantity.of(1, Unit.PSI),
                        Quantity.of("14.696", Unit.PSI_ABSOLUTE))
                .result();
        assertThat(speed.in(Unit.FOOT_PER_SECOND).doubleValue()).isCloseTo(37.5, within(0.1));
    }

    /**
     * By hand: 335,000 Btu/h over 33,475 x 34.5 are 345.3 lb/h; 26.80 ft3/lb at 0 psig by IAPWS-IF97; one riser of 2.067 in
     * has 0.02330 ft2: 345.3 x 26.80 / 3600 / 0.02330 is 110.3 ft/s, and in two of them half of that.
     */
    @Test
    void the_speed_in_the_risers_is_that_of_the_gross_output_at_no_pressure() {
        String plate = "plate: {output-mark: marked, output: 335000 Btu/h}\npiping: ";
        assertThat(speedFound(plate + "{risers: {number: 1, size: 2 in}}")).isCloseTo(110.3, within(0.3));
        assertThat(speedFound(plate + "{risers: {number: 2, size: 2 in}}")).isCloseTo(55.2, within(0.2));
    }

    private static double speedFound(String boiler) {
        String seen = assess(boiler).findings().stream()
                .filter(finding -> finding.rule().equals("piping.exit-velocity"))
                .findFirst()
                .orElseThrow()
                .seen()
                .get(0);
        return Double.parseDouble(seen.replaceAll("^.* at about (\\S+) ft/s through.*$", "$1"));
    }

    /** Trade handbooks, from memory, medium certainty: 15 to 20 ft/s preferred in a header. No stop may stand on it. */
    @Test
    void the_limit_for_speed_lies_above_what_handbooks_prefer_and_is_called_ours() {
        Limit most = limit("piping.exit-velocity-most");
        assertThat(most.quantity())
                .isEqualTo(Quantity.of(20, Unit.FOOT_PER_SECOND).times(3).dividedBy(2));
        assertThat(most.sources()).noneMatch(source -> source.known() == Source.Known.READ);
    }

    /** A boiler maker's installation manual for gravity return (read): 24 in from the water line to the header. */
    @Test
    void two_feet_lie_between_water_line_and_header() {
        assertThat(limit("piping.header-height-least").quantity()).isEqualTo(Quantity.of(2, Unit.FOOT));
    }

    /** Trade handbooks (from memory, high certainty): the loop's nipple 2 to 4 in below the water line. */
    @Test
    void the_loop_joins_two_to_four_inches_below_the_line() {
        assertThat(limit("piping.loop-below-least").quantity()).isEqualTo(Quantity.of(2, Unit.INCH));
        assertThat(limit("piping.loop-below-most").quantity()).isEqualTo(Quantity.of(4, Unit.INCH));
    }

    /** Connecticut regulations 29-232-83 and ASME Section VI 5.9.3.1 (2023): of boilers that serve a gravity return. */
    @Test
    void a_loop_is_asked_of_gravity_returns_only() {
        String nothing = "piping: {return-protection: nothing}\n";
        assertThat(outcome(nothing + "system: {return: gravity}", "piping.no-return-protection"))
                .isEqualTo("FOUND");
        assertThat(outcome(nothing + "system: {return: pumped}", "piping.no-return-protection"))
                .isEqualTo("NOT_APPLICABLE");
    }

    @Test
    void piping_is_blamed_for_wet_steam_when_the_line_is_unsteady_too() {
        String low = "piping: {take-off: beyond-risers, header-height: 12 in}\n";
        String bull = "piping: {take-off: bull-headed, header-height: 30 in}\n";
        assertThat(causes(low + "level: {swing: 3 in}")).contains(WET_STEAM);
        assertThat(causes(bull + "glass: {above-line: drops}")).contains(WET_STEAM);
        assertThat(causes(low + "level: {swing: 1/4 in}\nglass: {above-line: dry}"))
                .doesNotContain(WET_STEAM);
        assertThat(causes("level: {swing: 3 in}")).doesNotContain(WET_STEAM);
    }

    private static List<String> causes(String boiler) {
        return assess(boiler).diagnoses().stream().map(Assessment.Cause::id).toList();
    }

    /** US DOE Standard Work Specifications 5.3103.5: 15 in before the end of the main, on a nipple of 6 to 10 in. */
    @Test
    void a_main_vent_stands_fifteen_inches_back_on_six_inches_of_nipple() {
        assertThat(limit("vent.before-end-least").quantity()).isEqualTo(Quantity.of(15, Unit.INCH));
        assertThat(limit("vent.nipple-least").quantity()).isEqualTo(Quantity.of(6, Unit.INCH));
    }

    /** US DOE Standard Work Specifications: 1/4 in in 10 ft. Against the steam four times that, read second-hand. */
    @Test
    void a_main_falls_a_quarter_of_an_inch_in_ten_feet() {
        assertThat(limit("main.fall-least").quantity()).isEqualTo(Quantity.of("0.25", Unit.INCH));
        assertThat(limit("main.fall-least-against").quantity())
                .isEqualTo(limit("main.fall-least").quantity().times(4));
    }

    /** ASHVE Guide 1929 and 1930, dripped mains, 2 oz total drop: 2, 3 and 4 in at 100, 200 and 400 ft. */
    @ParameterizedTest
    @CsvSource({
        "2, 100, 546",
        "2, 200, 386",
        "2, 400, 273",
        "3, 100, 1645",
        "3, 200, 1163",
        "3, 400, 822",
        "4, 100, 3475",
        "4, 200, 2457",
        "4, 400, 1738"
    })
    void a_main_is_too_small_from_a_square_foot_more_than_the_table_gives(int size, int run, int most) {
        assertThat(outcome(main(size, run, most), "distribution.pipe-too-small"))
                .isEqualTo("IN_ORDER");
        assertThat(outcome(main(size, run, most + 1), "distribution.pipe-too-small"))
                .isEqualTo("FOUND");
    }

    private static String main(int size, int run, int radiation) {
        return "mains: {fitted: 1, each: [{tag: A, pipe: {size: " + size + " in, run: " + run
                + " ft}, fall: {water: with-the-steam, fall: 1 in, line: straight}, load: " + radiation + " ft2}]}";
    }

    /**
     * US DOE Steam Tip Sheet 2 (read second-hand): 100 ft of bare 4 in line at 15 psig lose 415 MBtu a year of 8760 h, over
     * the air of 75 F. That is 474 Btu/h ft; at 215 F and 70 F less, by about the rise of temperature and its 1.4th power.
     */
    @Test
    void a_bare_main_loses_what_the_tip_sheet_and_the_cooler_steam_let_expect() {
        String seen = assess("mains: {fitted: 1, each: [{tag: A, pipe: {size: 4 in, run: 100 ft}, bare: 100 ft}]}")
                .findings()
                .stream()
                .filter(finding -> finding.rule().equals("distribution.insulation"))
                .findFirst()
                .orElseThrow()
                .seen()
                .get(0);
        double loss = Double.parseDouble(seen.replaceAll("^.* give off about (\\S+) Btu/h while.*$", "$1"));
        assertThat(loss / 100).isCloseTo(474 * Math.pow(145.0 / 175.0, 1.4), within(20.0));
    }

    @Test
    void a_main_vent_is_blamed_when_it_did_not_work_or_the_main_fills_slowly_where_it_is_exposed() {
        String vent = "mains: {fitted: 1, each: [{tag: A, venting: vent, ";
        assertThat(causes(vent + "vent-action: stayed-shut}]}")).contains(STUCK_VENT);
        assertThat(causes(vent + "fill-time: 12 min, vent-place: {before: 2 in, nipple: 0 in}}]}"))
                .contains(STUCK_VENT);
        Assessment worked = assess(vent + "fill-time: 12 min, vent-place: {before: 2 in, nipple: 0 in},"
                + " vent-action: blew-air-then-shut}]}");
        assertThat(worked.diagnoses()).singleElement().satisfies(cause -> assertThat(cause.against())
                .extracting(Assessment.Said::rule)
                .containsExactly("vent.main-works"));
        assertThat(causes(vent + "fill-time: 12 min}]}")).doesNotContain(STUCK_VENT);
    }
}
