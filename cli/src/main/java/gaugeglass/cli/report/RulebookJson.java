package gaugeglass.cli.report;

import static gaugeglass.cli.report.JsonReport.fields;

import gaugeglass.engine.book.Band;
import gaugeglass.engine.book.Book;
import gaugeglass.engine.book.Card;
import gaugeglass.engine.book.Limit;
import gaugeglass.engine.book.RuleEntry;
import gaugeglass.engine.book.Source;
import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.Component;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The rulebook as programs read it. */
public final class RulebookJson {
    private final Book book;
    private final Vocabulary vocabulary;

    public RulebookJson(Book book, Vocabulary vocabulary) {
        this.book = book;
        this.vocabulary = vocabulary;
    }

    /** Each check with all that its card says, and where it stands. */
    public List<Map<String, Object>> cards(Collection<Card> cards) {
        List<Map<String, Object>> all = new ArrayList<>();
        cards.forEach(card -> all.add(card(card)));
        return all;
    }

    private Map<String, Object> card(Card card) {
        Set<String> needs = new LinkedHashSet<>();
        Set<String> limits = new LinkedHashSet<>();
        List<Object> rules = new ArrayList<>();
        for (RuleEntry rule : book.rules()) {
            if (rule.card().equals(card.id())) {
                needs.addAll(rule.needs());
                limits.addAll(rule.limits());
                rules.add(fields("name", rule.name(), "file", rule.file(), "line", rule.line()));
            }
        }
        List<Object> bands = new ArrayList<>();
        for (Band band : card.bands().values()) {
            bands.add(fields(
                    "name",
                    band.name(),
                    "urgency",
                    card.sign() ? "" : band.urgency().word(),
                    "seen",
                    band.seen(),
                    "variants",
                    new LinkedHashMap<>(band.variants())));
        }
        return fields(
                "id", card.id(),
                "subject", card.subject(),
                "title", card.title(),
                "about", card.about(),
                "stage", card.stage().word(),
                "release", card.release(),
                "sign", card.sign(),
                "consequence", card.consequence().word(),
                "bands", bands,
                "needs", needs,
                "limits", limits,
                "why", card.why(),
                "do", card.action(),
                "remedy", card.remedy(),
                "cautions", card.cautions(),
                "notWhen", card.notWhen(),
                "basis", card.basis().word(),
                "sources", sources(card.sources()),
                "replaces", book.replacement(card.id()).orElse(""),
                "status", card.status(),
                "since", card.since(),
                "file", card.file(),
                "line", card.line(),
                "rules", rules);
    }

    private static List<Object> sources(List<Source> sources) {
        List<Object> all = new ArrayList<>();
        sources.forEach(source ->
                all.add(fields("name", source.name(), "known", source.known().word())));
        return all;
    }

    /** Each limit in force. */
    public List<Map<String, Object>> limits() {
        List<Map<String, Object>> all = new ArrayList<>();
        for (Limit limit : book.limits().values()) {
            all.add(fields(
                    "id", limit.id(),
                    "value", limit.written(),
                    "meaning", limit.meaning(),
                    "safer", limit.safer().word(),
                    "least", limit.least(),
                    "most", limit.most(),
                    "basis", limit.basis().word(),
                    "sources", sources(limit.sources()),
                    "reviewBy", limit.reviewBy(),
                    "layer", limit.layer()));
        }
        return all;
    }

    /** Each item that can be answered. */
    public List<Map<String, Object>> items() {
        List<Map<String, Object>> all = new ArrayList<>();
        for (ItemType item : vocabulary.items()) {
            if (!item.isReckoned()) {
                List<Object> parts = new ArrayList<>();
                for (Component part : item.values()) {
                    parts.add(fields(
                            "name", Words.hyphened(part.name()),
                            "form", Words.of(part.form()),
                            "choices", part.choices(),
                            "unit", part.unitName().isEmpty() ? "" : part.unit().symbol(),
                            "from", part.from(),
                            "to", part.to()));
                }
                all.add(fields(
                        "id", item.id(),
                        "of", item.kind(),
                        "stage", item.stage().word(),
                        "ask", item.ask(),
                        "look", item.look(),
                        "structural", item.isStructural(),
                        "carried", item.isCarried(),
                        "unreadBecause", item.unreadBecause(),
                        "parts", parts));
            }
        }
        return all;
    }
}
