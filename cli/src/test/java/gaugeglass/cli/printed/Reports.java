package gaugeglass.cli.printed;

import gaugeglass.cli.visit.Judge;
import gaugeglass.cli.visit.Judged;
import gaugeglass.cli.visit.Sources;
import gaugeglass.engine.Rulebook;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** Inspections of the tests and what is made of them. */
final class Reports {
    static final Path FOLDER = Path.of("src/test/resources/reports");
    static final Path NEGLECTED = FOLDER.resolve("neglected.yaml");
    static final Rulebook RULEBOOK = Rulebook.load(Reports.class.getClassLoader());

    private Reports() {}

    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What an inspection came to. */
    static Judged.Visit judged(String text) {
        try (Sources sources =
                new Sources(List.of("-"), false, new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)))) {
            Judged judged = new Judge(RULEBOOK, Optional.empty()).judge(sources.next());
            if (judged instanceof Judged.Visit visit) {
                return visit;
            }
            throw new IllegalStateException(judged.toString());
        }
    }

    static PrintedReport report(String text, Reader reader, PaperSize size) {
        return new PrintedReport(RULEBOOK, judged(text), reader, size, Optional.of(FOLDER));
    }

    static String pdfText(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    /** One line, so that it does not matter where lines were broken. */
    static String flowing(String text) {
        return text.replaceAll("\\s+", " ");
    }

    /** A visit to boilers in which everything is wrong that can be, long enough for thirty sheets. */
    static String longVisit() {
        StringBuilder text = new StringBuilder("format: 1\nsite: {id: mill, name: Long Mill (invented)}\n"
                + "visit: {date: 2026-09-14, by: A. Technician}\nboilers:\n");
        for (int boiler = 1; boiler <= 2; boiler++) {
            text.append("  - id: B")
                    .append(boiler)
                    .append("\n    level: {line: in-glass, boiler-heat: cold, proven: 4 in}\n");
            text.append("    cutoffs:\n      fitted: 6\n      each:\n");
            for (int cutoff = 1; cutoff <= 6; cutoff++) {
                text.append("        - tag: LW-").append(cutoff).append('\n');
                text.append("          kind: float\n          installed: 2001-05-01\n          mark: ")
                        .append(cutoff)
                        .append(" in\n          opened: 2019-01-01\n          flush-log: not-kept\n");
                text.append("          wiring: {value: jumpered, note: \"")
                        .append("The wire is long and winds about the panel, as is told here at length. ".repeat(6))
                        .append("\"}\n");
            }
        }
        return text.toString();
    }
}
