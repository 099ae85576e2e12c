package gaugeglass.checklists;

import gaugeglass.engine.quantity.Dimension;
import gaugeglass.engine.reading.NodeWriter;
import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The JSON Schema (draft 2020-12) of the files that checklists are composed of, made from a vocabulary.
 *
 * <p>It is for editors and other programs; the reader decides. The schema is more lenient where JSON Schema has no words
 * for a rule: names that another file gives, the order of stages, conditions that can never hold, and which choices
 * belong to which observation.
 */
public final class ChecklistSchema {
    private static final String LENIENT =
            "The program is stricter than this schema: it also checks that every name is one that is given somewhere,"
                    + " the order of the stages, and that no condition is dead.";

    private final Vocabulary vocabulary;
    private final Collection<String> cautions;

    private ChecklistSchema(Vocabulary vocabulary, Collection<String> cautions) {
        this.vocabulary = vocabulary;
        this.cautions = cautions;
    }

    /**
     * The schema as JSON text, always the same for the same vocabulary and cautions.
     *
     * @param cautions the ids of the cautions that a question may show
     */
    public static String of(Vocabulary vocabulary, Collection<String> cautions) {
        return NodeWriter.pretty(new ChecklistSchema(vocabulary, cautions).whole()) + "\n";
    }

    private Map<String, Object> whole() {
        Map<String, Object> keys = new LinkedHashMap<>();
        keys.put("questions", list(question(), 0, "What is asked: in a file that ends in .questions.yaml."));
        keys.put("panels", list(panel(), 0, "What is put on one screen: in a file that ends in .panels.yaml."));
        keys.put("sections", list(section(), 0, "What is asked together: in a file that ends in .sections.yaml."));
        keys.put(
                "checklists",
                list(checklist(), 0, "What is asked on a visit: in a file that ends in .checklists.yaml."));
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        all.put("title", "Files that checklists are composed of");
        all.put("$comment", LENIENT);
        all.putAll(closed(keys, List.of()));
        all.put("minProperties", 1);
        all.put("maxProperties", 1);
        return all;
    }

    private Map<String, Object> question() {
        Map<String, Object> keys = new LinkedHashMap<>();
        keys.put("id", text("Its name for good."));
        keys.put("gives", choice(observations(), "The observation that the answer is, or the count of a kind."));
        keys.put("ask", text("The question, where it is not asked in the words of the observation."));
        keys.put("look", text("How to look, where that is not said in the words of the observation."));
        keys.put("choices", texts("What a choice means, by the choice.", Map.of("minLength", 1)));
        keys.put("take", choice(words(Question.Take.class), "How the answer is taken, where it is not simply typed."));
        keys.put("events", texts("For take: events, what is heard, by the key that marks it.", Map.of("maxLength", 1)));
        keys.put(
                "readings",
                choice(words(Dimension.class), "For take: readings, what is read, where it is not the answer itself."));
        keys.put("caution", choice(List.copyOf(cautions), "The caution shown at this step."));
        Map<String, Object> when = new LinkedHashMap<>();
        when.put("type", "object");
        when.put("description", "It is asked only where each of these was answered with one of the words given.");
        when.put("propertyNames", Map.of("enum", observations()));
        when.put(
                "additionalProperties",
                Map.of("anyOf", List.of(Map.of("type", "string"), list(Map.of("type", "string"), 1, ""))));
        when.put("minProperties", 1);
        keys.put("ask-when", when);
        return closed(keys, List.of("id", "gives"));
    }

    private Map<String, Object> panel() {
        Map<String, Object> keys = new LinkedHashMap<>();
        keys.put("id", text("Its name."));
        keys.put("title", text("What is looked at, and from where."));
        keys.put("look", text("How to look at all of it."));
        Map<String, Object> parts =
                list(Map.of("type", "string"), 2, "The questions, as they stand one after another in a section.");
        parts.put("maxItems", Panel.MOST_PARTS);
        parts.put("uniqueItems", true);
        keys.put("parts", parts);
        return closed(keys, List.of("id", "title", "parts"));
    }

    private Map<String, Object> section() {
        Map<String, Object> keys = new LinkedHashMap<>();
        keys.put("id", text("Its name."));
        keys.put("title", text("Its heading."));
        keys.put("stage", choice(words(Stage.class), "The part of the visit it belongs to."));
        List<String> kinds = vocabulary.kinds().stream()
                .filter(kind -> kind.isCounted() || kind.isFixed())
                .map(Kind::id)
                .toList();
        keys.put(
                "each",
                choice(kinds, "The kind for each piece of which it is asked; left out where it is asked once."));
        Set<String> members = new LinkedHashSet<>();
        vocabulary.kinds().stream()
                .filter(Kind::isFixed)
                .forEach(kind -> members.addAll(Interview.members(vocabulary, kind)));
        keys.put("member", choice(List.copyOf(members), "For a fixed kind, the member it is about."));
        keys.put("intro", text("What to know before it begins."));
        keys.put("questions", list(Map.of("type", "string"), 1, "The questions, in order."));
        return closed(keys, List.of("id", "title", "stage", "questions"));
    }

    private static Map<String, Object> checklist() {
        Map<String, Object> keys = new LinkedHashMap<>();
        keys.put("id", text("Its name."));
        keys.put("title", text("Its heading."));
        keys.put("system", text("The kind of system it is for, as a word."));
        keys.put("visit", text("The sort of visit, as a word."));
        keys.put("sections", list(Map.of("type", "string"), 1, "The sections, in the order of the visit."));
        return closed(keys, List.of("id", "title", "system", "visit", "sections"));
    }

    /** The items that can be asked, and the counts. */
    private List<String> observations() {
        List<String> all = new ArrayList<>();
        vocabulary.items().stream().filter(item -> !item.isReckoned()).forEach(item -> all.add(item.id()));
        vocabulary.kinds().stream().filter(Kind::isCounted).forEach(kind -> all.add(kind.countId()));
        return all;
    }

    private static List<String> words(Class<? extends Enum<?>> type) {
        return Arrays.stream(type.getEnumConstants()).map(Words::of).toList();
    }

    private static Map<String, Object> text(String description) {
        Map<String, Object> text = new LinkedHashMap<>();
        text.put("type", "string");
        text.put("minLength", 1);
        text.put("description", description);
        return text;
    }

    private static Map<String, Object> texts(String description, Map<String, Object> names) {
        Map<String, Object> texts = new LinkedHashMap<>();
        texts.put("type", "object");
        texts.put("description", description);
        texts.put("propertyNames", names);
        texts.put("additionalProperties", Map.of("type", "string"));
        return texts;
    }

    private static Map<String, Object> choice(List<String> words, String description) {
        Map<String, Object> choice = new LinkedHashMap<>();
        choice.put("enum", words);
        choice.put("description", description);
        return choice;
    }

    private static Map<String, Object> list(Map<String, Object> of, int least, String description) {
        Map<String, Object> list = new LinkedHashMap<>();
        list.put("type", "array");
        if (!description.isEmpty()) {
            list.put("description", description);
        }
        list.put("items", of);
        list.put("minItems", least);
        return list;
    }

    private static Map<String, Object> closed(Map<String, Object> keys, List<String> required) {
        Map<String, Object> closed = new LinkedHashMap<>();
        closed.put("type", "object");
        closed.put("additionalProperties", false);
        if (!required.isEmpty()) {
            closed.put("required", required);
        }
        closed.put("properties", keys);
        return closed;
    }
}
