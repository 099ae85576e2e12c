package gaugeglass.engine.build;

import gaugeglass.engine.book.Book;
import gaugeglass.engine.book.StoredBook;
import gaugeglass.engine.drools.Judges;
import gaugeglass.engine.history.History;
import gaugeglass.engine.history.Release;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Trade;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Makes a stored rulebook and its classes from a folder of source files. */
public final class RulebookBuild {
    private RulebookBuild() {}

    /**
     * A rulebook ready to be stored or used.
     *
     * @param stored its words, limits and index
     * @param compiled its classes
     * @param release what is recorded of it when it is released
     */
    public record Built(StoredBook stored, RuleCompiler.Compiled compiled, Release release) {
        /** Where the compiled rules and the observation classes are found together. */
        public ClassLoader loader() {
            return compiled.loader(Thread.currentThread().getContextClassLoader());
        }
    }

    /**
     * Builds a rulebook in memory.
     *
     * @param name the rulebook's name
     * @param version its version
     * @param rulePackage the package of its compiled rules
     * @param texts its files, by name
     * @throws Mistakes with everything that is wrong in it
     */
    public static Built build(String name, String version, String rulePackage, Trade trade, Map<String, String> texts) {
        Vocabulary vocabulary = Vocabulary.of(trade);
        RulebookSource source = RulebookSource.read(texts, vocabulary, trade);
        List<Mistake> mistakes = new ArrayList<>();
        everyItemIsNeeded(trade, vocabulary, source, mistakes);
        RuleCompiler.Compiled compiled = compile(rulePackage, vocabulary, source, mistakes);
        if (!mistakes.isEmpty()) {
            throw new Mistakes(mistakes);
        }
        Book book = source.book(name, version, compiled.models());
        StoredBook stored = new StoredBook(trade.getClass().getName(), vocabulary, book);
        Built built = new Built(stored, compiled, source.release(book));
        // This lays every rule out for the second judge, which refuses what it does not know.
        Judges.of(stored.book().models(), stored.book().rules(), built.loader());
        return built;
    }

    /** Compiles into two packages of about as many rules each, so that a start can make both ready at once. */
    private static RuleCompiler.Compiled compile(
            String rulePackage, Vocabulary vocabulary, RulebookSource source, List<Mistake> mistakes) {
        Map<String, Integer> rules = new TreeMap<>();
        source.rules().forEach(rule -> rules.merge(rule.file(), 1, Integer::sum));
        List<String> files = new ArrayList<>(rules.keySet());
        files.sort(Comparator.comparing((String file) -> -rules.get(file)).thenComparing(file -> file));
        Map<String, String> first = new TreeMap<>();
        Map<String, String> second = new TreeMap<>();
        int more = 0;
        for (String file : files) {
            boolean isFirst = more <= 0;
            more += isFirst ? rules.get(file) : -rules.get(file);
            (isFirst ? first : second).put(file, source.ruleTexts().get(file));
        }
        RuleCompiler.Compiled compiled = RuleCompiler.compile(rulePackage + ".first", vocabulary, first, mistakes);
        if (second.isEmpty()) {
            return compiled;
        }
        RuleCompiler.Compiled other = RuleCompiler.compile(rulePackage + ".second", vocabulary, second, mistakes);
        Map<String, byte[]> classes = new TreeMap<>(compiled.classes());
        classes.putAll(other.classes());
        List<String> models = new ArrayList<>(compiled.models());
        models.addAll(other.models());
        return new RuleCompiler.Compiled(classes, models);
    }

    private static void everyItemIsNeeded(
            Trade trade, Vocabulary vocabulary, RulebookSource source, List<Mistake> mistakes) {
        Set<String> needed = new HashSet<>();
        source.entries().forEach(entry -> needed.addAll(entry.needs()));
        for (Reckoning reckoning : trade.reckonings()) {
            for (Class<? extends Record> type : reckoning.needs()) {
                vocabulary.item(type).ifPresent(item -> needed.add(item.id()));
            }
        }
        for (ItemType item : vocabulary.items()) {
            if (!needed.contains(item.id())) {
                mistakes.add(new Mistake(
                        item.className(),
                        0,
                        0,
                        item.id(),
                        "no rule and no reckoning needs this item",
                        "a use, or no item",
                        ""));
            }
        }
    }

    /**
     * Builds a rulebook into a folder of classes.
     *
     * @param args source folder, trade class, rulebook name, version, package of compiled rules, output folder
     */
    public static void main(String[] args) throws IOException, ReflectiveOperationException {
        Trade trade = Class.forName(args[1], true, Thread.currentThread().getContextClassLoader())
                .asSubclass(Trade.class)
                .getDeclaredConstructor()
                .newInstance();
        Built built = build(args[2], args[3], args[4], trade, RulebookSource.files(Path.of(args[0])));
        Path out = Path.of(args[5]);
        removeClassesOf(out.resolve(args[4].replace('.', '/')));
        for (Map.Entry<String, byte[]> file : built.compiled().classes().entrySet()) {
            Path path = out.resolve(file.getKey());
            Files.createDirectories(path.getParent());
            Files.write(path, file.getValue());
        }
        write(out.resolve(StoredBook.PATH), built.stored().write());
        write(out.resolve(History.FOLDER + History.HERE), built.release().write());
    }

    private static void write(Path file, String text) throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, text, StandardCharsets.UTF_8);
    }

    /** Classes of rules that are no more would otherwise be packed with those of today. */
    private static void removeClassesOf(Path folder) throws IOException {
        if (Files.isDirectory(folder)) {
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path path : (Iterable<Path>) all.sorted(Comparator.reverseOrder())::iterator) {
                    Files.delete(path);
                }
            }
        }
    }
}
