package gaugeglass.cli.printed;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import gaugeglass.cli.table.Csv;
import gaugeglass.cli.visit.Judged;
import gaugeglass.engine.Assessment.Ref;
import gaugeglass.engine.book.Urgency;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.Inspection.Decided;
import gaugeglass.engine.vocabulary.Decision;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Lists of work for other programs. Goldens are written anew with {@code -Dregenerate=true}. */
class WorkListFilesTest {
    private static final LocalDate DAY = LocalDate.of(2026, 9, 14);

    private static Judged.Visit visit(String name) {
        return new Judged.Visit("a.yaml", Inspection.of("elm-hall", name, DAY, List.of()), DAY, List.of());
    }

    private static final Decided DEFERRED = new Decided(
            "cutoff.old", "B1", "LW-1", Decision.DEFERRED, "@owner", DAY.plusDays(2), "=1+1\nnext \"year\", perhaps");

    private static final List<List<WorkLine>> WORK = List.of(List.of(
            new WorkLine(
                    1,
                    "B1",
                    Urgency.STOP,
                    "",
                    "Take the jumper out.",
                    List.of(),
                    "",
                    List.of(new Ref("cutoff.bypassed", "")),
                    List.of("The cutoff is bypassed"),
                    List.of(),
                    List.of(),
                    List.of()),
            new WorkLine(
                    2,
                    "B1",
                    Urgency.PLAN,
                    "replace-cutoff",
                    "Replace the low-water cutoff",
                    List.of("low-water cutoff LW-1", "low-water cutoff =LW-2"),
                    "low-water cutoffs LW-1, =LW-2",
                    List.of(new Ref("cutoff.old", "LW-1"), new Ref("cutoff.old", "=LW-2")),
                    List.of("It is old (low-water cutoff LW-1)", "It is old (low-water cutoff =LW-2)"),
                    List.of(
                            new WorkLine.Part("cutoff, kind float", List.of("LW-1", "=LW-2")),
                            new WorkLine.Part("=gasket", List.of("LW-1"))),
                    List.of("meter"),
                    List.of(new WorkLine.Decision("It is old, low-water cutoff LW-1", DEFERRED)))));

    private static void golden(String name, String text) throws IOException {
        Path golden = Reports.FOLDER.resolve(name);
        if (Boolean.getBoolean("regenerate")) {
            Files.writeString(golden, text);
        }
        assertThat(text).isEqualTo(Files.readString(golden));
    }

    @Test
    void the_table_is_as_it_was_agreed() throws Exception {
        golden("work.csv", WorkListFiles.csv(visit("+Elm Hall"), WORK));
    }

    @Test
    void the_json_is_as_it_was_agreed() throws Exception {
        golden("work.json", json());
    }

    private static String json() {
        return WorkListFiles.json(
                visit("+Elm Hall"),
                new TreeMap<>(Map.of(
                        "packs",
                        List.of(),
                        "rulebook",
                        new TreeMap<>(Map.of("hash", "0".repeat(64), "name", "standard practice", "version", "1")))),
                WORK);
    }

    private static List<Error> wrong(String json) throws IOException {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(Path.of("../docs/schema/work.schema.json")), InputFormat.JSON)
                .validate(
                        json,
                        InputFormat.JSON,
                        run -> run.executionConfig(config -> config.formatAssertionsEnabled(true)));
    }

    @Test
    void the_json_keeps_to_the_published_schema_and_another_key_or_word_would_be_noticed() throws Exception {
        assertThat(wrong(json())).isEmpty();
        for (PaperSize size : PaperSize.values()) {
            for (String text : List.of(Reports.text(Reports.NEGLECTED), Reports.longVisit())) {
                assertThat(wrong(Reports.report(text, Reader.OWNER, size).workAsJson()))
                        .isEmpty();
            }
        }
        for (String[] other : new String[][] {
            {"\"urgency\" : \"stop\"", "\"urgency\" : \"bad\""},
            {"\"parts\"", "\"pieces\""},
            {"\"takeAlong\"", "\"tools\""},
            {"\"number\" : 2", "\"number\" : 0"},
            {"\"visited\" : \"2026-09-14\"", "\"visited\" : \"soon\""},
            {"\"decision\" : \"deferred\"", "\"decision\" : \"safe\""},
            {"\"remedy\" : \"replace-cutoff\"", "\"remedy\" : \"replace cutoff\""}
        }) {
            assertThat(json()).contains(other[0]);
            assertThat(wrong(json().replaceFirst(Pattern.quote(other[0]), other[1])))
                    .as(other[1])
                    .isNotEmpty();
        }
    }

    @Test
    void a_reader_of_tables_finds_a_heading_for_each_cell_and_no_formula() {
        List<CsvRecord> records;
        try (CsvReader<CsvRecord> csv = CsvReader.builder()
                .detectBomHeader(false)
                .ofCsvRecord(WorkListFiles.csv(visit("+Elm Hall"), WORK).substring(1))) {
            records = csv.stream().toList();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }

        assertThat(records).hasSize(3);
        for (CsvRecord one : records) {
            assertThat(one.getFieldCount()).isEqualTo(records.get(0).getFieldCount());
            assertThat(one.getFields()).allMatch(cell -> cell.isEmpty() || "=+-@\t\r".indexOf(cell.charAt(0)) < 0);
        }
        assertThat(records.get(1).getField(0)).isEqualTo("'+Elm Hall");
        assertThat(records.get(2).getFields()).contains("'@owner", "'=1+1 next \"year\", perhaps");
    }

    /** The beginnings that OWASP's page on CSV injection names, and their wide forms; each also after blanks. */
    @ParameterizedTest
    @ValueSource(strings = {"=1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "  =1", "\n=1", "\uFF1D1", "|cmd", "%0A=1"})
    void what_a_spreadsheet_could_take_for_a_formula_is_defused(String text) {
        assertThat(Csv.harmless(text)).startsWith("'");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Elm Hall", "2026-09-14", "1", "a=b", "", "(-)"})
    void what_is_none_stays_as_it_is(String text) {
        assertThat(Csv.harmless(text)).isEqualTo(text);
    }
}
