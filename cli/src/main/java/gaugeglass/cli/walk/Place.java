package gaugeglass.cli.walk;

import gaugeglass.checklists.Interview.Step;
import gaugeglass.checklists.Question;
import gaugeglass.checklists.Section;
import gaugeglass.engine.observation.Subjects;
import java.util.List;

/**
 * One question about one thing, as a walk puts it.
 *
 * @param keys the tag and, for a fixed set, the member; empty for the unit and the site
 */
record Place(Section section, Question question, List<Object> keys) {
    Place {
        keys = List.copyOf(keys);
    }

    static Place of(Step step) {
        return new Place(step.section(), step.question(), step.keys());
    }

    /** Tells it from every other place of a walk. */
    String id() {
        return question.gives() + " " + Subjects.of(keys);
    }
}
