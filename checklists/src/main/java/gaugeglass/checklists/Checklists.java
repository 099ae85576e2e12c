package gaugeglass.checklists;

import gaugeglass.engine.Rulebook;
import gaugeglass.engine.quantity.Dimension;
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
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Every checklist there is, with the questions and sections it is composed of.
 *
 * <p>Four sorts of file compose them: {@code *.questions.yaml}, {@code *.panels.yaml}, {@code *.sections.yaml} and {@code
 * *.checklists.yaml}.
 */
public final class Checklists {
    /** Where the checklists that come with the program are listed on the class path. */
    private static final String LISTED = "gaugeglass/checklists/files.txt";

    private final Map<String, Question> questions = new LinkedHashMap<>();
    private final Map<String, Panel> panels = new LinkedHashMap<>();
    private final Map<String, Section> sections = new LinkedHashMap<>();
    private final Map<String, Checklist> checklists = new LinkedHashMap<>();
    private final Vocabulary vocabulary;
    private final List<Mistake> mistakes = new ArrayList<>();

    private Checklists(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
    }

    /** The checklists that come with the program. */
    public static Checklists standard(Vocabulary vocabulary) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (String name :
                resource(LISTED).lines().filter(line -> !line.isBlank()).toList()) {
            texts.put(name, resource("gaugeglass/checklists/" + name));
        }
        return read(vocabulary, texts);
    }

    /** The checklists that come with the program, with what the packs laid over a rulebook drop and add. */
    public static Checklists of(Rulebook rulebook) {
        Checklists all = standard(rulebook.vocabulary());
        return rulebook.packs().isEmpty()
                ? all
                : all.without(rulebook.notAsked()).with(rulebook.added());
    }

    private static String resource(String name) {
        try (InputStream in = Checklists.class.getClassLoader().getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("there is no " + name + " on the class path");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + name, e);
        }
    }

    /**
     * Reads checklists.
     *
     * @param texts files by name
     * @throws Mistakes with everything that is wrong in them
     */
    public static Checklists read(Vocabulary vocabulary, Map<String, String> texts) {
        Checklists all = new Checklists(vocabulary);
        all.files(texts, ".questions.yaml", "questions", all::question);
        all.files(texts, ".panels.yaml", "panels", all::panel);
        all.files(texts, ".sections.yaml", "sections", all::section);
        all.files(texts, ".checklists.yaml", "checklists", all::checklist);
        if (all.mistakes.isEmpty()) {
            all.checklists.values().forEach(checklist -> new ChecklistLint(all.vocabulary, all.mistakes)
                    .check(checklist));
        }
        if (!all.mistakes.isEmpty()) {
            throw new Mistakes(all.mistakes);
        }
        return all;
    }

    /**
     * The same without the questions that give some items, and without those that are asked only because of them.
     *
     * @param items the ids of the items that are not asked
     */
    public Checklists without(Set<String> items) {
        Set<String> gone = new HashSet<>(items);
        Checklists all = new Checklists(vocabulary);
        questions.forEach((id, question) -> {
            boolean hangs = question.askWhen().stream().anyMatch(when -> gone.contains(when.item()));
            if (gone.contains(question.gives()) || hangs) {
                gone.add(question.gives());
            } else {
                all.questions.put(id, question);
            }
        });
        sections.forEach((id, section) -> all.sections.put(
                id,
                section.with(section.questions().stream()
                        .filter(question -> all.questions.containsKey(question.id()))
                        .toList())));
        checklists.forEach((id, one) -> all.checklists.put(
                id,
                new Checklist(
                        one.id(),
                        one.title(),
                        one.system(),
                        one.visit(),
                        one.sections().stream()
                                .map(section -> all.sections.get(section.id()))
                                .filter(section -> !section.questions().isEmpty())
                                .toList())));
        return all;
    }

    /**
     * The same with one more question for each item, at the end of the first section of each checklist that is of the
     * item's stage or a later one and asks about the same kind of thing.
     */
    public Checklists with(Collection<ItemType> items) {
        Checklists all = new Checklists(vocabulary);
        all.questions.putAll(questions);
        List<Question> more = new ArrayList<>();
        for (ItemType item : items) {
            Question question = new Question(
                    "pack-" + item.id().replace('.', '-'),
                    item.id(),
                    Optional.of(item),
                    item.ask(),
                    item.look(),
                    Map.of(),
                    Question.Take.TYPED,
                    Map.of(),
                    Optional.empty(),
                    "",
                    List.of(),
                    "pack",
                    0);
            all.questions.put(question.id(), question);
            more.add(question);
        }
        sections.forEach(all.sections::put);
        checklists.forEach((id, one) -> {
            List<Section> changed = new ArrayList<>(one.sections());
            for (Question question : more) {
                place(changed, question).ifPresent(at -> {
                    List<Question> longer = new ArrayList<>(changed.get(at).questions());
                    longer.add(question);
                    changed.set(at, changed.get(at).with(longer));
                });
            }
            all.checklists.put(id, new Checklist(one.id(), one.title(), one.system(), one.visit(), changed));
        });
        return all;
    }

    /** Where a question of a pack is asked: as early as its stage allows, among questions about the same kind of thing. */
    private Optional<Integer> place(List<Section> all, Question question) {
        ItemType item = question.item().orElseThrow();
        Kind kind = vocabulary.kind(item.kind()).orElseThrow();
        String each = kind.isCounted() ? kind.id() : "";
        Optional<Integer> last = Optional.empty();
        for (int i = 0; i < all.size(); i++) {
            Section section = all.get(i);
            boolean about = section.each().equals(each) && section.member().isEmpty();
            if (about && section.stage() == item.stage()) {
                // Among several of the stage, where most is asked about the same kind.
                boolean same = section.questions().stream()
                        .anyMatch(other -> other.kind().equals(item.kind()));
                if (same) {
                    return Optional.of(i);
                }
                last = last.isEmpty() ? Optional.of(i) : last;
            } else if (about
                    && last.isEmpty()
                    && section.stage().compareTo(item.stage()) > 0
                    && (!item.stage().isBeforeFiring() || section.stage().isBeforeFiring())) {
                last = Optional.of(i);
            }
        }
        return last;
    }

    private interface Reader {
        void read(Form form);
    }

    private void files(Map<String, String> texts, String ending, String key, Reader reader) {
        texts.forEach((name, text) -> {
            if (name.endsWith(ending)) {
                try {
                    Form form = Form.of(name, "", NodeReader.read(name, text, mistakes), mistakes);
                    form.forms(key).forEach(reader::read);
                    form.close();
                } catch (Mistakes e) {
                    mistakes.addAll(e.all());
                }
            }
        });
    }

    private void question(Form form) {
        String id = form.text("id");
        String gives = form.text("gives");
        Optional<ItemType> item = vocabulary.item(gives);
        Optional<Kind> counted = vocabulary.kinds().stream()
                .filter(kind -> kind.isCounted() && kind.countId().equals(gives))
                .findFirst();
        if (item.isEmpty() && counted.isEmpty()) {
            List<String> known = new ArrayList<>();
            vocabulary.items().forEach(one -> known.add(one.id()));
            vocabulary.kinds().stream().filter(Kind::isCounted).forEach(kind -> known.add(kind.countId()));
            form.wrong(
                    "gives",
                    "\"" + gives + "\" is no observation",
                    "the id of an item or of a count",
                    Nearest.to(gives, known).orElse(""));
        }
        Map<String, String> choices = new LinkedHashMap<>();
        if (form.has("choices")) {
            Form words = form.form("choices");
            List<String> known = item.map(Checklists::words).orElse(List.of());
            words.fields().all().keySet().forEach(word -> {
                if (!known.contains(word)) {
                    words.wrong(
                            word,
                            "\"" + word + "\" is no choice of " + gives,
                            "one of " + String.join(", ", known),
                            Nearest.to(word, known).orElse(""));
                }
                choices.put(word, words.text(word));
            });
        }
        Map<String, String> events = new LinkedHashMap<>();
        if (form.has("events")) {
            Form keys = form.form("events");
            keys.fields().all().keySet().forEach(letter -> {
                if (letter.length() != 1) {
                    keys.wrong(letter, "\"" + letter + "\" is no key", "one letter", "");
                }
                events.put(letter, keys.text(letter));
            });
        }
        Question.Take take = form.word("take", Question.Take.class, Question.Take.TYPED);
        Optional<Dimension> readings = form.has("readings")
                ? Optional.of(form.word("readings", Dimension.class, Dimension.LENGTH))
                : Optional.empty();
        item.ifPresent(known -> taken(form, known, take, events, readings));
        List<AskWhen> askWhen = new ArrayList<>();
        if (form.has("ask-when")) {
            Form when = form.form("ask-when");
            when.fields().all().keySet().forEach(earlier -> askWhen.add(new AskWhen(earlier, when.texts(earlier))));
        }
        String ask = form.text("ask", item.map(ItemType::ask).orElseGet(() -> counted.map(
                        kind -> "How many of these are fitted: " + kind.label() + "?")
                .orElse("")));
        Question question = new Question(
                id,
                gives,
                item,
                ask,
                form.text("look", item.map(ItemType::look).orElse("")),
                choices,
                take,
                events,
                readings,
                form.text("caution", ""),
                askWhen,
                form.file(),
                form.fields().line());
        form.close();
        if (questions.put(id, question) != null) {
            form.wrong("id", "two questions are called \"" + id + "\"", "an id of its own", "");
        }
    }

    /** Whether an answer can be taken in the way that the question says. */
    private static void taken(
            Form form, ItemType item, Question.Take take, Map<String, String> events, Optional<Dimension> readings) {
        if ((take == Question.Take.EVENTS) == events.isEmpty()) {
            form.wrong(
                    "take",
                    take == Question.Take.EVENTS ? "it takes events and names none" : "it names events and takes none",
                    "take: events with events:",
                    "");
        }
        if (take == Question.Take.EVENTS) {
            List<String> known = words(item);
            for (String order : orders(List.copyOf(events.values()))) {
                if (!known.contains(order)) {
                    form.wrong(
                            "events",
                            "\"" + order + "\" may be heard and is no choice of " + item.id(),
                            "events whose every order is one of " + String.join(", ", known),
                            Nearest.to(order, known).orElse(""));
                }
            }
        }
        boolean measured = item.values().size() == 1 && item.values().get(0).form() == Component.Form.QUANTITY;
        if (take == Question.Take.READINGS && !measured && readings.isEmpty()) {
            form.wrong(
                    "take",
                    item.id() + " is no quantity, and it is not said what is read",
                    "readings: with what is read, such as length",
                    "");
        }
        if (readings.isPresent() && take != Question.Take.READINGS) {
            form.wrong("readings", "it says what is read and takes no readings", "take: readings", "");
        }
    }

    /** Every word that events heard in some order may make. */
    private static List<String> orders(List<String> events) {
        List<String> words = new ArrayList<>(List.of(Question.NOTHING_HEARD));
        for (String first : events) {
            words.add(Question.heard(List.of(first)));
            for (String second : events) {
                if (!second.equals(first)) {
                    words.add(Question.heard(List.of(first, second)));
                }
            }
        }
        return words;
    }

    private void panel(Form form) {
        String id = form.text("id");
        Panel panel = new Panel(
                id,
                form.text("title"),
                form.text("look", ""),
                named(form, "parts", questions, "question"),
                form.file(),
                form.fields().line());
        form.close();
        if (panel.parts().size() < 2 || panel.parts().size() > Panel.MOST_PARTS) {
            form.wrong(
                    "parts",
                    panel.parts().size() + " parts make no panel",
                    "2 to " + Panel.MOST_PARTS + " questions",
                    "");
        }
        long unusual = panel.parts().stream()
                .filter(part -> part.take() != Question.Take.TYPED)
                .count();
        if (unusual > 1) {
            form.wrong("parts", "the order \"go\" would mean several parts", "one part that is not simply typed", "");
        }
        for (Question part : panel.parts()) {
            if (part.item().stream()
                    .flatMap(item -> item.values().stream())
                    .anyMatch(value -> value.form() == Component.Form.TEXT)) {
                form.wrong(
                        "parts",
                        "\"" + part.id() + "\" is answered in free words, which do not fit into a line with others",
                        "a question with choices, a quantity, a number or a date",
                        "");
            }
            panels.values().stream()
                    .filter(other -> other.parts().contains(part))
                    .forEach(other -> form.wrong(
                            "parts",
                            "\"" + part.id() + "\" stands on panel " + other.id() + " already",
                            "each question on one panel",
                            ""));
        }
        if (panels.put(id, panel) != null) {
            form.wrong("id", "two panels are called \"" + id + "\"", "an id of its own", "");
        }
    }

    /** The panels of which a section asks two parts or more. */
    private List<Panel> panels(List<Question> asked) {
        return panels.values().stream()
                .filter(panel -> panel.parts().stream().filter(asked::contains).count() > 1)
                .toList();
    }

    /** The words that an item's choices take, all parts together. */
    static List<String> words(ItemType item) {
        List<String> words = new ArrayList<>();
        item.values().forEach(part -> words.addAll(part.choices()));
        return words;
    }

    private void section(Form form) {
        String id = form.text("id");
        Stage stage = form.word("stage", Stage.class, Stage.ARRIVAL);
        if (!form.has("stage")) {
            form.text("stage");
        }
        String each = form.text("each", "");
        if (!each.isEmpty()
                && vocabulary
                        .kind(each)
                        .filter(kind -> kind.isCounted() || kind.isFixed())
                        .isEmpty()) {
            List<String> known = vocabulary.kinds().stream().map(Kind::id).toList();
            form.wrong(
                    "each",
                    "\"" + each + "\" is no kind that is counted",
                    "a counted or fixed kind",
                    Nearest.to(each, known).orElse(""));
        }
        List<Question> asked = named(form, "questions", questions, "question");
        Section section = new Section(
                id,
                form.text("title"),
                stage,
                each,
                form.text("member", ""),
                form.text("intro", ""),
                asked,
                panels(asked));
        form.close();
        if (sections.put(id, section) != null) {
            form.wrong("id", "two sections are called \"" + id + "\"", "an id of its own", "");
        }
    }

    private void checklist(Form form) {
        String id = form.text("id");
        Checklist checklist = new Checklist(
                id,
                form.text("title"),
                form.text("system"),
                form.text("visit"),
                named(form, "sections", sections, "section"));
        form.close();
        if (checklists.put(id, checklist) != null) {
            form.wrong("id", "two checklists are called \"" + id + "\"", "an id of its own", "");
        }
    }

    private <T> List<T> named(Form form, String key, Map<String, T> known, String what) {
        List<T> all = new ArrayList<>();
        for (String name : form.texts(key)) {
            T one = known.get(name);
            if (one == null) {
                form.wrong(
                        key,
                        "\"" + name + "\" is no " + what,
                        "the id of a " + what,
                        Nearest.to(name, known.keySet()).orElse(""));
            } else {
                all.add(one);
            }
        }
        return all;
    }

    public Collection<Checklist> all() {
        return Collections.unmodifiableCollection(checklists.values());
    }

    public Optional<Checklist> checklist(String id) {
        return Optional.ofNullable(checklists.get(id));
    }

    /** Every panel of the files, used by a checklist or not. */
    public Collection<Panel> panels() {
        return Collections.unmodifiableCollection(panels.values());
    }

    /** Every question of the files, used by a checklist or not. */
    public Collection<Question> questions() {
        return Collections.unmodifiableCollection(questions.values());
    }
}
