package gaugeglass.cli.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import gaugeglass.engine.Rulebook;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.InspectionReader;
import gaugeglass.engine.text.Mistakes;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class VisitFileTest {
    private static final LocalDate DAY = LocalDate.of(2026, 9, 14);
    private static final Vocabulary VOCABULARY =
            Rulebook.load(VisitFileTest.class.getClassLoader()).vocabulary();

    @TempDir
    Path folder;

    private Inspection visitBy(String who) {
        return new InspectionReader(VOCABULARY)
                .read(
                        "visit.yaml",
                        "format: 1\nsite: {id: mill}\nvisit: {date: 2026-09-14, by: " + who
                                + "}\nboilers: [{id: B1}]\n");
    }

    @Test
    void what_was_saved_is_read_back_and_the_state_before_is_kept() throws IOException {
        try (VisitFile file = VisitFile.open(folder.resolve("visit.yaml"), VOCABULARY)) {
            file.save(visitBy("first"));
            file.save(visitBy("second"));
            assertThat(file.read(DAY).by()).isEqualTo("second");
            String before = Files.readString(file.before());
            assertThat(new InspectionReader(VOCABULARY).read("before", before).by())
                    .isEqualTo("first");
        }
    }

    @Test
    void a_file_with_comments_is_kept_as_somebody_wrote_it_and_one_without_is_not() throws IOException {
        Path path = folder.resolve("visit.yaml");
        try (VisitFile file = VisitFile.open(path, VOCABULARY)) {
            file.save(visitBy("first"));
            assertThat(file.keepComments()).isEmpty();
            String text = Files.readString(path).replace("\nsite:", "\n# ask the porter\nsite:");
            Files.writeString(path, text);

            Path kept = file.keepComments().orElseThrow();
            file.save(visitBy("second"));

            assertThat(kept).hasFileName("visit.yaml.with-comments").content().isEqualTo(text);
        }
    }

    @Test
    void a_second_walk_on_the_same_file_is_refused_and_a_later_one_is_not() throws IOException {
        Path path = folder.resolve("visit.yaml");
        try (VisitFile file = VisitFile.open(path, VOCABULARY)) {
            assertThat(file.exists()).isFalse();
            assertThatThrownBy(() -> VisitFile.open(path, VOCABULARY))
                    .isInstanceOf(VisitFile.InUse.class)
                    .hasMessageContaining("being walked already");
        }
        VisitFile.open(path, VOCABULARY).close();
    }

    @Test
    void a_save_that_fails_leaves_the_last_good_state() throws IOException {
        Path path = folder.resolve("visit.yaml");
        try (VisitFile file = VisitFile.open(path, VOCABULARY)) {
            file.save(visitBy("good"));
            // A folder in the place of the next state makes the write fail wherever the test runs and as whom.
            Files.createDirectory(folder.resolve(".visit.yaml.next"));
            assertThatThrownBy(() -> file.save(visitBy("lost"))).isInstanceOf(IOException.class);
            assertThat(file.read(DAY).by()).isEqualTo("good");
        }
    }

    @Test
    void a_full_disk_leaves_the_last_good_state() throws IOException {
        Path full = Path.of("/dev/full");
        assumeThat(full).exists();
        Path path = folder.resolve("visit.yaml");
        try (VisitFile file = VisitFile.open(path, VOCABULARY)) {
            file.save(visitBy("good"));
            Files.createSymbolicLink(folder.resolve(".visit.yaml.next"), full);
            assertThatThrownBy(() -> file.save(visitBy("lost")))
                    .isInstanceOf(IOException.class)
                    .hasMessageContaining("No space left");
            assertThat(file.read(DAY).by()).isEqualTo("good");
        }
    }

    @Test
    void a_truncated_file_is_named_and_not_overwritten() throws IOException {
        Path path = folder.resolve("visit.yaml");
        Files.writeString(path, "format: 1\nsite: {id: mill\n");
        try (VisitFile file = VisitFile.open(path, VOCABULARY)) {
            assertThatThrownBy(() -> file.read(DAY))
                    .isInstanceOf(Mistakes.class)
                    .hasMessageContaining("visit.yaml:");
        }
        assertThat(Files.readString(path)).isEqualTo("format: 1\nsite: {id: mill\n");
    }

    @Test
    void a_folder_that_is_not_there_is_said() {
        assertThatThrownBy(() -> VisitFile.open(folder.resolve("nowhere/visit.yaml"), VOCABULARY))
                .isInstanceOf(IOException.class);
    }
}
