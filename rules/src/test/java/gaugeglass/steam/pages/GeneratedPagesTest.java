package gaugeglass.steam.pages;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.Rulebook;
import gaugeglass.engine.observation.InspectionSchema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The pages and schemas made from the rulebook are those in the tree; a stale one is a red build.
 *
 * <p>{@code mvn -q -pl rules -am test -Dtest=GeneratedPagesTest -Dsurefire.failIfNoSpecifiedTests=false
 * -Dregenerate=true} writes them anew.
 */
class GeneratedPagesTest {
    private static final Path DOCS = Path.of("../docs");

    private final Rulebook rulebook = Rulebook.load(GeneratedPagesTest.class.getClassLoader());

    private Map<Path, String> pages() {
        Map<Path, String> pages = new LinkedHashMap<>();
        pages.put(DOCS.resolve("schema/inspection.schema.json"), InspectionSchema.of(rulebook.vocabulary()));
        RulebookPages made = new RulebookPages(rulebook.book());
        made.pages().forEach((name, text) -> pages.put(DOCS.resolve("rulebook").resolve(name), text));
        pages.put(DOCS.resolve("sources.md"), made.sources());
        return pages;
    }

    @Test
    void every_generated_page_is_current() throws IOException {
        for (Map.Entry<Path, String> page : pages().entrySet()) {
            if (Boolean.getBoolean("regenerate")) {
                Files.createDirectories(page.getKey().getParent());
                Files.writeString(page.getKey(), page.getValue());
            }
            assertThat(page.getKey()).exists();
            assertThat(Files.readString(page.getKey()))
                    .as(page.getKey().toString())
                    .isEqualTo(page.getValue());
        }
    }

    @Test
    void no_page_is_left_of_a_subject_that_is_no_more() throws IOException {
        Set<Path> made = new LinkedHashSet<>(pages().keySet());
        try (Stream<Path> there = Files.list(DOCS.resolve("rulebook"))) {
            assertThat(there.toList()).isSubsetOf(made);
        }
    }
}
