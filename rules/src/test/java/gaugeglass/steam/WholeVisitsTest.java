package gaugeglass.steam;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.Assessment;
import gaugeglass.engine.Assessment.Cause;
import gaugeglass.engine.Assessment.Finding;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.InspectionReader;
import gaugeglass.engine.reading.Node;
import gaugeglass.engine.reading.NodeReader;
import gaugeglass.engine.reading.NodeWriter;
import gaugeglass.engine.reading.SourceText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Whole visits, each with figures worked by hand from published ones that stand at the head of its file.
 *
 * <p>A visit is the sound example, where everything was looked at, with what is different laid over it: groups key by
 * key, equipment by its tag, anything else in the place of what stood there. What must come of it was written down from the figures, and
 * stands in the {@code .expect.yaml} beside it: both permits, the findings that must be there with their urgency,
 * those that must not, every finding that forbids firing, and the likely cause that must come first.
 */
class WholeVisitsTest {
    private static final Path FOLDER = Path.of("src/test/resources/visits");
    private static final Path EXAMPLES = Path.of("../docs/examples");

    /** One pipe and gravity; {@code over} at the head of a visit names another example. */
    private static final String SOUND = "well-kept-church";

    /** Stands for an answer, or in a piece of equipment as a key, that the visit does not have. */
    private static final String LEFT_OUT = "left out";

    private static final Rulebook RULEBOOK = Rulebook.load(WholeVisitsTest.class.getClassLoader());

    private static List<Path> visits() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.filter(file -> file.toString().endsWith(".yaml")
                            && !file.toString().endsWith(".expect.yaml"))
                    .sorted()
                    .toList();
        }
    }

    private static Path expectation(Path visit) {
        return visit.resolveSibling(visit.getFileName().toString().replace(".yaml", ".expect.yaml"));
    }

    private static Object tree(Path file) {
        return tree(NodeReader.read(file.toString(), SourceText.read(file), new ArrayList<>()));
    }

    private static Object tree(Node node) {
        if (node instanceof Node.Fields fields) {
            Map<String, Object> all = new LinkedHashMap<>();
            fields.all().forEach((key, field) -> all.put(key, tree(field.value())));
            return all;
        }
        if (node instanceof Node.Items items) {
            List<Object> all = new ArrayList<>();
            items.all().forEach(one -> all.add(tree(one)));
            return all;
        }
        Node.Scalar scalar = (Node.Scalar) node;
        return !scalar.isQuoted() && scalar.text().matches("[0-9]{1,9}")
                ? (Object) Integer.valueOf(scalar.text())
                : scalar.text();
    }

    /** One tree laid over another. */
    @SuppressWarnings("unchecked")
    private static Object over(Object base, Object change) {
        if (base instanceof Map<?, ?> below && change instanceof Map<?, ?> above && !above.containsKey("unread")) {
            Map<String, Object> all = new LinkedHashMap<>((Map<String, Object>) below);
            above.forEach((key, value) -> all.merge((String) key, value, WholeVisitsTest::over));
            // What is said to be gone is not there.
            all.values().removeIf(LEFT_OUT::equals);
            return all;
        }
        if (base instanceof List<?> below && change instanceof List<?> above) {
            Map<Object, Object> byTag = new LinkedHashMap<>();
            below.forEach(one -> byTag.put(tag(one), one));
            above.forEach(one -> byTag.merge(tag(one), one, WholeVisitsTest::over));
            byTag.values().removeIf(one -> ((Map<?, ?>) one).containsKey(LEFT_OUT));
            return new ArrayList<>(byTag.values());
        }
        return change;
    }

    private static Object tag(Object one) {
        Map<?, ?> fields = (Map<?, ?>) one;
        return fields.containsKey("tag") ? fields.get("tag") : fields.get("id");
    }

    private static Inspection read(Path file) {
        Map<Object, Object> change = new LinkedHashMap<>((Map<?, ?>) tree(file));
        Object base = change.containsKey("over") ? change.remove("over") : SOUND;
        Object whole = over(tree(EXAMPLES.resolve(base + ".yaml")), change);
        return new InspectionReader(RULEBOOK.vocabulary()).read(file + ".json", NodeWriter.pretty(whole));
    }

    private static Assessment assess(Path file) {
        Inspection inspection = read(file);
        return RULEBOOK.assess(inspection.units().get(0).observations(), inspection.date());
    }

    private static String named(String rule, String subject) {
        return subject.isEmpty() ? rule : rule + ":" + subject;
    }

    @TestFactory
    Stream<DynamicTest> every_visit_comes_to_what_its_figures_say() throws IOException {
        return visits().stream()
                .map(file -> DynamicTest.dynamicTest(
                        file.getFileName().toString(),
                        () -> comesTo(assess(file), (Map<?, ?>) tree(expectation(file)))));
    }

    private static void comesTo(Assessment assessment, Map<?, ?> expected) {
        Set<Object> known = Set.of("test-firing", "release", "stops", "found", "not-found", "put-right", "first-cause");
        expected.keySet().forEach(key -> assertThat(known).contains(key));
        Map<String, Finding> found = new LinkedHashMap<>();
        Set<String> stops = new TreeSet<>();
        for (Finding finding : assessment.findings()) {
            String name = named(finding.rule(), finding.subject());
            found.put(name, finding);
            if (finding.isStanding() && finding.urgency().word().equals("stop")) {
                stops.add(name);
            }
        }
        assertThat(List.<Object>copyOf(stops)).as("what forbids firing").isEqualTo(expected.get("stops"));
        texts(expected, "found").forEach((name, urgency) -> assertThat(found)
                .as("%s must stand", name)
                .hasEntrySatisfying(
                        (String) name, one -> assertThat(one.urgency().word() + " " + one.isStanding())
                                .isEqualTo(urgency + " true")));
        for (Object name : (List<?>) expected.get("not-found")) {
            assertThat(RULEBOOK.book().cards())
                    .as("an id that is misspelt is never found")
                    .containsKey(name.toString().replaceFirst(":.*", ""));
            assertThat(found.keySet())
                    .as("what must not be found")
                    .noneMatch(one -> one.equals(name) || one.startsWith(name + ":"));
        }
        if (expected.containsKey("put-right")) {
            for (Object name : (List<?>) expected.get("put-right")) {
                assertThat(found.get(name).isStanding())
                        .as("%s was put right", name)
                        .isFalse();
            }
        }
        assertThat(assessment.testFiring().permit().word()).as("test firing").isEqualTo(expected.get("test-firing"));
        assertThat(assessment.release().permit().word()).as("release").isEqualTo(expected.get("release"));
        List<String> causes = assessment.diagnoses().stream()
                .map(cause -> named(cause.id(), cause.subject()))
                .toList();
        assertThat(causes.isEmpty() ? "none" : causes.get(0))
                .as(
                        "the first of %s",
                        assessment.diagnoses().stream().map(Cause::cause).toList())
                .isEqualTo(expected.get("first-cause"));
    }

    private static Map<?, ?> texts(Map<?, ?> expected, String key) {
        return expected.containsKey(key) ? (Map<?, ?>) expected.get(key) : Map.of();
    }

    @Test
    void each_has_its_figures_at_its_head_and_its_expectation_beside_it() throws IOException {
        for (Path file : visits()) {
            List<String> head = Files.readAllLines(file).stream()
                    .takeWhile(line -> line.startsWith("#"))
                    .toList();
            assertThat(head).as(file + ": figures").hasSizeGreaterThanOrEqualTo(5);
            assertThat(head.get(0)).as(file.toString()).startsWith("# An invented visit");
            assertThat(expectation(file)).exists();
        }
    }

    @Test
    void they_are_laid_over_a_visit_that_finds_nothing_and_each_changes_it() throws IOException {
        Inspection sound = new InspectionReader(RULEBOOK.vocabulary())
                .read("sound", SourceText.read(EXAMPLES.resolve(SOUND + ".yaml")));

        assertThat(RULEBOOK.assess(sound.units().get(0).observations(), sound.date())
                        .findings())
                .isEmpty();
        for (Path file : visits()) {
            assertThat(read(file)
                            .units()
                            .get(0)
                            .observations()
                            .equals(sound.units().get(0).observations()))
                    .as(file.toString())
                    .isFalse();
        }
    }
}
