package gaugeglass.engine.build;

import gaugeglass.engine.book.Band;
import gaugeglass.engine.book.Basis;
import gaugeglass.engine.book.Book;
import gaugeglass.engine.book.BookReader;
import gaugeglass.engine.book.Card;
import gaugeglass.engine.book.Caution;
import gaugeglass.engine.book.Limit;
import gaugeglass.engine.book.Remedy;
import gaugeglass.engine.book.RuleEntry;
import gaugeglass.engine.book.StoredBook;
import gaugeglass.engine.book.Urgency;
import gaugeglass.engine.drools.Judges;
import gaugeglass.engine.pack.CompiledPack;
import gaugeglass.engine.pack.PackFiles;
import gaugeglass.engine.reading.Form;
import gaugeglass.engine.reading.Node;
import gaugeglass.engine.reading.NodeReader;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import gaugeglass.engine.text.Nearest;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Trade;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;
import org.eclipse.jdt.core.compiler.batch.BatchCompiler;

/** Checks and compiles what a pack has of its own: observations, rules, cards and limits. */
public final class PackBench {
    private static final String CARDS = ".cards.yaml";
    private static final String RULES = ".drl";

    private final PackFiles files;
    private final StoredBook standard;
    private final Trade trade;
    private final List<Mistake> mistakes = new ArrayList<>();
    private final Map<String, Card> cards = new LinkedHashMap<>();
    private final Map<String, Limit> limits = new LinkedHashMap<>();
    private final Map<String, Caution> cautions;
    private final Map<String, Remedy> remedies;
    private final Set<String> replaced = new HashSet<>();
    private final List<WrittenRule> rules = new ArrayList<>();

    private PackBench(PackFiles files, StoredBook standard, Trade trade) {
        this.files = files;
        this.standard = standard;
        this.trade = trade;
        this.cautions = new LinkedHashMap<>(standard.book().cautions());
        this.remedies = new LinkedHashMap<>(standard.book().remedies());
    }

    /**
     * Compiles a pack, for a caller in another class loader, whose classes this one does not share.
     *
     * @param name what the pack is called in messages
     * @param bytes its files
     * @param packName its short name
     * @param title its name and version for people
     * @param classPath where the classes of this program are
     * @return the compiled pack as bytes, or a list of mistakes, each as a list of its parts
     */
    public static Object build(
            String name, Map<String, byte[]> bytes, String packName, String title, List<String> classPath) {
        ClassLoader loader = PackBench.class.getClassLoader();
        ClassLoader before = Thread.currentThread().getContextClassLoader();
        Thread.currentThread().setContextClassLoader(loader);
        try (InputStream in = loader.getResourceAsStream(StoredBook.PATH)) {
            String packed = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            StoredBook standard = StoredBook.read(StoredBook.PATH, packed, loader);
            Trade trade = Class.forName(standard.trade(), true, loader)
                    .asSubclass(Trade.class)
                    .getDeclaredConstructor()
                    .newInstance();
            return new PackBench(PackFiles.of(name, bytes), standard, trade)
                    .compiled(packName, title, classPath)
                    .write();
        } catch (Mistakes e) {
            List<List<Object>> told = new ArrayList<>();
            for (Mistake one : e.all()) {
                told.add(List.of(
                        one.file(), one.line(), one.column(), one.where(), one.what(), one.expected(), one.nearest()));
            }
            return told;
        } catch (IOException | ReflectiveOperationException e) {
            throw new IllegalStateException("the rulebook cannot be read where packs are compiled", e);
        } finally {
            Thread.currentThread().setContextClassLoader(before);
        }
    }

    private void each(String file, String key, Consumer<Form> take) {
        if (!files.has(file)) {
            return;
        }
        try {
            String place = files.place(file);
            Form form = Form.of(place, "", NodeReader.read(place, files.text(file), mistakes), mistakes);
            for (Form one : form.forms(key)) {
                take.accept(one);
            }
        } catch (Mistakes e) {
            mistakes.addAll(e.all());
        }
    }

    private <T> void table(
            String file, String key, Function<Form, T> read, Function<T, String> id, Map<String, T> all) {
        each(file, key, form -> {
            T value = read.apply(form);
            if (all.putIfAbsent(id.apply(value), value) != null) {
                form.wrong("id", "there is a \"" + id.apply(value) + "\" already", "an id of its own", "");
            }
        });
    }

    private CompiledPack compiled(String packName, String title, List<String> classPath) throws IOException {
        String inPackage = CompiledPack.packageOf(packName);
        OwnItems own = new OwnItems(standard.vocabulary(), inPackage);
        each("observations.yaml", "observations", own::read);
        table("cautions.yaml", "cautions", BookReader::caution, Caution::id, cautions);
        table("remedies.yaml", "remedies", BookReader::remedy, Remedy::id, remedies);
        each("replaced.yaml", "replaced", form -> replaced.add(form.text("check")));
        table("limits.yaml", "own", form -> BookReader.limit(form, title), Limit::id, limits);
        Set<String> proven = new HashSet<>();
        for (String file : files.names()) {
            if (file.endsWith(CARDS)) {
                String subject = file.substring(0, file.length() - CARDS.length());
                table(
                        file,
                        "cards",
                        form -> {
                            boolean scenarios = form.node("scenarios")
                                    .filter(n -> n instanceof Node.Items items
                                            && !items.all().isEmpty())
                                    .isPresent();
                            Card card = BookReader.card(form, subject);
                            if (scenarios) {
                                proven.add(card.id());
                            }
                            return card;
                        },
                        Card::id,
                        cards);
            } else if (file.endsWith(RULES)) {
                try {
                    rules.addAll(RuleFile.read(files.place(file), straight(files.text(file)), mistakes));
                } catch (Mistakes e) {
                    mistakes.addAll(e.all());
                }
            }
        }
        // Nothing is compiled or loaded before every expression was found to be of the few forms allowed.
        new AllowList(mistakes).check(rules);
        Path work = Files.createTempDirectory("gaugeglass-pack");
        try {
            return compiled(inPackage, title, own, proven, work, classPath);
        } finally {
            try (Stream<Path> all = Files.walk(work)) {
                for (Path path : (Iterable<Path>) all.sorted(Comparator.reverseOrder())::iterator) {
                    Files.deleteIfExists(path);
                }
            }
        }
    }

    private CompiledPack compiled(
            String inPackage, String title, OwnItems own, Set<String> proven, Path work, List<String> classPath)
            throws IOException {
        Map<String, byte[]> classes = new TreeMap<>();
        if (!own.isEmpty() && mistakes.isEmpty()) {
            records(own, inPackage, work, classPath, classes);
        }
        if (!mistakes.isEmpty() && !own.isEmpty()) {
            // Without its records a pack's rules cannot be read: they would only be told wrong for that.
            throw new Mistakes(mistakes);
        }
        ClassLoader loader = new java.net.URLClassLoader(
                new java.net.URL[] {work.resolve("out").toUri().toURL()}, PackBench.class.getClassLoader());
        List<ItemType> items = own.items(loader);
        Vocabulary vocabulary = standard.vocabulary().with(items);
        Map<String, Card> allCards = new LinkedHashMap<>(standard.book().cards());
        cards.forEach((id, card) -> {
            if (allCards.put(id, card) != null && !replaced.contains(id)) {
                mistakes.add(new Mistake(
                        files.place(card.file().substring(card.file().lastIndexOf('/') + 1)),
                        card.line(),
                        0,
                        id,
                        "the rulebook has a check of this id; to put this one in its place is said in replaced.yaml, with the reason",
                        "an id of its own, or the id in replaced.yaml",
                        ""));
            }
        });
        Map<String, Limit> allLimits = new LinkedHashMap<>(standard.book().limits());
        limits.forEach((id, limit) -> {
            if (allLimits.put(id, limit) != null) {
                mistakes.add(new Mistake(
                        files.place("limits.yaml"),
                        0,
                        0,
                        id,
                        "the rulebook has a limit of this id",
                        "its new value under limits:, or another id",
                        ""));
            }
        });
        List<RuleEntry> entries = new RuleLint(vocabulary, allCards, allLimits, mistakes).entries(rules);
        lint(entries, items, proven, allLimits);
        if (!mistakes.isEmpty()) {
            throw new Mistakes(mistakes);
        }
        // What was checked is compiled, and not the text it was read from.
        Map<String, String> texts = new TreeMap<>();
        for (WrittenRule rule : rules) {
            texts.merge("rules.drl", rule.text(), String::concat);
        }
        Thread.currentThread().setContextClassLoader(loader);
        String rulePackage = inPackage + ".rules";
        RuleCompiler.Compiled compiled = RuleCompiler.compile(rulePackage, vocabulary, texts, new ArrayList<>());
        if (compiled.models().isEmpty()) {
            culprits(rulePackage, vocabulary);
        }
        classes.putAll(compiled.classes());
        Book book = new Book(
                title, "", files.hash(), cards, limits, Map.of(), Map.of(), List.of(), entries, compiled.models());
        CompiledPack pack = new CompiledPack(new StoredBook(standard.trade(), vocabulary, book).write(), classes);
        Judges.of(book.models(), entries, pack.loader(PackBench.class.getClassLoader()));
        return pack;
    }

    /** A rule file from an office program, with its curly quotes made straight. */
    private static String straight(String text) {
        return text.replace('\u201C', '"')
                .replace('\u201D', '"')
                .replace('\u201E', '"')
                .replace('\u00A0', ' ');
    }

    private void records(OwnItems own, String inPackage, Path work, List<String> classPath, Map<String, byte[]> classes)
            throws IOException {
        Path out = Files.createDirectories(work.resolve("out"));
        List<String> line = new ArrayList<>(List.of(
                "-17",
                "-proc:none",
                "-nowarn",
                "-parameters",
                "-d",
                out.toString(),
                "-cp",
                String.join(java.io.File.pathSeparator, classPath)));
        for (Map.Entry<String, String> source : own.sources().entrySet()) {
            Path file = Files.writeString(work.resolve(source.getKey() + ".java"), source.getValue());
            line.add(file.toString());
        }
        StringWriter said = new StringWriter();
        PrintWriter to = new PrintWriter(said);
        if (!BatchCompiler.compile(line.toArray(new String[0]), to, to, null)) {
            throw new IllegalStateException("the records of a pack do not compile: " + said);
        }
        try (Stream<Path> all = Files.walk(out)) {
            for (Path path : (Iterable<Path>) all.filter(Files::isRegularFile)::iterator) {
                classes.put(out.relativize(path).toString().replace('\\', '/'), Files.readAllBytes(path));
            }
        }
    }

    /** Compiles rule by rule, to name those that do not compile. */
    private void culprits(String rulePackage, Vocabulary vocabulary) {
        for (int i = 0; i < rules.size(); i++) {
            WrittenRule rule = rules.get(i);
            List<Mistake> found = new ArrayList<>();
            RuleCompiler.compile(rulePackage + ".r" + i, vocabulary, Map.of("rule.drl", rule.text()), found);
            if (!found.isEmpty()) {
                mistakes.add(new Mistake(
                        rule.file(),
                        rule.line(),
                        0,
                        RuleEntry.name(rule.card(), rule.band(), rule.variant()),
                        found.get(0).what(),
                        "comparisons of things of one kind",
                        ""));
            }
        }
        if (mistakes.isEmpty()) {
            mistakes.add(new Mistake(files.name(), 0, 0, "", "the rules do not compile together", "", ""));
        }
        throw new Mistakes(mistakes);
    }

    private void lint(List<RuleEntry> entries, List<ItemType> items, Set<String> proven, Map<String, Limit> allLimits) {
        Set<String> ruled = new HashSet<>();
        Set<String> needed = new HashSet<>();
        Set<String> used = new HashSet<>();
        for (RuleEntry entry : entries) {
            ruled.add(entry.card() + " / " + entry.band());
            needed.addAll(entry.needs());
            used.addAll(entry.limits());
            if (standard.book().cards().containsKey(entry.card()) && !cards.containsKey(entry.card())) {
                mistakes.add(new Mistake(
                        entry.file(),
                        entry.line(),
                        0,
                        entry.name(),
                        entry.card() + " is a check of the rulebook, and a pack cannot add to its rules",
                        "a card of the pack's own",
                        ""));
            }
        }
        for (Card card : cards.values()) {
            Consumer<String> wrong =
                    what -> mistakes.add(new Mistake(card.file(), card.line(), 0, card.id(), what, "", ""));
            for (Band band : card.bands().values()) {
                if (!ruled.contains(card.id() + " / " + band.name())) {
                    wrong.accept("no rule is called \"" + card.id() + " / " + band.name() + "\"");
                }
            }
            if (!proven.contains(card.id())) {
                wrong.accept("it has no scenarios, so nothing shows that its rules do what is meant");
            }
            card.cautions().forEach(id -> known(card, "caution", id, cautions.keySet()));
            if (!card.remedy().isEmpty()) {
                known(card, "remedy", card.remedy(), remedies.keySet());
            }
            if (card.worst() == Urgency.STOP && !card.sign() && card.cautions().isEmpty()) {
                wrong.accept("a stop without a caution");
            }
            if (card.basis() == Basis.STANDARD && card.sources().isEmpty()) {
                wrong.accept("its basis is a standard, but it names none");
            }
            List<String> said = new ArrayList<>(List.of(card.title(), card.why(), card.action(), card.notWhen()));
            card.bands().values().forEach(band -> {
                said.add(band.seen());
                said.addAll(band.variants().values());
            });
            Set<String> reasons = new LinkedHashSet<>();
            trade.neverSaid().forEach((pattern, why) -> {
                if (said.stream().anyMatch(text -> pattern.matcher(text).find())) {
                    reasons.add(why);
                }
            });
            reasons.stream().sorted().forEach(wrong);
        }
        limits.keySet().stream()
                .filter(id -> !used.contains(id))
                .forEach(id -> mistakes.add(new Mistake(
                        files.place("limits.yaml"), 0, 0, id, "the limit is used by no rule of the pack", "", "")));
        for (Limit limit : limits.values()) {
            try {
                Limits.moved(limit);
            } catch (IllegalArgumentException e) {
                mistakes.add(new Mistake(
                        files.place("limits.yaml"),
                        0,
                        0,
                        limit.id(),
                        "its step \"" + limit.step() + "\" cannot be added to " + limit.written(),
                        "a " + BookReader.measures(limit.value()),
                        ""));
            }
        }
        items.stream()
                .filter(item -> !needed.contains(item.id()))
                .forEach(item -> mistakes.add(new Mistake(
                        files.place("observations.yaml"),
                        0,
                        0,
                        item.id(),
                        "no rule of the pack looks at it",
                        "a rule that does; gaugeglass pack rule writes one from a short form",
                        "")));
    }

    private void known(Card card, String what, String id, Collection<String> all) {
        if (!all.contains(id)) {
            mistakes.add(new Mistake(
                    card.file(),
                    card.line(),
                    0,
                    card.id(),
                    "\"" + id + "\" is no " + what,
                    "a " + what + " of the rulebook or the pack",
                    Nearest.to(id, all).orElse("")));
        }
    }
}
