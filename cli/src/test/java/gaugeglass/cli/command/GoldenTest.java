package gaugeglass.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whole results of the examples, as they were when somebody last read them.
 *
 * <p>{@code mvn -q -pl cli -am test -Dtest=GoldenTest -Dsurefire.failIfNoSpecifiedTests=false -Dregenerate=true} writes
 * them anew; read the difference as a technician would before committing it.
 */
class GoldenTest {
    private static final Path EXAMPLES = Path.of("../docs/examples");
    private static final Path GOLDEN = Path.of("src/test/resources/golden");

    private static List<Path> examples() throws IOException {
        try (Stream<Path> files = Files.list(EXAMPLES)) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        }
    }

    @TestFactory
    Stream<DynamicTest> every_example_prints_what_it_printed() throws IOException {
        return examples().stream()
                .map(file -> DynamicTest.dynamicTest(
                        file.getFileName().toString(),
                        () -> same(file.getFileName() + ".txt", Ran.of("assess", file.toString()))));
    }

    @Test
    void the_json_of_one_is_what_it_was() throws IOException {
        same(
                "jumper-removed.yaml.json",
                Ran.of("assess", EXAMPLES.resolve("jumper-removed.yaml").toString(), "--as", "json"));
    }

    @Test
    void the_fleet_of_all_examples_prints_what_it_printed() throws IOException {
        Ran ran = Ran.of("fleet", EXAMPLES.toString(), "--top", "5");

        assertThat(ran.err()).isEqualTo("gaugeglass: " + examples().size() + " inspections judged\n");
        same("fleet.txt", new Ran(ran.code(), ran.out(), ""));
    }

    private static void same(String name, Ran ran) throws IOException {
        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEmpty();
        // The rulebook's digest changes with every comma in it, and paths with the machine.
        String out = ran.out()
                .replaceAll("\"hash\" : \"[0-9a-f]{64}\"", "\"hash\" : \"...\"")
                .replaceAll("\"version\" : \"[^\"]+\"", "\"version\" : \"...\"")
                .replace(EXAMPLES + File.separator, "");
        Path golden = GOLDEN.resolve(name);
        if (Boolean.getBoolean("regenerate")) {
            Files.createDirectories(GOLDEN);
            Files.writeString(golden, out);
        }
        assertThat(out).isEqualTo(Files.readString(golden));
    }

    @ParameterizedTest
    @ValueSource(strings = {"well-kept-church.yaml", "sound-mill.yaml"})
    void a_sound_one_has_nothing_against_it_and_nothing_open(String sound) {
        Ran ran = Ran.of("assess", EXAMPLES.resolve(sound).toString(), "--as", "json", "--fail-at", "plan");

        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .contains("\"testFiring\" : \"nothing-found-against\"", "\"release\" : \"nothing-found-against\"")
                .contains("\"undetermined\" : 0,");
    }

    @Test
    void three_independent_reasons_forbid_the_one_that_has_three() {
        String out = Ran.of("assess", EXAMPLES.resolve("three-reasons.yaml").toString())
                .out();

        assertThat(out.substring(0, out.indexOf("Release is forbidden"))
                        .lines()
                        .filter(line -> line.startsWith("  - ")))
                .hasSize(3);
    }

    @Test
    void a_jumper_put_right_is_told_with_its_retest_and_forbids_nothing() {
        Ran ran = Ran.of("assess", EXAMPLES.resolve("jumper-removed.yaml").toString(), "--fail-at", "stop");

        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .containsSubsequence("PUT RIGHT ON THIS VISIT", "bypassed", "Was      Do not fire", "Retest");
    }

    @Test
    void what_is_missing_in_the_half_answered_one_is_not_passed() {
        Ran ran = Ran.of("assess", EXAMPLES.resolve("half-answered.yaml").toString(), "--fail-at", "stop");

        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.out()).contains("Attended test firing:            NOT KNOWN", "NOT JUDGED");
    }

    @Test
    void every_example_says_that_it_is_invented() throws IOException {
        for (Path file : examples()) {
            assertThat(Files.readString(file)).as(file.toString()).startsWith("# An invented visit");
        }
    }

    @Test
    void every_screen_is_eighty_columns_of_ascii_and_never_says_safe() throws IOException {
        for (Path file : examples()) {
            String out = Ran.of("assess", file.toString()).out();
            assertThat(out)
                    .as(file.toString())
                    .matches("(?s)[\\x20-\\x7e\\n]+")
                    .doesNotContainPattern("(?i)\\bsafe\\b");
            assertThat(out.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
        }
    }
}
