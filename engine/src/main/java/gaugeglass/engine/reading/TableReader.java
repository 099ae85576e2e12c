package gaugeglass.engine.reading;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Reads a table that a spreadsheet program saved as CSV: a first line of headings, then a line for each row.
 *
 * <p>Commas, semicolons and tabs between cells are told apart by the first line. A cell with nothing in it is as if the
 * row did not have it; a row of such cells is passed over.
 */
public final class TableReader {
    private TableReader() {}

    /**
     * Reads a table into one group of keys for each row; the keys are the headings.
     *
     * @param file the name to use in messages
     * @param mistakes takes what is wrong with a row, so that reading can go on
     * @throws Mistakes when the text is no table at all
     */
    public static List<Form> read(String file, String text, List<Mistake> mistakes) {
        String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
        List<CsvRecord> records = new ArrayList<>();
        char separator = separator(plain);
        try (CsvReader<CsvRecord> reader = CsvReader.builder()
                .fieldSeparator(separator)
                .skipEmptyLines(true)
                .allowExtraFields(true)
                .allowMissingFields(true)
                .ofCsvRecord(plain)) {
            reader.forEach(records::add);
        } catch (CsvParseException | java.io.IOException e) {
            throw new Mistakes(List.of(new Mistake(
                    file,
                    records.isEmpty()
                            ? 1
                            : (int) records.get(records.size() - 1).getStartingLineNumber() + 1,
                    0,
                    "",
                    "from here on this is no table",
                    "CSV as a spreadsheet program saves it; a quotation mark that opens must close",
                    "")));
        }
        if (records.isEmpty()) {
            throw new Mistakes(List.of(new Mistake(file, 1, 0, "", "the table is empty", "a line of headings", "")));
        }
        Map<Integer, List<Place>> places = places(plain, separator);
        int headingLine = (int) records.get(0).getStartingLineNumber();
        List<String> headings = new ArrayList<>();
        for (String heading : records.get(0).getFields()) {
            String plainHeading = spaced(heading).toLowerCase(Locale.ROOT).replace(' ', '-');
            if (!plainHeading.isEmpty() && headings.contains(plainHeading)) {
                Place place = places.get(headingLine).get(headings.size());
                mistakes.add(new Mistake(
                        file,
                        place.line(),
                        place.column(),
                        letter(headings.size()),
                        "two columns are called \"" + plainHeading + "\"",
                        "",
                        ""));
            }
            headings.add(plainHeading);
        }
        List<Form> rows = new ArrayList<>();
        for (CsvRecord row : records.subList(1, records.size())) {
            int line = (int) row.getStartingLineNumber();
            Map<String, Node.Field> cells = new LinkedHashMap<>();
            for (int i = 0; i < row.getFieldCount(); i++) {
                String cell = spaced(row.getField(i));
                if (cell.isEmpty()) {
                    continue;
                }
                String heading = i < headings.size() ? headings.get(i) : "";
                Place place = places.get(line).get(i);
                if (heading.isEmpty()) {
                    mistakes.add(new Mistake(
                            file,
                            place.line(),
                            place.column(),
                            letter(i),
                            "\"" + cell + "\" stands in a column without a heading",
                            "",
                            ""));
                } else {
                    Node.Scalar value = new Node.Scalar(cell, true, place.line(), place.column());
                    Place head = places.get(headingLine).get(i);
                    // What is wrong with a key is wrong with the heading.
                    cells.put(heading, new Node.Field(heading, value, head.line(), head.column()));
                }
            }
            if (!cells.isEmpty()) {
                rows.add(Form.of(file, "", new Node.Fields(cells, line, 0), mistakes));
            }
        }
        return rows;
    }

    /** Where a cell begins; both from 1. */
    private record Place(int line, int column) {}

    /** The places of each record's cells, by the line on which it begins; the reader itself tells no more than that line. */
    private static Map<Integer, List<Place>> places(String text, char separator) {
        Map<Integer, List<Place>> all = new HashMap<>();
        List<Place> row = new ArrayList<>();
        int line = 1;
        int start = 0;
        boolean isBegun = false;
        boolean hasQuotes = false;
        boolean isInside = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (!isBegun) {
                row.add(new Place(line, i - start + 1));
                isBegun = true;
                hasQuotes = c == '"';
            }
            if (hasQuotes && c == '"') {
                // Of two that stand for one the second takes back what the first did.
                isInside = !isInside;
            } else if (c == separator && !isInside) {
                isBegun = false;
            }
            boolean ends = c == '\n' || c == '\r' && !(i + 1 < text.length() && text.charAt(i + 1) == '\n');
            if (ends && !isInside) {
                all.put(row.get(0).line(), row);
                row = new ArrayList<>();
                isBegun = false;
            }
            if (ends) {
                line++;
                start = i + 1;
            }
        }
        // A last cell may be empty, and have no character of its own.
        row.add(new Place(line, text.length() - start + 1));
        all.putIfAbsent(row.get(0).line(), row);
        return all;
    }

    private static char separator(String text) {
        int end = text.indexOf('\n');
        String first = end < 0 ? text : text.substring(0, end);
        char found = ',';
        for (char candidate : new char[] {';', '\t'}) {
            if (first.indexOf(candidate) >= 0 && first.indexOf(',') < 0) {
                found = candidate;
            }
        }
        return found;
    }

    private static String letter(int column) {
        return "column " + (char) ('A' + Math.min(column, 25));
    }

    /** A cell without the odd spaces that are pasted into it. */
    private static String spaced(String cell) {
        StringBuilder text = new StringBuilder(cell.length());
        cell.chars().forEach(c -> text.append(NodeReader.isOddSpace(c) ? ' ' : (char) c));
        return text.toString().strip();
    }
}
