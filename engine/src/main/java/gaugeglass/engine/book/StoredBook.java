package gaugeglass.engine.book;

import gaugeglass.engine.reading.Form;
import gaugeglass.engine.reading.Node;
import gaugeglass.engine.reading.NodeReader;
import gaugeglass.engine.reading.NodeWriter;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import gaugeglass.engine.vocabulary.StoredVocabulary;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * A rulebook in the form in which a build leaves it and a start reads it: one JSON text that holds
 * the vocabulary, the words, the limits and the index of the compiled rules.
 *
 * @param trade the class name of the trade
 * @param vocabulary its items
 * @param book its words, limits and index
 */
public record StoredBook(String trade, Vocabulary vocabulary, Book book) {
    /** Where a build leaves a rulebook on the class path. */
    public static final String PATH = "gaugeglass/rulebook.json";

    private static final int FORMAT = 1;

    /**
     * Reads a stored rulebook.
     *
     * @param name what to call it in messages
     * @param text what {@link #write} gave
     * @param loader where the observation classes are
     * @throws Mistakes when it is not a stored rulebook of this version of the program
     */
    public static StoredBook read(String name, String text, ClassLoader loader) {
        List<Mistake> mistakes = new ArrayList<>();
        Node node = NodeReader.read(name, text, mistakes);
        Form form = Form.of(name, "", node, mistakes);
        if (!form.text("format").equals(String.valueOf(FORMAT))) {
            form.wrong("format", "this is another format of stored rulebook", String.valueOf(FORMAT), "");
            throw new Mistakes(mistakes);
        }
        Vocabulary vocabulary = StoredVocabulary.read(form.form("vocabulary"), loader);
        Book book = new Book(
                form.text("name"),
                form.text("version"),
                form.text("hash"),
                byId(form.forms("cards"), f -> BookReader.card(f, ""), Card::id),
                byId(form.forms("limits"), f -> BookReader.limit(f, ""), Limit::id),
                byId(form.forms("cautions"), BookReader::caution, Caution::id),
                byId(form.forms("remedies"), BookReader::remedy, Remedy::id),
                form.forms("diagnoses").stream().map(BookReader::diagnosis).toList(),
                form.forms("rules").stream().map(BookReader::rule).toList(),
                form.texts("models"));
        if (!mistakes.isEmpty()) {
            throw new Mistakes(mistakes);
        }
        return new StoredBook(form.text("trade"), vocabulary, book);
    }

    private static <T> Map<String, T> byId(List<Form> forms, Function<Form, T> read, Function<T, String> id) {
        Map<String, T> all = new LinkedHashMap<>();
        for (Form form : forms) {
            T one = read.apply(form);
            all.put(id.apply(one), one);
        }
        return all;
    }

    /** The stored form. */
    public String write() {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("format", FORMAT);
        all.put("name", book.name());
        all.put("version", book.version());
        all.put("hash", book.hash());
        all.put("trade", trade);
        all.put("models", book.models());
        all.put("vocabulary", StoredVocabulary.write(vocabulary));
        all.put("limits", list(book.limits().values(), StoredBook::limit));
        all.put(
                "cautions",
                list(book.cautions().values(), c -> fields("id", c.id(), "title", c.title(), "text", c.text())));
        all.put("remedies", list(book.remedies().values(), r -> fields("id", r.id(), "work", r.work())));
        all.put("cards", list(book.cards().values(), StoredBook::card));
        all.put("diagnoses", list(book.diagnoses(), StoredBook::diagnosis));
        all.put("rules", list(book.rules(), StoredBook::rule));
        return NodeWriter.line(all);
    }

    private static <T> List<Object> list(Iterable<T> all, Function<T, Object> write) {
        List<Object> list = new ArrayList<>();
        all.forEach(one -> list.add(write.apply(one)));
        return list;
    }

    private static Map<String, Object> limit(Limit limit) {
        return fields(
                "id", limit.id(),
                "value", limit.written(),
                "measures", BookReader.measures(limit.value()),
                "meaning", limit.meaning(),
                "safer", limit.safer().word(),
                "least", limit.least(),
                "most", limit.most(),
                "step", limit.step(),
                "basis", limit.basis().word(),
                "sources", sources(limit.sources()),
                "review-by", limit.reviewBy(),
                "layer", limit.layer());
    }

    private static Map<String, Object> card(Card card) {
        Map<String, Object> bands = new LinkedHashMap<>();
        card.bands()
                .forEach((name, band) -> bands.put(
                        name,
                        fields(
                                "urgency", band.urgency().word(),
                                "seen", band.seen(),
                                "variants", new LinkedHashMap<>(band.variants()))));
        return fields(
                "id", card.id(),
                "subject", card.subject(),
                "title", card.title(),
                "about", card.about(),
                "stage", card.stage().word(),
                "consequence", card.sign() ? "" : card.consequence().word(),
                "release", card.release() ? "yes" : "",
                "sign", card.sign() ? "yes" : "",
                "bands", bands,
                "why", card.why(),
                "do", card.action(),
                "remedy", card.remedy(),
                "cautions", card.cautions(),
                "not-when", card.notWhen(),
                "basis", card.basis().word(),
                "sources", sources(card.sources()),
                "status", card.status(),
                "since", card.since(),
                "file", card.file(),
                "line", String.valueOf(card.line()));
    }

    private static List<Object> sources(List<Source> sources) {
        return list(sources, s -> fields("name", s.name(), "known", s.known().word()));
    }

    private static Map<String, Object> diagnosis(Diagnosis diagnosis) {
        return fields(
                "id", diagnosis.id(),
                "cause", diagnosis.cause(),
                "about", diagnosis.about(),
                "for", list(diagnosis.points(), StoredBook::clue),
                "against", list(diagnosis.against(), StoredBook::clue),
                "settled-by", diagnosis.settledBy(),
                "settle", diagnosis.settle(),
                "enough", String.valueOf(diagnosis.enough()));
    }

    private static Map<String, Object> clue(Clue clue) {
        return fields(
                clue.outcome() == Clue.When.FOUND ? "found" : "in-order",
                clue.card(),
                "weight",
                String.valueOf(clue.weight()),
                "says",
                clue.says());
    }

    private static Map<String, Object> rule(RuleEntry rule) {
        return fields(
                "card", rule.card(),
                "band", rule.band(),
                "variant", rule.variant(),
                "file", rule.file(),
                "line", String.valueOf(rule.line()),
                "needs", rule.needs(),
                "limits", rule.limits(),
                "steps",
                        list(
                                rule.steps(),
                                s -> fields(
                                        "type",
                                        s.type(),
                                        "checks",
                                        s.checks(),
                                        "keys",
                                        s.keyBinds(),
                                        "join",
                                        s.join(),
                                        "literal",
                                        s.literal())));
    }

    /** Keys with their values; what is empty is left out. */
    private static Map<String, Object> fields(Object... pairs) {
        Map<String, Object> fields = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            Object value = pairs[i + 1];
            boolean empty = value instanceof String text && text.isEmpty()
                    || value instanceof List<?> list && list.isEmpty()
                    || value instanceof Map<?, ?> map && map.isEmpty();
            if (!empty) {
                fields.put((String) pairs[i], value);
            }
        }
        return fields;
    }
}
