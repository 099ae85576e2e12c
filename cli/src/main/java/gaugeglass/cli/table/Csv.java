package gaugeglass.cli.table;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import gaugeglass.engine.text.Plain;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.List;

/** A table as a spreadsheet takes it: a row of headings, then one row for each thing. */
public final class Csv implements AutoCloseable {
    /** Spreadsheets take UTF-8 for something else without it. */
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    /** A cell that begins with one of these is a formula to some spreadsheet. */
    private static final String FORMULA_STARTS = "=+-@|%\uFF1D\uFF0B\uFF0D\uFF20";

    private final CsvWriter csv;

    private Csv(CsvWriter csv) {
        this.csv = csv;
    }

    /** Begins a table. */
    public static Csv to(Writer out, List<String> headings) {
        try {
            out.write(BYTE_ORDER_MARK);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(out);
        csv.writeRecord(headings);
        return new Csv(csv);
    }

    /** One more row. */
    public void row(List<String> cells) {
        csv.writeRecord(cells.stream().map(Csv::harmless).toList());
    }

    /** A cell that no spreadsheet takes for a formula. */
    public static String harmless(String text) {
        String plain = Plain.of(text.replace('\t', ' ').replace('\r', ' ').replace('\n', ' '));
        String begins = plain.strip();
        return !begins.isEmpty() && FORMULA_STARTS.indexOf(begins.charAt(0)) >= 0 ? "'" + plain : plain;
    }

    @Override
    public void close() {
        try {
            csv.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
