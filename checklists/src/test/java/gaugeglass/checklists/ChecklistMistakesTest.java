package gaugeglass.checklists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gaugeglass.engine.Rulebook;
import gaugeglass.engine.text.Mistakes;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What a training lead may get wrong in a checklist, and what is said to it. */
class ChecklistMistakesTest {
    private static final Vocabulary VOCABULARY =
            Rulebook.load(ChecklistMistakesTest.class.getClassLoader()).vocabulary();

    private static final String QUESTIONS = """
            questions:
              - id: count
                gives: cutoff.fitted
              - id: kind
                gives: cutoff.kind
                choices: {float: A float in a bowl}
              - id: opening
                gives: cutoff.opening
              - id: opened
                gives: cutoff.opened
                ask-when:
                  cutoff.opening: [on-record]
            """;
    private static final String SECTIONS = """
            sections:
              - {id: counts, title: Counts, stage: arrival, questions: [count]}
              - {id: each, title: Each, stage: cold, each: cutoff, questions: [kind, opening, opened]}
            """;
    private static final String CHECKLISTS = """
            checklists:
              - {id: short, title: Short, system: any, visit: re-visit, sections: [counts, each]}
            """;

    private static final String PANELS = """
            panels:
              - {id: plate, title: At the plate, parts: [kind, opening]}
            """;

    private static void says(String questions, String sections, String checklists, String... words) {
        says(PANELS, questions, sections, checklists, words);
    }

    private static void saysOfPanels(String panels, String... words) {
        says(panels, QUESTIONS, SECTIONS, CHECKLISTS, words);
    }

    private static void says(String panels, String questions, String sections, String checklists, String[] words) {
        assertThatThrownBy(() -> Checklists.read(
                        VOCABULARY,
                        Map.of(
                                "a.panels.yaml",
                                panels,
                                "a.questions.yaml",
                                questions,
                                "a.sections.yaml",
                                sections,
                                "a.checklists.yaml",
                                checklists)))
                .isInstanceOf(Mistakes.class)
                .satisfies(thrown -> {
                    for (String word : words) {
                        assertThat(thrown).hasMessageContaining(word);
                    }
                });
    }

    @Test
    void the_sound_one_is_read() {
        Checklists.read(
                VOCABULARY,
                Map.of(
                        "a.panels.yaml",
                        PANELS,
                        "a.questions.yaml",
                        QUESTIONS,
                        "a.sections.yaml",
                        SECTIONS,
                        "a.checklists.yaml",
                        CHECKLISTS));
    }

    @Test
    void what_stands_between_the_parts_of_a_panel_is_named() {
        saysOfPanels(
                PANELS.replace("[kind, opening]", "[kind, opened]"),
                "\"opening\" stands between the parts of panel plate",
                "make it a part");
    }

    @Test
    void a_panel_has_two_parts_at_least_that_are_known() {
        saysOfPanels(PANELS.replace("[kind, opening]", "[kind]"), "1 parts make no panel", "a.panels.yaml:2:");
        saysOfPanels(PANELS.replace("opening", "openning"), "openning", "did you mean \"opening\"");
        saysOfPanels(PANELS.replace("parts:", "prats:"), "prats", "did you mean \"parts\"");
    }

    @Test
    void a_question_stands_on_one_panel() {
        saysOfPanels(
                PANELS + "  - {id: other, title: Elsewhere, parts: [opening, opened]}\n",
                "\"opening\" stands on panel plate already");
    }

    @Test
    void events_and_readings_must_be_able_to_make_an_answer() {
        String kind = "    gives: cutoff.kind\n";
        says(
                QUESTIONS.replace(kind, kind + "    take: events\n    events: {b: burner}\n"),
                SECTIONS,
                CHECKLISTS,
                "\"burner-only\" may be heard and is no choice of cutoff.kind");
        says(QUESTIONS.replace(kind, kind + "    take: events\n"), SECTIONS, CHECKLISTS, "names none");
        says(QUESTIONS.replace(kind, kind + "    take: readings\n"), SECTIONS, CHECKLISTS, "is no quantity");
        says(QUESTIONS.replace(kind, kind + "    readings: length\n"), SECTIONS, CHECKLISTS, "takes no readings");
    }

    @Test
    void an_unknown_observation_is_named_with_its_place_and_the_nearest() {
        says(
                QUESTIONS.replace("cutoff.kind", "cutoff.knd"),
                SECTIONS,
                CHECKLISTS,
                "a.questions.yaml:5:",
                "cutoff.kind");
    }

    @Test
    void an_unknown_key_is_named() {
        says(QUESTIONS.replace("choices:", "choises:"), SECTIONS, CHECKLISTS, "choises", "did you mean \"choices\"");
    }

    @Test
    void an_unknown_choice_is_named() {
        says(QUESTIONS.replace("{float:", "{flaot:"), SECTIONS, CHECKLISTS, "flaot", "did you mean \"float\"");
    }

    @Test
    void a_condition_that_can_never_hold_is_a_dead_branch() {
        says(
                QUESTIONS.replace("[on-record]", "[on-file]"),
                SECTIONS,
                CHECKLISTS,
                "never an answer",
                "a.questions.yaml:9:");
    }

    @Test
    void a_condition_that_always_holds_is_refused() {
        says(QUESTIONS.replace("[on-record]", "[on-record, none-on-record]"), SECTIONS, CHECKLISTS, "always holds");
    }

    @Test
    void a_condition_on_a_later_question_is_refused() {
        says(
                QUESTIONS,
                SECTIONS.replace("[kind, opening, opened]", "[kind, opened, opening]"),
                CHECKLISTS,
                "not asked before it");
    }

    @Test
    void a_stage_out_of_order_is_refused() {
        says(QUESTIONS, SECTIONS, CHECKLISTS.replace("[counts, each]", "[each, counts]"), "order of stages");
    }

    @Test
    void what_guards_the_first_gate_is_not_asked_under_fire() {
        says(QUESTIONS, SECTIONS.replace("stage: cold", "stage: firing"), CHECKLISTS, "guards the first gate");
    }

    @Test
    void equipment_is_asked_about_piece_by_piece() {
        says(QUESTIONS, SECTIONS.replace(" each: cutoff,", ""), CHECKLISTS, "is about each cutoff");
    }

    @Test
    void an_observation_is_asked_once() {
        says(QUESTIONS, SECTIONS.replace("[kind, opening", "[kind, kind, opening"), CHECKLISTS, "asked twice");
    }

    @Test
    void an_unknown_section_is_named() {
        says(QUESTIONS, SECTIONS, CHECKLISTS.replace("each]", "eech]"), "eech", "did you mean \"each\"");
    }
}
