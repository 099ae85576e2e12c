package gaugeglass.steam;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.InspectionReader;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The page about the inspection file shows one that is read. */
class InspectionFilePageTest {
    @Test
    void the_example_on_the_page_is_read() throws IOException {
        String page = Files.readString(Path.of("../docs/inspection-file.md"));
        int start = page.indexOf("```yaml\n") + "```yaml\n".length();
        String example = page.substring(start, page.indexOf("```", start));

        Inspection visit =
                new InspectionReader(Vocabulary.of(new SteamTrade())).read("docs/inspection-file.md", example);

        assertThat(visit.units()).hasSize(1);
        assertThat(visit.units().get(0).observations().roster("cutoff").tags(State.AS_LEFT))
                .containsExactly("LWC-1", "LWC-2");
        assertThat(visit.earlier()).hasSize(1);
    }
}
