package gaugeglass.steam;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.Assessment;
import gaugeglass.engine.Assessment.Outcome;
import gaugeglass.engine.Assessment.Word;
import gaugeglass.engine.book.Card;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.InspectionReader;
import gaugeglass.engine.observation.Observations;
import gaugeglass.steam.proof.SteamProof;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whole visits up to the first fire: what is sound leaves nothing open, and causes are put forward on enough evidence. */
class UnfiredVisitTest {
    private static final Set<String> SUBJECTS =
            Set.of("site", "safety-valve", "boiler-condition", "burner-safeguards", "near-boiler-piping", "records");

    private static final String ROOM = """
            format: 1
            visit: {date: 2026-09-14}
            site:
              id: invented
              gas-smell: none
              gas-meter: 0 %
              co: 2 ppm
              co-outdoors: 1 ppm
              oil-leak: none
              flooded: no-sign
              frost: protected
              drainage: dry
              wiring: sound
              safety-contacts: in-live
              co-alarm: working
              emergency-switch: outside-the-door
              emergency-switch-effect: stops-burner
              insulation: none-suspected
              air-way: clear
              room-input: 440000 Btu/h
              relief-sizing: by-output
              air-pressure-from: barometer
              barometer: 29.92 inHg
            """;

    private static final String BOILER = """
                records: {open-finding: no-earlier-visit, device-dates: all-recorded}
                layup: {tag: none, record: recorded}
                clearance: {stored: none, service: 30 in}
                flue: {state: sound}
                condition: {structure: sound, leak: none, plume: cleared-as-it-warmed, soot: 0 in,
                            flueways-record: dated, flueways-cleaned: 2026-05-04, fresh-water: none-fed}
                level: {reserve: 5 gal}
                system: {return: gravity}
                piping: {stop-valves: open, equalizer: open, equalizer-size: 2.5 in, return-protection: loop,
                         loop-nipple: {below: 3 in, length: close}, take-off: beyond-risers, header-height: 28 in,
                         risers: {number: 2, size: 3 in}, wet-return: tight}
                safety-valves:
                  fitted: 1
                  each:
                    - {tag: A, way: clear, set-pressure: 15 psi, capacity: 350 lb/h, discharge: full-size-in-sight,
                       condition: tight, lever-record: dated, lever-tested: 2026-09-14, pressure-record: dated,
                       pressure-tested: 2026-05-04}
            """;

    /** A cast-iron boiler on gas, with a coil; its plate tells everything. */
    private static final String GAS = ROOM + """
              gas-leak: none-found
              air-route: openings
              air-free-area: 240 in2
            boilers:
              - id: gas
            """ + BOILER + """
                plate: {construction: cast-iron, input: 400000 Btu/h, output-mark: marked, output: 320000 Btu/h,
                        relief-mark: marked, relief-capacity: 320 lb/h, twin-controls: single-boiler}
                certificate: {need: required, state: in-date}
                burner: {fuel: natural-gas, type: atmospheric-gas, resets: 0, bypass: none, front: clean, puff: none,
                         gas-valve: tight}
                coil: {presence: fitted, test: level-held}
            """;

    /** A steel boiler on oil whose plate is gone. */
    private static final String OIL = ROOM + """
              gas-leak: no-gas-piping
              air-route: ducted-to-burner
            boilers:
              - id: oil
            """ + BOILER + """
                plate: {construction: steel-firetube, input: 400000 Btu/h, output-mark: not-marked,
                        relief-mark: not-marked, twin-controls: independent}
                certificate: {need: not-required}
                burner: {fuel: oil, type: power-oil, resets: 1, bypass: none, front: clean, puff: none,
                         chamber-oil: dry, oil-heat-valve: fitted}
                coil: {presence: not-fitted}
            """;

    private static Assessment assess(String text) {
        Inspection inspection =
                InspectionReader.read(SteamProof.runner().rulebook().vocabulary(), "visit.yaml", text);
        Observations observations = inspection.units().get(0).observations();
        return SteamProof.runner().rulebook().assess(observations, inspection.date());
    }

    private static List<Outcome> own(Assessment assessment) {
        Map<String, Card> cards = SteamProof.stored().book().cards();
        return assessment.outcomes().stream()
                .filter(outcome -> SUBJECTS.contains(cards.get(outcome.rule()).subject()))
                .toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {GAS, OIL})
    void a_sound_boiler_with_every_question_answered_leaves_nothing_open(String visit) {
        List<Outcome> outcomes = own(assess(visit));
        assertThat(outcomes).hasSizeGreaterThan(30);
        assertThat(outcomes)
                .allSatisfy(outcome -> assertThat(outcome.outcome()).isIn(Word.IN_ORDER, Word.NOT_APPLICABLE));
    }

    @Test
    void what_only_gas_has_does_not_apply_to_oil() {
        assertThat(own(assess(OIL)))
                .filteredOn(outcome -> outcome.outcome() == Word.NOT_APPLICABLE)
                .extracting(Outcome::rule)
                .contains("burner.fuel-valve-passes", "coil.leaking", "site.certificate");
    }

    @Test
    void an_empty_visit_leaves_every_one_of_them_undetermined() {
        List<Outcome> outcomes = own(assess("""
                format: 1
                visit: {date: 2026-09-14}
                site: {id: invented}
                boilers:
                  - id: empty
                """));
        assertThat(outcomes).allSatisfy(outcome -> assertThat(outcome.outcome()).isEqualTo(Word.UNDETERMINED));
    }

    @Test
    void scorching_in_a_room_without_air_points_to_the_air() {
        String blocked = GAS.replace("air-way: clear", "air-way: blocked").replace("front: clean", "front: scorched");
        assertThat(assess(blocked).diagnoses()).extracting(Assessment.Cause::id).contains("burner-starved-of-air");
        String onlyScorched = GAS.replace("front: clean", "front: scorched");
        assertThat(assess(onlyScorched).diagnoses())
                .extracting(Assessment.Cause::id)
                .doesNotContain("burner-starved-of-air");
    }

    @Test
    void a_plume_over_a_boiler_that_is_dry_when_cold_points_above_the_water_line() {
        String plume = GAS.replace("cleared-as-it-warmed", "stayed-white");
        assertThat(assess(plume).diagnoses()).extracting(Assessment.Cause::id).contains("leak-above-water-line");
        String wetBelow = plume.replace("leak: none, plume", "leak: section-or-tube, plume");
        assertThat(assess(wetBelow).diagnoses())
                .extracting(Assessment.Cause::id)
                .doesNotContain("leak-above-water-line");
        assertThat(assess(GAS).diagnoses()).extracting(Assessment.Cause::id).doesNotContain("leak-above-water-line");
    }

    @Test
    void a_rise_that_stops_with_the_coil_points_to_the_coil() {
        String rising = GAS.replace("test: level-held", "test: rose-until-coil-was-shut");
        assertThat(assess(rising).diagnoses()).extracting(Assessment.Cause::id).contains("coil-leaking-into-boiler");
        String feed = GAS.replace("test: level-held", "test: rose-with-coil-shut-too");
        assertThat(assess(feed).diagnoses())
                .extracting(Assessment.Cause::id)
                .doesNotContain("coil-leaking-into-boiler");
    }
}
