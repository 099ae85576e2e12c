package gaugeglass.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What the README shows is what the program prints. */
class ReadmeTest {
    private static final Path ROOT = Path.of("..");

    private static List<String> shown() throws IOException {
        return Pattern.compile("```text\n(.*?)\n```", Pattern.DOTALL)
                .matcher(Files.readString(ROOT.resolve("README.md")))
                .results()
                .map(found -> found.group(1))
                .toList();
    }

    private static String printed(String example) {
        return Ran.of("assess", ROOT.resolve("docs/examples").resolve(example).toString())
                .out();
    }

    @Test
    void the_readme_shows_how_the_neglected_hall_begins() throws IOException {
        assertThat(printed("neglected-hall.yaml")).startsWith(shown().get(0));
    }

    @Test
    void the_readme_shows_the_whole_of_the_removed_jumper() throws IOException {
        assertThat(printed("jumper-removed.yaml").strip())
                .isEqualTo(shown().get(1).strip());
    }
}
