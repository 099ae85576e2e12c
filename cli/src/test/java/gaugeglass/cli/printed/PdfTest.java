package gaugeglass.cli.printed;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.Assessment.Finding;
import java.io.IOException;
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

/** The sheets of paper, looked at with PDFBox: what can be selected, where it stands, and where pages break. */
class PdfTest {
    private static final String SHORT = "format: 1\nsite: {id: elm-hall, name: Elm Hall (invented), co-alarm: none}\n"
            + "visit: {date: 2026-09-14, by: A. Technician}\nboilers:\n  - id: B1\n    level: {line: in-glass, proven: 4 in}\n";

    /** One line of a page with whether it is a heading. */
    record Line(String text, float y, boolean isHeading) {}

    /** The lines of a page from top to bottom; fails where a letter stands outside of the sheet's margins. */
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
                boolean isHeading = first.getFont().getName().contains("Bold") && first.getFontSizeInPt() > 11;
                lines.add(new Line(text, first.getY(), isHeading));
            }
        };
        stripper.setSortByPosition(true);
        stripper.setStartPage(page + 1);
        stripper.setEndPage(page + 1);
        stripper.getText(pdf);
        return lines;
    }

    static void sound(byte[] bytes, PDRectangle size) throws IOException {
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
                assertThat(body.get(body.size() - 1).isHeading())
                        .as("page " + (i + 1) + " ends with the heading " + body.get(body.size() - 1))
                        .isFalse();
                for (org.apache.pdfbox.cos.COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertThat(font.isEmbedded()).as(font.getName()).isTrue();
                }
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
