package gaugeglass.engine.text;

/**
 * Something wrong in what a person wrote, and where.
 *
 * @param file the file as the person named it
 * @param line from 1; 0 where no place in the file is meant
 * @param column from 1; 0 where no place in the line is meant
 * @param where the path of keys that leads there; may be empty
 * @param what what is wrong, as a sentence without a full stop
 * @param expected what would have been right; may be empty
 * @param nearest the nearest known word; empty where none is near
 */
public record Mistake(String file, int line, int column, String where, String what, String expected, String nearest) {

    /** One message on one line, harmless on a terminal. */
    public String message() {
        StringBuilder text = new StringBuilder(Plain.of(file));
        if (line > 0) {
            text.append(':').append(line);
            if (column > 0) {
                text.append(':').append(column);
            }
        }
        text.append(": ");
        if (!where.isEmpty()) {
            text.append(Plain.of(where)).append(": ");
        }
        text.append(Plain.of(what));
        if (!expected.isEmpty()) {
            text.append("; expected ").append(Plain.of(expected));
        }
        if (!nearest.isEmpty()) {
            text.append("; did you mean \"").append(Plain.of(nearest)).append("\"?");
        }
        return text.toString();
    }

    @Override
    public String toString() {
        return message();
    }
}
