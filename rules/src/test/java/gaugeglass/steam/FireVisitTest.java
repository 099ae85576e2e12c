package gaugeglass.steam;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.Assessment;
import gaugeglass.engine.Assessment.Permit;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.InspectionReader;
import gaugeglass.steam.proof.SteamProof;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Visits on which the burner was lit: what its flame and flue gas point to. */
class FireVisitTest {
    private static final String SOUND = """
            format: 1
            visit: {date: 2026-09-14}
            site: {id: invented, air-route: openings, air-way: clear, air-free-area: 240 in2, room-input: 400000 Btu/h}
            boilers:
              - id: B1
                burner: {fuel: natural-gas, type: atmospheric-gas, front: clean}
                flue: {state: sound}
                plate: {input: 400000 Btu/h}
                flame: {pilot: thermocouple, failure: shut-off, failure-time: 40 s, after-shutdown: out-at-once}
                draft: {spillage: none}
                combustion: {test: taken, sample: {co: 20 ppm, oxygen: 7 %}, co-trend: steady}
                input: {measured: gas-meter, gas-clock: {dial: 5 ft3, turns: 3, time: 140 s},
                        heat-from: suppliers-figure, gas-heat: 1030 Btu/ft3}
            """;

    private static Assessment assess(String text) {
        Inspection inspection =
                InspectionReader.read(SteamProof.runner().rulebook().vocabulary(), "visit.yaml", text);
        return SteamProof.runner().rulebook().assess(inspection.units().get(0).observations(), inspection.date());
    }

    private static List<String> causes(String text) {
        return assess(text).diagnoses().stream().map(Assessment.Cause::id).toList();
    }

    @Test
    void a_sound_fire_points_to_nothing() {
        assertThat(causes(SOUND)).isEmpty();
        assertThat(assess(SOUND).findings()).isEmpty();
    }

    @Test
    void an_input_above_the_plate_points_to_over_firing_first() {
        String over = SOUND.replace("time: 140 s", "time: 115 s").replace("co: 20 ppm", "co: 500 ppm");
        assertThat(causes(over)).first().isEqualTo("over-firing");
    }

    @Test
    void the_same_flame_at_the_plates_input_does_not() {
        String notOver =
                SOUND.replace("co: 20 ppm", "co: 500 ppm").replace("spillage: none", "spillage: still-spilling");
        assertThat(causes(notOver)).doesNotContain("over-firing");
    }

    @Test
    void carbon_monoxide_in_a_room_without_air_points_to_the_air_first() {
        String starved = SOUND.replace("air-way: clear", "air-way: blocked").replace("co: 20 ppm", "co: 500 ppm");
        assertThat(causes(starved)).first().isEqualTo("burner-starved-of-air");
    }

    @Test
    void the_same_carbon_monoxide_with_air_enough_and_too_much_gas_does_not() {
        String fuel = SOUND.replace("co: 20 ppm", "co: 500 ppm").replace("time: 140 s", "time: 115 s");
        assertThat(causes(fuel)).doesNotContain("burner-starved-of-air");
    }

    @Test
    void a_fire_that_was_not_sampled_is_not_released() {
        String untested = SOUND.replace("test: taken, sample: {co: 20 ppm, oxygen: 7 %}", "test: not-taken");
        assertThat(assess(untested).release().permit()).isEqualTo(Permit.FORBIDDEN);
    }

    @Test
    void flue_gas_in_the_room_forbids_both() {
        String spilling = SOUND.replace("spillage: none", "spillage: still-spilling");
        assertThat(assess(spilling).testFiring().permit()).isEqualTo(Permit.FORBIDDEN);
        assertThat(assess(spilling).release().permit()).isEqualTo(Permit.FORBIDDEN);
    }
}
