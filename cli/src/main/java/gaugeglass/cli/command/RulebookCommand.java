package gaugeglass.cli.command;

import gaugeglass.cli.report.RulebookJson;
import gaugeglass.cli.report.RulebookText;
import gaugeglass.engine.book.Book;
import gaugeglass.engine.book.Card;
import gaugeglass.engine.reading.NodeWriter;
import gaugeglass.engine.text.Nearest;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Lists what the rulebook checks, or explains a check in full. */
final class RulebookCommand {
    private static final String SOURCES = "gaugeglass/rulebook/";

    /**
     * What is asked for.
     *
     * @param ids checks, or beginnings of their ids; empty for the list of all
     * @param limits whether the limits are asked for
     * @param items whether the items of the vocabulary are asked for
     * @param as the form of the results
     * @param packs what is named to be laid over the rulebook
     */
    record Options(List<String> ids, boolean limits, boolean items, As as, List<String> packs) {
        Options {
            packs = List.copyOf(packs);
            ids = List.copyOf(ids);
        }
    }

    private RulebookCommand() {}

    static int run(Options options, Shell shell) {
        shell.lay(options.packs(), List.of());
        Book book = shell.book();
        RulebookText text = new RulebookText(book, shell.vocabulary(), shell.screen(), name -> shell.packFile(name)
                .or(() -> shell.resource(SOURCES + name)));
        RulebookJson json = new RulebookJson(book, shell.vocabulary());
        if (options.limits()) {
            return print(options, shell, text.limits(), json.limits());
        }
        if (options.items()) {
            return print(options, shell, text.items(), json.items());
        }
        if (options.ids().isEmpty()) {
            return print(
                    options,
                    shell,
                    text.list(List.copyOf(book.cards().values())),
                    json.cards(book.cards().values()));
        }
        List<Card> cards = new ArrayList<>();
        boolean isOne = options.ids().size() == 1
                && book.cards().containsKey(options.ids().get(0));
        for (String id : options.ids()) {
            List<Card> found = named(book, id);
            if (found.isEmpty()) {
                List<String> known = List.copyOf(book.cards().keySet());
                shell.say("gaugeglass: no check is called \"" + id + "\""
                        + Nearest.to(id, known)
                                .map(near -> "; did you mean \"" + near + "\"?")
                                .orElse("")
                        + " The list of all: gaugeglass rulebook");
                return Code.WRONG_LINE;
            }
            cards.addAll(found);
        }
        if (options.as() == As.JSON && isOne) {
            shell.printJson(NodeWriter.pretty(json.cards(cards).get(0)) + "\n");
            return Code.JUDGED;
        }
        return print(options, shell, isOne ? text.one(cards.get(0)) : text.list(cards), json.cards(cards));
    }

    /** The check with this id, or those whose ids begin with it up to a dot or hyphen. */
    private static List<Card> named(Book book, String id) {
        Card exact = book.cards().get(id);
        if (exact != null) {
            return List.of(exact);
        }
        List<Card> begun = new ArrayList<>();
        book.cards().forEach((name, card) -> {
            boolean ends =
                    id.endsWith(".") || name.length() > id.length() && ".-".indexOf(name.charAt(id.length())) >= 0;
            if (name.startsWith(id) && ends || card.subject().equals(id)) {
                begun.add(card);
            }
        });
        return begun;
    }

    private static int print(Options options, Shell shell, String text, List<Map<String, Object>> json) {
        switch (options.as()) {
            case TEXT -> shell.print(text);
            case JSON -> shell.printJson(NodeWriter.pretty(json) + "\n");
            case JSONL -> json.forEach(one -> shell.printJson(NodeWriter.line(one) + "\n"));
        }
        return Code.JUDGED;
    }
}
