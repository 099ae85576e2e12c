package gaugeglass.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.cli.report.ReckonText;
import gaugeglass.steam.handbook.Entry;
import gaugeglass.steam.handbook.Handbook;
import gaugeglass.steam.handbook.Input;
import gaugeglass.steam.reckon.Worked;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What {@code reckon} prints, against whole golden files, and the page made of the same descriptions.
 *
 * <p>With {@code -Dregenerate=true} both are written anew; look at the difference before committing it.
 */
class ReckonTest {
    private static final Path GOLDEN = Path.of("src/test/resources/reckon");
    private static final Path PAGE = Path.of("../docs/reckonings.md");

    static Stream<String> names() {
        return Handbook.all().stream().map(Entry::name);
    }

    @ParameterizedTest
    @MethodSource("names")
    void a_name_alone_explains_itself_with_a_worked_example(String name) throws IOException {
        Ran ran = Ran.of("reckon", name);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isEqualTo(Code.JUDGED);
        assertThat(ran.out().lines()).allMatch(line -> line.length() <= 80);
        golden(name + ".txt", ran.out());
    }

    @ParameterizedTest
    @MethodSource("names")
    void the_example_typed_as_values_gives_the_same_sheet(String name) {
        List<String> words = new ArrayList<>(List.of("reckon", name));
        words.addAll(Handbook.find(name).orElseThrow().example());
        Ran asked = Ran.of(words.toArray(String[]::new));
        assertThat(asked.code()).isEqualTo(Code.JUDGED);
        String sheet = asked.out().substring(asked.out().indexOf("\n\n") + 2);
        assertThat(Ran.of("reckon", name).out()).endsWith(sheet);
    }

    @Test
    void no_words_list_every_reckoning() throws IOException {
        Ran ran = Ran.of("reckon");
        assertThat(ran.code()).isEqualTo(Code.JUDGED);
        names().forEach(name -> assertThat(ran.out()).contains("  " + name + " "));
        golden("list.txt", ran.out());
    }

    @Test
    void json_carries_exact_figures_as_texts() throws IOException {
        Ran ran = Ran.of("reckon", "co-air-free", "co=50 ppm", "o2=7 %", "--as", "json");
        assertThat(ran.code()).isEqualTo(Code.JUDGED);
        assertThat(ran.out()).contains("\"exact\" : \"10450/139\"", "\"shown\" : \"75.18 ppm\"");
        golden("co-air-free.json.txt", ran.out());
        assertThat(Ran.of("reckon", "--as", "jsonl").out().lines())
                .hasSize(Handbook.all().size());
    }

    @Test
    void wrong_words_get_the_nearest_and_exit_with_2() throws IOException {
        StringBuilder said = new StringBuilder();
        for (List<String> words : List.of(
                List.of("co-airfree"),
                List.of("bananas"),
                List.of("co-air-free", "co=50 ppm"),
                List.of("co-air-free", "co=50 pmm", "o3=7 %", "o2"),
                List.of("co-air-free", "co=50 F", "o2=7 %"),
                List.of("co-air-free", "co=50 ppm", "o2=7 %", "co=40 ppm"),
                List.of("co-air-free", "co=50 ppm", "o2=20.9 %"),
                List.of("stack-loss", "fuel=natural-gs", "flue=180 C", "air=20 C", "o2=5 %"),
                List.of("stack-loss", "fuel=oil-6", "flue=180 C", "air=20 C", "o2=5 %"),
                List.of("gross-efficiency", "o2=12 %", "rise=300 F"),
                List.of("load", "radiators=6 x 3-column 29 in"),
                List.of("water-used", "before=1000 gal", "after=990 gal", "digits=4"),
                List.of("static-head", "returns=pumped", "pressure=1 psi"),
                List.of("trap-loss", "orifice=1/8 in", "pressure=2 psi", "hours=10 h", "price=10"),
                List.of("cycles", "burns=10:00-10:05 9:00-9:05"))) {
            List<String> line = new ArrayList<>(List.of("reckon"));
            line.addAll(words);
            Ran ran = Ran.of(line.toArray(String[]::new));
            assertThat(ran.code()).as(String.join(" ", words)).isEqualTo(Code.WRONG_LINE);
            assertThat(ran.out()).isEmpty();
            said.append("$ gaugeglass ")
                    .append(String.join(" ", line))
                    .append('\n')
                    .append(ran.err())
                    .append('\n');
        }
        golden("mistakes.txt", said.toString());
    }

    @Test
    void the_page_of_reckonings_is_not_stale() throws IOException {
        String page = page();
        if (Boolean.getBoolean("regenerate")) {
            Files.writeString(PAGE, page);
        }
        assertThat(PAGE).exists();
        assertThat(Files.readString(PAGE))
                .as("docs/reckonings.md; made anew by -Dregenerate=true")
                .isEqualTo(page);
    }

    @Test
    void no_golden_file_is_left_over() throws IOException {
        List<String> wanted = new ArrayList<>(names().map(name -> name + ".txt").toList());
        wanted.addAll(List.of("list.txt", "co-air-free.json.txt", "mistakes.txt"));
        try (Stream<Path> files = Files.list(GOLDEN)) {
            assertThat(files.map(file -> file.getFileName().toString())).containsExactlyInAnyOrderElementsOf(wanted);
        }
    }

    private static String page() {
        StringBuilder page = new StringBuilder("# What can be reckoned\n\n"
                + "This page is made from the descriptions that `gaugeglass reckon` uses; a stale page is a red build. Every\n"
                + "example is worked out by the program. `gaugeglass reckon NAME` explains one, `gaugeglass reckon NAME\n"
                + "name=value ...` works it out, `--as json` prints it for programs, with exact fractions.\n\n"
                + "Answers are exact, but for roots, broken powers and figures from the steam table, which are rounded as\n"
                + "their line in the Javadoc says, and then exact from there. Outside its range a reckoning gives no answer.\n"
                + "Whatever is reckoned here, the local code, the authority having jurisdiction, the maker's instructions and\n"
                + "licensed practice come first. A source without a mark was read; the others say what they are.\n\n");
        for (Entry entry : Handbook.all()) {
            page.append("- [")
                    .append(entry.name())
                    .append("](#")
                    .append(entry.name())
                    .append("): ");
            page.append(entry.title()).append('\n');
        }
        for (Entry entry : Handbook.all()) {
            Worked worked = entry.work("the page", entry.example());
            page.append("\n## ")
                    .append(entry.name())
                    .append("\n\n")
                    .append(entry.title())
                    .append(".\n\n");
            page.append("| input | what | how it is written |\n|---|---|---|\n");
            for (Input input : entry.inputs()) {
                page.append("| `")
                        .append(input.name())
                        .append("` | ")
                        .append(input.what())
                        .append(" | ");
                page.append(input.kind().form()).append(ReckonText.need(input)).append(" |\n");
            }
            page.append("\nRange: ").append(entry.range()).append(".\n\n```\n");
            page.append(ReckonText.line(entry)).append("\n\n");
            for (Worked.Line line : worked.lines()) {
                page.append(line.what())
                        .append(", ")
                        .append(line.symbol())
                        .append(" = ")
                        .append(line.formula());
                if (!line.numbers().isEmpty()) {
                    page.append("\n    = ").append(line.numbers());
                }
                page.append("\n    = ").append(line.answer().shown()).append('\n');
            }
            page.append("```\n\n| name | value | what |\n|---|---|---|\n");
            for (Worked.Given given : worked.given()) {
                page.append("| `")
                        .append(given.symbol())
                        .append("` | ")
                        .append(given.value())
                        .append(" | ");
                page.append(given.what()).append(" |\n");
            }
            page.append("\nBasis: ").append(worked.basis().word()).append(". Sources: ");
            page.append(String.join(
                    "; ",
                    worked.sources().stream()
                            .map(source -> source.name() + ReckonText.known(source))
                            .toList()));
            page.append(".\n");
            for (String warning : worked.warnings()) {
                page.append("\nMind: ").append(warning).append('\n');
            }
        }
        return page.toString();
    }

    private static void golden(String name, String text) throws IOException {
        Path file = GOLDEN.resolve(name);
        if (Boolean.getBoolean("regenerate")) {
            Files.createDirectories(GOLDEN);
            Files.writeString(file, text);
        }
        assertThat(file).exists();
        assertThat(text).isEqualTo(Files.readString(file));
    }
}
