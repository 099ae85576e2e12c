package gaugeglass.cli.command;

import gaugeglass.cli.command.FullLine.Wrong;
import gaugeglass.cli.pack.KeptTries;
import gaugeglass.cli.pack.Keys;
import gaugeglass.cli.pack.PackTools;
import gaugeglass.cli.pack.Replay;
import gaugeglass.cli.pack.RuleForm;
import gaugeglass.cli.walk.VisitFile;
import gaugeglass.engine.pack.PackFiles;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** Everything that is done with packs beside laying them on. */
final class PackCommand {
    private PackCommand() {}

    private static final Map<String, String> WORK = new LinkedHashMap<>();

    static {
        WORK.put("new", "FOLDER|Begin a pack in a new folder.");
        WORK.put("check", "PACK...|Check packs whole, as if they were laid on; tell everything that is wrong.");
        WORK.put(
                "rule",
                "PACK FORM|Write rule, card and scenarios into a pack from a short form (YAML, or rows of a CSV).");
        WORK.put("try", "PACK [TEXT]|Try the scenarios of a pack's own checks, and tell which are wanting.");
        WORK.put("differs", "PACK...|Tell what packs change against the standard, as a page for a meeting.");
        WORK.put("changes", "PACK...|Tell what changed in the rulebook since the version that packs were made for.");
        WORK.put(
                "replay",
                "PACK FILE...|Judge inspections without and with a pack, and tell every outcome that differs.");
        WORK.put("key", "NAME|Make a key for signing, and trust it here.");
        WORK.put("trust", "FILE|Trust somebody's key from now on.");
        WORK.put("sign", "PACK|Sign a pack in its folder.");
        WORK.put("verify", "PACK|Check a pack's signature.");
        WORK.put("publish", "PACK FOLDER|Put a pack into a shared folder.");
        WORK.put("take", "FOLDER NAME|Take the newest version of a pack from a shared folder.");
    }

    static CommandSpec spec() {
        CommandSpec pack = FullLine.command("pack", "Make, check, try, sign and pass on packs.");
        WORK.forEach((name, told) -> {
            int bar = told.indexOf('|');
            CommandSpec one = FullLine.command(name, told.substring(bar + 1));
            one.addPositional(PositionalParamSpec.builder()
                    .index("0..*")
                    .arity("0..*")
                    .paramLabel(told.substring(0, bar))
                    .hideParamSyntax(true)
                    .type(List.class)
                    .auxiliaryTypes(String.class)
                    .description("What it is done with.")
                    .build());
            if (name.equals("new")) {
                one.addOption(FullLine.valued("--title", "TEXT", "Its name for people."));
                one.addOption(FullLine.valued("--level", "LEVEL", "jurisdiction, company (the default) or visit."));
            }
            if (name.equals("sign")) {
                one.addOption(FullLine.valued("--key", "NAME", "The key."));
            }
            if (name.equals("replay")) {
                one.addOption(
                        FullLine.valued("--before", "PACK", "Compare with this pack instead of the standard alone."));
            }
            pack.addSubcommand(name, one);
        });
        return pack;
    }

    static int run(ParseResult said, Shell shell) throws Wrong {
        String name = said.commandSpec().name();
        List<String> words = FullLine.words(said);
        String wanted = WORK.get(name).substring(0, WORK.get(name).indexOf('|'));
        int least = (int) wanted.chars().filter(c -> c == ' ').count() + 1 - (wanted.contains("[") ? 1 : 0);
        int most = wanted.endsWith("...") ? Integer.MAX_VALUE : wanted.split(" ").length;
        if (words.size() < least || words.size() > most || words.contains("")) {
            throw new Wrong("pack " + name + " takes " + wanted);
        }
        if (name.equals("try")) {
            Optional<PackTools.Tried> kept = kept(words, shell);
            if (kept.isPresent()) {
                print(shell, kept.get().lines());
                print(shell, List.of("Nothing changed since it was tried: the pack and the program are the same."));
                return shell.flush() ? code(kept.get()) : Code.FAULT;
            }
        }
        PackTools tools = new PackTools(shell.untouched(), shell::home, shell.loader());
        try {
            int code = work(name, words, said, tools, shell);
            return shell.flush() ? code : Code.FAULT;
        } catch (IOException e) {
            shell.say("gaugeglass: this could not be read or written: " + VisitFile.reason(e));
            return Code.UNUSABLE;
        }
    }

    /** What trying it came to, without so much as opening the rulebook. */
    private static Optional<PackTools.Tried> kept(List<String> words, Shell shell) {
        if (words.size() > 1) {
            return Optional.empty();
        }
        return tries(shell)
                .of(PackFiles.read(PackTools.places(words, shell::home).get(0)));
    }

    private static KeptTries tries(Shell shell) {
        return new KeptTries(shell.home(), KeptTries.program());
    }

    private static int code(PackTools.Tried tried) {
        return tried.failed() == 0 ? Code.JUDGED : Code.FOUND;
    }

    private static int work(String name, List<String> words, ParseResult said, PackTools tools, Shell shell)
            throws IOException, Wrong {
        switch (name) {
            case "new" -> {
                if (FullLine.value(said, "--title").isBlank()) {
                    throw new Wrong("--title is missing: the pack's name for people");
                }
                String level = said.hasMatchedOption("--level") ? FullLine.value(said, "--level") : "company";
                print(shell, tools.begin(Path.of(words.get(0)), FullLine.value(said, "--title"), level));
            }
            case "check" -> print(shell, tools.check(tools.places(words)));
            case "rule" ->
                print(shell, RuleForm.write(shell.untouched(), Path.of(words.get(0)), Path.of(words.get(1))));
            case "try" -> {
                List<Path> places = tools.places(words.subList(0, 1));
                // Read before it is tried: what is saved meanwhile is tried the next time.
                PackFiles files = PackFiles.read(places.get(0));
                PackTools.Tried tried = tools.tried(places, words.size() > 1 ? words.get(1) : "");
                print(shell, tried.lines());
                if (words.size() == 1) {
                    tries(shell).keep(files, tried);
                }
                return code(tried);
            }
            case "differs" -> print(shell, tools.differs(tools.places(words)));
            case "changes" -> print(shell, tools.changes(tools.places(words)));
            case "replay" -> {
                List<String> before =
                        said.hasMatchedOption("--before") ? List.of(FullLine.value(said, "--before")) : List.of();
                Replay replay = new Replay(
                        tools.rulebook(tools.places(before)), tools.rulebook(tools.places(words.subList(0, 1))));
                print(shell, replay.of(words.subList(1, words.size()), shell.in()));
                return replay.isWhole() ? Code.JUDGED : Code.UNUSABLE;
            }
            case "key" ->
                print(
                        shell,
                        List.of("Key " + words.get(0)
                                + " made and trusted here. Give others this file, never the other: "
                                + new Keys(shell.home()).make(words.get(0))));
            case "trust" ->
                print(
                        shell,
                        List.of("The key " + new Keys(shell.home()).trust(Path.of(words.get(0)))
                                + " is trusted from now on."));
            case "sign" -> {
                if (FullLine.value(said, "--key").isBlank()) {
                    throw new Wrong("--key is missing: the key to sign with");
                }
                print(shell, tools.sign(Path.of(words.get(0)), FullLine.value(said, "--key")));
            }
            case "verify" -> print(shell, tools.verify(Path.of(words.get(0))));
            case "publish" -> print(shell, tools.publish(Path.of(words.get(0)), Path.of(words.get(1))));
            default -> print(shell, tools.take(Path.of(words.get(0)), words.get(1)));
        }
        return Code.JUDGED;
    }

    private static void print(Shell shell, List<String> lines) {
        gaugeglass.cli.paper.Paper paper = new gaugeglass.cli.paper.Paper(shell.screen());
        for (String line : lines) {
            if (line.isEmpty()) {
                paper.gap();
            } else {
                int indent = line.length() - line.stripLeading().length();
                paper.hanging(
                        " ".repeat(indent), " ".repeat(indent + 2), line.strip(), gaugeglass.cli.paper.Style.PLAIN);
            }
        }
        shell.print(paper.toString());
    }
}
