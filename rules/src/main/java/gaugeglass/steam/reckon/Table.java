package gaugeglass.steam.reckon;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.quantity.Unit;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * One of the tables that lie beside these classes: rows of text under named columns.
 *
 * <p>Lines that begin with {@code #} say where the figures come from. Fields are parted by commas; one that holds a comma
 * stands between double quotes. A table that is not of that form is a fault of the program and ends it.
 */
final class Table {
    private static final Map<String, Table> READ = new ConcurrentHashMap<>();

    private final String file;
    private final List<String> columns;
    private final List<Row> rows;

    private Table(String file, List<String> columns, List<List<String>> lines) {
        this.file = file;
        this.columns = columns;
        List<Row> made = new ArrayList<>();
        for (List<String> line : lines) {
            if (line.size() != columns.size()) {
                throw new IllegalStateException(file + ": " + line + " has not " + columns.size() + " fields");
            }
            made.add(new Row(line));
        }
        this.rows = List.copyOf(made);
    }

    /** Read once: a visit to many mains asks the same table again and again. */
    static Table read(String file) {
        return READ.computeIfAbsent(file, Table::fromFile);
    }

    private static Table fromFile(String file) {
        List<List<String>> lines = new ArrayList<>();
        try (InputStream in = Table.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("no table " + file);
            }
            BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                if (!line.isBlank() && line.charAt(0) != '#') {
                    lines.add(fields(line));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + file, e);
        }
        return new Table(file, lines.get(0), lines.subList(1, lines.size()));
    }

    List<Row> rows() {
        return rows;
    }

    List<String> columns() {
        return columns;
    }

    /** Everything that stands in a column, in the order of the table. */
    List<String> column(String name) {
        List<String> all = new ArrayList<>();
        for (Row row : rows) {
            all.add(row.text(name));
        }
        return all;
    }

    /** The row with that text in a column. */
    Row row(String column, String text) {
        for (Row row : rows) {
            if (row.text(column).equals(text)) {
                return row;
            }
        }
        throw new IllegalStateException(file + ": no " + column + " " + text);
    }

    private static List<String> fields(String line) {
        List<String> fields = new ArrayList<>();
        StringBuilder field = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                fields.add(field.toString());
                field.setLength(0);
            } else {
                field.append(c);
            }
        }
        fields.add(field.toString());
        return List.copyOf(fields);
    }

    /** One line of the table. */
    final class Row {
        private final List<String> fields;

        private Row(List<String> fields) {
            this.fields = fields;
        }

        String text(String column) {
            int index = columns.indexOf(column);
            if (index < 0) {
                throw new IllegalStateException(file + ": no column " + column);
            }
            return fields.get(index);
        }

        boolean isEmpty(String column) {
            return text(column).isEmpty();
        }

        Rational number(String column) {
            return Quantity.of(text(column), Unit.TIMES).value();
        }

        Quantity quantity(String column, Unit unit) {
            return Quantity.of(text(column), unit);
        }
    }
}
