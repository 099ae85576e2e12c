package gaugeglass.cli.command;

import gaugeglass.engine.book.Urgency;
import gaugeglass.engine.text.Nearest;
import gaugeglass.engine.text.Words;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/**
 * The whole of the command line: every command and option, their help, and what to say of a wrong one.
 *
 * <p>The commands are described by calls and not by annotations, whose reading costs more than all else here.
 */
final class FullLine {
    private static final String INPUTS =
            "Inspection files (.yaml, .yml, .json), files with one inspection as JSON on each"
                    + " line (.jsonl), folders with everything in them, or - for standard input.";

    private final Shell shell;

    private FullLine(Shell shell) {
        this.shell = shell;
    }

    static int run(String[] args, Shell shell) {
        return new FullLine(shell).run(args);
    }

    private int run(String[] args) {
        CommandLine line = line(shell.screen().width());
        ParseResult top;
        try {
            top = line.parseArgs(args);
        } catch (ParameterException e) {
            return wrong(e.getCommandLine().getCommandSpec(), message(e));
        }
        ParseResult last = top;
        while (last.hasSubcommand()) {
            last = last.subcommand();
        }
        if (last.isUsageHelpRequested()) {
            shell.print(usage(last.commandSpec()));
            return done();
        }
        if (top.isVersionHelpRequested()) {
            shell.print("gaugeglass " + shell.version() + "\n");
            return done();
        }
        try {
            return command(last);
        } catch (Wrong wrong) {
            return wrong(last.commandSpec(), wrong.getMessage());
        }
    }

    private int command(ParseResult said) throws Wrong {
        CommandSpec parent = said.commandSpec().parent();
        if (parent != null && parent.name().equals("pack")) {
            return PackCommand.run(said, shell);
        }
        switch (said.commandSpec().name()) {
            case "assess":
                return AssessCommand.run(assess(said), shell);
            case "fleet":
                return FleetCommand.run(FleetLine.fleet(said), shell);
            case "check":
                return CheckCommand.run(check(said), shell);
            case "rulebook":
                return done(RulebookCommand.run(rulebook(said), shell));
            case "walk":
                return walk(said);
            case "reckon":
                return done(ReckonCommand.run(reckon(said), shell));
            case "blank":
                shell.print(BlankCommand.text(blank(said), shell));
                return done();
            case "report":
                return ReportCommand.run(ReportLine.report(said), shell);
            case "sheet":
                return SheetCommand.run(ReportLine.sheet(said), shell);
            case "decide":
                return DecideCommand.run(ReportLine.decide(said), shell);
            case "schema":
                return schema(said);
            default:
                usage(said.commandSpec()).lines().forEach(shell::say);
                return Code.WRONG_LINE;
        }
    }

    private int walk(ParseResult said) throws Wrong {
        if (words(said).isEmpty()) {
            throw new Wrong("no inspection file is named; one that is not there is begun");
        }
        shell.lay(packs(said), words(said).subList(0, 1));
        return WalkCommand.run(
                Path.of(words(said).get(0)),
                said.hasMatchedOption("--last") ? Optional.of(Path.of(value(said, "--last"))) : Optional.empty(),
                said.hasMatchedOption("--checklist") ? Optional.of(value(said, "--checklist")) : Optional.empty(),
                shell);
    }

    private int done() {
        return done(Code.JUDGED);
    }

    private int done(int code) {
        return shell.flush() ? code : Code.FAULT;
    }

    // ---- what was said

    /** Tells what is wrong with a value. */
    static final class Wrong extends Exception {
        private static final long serialVersionUID = 1L;

        Wrong(String message) {
            super(message);
        }
    }

    static AssessOptions assess(ParseResult said) throws Wrong {
        return new AssessOptions(
                inputs(said),
                said.matchedOptionValue("--lines", false),
                said.hasMatchedOption("--as") ? constant("--as", As.values(), value(said, "--as")) : As.TEXT,
                said.hasMatchedOption("--fail-at")
                        ? Optional.of(constant("--fail-at", Urgency.values(), value(said, "--fail-at")))
                        : Optional.empty(),
                date(said),
                packs(said),
                asThen(said));
    }

    private static Optional<Path> asThen(ParseResult said) throws Wrong {
        if (!said.hasMatchedOption("--as-then")) {
            return Optional.empty();
        }
        if (said.hasMatchedOption("--pack") || said.hasMatchedOption("--date")) {
            throw new Wrong("--as-then takes packs and day as they were then; expected it without --pack and --date");
        }
        List<String> words = inputs(said);
        if (words.size() != 1 || !Files.isRegularFile(Path.of(words.get(0))) || said.hasMatchedOption("--lines")) {
            throw new Wrong("--as-then judges one inspection; expected one file");
        }
        return Optional.of(Path.of(value(said, "--as-then")));
    }

    private static CheckOptions check(ParseResult said) throws Wrong {
        return new CheckOptions(inputs(said), said.matchedOptionValue("--lines", false), packs(said));
    }

    static List<String> packs(ParseResult said) throws Wrong {
        List<String> packs = said.matchedOptionValue("--pack", List.of());
        if (packs.contains("")) {
            throw new Wrong("--pack: nothing is named; expected a folder or a zip");
        }
        return packs;
    }

    /** The option that lays packs over the rulebook. */
    static OptionSpec pack() {
        return OptionSpec.builder("--pack")
                .paramLabel("PACK")
                .type(List.class)
                .auxiliaryTypes(String.class)
                .description(
                        "Lay this pack, a folder or a zip, over the rulebook; may stand there more than once. Without it those"
                                + " are laid on that a packs.yaml beside the inspections names; \"none\" lays on nothing.")
                .build();
    }

    private static RulebookCommand.Options rulebook(ParseResult said) throws Wrong {
        As as = said.hasMatchedOption("--as") ? constant("--as", As.values(), value(said, "--as")) : As.TEXT;
        boolean limits = said.matchedOptionValue("--limits", false);
        boolean items = said.matchedOptionValue("--items", false);
        List<String> ids = words(said);
        if ((limits ? 1 : 0) + (items ? 1 : 0) + (ids.isEmpty() ? 0 : 1) > 1) {
            throw new Wrong("an id, --limits and --items each ask for something else; expected one of them");
        }
        return new RulebookCommand.Options(ids, limits, items, as, packs(said));
    }

    private static ReckonCommand.Options reckon(ParseResult said) throws Wrong {
        As as = said.hasMatchedOption("--as") ? constant("--as", As.values(), value(said, "--as")) : As.TEXT;
        return new ReckonCommand.Options(words(said), as);
    }

    private BlankCommand.Options blank(ParseResult said) throws Wrong {
        shell.lay(packs(said), List.of());
        String system = value(said, "--system");
        List<String> known = BlankCommand.systems(shell.vocabulary());
        if (said.hasMatchedOption("--system") && !known.contains(system)) {
            throw new Wrong("--system: \"" + system + "\" is not known; expected one of " + String.join(", ", known)
                    + meant(system, known));
        }
        return new BlankCommand.Options(
                system,
                said.matchedOptionValue("--site", "site"),
                said.matchedOptionValue("--boiler", "B1"),
                date(said).orElseGet(() -> shell.now().toLocalDate()));
    }

    static Optional<LocalDate> date(ParseResult said) throws Wrong {
        if (!said.hasMatchedOption("--date")) {
            return Optional.empty();
        }
        return Optional.of(day("--date", value(said, "--date")));
    }

    static LocalDate day(String option, String text) throws Wrong {
        return QuickLine.date(text)
                .orElseThrow(() -> new Wrong(
                        option + ": \"" + text + "\" is no date; expected year, month and day such as 2026-09-14"));
    }

    static String value(ParseResult said, String option) {
        return said.matchedOptionValue(option, "");
    }

    static <E extends Enum<E>> E constant(String option, E[] all, String word) throws Wrong {
        Optional<E> one = QuickLine.constant(all, word);
        if (one.isPresent()) {
            return one.get();
        }
        List<String> words = new ArrayList<>();
        for (E each : all) {
            words.add(Words.of(each));
        }
        throw new Wrong(option + ": \"" + word + "\" is not known; expected one of " + String.join(", ", words)
                + meant(word, words));
    }

    static String meant(String word, List<String> words) {
        return Nearest.to(word, words)
                .map(near -> "; did you mean \"" + near + "\"?")
                .orElse("");
    }

    static List<String> words(ParseResult said) {
        return said.matchedPositionalValue(0, List.of());
    }

    static List<String> inputs(ParseResult said) throws Wrong {
        List<String> words = words(said);
        if (words.isEmpty() || words.contains("")) {
            throw new Wrong("no inspection is named; expected files, folders, or - for standard input");
        }
        return words;
    }

    private int schema(ParseResult said) throws Wrong {
        List<String> names = words(said);
        List<String> known = List.of("inspection", "assessment", "checklists", "fleet", "work");
        if (names.isEmpty()) {
            throw new Wrong("no schema is named; expected one of " + String.join(", ", known));
        }
        String name = names.get(0);
        if (!known.contains(name)) {
            throw new Wrong(
                    "\"" + name + "\" is no schema; expected one of " + String.join(", ", known) + meant(name, known));
        }
        List<String> packs = packs(said);
        if (!packs.isEmpty() && !name.equals("inspection")) {
            throw new Wrong("--pack goes with the schema of an inspection; a pack changes no other");
        }
        shell.lay(packs, List.of());
        shell.printJson(SchemaCommand.text(name, shell));
        return done();
    }

    // ---- help, and what is wrong

    private int wrong(CommandSpec command, String message) {
        shell.say("gaugeglass: " + message);
        String of = command.parent() == null ? "" : command.name() + " ";
        shell.say("gaugeglass: for help: gaugeglass " + of + "--help");
        return Code.WRONG_LINE;
    }

    private static String message(ParameterException e) {
        CommandSpec command = e.getCommandLine().getCommandSpec();
        if (e instanceof CommandLine.UnmatchedArgumentException unmatched
                && !unmatched.getUnmatched().isEmpty()) {
            String word = unmatched.getUnmatched().get(0);
            if (word.startsWith("-")) {
                List<String> known = new ArrayList<>();
                command.options().forEach(option -> known.addAll(List.of(option.names())));
                return "\"" + word + "\" is no option here; expected one of " + String.join(", ", known)
                        + meant(word, known);
            }
            if (command.parent() == null) {
                List<String> known = List.copyOf(command.subcommands().keySet());
                return "\"" + word + "\" is no command; expected one of " + String.join(", ", known)
                        + meant(word, known);
            }
            return "\"" + word + "\" is one word too many";
        }
        if (e instanceof CommandLine.MissingParameterException missing
                && !missing.getMissing().isEmpty()) {
            CommandLine.Model.ArgSpec lacking = missing.getMissing().get(0);
            if (lacking instanceof OptionSpec option) {
                return option.longestName() + " needs a value: " + option.paramLabel();
            }
        }
        if (e instanceof CommandLine.OverwrittenOptionException) {
            return "an option stands there twice; expected it once";
        }
        return String.valueOf(e.getMessage()).lines().findFirst().orElse("");
    }

    private String usage(CommandSpec command) {
        return command.commandLine().getUsageMessage(shell.screen().colour() ? Ansi.ON : Ansi.OFF);
    }

    /** All commands, for lines of a width. */
    static CommandLine line(int width) {
        CommandSpec top = command(
                "gaugeglass",
                "Judges seasonal start-up inspections of low-pressure steam heating boilers: may it be test-fired, may it be"
                        + " left in service, what has to be put right, and what was not looked at.");
        top.addOption(OptionSpec.builder("--version")
                .versionHelp(true)
                .type(boolean.class)
                .description("Tell the version.")
                .build());
        top.usageMessage()
                .footer(
                        "",
                        "Exit codes: 0 judged; 1 with --fail-at, see there; 2 wrong command line; 3 a file could not be used"
                                + " (the others were); 4 a fault of the program.");

        CommandSpec assess = command("assess", "Judge inspections and print what they come to, most urgent first.");
        assess.addPositional(inputs());
        assess.addOption(lines());
        assess.addOption(pack());
        assess.addOption(as("Results as text, json (one JSON text) or jsonl (a line for each inspection)."));
        assess.addOption(OptionSpec.builder("--fail-at")
                .paramLabel("URGENCY")
                .type(String.class)
                .description("Exit with 1 when a finding this urgent or more stands, or when test firing or release is"
                        + " forbidden or not known: stop, now, season, plan, watch.")
                .build());
        assess.addOption(OptionSpec.builder("--date")
                .paramLabel("YYYY-MM-DD")
                .type(String.class)
                .description("Judge for this day instead of the day of the visit; needed where a file tells no day.")
                .build());

        assess.addOption(valued(
                "--as-then",
                "FOLDER",
                "Judge one inspection by the rulebook and packs that its file records, with the packs from this folder, where"
                        + " they are published; or tell what differs."));

        CommandSpec check = command("check", "Read inspections and tell whether they can be used; judge nothing.");
        check.addPositional(inputs());
        check.addOption(lines());
        check.addOption(pack());

        CommandSpec rulebook = command("rulebook", "List what is checked, or explain one check in full.");
        rulebook.addPositional(PositionalParamSpec.builder()
                .index("0..*")
                .arity("0..*")
                .paramLabel("ID")
                .type(List.class)
                .auxiliaryTypes(String.class)
                .description("A check's id, such as a report shows it; or the beginning of some ids.")
                .build());
        rulebook.addOption(pack());
        rulebook.addOption(flag("--limits", "List the numbers that decide, and who set each."));
        rulebook.addOption(flag("--items", "List what can be answered in an inspection."));
        rulebook.addOption(as("Results as text, json or jsonl."));

        CommandSpec blank =
                command("blank", "Write an inspection without answers, every question above its key, to be filled in.");
        blank.addOption(OptionSpec.builder("--system")
                .paramLabel("KIND")
                .type(String.class)
                .description("Leave out what does not matter for this kind of system.")
                .build());
        blank.addOption(named("--site", "The site's id: a short name that stays the same over years."));
        blank.addOption(named("--boiler", "The boiler's id, likewise."));
        blank.addOption(pack());
        blank.addOption(OptionSpec.builder("--date")
                .paramLabel("YYYY-MM-DD")
                .type(String.class)
                .description("The day of the visit; today unless told.")
                .build());

        CommandSpec reckon = command(
                "reckon",
                "Work out what the trade reckons at a boiler, showing every formula with the numbers put in; without words,"
                        + " list what can be reckoned.");
        reckon.addPositional(PositionalParamSpec.builder()
                .index("0..*")
                .arity("0..*")
                .paramLabel("WORD")
                .type(List.class)
                .auxiliaryTypes(String.class)
                .description(
                        "The name of a reckoning, then name=value for each thing it wants; the name alone explains it"
                                + " with an example.")
                .build());
        reckon.addOption(as("Results as text, json or jsonl."));

        CommandSpec schema = command("schema", "Print the JSON Schema of a kind of file.");
        schema.addPositional(PositionalParamSpec.builder()
                .index("0")
                .arity("1")
                .paramLabel("NAME")
                .type(List.class)
                .auxiliaryTypes(String.class)
                .description("inspection (what is read), assessment or fleet (what is printed as JSON).")
                .build());
        schema.addOption(pack());

        CommandSpec walk = command(
                "walk",
                "Walk through an inspection in the terminal, question by question; every answer is on disk before the next"
                        + " question.");
        walk.addPositional(PositionalParamSpec.builder()
                .index("0")
                .arity("1")
                .paramLabel("FILE")
                .type(List.class)
                .auxiliaryTypes(String.class)
                .description("The inspection file; one that is not there is begun, one that is there is gone on with.")
                .build());
        walk.addOption(pack());
        walk.addOption(OptionSpec.builder("--checklist")
                .paramLabel("ID")
                .type(String.class)
                .description("By which checklist; without it the file's, or you are asked.")
                .build());
        walk.addOption(OptionSpec.builder("--last")
                .paramLabel("FILE")
                .type(String.class)
                .description(
                        "Last visit's inspection: what is fitted and its dates are shown beside the questions, never"
                                + " readings or tests.")
                .build());

        Map<String, CommandSpec> commands = new LinkedHashMap<>();
        for (CommandSpec command : List.of(
                walk,
                assess,
                check,
                FleetLine.spec(),
                ReportLine.report(),
                ReportLine.decide(),
                ReportLine.sheet(),
                PackCommand.spec(),
                reckon,
                rulebook,
                blank,
                schema)) {
            commands.put(command.name(), command);
        }
        commands.forEach(top::addSubcommand);
        CommandLine line = new CommandLine(top);
        line.setExpandAtFiles(false);
        line.setUsageHelpWidth(width);
        line.setUsageHelpLongOptionsMaxWidth(28);
        return line;
    }

    static CommandSpec command(String name, String description) {
        CommandSpec command = CommandSpec.create().name(name);
        command.usageMessage().description(description).abbreviateSynopsis(name.equals("gaugeglass"));
        command.addOption(OptionSpec.builder("-h", "--help")
                .usageHelp(true)
                .type(boolean.class)
                .description("Show this help.")
                .build());
        return command;
    }

    static PositionalParamSpec inputs() {
        return PositionalParamSpec.builder()
                .index("0..*")
                .arity("1..*")
                .paramLabel("FILE")
                .type(List.class)
                .auxiliaryTypes(String.class)
                .description(INPUTS)
                .build();
    }

    static OptionSpec lines() {
        return flag("--lines", "Every FILE holds one inspection as JSON on each line, whatever it is called.");
    }

    static OptionSpec flag(String name, String description) {
        return OptionSpec.builder(name)
                .type(boolean.class)
                .description(description)
                .build();
    }

    private static OptionSpec named(String name, String description) {
        return OptionSpec.builder(name)
                .paramLabel("ID")
                .type(String.class)
                .description(description)
                .build();
    }

    private static OptionSpec as(String description) {
        return OptionSpec.builder("--as")
                .paramLabel("FORM")
                .type(String.class)
                .description(description)
                .build();
    }

    /** An option that takes one value. */
    static OptionSpec valued(String name, String label, String description) {
        return OptionSpec.builder(name)
                .paramLabel(label)
                .type(String.class)
                .description(description)
                .build();
    }
}
