package gaugeglass.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.File;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * Spoiled inspections: each is named with what is wrong and exit code 3, and none brings the program down.
 *
 * <p>What must be said stands beside each file. With {@code -Dregenerate=true} it is written anew; look at the
 * difference before committing it.
 */
class MistakesTest {
    private static final Path SPOILED = Path.of("src/test/resources/mistakes");
    private static final String GOLDEN = ".expected";
    private static final String SOUND =
            "format: 1\nsite: {id: elm-hall}\nvisit: {date: 2026-09-14}\nboilers: [{id: B1}]\n";

    @TempDir
    private Path folder;

    private static List<Path> spoiled() throws IOException {
        try (Stream<Path> files = Files.list(SPOILED)) {
            return files.filter(file -> !file.toString().endsWith(GOLDEN))
                    .sorted()
                    .toList();
        }
    }

    @TestFactory
    Stream<DynamicTest> every_spoiled_file_is_named_and_ends_with_3() throws IOException {
        return spoiled().stream()
                .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> {
                    byte[] before = Files.readAllBytes(file);

                    Ran ran = Ran.of("assess", file.toString());

                    assertThat(ran.code()).isEqualTo(3);
                    assertThat(ran.out()).isEmpty();
                    assertThat(ran.err())
                            .doesNotContainPattern("[\\p{Cntrl}&&[^\\n]]")
                            .doesNotContainPattern("Exception|Error|snakeyaml|jackson|\tat |null|fault of the program");
                    // Without the folder the messages are the same on every machine.
                    String said = ran.err().replace(SPOILED + File.separator, "");
                    // Which questions a site has is no business of this test, and changes with the rulebook.
                    said = said.replaceAll("one of id, name, [^;\n]+", "one of id, name, ...");
                    Path golden = SPOILED.resolve(file.getFileName() + GOLDEN);
                    if (Boolean.getBoolean("regenerate")) {
                        Files.writeString(golden, said);
                    }
                    assertThat(said).isEqualTo(Files.readString(golden));
                    assertThat(Files.readAllBytes(file)).as("what was typed").isEqualTo(before);
                }));
    }

    @Test
    void there_are_more_than_thirty_of_them() throws IOException {
        assertThat(spoiled()).hasSizeGreaterThan(30);
    }

    @Test
    void check_says_the_same_as_assess() throws IOException {
        for (Path file : spoiled()) {
            Ran check = Ran.of("check", file.toString());
            assertThat(check).as(file.toString()).isEqualTo(Ran.of("assess", file.toString()));
        }
    }

    @Test
    void in_a_folder_the_sound_ones_are_judged_all_the_same() throws IOException {
        Files.writeString(folder.resolve("a.yaml"), SOUND);
        Files.copy(SPOILED.resolve("misspelt-key.yaml"), folder.resolve("b.yaml"));
        Files.writeString(folder.resolve("c.yaml"), SOUND.replace("B1", "B2"));

        Ran ran = Ran.of("assess", folder.toString());

        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.out()).contains("boiler B1", "boiler B2");
        assertThat(ran.err()).contains("b.yaml:5:3: ", "2 inspections judged, 1 could not be used");
    }

    @Test
    void in_lines_a_spoiled_one_keeps_its_place_and_tells_its_line() {
        String sound = "{\"format\":1,\"site\":{\"id\":\"elm-hall\"},\"visit\":{\"date\":\"2026-09-14\"},"
                + "\"boilers\":[{\"id\":\"B1\"}]}";

        Ran ran = Ran.withInput(
                sound + "\n\n" + sound.replace("format", "fromat") + "\n" + sound + "\n",
                "assess",
                "-",
                "--lines",
                "--as",
                "jsonl");

        assertThat(ran.code()).isEqualTo(3);
        List<String> lines = ran.out().lines().toList();
        assertThat(lines).hasSize(3);
        assertThat(lines.get(0)).contains("\"boilers\":[");
        assertThat(lines.get(1)).contains("\"error\":\"", "\"line\":3").doesNotContain("boilers\":");
        assertThat(lines.get(2)).contains("\"boilers\":[");
        assertThat(ran.err()).contains("standard input:3:");
    }

    @Test
    void two_hundred_megabytes_are_refused_without_being_read() throws IOException {
        Path file = folder.resolve("huge.yaml");
        try (RandomAccessFile huge = new RandomAccessFile(file.toFile(), "rw")) {
            huge.write("format: 1\n".getBytes(StandardCharsets.UTF_8));
            huge.setLength(200L << 20);
        }

        Ran ran = Ran.of("assess", file.toString());

        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err())
                .isEqualTo(file + ": this is too large: 209715200 bytes; expected at most 8388608 bytes\n");
    }

    @Test
    void a_file_that_is_not_there_is_named() {
        Path file = folder.resolve("nowhere.yaml");

        assertThat(Ran.of("assess", file.toString())).isEqualTo(new Ran(3, "", file + ": there is no such file\n"));
    }

    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void a_file_without_permission_is_named() throws IOException {
        Path file = Files.writeString(folder.resolve("locked.yaml"), SOUND);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("---------"));
        assumeThat(Files.isReadable(file))
                .as("read by somebody who may read everything")
                .isFalse();

        Ran ran = Ran.of("assess", file.toString());

        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err()).startsWith(file + ": this file may not be read");
    }

    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void a_file_that_cannot_be_read_is_named() throws IOException {
        // A link that leads back to itself cannot be read by anybody, whatever his permissions.
        Path file = folder.resolve("ring.yaml");
        Files.createSymbolicLink(file, file.getFileName());

        Ran ran = Ran.of("assess", file.toString());

        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err()).startsWith(file + ": ").doesNotContain("Exception", "null");
    }

    @Test
    void escapes_in_what_was_typed_are_shown_harmlessly_and_nothing_of_it_is_lost() throws IOException {
        Path file = Files.writeString(folder.resolve("escapes.yaml"), """
                format: 1
                site:
                  id: elm-hall
                  name: "Elm\\e[31m Hall\\e]0;title\\a"
                  gas-smell: {value: none, note: "first\\rsecond \\u202Ereversed", photos: ["a\\e[2J.jpg"]}
                visit: {date: 2026-09-14, by: "P.\\x08 Example", note: "line one\\nline two"}
                boilers: [{id: B1}]
                """);

        for (String as : List.of("text", "json", "jsonl")) {
            Ran ran = Ran.of("assess", file.toString(), "--as", as);

            assertThat(ran.code()).isZero();
            assertThat(ran.out()).doesNotContainPattern("[\\p{Cntrl}&&[^\\n]]");
        }
        assertThat(Ran.of("assess", file.toString()).out())
                .contains("Elm\\u001b[31m Hall\\u001b]0;title\\u0007", "P.\\u0008 Example", "Note: line one line two")
                .contains("first second \\u202ereversed [pictures: a\\u001b[2J.jpg]");
        assertThat(Ran.of("assess", file.toString(), "--as", "json").out())
                .contains("\"siteName\" : \"Elm\\u001B[31m Hall\\u001B]0;title\\u0007\"", "line one\\nline two");
    }
}
