package gaugeglass.steam;

import static gaugeglass.engine.quantity.Unit.BTU_PER_HOUR;
import static gaugeglass.engine.quantity.Unit.SQUARE_FOOT;
import static gaugeglass.steam.proof.OneBoiler.RULEBOOK;
import static gaugeglass.steam.proof.OneBoiler.assess;
import static gaugeglass.steam.proof.OneBoiler.seen;
import static gaugeglass.steam.proof.OneBoiler.visit;
import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.Assessment.Finding;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.quantity.Dimension;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.steam.reckon.Load;
import gaugeglass.steam.reckoned.LoadReckoning.OutputOfNeed;
import gaugeglass.steam.reckoned.LoadReckoning.ServedRadiation;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The figures that decide whether a boiler fits its radiators, beside where they come from. */
class LoadFiguresTest {
    private static List<String> found(String boiler) {
        return assess(boiler).findings().stream().map(Finding::rule).toList();
    }

    /** ASHRAE Journal, September 2009: 240 Btu/h a square foot, and 1.33 for piping and pickup: 500 ft2 ask for 160,000 Btu/h. */
    @Test
    void five_hundred_square_feet_ask_for_a_hundred_and_sixty_thousand() {
        assertThat(Load.required(Quantity.of(500, SQUARE_FOOT))).isEqualTo(Quantity.of(160_000, BTU_PER_HOUR));
    }

    /** By the same figures 400,000 Btu/h gross on 850 ft2 are 1.471 times what is asked for. */
    @Test
    void a_boiler_half_as_large_again_is_between_the_bands() {
        String boiler =
                "plate: {output-mark: marked, output: 400000 Btu/h}\nload: {survey: on-record, connected: 850 ft2}";
        OutputOfNeed share =
                RULEBOOK
                        .reckoned(
                                visit(boiler).units().get(0).observations(),
                                visit(boiler).date())
                        .stream()
                        .filter(OutputOfNeed.class::isInstance)
                        .map(OutputOfNeed.class::cast)
                        .findFirst()
                        .orElseThrow();
        assertThat(share.share().inUnit(Unit.TIMES).rounded(3)).isEqualTo(Quantity.of("1.471", Unit.TIMES));
        assertThat(found(boiler)).contains("load.oversized");
    }

    /** Common practice: a boiler a third too large has been turned down as far as is prudent and is too large still. */
    @Test
    void a_third_too_large_after_turning_down_is_lived_with() {
        String third = """
                burner: {type: power-gas}
                cycling: {ended: pressure}
                plate: {input: 400000 Btu/h, output-mark: marked, output: 320000 Btu/h}
                load: {survey: on-record, connected: 675 ft2}
                input: {measured: gas-meter, gas-clock: {dial: 1 ft3, turns: 6, time: 60 s},
                        heat-from: suppliers-figure, gas-heat: 1000 Btu/ft3}
                """;
        assertThat(found(third)).contains("firing.turned-down-still-large").doesNotContain("firing.not-clocked");
    }

    /**
     * Tables of radiation (two printings that agree; bold heights also from memory, high certainty): 3-column 26 in 3 3/4, 32 in 4 1/2,
     * 38 in 5 ft2 a section; 2-column 38 in 4; 4-column 45 in 10. Tubes are from memory with medium certainty: 5-tube 32 in 4 1/3.
     */
    @ParameterizedTest
    @CsvSource({
        "three-column, 26 in, 3 3/4 ft2",
        "three-column, 32 in, 4 1/2 ft2",
        "three-column, 38 in, 5 ft2",
        "two-column, 38 in, 4 ft2",
        "four-column, 45 in, 10 ft2",
        "five-tube, 32 in, 4 1/3 ft2"
    })
    void a_section_has_the_square_feet_of_the_tables(String sort, String height, String each) {
        assertThat(served("{tag: one, sort: " + sort + ", sections: {sections: 1, height: " + height + "}}"))
                .isEqualTo(Quantity.parse(each, Dimension.AREA));
    }

    /** Geometry: 1 in pipe 0.344 ft2 a foot, 2 in 0.622, 4 in 1.178 (outside diameters of ASME B36.10M). */
    @ParameterizedTest
    @CsvSource({"1 in, 0.344", "2 in, 0.622", "4 in, 1.178"})
    void bare_pipe_has_its_outside(String size, String each) {
        assertThat(served("{tag: one, sort: bare-pipe, pipe: {length: 1 ft, size: " + size + "}}")
                        .rounded(3))
                .isEqualTo(Quantity.of(each, SQUARE_FOOT));
    }

    private static Quantity served(String radiator) {
        Inspection visit =
                visit("load: {survey: taken-today}\nsurveyed-radiators: {fitted: 1, each: [" + radiator + "]}");
        return RULEBOOK.reckoned(seen(visit), visit.date()).stream()
                .filter(ServedRadiation.class::isInstance)
                .map(ServedRadiation.class::cast)
                .findFirst()
                .orElseThrow()
                .radiation();
    }
}
