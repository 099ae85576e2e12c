package gaugeglass.cli.printed;

import gaugeglass.checklists.Checklist;
import gaugeglass.cli.sheet.SingleAnswerStops;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.observation.Inspection;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A checklist to be filled in by hand, or as an inspection filled it in: as one HTML file that needs nothing else, and as
 * a PDF of the same pages. The same checklist, rulebook and inspection give the same bytes.
 */
public final class PrintedSheet {
    private final String html;

    /**
     * Lays out a checklist.
     *
     * @param stops the answers that forbid firing by themselves
     * @param inspection its answers are filled in; empty for a blank sheet
     */
    public PrintedSheet(
            Rulebook rulebook,
            SingleAnswerStops stops,
            Checklist checklist,
            Optional<Inspection> inspection,
            PaperSize size) {
        String css = PrintedReport.resource("report.css") + PrintedReport.resource("sheet.css");
        this.html = PrintedReport.rendered(
                "sheet.jte", new SheetPages(rulebook, stops, checklist).of(inspection, size, css));
    }

    /** The sheet for a browser. */
    public String html() {
        return html;
    }

    /**
     * The sheet on paper.
     *
     * @param date noted in the file as the day it was made
     * @throws IOException when it cannot be made
     */
    public byte[] pdf(LocalDate date) throws IOException {
        return Pdf.of(html, PrintedReport.resource("paper.css"), List.of(), date);
    }
}
