package gaugeglass.cli.walk;

import gaugeglass.checklists.Checklist;
import gaugeglass.checklists.Checklists;
import gaugeglass.cli.paper.Screen;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.InspectionReader;
import gaugeglass.engine.reading.SourceText;
import gaugeglass.engine.text.Mistakes;
import gaugeglass.engine.text.Nearest;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;

/** Walking through an inspection, from the opening of its file to its end. */
public final class Walking {
    /** How it went. */
    public enum Outcome {
        FINISHED,
        BROKEN_OFF,
        UNUSABLE
    }

    private final Rulebook rulebook;
    private final LocalDate today;
    private final Supplier<String> time;

    /**
     * Readies a walk.
     *
     * @param today the day of a new inspection
     * @param time the time of an answer, as hours and minutes
     */
    public Walking(Rulebook rulebook, LocalDate today, Supplier<String> time) {
        this.rulebook = rulebook;
        this.today = today;
        this.time = time;
    }

    /**
     * Walks in the terminal of this process.
     *
     * @param path the inspection file; it need not exist yet
     * @param last last visit's file, for identity and dates
     * @param checklist the id of a checklist; empty to be asked or to take the file's
     * @param complain takes what keeps the walk from beginning
     */
    public Outcome inTerminal(
            Path path,
            Optional<Path> last,
            Optional<String> checklist,
            Screen screen,
            LongSupplier millis,
            Consumer<String> complain) {
        try (Terminal terminal = TerminalBuilder.builder()
                .system(true)
                .dumb(true)
                .encoding(screen.charset())
                .build()) {
            return walk(new TerminalTalk(terminal, screen, millis), path, last, checklist, complain);
        } catch (IOException e) {
            complain.accept("the terminal cannot be used: " + e.getMessage());
            return Outcome.UNUSABLE;
        }
    }

    Outcome walk(Talk talk, Path path, Optional<Path> last, Optional<String> checklistId, Consumer<String> complain) {
        Checklists checklists = Checklists.of(rulebook);
        if (checklistId.isPresent() && checklists.checklist(checklistId.get()).isEmpty()) {
            List<String> known = new ArrayList<>();
            checklists.all().forEach(one -> known.add(one.id()));
            complain.accept("\"" + checklistId.get() + "\" is no checklist; expected one of " + String.join(", ", known)
                    + Nearest.to(checklistId.get(), known)
                            .map(near -> "; did you mean \"" + near + "\"?")
                            .orElse(""));
            return Outcome.UNUSABLE;
        }
        try (VisitFile file = VisitFile.open(path, rulebook.vocabulary())) {
            Optional<Inspection> before = last.map(this::read);
            Begin begin = new Begin(talk, rulebook, checklists);
            Inspection inspection;
            if (file.exists()) {
                if (file.isCutOff() && !begin.goesOnCutOff(file, today)) {
                    return Outcome.BROKEN_OFF;
                }
                // Written with the next answer: what is judged from now on, is judged by this.
                inspection = file.read(today).withJudgedBy(rulebook.judgedBy());
                talk.say("Going on with " + path.getFileName() + ", visit of " + inspection.date() + ".");
                Optional<Path> written = file.keepComments();
                if (written.isPresent()) {
                    talk.say("It has comments, which a walk does not write again; the file as it is now is kept as "
                            + written.get().getFileName() + ".");
                }
            } else {
                inspection = begin.inspection(path.getFileName().toString(), today, time.get(), before);
                file.save(inspection);
            }
            if (inspection.units().isEmpty()) {
                complain.accept(path + ": the file names no boiler");
                return Outcome.UNUSABLE;
            }
            int unit = begin.unit(inspection);
            String kept = checklistId.orElse(inspection.units().get(unit).checklist());
            Checklist checklist = checklists.checklist(kept).orElseGet(begin::checklist);
            if (!inspection.units().get(unit).checklist().equals(checklist.id())) {
                // Only a change is saved: a save without one would put this state in the place of the one before it.
                inspection = Visit.walkedBy(inspection, unit, checklist.id());
                file.save(inspection);
            }
            Why why = new Why(rulebook);
            Walk walk = new Walk(talk, rulebook, why, file, checklist, inspection, unit, before, time);
            Walk.End end = walk.run();
            if (end == Walk.End.BROKEN_OFF) {
                talk.say("Left. Every answer is in " + path.getFileName() + "; walk it again to go on.");
            }
            return end == Walk.End.FINISHED ? Outcome.FINISHED : Outcome.BROKEN_OFF;
        } catch (Talk.Ended e) {
            return Outcome.BROKEN_OFF;
        } catch (Mistakes e) {
            e.all().forEach(mistake -> complain.accept(mistake.message()));
            return Outcome.UNUSABLE;
        } catch (VisitFile.InUse e) {
            complain.accept(e.getMessage());
            return Outcome.UNUSABLE;
        } catch (IOException e) {
            complain.accept(path + ": cannot be written: " + VisitFile.reason(e));
            return Outcome.UNUSABLE;
        }
    }

    private Inspection read(Path path) {
        return new InspectionReader(rulebook.vocabulary())
                .read(path.getFileName().toString(), SourceText.read(path), today);
    }
}
