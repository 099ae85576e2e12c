package gaugeglass.checklists;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.reading.Node;
import gaugeglass.engine.reading.NodeReader;
import gaugeglass.engine.reading.NodeWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The published schema of checklist files is the one made from the vocabulary, and agrees with the files.
 *
 * <p>{@code mvn -q -pl checklists -am test -Dtest=ChecklistSchemaTest -Dsurefire.failIfNoSpecifiedTests=false
 * -Dregenerate=true} writes it anew.
 */
class ChecklistSchemaTest {
    private static final Path PUBLISHED = Path.of("../docs/schema/checklists.schema.json");
    private static final Path FILES = Path.of("src/main/checklists");
    private static final Rulebook RULEBOOK = Rulebook.load(ChecklistSchemaTest.class.getClassLoader());
    private static final String MADE =
            ChecklistSchema.of(RULEBOOK.vocabulary(), RULEBOOK.book().cautions().keySet());
    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(MADE, InputFormat.JSON);

    private static List<?> wrongs(String yaml) {
        Node node = NodeReader.read("file", yaml, new ArrayList<>());
        return SCHEMA.validate(NodeWriter.line(plain(node)), InputFormat.JSON);
    }

    private static Object plain(Node node) {
        if (node instanceof Node.Fields fields) {
            Map<String, Object> map = new LinkedHashMap<>();
            fields.all().forEach((key, field) -> map.put(key, plain(field.value())));
            return map;
        }
        if (node instanceof Node.Items items) {
            return items.all().stream().map(ChecklistSchemaTest::plain).toList();
        }
        return ((Node.Scalar) node).text();
    }

    @Test
    void the_published_schema_is_current() throws IOException {
        if (Boolean.getBoolean("regenerate")) {
            Files.writeString(PUBLISHED, MADE);
        }
        assertThat(Files.readString(PUBLISHED)).isEqualTo(MADE);
    }

    @Test
    void every_file_of_the_checklists_agrees_with_it() throws IOException {
        try (Stream<Path> files = Files.list(FILES)) {
            List<Path> all =
                    files.filter(file -> file.toString().endsWith(".yaml")).toList();
            assertThat(all).hasSizeGreaterThan(4);
            for (Path file : all) {
                assertThat(wrongs(Files.readString(file))).as(file.toString()).isEmpty();
            }
        }
    }

    @Test
    void what_the_reader_refuses_of_a_file_alone_it_refuses_too() {
        assertThat(wrongs("questions: [{id: a, gives: cutoff.kind}]")).isEmpty();
        assertThat(wrongs("questions: [{id: a, gives: cutoff.knd}]")).isNotEmpty();
        assertThat(wrongs("questions: [{id: a, gives: cutoff.kind, choises: {}}]"))
                .isNotEmpty();
        assertThat(wrongs("questions: [{id: a, gives: cutoff.kind, caution: ghosts}]"))
                .isNotEmpty();
        assertThat(wrongs("questions: [{id: a, gives: cutoff.kind, ask-when: {cutoff.knd: [float]}}]"))
                .isNotEmpty();
        assertThat(wrongs("questions: [{id: a, gives: cutoff.kind, take: guesses}]"))
                .isNotEmpty();
        assertThat(wrongs("panels: [{id: a, title: A, parts: [one]}]")).isNotEmpty();
        assertThat(wrongs("panels: [{id: a, title: A, parts: [one, two]}]")).isEmpty();
        assertThat(wrongs("sections: [{id: a, title: A, stage: later, questions: [one]}]"))
                .isNotEmpty();
        assertThat(wrongs("sections: [{id: a, title: A, stage: cold, each: boiler, questions: [one]}]"))
                .isNotEmpty();
        assertThat(wrongs("checklists: [{id: a, title: A, system: any, sections: [one]}]"))
                .isNotEmpty();
        assertThat(wrongs("panels: []\nsections: []")).isNotEmpty();
    }
}
