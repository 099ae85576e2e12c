package gaugeglass.cli.walk;

import static gaugeglass.cli.walk.Walked.FULL;
import static gaugeglass.cli.walk.Walked.begun;
import static gaugeglass.cli.walk.Walked.church;
import static gaugeglass.cli.walk.Walked.indexOf;
import static gaugeglass.cli.walk.Walked.walk;
import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.cli.command.Ran;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was put right in the boiler room, from the keys that were typed there to the page that the owner holds. */
class WalkToReportTest {
    @TempDir
    Path folder;

    /** Walks the sound start-up with one answer spoiled, and puts that right as soon as the screen of another is done. */
    private Path putRight(String item, String word, String after, String... now) {
        List<Typist.Screen> screens = Typist.screens(FULL, Walked.with(church(), item, word));
        int found = indexOf(screens, item) + 1;
        int mended = indexOf(screens, after) + 1;
        Path path = folder.resolve("visit.yaml");
        TypedTalk talk = begun().type(Typist.lines(screens.subList(0, found)))
                .type("")
                .type(Typist.lines(screens.subList(found, mended)))
                .type("l", "1")
                .type(now)
                .type(Typist.lines(screens.subList(mended, screens.size())))
                .type("");
        assertThat(walk(FULL, talk, path)).isEmpty();
        assertThat(talk.screen())
                .contains("*** DO NOT FIRE ***", "It is put right; what was found stays on record.", "has been put.");
        assertThat(talk.linesLeft()).isZero();
        return path;
    }

    private static String page(Path html) throws IOException {
        return Files.readString(html)
                .replaceAll("(?s)<style>.*?</style>", " ")
                .replaceAll("<[^>]*>", " ")
                .replaceAll("\\s+", " ");
    }

    private static String paper(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    /** Both states, in this order, on every form of both reports. */
    private void reported(Path visit, String... inOrder) throws IOException {
        for (String reader : List.of("owner", "file")) {
            assertThat(Ran.of("report", visit.toString(), "--for", reader, "--pdf")
                            .code())
                    .isZero();
            assertThat(page(folder.resolve("visit." + reader + ".html"))).containsSubsequence(inOrder);
            assertThat(paper(folder.resolve("visit." + reader + ".pdf"))).containsSubsequence(inOrder);
        }
    }

    @Test
    void a_jumper_found_removed_and_tested_again_stands_with_both_states_in_the_report() throws IOException {
        Path visit = putRight("cutoff.wiring", "jumpered", "cutoff.wiring", "in-circuit", "");
        reported(visit, "Put right on this visit", "The cutoff is bypassed", "jumpered", "Tested again:", "in circuit");
        // In the list of everything observed, what was found and what was left stand side by side.
        assertThat(page(folder.resolve("visit.file.html"))).containsPattern("jumpered\\W+in circuit");
        assertThat(Ran.of("assess", visit.toString()).out())
                .containsSubsequence("The cutoff is bypassed", "jumpered", "Retest", "in circuit");
    }

    @Test
    void gas_smelled_and_mended_stands_with_both_states_in_the_report_and_on_the_sheet() throws IOException {
        Path visit = putRight("site.gas-smell", "smelled", "site.gas-leak", "none", "0 %", "none-found");
        reported(
                visit,
                "Put right on this visit",
                "There is gas where it does not belong",
                "Gas can be smelled",
                "Tested again:",
                "none");
        assertThat(page(folder.resolve("visit.file.html"))).containsPattern("smelled\\W+none");
        assertThat(Ran.of("assess", visit.toString()).out())
                .containsSubsequence("There is gas where it does not belong", "smelled", "none");
        assertThat(Ran.of(
                                "sheet",
                                visit.toString(),
                                "--out",
                                folder.resolve("sheet.html").toString())
                        .code())
                .isZero();
        assertThat(page(folder.resolve("sheet.html")))
                .containsPattern("X(&#160;| )+smelled")
                .containsPattern("As left: +none");
    }
}
