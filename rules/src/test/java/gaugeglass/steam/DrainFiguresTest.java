package gaugeglass.steam;

import static gaugeglass.steam.proof.OneBoiler.RULEBOOK;
import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.Assessment.Word;
import gaugeglass.engine.book.Basis;
import gaugeglass.steam.proof.OneBoiler;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures of published documents about draining. */
class DrainFiguresTest {
    private static Word word(String rule, String boiler) {
        return OneBoiler.word(OneBoiler.assess(boiler), rule);
    }

    /**
     * ASME Boiler and Pressure Vessel Code, Section IV, HG-715, bottom drains by the safety valve's capacity in lb/h (from
     * memory, high certainty). The output in thousands of Btu/h is that capacity.
     */
    @ParameterizedTest
    @CsvSource({
        "500, 3/4, 1/2",
        "501, 1, 3/4",
        "1250, 1, 3/4",
        "1251, 1 1/4, 1",
        "2500, 1 1/4, 1",
        "2501, 1 1/2, 1 1/4",
        "6000, 1 1/2, 1 1/4",
        "6001, 2, 1 1/2"
    })
    void a_bottom_drain_has_the_size_of_the_table_or_more(int pounds, String least, String smaller) {
        String boiler = "plate: {output-mark: marked, output: %d000 Btu/h}%ndrain: {presence: fitted, size: %s in}";
        assertThat(word("drain.too-small", boiler.formatted(pounds, least))).isEqualTo(Word.IN_ORDER);
        assertThat(word("drain.too-small", boiler.formatted(pounds, smaller))).isEqualTo(Word.FOUND);
    }

    /** Code of Maryland Regulations: what is blown down into a sewer has 150 F at the most, which is 65.6 C. */
    @Test
    void water_for_the_sewer_is_at_150_degrees_at_the_most() {
        String boiler = "drain: {outlet: hot-to-sewer, temperature: %s}";
        assertThat(word("drain.unsafe-discharge", boiler.formatted("150 F"))).isEqualTo(Word.IN_ORDER);
        assertThat(word("drain.unsafe-discharge", boiler.formatted("65.5 C"))).isEqualTo(Word.IN_ORDER);
        assertThat(word("drain.unsafe-discharge", boiler.formatted("65.6 C"))).isEqualTo(Word.FOUND);
        assertThat(RULEBOOK.book().limits().get("drain.sewer-hottest").basis()).isEqualTo(Basis.STANDARD);
        assertThat(RULEBOOK.book().limits().get("drain.sewer-hottest").most()).isEqualTo("150 F");
    }
}
