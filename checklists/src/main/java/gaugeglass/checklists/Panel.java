package gaugeglass.checklists;

import java.util.List;

/**
 * Questions about one thing, looked at from one place with one tool, and therefore put on one screen.
 *
 * <p>A panel changes how questions are shown and nothing else: each part is answered on its own, hangs on its own
 * conditions, and stays open when it is left out.
 *
 * @param id its name
 * @param title what is looked at, and from where
 * @param look how to look at all of it; may be empty
 * @param parts the questions, two to {@value #MOST_PARTS}; in a section they stand one after another
 * @param file the file it stands in
 * @param line its line there
 */
public record Panel(String id, String title, String look, List<Question> parts, String file, int line) {
    /** So that one digit names a part. */
    public static final int MOST_PARTS = 9;

    public Panel {
        parts = List.copyOf(parts);
    }
}
