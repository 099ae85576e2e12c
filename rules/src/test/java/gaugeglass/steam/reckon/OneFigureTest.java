package gaugeglass.steam.reckon;

import static gaugeglass.engine.quantity.Unit.BTU_PER_HOUR;
import static gaugeglass.engine.quantity.Unit.POUND_PER_HOUR;
import static gaugeglass.engine.quantity.Unit.PSI;
import static gaugeglass.engine.quantity.Unit.SQUARE_FOOT;
import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.steam.proof.SteamProof;
import gaugeglass.steam.reckon.ReliefCapacity.Tubes;
import gaugeglass.steam.reckon.Sizes.AirRule;
import gaugeglass.steam.reckon.Sizes.Louver;
import gaugeglass.steam.reckon.Sizes.Surface;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A rule judges by the same figure that the sheet of its reckoning shows. */
class OneFigureTest {
    @ParameterizedTest
    @ValueSource(strings = {"1", "250", "250.5", "251", "2000", "2000.1", "20000"})
    void an_equalizer_is_judged_by_the_sheet(String poundsPerHour) {
        Quantity steam = Quantity.of(poundsPerHour, POUND_PER_HOUR);
        assertThat(Equalizer.leastSize(steam)).isEqualTo(Sizes.equalizer(steam).result());
    }

    @Test
    void a_safety_valve_is_judged_by_the_sheet() {
        Quantity output = Quantity.of(387_654, BTU_PER_HOUR);
        assertThat(ReliefCapacity.byOutput(output))
                .isEqualTo(Sizes.safetyValve(output).result());
        Quantity surface = Quantity.of("61.7", SQUARE_FOOT);
        assertThat(ReliefCapacity.bySurface(surface, Tubes.FIRE))
                .isEqualTo(Sizes.safetyValve(surface, Surface.FIRETUBE).result());
        assertThat(ReliefCapacity.bySurface(surface, Tubes.WATER))
                .isEqualTo(Sizes.safetyValve(surface, Surface.WATERTUBE).result());
    }

    @Test
    void a_boiler_is_held_against_the_output_that_the_sheet_asks_for() {
        Quantity edr = Quantity.of("823.25", SQUARE_FOOT);
        assertThat(Load.required(edr))
                .isEqualTo(Load.of(edr, Quantity.of(1, PSI), Saturation.STANDARD_ATMOSPHERE)
                        .quantity(Load.REQUIRED));
    }

    @Test
    void burns_have_the_pace_of_the_sheet() {
        List<Cycling.Burn> clock = new ArrayList<>();
        List<Cycling.Spell> watch = new ArrayList<>();
        for (int[] burn : new int[][] {{0, 287}, {600, 911}, {1201, 1500}}) {
            clock.add(new Cycling.Burn(LocalTime.ofSecondOfDay(burn[0]), LocalTime.ofSecondOfDay(burn[1])));
            watch.add(new Cycling.Spell(Rational.of(burn[0]), Rational.of(burn[1])));
        }
        Worked byClock = Cycling.of(clock);
        Worked byWatch = Cycling.watched(watch);
        assertThat(byWatch.quantity(Cycling.MEAN)).isEqualTo(byClock.quantity(Cycling.MEAN));
        assertThat(byWatch.quantity(Cycling.PER_HOUR_LINE)).isEqualTo(byClock.quantity(Cycling.PER_HOUR_LINE));
    }

    /** The figure itself is a limit, as codes differ; as delivered it is North Carolina's, like the sheet's. */
    @Test
    void combustion_air_is_judged_as_delivered_by_the_sheet() {
        Quantity perMillion = SteamProof.stored()
                .book()
                .limits()
                .get("site.air-area-per-million")
                .quantity();
        for (long btu : new long[] {2_000, 345_678, 1_200_000}) {
            Quantity input = Quantity.of(btu, BTU_PER_HOUR);
            assertThat(CombustionAir.needed(input, perMillion))
                    .isEqualTo(Sizes.combustionAir(input, AirRule.NORTH_CAROLINA, Louver.NONE)
                            .quantity(Sizes.FREE));
        }
    }
}
