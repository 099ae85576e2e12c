package gaugeglass.cli.printed;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.cli.picture.Picture;
import gaugeglass.engine.Assessment.Ref;
import gaugeglass.engine.book.Urgency;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The whole page as the templates lay it out, of words that no rulebook can change. Goldens are written anew with
 * {@code -Dregenerate=true}.
 */
class TemplatesTest {
    private static View view(Reader reader) {
        boolean isForFile = reader == Reader.FILE;
        View.Unit unit = new View.Unit(
                "u1",
                "Boiler B1, <old> & \"new\"",
                List.of(
                        new View.Gate(
                                "Test firing", "Forbidden", false, "It is forbidden by:", List.of("A jumper"), ""),
                        new View.Gate(
                                "Running by itself", "Nothing found against it", true, "", List.of(), "No promise.")),
                List.of(new View.Degree(
                        "Do not fire",
                        true,
                        List.of(finding(1, "A jumper", isForFile), finding(2, "Another", isForFile)))),
                List.of(new View.PutRight(
                        "A leak", "", "Now", List.of("It dripped."), List.of("Does it drip? no"), List.of())),
                List.of(),
                List.of(new View.Cause("Somebody was in a hurry.", List.of())),
                List.of(new Picture(
                        "u1-glass",
                        "Gauge glass",
                        "Water at 4 in.",
                        20,
                        10,
                        List.of(
                                new Picture.Stroke(
                                        List.of(new Picture.Point(0, 0), new Picture.Point(1.005, -2)), 1, true),
                                new Picture.Area(
                                        List.of(
                                                new Picture.Point(0, 0),
                                                new Picture.Point(1, 0),
                                                new Picture.Point(1, 1)),
                                        true),
                                new Picture.Label(
                                        new Picture.Point(3, 4), "<4 in>", 10, false, Picture.Anchor.MIDDLE)))),
                List.of(new WorkLine(
                        1,
                        "B1",
                        Urgency.STOP,
                        "remedy",
                        "Take it out",
                        List.of("cutoff <A>"),
                        "cutoff <A>",
                        List.of(new Ref("a.b", "<A>")),
                        List.of("A jumper"),
                        List.of(
                                new WorkLine.Part("wire, <red>", List.of("A", "B")),
                                new WorkLine.Part("terminal", List.of("A"))),
                        List.of("a meter"),
                        List.of())),
                new View.NotSeen(
                        "1 answer is missing.",
                        List.of(new View.Question(
                                "Does it leak?", "lagged over", true, isForFile ? "boiler/leak" : "")),
                        ""),
                List.of(
                        new Photos.Photo("a.jpg", "What?", "data:image/jpeg;base64,AAAA", ""),
                        new Photos.Photo("../b.jpg", "What?", "", "it does not lie in the inspection's folder")),
                isForFile
                        ? List.of(new View.Group(
                                "Cutoff A",
                                false,
                                List.of(new View.Observed(
                                        "How is it wired?", "jumpered", "in circuit", List.of("a <note>")))))
                        : List.of(),
                isForFile
                        ? List.of(
                                new View.Reckoned("What share?", "50 %", "part / whole", List.of("part 1", "whole 2")))
                        : List.of(),
                isForFile
                        ? List.of(new View.Outcome("a.b:A", "A jumper (cutoff A)", "found", "cutoffs/A/mark"))
                        : List.of(),
                "1 finding.");
        View.Appendix appendix = new View.Appendix(
                List.of(new View.Limit("a.limit", "10 years", "how long", "common practice")),
                List.of(new View.Earlier("A jumper", "B1", "Do not fire", "2025-09-01", "deferred by the owner")),
                List.of("a/b: taken as the first of the year"),
                List.of(new View.Named("Rulebook", "standard practice")));
        return new View(
                "Start-up inspection: Elm Hall",
                isForFile,
                PaperSize.A4,
                "p { margin: 0 }",
                "Elm Hall",
                "Visit of 2026-09-14",
                "a\tnote\u202E",
                "Elm Hall, visit of 2026-09-14",
                List.of(unit),
                appendix,
                "The local code comes first.");
    }

    private static View.Finding finding(int number, String title, boolean isForFile) {
        return new View.Finding(
                number,
                title,
                number == 2 ? "T-1, <T-2>" : "",
                number == 2 ? "It came up during the visit." : "",
                List.of("A wire <red>."),
                "It matters.",
                "Take it out.",
                number == 1 ? List.of(new View.Caution("Lock out first.", "Lock it.")) : List.of(),
                number == 2 ? "Lock out first" : "",
                number == 2 ? List.of("I put it there.") : List.of(),
                number == 2 ? List.of("refused by the owner on 2026-09-20.") : List.of(),
                isForFile ? List.of(new View.Named("Rule", "a.b")) : List.of());
    }

    @ParameterizedTest
    @EnumSource(Reader.class)
    void the_page_is_as_it_was_agreed(Reader reader) throws Exception {
        Path golden = Reports.FOLDER.resolve("page-" + reader.name().toLowerCase(java.util.Locale.ROOT) + ".html");
        String html = PrintedReport.rendered(view(reader));
        if (Boolean.getBoolean("regenerate")) {
            Files.writeString(golden, html);
        }

        assertThat(html).isEqualTo(Files.readString(golden));
    }
}
