package gaugeglass.engine.reading;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Collection;
import java.util.Map;

/** Writes maps, collections, texts, numbers and truth values as JSON. */
public final class NodeWriter {
    private static final JsonFactory FACTORY = new JsonFactory();

    private NodeWriter() {}

    /** JSON on one line. */
    public static String line(Object value) {
        return write(value, false);
    }

    /** JSON with a line for each value, indented by two, lines ended by a line feed alone. */
    public static String pretty(Object value) {
        return write(value, true);
    }

    private static String write(Object value, boolean pretty) {
        StringWriter text = new StringWriter();
        try (JsonGenerator out = FACTORY.createGenerator(text)) {
            if (pretty) {
                DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
                out.setPrettyPrinter(
                        new DefaultPrettyPrinter().withObjectIndenter(indenter).withArrayIndenter(indenter));
            }
            write(out, value);
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory failed", e);
        }
        return text.toString();
    }

    private static void write(JsonGenerator out, Object value) throws IOException {
        if (value instanceof Map<?, ?> map) {
            out.writeStartObject();
            for (Map.Entry<?, ?> entry : map.entrySet()) {
                out.writeFieldName(entry.getKey().toString());
                write(out, entry.getValue());
            }
            out.writeEndObject();
        } else if (value instanceof Collection<?> all) {
            out.writeStartArray();
            for (Object one : all) {
                write(out, one);
            }
            out.writeEndArray();
        } else if (value instanceof Integer number) {
            out.writeNumber(number);
        } else if (value instanceof Long number) {
            out.writeNumber(number);
        } else if (value instanceof Boolean truth) {
            out.writeBoolean(truth);
        } else {
            out.writeString(value.toString());
        }
    }
}
