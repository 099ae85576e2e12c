package gaugeglass.engine.build;

import gaugeglass.engine.pack.PackFiles;
import gaugeglass.engine.quantity.Dimension;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.reading.Form;
import gaugeglass.engine.reading.NodeReader;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import gaugeglass.engine.text.Nearest;
import gaugeglass.engine.vocabulary.Component;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * The observations that a pack describes, and the source text of the records that hold them.
 *
 * <p>Each has one answer: a choice, a quantity, a number, a date or words. What a record is called follows from its id: of
 * {@code panel.photo} the record is {@code PanelPhoto}, its part {@code value}, its choices those of {@code
 * PanelPhotoValue}.
 */
public final class OwnItems {
    private static final String FILE = "observations.yaml";
    private static final Pattern ID = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*\\.[a-z][a-z0-9]*(-[a-z0-9]+)*");
    private static final Pattern WORD = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");
    private static final Set<String> NEVER = Set.of("yes", "no", "true", "false", "unknown", "unread", "null");

    /** One item before its class is there. */
    private record Described(
            String id,
            String kind,
            Stage stage,
            String ask,
            String look,
            boolean structural,
            boolean carried,
            List<String> unreadBecause,
            String className,
            List<Component> components) {}

    private final Vocabulary vocabulary;
    private final String inPackage;
    private final List<Described> all = new ArrayList<>();
    private final Map<String, String> sources = new LinkedHashMap<>();
    private final Set<String> taken = new TreeSet<>(Set.of("Visit", "Limit", "Fitted", "Quantity", "Record", "Object"));

    OwnItems(Vocabulary vocabulary, String inPackage) {
        this.vocabulary = vocabulary;
        this.inPackage = inPackage;
        vocabulary.items().forEach(item -> {
            taken.add(simple(item.className()));
            item.components().stream().filter(c -> !c.type().isEmpty()).forEach(c -> taken.add(simple(c.type())));
        });
    }

    /**
     * A vocabulary with a pack's own items, before their classes are there: what they are may be read, no fact be made.
     *
     * @throws Mistakes when they are not described well
     */
    public static Vocabulary described(Vocabulary vocabulary, PackFiles files, String packName) {
        if (!files.has(FILE)) {
            return vocabulary;
        }
        List<Mistake> mistakes = new ArrayList<>();
        OwnItems own = new OwnItems(vocabulary, "gaugeglass.packs." + packName.replace('-', '_'));
        String place = files.place(FILE);
        Form.of(place, "", NodeReader.read(place, files.text(FILE), mistakes), mistakes)
                .forms("observations")
                .forEach(own::read);
        if (!mistakes.isEmpty()) {
            throw new Mistakes(mistakes);
        }
        return vocabulary.with(own.items(OwnItems.class.getClassLoader()));
    }

    private static String simple(String name) {
        return name.substring(Math.max(name.lastIndexOf('.'), name.lastIndexOf('$')) + 1);
    }

    /** Reads one description; whatever is wrong with it is said by the form. */
    void read(Form form) {
        String id = form.text("id");
        String of = form.text("of");
        Optional<Kind> kind = vocabulary.kind(of);
        if (!form.has("stage")) {
            form.text("stage");
        }
        Stage stage = form.word("stage", Stage.class, Stage.COLD);
        String ask = form.text("ask");
        String look = form.text("look", "");
        boolean structural = flag(form, "structural");
        boolean carried = flag(form, "carried");
        List<String> unread = form.texts("unread-because");
        if (kind.isEmpty() || kind.get().isFixed()) {
            List<String> known = vocabulary.kinds().stream()
                    .filter(k -> !k.isFixed())
                    .map(Kind::id)
                    .toList();
            form.wrong(
                    "of",
                    "\"" + of + "\" is no kind that a pack can observe",
                    "one of " + String.join(", ", known),
                    Nearest.to(of, known).orElse(""));
        } else if (!ID.matcher(id).matches()) {
            form.wrong("id", "\"" + id + "\" is no id", "group.name in small letters, digits and hyphens", "");
        } else {
            String group = id.substring(0, id.indexOf('.'));
            boolean counted = kind.get().isCounted();
            boolean isKind = vocabulary.kind(group).isPresent();
            boolean fits = counted || kind.get().placement() == Kind.Placement.SITE ? group.equals(of) : !isKind;
            if (!fits) {
                form.wrong(
                        "id",
                        "the id of an observation about " + of + " begins otherwise",
                        isKind || counted || kind.get().placement() == Kind.Placement.SITE
                                ? of + "." + " where it is about each, else a heading of its own"
                                : of + ".",
                        "");
            }
            if (group.equals("required")) {
                form.wrong("id", "what is required at a place is the rulebook's to ask", "another heading", "");
            }
            if (vocabulary.item(id).isPresent()
                    || all.stream().anyMatch(one -> one.id().equals(id))) {
                form.wrong("id", "there is an observation called " + id, "an id of its own", "");
            }
        }
        String record = camel(id);
        if (!taken.add(record)) {
            form.wrong("id", "its record would be called " + record + ", like another", "another id", "");
        }
        Optional<Component> part = part(form, record);
        form.close();
        if (part.isEmpty() || kind.isEmpty()) {
            return;
        }
        List<Component> components = new ArrayList<>();
        if (kind.get().isCounted()) {
            components.add(new Component("which", Component.Form.TEXT, true, "", List.of(), "", "", ""));
        }
        components.add(part.get());
        all.add(new Described(
                id, of, stage, ask, look, structural, carried, unread, inPackage + "." + record, components));
        source(record, components);
    }

    private static boolean flag(Form form, String key) {
        String text = form.text(key, "no");
        if (!text.equals("yes") && !text.equals("no")) {
            form.wrong(key, "\"" + text + "\" is neither", "yes or no", "");
        }
        return text.equals("yes");
    }

    static String camel(String id) {
        StringBuilder name = new StringBuilder();
        for (String word : id.split("[.-]")) {
            if (!word.isEmpty()) {
                name.append(word.substring(0, 1).toUpperCase(Locale.ROOT)).append(word.substring(1));
            }
        }
        return name.toString();
    }

    private Optional<Component> part(Form form, String record) {
        List<String> choices = form.texts("choices");
        String unit = form.text("unit", "");
        String answer = form.text("answer", "");
        String from = form.text("from", "");
        String to = form.text("to", "");
        if ((choices.isEmpty() ? 0 : 1) + (unit.isEmpty() ? 0 : 1) + (answer.isEmpty() ? 0 : 1) != 1) {
            form.wrong(
                    "id",
                    "it does not say plainly what the answer is",
                    "one of choices:, unit: with from: and to:, or answer: date, number or words",
                    "");
            return Optional.empty();
        }
        if (!choices.isEmpty()) {
            for (String choice : choices) {
                if (!WORD.matcher(choice).matches() || NEVER.contains(choice)) {
                    form.wrong(
                            "choices",
                            "\"" + choice + "\" is no choice",
                            "words that say what was seen, such as fitted and not-fitted",
                            "");
                }
            }
            if (choices.size() < 2 || Set.copyOf(choices).size() < choices.size()) {
                form.wrong("choices", "these are too few, or one stands there twice", "at least two", "");
            }
            String type = record + "Value";
            taken.add(type);
            return Optional.of(
                    new Component("value", Component.Form.CHOICE, false, inPackage + "." + type, choices, "", "", ""));
        }
        if (!unit.isEmpty()) {
            for (Dimension dimension : Dimension.values()) {
                Optional<Unit> found = Unit.spelled(unit, dimension);
                if (found.isPresent()) {
                    try {
                        if (Quantity.of(from, found.get()).isAbove(Quantity.of(to, found.get()))) {
                            form.wrong("from", "it lies above to", "the least that is believed", "");
                        }
                    } catch (IllegalArgumentException e) {
                        form.wrong("unit", "its span is not given in plain numbers", "from: and to: in " + unit, "");
                        return Optional.empty();
                    }
                    return Optional.of(new Component(
                            "value",
                            Component.Form.QUANTITY,
                            false,
                            "",
                            List.of(),
                            found.get().name(),
                            from,
                            to));
                }
            }
            List<String> known = new ArrayList<>();
            for (Unit one : Unit.values()) {
                known.addAll(one.spellings());
            }
            form.wrong(
                    "unit",
                    "\"" + unit + "\" is no unit",
                    "a unit",
                    Nearest.to(unit, known).orElse(""));
            return Optional.empty();
        }
        switch (answer) {
            case "date":
                return Optional.of(new Component("value", Component.Form.DATE, false, "", List.of(), "", "", ""));
            case "words":
                return Optional.of(new Component("value", Component.Form.TEXT, false, "", List.of(), "", "", ""));
            case "number":
                if (!from.matches("\\d{1,6}") || !to.matches("\\d{1,6}")) {
                    form.wrong("answer", "its span is not given in whole numbers", "from: and to:", "");
                }
                return Optional.of(new Component("value", Component.Form.COUNT, false, "", List.of(), "", from, to));
            default:
                form.wrong(
                        "answer",
                        "\"" + answer + "\" is no sort of answer",
                        "date, number or words",
                        Nearest.to(answer, List.of("date", "number", "words")).orElse(""));
                return Optional.empty();
        }
    }

    private void source(String record, List<Component> components) {
        StringBuilder text = new StringBuilder("package ").append(inPackage).append(";\npublic record ");
        text.append(record).append('(');
        String comma = "";
        for (Component part : components) {
            String type =
                    switch (part.form()) {
                        case CHOICE -> simple(part.type());
                        case QUANTITY -> "gaugeglass.engine.quantity.Quantity";
                        case COUNT -> "int";
                        case DATE -> "java.time.LocalDate";
                        case TEXT -> "String";
                    };
            text.append(comma).append(type).append(' ').append(part.name());
            comma = ", ";
            if (part.form() == Component.Form.CHOICE) {
                List<String> constants = part.choices().stream()
                        .map(word -> word.replace('-', '_').toUpperCase(Locale.ROOT))
                        .toList();
                sources.put(
                        type,
                        "package " + inPackage + ";\npublic enum " + type + " { " + String.join(", ", constants)
                                + " }\n");
            }
        }
        sources.put(record, text.append(") {}\n").toString());
    }

    boolean isEmpty() {
        return all.isEmpty();
    }

    /** Source texts by simple class name. */
    Map<String, String> sources() {
        return sources;
    }

    /** The items, once their classes are in a loader. */
    List<ItemType> items(ClassLoader loader) {
        List<ItemType> items = new ArrayList<>();
        for (Described one : all) {
            items.add(ItemType.described(
                    one.id(),
                    one.kind(),
                    one.stage(),
                    one.ask(),
                    one.look(),
                    one.structural(),
                    one.carried(),
                    one.unreadBecause(),
                    one.className(),
                    one.components(),
                    loader));
        }
        return items;
    }
}
