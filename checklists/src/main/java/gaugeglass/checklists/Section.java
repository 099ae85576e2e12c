package gaugeglass.checklists;

import gaugeglass.engine.vocabulary.Stage;
import java.util.List;

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
 */
public record Section(
        String id, String title, Stage stage, String each, String member, String intro, List<Question> questions) {
    public Section {
        questions = List.copyOf(questions);
    }
}
