package gaugeglass.engine.observation;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.reading.SourceText;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import gaugeglass.engine.toy.Bicycles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Spoiled inspections, each with the messages it must give beside it.
 *
 * <p>With {@code -Dregenerate=true} the messages are written anew; look at the difference before committing it.
 */
class MistakesCorpusTest {
    static final Path FOLDER = Path.of("src/test/resources/mistakes");
    private static final InspectionReader READER = new InspectionReader(Bicycles.vocabulary());

    private static List<Path> spoiled() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.filter(file ->
                            file.toString().endsWith(".yaml") || file.toString().endsWith(".json"))
                    .sorted()
                    .toList();
        }
    }

    private static String messages(Path file) {
        try {
            READER.read(file.getFileName().toString(), SourceText.read(file));
            return "";
        } catch (Mistakes e) {
            // The folder is cut off, so that the messages are the same on every machine.
            return e.all().stream()
                    .map(Mistake::message)
                    .map(message -> message.replace(
                            FOLDER.toString() + FOLDER.getFileSystem().getSeparator(), ""))
                    .collect(Collectors.joining("\n", "", "\n"));
        }
    }

    @TestFactory
    Stream<DynamicTest> every_spoiled_file_gives_its_messages() throws IOException {
        return spoiled().stream()
                .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> {
                    Path golden = FOLDER.resolve(file.getFileName() + ".expected");
                    String messages = messages(file);
                    assertThat(messages).as("a spoiled file must not be read").isNotEmpty();
                    if (Boolean.getBoolean("regenerate")) {
                        Files.writeString(golden, messages);
                    }
                    assertThat(golden).exists();
                    assertThat(messages).isEqualTo(Files.readString(golden));
                }));
    }

    @Test
    void no_message_holds_a_control_character_or_a_word_of_a_programmer() throws IOException {
        for (Path file : spoiled()) {
            assertThat(messages(file))
                    .as(file.toString())
                    .doesNotContainPattern("[\\p{Cntrl}&&[^\\n]]")
                    .doesNotContainPattern("Exception|snakeyaml|jackson|<block|null|token");
        }
    }
}
