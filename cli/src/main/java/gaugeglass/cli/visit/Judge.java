package gaugeglass.cli.visit;

import gaugeglass.checklists.Checklist;
import gaugeglass.checklists.Checklists;
import gaugeglass.checklists.Interview;
import gaugeglass.engine.Assessment;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.Inspection.Remark;
import gaugeglass.engine.observation.Inspection.Visited;
import gaugeglass.engine.observation.InspectionReader;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads and judges inspections; used by any number of threads at once. */
public final class Judge {
    private final Rulebook rulebook;
    private final InspectionReader reader;
    private final Optional<LocalDate> date;
    private Optional<Checklists> checklists = Optional.empty();

    /**
     * A judge.
     *
     * @param date the day for which to judge; empty for each visit's own
     */
    public Judge(Rulebook rulebook, Optional<LocalDate> date) {
        this.rulebook = rulebook;
        this.reader = new InspectionReader(rulebook.vocabulary());
        this.date = date;
    }

    /** Reads and judges one inspection; whatever goes wrong is in the result. */
    public Judged judge(Task task) {
        try {
            return judge(task.name(), read(reader, task, date));
        } catch (Mistakes e) {
            return new Judged.Unusable(task.name(), placed(task, e));
        } catch (RuntimeException | StackOverflowError e) {
            return new Judged.Fault(task.name(), e);
        }
    }

    /**
     * Judges an inspection that was read: with the waivers that hold at its site, and without what is set aside.
     *
     * @throws RuntimeException where the program fails on it
     */
    public Judged.Visit judge(String name, Inspection inspection) {
        LocalDate day = date.orElse(inspection.date());
        List<Judged.Unit> units = new ArrayList<>();
        Set<Remark> aside = new LinkedHashSet<>();
        for (Visited visited : visited(rulebook.vocabulary(), inspection)) {
            Visited observed =
                    new Visited(visited.name(), visited.checklist(), rulebook.observed(visited.observations()));
            Assessment assessment = rulebook.assess(asked(observed, aside), day, inspection.siteId());
            units.add(new Judged.Unit(observed, assessment));
        }
        Inspection told = aside.isEmpty() ? inspection : inspection.withMore(List.copyOf(aside));
        return new Judged.Visit(name, told, day, units);
    }

    /**
     * What is judged of a unit: where it was walked by a checklist, without the answers to questions that an earlier answer
     * closes, as in the walk itself; each of them is remarked on.
     */
    private Observations asked(Visited visited, Set<Remark> aside) {
        Observations all = visited.observations();
        // Only here are checklists read: an inspection that names none is judged sooner.
        Optional<Checklist> walked =
                visited.checklist().isEmpty() ? Optional.empty() : checklists().checklist(visited.checklist());
        if (walked.isEmpty()) {
            return all;
        }
        Interview interview = Interview.of(walked.get(), all);
        Vocabulary vocabulary = rulebook.vocabulary();
        String unit = vocabulary.unit().plural() + "/" + all.unit() + "/";
        interview.countsSetAside().forEach(kind -> aside.add(remark(unit + kind.plural())));
        interview
                .setAside()
                .forEach(answer -> aside.add(
                        remark((answer.item().kind().equals(vocabulary.site().id()) ? "" : unit)
                                + answer.item().id()
                                + (answer.keys().isEmpty() ? "" : " of " + answer.subject()))));
        return interview.judged();
    }

    private static Remark remark(String where) {
        return new Remark(0, where, "set aside and not judged, as an earlier answer closes the question");
    }

    private synchronized Checklists checklists() {
        if (checklists.isEmpty()) {
            checklists = Optional.of(Checklists.of(rulebook));
        }
        return checklists.get();
    }

    /**
     * Reads one inspection.
     *
     * @throws Mistakes when it cannot be used; their lines are counted from the top of the text alone
     */
    static Inspection read(InspectionReader reader, Task task, Optional<LocalDate> date) {
        String text = task.text().read();
        return date.isPresent() ? reader.read(task.name(), text, date.get()) : reader.read(task.name(), text);
    }

    /** Reads only. */
    public static Judged check(InspectionReader reader, Task task) {
        try {
            Inspection inspection = read(reader, task, Optional.empty());
            return new Judged.Visit(task.name(), inspection, inspection.date(), List.of());
        } catch (Mistakes e) {
            return new Judged.Unusable(task.name(), placed(task, e));
        } catch (RuntimeException | StackOverflowError e) {
            return new Judged.Fault(task.name(), e);
        }
    }

    private static List<Mistake> placed(Task task, Mistakes mistakes) {
        return mistakes.all().stream().map(task::placed).toList();
    }

    /**
     * The units of an inspection. Where none is described, one that nothing is known of: what was seen of the site may
     * forbid firing all the same, and an empty list would read as if there were nothing to say.
     */
    private static List<Visited> visited(Vocabulary vocabulary, Inspection inspection) {
        if (!inspection.units().isEmpty()) {
            return inspection.units();
        }
        Observations.Builder nothing = Observations.of(vocabulary, "");
        inspection.site().forEach(nothing::put);
        return List.of(new Visited("", nothing.build()));
    }
}
