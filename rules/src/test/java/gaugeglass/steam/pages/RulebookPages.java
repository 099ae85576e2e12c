package gaugeglass.steam.pages;

import gaugeglass.engine.book.Band;
import gaugeglass.engine.book.Basis;
import gaugeglass.engine.book.Book;
import gaugeglass.engine.book.Card;
import gaugeglass.engine.book.Caution;
import gaugeglass.engine.book.Limit;
import gaugeglass.engine.book.RuleEntry;
import gaugeglass.engine.book.Source;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** The rulebook as Markdown pages, one a subject, and the list of its figures and sources. */
final class RulebookPages {
    private static final String MADE =
            "<!-- Made from the rulebook; change the cards and limits, not this page. -->\n\n";

    private final Book book;

    RulebookPages(Book book) {
        this.book = book;
    }

    Map<String, String> pages() {
        Map<String, List<Card>> bySubject = new TreeMap<>();
        for (Card card : book.cards().values()) {
            bySubject.computeIfAbsent(card.subject(), s -> new ArrayList<>()).add(card);
        }
        Map<String, String> pages = new LinkedHashMap<>();
        StringBuilder contents = new StringBuilder(MADE + "# The rulebook\n\n");
        bySubject.forEach((subject, cards) -> {
            contents.append("## [")
                    .append(words(subject))
                    .append("](")
                    .append(subject)
                    .append(".md)\n\n");
            for (Card card : cards) {
                if (!card.sign()) {
                    contents.append("- ")
                            .append(urgencies(card))
                            .append(": [")
                            .append(card.title())
                            .append("](")
                            .append(subject)
                            .append(".md#")
                            .append(anchor(card.id()))
                            .append(")\n");
                }
            }
            contents.append('\n');
            pages.put(subject + ".md", page(subject, cards));
        });
        contents.append("## Cautions\n\n");
        for (Caution caution : book.cautions().values()) {
            contents.append("- **")
                    .append(caution.title())
                    .append(".** ")
                    .append(caution.text())
                    .append('\n');
        }
        pages.put("README.md", contents.toString().stripTrailing() + "\n");
        return pages;
    }

    private String page(String subject, List<Card> cards) {
        StringBuilder page = new StringBuilder(MADE + "# " + words(subject) + "\n\n[Contents](README.md)\n\n");
        cards.forEach(card -> page.append(card(card)));
        return page.toString().stripTrailing() + "\n";
    }

    private String card(Card card) {
        StringBuilder text = new StringBuilder("## " + card.id() + "\n\n**" + card.title() + ".**"
                + (card.sign() ? " A sign: evidence for a likely cause, never a finding by itself." : "") + "\n\n");
        for (Band band : card.bands().values()) {
            text.append("- ");
            if (!card.sign()) {
                text.append(band.urgency().told()).append(": ");
            }
            Set<String> sentences = new LinkedHashSet<>();
            for (RuleEntry rule : book.rules()) {
                if (rule.card().equals(card.id()) && rule.band().equals(band.name())) {
                    sentences.add(band.seen(rule.variant()));
                }
            }
            text.append(String.join(" / ", sentences)).append('\n');
        }
        text.append('\n');
        if (!card.sign()) {
            text.append("Why: ").append(card.why()).append("\n\n");
            text.append("Do: ").append(card.action()).append("\n\n");
            text.append("Not when: ").append(card.notWhen()).append("\n\n");
        }
        Set<String> limits = new LinkedHashSet<>();
        Set<String> needs = new LinkedHashSet<>();
        for (RuleEntry rule : book.rules()) {
            if (rule.card().equals(card.id())) {
                limits.addAll(rule.limits());
                needs.addAll(rule.needs());
            }
        }
        for (String id : limits) {
            Limit limit = book.limits().get(id);
            text.append("- Limit `")
                    .append(id)
                    .append("`: ")
                    .append(limit.written())
                    .append(", ")
                    .append(limit.meaning())
                    .append(" (")
                    .append(basis(limit.basis(), limit.sources()))
                    .append(")\n");
        }
        List<String> cautions = new ArrayList<>();
        card.cautions().forEach(id -> cautions.add(book.cautions().get(id).title()));
        if (!cautions.isEmpty()) {
            text.append("- [Cautions](README.md#cautions): ")
                    .append(String.join("; ", cautions))
                    .append('\n');
        }
        text.append("- Judged: ").append(card.stage().word());
        if (card.release()) {
            text.append("; release waits for it");
        }
        text.append(". Looks at: ").append(String.join(", ", needs)).append('\n');
        text.append("- Stands on: ").append(basis(card.basis(), card.sources())).append("\n\n");
        return text.toString();
    }

    /** Every figure that decides a verdict, with what it stands on. */
    String sources() {
        StringBuilder text = new StringBuilder(MADE + "# Figures and their sources\n\n"
                + "Every number that decides a verdict, what sets it, and how surely the project knows what its source says.\n\n"
                + "| limit | value | what it limits | stands on | rules |\n|---|---|---|---|---|\n");
        for (Limit limit : book.limits().values()) {
            Set<String> rules = new LinkedHashSet<>();
            for (RuleEntry rule : book.rules()) {
                if (rule.limits().contains(limit.id())) {
                    rules.add(rule.card());
                }
            }
            text.append("| `")
                    .append(limit.id())
                    .append("` | ")
                    .append(limit.written())
                    .append(" | ")
                    .append(limit.meaning())
                    .append(" | ")
                    .append(basis(limit.basis(), limit.sources()))
                    .append(" | ")
                    .append(rules.isEmpty() ? "through a reckoning" : String.join(", ", rules))
                    .append(" |\n");
        }
        return text.toString();
    }

    private static String basis(Basis basis, List<Source> sources) {
        String words = basis.told();
        List<String> named = new ArrayList<>();
        for (Source source : sources) {
            named.add(source.name() + " [" + source.known().word().replace('-', ' ') + "]");
        }
        return named.isEmpty() ? words : words + ": " + String.join("; ", named);
    }

    private static String urgencies(Card card) {
        Set<String> all = new LinkedHashSet<>();
        card.bands().values().stream().map(Band::urgency).sorted().forEach(urgency -> all.add(urgency.told()));
        return String.join(" / ", all);
    }

    private static String words(String subject) {
        String words = subject.replace('-', ' ');
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    private static String anchor(String id) {
        return id.replace(".", "");
    }
}
