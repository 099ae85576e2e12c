package gaugeglass.steam;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.book.Card;
import gaugeglass.engine.build.Scenario;
import gaugeglass.steam.proof.SteamProof;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The checks that the rulebook promised once, against those that it has. */
class EveryPracticeTest {
    private static final Path LIST = Path.of("src/test/resources/practices.txt");

    private static List<String> promised() throws IOException {
        return Files.readAllLines(LIST).stream()
                .filter(line -> !line.isBlank() && line.charAt(0) != '#')
                .toList();
    }

    @Test
    void every_promised_check_is_in_the_rulebook_with_scenarios() throws IOException {
        Map<String, Card> cards = SteamProof.stored().book().cards();
        Set<String> proven = SteamProof.scenarios().stream().map(Scenario::card).collect(Collectors.toSet());
        assertThat(promised()).hasSizeGreaterThan(100).allSatisfy(id -> {
            assertThat(cards).containsKey(id);
            assertThat(cards.get(id).sign()).isFalse();
            assertThat(proven).contains(id);
        });
    }

    @Test
    void each_stands_once_and_in_order() throws IOException {
        assertThat(promised()).isSorted().doesNotHaveDuplicates();
    }
}
