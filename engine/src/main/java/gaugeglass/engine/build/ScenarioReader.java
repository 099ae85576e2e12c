package gaugeglass.engine.build;

import gaugeglass.engine.Assessment.Word;
import gaugeglass.engine.book.Card;
import gaugeglass.engine.build.Scenario.Expected;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.InspectionReader;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.reading.Form;
import gaugeglass.engine.reading.Node;
import gaugeglass.engine.reading.NodeReader;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import gaugeglass.engine.text.Nearest;
import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Reads the scenarios that stand under the cards, as strictly as an inspection is read. */
public final class ScenarioReader {
    /** The day of a visit whose scenario names none. */
    public static final LocalDate USUAL_DAY = LocalDate.of(2026, 9, 14);

    private static final String CARDS = ".cards.yaml";

    private final Vocabulary vocabulary;
    private final InspectionReader inspections;
    private final Map<String, Card> cards;
    private final Collection<String> limits;
    private final List<Mistake> mistakes = new ArrayList<>();
    private final List<Scenario> scenarios = new ArrayList<>();

    private ScenarioReader(Vocabulary vocabulary, Map<String, Card> cards, Collection<String> limits) {
        this.vocabulary = vocabulary;
        this.inspections = new InspectionReader(vocabulary);
        this.cards = cards;
        this.limits = limits;
    }

    /**
     * Reads every scenario of a rulebook.
     *
     * @param texts the rulebook's files by name
     * @param cards its cards, by id
     * @param limits the ids of its limits
     * @throws Mistakes with everything that is wrong in them
     */
    public static List<Scenario> read(
            Map<String, String> texts, Vocabulary vocabulary, Map<String, Card> cards, Collection<String> limits) {
        ScenarioReader reader = new ScenarioReader(vocabulary, cards, limits);
        texts.forEach((name, text) -> {
            if (name.endsWith(CARDS)) {
                reader.file(name, text);
            }
        });
        if (!reader.mistakes.isEmpty()) {
            throw new Mistakes(reader.mistakes);
        }
        return reader.scenarios;
    }

    private void file(String file, String text) {
        try {
            Form form = Form.of(file, "", NodeReader.read(file, text, new ArrayList<>()), mistakes);
            for (Form card : form.forms("cards")) {
                String id = card.text("id");
                Set<String> names = new HashSet<>();
                if (card.node("scenarios").filter(Node.Items.class::isInstance).isEmpty()) {
                    continue;
                }
                for (Form scenario : card.forms("scenarios")) {
                    scenario(id, scenario, names);
                }
            }
        } catch (Mistakes e) {
            mistakes.addAll(e.all());
        }
    }

    private void scenario(String card, Form form, Set<String> names) {
        int before = mistakes.size();
        String name = form.text("name");
        if (!names.add(name)) {
            form.wrong("name", "the card has another scenario of this name", "a name of its own", "");
        }
        LocalDate date = date(form);
        boolean isGiven = form.node("given").isPresent();
        if (!isGiven) {
            form.text("given");
        }
        Map<String, Expected> expect = expected(card, form, "expect");
        if (!form.has("expect")) {
            form.text("expect");
        }
        Map<String, Expected> asFound = expected(card, form, "as-found");
        List<String> missing = form.texts("missing");
        Set<String> wanted = new HashSet<>();
        vocabulary.items().stream().map(ItemType::id).forEach(wanted::add);
        vocabulary.kinds().stream().filter(Kind::isCounted).forEach(kind -> {
            wanted.add(kind.id());
            wanted.add(kind.countId());
        });
        for (String item : missing) {
            known(form, "missing", item, wanted, "an item's id");
        }
        List<String> onLimits = form.texts("on-limit");
        for (String limit : onLimits) {
            known(form, "on-limit", limit, limits, "a limit's id");
        }
        form.close();
        if (mistakes.size() > before) {
            return;
        }
        Observations given;
        try {
            given = given(form, form.node("given").orElseThrow(), date);
        } catch (Mistakes e) {
            mistakes.addAll(e.all());
            return;
        }
        if (given.hasAsLeft() && asFound.isEmpty()) {
            form.wrong(
                    "expect",
                    "something was done on this visit, but only its end is expected",
                    "as-found: what the card says at arrival",
                    "");
        } else if (!given.hasAsLeft() && !asFound.isEmpty()) {
            form.wrong("as-found", "nothing was done on this visit", "expect alone", "");
        }
        scenarios.add(new Scenario(
                card, name, form.file(), form.fields().line(), date, given, expect, asFound, missing, onLimits));
    }

    private LocalDate date(Form form) {
        String text = form.text("date", USUAL_DAY.toString());
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            form.wrong("date", "\"" + text + "\" is no date", "a date such as 2026-09-14", "");
            return USUAL_DAY;
        }
    }

    private void known(Form form, String key, String id, Collection<String> all, String expected) {
        if (!all.contains(id)) {
            form.wrong(
                    key,
                    "\"" + id + "\" is not known",
                    expected,
                    Nearest.to(id, all).orElse(""));
        }
    }

    private Map<String, Expected> expected(String card, Form form, String key) {
        Map<String, Expected> expected = new LinkedHashMap<>();
        if (form.node(key).filter(Node.Fields.class::isInstance).isPresent()) {
            Form bySubject = form.form(key);
            bySubject
                    .fields()
                    .all()
                    .keySet()
                    .forEach(subject ->
                            expected.put(subject, expected(card, bySubject, subject, bySubject.text(subject))));
        } else if (form.has(key)) {
            expected.put(Scenario.ALL, expected(card, form, key, form.text(key)));
        }
        return expected;
    }

    private Expected expected(String card, Form form, String key, String text) {
        int space = text.indexOf(' ');
        String word = space < 0 ? text : text.substring(0, space);
        String band = space < 0 ? "" : text.substring(space + 1).strip();
        List<String> words = new ArrayList<>();
        for (Word candidate : Word.values()) {
            if (candidate.word().equals(word)) {
                Set<String> bands =
                        cards.containsKey(card) ? cards.get(card).bands().keySet() : Set.of();
                if (candidate == Word.FOUND ? !bands.contains(band) : !band.isEmpty()) {
                    form.wrong(
                            key,
                            "\"" + text + "\" names no band of the card",
                            candidate == Word.FOUND ? "found and one of " + String.join(", ", bands) : word,
                            Nearest.to(band, bands).orElse(""));
                }
                return new Expected(candidate, band);
            }
            words.add(Words.of(candidate));
        }
        form.wrong(
                key,
                "\"" + text + "\" is no outcome",
                "found BAND, or one of " + String.join(", ", words),
                Nearest.to(word, words).orElse(""));
        return new Expected(Word.UNDETERMINED, "");
    }

    /** Reads what is given as an inspection of one unit. */
    private Observations given(Form form, Node given, LocalDate date) {
        Map<String, Node.Field> unit = new LinkedHashMap<>();
        Map<String, Node.Field> site = new LinkedHashMap<>();
        put(unit, "id", scalar("1", given));
        put(site, "id", scalar("site", given));
        String siteKey = vocabulary.site().id();
        if (given instanceof Node.Fields fields) {
            fields.all().forEach((key, field) -> {
                if (key.equals(siteKey) && field.value() instanceof Node.Fields answers) {
                    site.putAll(answers.all());
                } else {
                    unit.put(key, new Node.Field(key, roster(key, field.value()), field.line(), field.column()));
                }
            });
        } else if (!(given instanceof Node.Scalar scalar && scalar.isBlank())) {
            form.wrong("given", "\"given\" holds " + given.shape(), "a group of keys as in an inspection", "");
        }
        Map<String, Node.Field> visit = new LinkedHashMap<>();
        put(visit, "date", scalar(date.toString(), given));
        Map<String, Node.Field> root = new LinkedHashMap<>();
        put(root, "format", scalar(String.valueOf(Inspection.FORMAT), given));
        put(root, siteKey, group(site, given));
        put(root, "visit", group(visit, given));
        put(
                root,
                vocabulary.unit().plural(),
                new Node.Items(List.of(group(unit, given)), given.line(), given.column()));
        return inspections.read(form.file(), group(root, given)).units().get(0).observations();
    }

    /** A bare list of a counted kind tells that these are all. */
    private Node roster(String key, Node value) {
        boolean counted = vocabulary.kinds().stream()
                .anyMatch(kind -> kind.isCounted() && kind.plural().equals(key));
        if (!counted || !(value instanceof Node.Items items)) {
            return value;
        }
        Map<String, Node.Field> roster = new LinkedHashMap<>();
        put(roster, "fitted", scalar(String.valueOf(items.all().size()), value));
        put(roster, "each", value);
        return group(roster, value);
    }

    private static Node.Scalar scalar(String text, Node at) {
        return new Node.Scalar(text, false, at.line(), at.column());
    }

    private static Node.Fields group(Map<String, Node.Field> fields, Node at) {
        return new Node.Fields(fields, at.line(), at.column());
    }

    private static void put(Map<String, Node.Field> fields, String key, Node value) {
        fields.put(key, new Node.Field(key, value, value.line(), value.column()));
    }
}
