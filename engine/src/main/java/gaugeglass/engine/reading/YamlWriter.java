package gaugeglass.engine.reading;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.emitter.Emitter;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.events.DocumentEndEvent;
import org.yaml.snakeyaml.events.DocumentStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.ImplicitTuple;
import org.yaml.snakeyaml.events.MappingEndEvent;
import org.yaml.snakeyaml.events.MappingStartEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.events.SequenceEndEvent;
import org.yaml.snakeyaml.events.SequenceStartEvent;
import org.yaml.snakeyaml.events.StreamEndEvent;
import org.yaml.snakeyaml.events.StreamStartEvent;

/**
 * Writes maps, lists and texts as YAML that {@link NodeReader} reads back as the same keys and texts.
 *
 * <p>An empty text is written as a key with nothing after it: the reader takes that as not answered. Short groups that
 * hold texts only stand on one line.
 */
public final class YamlWriter {
    private static final @Nullable Mark NOWHERE = null;
    private static final int LONGEST_ON_ONE_LINE = 72;
    private static final ImplicitTuple UNTAGGED = new ImplicitTuple(true, true);

    private static final Set<String> AMBIGUOUS = Set.of("yes", "no", "y", "n", "on", "off", "true", "false");

    private final Emitter out;

    private YamlWriter(Emitter out) {
        this.out = out;
    }

    /** Writes a map from keys to texts, lists and maps. */
    public static String write(Map<String, ?> all) {
        DumperOptions options = new DumperOptions();
        options.setIndent(2);
        options.setIndicatorIndent(2);
        options.setIndentWithIndicator(true);
        options.setWidth(Integer.MAX_VALUE);
        options.setSplitLines(false);
        options.setLineBreak(DumperOptions.LineBreak.UNIX);
        // The reader takes a no-break space for a space, unless it is escaped.
        options.setAllowUnicode(!holdsOddSpace(all));
        StringWriter text = new StringWriter();
        try {
            YamlWriter writer = new YamlWriter(new Emitter(text, options));
            writer.emit(new StreamStartEvent(NOWHERE, NOWHERE));
            writer.emit(new DocumentStartEvent(NOWHERE, NOWHERE, false, null, null));
            writer.node(all, false);
            writer.emit(new DocumentEndEvent(NOWHERE, NOWHERE, false));
            writer.emit(new StreamEndEvent(NOWHERE, NOWHERE));
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory failed", e);
        }
        return text.toString();
    }

    /** One text as it stands after a key, quoted where it must be. */
    public static String scalar(String text) {
        String line = write(Map.of("k", text));
        return line.substring(2).strip();
    }

    private void emit(Event event) throws IOException {
        out.emit(event);
    }

    private void node(Object value, boolean isInside) throws IOException {
        if (value instanceof Map<?, ?> map) {
            FlowStyle style = isInside && isShort(map) ? FlowStyle.FLOW : FlowStyle.BLOCK;
            emit(new MappingStartEvent(null, null, true, NOWHERE, NOWHERE, style));
            for (Map.Entry<?, ?> entry : map.entrySet()) {
                scalarEvent(entry.getKey().toString());
                node(entry.getValue(), true);
            }
            emit(new MappingEndEvent(NOWHERE, NOWHERE));
        } else if (value instanceof List<?> list) {
            boolean isFlat = list.stream().allMatch(one -> one instanceof String);
            emit(new SequenceStartEvent(null, null, true, NOWHERE, NOWHERE, isFlat ? FlowStyle.FLOW : FlowStyle.BLOCK));
            for (Object one : list) {
                node(one, !list.isEmpty() && !isFlat && isShort(one));
            }
            emit(new SequenceEndEvent(NOWHERE, NOWHERE));
        } else {
            scalarEvent(value.toString());
        }
    }

    private void scalarEvent(String text) throws IOException {
        emit(new ScalarEvent(null, null, UNTAGGED, text, NOWHERE, NOWHERE, style(text)));
    }

    private static ScalarStyle style(String text) {
        if (text.isEmpty()) {
            return ScalarStyle.PLAIN;
        }
        boolean isRisky = text.equals("~")
                || text.equals("null")
                || text.equals("<<")
                || isOtherwiseElsewhere(text)
                || NodeReader.isCurly(text.charAt(0))
                || text.chars().anyMatch(c -> c < ' ' || c == 0x85 || c == 0x2028 || c == 0x2029);
        return isRisky ? ScalarStyle.DOUBLE_QUOTED : ScalarStyle.PLAIN;
    }

    /** Whether some readers of YAML take a bare word for a truth value or a bare time for a number. */
    private static boolean isOtherwiseElsewhere(String text) {
        if (text.indexOf(':') > 0 && Character.isDigit(text.charAt(0))) {
            return true;
        }
        return text.length() <= 5 && AMBIGUOUS.contains(text.toLowerCase(Locale.ROOT));
    }

    private static boolean isShort(Object value) {
        return value instanceof Map<?, ?> map
                && !map.isEmpty()
                && map.values().stream().allMatch(one -> one instanceof String || isFlatList(one))
                && map.toString().length() <= LONGEST_ON_ONE_LINE;
    }

    private static boolean isFlatList(Object value) {
        return value instanceof List<?> list && list.stream().allMatch(one -> one instanceof String);
    }

    private static boolean holdsOddSpace(Object value) {
        if (value instanceof Map<?, ?> map) {
            return map.entrySet().stream().anyMatch(e -> holdsOddSpace(e.getKey()) || holdsOddSpace(e.getValue()));
        }
        if (value instanceof List<?> list) {
            return list.stream().anyMatch(YamlWriter::holdsOddSpace);
        }
        return value.toString().chars().anyMatch(NodeReader::isOddSpace);
    }
}
