package gaugeglass.checklists;

import java.util.ArrayList;
import java.util.List;

/**
 * What is asked on one sort of visit to one kind of system.
 *
 * @param id its name
 * @param title its heading
 * @param system the kind of system it is for, as a word
 * @param visit the sort of visit, as a word
 * @param sections in the order of the visit
 */
public record Checklist(String id, String title, String system, String visit, List<Section> sections) {
    public Checklist {
        sections = List.copyOf(sections);
    }

    /** Every question, in order. */
    public List<Question> questions() {
        List<Question> all = new ArrayList<>();
        sections.forEach(section -> all.addAll(section.questions()));
        return all;
    }
}
