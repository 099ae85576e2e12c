package gaugeglass.cli.walk;

import static gaugeglass.cli.walk.Walked.FULL;
import static gaugeglass.cli.walk.Walked.begun;
import static gaugeglass.cli.walk.Walked.church;
import static gaugeglass.cli.walk.Walked.facts;
import static gaugeglass.cli.walk.Walked.unit;
import static gaugeglass.cli.walk.Walked.walk;
import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.observation.InspectionWriter;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Walks in processes of their own, killed at random moments, as when a battery dies.
 *
 * <p>Ten kills each time; {@code -Dkills=200} for as many as wanted, about two seconds each.
 */
class KilledWalkTest {
    private static final String SCREEN = KilledWalk.SCREEN;
    private static final int KILLS = Integer.getInteger("kills", 10);

    @TempDir
    Path folder;

    @Test
    void killed_at_any_moment_it_has_every_confirmed_answer_and_goes_on_where_it_was() throws Exception {
        Random random = new Random(20260914);
        int walks = 0;
        int inTheMiddle = 0;
        Path path = folder.resolve("visit-0.yaml");
        walk(FULL, begun(), path);
        for (int kill = 0; kill < KILLS; kill++) {
            List<Typist.Screen> left = Typist.screens(FULL, church(), unit(path));
            if (left.isEmpty()) {
                walks++;
                path = folder.resolve("visit-" + walks + ".yaml");
                walk(FULL, begun(), path);
                left = Typist.screens(FULL, church(), unit(path));
            }
            Map<String, String> before = facts(unit(path));
            int confirmed = confirmedUntilKilled(path, left, random.nextInt(9), random.nextInt(60));
            Map<String, String> after = facts(unit(path));
            assertThat(after.entrySet())
                    .as("kill %d, %d screens confirmed", kill, confirmed)
                    .containsAll(before.entrySet());
            if (confirmed > 0) {
                assertThat(after.entrySet())
                        .as("kill %d, %d screens confirmed", kill, confirmed)
                        .containsAll(facts(left.get(Math.min(confirmed, left.size()) - 1)
                                        .after())
                                .entrySet());
            }
            assertThat(facts(left.get(left.size() - 1).after()).entrySet())
                    .as("what was typed and nothing else")
                    .containsAll(after.entrySet());
            // Cut off it is not: each save puts a whole file in the place of the one before.
            assertThat(Files.readString(path).stripTrailing()).endsWith(InspectionWriter.LAST_LINE);
            inTheMiddle += confirmed > 0 && confirmed < left.size() ? 1 : 0;
        }
        assertThat(inTheMiddle).as("kills in the middle of a walk").isPositive();
    }

    /** Starts a walk, types everything, kills it so long after so many screens, and counts the screens confirmed. */
    private static int confirmedUntilKilled(Path path, List<Typist.Screen> left, int after, int millis)
            throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("java.class.path"),
                        KilledWalk.class.getName(),
                        path.toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        int screens = 0;
        try (BufferedReader out =
                        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
                Writer in = new OutputStreamWriter(process.getOutputStream(), StandardCharsets.UTF_8)) {
            in.write(String.join("\n", Typist.lines(left)) + "\n\n");
            // Closed, so that a walk that wants more than was typed ends rather than waits.
            in.close();
            assertThat(out.readLine()).as("the first screen").isEqualTo(SCREEN);
            // A screen that is shown confirms the one before it.
            while (screens < after && SCREEN.equals(out.readLine())) {
                screens++;
            }
            Thread.sleep(millis);
            // SIGKILL: nothing of the process runs after it.
            process.destroyForcibly().waitFor();
            for (String line = out.readLine(); line != null; line = out.readLine()) {
                screens += line.equals(SCREEN) ? 1 : 0;
            }
        } catch (IOException e) {
            // The pipe to a killed process breaks when it is closed; what it had told was read before.
            assertThat(process.isAlive()).isFalse();
        }
        return screens;
    }
}
