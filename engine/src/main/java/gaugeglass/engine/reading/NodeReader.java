package gaugeglass.engine.reading;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads a whole YAML or JSON text into nodes; a syntax error is one mistake, doubled keys are all
 * named.
 */
public final class NodeReader {
    private static final int DEEPEST = 24;

    private final String file;
    private final List<Mistake> mistakes;

    private NodeReader(String file, List<Mistake> mistakes) {
        this.file = file;
        this.mistakes = mistakes;
    }

    /**
     * Reads a text.
     *
     * @param file the name to use in messages
     * @param text JSON when its first character is an opening brace or bracket, else YAML
     * @param mistakes takes doubled keys, aliases and the like
     * @throws Mistakes when the text is not YAML or JSON at all
     */
    public static Node read(String file, String text, List<Mistake> mistakes) {
        return new NodeReader(file, mistakes).whole(text.startsWith("\uFEFF") ? text.substring(1) : text);
    }

    private Node whole(String text) {
        boolean json = looksLikeJson(text);
        JsonFactory factory = json
                ? JsonFactory.builder()
                        .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
                        .build()
                : YAMLFactory.builder().build();
        try (JsonParser parser = factory.createParser(text)) {
            JsonToken token = parser.nextToken();
            if (token == null) {
                throw new Mistakes(List.of(mistake(1, 1, "the file is empty", "an inspection")));
            }
            Node node = node(parser, token, 0);
            if (parser.nextToken() != null) {
                JsonLocation at = parser.currentTokenLocation();
                throw new Mistakes(List.of(mistake(
                        at.getLineNr(), at.getColumnNr(), "a second document begins here", "one document in a file")));
            }
            return node;
        } catch (JsonProcessingException e) {
            JsonLocation at = e.getLocation();
            throw new Mistakes(List.of(mistake(
                    at == null ? 0 : at.getLineNr(),
                    at == null ? 0 : at.getColumnNr(),
                    "this is not " + (json ? "JSON" : "YAML") + ": " + firstLine(e.getOriginalMessage()),
                    "")));
        } catch (IOException e) {
            throw new Mistakes(List.of(mistake(0, 0, "cannot be read: " + firstLine(e.getMessage()), "")));
        }
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

    private Node node(JsonParser parser, JsonToken token, int depth) throws IOException {
        JsonLocation at = parser.currentTokenLocation();
        int line = at.getLineNr();
        int column = at.getColumnNr();
        if (depth > DEEPEST) {
            throw new Mistakes(
                    List.of(mistake(line, column, "this is nested too deeply", "at most " + DEEPEST + " levels")));
        }
        if (parser instanceof YAMLParser yaml && (yaml.isCurrentAlias() || yaml.getObjectId() != null)) {
            throw new Mistakes(List.of(mistake(
                    line, column, "anchors and aliases (& and *) are not used here", "the answer written out")));
        }
        switch (token) {
            case START_OBJECT:
                return fields(parser, line, column, depth);
            case START_ARRAY:
                List<Node> all = new ArrayList<>();
                for (JsonToken t = parser.nextToken(); t != JsonToken.END_ARRAY; t = parser.nextToken()) {
                    all.add(node(parser, t, depth + 1));
                }
                return new Node.Items(all, line, column);
            case VALUE_NULL:
                return new Node.Scalar("", false, line, column);
            case VALUE_STRING:
                return new Node.Scalar(parser.getText(), isQuoted(parser), line, column);
            default:
                return new Node.Scalar(parser.getText(), false, line, column);
        }
    }

    private static boolean isQuoted(JsonParser parser) throws IOException {
        return !(parser instanceof YAMLParser) || !parser.getText().isEmpty();
    }

    private Node fields(JsonParser parser, int line, int column, int depth) throws IOException {
        Map<String, Node.Field> all = new LinkedHashMap<>();
        for (JsonToken t = parser.nextToken(); t != JsonToken.END_OBJECT; t = parser.nextToken()) {
            String key = parser.currentName();
            JsonLocation at = parser.currentTokenLocation();
            Node value = node(parser, parser.nextToken(), depth + 1);
            Node.Field before = all.putIfAbsent(key, new Node.Field(key, value, at.getLineNr(), at.getColumnNr()));
            if (before != null) {
                mistakes.add(mistake(
                        at.getLineNr(),
                        at.getColumnNr(),
                        "\"" + key + "\" stands here a second time; the first is on line " + before.line(),
                        "each key once"));
            }
        }
        return new Node.Fields(all, line, column);
    }

    private Mistake mistake(int line, int column, String what, String expected) {
        return new Mistake(file, line, column, "", what, expected, "");
    }

    private static String firstLine(String text) {
        if (text == null) {
            return "no more is known";
        }
        int end = text.indexOf('\n');
        return (end < 0 ? text : text.substring(0, end)).strip();
    }
}
