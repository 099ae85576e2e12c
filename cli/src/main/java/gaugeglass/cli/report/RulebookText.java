package gaugeglass.cli.report;

import gaugeglass.cli.paper.Paper;
import gaugeglass.cli.paper.Screen;
import gaugeglass.cli.paper.Style;
import gaugeglass.engine.book.Band;
import gaugeglass.engine.book.Book;
import gaugeglass.engine.book.Card;
import gaugeglass.engine.book.Caution;
import gaugeglass.engine.book.Limit;
import gaugeglass.engine.book.Remedy;
import gaugeglass.engine.book.RuleEntry;
import gaugeglass.engine.book.Source;
import gaugeglass.engine.reading.Node;
import gaugeglass.engine.reading.NodeReader;
import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.Component;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;

/** The rulebook as people read it. */
public final class RulebookText {
    private static final int LABEL = 10;

    private final Book book;
    private final Vocabulary vocabulary;
    private final Screen screen;
    private final Function<String, Optional<String>> sources;

    /**
     * A writer.
     *
     * @param sources gives the text of a file of the rulebook or of a pack by its name, where it is at hand
     */
    public RulebookText(Book book, Vocabulary vocabulary, Screen screen, Function<String, Optional<String>> sources) {
        this.book = book;
        this.vocabulary = vocabulary;
        this.screen = screen;
        this.sources = sources;
    }

    /** One or two lines for each check, by subject. */
    public String list(List<Card> cards) {
        Paper paper = new Paper(screen);
        Map<String, List<Card>> bySubject = new TreeMap<>();
        cards.forEach(card -> bySubject
                .computeIfAbsent(card.subject(), s -> new ArrayList<>())
                .add(card));
        bySubject.forEach((subject, all) -> {
            paper.gap();
            paper.line(subject.replace('-', ' ').toUpperCase(Locale.ROOT), Style.STRONG);
            for (Card card : all) {
                paper.hanging("  ", "    ", card.id() + "  [" + urgencies(card) + "]", Style.PLAIN);
                paper.hanging("      ", card.title(), Style.PLAIN);
                book.replacement(card.id()).ifPresent(words -> paper.hanging("      ", "(" + words + ")", Style.PLAIN));
            }
        });
        paper.gap();
        paper.line(
                cards.size() + (cards.size() == 1 ? " check" : " checks") + " of " + book.name() + ", version "
                        + book.version() + ". In full: gaugeglass rulebook ID",
                Style.PLAIN);
        return paper.toString();
    }

    private static String urgencies(Card card) {
        if (card.sign()) {
            return "a sign, evidence for causes only";
        }
        Set<String> words = new LinkedHashSet<>();
        card.bands().values().forEach(band -> words.add(band.urgency().word()));
        return String.join(", ", words) + (card.release() ? "; release waits for it" : "");
    }

    /** All of one check. */
    public String one(Card card) {
        Paper paper = new Paper(screen);
        paper.line(card.title(), Style.STRONG);
        String about = vocabulary
                .kind(card.about())
                .map(Kind::label)
                .orElse(vocabulary.unit().label());
        paper.line(
                card.id() + ", about each " + about + ", judged at the stage \""
                        + card.stage().word() + "\""
                        + (card.release() ? "; release to automatic operation waits for it" : "")
                        + (card.sign() ? "; only evidence for a cause, never a finding" : ""),
                Style.PLAIN);
        paper.gap();
        for (Band band : card.bands().values()) {
            String lead = card.sign() ? "Seen" : Urgencies.heading(band.urgency());
            part(paper, lead + ":", "");
            paper.indented(4, band.seen());
            band.variants().values().forEach(seen -> paper.indented(4, seen));
        }
        paper.gap();
        part(paper, "Why", card.why());
        part(paper, "Do", card.action());
        Remedy remedy = book.remedies().get(card.remedy());
        part(paper, "Work", remedy == null ? "" : remedy.work());
        part(paper, "Parts", remedy == null ? "" : String.join("; ", remedy.parts()));
        part(paper, "With", remedy == null ? "" : String.join("; ", remedy.takeAlong()));
        part(paper, "Not when", card.notWhen());
        for (String id : card.cautions()) {
            Caution caution = book.cautions().get(id);
            part(paper, "CAUTION", caution == null ? "" : caution.title() + ". " + caution.text());
        }
        part(paper, "Basis", card.basis().explained());
        part(
                paper,
                "Note",
                book.replacement(card.id())
                        .map(words -> "This check is " + words + ".")
                        .orElse(""));
        card.sources().forEach(source -> part(paper, "Source", source(source)));
        limits(card, paper);
        needs(card, paper);
        conditions(card, paper);
        scenarios(card, paper);
        paper.gap();
        paper.line(
                "Status " + card.status() + ", since " + card.since() + "; card in " + card.file() + ", line "
                        + card.line(),
                Style.FAINT);
        return paper.toString();
    }

    private void part(Paper paper, String label, String words) {
        if (!words.isEmpty() || label.endsWith(":")) {
            paper.hanging(label + " ".repeat(Math.max(1, LABEL - label.length())), words, Style.PLAIN);
        }
    }

    private List<RuleEntry> rules(Card card) {
        return book.rules().stream()
                .filter(rule -> rule.card().equals(card.id()))
                .toList();
    }

    private void limits(Card card, Paper paper) {
        Set<String> ids = new LinkedHashSet<>();
        rules(card).forEach(rule -> ids.addAll(rule.limits()));
        if (!ids.isEmpty()) {
            paper.gap();
            paper.line("Limits", Style.STRONG);
            ids.forEach(id -> limit(paper, book.limits().get(id)));
        }
    }

    private void limit(Paper paper, Limit limit) {
        paper.hanging("  ", "    ", limit.id() + ": " + limit.written(), Style.PLAIN);
        paper.indented(6, limit.meaning());
        String span = limit.least().isEmpty() && limit.most().isEmpty()
                ? ""
                : "; a company may set it"
                        + (limit.least().isEmpty() ? "" : " from " + limit.least())
                        + (limit.most().isEmpty() ? "" : " up to " + limit.most());
        paper.indented(6, limit.basis().explained() + "; set by " + limit.layer() + span);
        limit.sources().forEach(source -> paper.indented(6, "Source: " + source(source)));
        if (!limit.reviewBy().isEmpty()) {
            paper.indented(6, "To be looked at again by " + limit.reviewBy());
        }
    }

    private void needs(Card card, Paper paper) {
        Set<String> ids = new LinkedHashSet<>();
        rules(card).forEach(rule -> ids.addAll(rule.needs()));
        if (!ids.isEmpty()) {
            paper.gap();
            paper.line("Looks at", Style.STRONG);
            for (String id : ids) {
                String ask = vocabulary.item(id).map(ItemType::ask).orElse("");
                paper.hanging("  - ", ask.isEmpty() ? id : ask + " (" + id + ")", Style.PLAIN);
            }
        }
    }

    private void conditions(Card card, Paper paper) {
        for (RuleEntry rule : rules(card)) {
            paper.gap();
            paper.line("Found when (" + rule.file() + ", line " + rule.line() + ")", Style.STRONG);
            for (String line : ruleText(rule)) {
                paper.hanging("    " + " ".repeat(indent(line)), line.strip(), Style.PLAIN);
            }
        }
    }

    private static int indent(String line) {
        return line.length() - line.stripLeading().length();
    }

    /** The rule as written, with the comment above it; empty where its file was left behind. */
    private List<String> ruleText(RuleEntry rule) {
        Optional<String> text = sources.apply(rule.file());
        if (text.isEmpty()) {
            return List.of();
        }
        List<String> lines = text.get().lines().toList();
        int first = Math.min(rule.line(), lines.size()) - 1;
        int last = first;
        while (last < lines.size() - 1 && !lines.get(last).strip().equals("end")) {
            last++;
        }
        while (first > 0 && lines.get(first - 1).strip().startsWith("//")) {
            first--;
        }
        List<String> found = new ArrayList<>();
        for (String line : lines.subList(first, last + 1)) {
            // Every rule has the same last two lines, which say nothing.
            if (!line.isBlank() && !line.strip().equals("then") && !line.strip().equals("end")) {
                found.add(line);
            }
        }
        return found;
    }

    private void scenarios(Card card, Paper paper) {
        Map<String, Integer> byOutcome = new LinkedHashMap<>();
        int count = 0;
        for (Node.Fields one : scenarios(card)) {
            count++;
            one.get("expect").ifPresent(expect -> {
                String word = expect instanceof Node.Scalar scalar
                        ? scalar.text().strip().split(" ")[0]
                        : "by subject";
                byOutcome.merge(word, 1, Integer::sum);
            });
        }
        if (count > 0) {
            List<String> parts = new ArrayList<>();
            byOutcome.forEach((word, number) -> parts.add(number + " " + word.replace('-', ' ')));
            paper.gap();
            paper.line(
                    "Proven by " + (count == 1 ? "1 scenario" : count + " scenarios") + " (" + String.join(", ", parts)
                            + ")",
                    Style.PLAIN);
        }
    }

    private List<Node.Fields> scenarios(Card card) {
        List<Node.Fields> found = new ArrayList<>();
        Optional<String> text = sources.apply(card.file());
        if (text.isPresent()
                && NodeReader.read(card.file(), text.get(), new ArrayList<>()) instanceof Node.Fields all) {
            for (Node.Fields one : groups(all.get("cards"))) {
                boolean same = one.get("id")
                        .filter(id -> id instanceof Node.Scalar s && s.text().equals(card.id()))
                        .isPresent();
                if (same) {
                    found.addAll(groups(one.get("scenarios")));
                }
            }
        }
        return found;
    }

    private static List<Node.Fields> groups(Optional<Node> node) {
        List<Node.Fields> groups = new ArrayList<>();
        if (node.isPresent() && node.get() instanceof Node.Items items) {
            for (Node item : items.all()) {
                if (item instanceof Node.Fields fields) {
                    groups.add(fields);
                }
            }
        }
        return groups;
    }

    /** All limits, with who set each and how surely its source is known. */
    public String limits() {
        Paper paper = new Paper(screen);
        book.limits().values().forEach(limit -> limit(paper, limit));
        return paper.toString();
    }

    /** Everything that can be answered in an inspection. */
    public String items() {
        Paper paper = new Paper(screen);
        for (Kind kind : vocabulary.kinds()) {
            boolean headed = false;
            for (ItemType item : vocabulary.items()) {
                if (item.isReckoned() || !item.kind().equals(kind.id())) {
                    continue;
                }
                if (!headed) {
                    paper.gap();
                    paper.line(kind.label().toUpperCase(Locale.ROOT), Style.STRONG);
                    headed = true;
                }
                paper.hanging("  ", "    ", item.id(), Style.PLAIN);
                paper.indented(6, item.ask());
                for (Component part : item.values()) {
                    paper.indented(
                            6, (item.values().size() > 1 ? Words.hyphened(part.name()) + ": " : "") + answer(part));
                }
            }
        }
        return paper.toString();
    }

    private static String answer(Component part) {
        return switch (part.form()) {
            case CHOICE -> String.join(" | ", part.choices());
            case QUANTITY -> "a quantity with its unit, " + part.least() + " to " + part.most();
            case COUNT -> "a whole number, " + part.from() + " to " + part.to();
            case DATE -> "a date";
            case TEXT -> "words";
        };
    }

    private static String source(Source source) {
        return source.name() + " (" + known(source.known()) + ")";
    }

    private static String known(Source.Known known) {
        return switch (known) {
            case READ -> "read there";
            case READ_SECOND_HAND -> "read in a document that quotes it";
            case MEMORY_HIGH -> "from memory, quite sure";
            case MEMORY_MEDIUM -> "from memory, fairly sure";
            case MEMORY_LOW -> "from memory, not sure";
        };
    }
}
