package gaugeglass.cli.command;

import gaugeglass.cli.printed.PrintedReport;
import gaugeglass.cli.visit.Judge;
import gaugeglass.cli.visit.Judged;
import gaugeglass.cli.visit.Sources;
import gaugeglass.cli.walk.VisitFile;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.text.Mistake;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;

/** Writes one inspection's report as a page, on paper, and its work as a list. */
final class ReportCommand {
    private final ReportOptions options;
    private final Shell shell;
    private int code = Code.JUDGED;

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
        if (options.out().equals("-")) {
            shell.printJson(report.html());
        } else {
            write(Path.of(options.out()), report.html().getBytes(StandardCharsets.UTF_8));
        }
        if (options.pdf()) {
            pdf(report);
        }
        options.csv().ifPresent(path -> write(path, report.workAsCsv().getBytes(StandardCharsets.UTF_8)));
        options.json().ifPresent(path -> write(path, report.workAsJson().getBytes(StandardCharsets.UTF_8)));
        return shell.flush() ? code : Code.FAULT;
    }

    private Optional<Path> folder() {
        return options.word().equals("-")
                ? Optional.empty()
                : Optional.ofNullable(Path.of(options.word()).toAbsolutePath().getParent());
    }

    private void pdf(PrintedReport report) {
        byte[] pdf;
        try {
            pdf = report.pdf();
        } catch (IOException e) {
            shell.sayFault(options.out(), e);
            code = Code.FAULT;
            return;
        }
        write(beside(options.out()), pdf);
    }

    /** The PDF of a page. */
    static Path beside(String out) {
        return Path.of(out.substring(0, out.length() - ".html".length()) + ".pdf");
    }

    private void write(Path path, byte[] bytes) {
        Path next = path.resolveSibling("." + path.getFileName() + ".next");
        try {
            Files.write(next, bytes);
            try {
                Files.move(next, path, StandardCopyOption.ATOMIC_MOVE);
            } catch (AtomicMoveNotSupportedException e) {
                Files.move(next, path, StandardCopyOption.REPLACE_EXISTING);
            }
            shell.say("gaugeglass: wrote " + path);
        } catch (IOException e) {
            shell.say("gaugeglass: " + path + ": it could not be written: " + VisitFile.reason(e));
            code = Code.FAULT;
        }
    }
}
