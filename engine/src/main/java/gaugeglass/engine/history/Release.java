package gaugeglass.engine.history;

import gaugeglass.engine.book.Book;
import gaugeglass.engine.book.Card;
import gaugeglass.engine.book.Limit;
import gaugeglass.engine.book.Source;
import gaugeglass.engine.reading.Form;
import gaugeglass.engine.reading.NodeReader;
import gaugeglass.engine.reading.YamlWriter;
import gaugeglass.engine.text.Digest;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.Component;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a rulebook said at one of its releases: every id, with what a pack may lean on. Long texts and the conditions of rules
 * are kept as digests, which tell that they differ and not how.
 *
 * @param rulebook the rulebook's name
 * @param version the version it was released as
 * @param hash the digest of the files it was made from
 * @param said by sort, then id: what it said, aspect by aspect
 * @param retired the ids that had been retired by then
 */
public record Release(
        String rulebook,
        String version,
        String hash,
        Map<Sort, Map<String, Map<String, String>>> said,
        List<Retired> retired) {
    private static final String FORMAT = "1";

    /** Aspects that are kept as digests, with how a difference is told. */
    private static final Map<String, String> DIGESTS = Map.of(
            "conditions", "its conditions are others",
            "words", "it is worded otherwise",
            "sources", "it rests on other documents");

    private static final int SHORT = 12;

    public Release {
        Map<Sort, Map<String, Map<String, String>>> all = new EnumMap<>(Sort.class);
        for (Sort sort : Sort.values()) {
            all.put(sort, Collections.unmodifiableMap(new LinkedHashMap<>(said.getOrDefault(sort, Map.of()))));
        }
        said = Collections.unmodifiableMap(all);
        retired = List.copyOf(retired);
    }

    /**
     * The record of a rulebook.
     *
     * @param conditions for each card the text of its rules
     */
    public static Release of(Book book, Vocabulary vocabulary, Map<String, String> conditions, List<Retired> retired) {
        Map<Sort, Map<String, Map<String, String>>> said = new EnumMap<>(Sort.class);
        Map<String, Map<String, String>> limits = new LinkedHashMap<>();
        book.limits().forEach((id, limit) -> limits.put(id, limit(limit)));
        said.put(Sort.LIMIT, limits);
        Map<String, Map<String, String>> checks = new LinkedHashMap<>();
        book.cards().forEach((id, card) -> checks.put(id, check(card, conditions.getOrDefault(id, ""))));
        said.put(Sort.CHECK, checks);
        Map<String, Map<String, String>> items = new LinkedHashMap<>();
        for (ItemType item : vocabulary.items()) {
            items.put(item.id(), item(item));
        }
        said.put(Sort.ITEM, items);
        Map<String, Map<String, String>> cautions = new LinkedHashMap<>();
        book.cautions()
                .forEach((id, caution) ->
                        cautions.put(id, aspects("title", caution.title(), "words", digest(caution.text()))));
        said.put(Sort.CAUTION, cautions);
        Map<String, Map<String, String>> remedies = new LinkedHashMap<>();
        book.remedies().forEach((id, remedy) -> remedies.put(id, aspects("work", remedy.work())));
        said.put(Sort.REMEDY, remedies);
        return new Release(book.name(), book.version(), book.hash(), said, retired);
    }

    private static Map<String, String> limit(Limit limit) {
        return aspects(
                "value", limit.written(),
                "meaning", limit.meaning(),
                "safer", limit.safer().word(),
                "least", limit.least(),
                "most", limit.most(),
                "basis", Words.of(limit.basis()),
                "sources", digest(sources(limit.sources())));
    }

    private static Map<String, String> check(Card card, String conditions) {
        List<String> bands = new ArrayList<>();
        card.bands()
                .values()
                .forEach(band -> bands.add(
                        card.sign()
                                ? band.name()
                                : band.name() + " " + band.urgency().word()));
        return aspects(
                "title", card.title(),
                "about", card.about(),
                "stage", Words.of(card.stage()),
                "bands", String.join(", ", bands),
                "release", card.release() ? "waits for it" : "",
                "basis", Words.of(card.basis()),
                "conditions", digest(conditions),
                "words", digest(card.why() + "\n" + card.action() + "\n" + card.notWhen() + "\n" + card.cautions()));
    }

    private static Map<String, String> item(ItemType item) {
        List<String> answers = new ArrayList<>();
        for (Component part : item.values()) {
            String answer =
                    switch (part.form()) {
                        case CHOICE -> String.join(" or ", part.choices());
                        case QUANTITY -> part.least() + " to " + part.most();
                        case COUNT -> part.from() + " to " + part.to();
                        case DATE -> "a day";
                        case TEXT -> "words";
                    };
            answers.add(item.values().size() == 1 ? answer : Words.hyphened(part.name()) + ": " + answer);
        }
        return aspects("ask", item.ask(), "of", item.kind(), "answer", String.join("; ", answers));
    }

    private static String sources(List<Source> sources) {
        return sources.isEmpty() ? "" : sources.toString();
    }

    private static Map<String, String> aspects(String... namesAndTexts) {
        Map<String, String> aspects = new LinkedHashMap<>();
        for (int i = 0; i < namesAndTexts.length; i += 2) {
            if (!namesAndTexts[i + 1].isEmpty()) {
                aspects.put(namesAndTexts[i], namesAndTexts[i + 1].strip().replaceAll("\\s+", " "));
            }
        }
        return aspects;
    }

    private static String digest(String text) {
        return text.isEmpty()
                ? ""
                : new Digest().add(text.replaceAll("\\s+", " ")).hex().substring(0, SHORT);
    }

    /** Whether it has an id. */
    public boolean has(Sort sort, String id) {
        return said.get(sort).containsKey(id);
    }

    /** What it tells of an id that had been retired. */
    public Optional<Retired> retired(Sort sort, String id) {
        return retired.stream()
                .filter(one -> one.sort() == sort && one.id().equals(id))
                .findFirst();
    }

    /** The ids that this release has and a later one neither has nor retired: such a later one may not be released. */
    public List<String> vanishedIn(Release later) {
        List<String> vanished = new ArrayList<>();
        said.forEach((sort, ids) -> ids.keySet().forEach(id -> {
            if (!later.has(sort, id) && later.retired(sort, id).isEmpty()) {
                vanished.add(sort.word() + " " + id);
            }
        }));
        return vanished;
    }

    /** What a later release says otherwise: by sort, then in the order of this one, what is new behind. */
    public List<Change> changesTo(Release later) {
        List<Change> changes = new ArrayList<>();
        said.forEach((sort, ids) -> {
            ids.forEach((id, before) -> {
                if (later.has(sort, id)) {
                    String told = told(before, later.said.get(sort).get(id));
                    if (!told.isEmpty()) {
                        changes.add(new Change(sort, id, Change.Fate.CHANGED, told));
                    }
                } else {
                    String told = later.retired(sort, id)
                            .map(one -> "retired with version " + one.since() + "; instead of it: " + one.replacement()
                                    + ". " + one.why())
                            .orElse("it is no more");
                    changes.add(new Change(sort, id, Change.Fate.GONE, told));
                }
            });
            later.said.get(sort).forEach((id, now) -> {
                if (!has(sort, id)) {
                    String first = now.values().stream().findFirst().orElse("");
                    changes.add(new Change(sort, id, Change.Fate.NEW, "new: " + first));
                }
            });
        });
        return changes;
    }

    private static String told(Map<String, String> before, Map<String, String> now) {
        List<String> told = new ArrayList<>();
        Map<String, String> all = new LinkedHashMap<>(before);
        all.putAll(now);
        all.keySet().forEach(aspect -> {
            String was = before.getOrDefault(aspect, "");
            String is = now.getOrDefault(aspect, "");
            if (!was.equals(is)) {
                told.add(
                        DIGESTS.containsKey(aspect)
                                ? DIGESTS.get(aspect)
                                : aspect + " " + shown(was) + ", now " + shown(is));
            }
        });
        return String.join("; ", told);
    }

    private static String shown(String text) {
        return text.isEmpty() ? "none" : text.indexOf(' ') < 0 ? text : "\"" + text + "\"";
    }

    /** As YAML that {@link #read} takes. */
    public String write() {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("format", FORMAT);
        all.put("rulebook", rulebook);
        all.put("version", version);
        all.put("hash", hash);
        said.forEach((sort, ids) -> all.put(sort.word(), ids));
        List<Map<String, Object>> gone = new ArrayList<>();
        retired.forEach(one -> gone.add(one.write()));
        all.put("retired", gone);
        return YamlWriter.write(all);
    }

    /**
     * Reads a record.
     *
     * @throws Mistakes when it is no record
     */
    public static Release read(String file, String text) {
        List<Mistake> mistakes = new ArrayList<>();
        Form form = Form.of(file, "", NodeReader.read(file, text, mistakes), mistakes);
        String format = form.text("format");
        if (!format.equals(FORMAT)) {
            form.wrong("format", "this record is of format " + format, FORMAT, "");
        }
        String rulebook = form.text("rulebook");
        String version = form.text("version");
        String hash = form.text("hash");
        Map<Sort, Map<String, Map<String, String>>> said = new EnumMap<>(Sort.class);
        for (Sort sort : Sort.values()) {
            Map<String, Map<String, String>> ids = new LinkedHashMap<>();
            form.form(sort.word()).byKey().forEach((id, one) -> {
                Map<String, String> aspects = new LinkedHashMap<>();
                one.fields().all().keySet().forEach(aspect -> aspects.put(aspect, one.text(aspect)));
                ids.put(id, aspects);
            });
            said.put(sort, ids);
        }
        List<Retired> retired =
                form.forms("retired").stream().map(Retired::read).toList();
        form.close();
        if (!mistakes.isEmpty()) {
            throw new Mistakes(mistakes);
        }
        return new Release(rulebook, version, hash, said, retired);
    }
}
