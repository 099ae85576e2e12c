package gaugeglass.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a cold start does not load. */
class LeanStartTest {
    @TempDir
    private Path folder;

    @Test
    void an_assessment_without_packs_loads_no_class_of_them() throws IOException, InterruptedException {
        Path loaded = folder.resolve("loaded.txt");
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xlog:class+load:file=" + loaded,
                        "-cp",
                        System.getProperty("java.class.path"),
                        "gaugeglass.cli.Main",
                        "assess",
                        "../docs/examples/neglected-hall.yaml")
                .redirectOutput(folder.resolve("out.txt").toFile())
                .redirectError(folder.resolve("err.txt").toFile())
                .start();

        assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).isZero();
        assertThat(Files.readAllLines(loaded))
                .hasSizeGreaterThan(500)
                .anyMatch(line -> line.contains("gaugeglass.engine.Rulebook "))
                .noneMatch(
                        line -> line.matches(
                                ".*(gaugeglass\\.(engine|cli)\\.pack\\.|gaugeglass\\.engine\\.build\\.|de\\.siegmar\\.|\\.LaidOn |\\.Waiver ).*"));
    }
}
