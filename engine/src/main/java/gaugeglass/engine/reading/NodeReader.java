package gaugeglass.engine.reading;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.io.JsonEOFException;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;

/**
 * Reads a whole YAML or JSON text into nodes; a syntax error is one mistake, doubled keys are all named.
 *
 * <p>No value is ever turned into a number, a date or a truth value here: each stays as it was written. YAML is taken
 * apart event by event, so that aliases are refused before anything is expanded and so that a plain word is told from a
 * quoted one.
 */
public final class NodeReader {
    /** The longest text that is read, in characters. */
    public static final int LONGEST = 8 * 1024 * 1024;

    /** So many mistakes are named in one file; then reading stops. */
    public static final int MOST_MISTAKES = 100;

    private static final int DEEPEST = 24;

    private static final JsonFactory JSON = JsonFactory.builder()
            .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
            // A pool across threads would keep the buffers of the largest file ever read.
            .build();

    private final String file;
    private final List<Mistake> mistakes;
    private final List<String> path = new ArrayList<>();

    private NodeReader(String file, List<Mistake> mistakes) {
        this.file = file;
        this.mistakes = mistakes;
    }

    /**
     * Reads a text.
     *
     * <p>A byte-order mark at the beginning is skipped and no-break spaces count as spaces.
     *
     * @param file the name to use in messages
     * @param text JSON when its first character is an opening brace or bracket, else YAML
     * @param mistakes takes doubled keys, so that reading can go on
     * @throws Mistakes when the text cannot be taken apart at all, or uses what is refused: aliases, tags, several
     *     documents, deep nesting, more than {@link #LONGEST} characters
     */
    public static Node read(String file, String text, List<Mistake> mistakes) {
        NodeReader reader = new NodeReader(file, mistakes);
        if (text.length() > LONGEST) {
            throw reader.end(0, 0, "the text is too long: " + text.length() + " characters", "at most " + LONGEST);
        }
        String plain = reader.prepared(text);
        return looksLikeJson(plain) ? reader.json(plain) : reader.yaml(plain);
    }

    private static boolean looksLikeJson(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (!Character.isWhitespace(c)) {
                return c == '{' || c == '[';
            }
        }
        return false;
    }

    /** The text without its byte-order mark and odd spaces; refuses what no text file holds. */
    private String prepared(String text) {
        int start = text.startsWith("\uFEFF") ? 1 : 0;
        StringBuilder changed = null;
        for (int i = start; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < ' ' ? c != '\n' && c != '\t' && c != '\r' : c >= 0x7F && c < 0xA0 && c != 0x85) {
                throw c == 0
                        ? at(text, i, "a zero byte stands here: this is no text file", "YAML or JSON")
                        : at(
                                text,
                                i,
                                "a control character (code " + (int) c + ") stands here",
                                "none; where one is meant it is written with a backslash, between double quotes");
            }
            if (isOddSpace(c)) {
                if (changed == null) {
                    changed = new StringBuilder(text);
                }
                changed.setCharAt(i, ' ');
            }
        }
        return changed == null ? text.substring(start) : changed.substring(start);
    }

    /** Whether it is a space that does not break a line. */
    static boolean isOddSpace(int c) {
        return c == '\u00A0' || c == '\u2007' || c == '\u202F';
    }

    private Mistakes at(String text, int index, String what, String expected) {
        int line = 1;
        int column = 1;
        for (int i = 0; i < index; i++) {
            column++;
            if (text.charAt(i) == '\n') {
                line++;
                column = 1;
            }
        }
        return end(line, column, what, expected);
    }

    private Mistakes end(int line, int column, String what, String expected) {
        List<Mistake> all = new ArrayList<>(mistakes);
        all.add(mistake(line, column, what, expected));
        return new Mistakes(all);
    }

    private Mistake mistake(int line, int column, String what, String expected) {
        return new Mistake(file, line, column, String.join("/", path), what, expected, "");
    }

    private void deep(int depth, int line, int column) {
        if (depth > DEEPEST) {
            path.clear();
            throw end(line, column, "this is nested too deeply", "at most " + DEEPEST + " levels");
        }
    }

    private void put(Map<String, Node.Field> all, String key, Node value, int line, int column) {
        Node.Field before = all.putIfAbsent(key, new Node.Field(key, value, line, column));
        if (before != null) {
            mistakes.add(mistake(
                    line,
                    column,
                    "\"" + Node.shortened(key) + "\" stands here a second time; the first is on line " + before.line(),
                    "each key once"));
            if (mistakes.size() >= MOST_MISTAKES) {
                throw new Mistakes(mistakes);
            }
        }
    }

    // ---- JSON

    private Node json(String text) {
        try (JsonParser parser = JSON.createParser(text)) {
            Node node = json(parser, parser.nextToken(), 0);
            if (parser.nextToken() != null) {
                JsonLocation at = parser.currentTokenLocation();
                throw end(
                        at.getLineNr(),
                        at.getColumnNr(),
                        "something follows the end of the JSON value",
                        "one document in a file");
            }
            return node;
        } catch (JsonProcessingException e) {
            path.clear();
            JsonLocation at = e.getLocation();
            int line = at == null ? 0 : at.getLineNr();
            int column = at == null ? 0 : at.getColumnNr();
            if (e instanceof JsonEOFException) {
                throw end(line, column, "the JSON ends before it is complete", "a closing bracket, brace or quote");
            }
            String problem = SyntaxWords.json(e.getOriginalMessage());
            throw end(line, column, "this is not JSON: " + problem, "");
        } catch (IOException e) {
            throw end(0, 0, "cannot be read: " + SyntaxWords.firstLine(e.getMessage()), "");
        }
    }

    private Node json(JsonParser parser, JsonToken token, int depth) throws IOException {
        JsonLocation at = parser.currentTokenLocation();
        int line = at.getLineNr();
        int column = at.getColumnNr();
        deep(depth, line, column);
        switch (token) {
            case START_OBJECT:
                Map<String, Node.Field> fields = new LinkedHashMap<>();
                while (parser.nextToken() != JsonToken.END_OBJECT) {
                    String key = parser.currentName();
                    JsonLocation place = parser.currentTokenLocation();
                    path.add(key);
                    Node value = json(parser, parser.nextToken(), depth + 1);
                    path.remove(path.size() - 1);
                    put(fields, key, value, place.getLineNr(), place.getColumnNr());
                }
                return new Node.Fields(fields, line, column);
            case START_ARRAY:
                List<Node> all = new ArrayList<>();
                for (JsonToken t = parser.nextToken(); t != JsonToken.END_ARRAY; t = parser.nextToken()) {
                    path.add(String.valueOf(all.size() + 1));
                    all.add(json(parser, t, depth + 1));
                    path.remove(path.size() - 1);
                }
                return new Node.Items(all, line, column);
            case VALUE_NULL:
                return new Node.Scalar("", false, line, column);
            case VALUE_STRING:
                return new Node.Scalar(parser.getText(), true, line, column);
            default:
                return new Node.Scalar(parser.getText(), false, line, column);
        }
    }

    // ---- YAML

    private Node yaml(String text) {
        LoaderOptions options = new LoaderOptions();
        options.setCodePointLimit(LONGEST);
        try {
            ParserImpl parser = new ParserImpl(new StreamReader(text), options);
            parser.getEvent();
            Event first = parser.getEvent();
            if (first.getEventId() == Event.ID.StreamEnd) {
                throw end(1, 1, text.isBlank() ? "the file is empty" : "the file holds nothing but comments", "");
            }
            Event begin = parser.getEvent();
            Node node = yaml(parser, begin, 0);
            if (node instanceof Node.Scalar scalar && !scalar.isQuoted()) {
                throw scalar.isBlank()
                        ? end(1, 1, "the file holds nothing", "")
                        : end(
                                node.line(),
                                node.column(),
                                "no key was found here, only the text " + node.shape(),
                                "a key, a colon and a space, such as \"format: 1\"");
            }
            parser.getEvent();
            Event last = parser.getEvent();
            if (last.getEventId() != Event.ID.StreamEnd) {
                Mark at = last.getStartMark();
                throw end(
                        at.getLine() + 1,
                        at.getColumn() + 1,
                        "a second document begins here",
                        "one document in a file");
            }
            return node;
        } catch (MarkedYAMLException e) {
            path.clear();
            SyntaxWords words = SyntaxWords.yaml(e, text);
            throw end(words.line(), words.column(), words.what(), words.expected());
        } catch (YAMLException e) {
            path.clear();
            throw end(0, 0, "this is not YAML: " + SyntaxWords.firstLine(e.getMessage()), "");
        }
    }

    private Node yaml(ParserImpl parser, Event event, int depth) {
        Mark at = event.getStartMark();
        int line = at.getLine() + 1;
        int column = at.getColumn() + 1;
        deep(depth, line, column);
        refuseAnchor(event, line, column);
        switch (event.getEventId()) {
            case Scalar:
                return scalar((ScalarEvent) event, line, column);
            case SequenceStart:
                List<Node> all = new ArrayList<>();
                for (Event e = parser.getEvent(); e.getEventId() != Event.ID.SequenceEnd; e = parser.getEvent()) {
                    path.add(String.valueOf(all.size() + 1));
                    all.add(yaml(parser, e, depth + 1));
                    path.remove(path.size() - 1);
                }
                return new Node.Items(all, line, column);
            case MappingStart:
                Map<String, Node.Field> fields = new LinkedHashMap<>();
                for (Event e = parser.getEvent(); e.getEventId() != Event.ID.MappingEnd; e = parser.getEvent()) {
                    Mark place = e.getStartMark();
                    String key = key(e);
                    path.add(key);
                    Node value = yaml(parser, parser.getEvent(), depth + 1);
                    path.remove(path.size() - 1);
                    put(fields, key, value, place.getLine() + 1, place.getColumn() + 1);
                }
                return new Node.Fields(fields, line, column);
            default:
                throw new IllegalStateException("a value was to come, and " + event + " came");
        }
    }

    private String key(Event event) {
        int line = event.getStartMark().getLine() + 1;
        int column = event.getStartMark().getColumn() + 1;
        refuseAnchor(event, line, column);
        if (!(event instanceof ScalarEvent scalar)) {
            throw end(line, column, "a list or a group stands where a key belongs", "one word and a colon");
        }
        String key = unquoted(scalar, line, column);
        if (key.isEmpty()) {
            throw end(line, column, "there is no key before the colon", "one word and a colon");
        }
        if (key.equals("<<") && scalar.isPlain()) {
            throw end(line, column, "merge keys (<<) are not used here", "the answers written out");
        }
        return key;
    }

    private Node scalar(ScalarEvent event, int line, int column) {
        String text = unquoted(event, line, column);
        // The value is not the same object when curly quotes were taken off.
        return new Node.Scalar(text, !event.isPlain() || text != event.getValue(), line, column);
    }

    /** Curly quotes come from office programs and mean what straight ones do. */
    private String unquoted(ScalarEvent event, int line, int column) {
        String text = event.getValue();
        if (!event.isPlain() || text.isEmpty() || !isCurly(text.charAt(0))) {
            return text;
        }
        if (text.length() > 1 && isCurly(text.charAt(text.length() - 1))) {
            return text.substring(1, text.length() - 1);
        }
        throw end(
                line,
                column,
                "a curly quote opens here, and no other closes it at the end of the value",
                "straight quotes around the whole value");
    }

    static boolean isCurly(char c) {
        return c == '\u201C' || c == '\u201D' || c == '\u201E' || c == '\u2018' || c == '\u2019' || c == '\u201A';
    }

    private void refuseAnchor(Event event, int line, int column) {
        if (event instanceof AliasEvent || event instanceof NodeEvent node && node.getAnchor() != null) {
            throw end(
                    line,
                    column,
                    "anchors and aliases (& and *) are not used here",
                    "the answer written out; a text that begins with one of these stands in quotes");
        }
        String tag = event instanceof ScalarEvent scalar
                ? scalar.getTag()
                : event instanceof CollectionStartEvent collection ? collection.getTag() : null;
        if (tag != null) {
            throw end(
                    line,
                    column,
                    "tags (!) are not used here",
                    "the answer alone; a text that begins with an exclamation mark stands in quotes");
        }
    }
}
