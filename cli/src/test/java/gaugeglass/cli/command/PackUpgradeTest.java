package gaugeglass.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.history.History;
import gaugeglass.engine.history.Release;
import gaugeglass.engine.history.Retired;
import gaugeglass.engine.history.Sort;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Packs made for another release than the one that reads them. The earlier release is invented: it is the rulebook of today with
 * some of it said otherwise.
 */
class PackUpgradeTest {
    private static final String VISIT = "../docs/examples/half-answered.yaml";

    @TempDir
    private Path folder;

    private final Map<String, String> records = new HashMap<>();

    /** Gives other records of releases than those that the program brings along. */
    private final ClassLoader loader = new ClassLoader(PackUpgradeTest.class.getClassLoader()) {
        @Override
        public InputStream getResourceAsStream(String name) {
            String text = records.get(name);
            return text == null
                    ? super.getResourceAsStream(name)
                    : new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
        }
    };

    private static Release here() {
        return History.of(PackUpgradeTest.class.getClassLoader()).here();
    }

    private void record(Release release) {
        records.put(History.FOLDER + release.version() + ".yaml", release.write());
    }

    @BeforeEach
    void an_earlier_release() {
        Map<Sort, Map<String, Map<String, String>>> said = new HashMap<>(here().said());
        Map<String, Map<String, String>> limits = new HashMap<>(said.get(Sort.LIMIT));
        Map<String, String> life = new HashMap<>(limits.get("cutoff.float-service-life"));
        life.put("value", "12 years");
        limits.put("cutoff.float-service-life", life);
        limits.put("cutoff.float-years", Map.of("value", "12 years"));
        Map<String, String> lever = new HashMap<>(limits.get("relief.lever-interval"));
        lever.put("meaning", "something else");
        limits.put("relief.lever-interval", lever);
        limits.remove("relief.pressure-interval");
        said.put(Sort.LIMIT, limits);
        record(new Release(here().rulebook(), "0.0.9", "0000", said, List.of()));
        Retired retired = new Retired(
                Sort.LIMIT, "cutoff.float-years", "0.1.0", List.of("cutoff.float-service-life"), "It was named anew.");
        records.put(
                History.FOLDER + History.HERE,
                new Release(here().rulebook(), here().version(), here().hash(), here().said(), List.of(retired))
                        .write());
    }

    private String pack(String madeFor, String limits) throws IOException {
        Path pack = Files.createDirectories(folder.resolve("elm"));
        Files.writeString(pack.resolve("pack.yaml"), """
                pack: elm
                title: Elm Heating standard
                version: 1.0.0
                level: company
                tailors: standard practice
                made-for: %s
                by: Training lead
                """.formatted(madeFor));
        Files.writeString(pack.resolve("limits.yaml"), "limits:\n  " + limits + "\n");
        return pack.toString();
    }

    private Ran ran(String... line) {
        return Ran.from(loader, line);
    }

    private static String flat(String text) {
        return text.replaceAll("\\s+", " ");
    }

    @Test
    void a_check_names_first_what_the_pack_touches_and_counts_the_rest() throws IOException {
        Ran ran = ran("pack", "check", pack("0.0.9", "cutoff.float-service-life: 8 years"));

        assertThat(ran.code()).isZero();
        assertThat(flat(ran.out()))
                .contains("made for version 0.0.9 of standard practice, and this is " + here().version()
                        + "; 1 thing that it touches changed since:")
                .contains("- limit cutoff.float-service-life: value \"12 years\", now")
                .contains("Besides, 1 changed, 1 new, 1 gone: gaugeglass pack changes")
                .doesNotContain("relief.lever-interval");
    }

    @Test
    void everything_that_changed_is_listed_on_request_what_is_gone_first() throws IOException {
        String out = flat(ran("pack", "changes", pack("0.0.9", "cutoff.float-service-life: 8 years"))
                .out());

        assertThat(out)
                .containsSubsequence(
                        "limit cutoff.float-service-life: value",
                        "Besides, 1 changed, 1 new, 1 gone:",
                        "limit cutoff.float-years: retired with version 0.1.0; instead of it: cutoff.float-service-life",
                        "limit relief.lever-interval: meaning \"something else\", now",
                        "limit relief.pressure-interval: new");
    }

    @Test
    void a_retired_id_is_told_with_what_stands_in_its_place_and_not_as_a_misspelt_word() throws IOException {
        Ran ran = ran("pack", "check", pack("0.0.9", "cutoff.float-years: 8 years"));

        assertThat(ran.code()).isEqualTo(3);
        assertThat(flat(ran.err()))
                .contains(
                        "limits.yaml:2:23: limits/cutoff.float-years: \"cutoff.float-years\" is no limit any more: it was"
                                + " retired with version 0.1.0. It was named anew.; expected cutoff.float-service-life")
                .doesNotContain("did you mean");
    }

    @Test
    void whoever_judges_by_it_is_told_in_one_line_beside_the_results() throws IOException {
        String pack = pack("0.0.9", "cutoff.float-service-life: 8 years");
        Ran ran = ran("assess", VISIT, "--pack", pack);

        assertThat(ran.code()).isZero();
        assertThat(ran.err().lines())
                .singleElement()
                .asString()
                .startsWith("gaugeglass: Elm Heating standard 1.0.0 was made for version 0.0.9")
                .contains("1 thing that it touches changed since: gaugeglass pack changes");
        assertThat(ran.out()).isEqualTo(Ran.of("assess", VISIT, "--pack", pack).out());
    }

    @Test
    void a_pack_for_what_is_there_says_nothing() throws IOException {
        String pack = pack(here().version(), "cutoff.float-service-life: 8 years");

        assertThat(ran("assess", VISIT, "--pack", pack).err()).isEmpty();
        assertThat(ran("pack", "check", pack).out()).doesNotContain("made for");
        assertThat(flat(ran("pack", "changes", pack).out())).contains("It was made for this version");
    }

    @Test
    void a_pack_for_a_later_release_is_told_to_be_read_by_a_later_program() throws IOException {
        String pack = pack("12.0.0", "cutoff.float-service-life: 8 years");

        assertThat(flat(ran("pack", "check", pack).out())).contains("the earlier one", "take the newer program");
        assertThat(ran("assess", VISIT, "--pack", pack).err()).contains("take the newer program");
    }

    @Test
    void a_pack_for_a_version_that_was_never_released_is_told_that_nothing_is_known() throws IOException {
        assertThat(flat(ran("pack", "check", pack("0.0.8", "cutoff.float-service-life: 8 years"))
                        .out()))
                .contains("What changed in between is not recorded, as 0.0.8 was never released");
    }

    @Test
    void taking_it_from_the_shared_folder_tells_it_too() throws IOException {
        Path shared = Files.createDirectory(folder.resolve("shared"));
        String pack = pack("0.0.9", "cutoff.float-service-life: 8 years");
        assertThat(ran("pack", "publish", pack, shared.toString()).err()).isEmpty();

        assertThat(flat(ran("pack", "take", shared.toString(), "elm").out()))
                .contains("taken; use it with --pack elm", "limit cutoff.float-service-life: value \"12 years\", now");
    }

    @Test
    void what_a_standard_tightened_since_still_holds_against_the_packs_old_value() throws IOException {
        Ran ran = ran("assess", VISIT, "--pack", pack("0.0.9", "control.legal-pressure: 16 psi"));

        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err()).contains("less cautious than 15 psi, which a standard sets");
    }
}
