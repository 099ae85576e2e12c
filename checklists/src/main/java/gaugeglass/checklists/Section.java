package gaugeglass.checklists;

import gaugeglass.engine.vocabulary.Stage;
import java.util.List;
import java.util.Optional;

/**
 * Questions that are asked together.
 *
 * @param id its name
 * @param title its heading
 * @param stage the part of the visit it belongs to
 * @param each the counted kind for each of which the questions are asked in turn; empty where they are asked once
 * @param member for a fixed set within that kind, the one member the questions are about; empty otherwise
 * @param intro what to know before it begins; may be empty
 * @param questions in order
 * @param panels those of which at least two parts are asked here
 */
public record Section(
        String id,
        String title,
        Stage stage,
        String each,
        String member,
        String intro,
        List<Question> questions,
        List<Panel> panels) {
    public Section {
        questions = List.copyOf(questions);
        panels = List.copyOf(panels);
    }

    /** The panel that a question of this section is put on; empty where it has a screen to itself. */
    public Optional<Panel> panel(Question question) {
        return panels.stream().filter(panel -> panel.parts().contains(question)).findFirst();
    }

    Section with(List<Question> others) {
        // A panel of which a part is gone is asked question by question.
        List<Panel> whole = panels.stream()
                .filter(panel -> others.containsAll(panel.parts()))
                .toList();
        return new Section(id, title, stage, each, member, intro, others, whole);
    }
}
