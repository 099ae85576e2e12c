package gaugeglass.engine.observation;

import gaugeglass.engine.observation.Layout.Equipment;
import gaugeglass.engine.observation.Layout.FixedSet;
import gaugeglass.engine.observation.Layout.Part;
import gaugeglass.engine.observation.Layout.Question;
import gaugeglass.engine.observation.Roster.Presence;
import gaugeglass.engine.reading.NodeWriter;
import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.Component;
import gaugeglass.engine.vocabulary.Decision;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The JSON Schema (draft 2020-12) of inspection files, made from a vocabulary.
 *
 * <p>It is for editors and other programs; the reader decides. The schema is <em>more lenient</em> where JSON Schema
 * has no words for a rule: the unit and the span of a quantity (only a number followed by something is asked), days the
 * calendar has not, days after the visit, an answer of several parts with a part left blank, a note without an answer,
 * doubled keys, tags and ids, more described than fitted, two answers about what was put in on the visit, answers as
 * left about what was taken out, and disputes about unknown tags.
 *
 * <p>It is <em>stricter</em> in spelling: the words of a choice are those of the list, in lower case with hyphens, and
 * whole numbers stand without quotes. It also asks for the visit's date, which a calling program may give instead.
 */
public final class InspectionSchema {
    private static final String LENIENT =
            "The program is stricter than this schema: it also checks units and spans of quantities,"
                    + " the calendar, and what must agree between two places. It takes other spellings of a"
                    + " choice's words, such as capitals and spaces.";

    private static final String DAY = "^[0-9]{4}-[0-9]{2}-[0-9]{2}$";
    private static final String DAY_OR_LESS = "^[0-9]{4}(-[0-9]{2}(-[0-9]{2})?)?$";
    private static final String TIME = "^([01]?[0-9]|2[0-3]):[0-5][0-9](:[0-5][0-9])?$";

    /** A digit or a fraction character, and later something that is no part of a number. */
    private static final String QUANTITY =
            "[0-9\\u00BC-\\u00BE\\u2150-\\u215E].*[^0-9\\u00BC-\\u00BE\\u2150-\\u215E.,/\\s-]";

    /** Ends the name of what one member of a fixed set may hold, and of a value alone; no id holds a double hyphen. */
    private static final String ONE = "--one";

    private static final String VALUE = "--value";

    private final Layout layout;

    private InspectionSchema(Vocabulary vocabulary) {
        this.layout = new Layout(vocabulary);
    }

    /** The schema as JSON text, always the same for the same vocabulary. */
    public static String of(Vocabulary vocabulary) {
        return NodeWriter.pretty(new InspectionSchema(vocabulary).whole()) + "\n";
    }

    private Map<String, Object> whole() {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        all.put("title", "Inspection, format " + Inspection.FORMAT);
        all.put("$comment", LENIENT);
        Map<String, Object> keys = new LinkedHashMap<>();
        keys.put("format", described(Map.of("const", Inspection.FORMAT), "The version of this form."));
        keys.put(layout.vocabulary.site().id(), site());
        keys.put("visit", visit());
        keys.put(
                "earlier",
                described(nullOr(list(earlier())), "What earlier visits found, with the owner's decisions."));
        keys.put(
                "decisions", described(nullOr(list(decided())), "What the owner decided about this visit's findings."));
        keys.put(JudgedBy.KEY, described(nullOr(judgedBy()), "What judged it when it was made; a walk writes it."));
        keys.put(
                layout.unit.plural(),
                described(nullOr(list(unit())), "One entry for each " + layout.unit.label() + "."));
        all.putAll(closed(keys, List.of("format", layout.vocabulary.site().id(), "visit")));
        all.put("$defs", definitions());
        return all;
    }

    private Map<String, Object> definitions() {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("text", map("type", List.of("string", "number"), "minLength", 1));
        all.put("textOrNothing", map("type", List.of("string", "number", "null"), "minLength", 1));
        all.put("photos", map("anyOf", List.of(ref("textOrNothing"), list(ref("text")))));
        all.put(
                "time",
                described(map("type", List.of("string", "null"), "pattern", TIME), "A time of day such as 09:40."));
        all.put("day", described(map("type", "string", "pattern", DAY), "A day such as 2026-09-14."));
        all.put(
                "name",
                described(
                        map(
                                "type",
                                List.of("string", "number"),
                                "pattern",
                                "^[^/\\\\\\u0000-\\u001F\\u007F-\\u009F]*$",
                                "minLength",
                                1,
                                "maxLength",
                                60,
                                "not",
                                Map.of("const", Subjects.NOT_LISTED)),
                        "A short name that stays the same over years."));
        all.put("unread", closed(notes("unread", ref("text")), List.of("unread")));
        for (Question question : layout.questions()) {
            all.put(question.item.id(), question(question));
            if (question.parts.size() == 1) {
                all.put(question.item.id() + VALUE, value(question.parts.get(0)));
            }
        }
        for (Equipment equipment : layout.equipment.values()) {
            for (FixedSet set : equipment.sets.values()) {
                all.put(set.kind.plural(), members(set));
                all.put(set.kind.plural() + ONE, member(set));
            }
        }
        return all;
    }

    private Map<String, Object> site() {
        Map<String, Object> keys = new LinkedHashMap<>();
        keys.put("id", ref("name"));
        keys.put("name", ref("textOrNothing"));
        questions(keys, layout.site.values());
        Map<String, Object> left = new LinkedHashMap<>();
        left.put("at", ref("time"));
        questions(left, layout.site.values());
        keys.put(Layout.AS_LEFT, left(left));
        return closed(keys, List.of("id"));
    }

    private static Map<String, Object> left(Map<String, Object> keys) {
        return described(nullOr(closed(keys, List.of())), "Answers after something was put right or tested again.");
    }

    private static Map<String, Object> visit() {
        Map<String, Object> keys = new LinkedHashMap<>();
        keys.put("date", ref("day"));
        keys.put("by", described(ref("textOrNothing"), "Who made the visit."));
        keys.put("started", ref("time"));
        keys.put("note", ref("textOrNothing"));
        return closed(keys, List.of("date"));
    }

    private Map<String, Object> earlier() {
        Map<String, Object> keys = new LinkedHashMap<>();
        keys.put("rule", ref("text"));
        keys.put(layout.unit.id(), ref("name"));
        keys.put("subject", ref("textOrNothing"));
        keys.put("urgency", Map.of("enum", InspectionReader.URGENCIES));
        keys.put("found-on", ref("day"));
        keys.put("decision", nullOr(Map.of("enum", words(Decision.values()))));
        keys.put("decided-by", ref("textOrNothing"));
        keys.put("decided-on", nullOr(ref("day")));
        return closed(keys, List.of("rule", layout.unit.id(), "urgency", "found-on"));
    }

    private static Map<String, Object> judgedBy() {
        Map<String, Object> digest = map("type", "string", "pattern", "^[0-9a-f]{64}$");
        Map<String, Object> pack = new LinkedHashMap<>();
        pack.put("pack", ref("text"));
        pack.put("version", ref("text"));
        pack.put("digest", digest);
        Map<String, Object> keys = new LinkedHashMap<>();
        keys.put("rulebook", ref("text"));
        keys.put("version", ref("text"));
        keys.put("digest", digest);
        keys.put("packs", nullOr(list(closed(pack, List.of("pack", "version", "digest")))));
        return closed(keys, List.of("rulebook", "version", "digest"));
    }

    private Map<String, Object> decided() {
        Map<String, Object> keys = new LinkedHashMap<>();
        keys.put("rule", ref("text"));
        keys.put(layout.unit.id(), ref("name"));
        keys.put("subject", ref("textOrNothing"));
        List<String> words = new ArrayList<>(words(Decision.values()));
        words.remove(Words.of(Decision.NONE));
        keys.put("decision", Map.of("enum", words));
        keys.put("decided-by", ref("text"));
        keys.put("decided-on", ref("day"));
        keys.put("note", ref("textOrNothing"));
        return closed(keys, List.of("rule", layout.unit.id(), "decision", "decided-by", "decided-on"));
    }

    private Map<String, Object> unit() {
        Map<String, Object> keys = new LinkedHashMap<>();
        keys.put("id", ref("name"));
        keys.put("name", ref("textOrNothing"));
        keys.put("checklist", ref("textOrNothing"));
        groups(keys);
        layout.equipment.forEach((plural, equipment) -> keys.put(plural, equipment(equipment)));
        Map<String, Object> left = new LinkedHashMap<>();
        left.put("at", ref("time"));
        groups(left);
        layout.equipment.forEach((plural, equipment) ->
                left.put(plural, nullOr(closed(map("fitted", nullOr(number(equipment.kind))), List.of()))));
        keys.put(Layout.AS_LEFT, left(left));
        Map<String, Object> dispute = new LinkedHashMap<>();
        dispute.put("rule", ref("text"));
        dispute.put("subject", ref("textOrNothing"));
        dispute.put("because", ref("text"));
        keys.put(
                "disputed",
                described(
                        nullOr(list(closed(dispute, List.of("rule", "because")))),
                        "Findings that the person on the spot believes to be wrong, and why."));
        return closed(keys, List.of("id"));
    }

    private void groups(Map<String, Object> into) {
        layout.groups.forEach((group, questions) -> {
            Map<String, Object> keys = new LinkedHashMap<>();
            questions(keys, questions.values());
            into.put(group, nullOr(closed(keys, List.of())));
        });
    }

    private Map<String, Object> equipment(Equipment equipment) {
        Kind kind = equipment.kind;
        Map<String, Object> keys = new LinkedHashMap<>();
        keys.put(
                "fitted",
                described(
                        nullOr(number(kind), closed(map("unread", ref("text")), List.of("unread"))),
                        "How many are fitted, or why they could not be counted."));
        keys.put("each", nullOr(list(one(equipment))));
        return described(nullOr(closed(keys, List.of())), "Each " + kind.label() + ".");
    }

    private static Map<String, Object> number(Kind kind) {
        return map("type", "integer", "minimum", 0, "maximum", kind.most());
    }

    private static Map<String, Object> one(Equipment equipment) {
        Map<String, Object> keys = new LinkedHashMap<>();
        keys.put("tag", nullOr(ref("name")));
        keys.put(
                "present",
                described(
                        nullOr(Map.of("enum", words(Presence.values()))),
                        "Whether it was there throughout, taken out on the visit, or put in on it."));
        answers(keys, equipment);
        Map<String, Object> left = new LinkedHashMap<>();
        left.put("at", ref("time"));
        answers(left, equipment);
        keys.put(Layout.AS_LEFT, nullOr(closed(left, List.of())));
        return closed(keys, List.of());
    }

    private static void answers(Map<String, Object> into, Equipment equipment) {
        questions(into, equipment.questions.values());
        equipment.sets.forEach((plural, set) -> into.put(plural, ref(plural)));
    }

    private static Map<String, Object> members(FixedSet set) {
        Map<String, Object> members = new LinkedHashMap<>();
        set.members.keySet().forEach(word -> members.put(word, ref(set.kind.plural() + ONE)));
        return nullOr(closed(members, List.of()));
    }

    private static Map<String, Object> member(FixedSet set) {
        Map<String, Object> keys = new LinkedHashMap<>();
        keys.put("at", ref("time"));
        questions(keys, set.questions.values());
        return nullOr(closed(keys, List.of()));
    }

    /** Each question is defined once, under its item's id: it stands in several places. */
    private static void questions(Map<String, Object> into, Collection<Question> questions) {
        for (Question question : questions) {
            into.put(question.key(), ref(question.item.id()));
        }
    }

    private static Map<String, Object> question(Question question) {
        List<Map<String, Object>> ways = new ArrayList<>();
        ways.add(map("type", "null"));
        if (question.parts.size() == 1) {
            Map<String, Object> value = ref(question.item.id() + VALUE);
            ways.add(value);
            ways.add(closed(notes("value", nullOr(value)), List.of("value")));
        } else {
            Map<String, Object> keys = new LinkedHashMap<>();
            List<String> required = new ArrayList<>();
            for (Part part : question.parts) {
                keys.put(part.key, nullOr(value(part)));
                required.add(part.key);
            }
            addNotes(keys);
            ways.add(closed(keys, required));
        }
        ways.add(ref("unread"));
        return described(map("anyOf", ways), question.item.ask());
    }

    private static Map<String, Object> notes(String key, Map<String, Object> schema) {
        Map<String, Object> keys = new LinkedHashMap<>();
        keys.put(key, schema);
        addNotes(keys);
        return keys;
    }

    private static void addNotes(Map<String, Object> keys) {
        keys.put("note", ref("textOrNothing"));
        keys.put("photos", ref("photos"));
        keys.put("at", ref("time"));
    }

    private static Map<String, Object> value(Part part) {
        Component component = part.component;
        return switch (component.form()) {
            case CHOICE -> map("enum", component.choices());
            case QUANTITY ->
                described(
                        map("type", "string", "pattern", QUANTITY),
                        component.unit().dimension().words() + " with its unit, " + part.span());
            case COUNT ->
                map(
                        "type",
                        "integer",
                        "minimum",
                        Integer.valueOf(component.from()),
                        "maximum",
                        Integer.valueOf(component.to()));
            case DATE ->
                described(
                        // Some readers of YAML take a year alone for a number.
                        map(
                                "type",
                                List.of("string", "integer"),
                                "pattern",
                                DAY_OR_LESS,
                                "minimum",
                                1800,
                                "maximum",
                                9999),
                        "A day such as 2026-09-14, or a year and month, or a year.");
            case TEXT -> ref("text");
        };
    }

    // ---- pieces of a schema

    private static List<String> words(Enum<?>[] constants) {
        List<String> words = new ArrayList<>();
        for (Enum<?> constant : constants) {
            words.add(Words.of(constant));
        }
        return words;
    }

    private static Map<String, Object> ref(String definition) {
        return map("$ref", "#/$defs/" + definition);
    }

    private static Map<String, Object> list(Map<String, Object> of) {
        return map("type", "array", "items", of);
    }

    private static Map<String, Object> nullOr(Object... others) {
        List<Object> ways = new ArrayList<>();
        ways.add(map("type", "null"));
        ways.addAll(List.of(others));
        return map("anyOf", ways);
    }

    private static Map<String, Object> closed(Map<String, Object> keys, List<String> required) {
        Map<String, Object> schema = map("type", "object", "properties", keys, "additionalProperties", false);
        if (!required.isEmpty()) {
            schema.put("required", required);
        }
        return schema;
    }

    private static Map<String, Object> described(Map<String, ?> schema, String words) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("description", words);
        all.putAll(schema);
        return all;
    }

    /** A map in the order given. */
    private static Map<String, Object> map(Object... keysAndValues) {
        Map<String, Object> all = new LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            all.put(keysAndValues[i].toString(), keysAndValues[i + 1]);
        }
        return all;
    }
}
