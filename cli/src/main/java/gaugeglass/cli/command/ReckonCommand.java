package gaugeglass.cli.command;

import gaugeglass.cli.report.ReckonJson;
import gaugeglass.cli.report.ReckonText;
import gaugeglass.engine.reading.NodeWriter;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import gaugeglass.steam.handbook.Entry;
import gaugeglass.steam.handbook.Handbook;
import gaugeglass.steam.reckon.Worked;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Works a reckoning out from values on the command line, explains it, or lists them all. */
final class ReckonCommand {
    /**
     * What {@code reckon} is asked to do.
     *
     * @param words the name of a reckoning, then {@code name=value}; empty for the list
     * @param as the form of the results
     */
    record Options(List<String> words, As as) {
        Options {
            words = List.copyOf(words);
        }
    }

    private ReckonCommand() {}

    static int run(Options options, Shell shell) {
        ReckonText text = new ReckonText(shell.screen());
        if (options.words().isEmpty()) {
            List<Map<String, Object>> all = new ArrayList<>();
            Handbook.all().forEach(entry -> all.add(ReckonJson.entry(entry)));
            return print(options, shell, text.list(Handbook.all()), all);
        }
        String name = options.words().get(0);
        Optional<Entry> found = Handbook.find(name);
        if (found.isEmpty()) {
            shell.say("gaugeglass: no reckoning is called \"" + name + "\""
                    + Handbook.nearest(name)
                            .map(near -> "; did you mean \"" + near + "\"?")
                            .orElse(".")
                    + " The list of all: gaugeglass reckon");
            return Code.WRONG_LINE;
        }
        Entry entry = found.get();
        List<String> pairs = options.words().subList(1, options.words().size());
        String place = "gaugeglass reckon " + entry.name();
        try {
            boolean isAsked = !pairs.isEmpty();
            Worked worked = entry.work(place, isAsked ? pairs : entry.example());
            return print(
                    options,
                    shell,
                    isAsked ? text.worked(entry, worked) : text.explained(entry, worked),
                    List.of(isAsked ? ReckonJson.worked(entry, worked) : ReckonJson.explained(entry, worked)));
        } catch (Mistakes mistakes) {
            for (Mistake mistake : mistakes.all()) {
                shell.say(mistake.message());
            }
            shell.say("gaugeglass: what it wants, with an example: " + place);
            return Code.WRONG_LINE;
        }
    }

    private static int print(Options options, Shell shell, String text, List<Map<String, Object>> json) {
        switch (options.as()) {
            case TEXT -> shell.print(text);
            case JSON -> shell.printJson(NodeWriter.pretty(options.words().isEmpty() ? json : json.get(0)) + "\n");
            case JSONL -> json.forEach(one -> shell.printJson(NodeWriter.line(one) + "\n"));
        }
        return Code.JUDGED;
    }
}
