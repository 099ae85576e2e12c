package gaugeglass.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import gaugeglass.cli.paper.Screen;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What many visits come to together. */
class FleetTest {
    private static final Screen PLAIN = new Screen(80, StandardCharsets.US_ASCII, false);
    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Ran.of("schema", "fleet").out(), InputFormat.JSON);

    @TempDir
    private Path folder;

    /** One visit as a line of JSON: no cutoff is a stop, and a float of 2018 falls due in 2028. */
    private static String visit(String site, String date, String boiler, String cutoffs) {
        return "{\"format\":1,\"site\":{\"id\":\"" + site + "\"},\"visit\":{\"date\":\"" + date
                + "\"},\"boilers\":[{\"id\":\"" + boiler + "\",\"burner\":{\"firing\":\"automatic\"},\"cutoffs\":"
                + cutoffs
                + "}]}\n";
    }

    private static final String NONE = "{\"fitted\":0}";
    private static final String OLD_FLOAT =
            "{\"fitted\":1,\"each\":[{\"tag\":\"A\",\"kind\":\"float\",\"installed\":\"2018-11-20\"}]}";

    private static Ran fleet(String input, String... more) {
        String[] args = new String[more.length + 3];
        args[0] = "fleet";
        args[1] = "-";
        args[2] = "--lines";
        System.arraycopy(more, 0, args, 3, more.length);
        return Ran.withInput(input, args);
    }

    private static List<NamedCsvRecord> table(String input, String name) {
        String csv = Ran.withInput(input, "fleet", "-", "--lines", "--as", "csv", "--table", name)
                .out();
        return CsvReader.builder().ofNamedCsvRecord(csv).stream().toList();
    }

    private static NamedCsvRecord row(List<NamedCsvRecord> rows, String value) {
        return rows.stream()
                .filter(row -> row.getFields().contains(value))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no row has " + value));
    }

    @ParameterizedTest
    @CsvSource({
        "2025-09-10, 2026-09-14, not-forbidden",
        "2026-09-14, 2025-09-10, forbidden",
        "2026-09-14, 2026-09-14, not-forbidden"
    })
    void the_latest_visit_decides_and_of_two_on_one_day_the_one_read_later(String none, String fitted, String word) {
        String input = visit("elm", none, "B1", NONE) + visit("elm", fitted, "B1", OLD_FLOAT);

        String standing = fleet(input, "--as", "json").out();

        assertThat(findings(standing).contains("cutoff.none")).isEqualTo(word.equals("forbidden"));
        assertThat(standing).contains("\"visits\" : 2,", "\"boilers\" : 1,");
    }

    private static String findings(String json) {
        return json.substring(json.indexOf("\"findings\""), json.indexOf("\"due\""));
    }

    @Test
    void each_boiler_of_a_site_stands_by_its_own_latest_visit() {
        String input = visit("elm", "2025-09-10", "B1", NONE) + visit("elm", "2026-09-14", "B2", OLD_FLOAT);

        Ran ran = fleet(input, "--as", "json");

        assertThat(findings(ran.out())).contains("\"rule\":\"cutoff.none\"");
        assertThat(ran.out())
                .contains("\"boilers\" : 2,", "\"site\":\"elm\",\"siteName\":\"\",\"visited\":\"2026-09-14\"");
    }

    @Test
    void a_visit_without_boilers_stands_until_one_of_them_is_visited() {
        String alone =
                "{\"format\":1,\"site\":{\"id\":\"elm\",\"gas-smell\":\"smelled\"},\"visit\":{\"date\":\"2026-09-01\"},"
                        + "\"boilers\":[]}\n";

        assertThat(findings(fleet(alone, "--as", "json").out())).contains("site.gas-odour");
        assertThat(findings(fleet(alone + visit("elm", "2025-09-14", "B1", NONE), "--as", "json")
                        .out()))
                .contains("site.gas-odour");
        assertThat(findings(fleet(alone + visit("elm", "2026-09-14", "B1", NONE), "--as", "json")
                        .out()))
                .doesNotContain("site.gas-odour");
    }

    @Test
    void what_falls_due_is_told_by_quarter_and_by_name_from_the_rulebooks_own_limit() {
        String input = visit("elm", "2026-09-14", "B1", OLD_FLOAT);

        // Ten years from 2018-11-20, and the day after (common practice; the limit stands in the rulebook).
        assertThat(fleet(input, "--as", "json").out())
                .contains("\"rule\":\"cutoff.past-service-life\"", "\"quarters\":{\"2028-Q4\":1}")
                .containsPattern(
                        "\"rule\":\"cutoff.past-service-life\"[^\\]]*\\[\\s*\\{\"site\":\"elm\",\"siteName\":\"\","
                                + "\"boiler\":\"B1\",\"tag\":\"A\",\"due\":\"2028-11-21\"\\}\\]");
        assertThat(row(table(input, "due"), "cutoff.past-service-life").getFields())
                .contains("elm", "B1", "low-water cutoff A", "A", "2028-11-21", "2028-Q4", "to come");
        Ran later = fleet(input, "--as", "csv", "--table", "due", "--date", "2029-01-01");
        assertThat(later.out()).contains("2028-Q4,overdue");
    }

    @ParameterizedTest
    @ValueSource(strings = {"text", "json", "csv"})
    void the_result_is_the_same_on_any_number_of_threads(String form) {
        StringBuilder input = new StringBuilder();
        for (int i = 0; i < 60; i++) {
            input.append(
                    visit("site-" + i % 37, "2026-09-" + (10 + i % 7), "B" + i % 2, i % 3 == 0 ? NONE : OLD_FLOAT));
        }
        byte[] bytes = input.toString().getBytes(StandardCharsets.UTF_8);

        Ran one = Ran.on(PLAIN, bytes, 1, "fleet", "-", "--lines", "--as", form);
        Ran five = Ran.on(PLAIN, bytes, 5, "fleet", "-", "--lines", "--as", form);

        assertThat(five).isEqualTo(one);
        assertThat(one.code()).isZero();
    }

    @Test
    void a_broken_file_is_told_and_counted_and_the_others_are_judged() throws Exception {
        Files.createDirectories(folder.resolve("deep/er"));
        Files.writeString(folder.resolve("deep/er/one.json"), visit("elm", "2026-09-14", "B1", NONE));
        Files.writeString(folder.resolve("broken.yaml"), "format: 1\nsite: {id: x}\nvisit: {date: 2026-13-14}\n");
        Files.writeString(
                folder.resolve("more.jsonl"),
                visit("ash", "2026-09-14", "B1", NONE) + "{\n" + visit("oak", "2026-09-14", "B1", NONE));

        Ran ran = Ran.of("fleet", folder.toString());

        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err())
                .contains("broken.yaml:3", "more.jsonl:2", "gaugeglass: 3 inspections judged, 2 could not be used");
        assertThat(ran.out()).contains("3 visits to 3 sites with 3 boilers, on 2026-09-14. 2 files could not be used.");
    }

    @Test
    void where_nothing_can_be_used_nothing_is_printed() {
        Ran ran = fleet("{}\n", "--as", "json");

        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.out()).isEmpty();
    }

    @Test
    void the_exit_code_tells_what_stands_where_it_was_asked() {
        String none = visit("elm", "2026-09-14", "B1", NONE);

        assertThat(fleet(none).code()).isZero();
        assertThat(fleet(none, "--fail-at", "stop").code()).isEqualTo(1);
        assertThat(Ran.of("fleet", "../docs/examples/well-kept-church.yaml", "--fail-at", "watch")
                        .code())
                .isZero();
    }

    @Test
    void no_cell_is_a_formula() {
        String input = visit("=cmd", "2026-09-14", "@B1", OLD_FLOAT);

        for (String table : List.of("sites", "due")) {
            assertThat(table(input, table)).isNotEmpty().allSatisfy(row -> assertThat(row.getFields())
                    .allSatisfy(cell -> assertThat(cell).doesNotMatch("^[=+\\-@|%].*")));
        }
    }

    @Test
    void json_keeps_to_the_published_schema_and_another_key_or_word_would_be_noticed() {
        String json = Ran.of("fleet", "../docs/examples", "--as", "json").out();

        assertThat(wrong(json)).isEmpty();
        assertThat(json).contains("\"neverFound\" : [", "\"item\":\"steam.temperature\"");
        assertThat(wrong(json.replaceFirst("\"worst\":\"stop\"", "\"worst\":\"bad\"")))
                .isNotEmpty();
        assertThat(wrong(json.replaceFirst("\"visits\"", "\"visitors\""))).isNotEmpty();
        assertThat(wrong(json.replaceFirst("2026-Q4", "2026-Q5"))).isNotEmpty();
        assertThat(wrong(json.replaceFirst("\"tag\":", "\"tags\":"))).isNotEmpty();
        assertThat(wrong(json.replaceFirst("\"standsOutAgainst\":\"nothing\"", "\"standsOutAgainst\":\"\"")))
                .isNotEmpty();
    }

    private static List<Error> wrong(String json) {
        return SCHEMA.validate(json, InputFormat.JSON);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    fleet                            | no inspection is named; expected files, folders, or - for standard input
                    fleet a --table due              | --table goes with --as csv; text and json hold every table
                    fleet a --as csv --table dues    | --table: "dues" is not known; expected one of sites, findings, due, make-up, open, never-found; did you mean "due"?
                    fleet a --as csv --top 3         | --top goes with text; csv and json hold every row
                    fleet a --top none               | --top: "none" is no number of rows; expected a whole number from 1
                    """)
    void a_wrong_line_is_told_and_ends_with_2(String line, String said) {
        Ran ran = Ran.of(line.split(" +"));

        assertThat(ran.err()).startsWith("gaugeglass: " + said + "\n");
        assertThat(ran.code()).isEqualTo(2);
    }

    @ParameterizedTest
    @CsvSource({"0, false", "80, true"})
    void a_bar_is_shown_only_where_somebody_watches(int columns, boolean isShown) {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        byte[] input = (visit("elm", "2026-09-14", "B1", NONE) + "{\n").getBytes(StandardCharsets.UTF_8);
        Shell shell = new Shell(
                        new ByteArrayInputStream(input),
                        new ByteArrayOutputStream(),
                        err,
                        PLAIN,
                        false,
                        "of the test",
                        2,
                        FleetTest.class.getClassLoader())
                .watched(columns);

        int code = Commands.run(new String[] {"fleet", "-", "--lines"}, shell);

        String said = err.toString(StandardCharsets.US_ASCII);
        assertThat(code).isEqualTo(3);
        assertThat(said.contains("\r")).isEqualTo(isShown);
        // Whatever was shown is taken away before something else is said.
        for (String line : said.split("\n")) {
            String last = line.substring(line.lastIndexOf('\r') + 1);
            assertThat(last).matches("(standard input:2|gaugeglass: ).*");
        }
    }
}
