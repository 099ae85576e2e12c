package gaugeglass.cli.command;

import gaugeglass.cli.printed.PrintedReport;
import gaugeglass.cli.visit.Judge;
import gaugeglass.cli.visit.Judged;
import gaugeglass.cli.visit.Sources;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.text.Mistake;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Writes one inspection's report as a page, on paper, and its work as a list. */
final class ReportCommand {
    private final ReportOptions options;
    private final Shell shell;

    private ReportCommand(ReportOptions options, Shell shell) {
        this.options = options;
        this.shell = shell;
    }

    static int run(ReportOptions options, Shell shell) {
        return new ReportCommand(options, shell).run();
    }

    private int run() {
        shell.lay(options.packs(), List.of(options.word()));
        Rulebook rulebook = shell.rulebook();
        Judge judge = new Judge(rulebook, options.date());
        Judged judged;
        try (Sources sources = new Sources(List.of(options.word()), false, shell.in())) {
            judged = judge.judge(sources.next());
        }
        if (judged instanceof Judged.Unusable unusable) {
            for (Mistake mistake : unusable.mistakes()) {
                shell.say(mistake.message());
            }
            return Code.UNUSABLE;
        }
        if (judged instanceof Judged.Fault fault) {
            shell.sayFault(fault.name(), fault.cause());
            return Code.FAULT;
        }
        Judged.Visit visit = (Judged.Visit) judged;
        PrintedReport report = new PrintedReport(rulebook, visit, options.reader(), options.size(), folder());
        int fault = Code.JUDGED;
        Written written = new Written(shell);
        if (options.out().equals("-")) {
            shell.printJson(report.html());
        } else {
            written.put(Path.of(options.out()), report.html().getBytes(StandardCharsets.UTF_8));
        }
        if (options.pdf()) {
            try {
                written.put(beside(options.out()), report.pdf());
            } catch (IOException e) {
                shell.sayFault(options.out(), e);
                fault = Code.FAULT;
            }
        }
        options.csv().ifPresent(path -> written.put(path, report.workAsCsv().getBytes(StandardCharsets.UTF_8)));
        options.json().ifPresent(path -> written.put(path, report.workAsJson().getBytes(StandardCharsets.UTF_8)));
        return shell.flush() ? Math.max(fault, written.code()) : Code.FAULT;
    }

    private Optional<Path> folder() {
        return options.word().equals("-")
                ? Optional.empty()
                : Optional.ofNullable(Path.of(options.word()).toAbsolutePath().getParent());
    }

    /** The PDF of a page. */
    static Path beside(String out) {
        return Path.of(out.substring(0, out.length() - ".html".length()) + ".pdf");
    }
}
