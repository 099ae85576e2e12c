package gaugeglass.steam;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.book.Basis;
import gaugeglass.engine.book.Limit;
import gaugeglass.engine.book.Source;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.steam.proof.SteamProof;
import gaugeglass.steam.reckon.Combustion;
import gaugeglass.steam.reckon.Fuel;
import gaugeglass.steam.reckon.GasInput;
import gaugeglass.steam.reckon.OilInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The figures that decide on flame, flue gas and input, beside where they come from. */
class FireFiguresTest {
    private static Limit limit(String id) {
        return SteamProof.stored().book().limits().get(id);
    }

    private static Quantity ppm(String number) {
        return Quantity.of(number, Unit.PARTS_PER_MILLION);
    }

    private static Quantity percent(String number) {
        return Quantity.of(number, Unit.PERCENT);
    }

    /** ANSI Z21.13, read second-hand: 400 ppm free of air; at 7 % oxygen 266 ppm pass and 267 do not. */
    @Test
    void four_hundred_ppm_free_of_air_part_266_from_267_at_seven_percent_oxygen() {
        Quantity most = limit("combustion.co-air-free-most").quantity();
        assertThat(most).isEqualTo(ppm("400"));
        assertThat(Combustion.airFreeCo(ppm("266"), percent("7")).result()).isLessThan(most);
        assertThat(Combustion.airFreeCo(ppm("267"), percent("7")).result()).isGreaterThan(most);
    }

    /** Field practice on the air-free basis: 50 ppm at 7 % oxygen are 75. */
    @Test
    void fifty_ppm_at_seven_percent_oxygen_are_left_as_they_are() {
        Quantity free = Combustion.airFreeCo(ppm("50"), percent("7")).result();
        assertThat(free.rounded(0)).isEqualTo(ppm("75"));
        assertThat(free).isLessThan(limit("combustion.co-service").quantity());
    }

    /** NFPA 85 (from memory, high certainty): 4 s; oil primaries about 15 s (common practice). */
    @Test
    void a_flame_that_is_gone_is_missed_in_seconds() {
        assertThat(limit("burner.flame-failure-most").quantity()).isEqualTo(Quantity.of(4, Unit.SECOND));
        assertThat(limit("burner.flame-failure-oil-most").quantity()).isEqualTo(Quantity.of(15, Unit.SECOND));
    }

    /** ANSI Z21.20 (from memory, medium certainty): 180 s. It must not pass for a standard's figure that was read. */
    @Test
    void the_time_of_a_thermocouple_is_ours() {
        Limit most = limit("burner.pilot-outage-most");
        assertThat(most.quantity()).isEqualTo(Quantity.of(3, Unit.MINUTE));
        assertThat(most.basis()).isEqualTo(Basis.OURS);
        assertThat(most.sources()).noneMatch(source -> source.known() == Source.Known.READ);
    }

    /** NFPA 54 (from memory, high certainty): draft is checked after five minutes. */
    @Test
    void a_chimney_has_five_minutes_to_draw() {
        assertThat(limit("draft.spillage-most").quantity()).isEqualTo(Quantity.of(5, Unit.MINUTE));
    }

    /** Published clocking table, 1 ft3 dial: 36 s are 100 ft3/h, 48 s 75, 60 s 60. Heat: 40 CFR 98 Table C-1. */
    @ParameterizedTest
    @CsvSource({"36, 100", "48, 75", "60, 60"})
    void a_cubic_foot_is_clocked_as_the_table_has_it(int seconds, int flow) {
        Quantity input = GasInput.clocked(
                        Quantity.of(1, Unit.CUBIC_FOOT),
                        Rational.ONE,
                        Quantity.of(seconds, Unit.SECOND),
                        Fuel.NATURAL_GAS.heatingValue())
                .result();
        assertThat(input).isEqualTo(Quantity.of(flow * 1026L, Unit.BTU_PER_HOUR));
    }

    /** Published nozzle table: 1.30 gal/h at 140 psi are 1.54 gal/h; the reading at its least is 135 psi. */
    @Test
    void a_nozzle_gives_with_the_root_of_its_pressure() {
        Quantity heat = limit("firing.oil-plate-heat").quantity();
        Quantity doubt = limit("firing.oil-gauge-doubt").quantity();
        Quantity oil = OilInput.nozzle(
                        Quantity.of("1.30", Unit.GALLON_PER_HOUR), Quantity.of(140, Unit.PSI), doubt, heat)
                .quantity(OilInput.OIL);
        assertThat(oil.rounded(2)).isEqualTo(Quantity.of("1.54", Unit.GALLON_PER_HOUR));
    }

    /** ASTM D2156 (from memory, high certainty): spots 0 to 9; No. 1 at most is what oil burners are set to. */
    @Test
    void an_oil_flame_may_leave_the_first_spot_and_no_darker() {
        assertThat(limit("combustion.smoke-most").number()).isEqualTo(1);
    }

    /**
     * The bands are common practice. The excess air beside each end is that of US DOE Steam Tip Sheet 4 for natural gas (3 %
     * oxygen 15.0 %, 5 % 28.1 %, 7 % 44.9 %, 10 % 81.6 %; 6 % is not in the sheet and stands between).
     */
    @ParameterizedTest
    @CsvSource({
        "combustion.oxygen-atmospheric-least, 5, 28.1",
        "combustion.oxygen-atmospheric-most, 10, 81.6",
        "combustion.oxygen-fan-least, 3, 15.0",
        "combustion.oxygen-fan-oil-most, 7, 44.9"
    })
    void oxygen_left_over_is_held_to_what_a_burner_needs(String id, String oxygen, String excess) {
        assertThat(limit(id).quantity()).isEqualTo(percent(oxygen));
        assertThat(limit(id).basis()).isEqualTo(Basis.PRACTICE);
        assertThat(Combustion.excessAir(Fuel.NATURAL_GAS, limit(id).quantity())
                        .result()
                        .rounded(1))
                .isEqualTo(percent(excess));
    }

    /** Common practice: a fan burner for gas is set closer than one for oil. */
    @Test
    void a_gas_burner_with_a_fan_is_set_closest() {
        assertThat(limit("combustion.oxygen-fan-gas-most").quantity())
                .isEqualTo(percent("6"))
                .isLessThan(limit("combustion.oxygen-fan-oil-most").quantity());
    }
}
