package gaugeglass.cli.visit;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * The inspections that the words of a command line name: files, folders with everything in them, {@code -} for
 * standard input. In the order of the words; a folder's files by path.
 */
public final class Sources implements Iterator<Task>, AutoCloseable {
    /** What messages call standard input. */
    public static final String STANDARD_INPUT = "standard input";

    private static final List<String> ENDINGS = List.of(".yaml", ".yml", ".json");
    private static final String LINES = ".jsonl";

    /** The file that tells by which packs the inspections beside it are judged. */
    private static final String PACKS = "packs.yaml";

    private final Iterator<String> words;
    private final boolean asLines;
    private final InputStream in;
    private Iterator<Task> current = Collections.emptyIterator();
    private Optional<InputStream> open = Optional.empty();
    private boolean isInputUsed;
    private long taken;
    private long found;
    private boolean isAllFound;

    /**
     * Names the inspections.
     *
     * @param words files, folders, {@code -}
     * @param asLines whether every file and standard input hold an inspection on each line
     * @param in standard input
     */
    public Sources(List<String> words, boolean asLines, InputStream in) {
        this.words = words.iterator();
        this.asLines = asLines;
        this.in = in;
    }

    /** Whether these words name one single inspection, whatever is found there. */
    public static boolean isOne(List<String> words, boolean asLines) {
        if (words.size() != 1 || asLines) {
            return false;
        }
        String word = words.get(0);
        return word.equals("-") || !word.toLowerCase(Locale.ROOT).endsWith(LINES) && !isFolder(word);
    }

    private static boolean isFolder(String word) {
        try {
            return Files.isDirectory(Path.of(word));
        } catch (InvalidPathException e) {
            return false;
        }
    }

    /** How many bytes there are in all; empty while that is not known, and for ever with standard input. */
    public OptionalLong size() {
        return isAllFound ? OptionalLong.of(found) : OptionalLong.empty();
    }

    /** How many bytes were taken of them. */
    public long taken() {
        return taken;
    }

    @Override
    public boolean hasNext() {
        while (!current.hasNext()) {
            close();
            if (!words.hasNext()) {
                return false;
            }
            current = tasks(words.next());
            isAllFound = !words.hasNext() && !isInputUsed;
        }
        return true;
    }

    @Override
    public Task next() {
        if (!hasNext()) {
            throw new NoSuchElementException();
        }
        return current.next();
    }

    private Iterator<Task> tasks(String word) {
        if (word.equals("-")) {
            if (isInputUsed) {
                return one(Task.unusable(STANDARD_INPUT, 0, "it was read already", "\"-\" once"));
            }
            isInputUsed = true;
            return asLines ? new Lines(STANDARD_INPUT, counted(in)) : one(Task.of(STANDARD_INPUT, counted(in)));
        }
        Path path;
        try {
            path = Path.of(word);
        } catch (InvalidPathException e) {
            return one(Task.unusable(word, 0, "this cannot be the name of a file", ""));
        }
        if (Files.isDirectory(path)) {
            return new Folder(path);
        }
        long size = size(path);
        found += size;
        return file(path, size);
    }

    private static long size(Path path) {
        try {
            return Files.size(path);
        } catch (IOException e) {
            // Reading it tells why.
            return 0;
        }
    }

    private InputStream counted(InputStream stream) {
        return new FilterInputStream(stream) {
            @Override
            public int read() throws IOException {
                int one = super.read();
                taken += one < 0 ? 0 : 1;
                return one;
            }

            @Override
            public int read(byte[] bytes, int from, int length) throws IOException {
                int count = super.read(bytes, from, length);
                taken += Math.max(0, count);
                return count;
            }
        };
    }

    private Iterator<Task> file(Path path, long size) {
        if (!asLines && !ending(path).endsWith(LINES)) {
            taken += size;
            return one(Task.of(path));
        }
        try {
            InputStream stream = Files.newInputStream(path);
            open = Optional.of(stream);
            return new Lines(path.toString(), counted(stream));
        } catch (IOException e) {
            // Reading it whole fails for the same reason, and has the words for it.
            return one(Task.of(path));
        }
    }

    private static Iterator<Task> one(Task task) {
        return List.of(task).iterator();
    }

    private static String ending(Path path) {
        return String.valueOf(path.getFileName()).toLowerCase(Locale.ROOT);
    }

    @Override
    public void close() {
        if (open.isPresent()) {
            try {
                open.get().close();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            } finally {
                open = Optional.empty();
            }
        }
    }

    private record Found(Path path, long size) {}

    /** Everything in a folder and below; a file of lines among them is read line by line. */
    private final class Folder implements Iterator<Task> {
        private final List<Task> wrong = new ArrayList<>();
        private final Iterator<Found> files;
        private Iterator<Task> file = Collections.emptyIterator();

        Folder(Path folder) {
            List<Found> all = new ArrayList<>();
            try {
                Files.walkFileTree(folder, new SimpleFileVisitor<>() {
                    @Override
                    public FileVisitResult preVisitDirectory(Path at, BasicFileAttributes attributes) {
                        return !at.equals(folder) && (isHidden(at) || isPack(at))
                                ? FileVisitResult.SKIP_SUBTREE
                                : FileVisitResult.CONTINUE;
                    }

                    @Override
                    public FileVisitResult visitFile(Path at, BasicFileAttributes attributes) {
                        if (ending(at).equals(PACKS)) {
                            if (!folder.equals(at.getParent())) {
                                wrong.add(Task.unusable(
                                        at.toString(),
                                        0,
                                        "the inspections beside this are judged by packs of their own",
                                        "their folder named by itself"));
                            }
                        } else if (!isHidden(at) && isInspection(at)) {
                            all.add(new Found(at, attributes.size()));
                        }
                        return FileVisitResult.CONTINUE;
                    }

                    @Override
                    public FileVisitResult visitFileFailed(Path at, IOException why) {
                        wrong.add(Task.unusable(
                                at.toString(),
                                0,
                                why instanceof AccessDeniedException
                                        ? "this folder may not be read"
                                        : "this cannot be read",
                                ""));
                        return FileVisitResult.CONTINUE;
                    }
                });
            } catch (IOException e) {
                wrong.add(Task.unusable(folder.toString(), 0, "this folder cannot be read to its end", ""));
            }
            all.sort(Comparator.comparing(Found::path));
            for (Found one : all) {
                found += one.size();
            }
            if (all.isEmpty() && wrong.isEmpty()) {
                wrong.add(Task.unusable(
                        folder.toString(),
                        0,
                        "there is no inspection in this folder",
                        "files ending in .yaml, .yml, .json or .jsonl"));
            }
            files = all.iterator();
        }

        private boolean isHidden(Path at) {
            return ending(at).startsWith(".");
        }

        /** A pack's files are no inspections. */
        private boolean isPack(Path at) {
            return Files.exists(at.resolve("pack.yaml"));
        }

        private boolean isInspection(Path at) {
            String name = ending(at);
            return name.endsWith(LINES) || ENDINGS.stream().anyMatch(name::endsWith);
        }

        @Override
        public boolean hasNext() {
            while (!file.hasNext() && files.hasNext()) {
                close();
                Found next = files.next();
                file = file(next.path(), next.size());
            }
            return file.hasNext() || !wrong.isEmpty();
        }

        @Override
        public Task next() {
            if (!hasNext()) {
                throw new NoSuchElementException();
            }
            return file.hasNext() ? file.next() : wrong.remove(0);
        }
    }
}
