package gaugeglass.engine.reading;

import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Nearest;
import gaugeglass.engine.text.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One group of keys being read strictly: what is asked for is known, and whatever is left over is a
 * mistake.
 */
public final class Form {
    private final String file;
    private final String where;
    private final Node.Fields fields;
    private final List<Mistake> mistakes;
    private final Set<String> asked = new LinkedHashSet<>();

    private Form(String file, String where, Node.Fields fields, List<Mistake> mistakes) {
        this.file = file;
        this.where = where;
        this.fields = fields;
        this.mistakes = mistakes;
    }

    /** Opens a node as a group of keys; anything else is a mistake and opens as an empty group. */
    public static Form of(String file, String where, Node node, List<Mistake> mistakes) {
        if (node instanceof Node.Fields fields) {
            return new Form(file, where, fields, mistakes);
        }
        // The usual slip: the colon was left out, or the space behind it.
        String expected = node instanceof Node.Scalar scalar && !scalar.text().isBlank()
                ? "a group of keys, each with a colon and a space behind it"
                : "a group of keys";
        mistakes.add(new Mistake(file, node.line(), node.column(), where, "found " + node.shape(), expected, ""));
        return new Form(file, where, Node.Fields.at(node.line(), node.column()), mistakes);
    }

    public String file() {
        return file;
    }

    public String where() {
        return where;
    }

    public Node.Fields fields() {
        return fields;
    }

    public boolean has(String key) {
        asked.add(key);
        return fields.all().containsKey(key);
    }

    public Optional<Node> node(String key) {
        asked.add(key);
        return fields.get(key);
    }

    /** The text under a key that must be there. */
    public String text(String key) {
        Optional<Node> node = node(key);
        if (node.isEmpty()) {
            wrong(fields.line(), fields.column(), "\"" + key + "\" is missing", key + ":", "");
            return "";
        }
        return scalar(key, node.get());
    }

    /** The text under a key, or another text where the key is not there. */
    public String text(String key, String otherwise) {
        return node(key).map(node -> scalar(key, node)).orElse(otherwise);
    }

    private String scalar(String key, Node node) {
        if (node instanceof Node.Scalar scalar && !scalar.isBlank()) {
            return scalar.text().strip();
        }
        wrong(node.line(), node.column(), "\"" + key + "\" holds " + node.shape(), "one value", "");
        return "";
    }

    /** A word out of a closed list. */
    public <E extends Enum<E>> E word(String key, Class<E> type, E otherwise) {
        Optional<Node> node = node(key);
        if (node.isEmpty()) {
            return otherwise;
        }
        String text = scalar(key, node.get());
        List<String> words = new ArrayList<>();
        for (E constant : type.getEnumConstants()) {
            String word = Words.of(constant);
            if (word.equals(text)) {
                return constant;
            }
            words.add(word);
        }
        wrong(
                node.get().line(),
                node.get().column(),
                "\"" + text + "\" is not known for \"" + key + "\"",
                "one of " + String.join(", ", words),
                Nearest.to(text, words).orElse(""));
        return otherwise;
    }

    /** A list of texts; one text alone counts as a list of one. */
    public List<String> texts(String key) {
        Optional<Node> node = node(key);
        if (node.isEmpty()) {
            return List.of();
        }
        List<String> texts = new ArrayList<>();
        if (node.get() instanceof Node.Items items) {
            for (Node item : items.all()) {
                texts.add(scalar(key, item));
            }
        } else {
            texts.add(scalar(key, node.get()));
        }
        return texts;
    }

    /** The groups in a list of groups. */
    public List<Form> forms(String key) {
        Optional<Node> node = node(key);
        if (node.isEmpty()) {
            return List.of();
        }
        if (!(node.get() instanceof Node.Items items)) {
            wrong(
                    node.get().line(),
                    node.get().column(),
                    "\"" + key + "\" holds " + node.get().shape(),
                    "a list",
                    "");
            return List.of();
        }
        List<Form> forms = new ArrayList<>();
        int number = 1;
        for (Node item : items.all()) {
            forms.add(of(file, under(key + "/" + number++), item, mistakes));
        }
        return forms;
    }

    /** The group under a key; an empty group where the key is not there. */
    public Form form(String key) {
        return node(key)
                .map(node -> of(file, under(key), node, mistakes))
                .orElseGet(() -> new Form(file, under(key), Node.Fields.at(fields.line(), fields.column()), mistakes));
    }

    /** Each key of this group with its own group; the keys are free. */
    public Map<String, Form> byKey() {
        Map<String, Form> forms = new LinkedHashMap<>();
        fields.all().forEach((key, field) -> {
            asked.add(key);
            forms.put(key, of(file, under(key), field.value(), mistakes));
        });
        return forms;
    }

    /** Names every key that nobody asked for. */
    public void close() {
        fields.all().forEach((key, field) -> {
            if (!asked.contains(key)) {
                wrong(
                        field.line(),
                        field.column(),
                        "\"" + key + "\" is not a key here",
                        "one of " + String.join(", ", asked),
                        Nearest.to(key, asked).orElse(""));
            }
        });
    }

    public void wrong(int line, int column, String what, String expected, String nearest) {
        mistakes.add(new Mistake(file, line, column, where, what, expected, nearest));
    }

    /** Says what is wrong with the value under a key. */
    public void wrong(String key, String what, String expected, String nearest) {
        Node.Field field = fields.all().get(key);
        wrong(
                field == null ? fields.line() : field.value().line(),
                field == null ? fields.column() : field.value().column(),
                what,
                expected,
                nearest);
    }

    public String under(String key) {
        return where.isEmpty() ? key : where + "/" + key;
    }
}
