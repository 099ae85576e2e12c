package gaugeglass.cli.printed;

import gaugeglass.cli.picture.Picture;
import gaugeglass.cli.report.JsonReport;
import gaugeglass.cli.visit.Judged;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.text.Plain;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A judged visit as one HTML file that needs nothing else, as a PDF of the same pages, and its work as a list for other
 * programs. The same visit gives the same bytes.
 */
public final class PrintedReport {
    private final ReportPages pages;
    private final Judged.Visit visit;
    private final Rulebook rulebook;
    private final View view;
    private final String html;

    /**
     * Lays out a visit.
     *
     * @param folder where the photos are that the inspection names; empty where it came without a folder
     */
    public PrintedReport(Rulebook rulebook, Judged.Visit visit, Reader reader, PaperSize size, Optional<Path> folder) {
        this.pages = new ReportPages(rulebook, reader);
        this.visit = visit;
        this.rulebook = rulebook;
        this.view = pages.of(visit, new Photos(folder), size, resource("report.css"));
        this.html = rendered(view);
    }

    static String rendered(View view) {
        return rendered("report.jte", view);
    }

    /** A page as one of the templates lays it out. */
    static String rendered(String template, Object view) {
        TemplateEngine engine = TemplateEngine.createPrecompiled(
                null, ContentType.Html, PrintedReport.class.getClassLoader(), PrintedReport.class.getPackageName());
        engine.setTrimControlStructures(true);
        StringOutput out = new StringOutput();
        engine.render(template, view, out);
        return harmless(out.toString());
    }

    /**
     * The page with every control, direction or other invisible character written out, whoever typed it and wherever it
     * went. The templates themselves hold none but line ends.
     */
    private static String harmless(String html) {
        return html.lines()
                .filter(line -> !line.isBlank())
                .map(line -> Plain.of(line.replace('\t', ' '))
                        .replace("\uFFFE", "\\ufffe")
                        .replace("\uFFFF", "\\uffff"))
                .collect(Collectors.joining("\n", "", "\n"));
    }

    /** The report for a browser. */
    public String html() {
        return html;
    }

    /**
     * The report on sheets of paper.
     *
     * @throws IOException when it cannot be made
     */
    public byte[] pdf() throws IOException {
        List<Picture> pictures =
                view.units().stream().flatMap(unit -> unit.pictures().stream()).toList();
        return Pdf.of(html, resource("paper.css"), pictures, visit.date());
    }

    /** The work as a table for a spreadsheet. */
    public String workAsCsv() {
        return WorkListFiles.csv(visit, pages.work(visit));
    }

    /** The work for a program. */
    public String workAsJson() {
        return WorkListFiles.json(visit, JsonReport.judgedBy(rulebook.book(), rulebook.packs()), pages.work(visit));
    }

    static String resource(String name) {
        try (InputStream in = PrintedReport.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("there is no " + name + " in this program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + name, e);
        }
    }
}
