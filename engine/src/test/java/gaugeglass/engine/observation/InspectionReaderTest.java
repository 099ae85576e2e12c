package gaugeglass.engine.observation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.text.Mistakes;
import gaugeglass.engine.text.Plain;
import gaugeglass.engine.toy.Bicycles;
import gaugeglass.engine.toy.BrakeKind;
import gaugeglass.engine.toy.BrakeSort;
import gaugeglass.engine.toy.ChainSize;
import gaugeglass.engine.toy.Crack;
import gaugeglass.engine.toy.FrameCrack;
import gaugeglass.engine.toy.FrameMaterial;
import gaugeglass.engine.toy.Grip;
import gaugeglass.engine.toy.Material;
import gaugeglass.engine.toy.PullGrip;
import gaugeglass.engine.toy.TyrePressure;
import gaugeglass.engine.toy.Weather;
import gaugeglass.engine.vocabulary.Decision;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class InspectionReaderTest {
    private static final Vocabulary VOCABULARY = Bicycles.vocabulary();
    private static final InspectionReader READER = new InspectionReader(VOCABULARY);

    private static Inspection read(String text) {
        return READER.read("visit.yaml", text);
    }

    private static Optional<Record> fact(Inspection inspection, String item, State state, Object... keys) {
        return inspection
                .units()
                .get(0)
                .observations()
                .answer(VOCABULARY.item(item).orElseThrow(), List.of(keys), state)
                .flatMap(Answer::fact);
    }

    @Test
    void a_full_visit_is_read_in_all_its_parts() {
        Inspection visit = read(Samples.text("full.yaml"));
        assertThat(visit.siteId()).isEqualTo("yard-lane");
        assertThat(visit.date()).isEqualTo(LocalDate.of(2026, 9, 14));
        assertThat(visit.units()).extracting(Inspection.Visited::id).containsExactly("R1", "R2");
        assertThat(fact(visit, "frame.material", State.AS_FOUND)).contains(new FrameMaterial(Material.STEEL));
        assertThat(fact(visit, "chain.size", State.AS_FOUND))
                .contains(new ChainSize(Quantity.of("56 1/2", Unit.INCH), 113));
        assertThat(fact(visit, "wheel.pressure", State.AS_FOUND, "front"))
                .contains(new TyrePressure("front", Quantity.of(45, Unit.PSI)));
        assertThat(fact(visit, "wheel.pressure", State.AS_LEFT, "front"))
                .contains(new TyrePressure("front", Quantity.of(60, Unit.PSI)));
        assertThat(fact(visit, "pull.grip", State.AS_FOUND, "rear brake", Weather.WET))
                .contains(new PullGrip("rear brake", Weather.WET, Grip.SLIPPED));
        assertThat(fact(visit, "pull.grip", State.AS_LEFT, "rear brake", Weather.WET))
                .contains(new PullGrip("rear brake", Weather.WET, Grip.HELD));
        assertThat(fact(visit, "brake.kind", State.AS_LEFT, "drum"))
                .contains(new BrakeKind("drum", BrakeSort.BACK_PEDAL));
        Observations first = visit.units().get(0).observations();
        assertThat(first.roster("brake").fitted(State.AS_FOUND)).hasValue(2);
        assertThat(first.roster("brake").fitted(State.AS_LEFT)).hasValue(2);
        assertThat(first.roster("brake").tags(State.AS_LEFT)).containsExactly("rear brake", "drum");
        assertThat(first.disputes())
                .containsExactly(new Observations.Dispute("brake.slips", "rear brake", "the rim was wet"));
        assertThat(visit.earlier()).hasSize(1);
        assertThat(visit.decisions())
                .containsExactly(new Inspection.Decided(
                        "brake.slips",
                        "R1",
                        "rear brake",
                        Decision.DEFERRED,
                        "the owner",
                        LocalDate.of(2026, 9, 16),
                        "until spring"));
        assertThat(visit.units().get(1).observations().roster("wheel").unread()).isEqualTo("wrapped up");
    }

    @Test
    void what_could_not_be_read_keeps_its_reason_note_pictures_and_time() {
        Observations first = read(Samples.text("full.yaml")).units().get(0).observations();
        Answer answer = first.answer(VOCABULARY.item("wheel.marked").orElseThrow(), List.of("rear"), State.AS_FOUND)
                .orElseThrow();
        assertThat(answer.fact()).isEmpty();
        assertThat(answer.unread()).isEqualTo("worn away");
        assertThat(answer.note()).isEqualTo("ask the owner");
        assertThat(answer.photos()).containsExactly("rear-1.jpg", "rear-2.jpg");
        assertThat(answer.at()).isEqualTo("09:40");
    }

    @Test
    void every_unit_has_the_answers_about_the_site() {
        for (Inspection.Visited unit : read(Samples.text("full.yaml")).units()) {
            assertThat(unit.observations()
                            .answer(VOCABULARY.item("site.floor").orElseThrow(), List.of(), State.AS_FOUND))
                    .isPresent();
        }
    }

    @Test
    void a_year_alone_is_taken_as_its_first_day_and_said_so() {
        Inspection visit = read(Samples.text("full.yaml"));
        assertThat(visit.remarks())
                .extracting(Inspection.Remark::toString)
                .containsExactly("bicycles/R1/frame/made: \"2015\" is taken as 2015-01-01");
    }

    @Test
    void json_says_the_same_as_yaml() {
        Inspection yaml = read(Samples.text("full.yaml"));
        Inspection json = read(Samples.text("full.json"));
        assertThat(json.units()).hasSameSizeAs(yaml.units());
        for (int i = 0; i < yaml.units().size(); i++) {
            assertThat(List.copyOf(json.units().get(i).observations().answers()))
                    .isEqualTo(List.copyOf(yaml.units().get(i).observations().answers()));
        }
    }

    @Test
    void an_inspection_with_little_in_it_is_readable() {
        Inspection visit = read("""
                format: 1
                site: {id: a, name: A shed}
                visit: {date: 2026-09-14}
                bicycles:
                  - id: R1
                """);
        assertThat(visit.units()).hasSize(1);
        assertThat(visit.units().get(0).observations().answers()).isEmpty();
    }

    @Test
    void no_units_at_all_are_left_to_the_caller() {
        assertThat(read("format: 1\nsite: {id: a}\nvisit: {date: 2026-09-14}\n").units())
                .isEmpty();
    }

    @Test
    void a_missing_date_is_a_mistake_unless_the_caller_gives_one() {
        String text = "format: 1\nsite: {id: a}\n";
        assertThatThrownBy(() -> read(text)).isInstanceOf(Mistakes.class).hasMessageContaining("the visit has no date");
        assertThat(READER.read("v", text, LocalDate.of(2026, 1, 2)).date()).isEqualTo(LocalDate.of(2026, 1, 2));
    }

    @Test
    void terminal_escapes_in_a_name_are_read_and_shown_harmlessly() {
        Inspection visit = read("format: 1\nsite: {id: a, name: \"\\e[2J Hall\"}\nvisit: {date: 2026-09-14}\n");
        assertThat(visit.siteName()).isEqualTo("\u001B[2J Hall");
        assertThat(Plain.of(visit.siteName())).isEqualTo("\\u001b[2J Hall");
    }

    @Test
    void words_of_a_choice_may_be_spelled_as_people_spell_them() {
        for (String written : List.of("none-seen", "None seen", "NONE_SEEN", "none  seen", "none\u2011seen")) {
            Inspection visit = read("format: 1\nsite: {id: a}\nvisit: {date: 2026-09-14}\nbicycles:\n"
                    + "  - id: R1\n    frame: {crack: " + written + "}\n");
            assertThat(fact(visit, "frame.crack", State.AS_FOUND))
                    .as(written)
                    .contains(new FrameCrack(Crack.NONE_SEEN));
        }
    }

    @Test
    void what_was_put_in_on_the_visit_has_its_answers_as_left() {
        Inspection visit = read(Samples.text("full.yaml"));
        assertThat(fact(visit, "brake.kind", State.AS_FOUND, "drum")).isEmpty();
        assertThat(fact(visit, "brake.kind", State.AS_LEFT, "drum")).isPresent();
    }

    @Test
    void a_file_of_nothing_but_mistakes_is_left_after_a_hundred() {
        StringBuilder text = new StringBuilder("format: 1\nsite: {id: a}\nvisit: {date: 2026-09-14}\n");
        for (int i = 0; i < 5000; i++) {
            text.append("key").append(i).append(": 1\n");
        }
        assertThatThrownBy(() -> read(text.toString()))
                .isInstanceOfSatisfying(Mistakes.class, e -> assertThat(e.all()).hasSize(100));
    }

    @Test
    void one_reader_serves_several_threads() {
        InspectionReader fresh = new InspectionReader(VOCABULARY);
        String text = Samples.text("full.yaml");
        List<Inspection.Visited> once = READER.read("f", text).units();
        assertThat(IntStream.range(0, 200)
                        .parallel()
                        .mapToObj(i -> fresh.read("f", text).units())
                        .distinct())
                .containsExactly(once);
    }
}
