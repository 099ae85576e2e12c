package gaugeglass.cli.command;

import gaugeglass.checklists.Checklist;
import gaugeglass.checklists.Checklists;
import gaugeglass.cli.command.FullLine.Wrong;
import gaugeglass.cli.printed.PrintedSheet;
import gaugeglass.cli.report.TextReport;
import gaugeglass.cli.sheet.PhoneSheet;
import gaugeglass.cli.sheet.SingleAnswerStops;
import gaugeglass.cli.visit.Judge;
import gaugeglass.cli.visit.Judged;
import gaugeglass.cli.visit.Sources;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.InspectionReader;
import gaugeglass.engine.text.Mistake;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Writes a checklist as a page to be filled in by hand, or as one for a phone. */
final class SheetCommand {
    private final SheetOptions options;
    private final Shell shell;

    private SheetCommand(SheetOptions options, Shell shell) {
        this.options = options;
        this.shell = shell;
    }

    static int run(SheetOptions options, Shell shell) throws Wrong {
        return new SheetCommand(options, shell).run();
    }

    private int run() throws Wrong {
        shell.lay(options.packs(), options.word().map(List::of).orElse(List.of()));
        Rulebook rulebook = shell.rulebook();
        Optional<Inspection> inspection = Optional.empty();
        if (options.word().isPresent()) {
            Judged read;
            try (Sources sources = new Sources(List.of(options.word().get()), false, shell.in())) {
                read = Judge.check(new InspectionReader(rulebook.vocabulary()), sources.next());
            }
            if (read instanceof Judged.Unusable unusable) {
                for (Mistake mistake : unusable.mistakes()) {
                    shell.say(mistake.message());
                }
                return Code.UNUSABLE;
            }
            if (read instanceof Judged.Fault fault) {
                shell.sayFault(fault.name(), fault.cause());
                return Code.FAULT;
            }
            inspection = Optional.of(((Judged.Visit) read).inspection());
        }
        Checklist checklist = checklist(Checklists.of(rulebook), inspection);
        SingleAnswerStops stops = SingleAnswerStops.of(rulebook);
        if (options.isForPhone()) {
            return phone(PhoneSheet.html(rulebook, stops, checklist, TextReport.DEFERS), out(checklist));
        }
        PrintedSheet sheet = new PrintedSheet(rulebook, stops, checklist, inspection, options.size());
        String out = out(checklist);
        Written written = new Written(shell);
        if (out.equals("-")) {
            shell.printJson(sheet.html());
        } else {
            written.put(Path.of(out), sheet.html().getBytes(StandardCharsets.UTF_8));
        }
        if (options.pdf()) {
            try {
                written.put(
                        ReportCommand.beside(out),
                        sheet.pdf(inspection.map(Inspection::date).orElseGet(() -> shell.now()
                                .toLocalDate())));
            } catch (IOException e) {
                shell.sayFault(out, e);
                return Code.FAULT;
            }
        }
        return shell.flush() ? written.code() : Code.FAULT;
    }

    private int phone(String html, String out) {
        Written written = new Written(shell);
        if (out.equals("-")) {
            shell.printJson(html);
        } else {
            written.put(Path.of(out), html.getBytes(StandardCharsets.UTF_8));
        }
        return shell.flush() ? written.code() : Code.FAULT;
    }

    private Checklist checklist(Checklists checklists, Optional<Inspection> inspection) throws Wrong {
        List<String> known = checklists.all().stream().map(Checklist::id).toList();
        String id = options.checklist();
        if (id.isEmpty()) {
            id = inspection
                    .flatMap(one -> one.units().stream()
                            .map(Inspection.Visited::checklist)
                            .filter(word -> !word.isEmpty())
                            .findFirst())
                    .orElseThrow(
                            () -> new Wrong("--checklist is missing; expected one of " + String.join(", ", known)));
        }
        String wanted = id;
        return checklists
                .checklist(wanted)
                .orElseThrow(() -> new Wrong("--checklist: \"" + wanted + "\" is no checklist; expected one of "
                        + String.join(", ", known) + FullLine.meant(wanted, known)));
    }

    private String out(Checklist checklist) {
        if (!options.out().isEmpty()) {
            return options.out();
        }
        return options.word().map(ReportLine::stem).orElse(checklist.id())
                + (options.isForPhone() ? ".phone.html" : ".sheet.html");
    }
}
