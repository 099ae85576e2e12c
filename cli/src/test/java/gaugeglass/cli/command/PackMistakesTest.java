package gaugeglass.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Wrong edits of packs, each refused with words for somebody who does not program, and never half laid on. What must be said
 * stands beside each; {@code -Dregenerate=true} writes it anew.
 */
class PackMistakesTest {
    private static final Path PACKS = Path.of("src/test/resources/packs");
    private static final String VISIT = "../docs/examples/half-answered.yaml";

    @TempDir
    private Path folder;

    private static List<Path> wrong() throws IOException {
        try (Stream<Path> all = Files.list(PACKS)) {
            return all.filter(Files::isDirectory).sorted().toList();
        }
    }

    @TestFactory
    Stream<DynamicTest> every_wrong_edit_is_told_and_nothing_is_judged_by_it() throws IOException {
        return wrong().stream()
                .map(pack -> DynamicTest.dynamicTest(pack.getFileName().toString(), () -> {
                    boolean isUnsigned = pack.endsWith("unsigned-rule");
                    Ran ran = isUnsigned
                            ? Ran.of("assess", VISIT, "--pack", pack.toString())
                            : Ran.of("pack", "check", pack.toString());

                    assertThat(ran.code()).isEqualTo(3);
                    assertThat(ran.out()).isEmpty();
                    assertThat(ran.err()).doesNotContainPattern("Exception|\\tat |\\bnull\\b|fault of the program");
                    String said = ran.err().replace(PACKS + File.separator, "");
                    // The lists of all that is known change with the rulebook.
                    said = said.replaceAll("expected one of (([^,;\\n]+, ){12})[^;\\n]+", "expected one of $1...");
                    said = said.replaceAll("one of site, boiler, [^;\\n]+", "one of site, boiler, ...");
                    Path golden = PACKS.resolve(pack.getFileName() + ".expected");
                    if (Boolean.getBoolean("regenerate")) {
                        Files.writeString(golden, said);
                    }
                    assertThat(said).isEqualTo(Files.readString(golden));
                }));
    }

    @Test
    void there_are_more_than_fifty_of_them() throws IOException {
        assertThat(wrong()).hasSizeGreaterThan(50);
    }

    private static byte[] zip(String... names) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream out = new ZipOutputStream(bytes)) {
            for (String name : names) {
                out.putNextEntry(new ZipEntry(name));
                out.write("limits: {}\n".getBytes(StandardCharsets.UTF_8));
            }
        }
        return bytes.toByteArray();
    }

    @Test
    void a_zip_that_leads_out_of_itself_is_refused() throws IOException {
        for (String name :
                List.of("../limits.yaml", "/etc/limits.yaml", "C:\\limits.yaml", "elm/../../x.yaml", "..\\x.yaml")) {
            Path file = Files.write(folder.resolve("elm.zip"), zip("pack.yaml", name));
            Ran ran = Ran.of("pack", "check", file.toString());
            assertThat(ran.code()).as(name).isEqualTo(3);
            assertThat(ran.err()).as(name).contains("leads out of the pack").doesNotContain("Exception");
            assertThat(folder.resolveSibling("limits.yaml")).doesNotExist();
        }
    }

    @Test
    void a_zip_that_swells_or_is_broken_is_refused() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream out = new ZipOutputStream(bytes)) {
            out.putNextEntry(new ZipEntry("pack.yaml"));
            byte[] spaces = new byte[1 << 20];
            Arrays.fill(spaces, (byte) ' ');
            for (int i = 0; i < 64; i++) {
                out.write(spaces);
            }
        }
        Path bomb = Files.write(folder.resolve("bomb.zip"), bytes.toByteArray());
        Path broken = Files.writeString(folder.resolve("broken.zip"), "no zip");
        Path folders = Files.write(folder.resolve("folders.zip"), zip("elm/pack.yaml", "elm/more/limits.yaml"));

        assertThat(Ran.of("pack", "check", bomb.toString()).err()).contains("this is too large for a pack");
        assertThat(Ran.of("pack", "check", broken.toString()).err()).contains("this is no pack");
        assertThat(Ran.of("pack", "check", folders.toString()).err()).contains("a pack has no folders in it");
    }

    @Test
    void a_link_in_a_folder_is_refused() throws IOException {
        Path pack = Files.createDirectory(folder.resolve("elm"));
        Files.writeString(pack.resolve("pack.yaml"), "pack: elm\n");
        Path secret = Files.writeString(folder.resolve("secret.yaml"), "limits: {}\n");
        Files.createSymbolicLink(pack.resolve("limits.yaml"), secret);

        assertThat(Ran.of("pack", "check", pack.toString()).err()).contains("limits.yaml: this is a link");
    }

    @Test
    void two_packs_of_one_name_are_refused() {
        String harrow = "../docs/examples/packs/brae-state";

        assertThat(Ran.of("assess", VISIT, "--pack", harrow, "--pack", harrow).err())
                .contains("the pack brae-state is named twice");
    }
}
