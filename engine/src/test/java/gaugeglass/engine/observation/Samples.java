package gaugeglass.engine.observation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Inspections of the toy trade. */
final class Samples {
    static final Path FOLDER = Path.of("src/test/resources/inspections");

    private Samples() {}

    static String text(String name) {
        try {
            return Files.readString(FOLDER.resolve(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
