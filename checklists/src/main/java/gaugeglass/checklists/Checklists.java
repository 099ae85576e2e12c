package gaugeglass.checklists;

import gaugeglass.engine.reading.Form;
import gaugeglass.engine.reading.NodeReader;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import gaugeglass.engine.text.Nearest;
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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Every checklist there is, with the questions and sections it is composed of.
 *
 * <p>Three sorts of file compose them: {@code *.questions.yaml}, {@code *.sections.yaml} and {@code *.checklists.yaml}.
 */
public final class Checklists {
    /** Where the checklists that come with the program are listed on the class path. */
    private static final String LISTED = "gaugeglass/checklists/files.txt";

    private final Map<String, Question> questions = new LinkedHashMap<>();
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
                form.word("take", Question.Take.class, Question.Take.TYPED),
                events,
                form.text("caution", ""),
                askWhen,
                form.file(),
                form.fields().line());
        form.close();
        if (questions.put(id, question) != null) {
            form.wrong("id", "two questions are called \"" + id + "\"", "an id of its own", "");
        }
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
        Section section = new Section(
                id,
                form.text("title"),
                stage,
                each,
                form.text("member", ""),
                form.text("intro", ""),
                named(form, "questions", questions, "question"));
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

    /** Every question of the files, used by a checklist or not. */
    public Collection<Question> questions() {
        return Collections.unmodifiableCollection(questions.values());
    }
}
