package gaugeglass.cli.pack;

import gaugeglass.engine.book.StoredBook;
import gaugeglass.engine.history.History;
import gaugeglass.engine.history.Release;
import gaugeglass.engine.pack.CompiledPack;
import gaugeglass.engine.pack.Pack;
import gaugeglass.engine.pack.PackFiles;
import gaugeglass.engine.pack.PackReader;
import gaugeglass.engine.pack.Tailoring;
import gaugeglass.engine.pack.Upgrade;
import gaugeglass.engine.reading.Form;
import gaugeglass.engine.reading.NodeReader;
import gaugeglass.engine.reading.SourceText;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import gaugeglass.steam.SteamTrade;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** Finds the packs that a command line or a file beside the inspections names, and lays them over the rulebook. */
public final class Laying {
    /** The word for laying on nothing, whatever lies beside the inspections. */
    public static final String NONE = "none";

    private Laying() {}

    /**
     * Packs laid over a rulebook.
     *
     * @param loader where all classes are, those of the packs too
     * @param upgrades for each pack, lowest first, what changed since the version that it was made for
     */
    public record Laid(Tailoring tailoring, ClassLoader loader, List<Upgrade> upgrades) {
        public Laid {
            upgrades = List.copyOf(upgrades);
        }

        /** For each pack that was made for another version of the rulebook, one line that says so. */
        public List<String> ages() {
            return upgrades.stream()
                    .flatMap(upgrade -> Upgraded.line(upgrade).stream())
                    .toList();
        }
    }

    /**
     * Lays packs on.
     *
     * @param named those named on the command line
     * @param inspections the words that name the inspections, for the file beside them
     * @param besideName what that file is called
     * @param home where the user's own things are
     * @param loader where the rulebook's classes are
     * @return nothing where no pack is to be laid on
     * @throws Mistakes when one cannot be used, or when it is not clear which are meant
     */
    public static Optional<Laid> over(
            StoredBook standard,
            List<String> named,
            List<String> inspections,
            String besideName,
            Supplier<Path> home,
            ClassLoader loader) {
        List<Path> paths = named.isEmpty() ? beside(inspections, besideName) : paths(named, home);
        if (paths.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(laid(standard, paths, home, loader, true));
    }

    /**
     * Lays packs on.
     *
     * @param isSigned whether a pack with rules must be signed by a trusted key; not where its maker is at work on it
     */
    static Laid laid(StoredBook standard, List<Path> paths, Supplier<Path> home, ClassLoader loader, boolean isSigned) {
        History history = History.of(loader);
        try {
            return laid(standard, paths, home, loader, isSigned, history);
        } catch (Mistakes e) {
            Release here = history.here();
            throw new Mistakes(
                    e.all().stream().map(one -> Upgrade.explained(one, here)).toList());
        }
    }

    private static Laid laid(
            StoredBook standard,
            List<Path> paths,
            Supplier<Path> home,
            ClassLoader loader,
            boolean isSigned,
            History history) {
        List<Pack> packs = new ArrayList<>();
        List<Mistake> mistakes = new ArrayList<>();
        Map<String, StoredBook> compiled = new HashMap<>();
        ClassLoader last = loader;
        for (Path path : paths) {
            try {
                PackFiles files = PackFiles.read(path);
                boolean hasRules = files.hasRules();
                if (hasRules && isSigned) {
                    new Keys(home.get()).verify(files);
                }
                Optional<Pack> pack = Optional.empty();
                try {
                    pack = Optional.of(
                            PackReader.read(files, standard.vocabulary().unit().id()));
                } catch (Mistakes e) {
                    mistakes.addAll(e.all());
                }
                if (pack.isPresent()) {
                    packs.add(pack.get());
                    if (hasRules) {
                        CompiledPack own = new Workshop(home.get()).compiled(pack.get(), packed(loader));
                        last = own.loader(last);
                        compiled.put(pack.get().name(), StoredBook.read(files.name(), own.stored(), last));
                    }
                }
            } catch (Mistakes e) {
                mistakes.addAll(e.all());
            }
        }
        if (!mistakes.isEmpty()) {
            throw new Mistakes(mistakes);
        }
        Tailoring tailoring = Tailoring.of(standard, packs, new SteamTrade(), compiled);
        List<Upgrade> upgrades = tailoring.packs().stream()
                .map(pack -> Upgrade.of(
                        pack,
                        Optional.ofNullable(compiled.get(pack.name())),
                        standard.book().version(),
                        history))
                .toList();
        return new Laid(tailoring, last, upgrades);
    }

    /** The rulebook as its build left it; writing it anew could order parts of it otherwise. */
    private static String packed(ClassLoader loader) {
        try (InputStream in = loader.getResourceAsStream(StoredBook.PATH)) {
            if (in == null) {
                throw new IllegalStateException("there is no " + StoredBook.PATH + " on the class path");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The places of the packs that words name: files, folders, or names of packs that were taken. */
    static List<Path> places(List<String> words, Supplier<Path> home) {
        return paths(words, home);
    }

    private static List<Path> paths(List<String> named, Supplier<Path> home) {
        if (named.contains(NONE)) {
            if (named.size() > 1) {
                throw wrong("--pack", 0, "\"none\" stands beside other packs", "\"none\" alone");
            }
            return List.of();
        }
        List<Path> paths = new ArrayList<>();
        for (String word : named) {
            try {
                Path path = Path.of(word);
                boolean isName = !Files.exists(path) && word.matches("[a-z][a-z0-9-]*");
                Path taken = isName ? home.get().resolve("taken").resolve(word + ".zip") : path;
                paths.add(Files.exists(taken) ? taken : path);
            } catch (InvalidPathException e) {
                throw wrong(word, 0, "this cannot be the name of a pack", "a folder or a zip");
            }
        }
        return paths;
    }

    /** The packs that the file beside the inspections names; all of them must lie beside the same. */
    private static List<Path> beside(List<String> inspections, String besideName) {
        Optional<Path> found = Optional.empty();
        for (int i = 0; i < inspections.size(); i++) {
            Path path = Path.of(inspections.get(i));
            Path folder = Files.isDirectory(path)
                    ? path
                    : Optional.ofNullable(path.getParent()).orElse(Path.of(""));
            Path file = folder.resolve(besideName);
            Optional<Path> own =
                    Files.exists(file) ? Optional.of(file.toAbsolutePath().normalize()) : Optional.empty();
            if (i > 0 && !own.equals(found)) {
                throw wrong(
                        inspections.get(i),
                        0,
                        "other packs lie beside this than beside " + inspections.get(0),
                        "inspections that are judged alike, or --pack");
            }
            found = own;
        }
        return found.map(Laying::listed).orElse(List.of());
    }

    private static List<Path> listed(Path file) {
        List<Mistake> mistakes = new ArrayList<>();
        String name = String.valueOf(file.getFileName());
        Form form = Form.of(name, "", NodeReader.read(name, SourceText.read(file), mistakes), mistakes);
        List<Path> paths = new ArrayList<>();
        if (!form.has("packs")) {
            form.text("packs");
        }
        for (String word : form.texts("packs")) {
            try {
                paths.add(file.resolveSibling(word).normalize());
            } catch (InvalidPathException e) {
                form.wrong("packs", "\"" + word + "\" cannot be the name of a pack", "a folder or a zip", "");
            }
        }
        form.close();
        if (!mistakes.isEmpty()) {
            throw new Mistakes(mistakes);
        }
        return paths;
    }

    private static Mistakes wrong(String where, int line, String what, String expected) {
        return new Mistakes(List.of(new Mistake(where, line, 0, "", what, expected, "")));
    }
}
