package gaugeglass.engine.build;

import gaugeglass.engine.book.Book;
import gaugeglass.engine.book.BookReader;
import gaugeglass.engine.book.Card;
import gaugeglass.engine.book.Caution;
import gaugeglass.engine.book.Diagnosis;
import gaugeglass.engine.book.Limit;
import gaugeglass.engine.book.Remedy;
import gaugeglass.engine.book.RuleEntry;
import gaugeglass.engine.history.Release;
import gaugeglass.engine.history.Retired;
import gaugeglass.engine.history.Sort;
import gaugeglass.engine.reading.Form;
import gaugeglass.engine.reading.NodeReader;
import gaugeglass.engine.text.Digest;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Trade;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A rulebook as people write it: a folder with {@code limits.yaml}, {@code cautions.yaml}, {@code remedies.yaml},
 * {@code diagnoses.yaml} and, for each subject, {@code subject.drl} and {@code subject.cards.yaml}; and {@code retired.yaml},
 * once an id that was released is no more.
 */
public final class RulebookSource {
    private static final String CARDS = ".cards.yaml";
    private static final String RULES = ".drl";
    private static final String RETIRED = "retired.yaml";

    private final Map<String, String> texts;
    private final Vocabulary vocabulary;
    private final Trade trade;
    private final List<Mistake> mistakes = new ArrayList<>();
    private final Map<String, Card> cards = new LinkedHashMap<>();
    private final Map<String, Limit> limits = new LinkedHashMap<>();
    private final Map<String, Caution> cautions = new LinkedHashMap<>();
    private final Map<String, Remedy> remedies = new LinkedHashMap<>();
    private final List<Diagnosis> diagnoses = new ArrayList<>();
    private final List<Retired> retired = new ArrayList<>();
    private final List<WrittenRule> rules = new ArrayList<>();
    private List<RuleEntry> entries = List.of();

    private RulebookSource(Map<String, String> texts, Vocabulary vocabulary, Trade trade) {
        this.texts = texts;
        this.vocabulary = vocabulary;
        this.trade = trade;
    }

    /** Every file directly in a folder, by name. */
    public static Map<String, String> files(Path folder) {
        Map<String, String> texts = new TreeMap<>();
        try (Stream<Path> all = Files.list(folder)) {
            for (Path file : (Iterable<Path>) all.sorted()::iterator) {
                String name = file.getFileName().toString();
                if (name.endsWith(RULES) || name.endsWith(".yaml")) {
                    texts.put(name, Files.readString(file, StandardCharsets.UTF_8));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException("the rulebook cannot be read", e);
        }
        return texts;
    }

    /**
     * Reads and checks a rulebook.
     *
     * @param texts files by name
     * @param trade whose reckonings its rules may use
     * @throws Mistakes with everything that is wrong in it
     */
    public static RulebookSource read(Map<String, String> texts, Vocabulary vocabulary, Trade trade) {
        RulebookSource source = new RulebookSource(texts, vocabulary, trade);
        source.read();
        if (!source.mistakes.isEmpty()) {
            throw new Mistakes(source.mistakes);
        }
        return source;
    }

    private void read() {
        table("limits.yaml", "limits", f -> BookReader.limit(f, "standard practice"), Limit::id, limits);
        table("cautions.yaml", "cautions", BookReader::caution, Caution::id, cautions);
        table("remedies.yaml", "remedies", BookReader::remedy, Remedy::id, remedies);
        Map<String, Diagnosis> byId = new LinkedHashMap<>();
        table("diagnoses.yaml", "diagnoses", BookReader::diagnosis, Diagnosis::id, byId);
        diagnoses.addAll(byId.values());
        if (texts.containsKey(RETIRED)) {
            Map<String, Retired> gone = new LinkedHashMap<>();
            table(RETIRED, "retired", Retired::read, one -> one.sort().word() + " " + one.id(), gone);
            retired.addAll(gone.values());
        }
        BiFunction<String, Form, Card> card = (subject, form) -> BookReader.card(form, subject);
        texts.forEach((name, text) -> {
            if (name.endsWith(CARDS)) {
                String subject = name.substring(0, name.length() - CARDS.length());
                table(name, "cards", form -> card.apply(subject, form), Card::id, cards);
            }
        });
        texts.forEach((name, text) -> {
            if (name.endsWith(RULES)) {
                rules.addAll(RuleFile.read(name, text, mistakes));
            }
        });
        entries = new RuleLint(vocabulary, cards, limits, mistakes).entries(rules);
        if (mistakes.isEmpty()) {
            new BookLint(this, mistakes).check();
            retired.forEach(this::retired);
        }
    }

    private <T> void table(
            String name, String key, Function<Form, T> read, Function<T, String> id, Map<String, T> all) {
        String text = texts.get(name);
        if (text == null) {
            mistakes.add(new Mistake(name, 0, 0, "", "the file is not there", "a rulebook has one", ""));
            return;
        }
        try {
            Form form = Form.of(name, "", NodeReader.read(name, text, mistakes), mistakes);
            for (Form one : form.forms(key)) {
                T value = read.apply(one);
                if (all.put(id.apply(value), value) != null) {
                    one.wrong("id", "\"" + id.apply(value) + "\" stands here a second time", "an id of its own", "");
                }
            }
            form.close();
        } catch (Mistakes e) {
            mistakes.addAll(e.all());
        }
    }

    /** What is no more must not be there, and what stands in its place must be, or have been. */
    private void retired(Retired one) {
        Set<String> live = live(one.sort());
        Consumer<String> wrong = what -> mistakes.add(new Mistake(RETIRED, 0, 0, one.id(), what, "", ""));
        if (live.contains(one.id())) {
            wrong.accept("it is retired, and there is a " + one.sort().word() + " of this id all the same");
        }
        for (String id : one.instead()) {
            boolean isKnown = live.contains(id)
                    || retired.stream()
                            .anyMatch(other ->
                                    other.sort() == one.sort() && other.id().equals(id));
            if (!isKnown) {
                wrong.accept("\"" + id + "\", which is to stand in its place, is no "
                        + one.sort().word());
            }
        }
    }

    private Set<String> live(Sort sort) {
        return switch (sort) {
            case LIMIT -> limits.keySet();
            case CHECK -> cards.keySet();
            case ITEM -> vocabulary.items().stream().map(ItemType::id).collect(Collectors.toSet());
            case CAUTION -> cautions.keySet();
            case REMEDY -> remedies.keySet();
        };
    }

    /** What is recorded of the whole, for the day on which it is released. */
    Release release(Book book) {
        Map<String, Set<String>> conditions = new TreeMap<>();
        rules.forEach(rule ->
                conditions.computeIfAbsent(rule.card(), card -> new TreeSet<>()).add(rule.text()));
        Map<String, String> texts = new TreeMap<>();
        conditions.forEach((card, all) -> texts.put(card, String.join("", all)));
        return Release.of(book, vocabulary, texts, retired);
    }

    /** The rules as written, in the order of files. */
    public List<WrittenRule> rules() {
        return rules;
    }

    /** The index. */
    public List<RuleEntry> entries() {
        return entries;
    }

    public Map<String, Card> cards() {
        return cards;
    }

    public Map<String, Limit> limits() {
        return limits;
    }

    public Map<String, Caution> cautions() {
        return cautions;
    }

    public Map<String, Remedy> remedies() {
        return remedies;
    }

    public List<Diagnosis> diagnoses() {
        return diagnoses;
    }

    /** The trade whose reckonings the rules may use. */
    Trade trade() {
        return trade;
    }

    public Vocabulary vocabulary() {
        return vocabulary;
    }

    /** The rule files, by name. */
    public Map<String, String> ruleTexts() {
        Map<String, String> all = new TreeMap<>();
        texts.forEach((name, text) -> {
            if (name.endsWith(RULES)) {
                all.put(name, text);
            }
        });
        return all;
    }

    /** The whole as one book. */
    public Book book(String name, String version, List<String> models) {
        return new Book(name, version, hash(), cards, limits, cautions, remedies, diagnoses, entries, models);
    }

    /** A digest of every file's name and text. */
    private String hash() {
        Digest digest = new Digest();
        texts.forEach((name, text) -> digest.add(name + "\0" + text.replace("\r\n", "\n") + "\0"));
        return digest.hex();
    }
}
