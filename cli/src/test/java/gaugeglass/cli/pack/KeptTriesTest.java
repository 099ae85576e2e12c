package gaugeglass.cli.pack;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.cli.pack.PackTools.Tried;
import gaugeglass.engine.pack.PackFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What trying a pack came to is told again only while nothing changed. */
class KeptTriesTest {
    private static final Tried TRIED = new Tried(List.of("elm/a.cards.yaml:3: not found", "elm: 2 scenarios"), 1);

    @TempDir
    private Path folder;

    private Path pack;

    @BeforeEach
    void write() throws IOException {
        pack = Files.createDirectories(folder.resolve("elm"));
        Files.writeString(pack.resolve("pack.yaml"), "pack: elm\n");
    }

    private KeptTries tries(String program) {
        return new KeptTries(folder.resolve("home"), Optional.of(program));
    }

    private PackFiles files() {
        return PackFiles.read(pack);
    }

    @Test
    void the_same_pack_and_program_come_out_the_same() {
        assertThat(tries("1").of(files())).isEmpty();

        tries("1").keep(files(), TRIED);

        assertThat(tries("1").of(files())).contains(TRIED);
    }

    @Test
    void a_changed_file_a_new_file_another_folder_or_another_program_is_tried_anew() throws IOException {
        tries("1").keep(files(), TRIED);

        assertThat(tries("2").of(files())).isEmpty();
        Files.writeString(pack.resolve("limits.yaml"), "limits: {}\n");
        assertThat(tries("1").of(files())).isEmpty();
        Files.delete(pack.resolve("limits.yaml"));
        assertThat(tries("1").of(files())).contains(TRIED);
        Files.writeString(pack.resolve("pack.yaml"), "pack: elm \n");
        assertThat(tries("1").of(files())).isEmpty();
    }

    @Test
    void a_program_of_loose_classes_keeps_nothing() {
        new KeptTries(folder.resolve("home"), Optional.empty()).keep(files(), TRIED);

        assertThat(folder.resolve("home")).doesNotExist();
        // This test runs from them.
        assertThat(KeptTries.program()).isEmpty();
    }

    @Test
    void what_is_spoiled_is_tried_anew() throws IOException {
        tries("1").keep(files(), TRIED);
        try (Stream<Path> all = Files.list(folder.resolve("home/tried"))) {
            for (Path file : (Iterable<Path>) all::iterator) {
                Files.writeString(file, "one\n");
            }
        }

        assertThat(tries("1").of(files())).isEmpty();
    }
}
