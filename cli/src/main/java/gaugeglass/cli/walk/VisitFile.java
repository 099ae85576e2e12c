package gaugeglass.cli.walk;

import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.InspectionReader;
import gaugeglass.engine.observation.InspectionWriter;
import gaugeglass.engine.reading.SourceText;
import gaugeglass.engine.text.Mistakes;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The inspection file that a walk writes. Each save puts a whole new file in the place of the old one in a single step,
 * and keeps the state before it, so that a walk killed at any moment leaves a file that can be read.
 */
public final class VisitFile implements Closeable {
    private final Path path;
    private final InspectionReader reader;
    private final InspectionWriter writer;
    private final FileChannel lockChannel;
    private final FileLock lock;

    private VisitFile(Path path, Vocabulary vocabulary, FileChannel lockChannel, FileLock lock) {
        this.path = path;
        this.reader = new InspectionReader(vocabulary);
        this.writer = new InspectionWriter(vocabulary);
        this.lockChannel = lockChannel;
        this.lock = lock;
    }

    /** Thrown when another walk holds the file. */
    public static final class InUse extends IOException {
        private static final long serialVersionUID = 1L;

        InUse(Path path) {
            super(path + " is being walked already; end the other walk first");
        }
    }

    /**
     * Takes a file for one walk. It need not exist yet.
     *
     * @throws InUse when another walk, in this process or another, holds it
     * @throws IOException when its folder cannot be written to
     */
    public static VisitFile open(Path path, Vocabulary vocabulary) throws IOException {
        Path real = path.toAbsolutePath();
        Path lockPath = real.resolveSibling("." + real.getFileName() + ".lock");
        FileChannel channel = FileChannel.open(lockPath, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        try {
            // The system lets go of the lock when the process dies, however it dies.
            FileLock lock = channel.tryLock();
            if (lock == null) {
                channel.close();
                throw new InUse(path);
            }
            return new VisitFile(real, vocabulary, channel, lock);
        } catch (OverlappingFileLockException e) {
            channel.close();
            throw new InUse(path);
        }
    }

    public boolean exists() {
        return Files.exists(path);
    }

    /**
     * Reads the file, also where it was cut off and can be read all the same.
     *
     * @param today the day of the visit where the file names none
     * @throws gaugeglass.engine.text.Mistakes when it cannot be used
     */
    public Inspection read(LocalDate today) {
        String text = SourceText.read(path);
        String left = InspectionWriter.isCutOff(text) ? text.substring(InspectionWriter.FIRST_LINE.length()) : text;
        return reader.read(path.getFileName().toString(), left, today);
    }

    /** The file that holds the state before the last save. */
    public Path before() {
        return path.resolveSibling(path.getFileName() + ".before");
    }

    Path path() {
        return path;
    }

    /**
     * Whether the file was written by a walk and has lost its end, as its first line or the state before tells. A file
     * without either was written by hand, and is taken as it is.
     */
    public boolean isCutOff() {
        return exists() && !hasLastLine(path) && (hasFirstLine() || hasBefore());
    }

    /** Whether there is a whole state before the last save. */
    boolean hasBefore() {
        return Files.exists(before()) && hasLastLine(before());
    }

    private boolean hasFirstLine() {
        try {
            return Files.readString(path).startsWith(InspectionWriter.FIRST_LINE);
        } catch (IOException e) {
            return false;
        }
    }

    private static boolean hasLastLine(Path file) {
        try {
            return Files.readString(file).stripTrailing().endsWith(InspectionWriter.LAST_LINE);
        } catch (IOException e) {
            // Also where it is no text any more: whatever it is, its end is not there.
            return false;
        }
    }

    /**
     * Reads the state before the last save.
     *
     * @throws gaugeglass.engine.text.Mistakes when it cannot be used
     */
    Inspection readBefore(LocalDate today) {
        return reader.read(before().getFileName().toString(), SourceText.read(before()), today);
    }

    /**
     * Puts the state before the last save in the place of a file that was cut off; what was cut off is kept.
     *
     * @return where it is kept
     */
    Path restore() throws IOException {
        Path kept = path.resolveSibling(path.getFileName() + ".cut-off");
        for (int i = 2; Files.exists(kept); i++) {
            kept = path.resolveSibling(path.getFileName() + ".cut-off-" + i);
        }
        Files.copy(path, kept);
        Path next = path.resolveSibling("." + path.getFileName() + ".next");
        write(next, Files.readAllBytes(before()));
        replace(next, path);
        return kept;
    }

    /**
     * Keeps the file as somebody wrote it, if it has comments: a walk writes the whole anew, without them.
     *
     * @return where it is kept; empty where there is nothing to keep
     */
    Optional<Path> keepComments() throws IOException {
        String text = Files.readString(path);
        for (String line : text.lines().toList()) {
            boolean isOwn = line.equals(InspectionWriter.FIRST_LINE) || line.equals(InspectionWriter.LAST_LINE);
            if (!isOwn && (line.strip().startsWith("#") || line.contains(" # "))) {
                return Optional.of(keepBeside("with-comments", text));
            }
        }
        return Optional.empty();
    }

    /** Keeps a text beside the file, and tells where. */
    Path keepBeside(String ending, String text) throws IOException {
        Path kept = path.resolveSibling(path.getFileName() + "." + ending);
        Path next = path.resolveSibling("." + path.getFileName() + ".next");
        write(next, text.getBytes(StandardCharsets.UTF_8));
        replace(next, kept);
        return kept;
    }

    /**
     * Puts an inspection on disk; when this returns, it is there.
     *
     * @throws IOException when it could not be written; the file then still holds what it held
     */
    public void save(Inspection inspection) throws IOException {
        save(writer.writeWhole(inspection));
    }

    /**
     * Puts an inspection on disk of which nothing but the owner's decisions has changed, and leaves the rest of the file as
     * somebody wrote it, with its comments.
     *
     * @return false where that could not be done, and the whole was written anew
     * @throws IOException when it could not be written; the file then still holds what it held
     */
    public boolean saveDecisions(Inspection inspection) throws IOException {
        String text = withDecisions(Files.readString(path), writer.writeDecisions(inspection));
        boolean isSame;
        try {
            Inspection read = reader.read(path.getFileName().toString(), text, inspection.date());
            isSame = writer.write(read).equals(writer.write(inspection));
        } catch (Mistakes e) {
            // However it was laid out, it was not as expected here.
            isSame = false;
        }
        save(isSame ? text : writer.writeWhole(inspection));
        return isSame;
    }

    /** A file's text with other decisions: in the place of those it has, or behind all else. */
    private static String withDecisions(String text, String decisions) {
        String end = text.contains("\r\n") ? "\r\n" : "\n";
        List<String> lines = new ArrayList<>(text.lines().toList());
        int from = 0;
        while (from < lines.size() && !lines.get(from).startsWith(InspectionWriter.DECISIONS + ":")) {
            from++;
        }
        if (from == lines.size()) {
            // The line that ends a file stays its last.
            while (from > 0
                    && (lines.get(from - 1).isBlank() || lines.get(from - 1).equals(InspectionWriter.LAST_LINE))) {
                from--;
            }
        } else {
            int to = from + 1;
            for (int i = to; i < lines.size() && isInside(lines.get(i)); i++) {
                to = lines.get(i).isBlank() || lines.get(i).startsWith("#") ? to : i + 1;
            }
            lines.subList(from, to).clear();
        }
        lines.addAll(from, decisions.lines().toList());
        return String.join(end, lines) + end;
    }

    /** Whether a line may still belong to the key above it. */
    private static boolean isInside(String line) {
        return line.isBlank() || " -#".indexOf(line.charAt(0)) >= 0;
    }

    private void save(String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        Path next = path.resolveSibling("." + path.getFileName() + ".next");
        write(next, bytes);
        if (Files.exists(path)) {
            Path kept = path.resolveSibling("." + path.getFileName() + ".kept");
            Files.copy(path, kept, StandardCopyOption.REPLACE_EXISTING);
            replace(kept, before());
        }
        replace(next, path);
    }

    /** What kept a file from being written, in words. */
    public static String reason(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "access is denied";
        }
        if (e instanceof NoSuchFileException) {
            return "its folder is not there";
        }
        if (e instanceof FileSystemException file && file.getReason() != null) {
            return file.getReason();
        }
        return String.valueOf(e.getMessage());
    }

    private static void write(Path file, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(
                file, StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING)) {
            ByteBuffer buffer = ByteBuffer.wrap(bytes);
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
            // Without this a power cut could leave the new name on an empty file.
            channel.force(true);
        }
    }

    private static void replace(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    @Override
    public void close() throws IOException {
        lock.release();
        // The lock's file stays: taking it away could let two walks hold two locks of one name.
        lockChannel.close();
    }
}
