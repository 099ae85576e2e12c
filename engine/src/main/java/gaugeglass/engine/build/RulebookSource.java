package gaugeglass.engine.build;

import gaugeglass.engine.book.Book;
import gaugeglass.engine.book.BookReader;
import gaugeglass.engine.book.Card;
import gaugeglass.engine.book.Caution;
import gaugeglass.engine.book.Diagnosis;
import gaugeglass.engine.book.Limit;
import gaugeglass.engine.book.Remedy;
import gaugeglass.engine.book.RuleEntry;
import gaugeglass.engine.reading.Form;
import gaugeglass.engine.reading.NodeReader;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import gaugeglass.engine.vocabulary.Trade;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A rulebook as people write it: a folder with {@code limits.yaml}, {@code cautions.yaml}, {@code remedies.yaml},
 * {@code diagnoses.yaml} and, for each subject, {@code subject.drl} and {@code subject.cards.yaml}.
 */
public final class RulebookSource {
    private static final String CARDS = ".cards.yaml";
    private static final String RULES = ".drl";

    private final Map<String, String> texts;
    private final Vocabulary vocabulary;
    private final Trade trade;
    private final List<Mistake> mistakes = new ArrayList<>();
    private final Map<String, Card> cards = new LinkedHashMap<>();
    private final Map<String, Limit> limits = new LinkedHashMap<>();
    private final Map<String, Caution> cautions = new LinkedHashMap<>();
    private final Map<String, Remedy> remedies = new LinkedHashMap<>();
    private final List<Diagnosis> diagnoses = new ArrayList<>();
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
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            texts.forEach((name, text) -> {
                digest.update(name.getBytes(StandardCharsets.UTF_8));
                digest.update((byte) 0);
                digest.update(text.replace("\r\n", "\n").getBytes(StandardCharsets.UTF_8));
                digest.update((byte) 0);
            });
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
