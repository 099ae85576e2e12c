package gaugeglass.cli.printed;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.checklists.Checklist;
import gaugeglass.checklists.Checklists;
import gaugeglass.checklists.Question;
import gaugeglass.checklists.Section;
import gaugeglass.cli.sheet.SingleAnswerStops;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.InspectionReader;
import gaugeglass.engine.vocabulary.ItemType;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import nu.validator.client.EmbeddedValidator;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The printed sheet: everything is on it, it is sound HTML, and it keeps to its pages. */
class PrintedSheetTest {
    private static final Checklists CHECKLISTS = Checklists.standard(Reports.RULEBOOK.vocabulary());
    private static final SingleAnswerStops STOPS = SingleAnswerStops.of(Reports.RULEBOOK);
    private static final LocalDate DAY = LocalDate.of(2026, 9, 14);
    private static final Path EXAMPLES = Path.of("../docs/examples");

    private static PrintedSheet sheet(Checklist checklist, Optional<Inspection> inspection, PaperSize size) {
        return new PrintedSheet(Reports.RULEBOOK, STOPS, checklist, inspection, size);
    }

    private static Checklist checklist(String id) {
        return CHECKLISTS.checklist(id).orElseThrow();
    }

    private static Optional<Inspection> read(String text) {
        return Optional.of(new InspectionReader(Reports.RULEBOOK.vocabulary()).read("test", text));
    }

    private static Optional<Inspection> church() throws Exception {
        return read(Files.readString(EXAMPLES.resolve("well-kept-church.yaml")));
    }

    /** Without any space, as a line may break after a hyphen too. */
    private static String packed(String text) {
        return text.replaceAll("\\s+", "");
    }

    @Test
    void every_question_of_every_checklist_stands_on_its_sheet_and_can_be_selected() throws Exception {
        for (Checklist checklist : CHECKLISTS.all()) {
            String text = packed(Reports.pdfText(
                    sheet(checklist, Optional.empty(), PaperSize.LETTER).pdf(DAY)));
            for (Question question : checklist.questions()) {
                assertThat(text).as(checklist.id()).contains(packed(question.ask()));
                if (!question.caution().isEmpty()) {
                    assertThat(text)
                            .contains(packed(Reports.RULEBOOK
                                    .book()
                                    .cautions()
                                    .get(question.caution())
                                    .text()));
                }
            }
        }
    }

    @Test
    void every_choice_has_a_box_and_every_stop_is_marked() {
        Checklist checklist = checklist("one-pipe-start-up");
        String html = sheet(checklist, Optional.empty(), PaperSize.A4).html();
        for (Question question : checklist.questions()) {
            question.item().stream()
                    .flatMap(item -> item.values().stream())
                    .flatMap(part -> part.choices().stream())
                    .forEach(word -> assertThat(html).contains("</span>&#160;" + word.replace('-', ' ')));
        }
        for (SingleAnswerStops.Stop stop : STOPS.all()) {
            if (!stop.isSpan() && stop.words().size() == 1) {
                assertThat(html)
                        .contains("&#160;" + stop.words().get(0).replace('-', ' ')
                                + "&#160;<span class=\"stop-mark\">STOP</span>");
            }
            assertThat(html).contains("<h4>" + stop.card().title() + "</h4>");
        }
        assertThat(html).contains("<span class=\"stop-mark\">STOP</span> 20 % or more");
    }

    @Test
    void stages_come_in_order_with_the_gates_between_them() {
        assertThat(Reports.flowing(sheet(checklist("two-pipe-start-up"), Optional.empty(), PaperSize.A4)
                        .html()))
                .containsSubsequence(
                        ">Arrival:",
                        ">Cold:",
                        "Here it stops: attended test firing",
                        ">Firing:",
                        ">Hot:",
                        "Before it is left to run by itself");
    }

    @Test
    void an_inspections_answers_are_filled_in() throws Exception {
        String html = sheet(checklist("one-pipe-start-up"), church(), PaperSize.LETTER)
                .html();

        assertThat(html)
                .contains(
                        "Chapel Lane Meeting House",
                        "<b><bdi>1-1/2 in</bdi></b>",
                        "<span class=\"piece\"><bdi>Probe</bdi></span>")
                .contains("<span class=\"box ticked\">X</span>&#160;one pipe")
                .contains("Not asked: an earlier answer rules it out.");
        for (ItemType item : Reports.RULEBOOK.vocabulary().items()) {
            if (item.id().equals("system.kind")) {
                assertThat(html).contains(item.ask());
            }
        }
    }

    @Test
    void what_somebody_typed_does_no_harm() {
        String html = sheet(
                        checklist("one-pipe-start-up"),
                        read(
                                "format: 1\nsite: {id: s, name: \"<script>alert(1)</script>\\u202E\"}\n"
                                        + "visit: {date: 2026-09-14, by: \"\\\"><img src=x>\"}\nboilers:\n  - id: B1\n"
                                        + "    cutoffs: {fitted: 1, each: [{tag: \"<b>\", kind: {value: float, note: \"</table>\"}}]}\n"),
                        PaperSize.LETTER)
                .html();

        assertThat(html)
                .doesNotContain("<script", "<img", "\u202E", "Note: </table>", "<bdi><b>")
                .contains("&lt;script&gt;");
    }

    @Test
    void the_validator_of_html_has_nothing_to_say() throws Exception {
        for (Optional<Inspection> inspection : List.of(Optional.<Inspection>empty(), church())) {
            EmbeddedValidator validator = new EmbeddedValidator();
            validator.setOutputFormat(EmbeddedValidator.OutputFormat.GNU);
            validator.setForceHTML(true);
            String said = validator.validate(
                    new ByteArrayInputStream(sheet(checklist("one-pipe-start-up"), inspection, PaperSize.LETTER)
                            .html()
                            .getBytes(StandardCharsets.UTF_8)));

            assertThat(said.lines().filter(line -> !line.contains("info:") && !line.contains("info warning")))
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource(PaperSize.class)
    void its_pages_are_numbered_and_keep_margins_and_headings(PaperSize size) throws Exception {
        List<String> sections = checklist("one-pipe-start-up").sections().stream()
                .map(Section::title)
                .toList();
        for (Optional<Inspection> inspection : List.of(Optional.<Inspection>empty(), church())) {
            byte[] pdf = sheet(checklist("one-pipe-start-up"), inspection, size).pdf(DAY);

            // Here questions are heavy too, and may end a page.
            PdfTest.sound(pdf, PdfTest.size(size), false);
            try (PDDocument document = Loader.loadPDF(pdf)) {
                assertThat(document.getNumberOfPages()).isBetween(5, 40);
                for (int page = 0; page < document.getNumberOfPages(); page++) {
                    List<PdfTest.Line> body = PdfTest.lines(document, page).stream()
                            .filter(line -> line.y() < PdfTest.size(size).getHeight() - 45)
                            .toList();
                    assertThat(sections)
                            .as("page " + (page + 1) + " ends with the heading of a section")
                            .doesNotContain(body.get(body.size() - 1).text().strip());
                }
            }
        }
    }

    @Test
    void the_same_checklist_gives_the_same_bytes() throws Exception {
        PrintedSheet one = sheet(checklist("one-pipe-start-up"), church(), PaperSize.A4);
        PrintedSheet other = new PrintedSheet(
                Reports.RULEBOOK,
                SingleAnswerStops.of(Reports.RULEBOOK),
                checklist("one-pipe-start-up"),
                church(),
                PaperSize.A4);

        assertThat(one.html()).isEqualTo(other.html());
        assertThat(one.pdf(DAY)).isEqualTo(other.pdf(DAY));
    }
}
