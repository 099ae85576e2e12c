package gaugeglass.cli.visit;

import gaugeglass.engine.Assessment;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.Inspection.Visited;
import gaugeglass.engine.text.Mistake;
import java.time.LocalDate;
import java.util.List;

/** What became of one inspection. */
public sealed interface Judged {
    /** What it is called in messages. */
    String name();

    /**
     * It was judged.
     *
     * @param inspection as read
     * @param date the day for which it was judged
     * @param units each unit's assessment, in the file's order; one without an id where the file describes none
     */
    record Visit(String name, Inspection inspection, LocalDate date, List<Unit> units) implements Judged {
        public Visit {
            units = List.copyOf(units);
        }
    }

    /** One unit with its assessment. */
    record Unit(Visited visited, Assessment assessment) {}

    /** It could not be used; these are all the reasons that can be told. */
    record Unusable(String name, List<Mistake> mistakes) implements Judged {
        public Unusable {
            mistakes = List.copyOf(mistakes);
        }
    }

    /** The program failed on it. */
    record Fault(String name, Throwable cause) implements Judged {}
}
