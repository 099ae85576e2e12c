package gaugeglass.steam;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.Assessment;
import gaugeglass.engine.Assessment.Due;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.observation.Inspection.Visited;
import gaugeglass.engine.observation.InspectionReader;
import gaugeglass.engine.reading.SourceText;
import gaugeglass.steam.proof.SteamProof;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.Period;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The look ahead at what falls due says nothing that the rules, asked on that day, do not say. */
class AgeingTest {
    private static final Path EXAMPLES = Path.of("../docs/examples");
    private static final Rulebook RULEBOOK = Rulebook.load(AgeingTest.class.getClassLoader());

    /** The examples, and a visit on which every dated answer is given that a rule waits on. */
    private static List<Visited> visited() throws IOException {
        InspectionReader reader = new InspectionReader(RULEBOOK.vocabulary());
        try (Stream<Path> files = Files.list(EXAMPLES)) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .flatMap(file -> reader.read(file.toString(), SourceText.read(file)).units().stream())
                    .toList();
        }
    }

    private static boolean isFound(Visited visited, Due due, LocalDate day) {
        Assessment then = RULEBOOK.assess(visited.observations(), day);
        return then.findings().stream()
                .anyMatch(finding -> finding.isStanding()
                        && finding.rule().equals(due.rule())
                        && finding.subject().equals(due.subject())
                        && finding.limits().stream()
                                .anyMatch(limit -> limit.id().equals(due.limit())));
    }

    @Test
    void each_is_found_on_its_day_and_not_by_that_limit_the_day_before() throws IOException {
        Set<String> met = new TreeSet<>();
        for (Visited visited : visited()) {
            for (Due due : RULEBOOK.due(visited.observations())) {
                if (due.day().isEmpty()) {
                    continue;
                }
                LocalDate day = due.day().get();
                assertThat(isFound(visited, due, day)).as("%s on %s", due, day).isTrue();
                assertThat(isFound(visited, due, day.minusDays(1)))
                        .as("%s the day before", due)
                        .isFalse();
                met.add(due.limit());
            }
        }
        assertThat(met)
                .contains(
                        "cutoff.float-service-life",
                        "relief.lever-interval",
                        "relief.pressure-interval",
                        "siphon.cleaning-interval",
                        "cutoff.opening-interval");
    }

    @Test
    void every_rule_that_sets_a_date_against_today_is_looked_at() {
        Set<String> written = new HashSet<>();
        Pattern rule = Pattern.compile("(?m)^rule \"([^\"]+)\"(.*?)^end", Pattern.DOTALL);
        SteamProof.texts().forEach((file, text) -> {
            if (file.endsWith(".drl")) {
                rule.matcher(text)
                        .results()
                        .filter(found -> found.group(2).contains("$today.minus("))
                        .forEach(found -> written.add(found.group(1)));
            }
        });
        Set<String> spans = new HashSet<>();
        RULEBOOK.book().rules().stream()
                .filter(entry -> entry.limits().stream()
                        .anyMatch(id -> RULEBOOK.book().limits().get(id).value() instanceof Period))
                .forEach(entry -> spans.add(entry.name()));

        assertThat(written).isNotEmpty().isSubsetOf(spans);
    }
}
