package gaugeglass.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Both guides to packs, followed word for word: each file written as it stands, each command run. */
class PackGuidesTest {
    private static final Pattern BLOCK = Pattern.compile("```(sh|file)( [^\\n]*)?\\n(.*?)```", Pattern.DOTALL);
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    @TempDir
    private Path folder;

    private void follow(String guide) throws IOException {
        Matcher block = BLOCK.matcher(Files.readString(Path.of("../docs").resolve(guide)));
        int done = 0;
        while (block.find()) {
            String about = block.group(2) == null ? "" : block.group(2).strip();
            if (block.group(1).equals("file")) {
                Files.writeString(folder.resolve(about), block.group(3));
                continue;
            }
            for (String line : block.group(3).lines().toList()) {
                Ran ran = Ran.of(words(line));
                done++;
                if (about.equals("refused")) {
                    assertThat(ran.code()).as(line).isEqualTo(3);
                } else {
                    assertThat(ran.err()).as(line).isEmpty();
                    assertThat(ran.code()).as(line).isZero();
                }
            }
        }
        assertThat(done).isGreaterThan(5);
    }

    /** The words behind "gaugeglass", with the names of files placed in the test's folder. */
    private String[] words(String line) {
        assertThat(line).startsWith("gaugeglass ");
        List<String> words = new ArrayList<>();
        Matcher word = WORD.matcher(line.substring("gaugeglass ".length()));
        while (word.find()) {
            String text = word.group(1) == null ? word.group(2) : word.group(1);
            String before = words.isEmpty() ? "" : words.get(words.size() - 1);
            boolean isName = before.endsWith("shared") && words.contains("take") || before.equals("--pack");
            boolean isFile = !isName
                    && (text.equals("elm")
                            || text.equals("shared")
                            || text.equals("visits")
                            || text.contains("/")
                            || text.endsWith(".yaml"));
            if (text.endsWith(".public-key")) {
                text = Ran.HOME.resolve("keys").resolve(text).toString();
            }
            words.add(isFile ? folder.resolve(text).toString() : text);
        }
        return words.toArray(new String[0]);
    }

    @Test
    void the_leads_guide_and_then_the_companys() throws IOException {
        for (String key : new String[] {"keys/elm-office.private-key", "taken/elm.zip"}) {
            Files.deleteIfExists(Ran.HOME.resolve(key));
        }
        Files.createDirectory(folder.resolve("shared"));
        Path visits = Files.createDirectory(folder.resolve("visits"));
        Files.writeString(visits.resolve("elm-hall.yaml"), """
                format: 1
                site: {id: elm-hall}
                visit: {date: 2026-09-14}
                boilers:
                  - id: B1
                    cutoffs: {fitted: 1, each: [{tag: A, kind: float, installed: 2017-09-01}]}
                """);

        follow("packs-for-the-lead.md");
        assertThat(Ran.of("pack", "replay", folder.resolve("elm").toString(), visits.toString())
                        .out())
                .contains("cutoff.past-service-life:A");
        follow("packs-for-the-company.md");

        Ran ran = Ran.of(
                "assess",
                visits.resolve("elm-hall.yaml").toString(),
                "--pack",
                folder.resolve("elm").toString());
        assertThat(ran.out()).contains("WAIVED", "Elm Heating standard 1.0.0");
    }
}
