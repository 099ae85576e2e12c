package gaugeglass.engine.observation;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import gaugeglass.engine.reading.Node;
import gaugeglass.engine.reading.NodeReader;
import gaugeglass.engine.reading.NodeWriter;
import gaugeglass.engine.reading.SourceText;
import gaugeglass.engine.text.Mistakes;
import gaugeglass.engine.toy.Bicycles;
import gaugeglass.engine.toy.RandomVisits;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The schema beside the reader, judged by a validator of another house (networknt json-schema-validator). */
class InspectionSchemaTest {
    private static final Vocabulary VOCABULARY = Bicycles.vocabulary();
    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(InspectionSchema.of(VOCABULARY), InputFormat.JSON);

    /**
     * Spoiled files of the corpus that the schema lets pass, each because JSON Schema has no words for its rule. Where
     * one leaves this list the schema has become stricter; where one joins it, laxer.
     */
    private static final List<String> LET_PASS = List.of(
            "alias.yaml",
            "as-left-of-what-was-taken-out.yaml",
            "curly-quote-unclosed.yaml",
            "cut-off-between-lines.yaml",
            "date-after-the-visit.yaml",
            "decimal-comma.yaml",
            "doubled-group.yaml",
            "doubled-key.json",
            "doubled-key.yaml",
            "doubled-tag.yaml",
            "doubled-unit-id.yaml",
            "impossible-date.yaml",
            "impossible-visit-date.yaml",
            "more-described-than-fitted.yaml",
            "no-tag.yaml",
            "two-answers-of-what-was-put-in.yaml",
            "unknown-unit.yaml",
            "wrong-unit.yaml");

    private static List<String> errors(String text, InputFormat format) {
        return SCHEMA.validate(text, format).stream().map(Object::toString).toList();
    }

    @Test
    void the_schema_is_itself_sound() {
        Schema meta = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(com.networknt.schema.SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertThat(meta.validate(InspectionSchema.of(VOCABULARY), InputFormat.JSON))
                .isEmpty();
    }

    @Test
    void every_group_is_closed() {
        String text = InspectionSchema.of(VOCABULARY);
        assertThat(text.split("\"type\" : \"object\"", -1))
                .hasSameSizeAs(text.split("\"additionalProperties\" : false", -1))
                .hasSizeGreaterThan(10);
    }

    @Test
    void every_question_is_described_in_its_own_words() {
        String text = InspectionSchema.of(VOCABULARY);
        VOCABULARY.items().stream().filter(item -> !item.isReckoned()).forEach(item -> assertThat(text)
                .contains("\"description\" : \"" + item.ask() + "\""));
    }

    @Test
    void every_sound_sample_passes() {
        assertThat(errors(Samples.text("full.yaml"), InputFormat.YAML)).isEmpty();
        assertThat(errors(Samples.text("full.json"), InputFormat.JSON)).isEmpty();
    }

    @Test
    void a_blank_form_passes() {
        String blank = BlankInspection.of(VOCABULARY, "a", RandomVisits.DAY)
                .unit("R1")
                .entries("wheel", 2)
                .entries("brake", 1)
                .write();
        assertThat(errors(blank, InputFormat.YAML)).isEmpty();
    }

    @Test
    void what_the_writer_writes_passes() {
        InspectionWriter writer = new InspectionWriter(VOCABULARY);
        for (long seed = 0; seed < 100; seed++) {
            Observations random = new RandomVisits(VOCABULARY, seed).next("R1");
            String text =
                    writer.write(Inspection.of("a", "", RandomVisits.DAY, List.of(new Inspection.Visited("", random))));
            String json = NodeWriter.line(plain(NodeReader.read("f", text, new ArrayList<>())));
            assertThat(errors(json, InputFormat.JSON))
                    .as("seed %s:%n%s", seed, text)
                    .isEmpty();
        }
    }

    /** As another reader of YAML takes it: a bare whole number is a number. */
    private static Object plain(Node node) {
        if (node instanceof Node.Fields fields) {
            Map<String, Object> all = new LinkedHashMap<>();
            fields.all().forEach((key, field) -> all.put(key, plain(field.value())));
            return all;
        }
        if (node instanceof Node.Items items) {
            return items.all().stream().map(InspectionSchemaTest::plain).toList();
        }
        Node.Scalar scalar = (Node.Scalar) node;
        return !scalar.isQuoted() && scalar.text().matches("[1-9][0-9]{0,8}|0")
                ? Integer.valueOf(scalar.text())
                : scalar.text();
    }

    /** Only spellings of the same word are taken by the reader and refused by the schema. */
    @Test
    void the_schema_asks_for_the_words_as_listed() {
        String text = Samples.text("full.yaml").replace("material: steel", "material: Steel");
        new InspectionReader(VOCABULARY).read("f", text);
        assertThat(errors(text, InputFormat.YAML)).isNotEmpty();
    }

    @Test
    void spoiled_files_fail_but_for_those_it_has_no_words_for() throws IOException {
        TreeSet<String> passed = new TreeSet<>();
        int failed = 0;
        for (Path file : spoiled()) {
            String text;
            try {
                text = SourceText.read(file);
            } catch (Mistakes e) {
                continue;
            }
            boolean isJson = file.toString().endsWith(".json");
            boolean fails;
            try {
                fails = !errors(text, isJson ? InputFormat.JSON : InputFormat.YAML)
                        .isEmpty();
            } catch (RuntimeException e) {
                // What is no YAML or JSON never reaches the schema.
                continue;
            }
            if (fails) {
                failed++;
            } else {
                passed.add(file.getFileName().toString());
            }
        }
        assertThat(passed).containsExactlyElementsOf(new TreeSet<>(LET_PASS));
        assertThat(failed).isGreaterThan(40);
    }

    private static List<Path> spoiled() throws IOException {
        try (Stream<Path> files = Files.list(MistakesCorpusTest.FOLDER)) {
            return files.filter(file ->
                            file.toString().endsWith(".yaml") || file.toString().endsWith(".json"))
                    .sorted()
                    .toList();
        }
    }
}
