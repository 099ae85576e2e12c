package gaugeglass.steam;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.history.History;
import gaugeglass.engine.history.Release;
import gaugeglass.engine.history.Versions;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The records of releases. While the version ends in {@code -SNAPSHOT} there is nothing to keep up to date here; a version that
 * does not is a release, and {@code -Dregenerate=true} writes its record, once.
 */
class ReleasesTest {
    private static final Path RECORDS = Path.of("src/main/resources/" + History.FOLDER);

    @TempDir
    private Path folder;

    private static Release here() {
        return History.of(ReleasesTest.class.getClassLoader()).here();
    }

    /** What is wrong with the records in a folder, held against the rulebook that is there. */
    private static List<String> faults(Path records, Release here, boolean writes) throws IOException {
        Path own = records.resolve(here.version() + ".yaml");
        if (Versions.isReleased(here.version()) && writes && !Files.exists(own)) {
            Files.createDirectories(records);
            Files.writeString(own, here.write());
        }
        List<String> faults = new ArrayList<>();
        if (Versions.isReleased(here.version()) && !Files.exists(own)) {
            faults.add("the release " + here.version() + " is not recorded; -Dregenerate=true writes it");
        }
        List<Path> all = new ArrayList<>();
        if (Files.isDirectory(records)) {
            try (Stream<Path> listed = Files.list(records)) {
                listed.sorted().forEach(all::add);
            }
        }
        for (Path file : all) {
            Release release = Release.read(file.toString(), Files.readString(file));
            String name = file.getFileName().toString();
            if (!name.equals(release.version() + ".yaml") || !Versions.isReleased(release.version())) {
                faults.add(name + " is not the record of a release of this name");
            } else if (Versions.compare(release.version(), here.version()) > 0) {
                faults.add(release.version() + " was released, and this is " + here.version() + ": raise the version");
            } else if (release.version().equals(here.version()) && !release.equals(here)) {
                faults.add(release.version() + " was released, and the rulebook was changed since: raise the version");
            }
            release.vanishedIn(here)
                    .forEach(id ->
                            faults.add(id + ", of " + release.version() + ", is neither there nor in retired.yaml"));
        }
        return faults;
    }

    private static Release as(String version, Release release) {
        return new Release(release.rulebook(), version, release.hash(), release.said(), release.retired());
    }

    @Test
    void every_release_is_recorded_and_every_id_of_it_is_there_or_retired() throws IOException {
        assertThat(faults(RECORDS, here(), Boolean.getBoolean("regenerate"))).isEmpty();
    }

    @Test
    void a_release_without_a_record_is_told_and_recording_it_once_is_enough() throws IOException {
        Release released = as("7.0.0", here());

        assertThat(faults(folder, released, false)).singleElement().asString().contains("7.0.0 is not recorded");
        assertThat(faults(folder, released, true)).isEmpty();
        assertThat(faults(folder, released, false)).isEmpty();
    }

    @Test
    void a_record_is_never_written_over_and_a_rulebook_changed_since_wants_another_version() throws IOException {
        faults(folder, as("7.0.0", here()), true);
        Release changed = new Release(here().rulebook(), "7.0.0", "another", here().said(), List.of());

        assertThat(faults(folder, changed, true)).singleElement().asString().contains("raise the version");
        assertThat(faults(folder, as("7.0.0-SNAPSHOT", here()), true))
                .singleElement()
                .asString()
                .contains("raise the version");
        assertThat(faults(folder, as("7.0.1-SNAPSHOT", changed), true)).isEmpty();
    }

    @Test
    void an_id_that_was_released_and_is_neither_there_nor_retired_is_told() throws IOException {
        Files.writeString(
                folder.resolve("0.0.1.yaml"),
                as("0.0.1", here()).write().replace("  cutoff.float-service-life:", "  cutoff.float-years:"));

        assertThat(faults(folder, here(), false))
                .containsExactly("limit cutoff.float-years, of 0.0.1, is neither there nor in retired.yaml");
    }
}
