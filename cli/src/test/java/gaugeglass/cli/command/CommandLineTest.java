package gaugeglass.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine.ParseResult;

/** What is understood on a command line, and what is said of the rest. */
class CommandLineTest {
    private static final String BARE =
            "format: 1\nsite: {id: elm-hall}\nvisit: {date: 2026-09-14}\nboilers: [{id: B1}]\n";

    @TempDir
    private Path folder;

    private static final List<String> WORDS = List.of(
            "a.yaml",
            "-",
            "--lines",
            "--as",
            "--as=json",
            "jsonl",
            "text",
            "--fail-at",
            "--fail-at=now",
            "stop",
            "--date",
            "2026-09-14",
            "--date=2024-02-29",
            "--help",
            "-h",
            "--",
            "--nonsense",
            "@file",
            "");

    /** Every line of up to three words, and some longer ones. */
    static Stream<List<String>> lines() {
        Stream<List<String>> shorter = WORDS.stream()
                .flatMap(a -> WORDS.stream().flatMap(b -> WORDS.stream().map(c -> List.of("assess", a, b, c))));
        return Stream.concat(
                shorter,
                Stream.of(
                        List.of("assess", "a", "b", "--as", "json", "--fail-at", "season", "--date", "2026-01-31", "c"),
                        List.of("assess", "--date=2026-09-14", "--lines", "--as=jsonl", "--fail-at=watch", "x"),
                        List.of("assess", "a", "--as", "json", "--as", "text")));
    }

    @Test
    void what_the_quick_reading_understands_the_full_one_understands_alike() throws Exception {
        int understood = 0;
        for (List<String> line : (Iterable<List<String>>) lines()::iterator) {
            Optional<AssessOptions> quick = QuickLine.assess(line.toArray(String[]::new));
            if (quick.isPresent()) {
                ParseResult full = FullLine.line(80).parseArgs(line.toArray(String[]::new));
                assertThat(FullLine.assess(full.subcommand()))
                        .as(String.join(" ", line))
                        .isEqualTo(quick.get());
                understood++;
            }
        }
        assertThat(understood).isGreaterThan(300);
    }

    static Stream<Arguments> usual() {
        return Stream.of(
                Arguments.of((Object) new String[] {"assess", "a.yaml"}),
                Arguments.of((Object) new String[] {"assess", "--as", "json", "a.yaml"}),
                Arguments.of((Object) new String[] {"assess", "a.yaml", "--fail-at", "stop"}),
                Arguments.of((Object) new String[] {"assess", "folder", "--as=jsonl", "--date", "2026-09-14"}));
    }

    @ParameterizedTest
    @MethodSource("usual")
    void the_usual_lines_need_no_full_reading(String[] line) {
        assertThat(QuickLine.assess(line)).isPresent();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    assess                      | no inspection is named; expected files, folders, or - for standard input
                    assess --lines              | no inspection is named; expected files, folders, or - for standard input
                    check                       | no inspection is named; expected files, folders, or - for standard input
                    assess a --as jsn           | --as: "jsn" is not known; expected one of text, json, jsonl; did you mean "json"?
                    assess a --fail-at stpo     | --fail-at: "stpo" is not known; expected one of stop, now, season, plan, watch; did you mean "stop"?
                    assess a --date 14.9.2026   | --date: "14.9.2026" is no date; expected year, month and day such as 2026-09-14
                    assess a --date 2026-02-29  | --date: "2026-02-29" is no date; expected year, month and day such as 2026-09-14
                    assess a --date             | --date needs a value: YYYY-MM-DD
                    assess a --fail-at          | --fail-at needs a value: URGENCY
                    assess a --as text --as json | an option stands there twice; expected it once
                    assess a --dat 2026-09-14   | "--dat" is no option here; expected one of -h, --help, --lines, --pack, --as, --fail-at, --date, --as-then; did you mean "--date"?
                    walk                        | no inspection file is named; one that is not there is begun
                    schema                      | no schema is named; expected one of inspection, assessment, checklists, fleet, work
                    schema inspektion           | "inspektion" is no schema; expected one of inspection, assessment, checklists, fleet, work; did you mean "inspection"?
                    rulebook --limits --items   | an id, --limits and --items each ask for something else; expected one of them
                    """)
    void a_wrong_line_is_told_and_ends_with_2(String line, String said) {
        Ran ran = Ran.of(line.split(" +"));

        assertThat(ran.err()).startsWith("gaugeglass: " + said + "\n").contains("for help: gaugeglass ");
        assertThat(ran.out()).isEmpty();
        assertThat(ran.code()).isEqualTo(2);
    }

    @Test
    void an_unknown_command_is_told_with_all_that_there_are_and_the_nearest() {
        Ran ran = Ran.of("asses", "a.yaml");

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err())
                .startsWith("gaugeglass: \"asses\" is no command; expected one of ")
                .contains("assess, check, ", "rulebook", "; did you mean \"assess\"?\n");
    }

    @Test
    void no_words_at_all_show_the_help_beside_the_results_and_end_with_2() {
        Ran ran = Ran.of();

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("assess", "check", "rulebook", "schema", "Exit codes");
    }

    @ParameterizedTest
    @ValueSource(strings = {"--help", "assess --help", "check -h", "rulebook --help", "blank --help", "schema --help"})
    void help_is_a_result_in_eighty_columns_of_ascii(String line) {
        Ran ran = Ran.of(line.split(" "));

        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).startsWith("Usage: gaugeglass").matches("[\\x20-\\x7e\\n]+");
        assertThat(ran.out().lines()).allSatisfy(one -> assertThat(one.length()).isLessThanOrEqualTo(80));
    }

    @Test
    void the_version_is_told() {
        assertThat(Ran.of("--version")).isEqualTo(new Ran(0, "gaugeglass of the test\n", ""));
    }

    @Test
    void check_reads_and_judges_nothing() throws Exception {
        Path file = Files.writeString(folder.resolve("visit.yaml"), BARE);

        Ran ran = Ran.of("check", file.toString());

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("can be used", "2026-09-14", "elm-hall", "1 boiler", "0 answers");
        assertThat(ran.err()).isEmpty();
    }

    @Test
    void a_file_that_is_not_there_ends_with_3_and_the_others_are_judged() throws Exception {
        Path file = Files.writeString(folder.resolve("visit.yaml"), BARE);
        String gone = folder.resolve("gone.yaml").toString();

        Ran ran = Ran.of("assess", gone, file.toString());

        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.out()).contains("elm-hall - boiler B1");
        assertThat(ran.err()).contains(gone + ": there is no such file", "1 inspection judged, 1 could not be used");
    }

    @Test
    void without_a_date_nothing_is_judged_and_with_one_given_all_is() throws Exception {
        Path file = Files.writeString(
                folder.resolve("visit.yaml"), "format: 1\nsite: {id: elm-hall}\nboilers: [{id: B1}]\n");

        Ran without = Ran.of("assess", file.toString());
        Ran with = Ran.of("assess", file.toString(), "--date", "2026-09-14");

        assertThat(without.code()).isEqualTo(3);
        assertThat(without.err()).contains("the visit has no date");
        assertThat(without.out()).isEmpty();
        assertThat(with.code()).isZero();
        assertThat(with.out()).contains("Visit of 2026-09-14");
    }

    @Test
    void a_date_given_outdoes_that_of_the_visit_and_both_are_told() throws Exception {
        Path file = Files.writeString(folder.resolve("visit.yaml"), BARE);

        Ran ran = Ran.of("assess", file.toString(), "--date", "2027-01-31");

        assertThat(ran.out()).contains("Visit of 2026-09-14, judged for 2027-01-31");
    }

    @Test
    void standard_input_is_read_where_a_hyphen_stands() {
        Ran ran = Ran.withInput(BARE, "assess", "-");

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("elm-hall - boiler B1");
    }

    @Test
    void an_unknown_check_is_told_with_the_nearest_known() {
        String known =
                Ran.of("rulebook", "--as", "jsonl").out().lines().findFirst().orElseThrow();
        String id = known.substring(7, known.indexOf('"', 7));

        Ran ran = Ran.of("rulebook", id + "x");

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("no check is called \"" + id + "x\"; did you mean \"" + id + "\"?");
    }
}
