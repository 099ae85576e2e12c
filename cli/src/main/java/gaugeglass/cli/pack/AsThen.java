package gaugeglass.cli.pack;

import gaugeglass.engine.book.Book;
import gaugeglass.engine.history.History;
import gaugeglass.engine.observation.JudgedBy;
import gaugeglass.engine.pack.Pack;
import gaugeglass.engine.pack.PackFiles;
import gaugeglass.engine.pack.PackReader;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What an inspection records that it was judged by, held against what is at hand. */
public final class AsThen {
    private final String file;
    private final Book book;
    private final String unitKey;
    private final History history;
    private final List<Mistake> differences = new ArrayList<>();

    private AsThen(String file, Book book, String unitKey, History history) {
        this.file = file;
        this.book = book;
        this.unitKey = unitKey;
        this.history = history;
    }

    /**
     * The packs that judged an inspection, lowest first, from a folder in which packs are published.
     *
     * @param file what the inspection is called in messages
     * @param recorded what its file records
     * @param book the rulebook that is there
     * @param unitKey what the unit that is judged is called
     * @throws Mistakes with everything that differs, and what would be needed
     */
    public static List<Path> packs(
            String file, JudgedBy recorded, Path folder, Book book, String unitKey, History history) {
        AsThen then = new AsThen(file, book, unitKey, history);
        List<Path> packs = then.found(recorded, folder);
        if (!then.differences.isEmpty()) {
            throw new Mistakes(then.differences);
        }
        return packs;
    }

    private void differs(String what, String needed) {
        differences.add(new Mistake(file, 0, 0, JudgedBy.KEY, what, needed, ""));
    }

    private static String begins(String hash) {
        return "digest " + hash.substring(0, Math.min(12, hash.length()));
    }

    private List<Path> found(JudgedBy recorded, Path folder) {
        if (!recorded.isRecorded()) {
            differs(
                    "the file does not record what judged it, so nobody can tell what it was judged by",
                    "the record that a walk writes; without it, judge by what is there today: assess without --as-then");
            return List.of();
        }
        rulebook(recorded);
        if (recorded.packs().isEmpty()) {
            return List.of();
        }
        List<Published> published = published(folder);
        List<Path> paths = new ArrayList<>();
        for (JudgedBy.Pack pack : recorded.packs()) {
            List<Published> same = published.stream()
                    .filter(one -> one.hash().equals(pack.hash()))
                    .toList();
            if (same.isEmpty()) {
                missing(pack, folder, published);
            } else {
                paths.add(same.get(0).path());
            }
        }
        return paths;
    }

    private void rulebook(JudgedBy recorded) {
        if (!recorded.rulebook().equals(book.name())) {
            differs(
                    "it was judged by the rulebook \"" + recorded.rulebook() + "\", and this program has \""
                            + book.name() + "\"",
                    "a program with that rulebook");
        } else if (!recorded.version().equals(book.version())) {
            int changes = history.release(recorded.version())
                    .map(release -> release.changesTo(history.here()).size())
                    .orElse(0);
            differs(
                    "it was judged by version " + recorded.version() + " of " + book.name() + ", and this is "
                            + book.version()
                            + (changes == 0 ? "" : ", in which " + changes + " things say something else"),
                    "the program of version " + recorded.version());
        } else if (!recorded.hash().equals(book.hash())) {
            differs(
                    "it was judged by version " + recorded.version() + " of " + book.name() + " with "
                            + begins(recorded.hash()) + ", and this one has " + begins(book.hash())
                            + ": the rules were changed without a new version, as happens between releases",
                    "the program that judged it");
        }
    }

    private void missing(JudgedBy.Pack pack, Path folder, List<Published> published) {
        List<String> others = new ArrayList<>();
        for (Published one : published) {
            if (one.pack().name().equals(pack.name())) {
                others.add(
                        one.pack().version().equals(pack.version())
                                ? "one of this version with " + begins(one.hash()) + ", which is another"
                                : "version " + one.pack().version());
            }
        }
        differs(
                "the pack " + pack.name() + " " + pack.version() + " with " + begins(pack.hash()) + " is not in "
                        + folder
                        + (others.isEmpty() ? "" : "; of this name there is " + String.join(", and ", others)),
                pack.name() + "-" + pack.version() + ".zip as it was published then");
    }

    private record Published(Path path, Pack pack, String hash) {}

    /** Every pack in a folder that can be read; the others are none of ours. */
    private List<Published> published(Path folder) {
        List<Published> all = new ArrayList<>();
        if (!Files.isDirectory(folder)) {
            differs("there is no folder " + folder, "the folder in which packs are published");
            return all;
        }
        try (Stream<Path> listed = Files.list(folder)) {
            for (Path path : (Iterable<Path>) listed.sorted()::iterator) {
                try {
                    PackFiles files = PackFiles.read(path);
                    all.add(new Published(path, PackReader.read(files, unitKey), files.hash()));
                } catch (Mistakes e) {
                    // No pack, or a spoiled one: it has not the digest that is looked for.
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException("the folder of published packs cannot be read", e);
        }
        return all;
    }
}
