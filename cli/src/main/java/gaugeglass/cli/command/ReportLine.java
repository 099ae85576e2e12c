package gaugeglass.cli.command;

import gaugeglass.cli.command.FullLine.Wrong;
import gaugeglass.cli.printed.PaperSize;
import gaugeglass.cli.printed.Reader;
import gaugeglass.engine.vocabulary.Decision;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** The part of the command line that is about reports and what is decided on them. */
final class ReportLine {
    private ReportLine() {}

    static CommandSpec report() {
        CommandSpec report = FullLine.command(
                "report", "Write an inspection's report as one HTML file, and as PDF and lists of work where asked.");
        report.addPositional(one("The inspection file, or - for standard input."));
        report.addOption(
                FullLine.valued("--for", "WHOM", "owner (plain words, short; the default) or file (everything)."));
        report.addOption(FullLine.valued(
                "--out", "PATH", "The HTML file; - for standard output. Else beside FILE, named after it."));
        report.addOption(FullLine.valued("--paper", "SIZE", "letter (the default) or a4."));
        report.addOption(FullLine.flag("--pdf", "Put a PDF of the same pages beside the HTML file."));
        report.addOption(FullLine.valued("--csv", "PATH", "Write the work as a table for a spreadsheet, too."));
        report.addOption(FullLine.valued("--json", "PATH", "Write the work as JSON, too."));
        report.addOption(FullLine.pack());
        report.addOption(
                FullLine.valued("--date", "YYYY-MM-DD", "Judge for this day instead of the day of the visit."));
        return report;
    }

    static CommandSpec decide() {
        CommandSpec decide = FullLine.command(
                "decide",
                "Record what the owner decided about a finding in the inspection file. Without a finding you are shown all and"
                        + " asked.");
        decide.addPositional(PositionalParamSpec.builder()
                .index("0..*")
                .arity("1..*")
                .paramLabel("FILE [CHECK[:SUBJECT] DECISION]")
                .hideParamSyntax(true)
                .type(List.class)
                .auxiliaryTypes(String.class)
                .description("The inspection file; the finding by its check, with its subject where several have it;"
                        + " done, deferred or refused.")
                .build());
        decide.addOption(FullLine.pack());
        decide.addOption(FullLine.valued("--by", "WHO", "Who decided."));
        decide.addOption(FullLine.valued("--on", "YYYY-MM-DD", "When."));
        decide.addOption(FullLine.valued("--note", "TEXT", "What was said about it."));
        decide.addOption(FullLine.valued("--boiler", "ID", "Which boiler, where several have the finding."));
        return decide;
    }

    static CommandSpec sheet() {
        CommandSpec sheet = FullLine.command(
                "sheet",
                "Write a checklist as a page to fill in by hand, HTML and PDF, or as one file that asks its questions on a"
                        + " phone, without a network.");
        sheet.addPositional(PositionalParamSpec.builder()
                .index("0..*")
                .arity("0..*")
                .paramLabel("FILE")
                .type(List.class)
                .auxiliaryTypes(String.class)
                .description(
                        "An inspection file whose answers are filled in, or - for standard input; without it the sheet is"
                                + " blank.")
                .build());
        sheet.addOption(FullLine.valued("--checklist", "ID", "Which checklist; without it the inspection's own."));
        sheet.addOption(FullLine.flag("--phone", "The page for a phone instead of the printable one."));
        sheet.addOption(FullLine.pack());
        sheet.addOption(FullLine.valued(
                "--out", "PATH", "The HTML file; - for standard output. Else named after FILE or the checklist."));
        sheet.addOption(FullLine.valued("--paper", "SIZE", "letter (the default) or a4."));
        sheet.addOption(FullLine.flag("--pdf", "Put a PDF of the same pages beside the HTML file."));
        return sheet;
    }

    static SheetOptions sheet(ParseResult said) throws Wrong {
        List<String> words = FullLine.words(said);
        if (words.size() > 1 || words.contains("")) {
            throw new Wrong(
                    "a sheet is of one inspection or of none; expected one file, - for standard input, or nothing");
        }
        Optional<String> word = words.stream().findFirst();
        boolean phone = said.matchedOptionValue("--phone", false);
        boolean pdf = said.matchedOptionValue("--pdf", false);
        String out = FullLine.value(said, "--out");
        if (phone && word.isPresent()) {
            throw new Wrong("--phone begins with nothing answered; open a file that it saved on the phone itself");
        }
        if (phone && (pdf || said.hasMatchedOption("--paper"))) {
            throw new Wrong("--phone is for a screen; --pdf and --paper go with the printable page");
        }
        if (word.isPresent() && word.get().equals("-") && out.isEmpty()) {
            throw new Wrong("--out is missing: an inspection from standard input has no name to go by");
        }
        if (!out.isEmpty() && !out.equals("-") && !out.endsWith(".html")) {
            throw new Wrong("--out: \"" + out + "\" does not end in .html; with --pdf the PDF is put beside the page");
        }
        if (out.equals("-") && pdf) {
            throw new Wrong("--pdf is put beside the page; expected --out with the name of a file");
        }
        return new SheetOptions(
                word,
                FullLine.value(said, "--checklist"),
                phone,
                out,
                said.hasMatchedOption("--paper")
                        ? FullLine.constant("--paper", PaperSize.values(), FullLine.value(said, "--paper"))
                        : PaperSize.LETTER,
                pdf,
                FullLine.packs(said));
    }

    private static PositionalParamSpec one(String description) {
        return PositionalParamSpec.builder()
                .index("0")
                .arity("1")
                .paramLabel("FILE")
                .type(List.class)
                .auxiliaryTypes(String.class)
                .description(description)
                .build();
    }

    static ReportOptions report(ParseResult said) throws Wrong {
        List<String> words = FullLine.words(said);
        if (words.size() != 1 || words.get(0).isEmpty()) {
            throw new Wrong("a report is of one inspection; expected one file, or - for standard input");
        }
        String word = words.get(0);
        Reader reader = said.hasMatchedOption("--for")
                ? FullLine.constant("--for", Reader.values(), FullLine.value(said, "--for"))
                : Reader.OWNER;
        if (word.equals("-") && !said.hasMatchedOption("--out")) {
            throw new Wrong("--out is missing: an inspection from standard input has no name to go by");
        }
        String out = said.hasMatchedOption("--out") ? FullLine.value(said, "--out") : out(word, reader);
        boolean pdf = said.matchedOptionValue("--pdf", false);
        if (!out.equals("-") && !out.endsWith(".html")) {
            throw new Wrong("--out: \"" + out + "\" does not end in .html; with --pdf the PDF is put beside the page");
        }
        if (out.equals("-") && pdf) {
            throw new Wrong("--pdf is put beside the page; expected --out with the name of a file");
        }
        return new ReportOptions(
                word,
                reader,
                out,
                said.hasMatchedOption("--paper")
                        ? FullLine.constant("--paper", PaperSize.values(), FullLine.value(said, "--paper"))
                        : PaperSize.LETTER,
                pdf,
                path(said, "--csv", ".csv"),
                path(said, "--json", ".json"),
                FullLine.date(said),
                FullLine.packs(said));
    }

    /** The name of a file without its ending. */
    static String stem(String word) {
        int dot = word.lastIndexOf('.');
        return dot > Math.max(word.lastIndexOf('/'), word.lastIndexOf('\\')) + 1 ? word.substring(0, dot) : word;
    }

    private static String out(String word, Reader reader) {
        return stem(word) + (reader == Reader.OWNER ? ".owner.html" : ".file.html");
    }

    private static Optional<Path> path(ParseResult said, String option, String ending) throws Wrong {
        if (!said.hasMatchedOption(option)) {
            return Optional.empty();
        }
        String name = FullLine.value(said, option);
        // A slip of the hand must not write a list over an inspection.
        if (!name.endsWith(ending)) {
            throw new Wrong(option + ": \"" + name + "\" does not end in " + ending);
        }
        if (FullLine.words(said).contains(name)) {
            throw new Wrong(option + ": \"" + name + "\" is the inspection itself");
        }
        return Optional.of(Path.of(name));
    }

    static DecideOptions decide(ParseResult said) throws Wrong {
        List<String> words = FullLine.words(said);
        if (words.isEmpty() || words.get(0).isEmpty()) {
            throw new Wrong("no inspection file is named");
        }
        Path file = Path.of(words.get(0));
        String note = FullLine.value(said, "--note");
        String boiler = FullLine.value(said, "--boiler");
        if (words.size() == 1) {
            for (String option : List.of("--by", "--on", "--note", "--boiler")) {
                if (said.hasMatchedOption(option)) {
                    throw new Wrong(option + " goes with a finding; without one you are asked for everything");
                }
            }
            return new DecideOptions(file, "", Decision.NONE, "", LocalDate.EPOCH, "", "", FullLine.packs(said));
        }
        List<String> known = List.of("done", "deferred", "refused");
        if (words.size() != 3) {
            throw new Wrong(
                    words.size() == 2
                            ? "the decision is missing; expected one of " + String.join(", ", known)
                            : "\"" + words.get(3) + "\" is one word too many");
        }
        Optional<Decision> decision = DecideCommand.decision(words.get(2));
        if (decision.isEmpty()) {
            throw new Wrong("\"" + words.get(2) + "\" is no decision; expected one of " + String.join(", ", known)
                    + FullLine.meant(words.get(2), known));
        }
        if (FullLine.value(said, "--by").isBlank()) {
            throw new Wrong("--by is missing: who decided");
        }
        if (!said.hasMatchedOption("--on")) {
            throw new Wrong("--on is missing: the day it was decided, such as 2026-09-20");
        }
        return new DecideOptions(
                file,
                words.get(1),
                decision.get(),
                FullLine.value(said, "--by"),
                FullLine.day("--on", FullLine.value(said, "--on")),
                note,
                boiler,
                FullLine.packs(said));
    }
}
