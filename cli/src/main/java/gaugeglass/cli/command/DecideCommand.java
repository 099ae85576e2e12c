package gaugeglass.cli.command;

import gaugeglass.cli.paper.Paper;
import gaugeglass.cli.paper.Style;
import gaugeglass.cli.report.Naming;
import gaugeglass.cli.report.Urgencies;
import gaugeglass.cli.visit.Judge;
import gaugeglass.cli.visit.Judged;
import gaugeglass.cli.walk.VisitFile;
import gaugeglass.engine.Assessment.Finding;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.Inspection.Decided;
import gaugeglass.engine.text.Mistakes;
import gaugeglass.engine.text.Nearest;
import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.Decision;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Records in an inspection file what its owner decided about a finding. */
final class DecideCommand {
    private static final List<String> DECISIONS = List.of("done", "deferred", "refused");

    private final DecideOptions options;
    private final Shell shell;
    private final Rulebook rulebook;
    private final Naming naming;

    private DecideCommand(DecideOptions options, Shell shell) {
        this.options = options;
        this.shell = shell;
        shell.lay(options.packs(), List.of(options.file().toString()));
        this.rulebook = shell.rulebook();
        this.naming = new Naming(rulebook.vocabulary(), rulebook.book());
    }

    /** A finding of one unit. */
    private record Found(String unit, Finding finding) {
        String id() {
            return finding.rule() + (finding.subject().isEmpty() ? "" : ":" + finding.subject());
        }
    }

    /** Tells why nothing is recorded. */
    private static final class Refused extends Exception {
        private static final long serialVersionUID = 1L;
        private final int code;

        Refused(int code, String why) {
            super(why, null, false, false);
            this.code = code;
        }
    }

    static int run(DecideOptions options, Shell shell) {
        try {
            return new DecideCommand(options, shell).run();
        } catch (Mistakes e) {
            e.all().forEach(mistake -> shell.say(mistake.message()));
            return Code.UNUSABLE;
        } catch (Refused e) {
            shell.say("gaugeglass: " + e.getMessage());
            return e.code;
        } catch (IOException e) {
            shell.say("gaugeglass: "
                    + (e instanceof VisitFile.InUse
                            ? e.getMessage()
                            : options.file() + ": it could not be written: " + VisitFile.reason(e)));
            return Code.UNUSABLE;
        }
    }

    private int run() throws IOException, Refused {
        if (!Files.isRegularFile(options.file())) {
            throw new Refused(Code.UNUSABLE, options.file() + ": there is no such file");
        }
        if (String.valueOf(options.file().getFileName())
                .toLowerCase(Locale.ROOT)
                .endsWith(".json")) {
            throw new Refused(
                    Code.UNUSABLE,
                    options.file() + ": decisions are written as YAML, and this is a JSON file; expected one ending in"
                            + " .yaml or .yml");
        }
        try (VisitFile file = VisitFile.open(options.file(), rulebook.vocabulary())) {
            Inspection inspection = file.read(LocalDate.EPOCH);
            if (inspection.date().equals(LocalDate.EPOCH)) {
                throw new Refused(Code.UNUSABLE, options.file() + ": the visit has no date; expected it in the file");
            }
            List<Found> found = found(inspection);
            if (options.finding().isEmpty()) {
                return ask(file, inspection, found);
            }
            List<Found> named = named(found, options.finding());
            record(file, inspection, named, options.decision(), options.by(), options.on(), options.note());
            return done();
        }
    }

    private int done() {
        return shell.flush() ? Code.JUDGED : Code.FAULT;
    }

    private List<Found> found(Inspection inspection) {
        List<Found> all = new ArrayList<>();
        for (Judged.Unit unit : new Judge(rulebook, Optional.empty())
                .judge(inspection.file(), inspection)
                .units()) {
            // A decision names the unit; where the file describes none there is nothing to decide on.
            if (!unit.visited().id().isEmpty()) {
                unit.assessment()
                        .findings()
                        .forEach(finding -> all.add(new Found(unit.visited().id(), finding)));
            }
        }
        return all;
    }

    // ---- which finding

    /** The finding that is named; all of a check where its name ends in {@code :*}. */
    private List<Found> named(List<Found> all, String name) throws Refused {
        int colon = name.indexOf(':');
        String rule = colon < 0 ? name : name.substring(0, colon);
        boolean isEach = name.endsWith(":*");
        if (!rulebook.book().cards().containsKey(rule)) {
            List<String> known = List.copyOf(rulebook.book().cards().keySet());
            throw new Refused(
                    Code.WRONG_LINE,
                    "no check is called \"" + rule + "\""
                            + Nearest.to(rule, known)
                                    .map(near -> "; did you mean \"" + near + "\"?")
                                    .orElse(""));
        }
        List<Found> fitting = all.stream()
                .filter(found -> found.finding().rule().equals(rule)
                        && (colon < 0 || isEach || found.finding().subject().equals(name.substring(colon + 1)))
                        && (options.boiler().isEmpty() || found.unit().equals(options.boiler())))
                .toList();
        boolean several = fitting.stream().map(Found::unit).distinct().count() > 1;
        if (fitting.size() == 1 || isEach && !several && !fitting.isEmpty()) {
            return fitting;
        }
        if (fitting.isEmpty()) {
            List<String> ids = all.stream().map(Found::id).distinct().toList();
            throw new Refused(
                    Code.WRONG_LINE,
                    "this visit did not find " + name
                            + (options.boiler().isEmpty() ? "" : " on boiler " + options.boiler())
                            + ", so there is nothing to decide; "
                            + (ids.isEmpty() ? "it found nothing" : "it found " + String.join(", ", ids))
                            + Nearest.to(name, ids)
                                    .map(near -> "; did you mean \"" + near + "\"?")
                                    .orElse(""));
        }
        throw new Refused(
                Code.WRONG_LINE,
                rule + " was found more than once; expected "
                        + (several
                                ? "--boiler with one of "
                                        + String.join(
                                                ", ",
                                                fitting.stream()
                                                        .map(Found::unit)
                                                        .distinct()
                                                        .toList())
                                : "one of "
                                        + String.join(
                                                ", ",
                                                fitting.stream().map(Found::id).toList())
                                        + ", or " + rule + ":* for all of them"));
    }

    // ---- recording

    private void record(
            VisitFile file,
            Inspection inspection,
            List<Found> found,
            Decision decision,
            String by,
            LocalDate on,
            String note)
            throws IOException, Refused {
        if (on.isBefore(inspection.date())) {
            throw new Refused(
                    Code.WRONG_LINE,
                    "--on: " + on + " is before the visit of " + inspection.date() + "; expected that day or later");
        }
        List<Decided> all = new ArrayList<>(inspection.decisions());
        List<Decided> before = new ArrayList<>();
        for (Found one : found) {
            for (Decided old : inspection.decisions()) {
                if (old.isAbout(one.finding().rule(), one.unit(), one.finding().subject())) {
                    before.add(old);
                    all.remove(old);
                }
            }
            all.add(new Decided(one.finding().rule(), one.unit(), one.finding().subject(), decision, by, on, note));
        }
        boolean isKept = file.saveDecisions(inspection.withDecisions(all));
        Paper paper = new Paper(shell.screen());
        paper.line("Recorded: " + Words.of(decision) + " by " + by + " on " + on + ".", Style.STRONG);
        List<String> subjects =
                found.stream().map(one -> one.finding().subject()).toList();
        Found first = found.get(0);
        paper.hanging("  ", naming.title(first.finding().rule(), subjects) + ", boiler " + first.unit(), Style.PLAIN);
        if (first.finding().isStanding()) {
            paper.hanging("  ", "The finding stands until a visit sees it put right.", Style.PLAIN);
        }
        for (Decided old : before) {
            paper.hanging(
                    "  ",
                    "Before, it was: " + Words.of(old.decision()) + " by " + old.by() + " on " + old.on() + ".",
                    Style.PLAIN);
        }
        if (!isKept) {
            paper.hanging("  ", "The file had to be written anew, so comments in it are not kept.", Style.PLAIN);
        }
        paper.hanging("  ", "The file as it was before: " + file.before().getFileName(), Style.PLAIN);
        shell.print(paper.toString());
    }

    // ---- asking

    private int ask(VisitFile file, Inspection inspection, List<Found> found) throws IOException, Refused {
        if (found.isEmpty()) {
            shell.print("This visit found nothing that could be decided on.\n");
            return done();
        }
        BufferedReader in = new BufferedReader(new InputStreamReader(shell.in(), StandardCharsets.UTF_8));
        Inspection now = inspection;
        while (true) {
            list(now, found);
            Optional<String> number = answer(
                    in,
                    "Number of a finding (nothing ends): ",
                    "1 to " + found.size(),
                    text -> text.matches("[0-9]{1,4}")
                            && Integer.parseInt(text) >= 1
                            && Integer.parseInt(text) <= found.size());
            if (number.isEmpty()) {
                return done();
            }
            Optional<String> word = answer(
                    in, "done, deferred or refused: ", "one of " + String.join(", ", DECISIONS), DECISIONS::contains);
            Optional<String> by = word.isEmpty() ? word : answer(in, "Decided by: ", "a name", text -> true);
            Optional<String> on = by.isEmpty()
                    ? by
                    : answer(in, "On (such as 2026-09-20): ", "a date such as 2026-09-20", text -> QuickLine.date(text)
                            .filter(day -> !day.isBefore(inspection.date()))
                            .isPresent());
            if (on.isEmpty()) {
                shell.print("Nothing was recorded.\n");
                continue;
            }
            String note = line(in, "Note (may be nothing): ").orElse("");
            record(
                    file,
                    now,
                    List.of(found.get(Integer.parseInt(number.get()) - 1)),
                    decision(word.orElseThrow()).orElseThrow(),
                    by.orElseThrow(),
                    QuickLine.date(on.get()).orElseThrow(),
                    note);
            now = file.read(inspection.date());
        }
    }

    static Optional<Decision> decision(String word) {
        return Arrays.stream(Decision.values())
                .filter(one -> one != Decision.NONE && Words.of(one).equals(word))
                .findFirst();
    }

    private void list(Inspection inspection, List<Found> found) {
        Paper paper = new Paper(shell.screen());
        paper.line("Findings of the visit of " + inspection.date(), Style.STRONG);
        for (int i = 0; i < found.size(); i++) {
            Found one = found.get(i);
            String lead = (i < 9 ? " " : "") + (i + 1) + ". ";
            paper.hanging(
                    lead,
                    naming.title(one.finding().rule(), one.finding().subject()) + ", boiler " + one.unit() + " - "
                            + (one.finding().isStanding()
                                    ? Urgencies.heading(one.finding().urgency())
                                    : "put right on this visit"),
                    Style.PLAIN);
            inspection.decisions().stream()
                    .filter(decided -> decided.isAbout(
                            one.finding().rule(), one.unit(), one.finding().subject()))
                    .forEach(decided -> paper.hanging(
                            "    ",
                            "decided: " + Words.of(decided.decision()) + " by " + decided.by() + " on " + decided.on(),
                            Style.PLAIN));
        }
        shell.print(paper.toString());
    }

    /** Asks until the answer will do; empty where nothing was answered. */
    private Optional<String> answer(
            BufferedReader in, String question, String expected, java.util.function.Predicate<String> fits)
            throws IOException {
        while (true) {
            Optional<String> line = line(in, question);
            if (line.isEmpty() || fits.test(line.get())) {
                return line;
            }
            shell.print("Expected " + expected + ".\n");
        }
    }

    private Optional<String> line(BufferedReader in, String question) throws IOException {
        shell.print(question);
        shell.flush();
        String line = in.readLine();
        return line == null || line.isBlank() ? Optional.empty() : Optional.of(line.strip());
    }
}
