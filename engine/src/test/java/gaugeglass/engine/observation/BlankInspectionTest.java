package gaugeglass.engine.observation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gaugeglass.engine.observation.Layout.Equipment;
import gaugeglass.engine.observation.Layout.Question;
import gaugeglass.engine.toy.Bicycles;
import gaugeglass.engine.vocabulary.Component;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class BlankInspectionTest {
    private static final Vocabulary VOCABULARY = Bicycles.vocabulary();
    private static final InspectionReader READER = new InspectionReader(VOCABULARY);
    private static final LocalDate DAY = LocalDate.of(2026, 9, 14);

    private static BlankInspection blank() {
        return BlankInspection.of(VOCABULARY, "yard-lane", DAY).unit("R1");
    }

    /** Takes the comment marks off the example entries. */
    private static String withExamples(String blank) {
        List<String> lines = new ArrayList<>();
        boolean isExample = false;
        for (String line : blank.split("\n")) {
            isExample = line.equals("      # each:") || isExample && line.startsWith("      # ");
            lines.add(isExample ? line.replaceFirst("# ", "") : line);
        }
        return String.join("\n", lines) + "\n";
    }

    /** Puts a likely answer behind each key that has none. */
    private static String filled(String blank) {
        Layout layout = new Layout(VOCABULARY);
        Map<String, Question> questions = new java.util.HashMap<>();
        layout.site.forEach(questions::put);
        layout.groups.values().forEach(questions::putAll);
        for (Equipment equipment : layout.equipment.values()) {
            equipment.questions.forEach(
                    (key, question) -> questions.put(equipment.kind.plural() + "/" + key, question));
            equipment.sets.values().forEach(set -> questions.putAll(set.questions));
        }
        List<String> lines = new ArrayList<>();
        String equipment = "";
        int tags = 0;
        List<Layout.Part> around = List.of();
        for (String line : blank.split("\n")) {
            String key = line.strip().replaceFirst("^- ", "").replaceFirst(":$", "");
            if (layout.equipment.containsKey(key)) {
                equipment = key + "/";
            }
            List<Layout.Part> parts = around;
            Question question = questions.getOrDefault(equipment + key, questions.get(key));
            if (!line.endsWith(":") || line.strip().startsWith("#")) {
                lines.add(line);
            } else if (key.equals("fitted")) {
                lines.add(line + " 2");
            } else if (key.equals("tag")) {
                lines.add(line + " T" + ++tags);
            } else if (parts.stream().anyMatch(part -> part.key.equals(key))) {
                lines.add(line + " "
                        + parts.stream()
                                .filter(part -> part.key.equals(key))
                                .map(part -> answer(part.component))
                                .findFirst()
                                .orElseThrow());
            } else if (question != null && question.parts.size() == 1) {
                around = List.of();
                lines.add(line + " " + answer(question.parts.get(0).component));
            } else {
                around = question == null ? List.of() : question.parts;
                lines.add(line);
            }
        }
        return String.join("\n", lines) + "\n";
    }

    private static String answer(Component component) {
        return switch (component.form()) {
            case CHOICE -> component.choices().get(0);
            case QUANTITY -> component.most().toString();
            case COUNT -> component.to();
            case DATE -> "2020";
            case TEXT -> "words";
        };
    }

    @Test
    void a_blank_form_is_read_and_gives_no_answer() {
        for (String text : List.of(
                blank().write(),
                withExamples(blank().write()),
                blank().entries("wheel", 2).entries("brake", 3).unit("R2").write())) {
            Inspection read = READER.read("blank", text);
            assertThat(read.site()).isEmpty();
            assertThat(read.units()).allSatisfy(unit -> {
                assertThat(unit.observations().answers()).isEmpty();
                assertThat(unit.observations().hasAsLeft()).isFalse();
                for (Kind kind : VOCABULARY.kinds()) {
                    assertThat(unit.observations().roster(kind.id())).isEqualTo(Roster.EMPTY);
                }
            });
        }
    }

    @Test
    void a_filled_form_answers_every_question() {
        long asked = VOCABULARY.items().stream()
                .filter(item -> !item.isReckoned())
                .mapToLong(item -> VOCABULARY.kind(item.kind()).orElseThrow().isFixed() ? 2 : 1)
                .sum();
        Inspection examples = READER.read("filled", filled(withExamples(blank().write())));
        assertThat(examples.units().get(0).observations().answers()).hasSize((int) asked);
        Inspection two = READER.read(
                "filled", filled(blank().entries("wheel", 2).entries("brake", 2).write()));
        assertThat(two.units().get(0).observations().roster("wheel").tags()).hasSize(2);
        assertThat(two.units().get(0).observations().answers()).hasSizeGreaterThan((int) asked);
    }

    @Test
    void every_question_stands_there_with_its_words() {
        String text = blank().write().replaceAll("\\s*\n[ #]*", " ");
        VOCABULARY.items().stream().filter(item -> !item.isReckoned()).forEach(item -> {
            assertThat(text).contains(item.ask());
            item.unreadBecause().forEach(reason -> assertThat(text).contains(reason));
        });
        assertThat(text).contains("steel | aluminium | carbon.", "With its unit: 0 psi to 150 psi.");
    }

    @Test
    void what_is_not_wanted_is_left_out() {
        String text = blank().askingOnly(item -> !item.group().equals("chain"))
                .countingOnly(kind -> !kind.id().equals("brake"))
                .write();
        assertThat(text).doesNotContain("chain", "brakes", "pulls").contains("wheels:", "frame:");
        READER.read("blank", text);
    }

    @Test
    void an_unknown_kind_or_too_many_are_refused() {
        assertThatThrownBy(() -> blank().entries("pedal", 1)).hasMessageContaining("\"pedal\"");
        assertThatThrownBy(() -> blank().entries("wheel", 5)).hasMessageContaining("0 to 4");
    }

    @Test
    void no_line_is_wider_than_an_editor_shows() {
        assertThat(blank().write().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
    }

    @Test
    void odd_names_stand_in_quotes() {
        Inspection read = READER.read(
                "blank",
                BlankInspection.of(VOCABULARY, "yes: no", DAY)
                        .siteName("# 4")
                        .unit("- 1")
                        .write());
        assertThat(read.siteId()).isEqualTo("yes: no");
        assertThat(read.siteName()).isEqualTo("# 4");
        assertThat(read.units().get(0).id()).isEqualTo("- 1");
    }
}
