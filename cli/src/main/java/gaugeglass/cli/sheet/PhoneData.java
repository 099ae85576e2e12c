package gaugeglass.cli.sheet;

import gaugeglass.checklists.Checklist;
import gaugeglass.checklists.Question;
import gaugeglass.checklists.Section;
import gaugeglass.cli.sheet.SingleAnswerStops.Stop;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.book.Card;
import gaugeglass.engine.book.Caution;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.InspectionWriter;
import gaugeglass.engine.quantity.Dimension;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.QuantityFormatException;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.Component;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What the page for a phone has to know: the checklist, where each answer stands in a file, units, spans and stops. */
final class PhoneData {
    private final Rulebook rulebook;
    private final Vocabulary vocabulary;
    private final SingleAnswerStops stops;
    private final Checklist checklist;
    private final Set<Dimension> dimensions = new LinkedHashSet<>();
    private final Set<String> cautions = new LinkedHashSet<>();

    PhoneData(Rulebook rulebook, SingleAnswerStops stops, Checklist checklist) {
        this.rulebook = rulebook;
        this.vocabulary = rulebook.vocabulary();
        this.stops = stops;
        this.checklist = checklist;
    }

    Map<String, Object> all(String defers) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("format", Inspection.FORMAT);
        all.put("firstLine", InspectionWriter.FIRST_LINE);
        all.put("lastLine", InspectionWriter.LAST_LINE);
        all.put("rulebook", rulebook.book().name() + " " + rulebook.book().version());
        all.put("checklist", fields("id", checklist.id(), "title", checklist.title()));
        all.put("defers", defers);
        all.put("site", vocabulary.site().id());
        Kind unit = vocabulary.unit();
        all.put("unit", fields("plural", unit.plural(), "label", unit.label()));
        all.put("kinds", kinds());
        List<Object> stages = new ArrayList<>();
        for (Stage stage : Stage.values()) {
            stages.add(fields("title", title(stage), "before", stage.isBeforeFiring()));
        }
        all.put("stages", stages);
        Map<String, Integer> numbers = new LinkedHashMap<>();
        List<Object> questions = new ArrayList<>();
        List<Object> sections = new ArrayList<>();
        for (Section section : checklist.sections()) {
            List<Integer> asked = new ArrayList<>();
            List<Object> panels = new ArrayList<>();
            Set<String> begun = new LinkedHashSet<>();
            for (Question question : section.questions()) {
                if (!numbers.containsKey(question.gives())) {
                    numbers.put(question.gives(), questions.size());
                    questions.add(question(question));
                }
                asked.add(numbers.get(question.gives()));
                panels.add(section.panel(question)
                        .map(panel -> fields("title", panel.title(), "look", begun.add(panel.id()) ? panel.look() : ""))
                        .orElseGet(() -> fields("title", "", "look", "")));
            }
            sections.add(fields(
                    "title", section.title(),
                    "stage", section.stage().ordinal(),
                    "each", section.each(),
                    "member", section.member(),
                    "intro", section.intro(),
                    "questions", asked,
                    "panels", panels));
        }
        all.put("questions", questions);
        all.put("sections", sections);
        stops(all, numbers.keySet());
        all.put("dimensions", dimensions());
        Map<String, Object> texts = new LinkedHashMap<>();
        for (String id : cautions) {
            Caution caution = rulebook.book().cautions().get(id);
            if (caution != null) {
                texts.put(id, fields("title", caution.title(), "text", caution.text()));
            }
        }
        all.put("cautions", texts);
        return all;
    }

    private static String title(Stage stage) {
        String word = stage.word();
        return Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }

    private Map<String, Object> kinds() {
        Map<String, Object> kinds = new LinkedHashMap<>();
        for (Kind kind : vocabulary.kinds()) {
            kinds.put(
                    kind.id(),
                    fields(
                            "label", kind.label(),
                            "plural", kind.plural(),
                            "placement", kind.placement().name().toLowerCase(java.util.Locale.ROOT),
                            "parent", kind.parent(),
                            "most", kind.most()));
        }
        return kinds;
    }

    // ---- questions

    private Map<String, Object> question(Question question) {
        Map<String, Object> all = fields(
                "gives", question.gives(),
                "counts", question.isCount(),
                "kind", question.kind(),
                "group", question.item().map(ItemType::group).orElse(""),
                "key", question.item().map(ItemType::name).orElse(""),
                "ask", question.ask(),
                "look", question.look(),
                "caution", question.caution(),
                "take", Words.of(question.take()));
        cautions.add(question.caution());
        List<Object> events = new ArrayList<>();
        question.events().forEach((key, word) -> events.add(fields("key", key, "word", word)));
        all.put("events", events);
        List<Object> when = new ArrayList<>();
        question.askWhen().forEach(condition -> when.add(fields("item", condition.item(), "words", condition.words())));
        all.put("when", when);
        question.readings().ifPresent(dimensions::add);
        all.put("readings", question.readings().map(Dimension::name).orElse(""));
        all.put("unread", question.item().map(ItemType::unreadBecause).orElse(List.of()));
        all.put("gates", stops.gating().contains(question.gives()));
        List<Object> parts = new ArrayList<>();
        question.item().ifPresent(item -> item.values().forEach(part -> parts.add(part(question, part))));
        all.put("parts", parts);
        return all;
    }

    private Map<String, Object> part(Question question, Component part) {
        String key = Words.hyphened(part.name());
        Map<String, Object> all = fields(
                "key",
                key,
                "name",
                key.replace('-', ' '),
                "form",
                part.form().name().toLowerCase(java.util.Locale.ROOT));
        all.put("span", "");
        switch (part.form()) {
            case CHOICE -> {
                List<Object> choices = new ArrayList<>();
                part.choices()
                        .forEach(word -> choices.add(fields(
                                "word", word, "meaning", question.choices().getOrDefault(word, ""))));
                all.put("choices", choices);
            }
            case QUANTITY -> {
                Unit unit = part.unit();
                dimensions.add(unit.dimension());
                all.put("dimension", unit.dimension().name());
                all.put("unit", Unit.of(unit.dimension()).indexOf(unit));
                all.put("from", inFirst(part.least()));
                all.put("to", inFirst(part.most()));
                all.put("span", part.from() + " to " + part.to() + " " + unit.symbol());
            }
            case COUNT -> {
                all.put("from", pair(Rational.of(Long.parseLong(part.from()))));
                all.put("to", pair(Rational.of(Long.parseLong(part.to()))));
                all.put("span", "a whole number, " + part.from() + " to " + part.to());
            }
            case DATE -> all.put("span", "as 2015-08-31; 2015-08 or 2015 will do");
            case TEXT -> all.put("span", "in words");
        }
        return all;
    }

    // ---- stops

    private void stops(Map<String, Object> all, Set<String> asked) {
        Map<Card, Integer> numbers = new LinkedHashMap<>();
        List<Object> cards = new ArrayList<>();
        List<Object> list = new ArrayList<>();
        for (Stop stop : stops.all()) {
            if (!asked.contains(stop.item())) {
                continue;
            }
            Card card = stop.card();
            if (!numbers.containsKey(card)) {
                numbers.put(card, cards.size());
                cautions.addAll(card.cautions());
                cards.add(fields(
                        "id", card.id(), "title", card.title(), "action", card.action(), "cautions", card.cautions()));
            }
            Map<String, Object> one = fields("item", stop.item(), "member", stop.member(), "words", stop.words());
            if (stop.isSpan()) {
                one.put("from", end(stop.item(), stop.from()));
                one.put("fromIncluded", stop.fromIncluded());
                one.put("to", end(stop.item(), stop.to()));
                one.put("toIncluded", stop.toIncluded());
            }
            one.put("card", numbers.get(card));
            list.add(one);
        }
        all.put("cards", cards);
        all.put("stops", list);
    }

    private List<String> end(String item, Rational value) {
        return vocabulary
                .item(item)
                .map(one -> one.values().get(0))
                .filter(part -> part.form() == Component.Form.QUANTITY)
                .map(part -> inFirst(Quantity.of(value, part.unit())))
                .orElseGet(() -> pair(value));
    }

    // ---- units

    /** Each unit by how many times the dimension's first unit it is, and how much more its zero is. */
    private Map<String, Object> dimensions() {
        Map<String, Object> all = new LinkedHashMap<>();
        for (Dimension dimension : dimensions) {
            List<Object> units = new ArrayList<>();
            for (Unit unit : Unit.of(dimension)) {
                Rational more = Quantity.of(Rational.ZERO, unit).valueIn(first(dimension));
                Rational one = Quantity.of(Rational.ONE, unit).valueIn(first(dimension));
                units.add(fields(
                        "symbol", unit.symbol(),
                        "spellings", unit.spellings(),
                        "times", pair(one.minus(more)),
                        "more", pair(more)));
            }
            Map<String, Object> fields = fields(
                    "words", dimension.words(),
                    "usual", dimension.usualUnits(),
                    "vacuum", dimension == Dimension.PRESSURE,
                    "below", isRead("-1 " + first(dimension).symbol(), dimension),
                    "units", units);
            if (dimension == Dimension.TEMPERATURE) {
                fields.put("least", inFirst(Quantity.of(Rational.ZERO, Unit.KELVIN)));
            }
            all.put(dimension.name(), fields);
        }
        return all;
    }

    private static boolean isRead(String text, Dimension dimension) {
        try {
            Quantity.parse(text, dimension);
            return true;
        } catch (QuantityFormatException e) {
            return false;
        }
    }

    private static Unit first(Dimension dimension) {
        return Unit.of(dimension).get(0);
    }

    private static List<String> inFirst(Quantity quantity) {
        return pair(quantity.valueIn(first(quantity.dimension())));
    }

    private static List<String> pair(Rational value) {
        return List.of(value.numerator().toString(), value.denominator().toString());
    }

    private static Map<String, Object> fields(Object... keysAndValues) {
        Map<String, Object> fields = new LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            fields.put((String) keysAndValues[i], keysAndValues[i + 1]);
        }
        return fields;
    }
}
