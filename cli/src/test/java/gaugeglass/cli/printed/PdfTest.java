package gaugeglass.cli.printed;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.Assessment.Finding;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The sheets of paper, looked at with PDFBox: what can be selected, where it stands, and where pages break. */
class PdfTest {
    private static final String SHORT = "format: 1\nsite: {id: elm-hall, name: Elm Hall (invented), co-alarm: none}\n"
            + "visit: {date: 2026-09-14, by: A. Technician}\nboilers:\n  - id: B1\n    level: {line: in-glass, proven: 4 in}\n";

    /** One piece of a line of a page, with whether it is set as a heading: in heavy letters from end to end. */
    record Line(String text, float y, float from, float to, boolean isHeading) {}

    /** The pieces of a page from top to bottom; fails where a letter stands outside of the sheet's margins. */
    static List<Line> lines(PDDocument pdf, int page) throws IOException {
        List<Line> lines = new ArrayList<>();
        PDRectangle sheet = pdf.getPage(page).getMediaBox();
        PDFTextStripper stripper = new PDFTextStripper() {
            @Override
            protected void writeString(String text, List<TextPosition> letters) {
                for (TextPosition letter : letters) {
                    assertThat(letter.getX()).as(text).isBetween(20f, sheet.getWidth() - 20);
                    assertThat(letter.getX() + letter.getWidth()).as(text).isLessThan(sheet.getWidth() - 20);
                    assertThat(letter.getY()).as(text).isBetween(20f, sheet.getHeight() - 15);
                }
                TextPosition first = letters.get(0);
                TextPosition last = letters.get(letters.size() - 1);
                boolean isHeading = letters.stream()
                        .allMatch(letter -> letter.getFont().getName().contains("Bold"));
                lines.add(new Line(text, first.getY(), first.getX(), last.getX() + last.getWidth(), isHeading));
            }
        };
        stripper.setSortByPosition(true);
        stripper.setStartPage(page + 1);
        stripper.setEndPage(page + 1);
        stripper.getText(pdf);
        return lines;
    }

    static void sound(byte[] bytes, PDRectangle size) throws IOException {
        sound(bytes, size, true);
    }

    /** What holds of every sheet; {@code noHeavyEnd} where all that is heavy from end to end is a heading. */
    static void sound(byte[] bytes, PDRectangle size, boolean noHeavyEnd) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(bytes)) {
            int pages = pdf.getNumberOfPages();
            for (int i = 0; i < pages; i++) {
                PDPage page = pdf.getPage(i);
                assertThat(page.getMediaBox().getWidth()).isCloseTo(size.getWidth(), within());
                assertThat(page.getMediaBox().getHeight()).isCloseTo(size.getHeight(), within());
                List<Line> lines = lines(pdf, i);
                assertThat(lines).extracting(Line::text).contains("Page " + (i + 1) + " of " + pages);
                List<Line> body = lines.stream()
                        .filter(line -> line.y() < size.getHeight() - 45)
                        .toList();
                assertThat(body).as("page " + (i + 1)).isNotEmpty();
                if (noHeavyEnd) {
                    endsWithNoHeading(body, i + 1);
                }
                nothingLiesOnAnother(lines, i + 1);
                for (org.apache.pdfbox.cos.COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertThat(font.isEmbedded()).as(font.getName()).isTrue();
                }
            }
        }
    }

    /** A heading, or the head of a table, belongs with what follows; a unit's closing line is heavy and ends it. */
    private static void endsWithNoHeading(List<Line> body, int page) {
        float lowest = body.get(body.size() - 1).y();
        List<Line> last =
                body.stream().filter(line -> Math.abs(line.y() - lowest) < 1).toList();
        boolean isHeading = last.stream().allMatch(Line::isHeading);
        String text = String.join(" ", last.stream().map(Line::text).toList());
        if (!text.contains("do not apply.")) {
            assertThat(isHeading)
                    .as("page " + page + " ends with the heading " + text)
                    .isFalse();
        }
    }

    /** Words that run out of their cell lie on those of the next. */
    private static void nothingLiesOnAnother(List<Line> lines, int page) {
        for (int i = 0; i < lines.size(); i++) {
            for (int j = i + 1; j < lines.size(); j++) {
                Line one = lines.get(i);
                Line other = lines.get(j);
                boolean apart =
                        Math.abs(one.y() - other.y()) > 4 || one.to() < other.from() + 1 || other.to() < one.from() + 1;
                assertThat(apart)
                        .as("page " + page + ": \"" + one.text() + "\" and \"" + other.text() + "\" lie on one another")
                        .isTrue();
            }
        }
    }

    private static org.assertj.core.data.Offset<Float> within() {
        return org.assertj.core.data.Offset.offset(1f);
    }

    static PDRectangle size(PaperSize size) {
        return size == PaperSize.LETTER ? PDRectangle.LETTER : PDRectangle.A4;
    }

    @ParameterizedTest
    @EnumSource(PaperSize.class)
    void an_owners_report_of_little_is_one_sheet(PaperSize size) throws Exception {
        byte[] pdf = Reports.report(SHORT, Reader.OWNER, size).pdf();

        sound(pdf, size(size));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
        }
    }

    @ParameterizedTest
    @EnumSource(PaperSize.class)
    void thirty_sheets_and_more_keep_their_numbers_margins_and_headings(PaperSize size) throws Exception {
        byte[] pdf = Reports.report(Reports.longVisit(), Reader.FILE, size).pdf();

        sound(pdf, size(size));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isGreaterThanOrEqualTo(30);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "half-answered",
                "neglected-hall",
                "jumper-removed",
                "sound-mill",
                "three-reasons",
                "well-kept-church"
            })
    void the_examples_keep_their_margins_headings_and_cells(String name) throws Exception {
        String text = Reports.text(Path.of("../docs/examples/" + name + ".yaml"));
        for (Reader reader : Reader.values()) {
            for (PaperSize size : PaperSize.values()) {
                sound(Reports.report(text, reader, size).pdf(), size(size));
            }
        }
    }

    @Test
    void a_word_longer_than_its_cell_is_broken_and_not_cut_off() throws Exception {
        String text = Reports.text(Reports.NEGLECTED)
                .replace("Elm Hall (invented)", "W".repeat(300))
                .replace("Old number one", "M".repeat(200))
                .replace("a brown rim on the glass", "x".repeat(400))
                .replace("lagged over", "y".repeat(150))
                .replace("a log book hangs there", "z".repeat(200))
                .replace("the caretaker", "o".repeat(90))
                .replace("LW-2", "L" + "2".repeat(30));
        for (Reader reader : Reader.values()) {
            byte[] pdf = Reports.report(text, reader, PaperSize.A4).pdf();

            sound(pdf, size(PaperSize.A4));
            String whole = Reports.pdfText(pdf).replaceAll("\\s", "");
            assertThat(whole).contains("W".repeat(300), "M".repeat(200), "z".repeat(200));
        }
    }

    @Test
    void every_finding_can_be_selected_as_text() throws Exception {
        for (Reader reader : Reader.values()) {
            String text = Reports.flowing(
                    Reports.pdfText(Reports.report(Reports.text(Reports.NEGLECTED), reader, PaperSize.LETTER)
                            .pdf()));
            for (Finding finding : Reports.judged(Reports.text(Reports.NEGLECTED))
                    .units()
                    .get(0)
                    .assessment()
                    .findings()) {
                assertThat(text).contains(finding.title(), Reports.flowing(finding.why()));
            }
        }
    }

    @Test
    void names_with_letters_of_other_lands_are_printed() throws Exception {
        String text = SHORT.replace(
                "Elm Hall (invented)", "\u0141\u00f3d\u017a \u0416\u0443\u043a \u0391\u03b8\u03ae\u03bd\u03b1");

        assertThat(Reports.pdfText(
                        Reports.report(text, Reader.OWNER, PaperSize.A4).pdf()))
                .contains("\u0141\u00f3d\u017a \u0416\u0443\u043a \u0391\u03b8\u03ae\u03bd\u03b1");
    }
}
