package gaugeglass.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Real JSON results, held against the published schema by the validator of another house. */
class JsonFormTest {
    private static final Path EXAMPLES = Path.of("../docs/examples");
    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Ran.of("schema", "assessment").out(), InputFormat.JSON);

    private static final String FULL = """
            format: 1
            site: {id: elm-hall, name: Elm Hall, gas-smell: smelled, drainage: {value: takes-water, note: a puddle}}
            visit: {date: 2026-09-14, by: P. Example}
            boilers:
              - id: B1
                name: North
                safety-valves: {fitted: 0}
                cutoffs:
                  fitted: 2
                  each:
                    - {tag: A, kind: float, installed: 2005}
                disputed:
                  - {rule: site.gas-odour, because: the drain smells}
              - id: B2
            """;

    @TempDir
    private Path folder;

    private static List<Error> wrong(String json) {
        return SCHEMA.validate(json, InputFormat.JSON);
    }

    @Test
    void one_visit_with_everything_in_it() {
        Ran ran = Ran.withInput(FULL, "assess", "-", "--as", "json");

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("\"urgency\" : \"stop\"", "\"disputed\" : \"the drain smells\"");
        assertThat(wrong(ran.out())).isEmpty();
    }

    @Test
    void every_example_a_folder_and_a_file_of_no_use() throws IOException {
        Files.writeString(folder.resolve("a.yaml"), FULL);
        Files.writeString(folder.resolve("b.yaml"), "nonsense");

        Ran array = Ran.of("assess", folder.toString(), "--as", "json");
        Ran lines = Ran.of("assess", folder.toString(), "--as", "jsonl");

        assertThat(array.out()).startsWith("[").contains("\"error\"");
        assertThat(wrong(array.out())).isEmpty();
        assertThat(lines.out().lines()).hasSize(2).allSatisfy(line -> assertThat(wrong(line))
                .isEmpty());
        if (Files.isDirectory(EXAMPLES)) {
            try (Stream<Path> files = Files.list(EXAMPLES)) {
                for (Path file : files.toList()) {
                    Ran ran = Ran.of("assess", file.toString(), "--as", "json");
                    assertThat(wrong(ran.out())).as(file.toString()).isEmpty();
                }
            }
        }
    }

    @Test
    void a_key_too_many_or_another_word_would_be_noticed() {
        String json = Ran.withInput(FULL, "assess", "-", "--as", "json").out();

        assertThat(wrong(json.replaceFirst("\"state\" : \"standing\"", "\"state\" : \"fine\"")))
                .isNotEmpty();
        assertThat(wrong(json.replaceFirst("\"format\" : 1", "\"format\" : 1, \"more\" : 1")))
                .isNotEmpty();
        assertThat(wrong(json.replaceFirst("\"testFiring\" : \"[a-z-]+\"", "\"testFiring\" : \"safe\"")))
                .isNotEmpty();
    }
}
