package gaugeglass.engine.observation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.toy.Bicycles;
import gaugeglass.engine.toy.ChainWear;
import gaugeglass.engine.toy.RandomVisits;
import gaugeglass.engine.toy.TyrePressure;
import gaugeglass.engine.toy.WorkshopTemperature;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.util.List;
import org.junit.jupiter.api.Test;

class InspectionWriterTest {
    private static final Vocabulary VOCABULARY = Bicycles.vocabulary();
    private static final InspectionReader READER = new InspectionReader(VOCABULARY);
    private static final InspectionWriter WRITER = new InspectionWriter(VOCABULARY);

    /** The lines move when a file is written anew; nothing else may. */
    private static Inspection withoutLines(Inspection one) {
        return new Inspection(
                one.file(),
                one.format(),
                one.siteId(),
                one.siteName(),
                one.site(),
                one.date(),
                one.by(),
                one.started(),
                one.note(),
                one.units(),
                one.earlier(),
                one.decisions(),
                one.judgedBy(),
                one.remarks().stream()
                        .map(remark -> new Inspection.Remark(0, remark.where(), remark.what()))
                        .toList());
    }

    @Test
    void what_was_read_is_written_so_that_it_reads_the_same() {
        Inspection read = READER.read("visit", Samples.text("full.yaml"));
        Inspection again = READER.read("visit", WRITER.write(read));
        assertThat(withoutLines(again)).isEqualTo(withoutLines(read));
    }

    @Test
    void what_was_typed_stays_as_it_was_typed() {
        String text = WRITER.write(READER.read("visit", Samples.text("full.yaml")));
        assertThat(text).contains("56-1/2 in", "310 kPa", "made: 2015");
    }

    @Test
    void random_observations_read_back_the_same() {
        for (long seed = 0; seed < 400; seed++) {
            RandomVisits visits = new RandomVisits(VOCABULARY, seed);
            Inspection made = Inspection.of(
                    "a", "b: c", RandomVisits.DAY, List.of(new Inspection.Visited("", visits.next("R1"))));
            String text = WRITER.write(made);
            Inspection read = READER.read("", text);
            // What was made by a program was not typed; from here on it was.
            assertThat(untyped(read)).as("seed %s:%n%s", seed, text).isEqualTo(untyped(made));
            Inspection again = READER.read("", WRITER.write(read));
            assertThat(withoutLines(again)).as("seed %s", seed).isEqualTo(withoutLines(read));
        }
    }

    private static List<Observations> untyped(Inspection inspection) {
        return inspection.units().stream()
                .map(unit -> {
                    Observations.Builder builder = unit.observations().toBuilder();
                    for (Answer answer : unit.observations().answers()) {
                        builder.without(answer)
                                .put(new Answer(
                                        answer.item(),
                                        answer.keys(),
                                        answer.state(),
                                        answer.fact(),
                                        answer.unread(),
                                        answer.note(),
                                        answer.photos(),
                                        answer.at(),
                                        ""));
                    }
                    return builder.build();
                })
                .toList();
    }

    @Test
    void a_third_is_written_as_a_fraction() {
        Observations third = Observations.of(VOCABULARY, "R1")
                .seen(new ChainWear(Quantity.of(Rational.of(4, 3), Unit.PERCENT)))
                .build();
        String text =
                WRITER.write(Inspection.of("a", "", RandomVisits.DAY, List.of(new Inspection.Visited("", third))));
        assertThat(text).contains("1 1/3 %");
    }

    @Test
    void an_answer_about_the_site_that_the_inspection_lacks_is_not_left_out_in_silence() {
        Observations warm = Observations.of(VOCABULARY, "R1")
                .seen(new WorkshopTemperature(Quantity.of(70, Unit.FAHRENHEIT)), State.AS_LEFT)
                .build();
        Inspection of = Inspection.of("a", "", RandomVisits.DAY, List.of(new Inspection.Visited("", warm)));
        assertThat(WRITER.write(of)).contains("as-left: {temperature: 70 F}");
        Inspection lacking = READER.read("", "format: 1\nsite: {id: a}\nvisit: {date: 2026-09-14}\n");
        Inspection stray = new Inspection(
                "",
                1,
                "a",
                "",
                lacking.site(),
                RandomVisits.DAY,
                "",
                "",
                "",
                of.units(),
                List.of(),
                List.of(),
                JudgedBy.NOT_RECORDED,
                List.of());
        assertThatThrownBy(() -> WRITER.write(stray))
                .hasMessage("no file can hold the answer to site.temperature, as-left");
    }

    @Test
    void an_answer_about_an_unknown_tag_is_not_left_out_in_silence() {
        Observations stray = Observations.of(VOCABULARY, "R1")
                .seen(new TyrePressure("front", Quantity.of(40, Unit.PSI)))
                .build();
        Inspection inspection = Inspection.of("a", "", RandomVisits.DAY, List.of(new Inspection.Visited("", stray)));
        assertThatThrownBy(() -> WRITER.write(inspection))
                .hasMessage("no file can hold the answer to wheel.pressure of front, as-found");
    }
}
