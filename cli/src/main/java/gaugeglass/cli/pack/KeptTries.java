package gaugeglass.cli.pack;

import gaugeglass.cli.pack.PackTools.Tried;
import gaugeglass.engine.pack.PackFiles;
import gaugeglass.engine.text.Digest;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What trying a pack came to the last time, for as long as neither the pack nor the program changed. Scenarios bring their own
 * dates, so the same files tried by the same program come out the same on any day.
 */
public final class KeptTries {
    private final Path folder;
    private final Optional<String> program;

    /**
     * What is kept.
     *
     * @param home where the user's own things are
     * @param program tells one program from another, with its rulebook; where it is empty nothing is kept
     */
    public KeptTries(Path home, Optional<String> program) {
        this.folder = home.resolve("tried");
        this.program = program;
    }

    /**
     * Tells one program from another by the names, sizes and times of its files; empty where it runs from loose classes, as
     * it does while it is being changed.
     */
    public static Optional<String> program() {
        StringBuilder files = new StringBuilder(System.getProperty("java.version", "")).append('\n');
        for (String part : System.getProperty("java.class.path", "").split(File.pathSeparator)) {
            try {
                Path file = Path.of(part);
                if (!Files.isRegularFile(file)) {
                    return Optional.empty();
                }
                files.append(file.toAbsolutePath())
                        .append(' ')
                        .append(Files.size(file))
                        .append(' ')
                        .append(Files.getLastModifiedTime(file))
                        .append('\n');
            } catch (IOException | RuntimeException e) {
                return Optional.empty();
            }
        }
        return Optional.of(files.toString());
    }

    /** What it came to; empty where it was not tried since something changed. */
    public Optional<Tried> of(PackFiles files) {
        Optional<Path> file = file(files);
        if (file.isEmpty() || !Files.isRegularFile(file.get())) {
            return Optional.empty();
        }
        try {
            List<String> lines = Files.readAllLines(file.get());
            return Optional.of(new Tried(lines.subList(1, lines.size()), Integer.parseInt(lines.get(0))));
        } catch (IOException | RuntimeException e) {
            // What cannot be read is tried anew.
            return Optional.empty();
        }
    }

    /** Keeps what it came to. */
    public void keep(PackFiles files, Tried tried) {
        Optional<Path> file = file(files);
        if (file.isEmpty()) {
            return;
        }
        List<String> lines = new ArrayList<>();
        lines.add(String.valueOf(tried.failed()));
        lines.addAll(tried.lines());
        Workshop.keep(file.get(), String.join("\n", lines).getBytes(StandardCharsets.UTF_8));
    }

    private Optional<Path> file(PackFiles files) {
        return program.map(of -> folder.resolve(
                new Digest().add(files.hash() + '\n' + files.name() + '\n' + of).hex() + ".txt"));
    }
}
