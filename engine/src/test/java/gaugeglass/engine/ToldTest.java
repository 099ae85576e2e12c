package gaugeglass.engine;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.InspectionReader;
import gaugeglass.engine.observation.InspectionWriter;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.toy.Bicycles;
import gaugeglass.engine.toy.SpokesMissing;
import gaugeglass.engine.vocabulary.Earlier;
import gaugeglass.engine.vocabulary.Telling;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.util.List;
import org.junit.jupiter.api.Test;

class ToldTest {
    private static final Vocabulary VOCABULARY = Bicycles.vocabulary();

    /** As many spokes as there are findings about the wheel. */
    private static final Telling SPOKES = new Telling() {
        @Override
        public Class<? extends Record> gives() {
            return SpokesMissing.class;
        }

        @Override
        public List<SpokesMissing> tell(List<Earlier> earlier, List<String> tags) {
            return tags.stream()
                    .map(tag -> new SpokesMissing(tag, (int) earlier.stream()
                            .filter(one -> one.subject().equals(tag))
                            .count()))
                    .toList();
        }
    };

    private static final String VISIT = """
            format: 1
            site: {id: w}
            visit: {date: 2026-09-14}
            %s
            bicycles:
              - id: R1
                wheels: {fitted: 1, each: [{tag: F, spokes-missing: 7}, {tag: N, present: as-left}]}
            """;

    private static final String FINDING =
            "{rule: wheel.spokes, bicycle: %s, subject: F, urgency: plan, found-on: 2025-09-10}";

    private static Observations visit(String earlier) {
        return Told.with(
                List.of(SPOKES),
                InspectionReader.read(VOCABULARY, "", VISIT.formatted(earlier))
                        .units()
                        .get(0)
                        .observations());
    }

    private static Answer spokes(Observations visit, String tag, State state) {
        return visit.answer(VOCABULARY.item(SpokesMissing.class).orElseThrow(), List.of(tag), state)
                .orElseThrow();
    }

    @Test
    void what_earlier_findings_tell_stands_in_the_place_of_what_was_typed() {
        Observations told = visit("earlier: [" + FINDING.formatted("R1") + ", " + FINDING.formatted("another") + "]");
        Answer answer = spokes(told, "F", State.AS_FOUND);
        assertThat(answer.fact()).contains(new SpokesMissing("F", 1));
        assertThat(answer.note()).contains("earlier visits");
        // What was put in on the visit has no answer as found.
        assertThat(spokes(told, "N", State.AS_LEFT).fact()).contains(new SpokesMissing("N", 0));
    }

    @Test
    void what_somebody_noted_beside_an_answer_is_kept() {
        String known = "earlier: [" + FINDING.formatted("R1") + "]";
        for (String own : List.of("1", "7")) {
            String text = VISIT.formatted(known)
                    .replace("spokes-missing: 7", "spokes-missing: {value: " + own + ", note: counted twice}");
            Observations read =
                    InspectionReader.read(VOCABULARY, "", text).units().get(0).observations();
            Observations told = Told.with(List.of(SPOKES), read);
            assertThat(spokes(told, "F", State.AS_FOUND).fact()).contains(new SpokesMissing("F", 1));
            assertThat(spokes(told, "F", State.AS_FOUND).note()).endsWith("counted twice");
            // Told a second time, it says the same.
            assertThat(Told.with(List.of(SPOKES), told)).isEqualTo(told);
        }
    }

    @Test
    void an_empty_list_says_that_nothing_was_left_and_an_empty_key_says_nothing() {
        assertThat(spokes(visit("earlier: []"), "F", State.AS_FOUND).fact()).contains(new SpokesMissing("F", 0));
        for (String unknown : List.of("", "earlier:")) {
            assertThat(spokes(visit(unknown), "F", State.AS_FOUND).fact()).contains(new SpokesMissing("F", 7));
        }
    }

    @Test
    void whether_earlier_findings_are_known_is_written_and_read_again() {
        InspectionWriter writer = new InspectionWriter(VOCABULARY);
        assertThat(writer.write(InspectionReader.read(VOCABULARY, "", VISIT.formatted("earlier: []"))))
                .contains("earlier: []");
        assertThat(writer.write(InspectionReader.read(VOCABULARY, "", VISIT.formatted("earlier:"))))
                .doesNotContain("earlier");
    }
}
