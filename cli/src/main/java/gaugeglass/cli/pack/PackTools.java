package gaugeglass.cli.pack;

import gaugeglass.cli.pack.Laying.Laid;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.book.Book;
import gaugeglass.engine.book.Card;
import gaugeglass.engine.book.Limit;
import gaugeglass.engine.book.StoredBook;
import gaugeglass.engine.build.Scenario;
import gaugeglass.engine.build.ScenarioReader;
import gaugeglass.engine.build.ScenarioRunner;
import gaugeglass.engine.build.ScenarioRunner.Ran;
import gaugeglass.engine.build.ScenariosWanting;
import gaugeglass.engine.pack.CompiledPack;
import gaugeglass.engine.pack.Pack;
import gaugeglass.engine.pack.PackFiles;
import gaugeglass.engine.pack.PackReader;
import gaugeglass.engine.pack.Upgrade;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Trade;
import gaugeglass.steam.SteamTrade;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** The work that is done on packs, each as lines of text to be printed; mistakes are thrown. */
public final class PackTools {
    private final StoredBook standard;
    private final Supplier<Path> home;
    private final ClassLoader loader;

    /**
     * Tools over a rulebook.
     *
     * @param home where the user's own things are
     * @param loader where the rulebook's classes are
     */
    public PackTools(StoredBook standard, Supplier<Path> home, ClassLoader loader) {
        this.standard = standard;
        this.home = home;
        this.loader = loader;
    }

    private static Mistakes wrong(String where, String what, String expected) {
        return new Mistakes(List.of(new Mistake(where, 0, 0, "", what, expected, "")));
    }

    /** The places of the packs that words name. */
    public List<Path> places(List<String> words) {
        return places(words, home);
    }

    /** The same, for which no rulebook is needed. */
    public static List<Path> places(List<String> words, Supplier<Path> home) {
        return Laying.places(words, home);
    }

    // ---- making one

    /** Begins a pack in a folder that is not there yet. */
    public List<String> begin(Path folder, String title, String level) throws IOException {
        String name = String.valueOf(folder.getFileName());
        if (Files.exists(folder)) {
            throw wrong(folder.toString(), "this is there already", "a folder that is not there yet");
        }
        Map<String, byte[]> files = new TreeMap<>();
        String manifest = "pack: " + name + "\ntitle: " + quoted(title) + "\nversion: 1.0.0\nlevel: " + level
                + "\ntailors: "
                + standard.book().name() + "\nmade-for: " + standard.book().version()
                + "\nby: \"write here who answers for it\"\n";
        String limits = "# A limit's id, a colon, its new value. All ids: gaugeglass rulebook --limits\nlimits: {}\n";
        files.put(PackFiles.MANIFEST, manifest.getBytes(java.nio.charset.StandardCharsets.UTF_8));
        // Whatever is wrong with the name or level is told before anything is written.
        PackReader.read(PackFiles.of(folder.toString(), files), unit());
        Files.createDirectories(folder);
        Files.writeString(folder.resolve(PackFiles.MANIFEST), manifest);
        Files.writeString(folder.resolve("limits.yaml"), limits);
        return List.of(
                folder + ": begun, with " + PackFiles.MANIFEST + " and limits.yaml.",
                "Write into them, then: gaugeglass pack check " + folder);
    }

    private static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }

    private String unit() {
        return standard.vocabulary().unit().id();
    }

    // ---- checking

    /** Reads, checks and compiles packs as one would lay them on, but for the signature. */
    public Laid laid(List<Path> paths) {
        return Laying.laid(standard, paths, home, loader, false);
    }

    /** Checks packs whole. */
    public List<String> check(List<Path> paths) {
        Laid laid = laid(paths);
        List<String> lines = new ArrayList<>();
        for (Upgrade upgrade : laid.upgrades()) {
            Pack pack = upgrade.pack();
            lines.add(pack.files().name() + ": can be laid on; " + pack.laidOn().told());
            Upgraded.told(upgrade, false).forEach(line -> lines.add("  " + line));
            if (pack.files().hasRules()) {
                try {
                    lines.add("  Signed with the trusted key " + new Keys(home.get()).verify(pack.files()) + ".");
                } catch (Mistakes e) {
                    e.all().forEach(mistake -> lines.add("  Not to be laid on yet: " + mistake.what() + "."));
                }
                Untested untested = untested(laid, pack);
                untested.lines().forEach(line -> lines.add("  " + line));
            }
        }
        return lines;
    }

    /** What changed in the rulebook since the version that each pack was made for, all of it. */
    public List<String> changes(List<Path> paths) {
        Laid laid = laid(paths);
        List<String> lines = new ArrayList<>();
        for (Upgrade upgrade : laid.upgrades()) {
            Pack pack = upgrade.pack();
            lines.add(pack.files().name() + ": " + pack.laidOn().told());
            Upgraded.told(upgrade, true).forEach(line -> lines.add("  " + line));
        }
        return lines;
    }

    // ---- trying

    /** What trying scenarios came to. */
    public record Tried(List<String> lines, int failed) {}

    private record Untested(List<String> lines) {}

    private Untested untested(Laid laid, Pack pack) {
        Tried tried = tried(laid, pack, "");
        return new Untested(
                tried.failed() == 0
                        ? List.of("All its scenarios come out as expected.")
                        : List.of(tried.failed() + " of its scenarios do not come out as expected: gaugeglass pack try "
                                + pack.files().name()));
    }

    /**
     * Runs the scenarios of packs' own checks.
     *
     * @param text only scenarios whose title has it; empty for all
     */
    public Tried tried(List<Path> paths, String text) {
        Laid laid = laid(paths);
        List<String> lines = new ArrayList<>();
        int failed = 0;
        for (Pack pack : laid.tailoring().packs()) {
            if (!pack.files().hasRules()) {
                lines.add(pack.files().name() + ": it has no rules of its own, so there is nothing to try");
                continue;
            }
            Tried tried = tried(laid, pack, text);
            lines.addAll(tried.lines());
            failed += tried.failed();
        }
        return new Tried(lines, failed);
    }

    private Tried tried(Laid laid, Pack pack, String text) {
        StoredBook whole = laid.tailoring().stored();
        Map<String, Card> cards = new LinkedHashMap<>();
        whole.book().cards().forEach((id, card) -> {
            if ((!standard.book().cards().containsKey(id)
                            || whole.book().replaced().containsKey(id))
                    && card.file().startsWith(pack.files().name() + "/")) {
                cards.put(id, card);
            }
        });
        // Only the pack's own rules: the others say nothing of its cards, and would take most of the time.
        Book own = new Book(
                pack.title(),
                pack.version(),
                pack.files().hash(),
                cards,
                whole.book().limits(),
                whole.book().cautions(),
                whole.book().remedies(),
                List.of(),
                whole.book().rules().stream()
                        .filter(rule -> cards.containsKey(rule.card()))
                        .toList(),
                whole.book().models().stream()
                        .filter(model -> model.startsWith(CompiledPack.packageOf(pack.name()) + "."))
                        .toList());
        Map<String, String> texts = new TreeMap<>();
        for (String file : pack.files().names()) {
            if (file.endsWith(".cards.yaml")) {
                texts.put(pack.files().place(file), pack.files().text(file));
            }
        }
        List<Scenario> scenarios = ScenarioReader.read(
                texts, whole.vocabulary(), cards, whole.book().limits().keySet());
        Trade trade = new SteamTrade();
        ScenarioRunner runner =
                new ScenarioRunner(new StoredBook(whole.trade(), whole.vocabulary(), own), trade, laid.loader());
        List<Ran> ran = new ArrayList<>();
        List<String> lines = new ArrayList<>();
        int failed = 0;
        for (Scenario scenario : scenarios) {
            Ran one = runner.run(scenario);
            ran.add(one);
            if (!scenario.title().contains(text)) {
                continue;
            }
            if (!one.faults().isEmpty()) {
                failed++;
                for (String fault : one.faults()) {
                    lines.add(scenario.file() + ":" + scenario.line() + ": " + scenario.title() + ": " + fault);
                }
            }
        }
        ScenariosWanting wanting = new ScenariosWanting(runner, trade);
        int lacking = 0;
        for (Card card : cards.values()) {
            for (String one : wanting.of(card, ran)) {
                lacking++;
                lines.add(card.file() + ":" + card.line() + ": " + card.id() + " has no scenario yet for: " + one);
            }
        }
        lines.add(pack.files().name() + ": " + scenarios.size() + " scenarios of " + cards.size()
                + (cards.size() == 1 ? " check, " : " checks, ")
                + (failed == 0 ? "all as expected" : failed + " not as expected")
                + (lacking == 0 ? "; none is wanting" : "; " + lacking + " wanting"));
        return new Tried(lines, failed);
    }

    // ---- what differs

    /** What packs change against the rulebook, as a page for people who talk about it. */
    public List<String> differs(List<Path> paths) {
        Laid laid = laid(paths);
        Book before = standard.book();
        Book after = laid.tailoring().stored().book();
        List<String> lines = new ArrayList<>();
        lines.add("What "
                + String.join(
                        ", then ",
                        laid.tailoring().laidOn().stream().map(p -> p.told()).toList()) + " changes in " + before.name()
                + " " + before.version());
        section(lines, "Limits", limits(before, after));
        List<String> cards = new ArrayList<>();
        List<String> own = new ArrayList<>();
        List<String> instead = new ArrayList<>();
        after.cards().forEach((id, card) -> {
            Card old = before.cards().get(id);
            if (old == null) {
                own.add(id + ": " + card.title() + " [" + urgencies(card) + "]");
                return;
            }
            if (after.replaced().containsKey(id)) {
                instead.add(id + ": " + old.title() + " [" + urgencies(old) + "] BECOMES " + card.title() + " ["
                        + urgencies(card) + "], " + after.replacement(id).orElseThrow() + " - "
                        + why(laid.tailoring().packs(), id));
                return;
            }
            said(cards, id, "title", old.title(), card.title());
            said(cards, id, "why", old.why(), card.why());
            said(cards, id, "do", old.action(), card.action());
            said(cards, id, "not when", old.notWhen(), card.notWhen());
            said(cards, id, "cautions", String.join(", ", old.cautions()), String.join(", ", card.cautions()));
            said(cards, id, "urgency", urgencies(old), urgencies(card));
        });
        section(lines, "Words and urgencies", cards);
        section(lines, "Checks of its own", own);
        section(lines, "Checks of the rulebook that its own stand in the place of", instead);
        section(
                lines,
                "Asked besides",
                laid.tailoring().added().stream()
                        .map(i -> i.id() + ": " + i.ask())
                        .toList());
        List<String> dropped = new ArrayList<>();
        List<String> waived = new ArrayList<>();
        List<String> settled = new ArrayList<>();
        for (Pack pack : laid.tailoring().packs()) {
            pack.dropped().forEach(d -> dropped.add(d.item() + ": " + ask(d.item()) + " - " + d.why()));
            pack.waivers()
                    .forEach(w ->
                            waived.add(w.waiver().check() + " at " + w.waiver().site()
                                    + (w.waiver().unit().isEmpty()
                                            ? ""
                                            : ", " + w.waiver().unit()) + ", by "
                                    + w.waiver().by()
                                    + ", from " + w.waiver().from() + " until "
                                    + w.waiver().until() + ": " + w.waiver().why()));
            pack.settled()
                    .forEach(s -> settled.add(s.item() + ": " + s.answer() + " - "
                            + s.sources().get(0).name()));
        }
        section(lines, "Settled by law", settled);
        section(lines, "Not asked", dropped);
        section(lines, "Waived", waived);
        return lines;
    }

    private static String why(List<Pack> packs, String check) {
        return packs.stream()
                .flatMap(pack -> pack.replaced().stream())
                .filter(one -> one.check().equals(check))
                .map(Pack.Replaced::why)
                .findFirst()
                .orElse("");
    }

    private String ask(String item) {
        return standard.vocabulary().item(item).map(ItemType::ask).orElse("");
    }

    private static void section(List<String> lines, String heading, List<String> of) {
        if (!of.isEmpty()) {
            lines.add("");
            lines.add(heading);
            of.forEach(line -> lines.add("  - " + line));
        }
    }

    private static List<String> limits(Book before, Book after) {
        List<String> lines = new ArrayList<>();
        after.limits().forEach((id, limit) -> {
            Limit old = before.limits().get(id);
            if (old == null) {
                lines.add(id + ": " + limit.written() + ", new: " + limit.meaning());
            } else if (!old.written().equals(limit.written()) || !old.layer().equals(limit.layer())) {
                lines.add(id + ": " + old.written() + " becomes " + limit.written() + " (" + limit.layer() + "): "
                        + limit.meaning());
            }
        });
        return lines;
    }

    private static void said(List<String> lines, String id, String what, String before, String after) {
        if (!before.equals(after)) {
            lines.add(id + ", " + what + ": " + before + " BECOMES " + after);
        }
    }

    private static String urgencies(Card card) {
        Set<String> words = new LinkedHashSet<>();
        card.bands()
                .values()
                .forEach(b -> words.add(b.name() + " " + b.urgency().word()));
        return String.join(", ", words);
    }

    /** A rulebook with packs laid on, without asking for signatures. */
    public Rulebook rulebook(List<Path> paths) {
        if (paths.isEmpty()) {
            return Rulebook.of(standard, loader);
        }
        Laid laid = laid(paths);
        return Rulebook.of(laid.tailoring(), laid.loader());
    }

    // ---- signing and passing on

    /** Signs a pack in its folder. */
    public List<String> sign(Path folder, String key) throws IOException {
        if (!Files.isDirectory(folder)) {
            throw wrong(folder.toString(), "a pack is signed in its folder, before it is packed", "a folder");
        }
        Laid laid = laid(List.of(folder));
        Pack pack = laid.tailoring().packs().get(0);
        if (pack.files().hasRules()) {
            Tried tried = tried(laid, pack, "");
            if (tried.failed() > 0) {
                throw wrong(
                        folder.toString(),
                        tried.failed() + " of its scenarios do not come out as expected",
                        "gaugeglass pack try " + folder);
            }
        }
        Path file = folder.resolve(PackFiles.SIGNATURE);
        move(new Keys(home.get()).sign(pack.files(), key).getBytes(java.nio.charset.StandardCharsets.UTF_8), file);
        return List.of(folder + ": signed with the key " + key + "; any change from now on makes the signature void");
    }

    /** Checks a pack's signature. */
    public List<String> verify(Path path) {
        PackFiles files = PackFiles.read(path);
        return List.of(path + ": signed with the trusted key " + new Keys(home.get()).verify(files)
                + ", and unchanged since; digest " + files.hash());
    }

    /** Puts a pack as a zip into a folder from which others take it. */
    public List<String> publish(Path path, Path shared) throws IOException {
        Pack pack = laid(List.of(path)).tailoring().packs().get(0);
        if (pack.files().hasRules()) {
            new Keys(home.get()).verify(pack.files());
        }
        if (!Files.isDirectory(shared)) {
            throw wrong(shared.toString(), "there is no such folder", "the shared folder");
        }
        Path file = shared.resolve(pack.name() + "-" + pack.version() + ".zip");
        if (Files.exists(file)) {
            if (PackFiles.read(file).hash().equals(pack.files().hash())) {
                return List.of(file + ": it is there already");
            }
            throw wrong(file.toString(), "another pack of this name and version was published", "a higher version");
        }
        move(zip(pack.files()), file);
        return List.of(file + ": published");
    }

    private static byte[] zip(PackFiles files) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream out = new ZipOutputStream(bytes)) {
            for (String name : files.names()) {
                ZipEntry entry = new ZipEntry(name);
                entry.setTime(0);
                out.putNextEntry(entry);
                out.write(files.bytes(name));
            }
        }
        return bytes.toByteArray();
    }

    private static void move(byte[] bytes, Path file) throws IOException {
        Path next = file.resolveSibling("." + file.getFileName() + ".next");
        Files.write(next, bytes);
        try {
            Files.move(next, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(next, file, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /**
     * Takes the newest version of a pack from a shared folder. One that is refused leaves the copy taken before as it is.
     *
     * @throws Mistakes with why it is refused; the last mistake says what stays in use
     */
    public List<String> take(Path shared, String name) throws IOException {
        List<Path> found = new ArrayList<>();
        if (Files.isDirectory(shared)) {
            try (Stream<Path> all = Files.list(shared)) {
                all.filter(file -> version(file, name).isPresent()).forEach(found::add);
            }
        }
        if (found.isEmpty()) {
            throw wrong(
                    shared.toString(),
                    "there is no pack called " + name + " in this folder",
                    name + "-1.0.0.zip or later");
        }
        Path newest = found.stream()
                .max(Comparator.comparing(file -> version(file, name).orElseThrow(), Arrays::compare))
                .orElseThrow();
        Path kept = home.get().resolve("taken").resolve(name + ".zip");
        try {
            Laid laid = Laying.laid(standard, List.of(newest), home, loader, true);
            Pack pack = laid.tailoring().packs().get(0);
            if (!pack.name().equals(name)
                    || !newest.getFileName().toString().equals(name + "-" + pack.version() + ".zip")) {
                throw wrong(newest.toString(), "it holds " + pack.name() + " " + pack.version(), "what its name says");
            }
            Files.createDirectories(kept.getParent());
            move(zip(pack.files()), kept);
            List<String> lines = new ArrayList<>();
            lines.add(pack.laidOn().told() + ": taken; use it with --pack " + name);
            Upgraded.told(laid.upgrades().get(0), false).forEach(line -> lines.add("  " + line));
            return lines;
        } catch (Mistakes e) {
            List<Mistake> all = new ArrayList<>(e.all());
            all.add(new Mistake(
                    name,
                    0,
                    0,
                    "",
                    Files.exists(kept)
                            ? "not taken; the copy taken before stays in use"
                            : "not taken, and there is no copy taken before",
                    "",
                    ""));
            throw new Mistakes(all);
        }
    }

    private static Optional<int[]> version(Path file, String name) {
        String own = String.valueOf(file.getFileName());
        if (!own.startsWith(name + "-") || !own.endsWith(".zip")) {
            return Optional.empty();
        }
        String text = own.substring(name.length() + 1, own.length() - ".zip".length());
        return text.matches("\\d{1,4}\\.\\d{1,4}\\.\\d{1,4}")
                ? Optional.of(Arrays.stream(text.split("\\."))
                        .mapToInt(Integer::parseInt)
                        .toArray())
                : Optional.empty();
    }
}
