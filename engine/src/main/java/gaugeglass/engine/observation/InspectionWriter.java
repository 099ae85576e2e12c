package gaugeglass.engine.observation;

import gaugeglass.engine.observation.Layout.Equipment;
import gaugeglass.engine.observation.Layout.Part;
import gaugeglass.engine.observation.Layout.Question;
import gaugeglass.engine.observation.Roster.Presence;
import gaugeglass.engine.observation.Values.Unfit;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.reading.YamlWriter;
import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.Component;
import gaugeglass.engine.vocabulary.Decision;
import gaugeglass.engine.vocabulary.Earlier;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.math.BigInteger;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Writes inspections as YAML of format 1. What was typed is written as it was typed; reading it back gives an equal
 * inspection.
 */
public final class InspectionWriter {
    /** Stands first in what is written whole: what begins so and does not end in the last line was cut off. */
    public static final String FIRST_LINE =
            "# Written by a program that writes a last line too; keep both, or take out both.";

    /** Stands last in what is written whole. */
    public static final String LAST_LINE = "# End of this inspection. A walk writes this line last and looks for it.";

    /** The key of the owner's decisions. */
    public static final String DECISIONS = "decisions";

    /** Stands between the parts of an answer of several, as typed. */
    static final String BETWEEN_PARTS = " | ";

    private final Layout layout;

    /** A writer for one vocabulary. */
    public InspectionWriter(Vocabulary vocabulary) {
        this.layout = new Layout(vocabulary);
    }

    /**
     * Writes one inspection.
     *
     * @throws IllegalArgumentException when it holds what no file can say: an answer about a tag that its roster lacks,
     *     an answer at arrival about what was put in on the visit, a quantity without a finite number
     */
    public String write(Inspection inspection) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("format", String.valueOf(Inspection.FORMAT));
        Map<String, Object> site = new LinkedHashMap<>();
        site.put("id", inspection.siteId());
        put(site, "name", inspection.siteName());
        site(site, inspection.site(), State.AS_FOUND, "");
        Map<String, Object> left = new LinkedHashMap<>();
        String at = commonTime(inspection.site(), State.AS_LEFT);
        put(left, "at", at);
        site(left, inspection.site(), State.AS_LEFT, at);
        if (!left.isEmpty()) {
            site.put(Layout.AS_LEFT, left);
        }
        all.put(layout.vocabulary.site().id(), site);
        Map<String, Object> visit = new LinkedHashMap<>();
        visit.put("date", inspection.date().toString());
        put(visit, "by", inspection.by());
        put(visit, "started", inspection.started());
        put(visit, "note", inspection.note());
        all.put("visit", visit);
        List<Object> earlier = new ArrayList<>();
        for (Earlier one : inspection.earlier()) {
            earlier.add(earlier(one));
        }
        boolean isKnown = inspection.units().stream()
                .anyMatch(unit -> unit.observations().earlier().isPresent());
        if (isKnown || !earlier.isEmpty()) {
            all.put("earlier", earlier);
        }
        if (!inspection.decisions().isEmpty()) {
            all.put(DECISIONS, decisions(inspection));
        }
        if (inspection.judgedBy().isRecorded()) {
            all.put(JudgedBy.KEY, inspection.judgedBy().write());
        }
        List<Object> units = new ArrayList<>();
        for (Inspection.Visited unit : inspection.units()) {
            units.add(new OfUnit(unit, inspection.site()).whole());
        }
        if (!units.isEmpty()) {
            all.put(layout.unit.plural(), units);
        }
        return YamlWriter.write(all);
    }

    /** Writes the owner's decisions alone, as they stand in a file: a key with its list, or nothing where there are none. */
    public String writeDecisions(Inspection inspection) {
        return inspection.decisions().isEmpty() ? "" : YamlWriter.write(Map.of(DECISIONS, decisions(inspection)));
    }

    private List<Object> decisions(Inspection inspection) {
        List<Object> decisions = new ArrayList<>();
        for (Inspection.Decided one : inspection.decisions()) {
            decisions.add(decided(one));
        }
        return decisions;
    }

    private void site(Map<String, Object> into, List<Answer> answers, State state, String timeAround) {
        layout.site.forEach((key, question) -> {
            for (Answer answer : answers) {
                if (answer.state() == state && answer.item().equals(question.item)) {
                    into.put(key, answer(question, answer, timeAround));
                }
            }
        });
    }

    /** The time that all answers have in a state; empty where they differ. */
    private static String commonTime(Collection<Answer> answers, State state) {
        List<String> times = answers.stream()
                .filter(answer -> answer.state() == state)
                .map(Answer::at)
                .distinct()
                .toList();
        return times.size() == 1 ? times.get(0) : "";
    }

    /**
     * Writes one inspection between a first and a last line of comment, so that a reader notices where its end is missing.
     *
     * @throws IllegalArgumentException as {@link #write}
     */
    public String writeWhole(Inspection inspection) {
        return FIRST_LINE + "\n" + write(inspection) + LAST_LINE + "\n";
    }

    /** Whether a text begins as one that was written whole, and does not end so. */
    public static boolean isCutOff(String text) {
        return text.startsWith(FIRST_LINE) && !text.stripTrailing().endsWith(LAST_LINE);
    }

    private Map<String, Object> earlier(Earlier one) {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("rule", one.rule());
        fields.put(layout.unit.id(), one.unit());
        put(fields, "subject", one.subject());
        fields.put("urgency", one.urgency());
        fields.put("found-on", one.foundOn().toString());
        if (one.decision() != Decision.NONE) {
            fields.put("decision", Words.of(one.decision()));
        }
        put(fields, "decided-by", one.decidedBy());
        put(fields, "decided-on", one.decidedOn());
        return fields;
    }

    private Map<String, Object> decided(Inspection.Decided one) {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("rule", one.rule());
        fields.put(layout.unit.id(), one.unit());
        put(fields, "subject", one.subject());
        fields.put("decision", Words.of(one.decision()));
        fields.put("decided-by", one.by());
        fields.put("decided-on", one.on().toString());
        put(fields, "note", one.note());
        return fields;
    }

    private static void put(Map<String, Object> fields, String key, String text) {
        if (!text.isEmpty()) {
            fields.put(key, text);
        }
    }

    /** The writing of one unit; it keeps account of the answers written, so that none is left out unseen. */
    private final class OfUnit {
        private final Inspection.Visited unit;
        private final Observations observations;
        private final Set<Answer> unwritten = new LinkedHashSet<>();

        private OfUnit(Inspection.Visited unit, List<Answer> site) {
            this.unit = unit;
            this.observations = unit.observations();
            for (Answer answer : observations.answers()) {
                boolean isOfSite =
                        answer.item().kind().equals(layout.vocabulary.site().id());
                if (!isOfSite || !site.contains(answer)) {
                    unwritten.add(answer);
                }
            }
        }

        private Map<String, Object> whole() {
            Map<String, Object> all = new LinkedHashMap<>();
            all.put("id", unit.id());
            put(all, "name", unit.name());
            put(all, "checklist", unit.checklist());
            groups(all, State.AS_FOUND, "");
            for (Map.Entry<String, Equipment> entry : layout.equipment.entrySet()) {
                Map<String, Object> written = equipment(entry.getValue());
                if (!written.isEmpty()) {
                    all.put(entry.getKey(), written);
                }
            }
            Map<String, Object> left = asLeft();
            if (!left.isEmpty()) {
                all.put(Layout.AS_LEFT, left);
            }
            List<Object> disputes = new ArrayList<>();
            for (Observations.Dispute dispute : observations.disputes()) {
                Map<String, Object> fields = new LinkedHashMap<>();
                fields.put("rule", dispute.rule());
                put(fields, "subject", dispute.subject());
                fields.put("because", dispute.because());
                disputes.add(fields);
            }
            if (!disputes.isEmpty()) {
                all.put("disputed", disputes);
            }
            if (!unwritten.isEmpty()) {
                Answer answer = unwritten.iterator().next();
                throw new IllegalArgumentException("no file can hold the answer to "
                        + answer.item().id() + (answer.keys().isEmpty() ? "" : " of " + answer.subject()) + ", "
                        + Words.of(answer.state()));
            }
            return all;
        }

        private Map<String, Object> asLeft() {
            Map<String, Object> left = new LinkedHashMap<>();
            String at = timeOf(answer -> answer.item().kind().equals(layout.unit.id()));
            put(left, "at", at);
            groups(left, State.AS_LEFT, at);
            layout.equipment.forEach((plural, equipment) -> observations
                    .roster(equipment.kind.id())
                    .asLeft()
                    .ifPresent(number -> left.put(plural, Map.of("fitted", String.valueOf(number)))));
            return left;
        }

        /** The time that all answers of a place have as left; empty where they differ. */
        private String timeOf(Predicate<Answer> isThere) {
            return commonTime(observations.answers().stream().filter(isThere).toList(), State.AS_LEFT);
        }

        private boolean isAbout(Answer answer, List<Object> tag) {
            return !answer.keys().isEmpty()
                    && tag.get(1).equals(answer.keys().get(0))
                    && tag.get(0)
                            .equals(layout.vocabulary
                                    .counted(layout.vocabulary
                                            .kind(answer.item().kind())
                                            .orElseThrow())
                                    .id());
        }

        private void groups(Map<String, Object> into, State state, String at) {
            layout.groups.forEach((group, questions) -> {
                Map<String, Object> written = answers(questions.values(), List.of(), state, at);
                if (!written.isEmpty()) {
                    into.put(group, written);
                }
            });
        }

        private Map<String, Object> equipment(Equipment equipment) {
            Map<String, Object> written = new LinkedHashMap<>();
            Roster roster = observations.roster(equipment.kind.id());
            if (!roster.unread().isEmpty()) {
                written.put("fitted", Map.of("unread", roster.unread()));
            }
            roster.asFound().ifPresent(number -> written.put("fitted", String.valueOf(number)));
            List<Object> each = new ArrayList<>();
            for (Roster.Tag tag : roster.tags()) {
                each.add(one(equipment, tag));
            }
            if (!each.isEmpty()) {
                written.put("each", each);
            }
            return written;
        }

        private Map<String, Object> one(Equipment equipment, Roster.Tag tag) {
            Map<String, Object> fields = new LinkedHashMap<>();
            fields.put("tag", tag.name());
            if (tag.presence() != Presence.THROUGHOUT) {
                fields.put("present", Words.of(tag.presence()));
            }
            State direct = tag.presence() == Presence.AS_LEFT ? State.AS_LEFT : State.AS_FOUND;
            described(fields, equipment, tag, direct, "");
            if (tag.presence() == Presence.THROUGHOUT) {
                Map<String, Object> left = new LinkedHashMap<>();
                String at = timeOf(answer -> isAbout(answer, List.of(equipment.kind.id(), tag.name())));
                put(left, "at", at);
                described(left, equipment, tag, State.AS_LEFT, at);
                if (!left.isEmpty()) {
                    fields.put(Layout.AS_LEFT, left);
                }
            }
            return fields;
        }

        private void described(Map<String, Object> into, Equipment equipment, Roster.Tag tag, State state, String at) {
            into.putAll(answers(equipment.questions.values(), List.of(tag.name()), state, at));
            equipment.sets.forEach((plural, set) -> {
                Map<String, Object> members = new LinkedHashMap<>();
                set.members.forEach((word, member) -> {
                    Map<String, Object> written =
                            answers(set.questions.values(), List.of(tag.name(), member), state, at);
                    if (!written.isEmpty()) {
                        members.put(word, written);
                    }
                });
                if (!members.isEmpty()) {
                    into.put(plural, members);
                }
            });
        }

        private Map<String, Object> answers(Collection<Question> questions, List<Object> keys, State state, String at) {
            Map<String, Object> written = new LinkedHashMap<>();
            for (Question question : questions) {
                observations.answer(question.item, keys, state).ifPresent(answer -> {
                    written.put(question.key(), InspectionWriter.this.answer(question, answer, at));
                    unwritten.remove(answer);
                });
            }
            return written;
        }
    }

    /** One answer; the time is left out where the group around it says it. */
    private Object answer(Question question, Answer answer, String timeAround) {
        Map<String, Object> fields = new LinkedHashMap<>();
        Optional<Record> fact = answer.fact();
        if (fact.isEmpty()) {
            fields.put("unread", answer.unread());
        } else {
            List<String> texts = texts(question, answer, question.item.valuesOf(fact.get()));
            for (int i = 0; i < texts.size(); i++) {
                fields.put(texts.size() == 1 ? "value" : question.parts.get(i).key, texts.get(i));
            }
        }
        put(fields, "note", answer.note());
        if (!answer.photos().isEmpty()) {
            fields.put("photos", answer.photos());
        }
        if (!answer.at().equals(timeAround)) {
            put(fields, "at", answer.at());
        }
        Object value = fields.get("value");
        return value != null && fields.size() == 1 ? value : fields;
    }

    private List<String> texts(Question question, Answer answer, List<Object> values) {
        List<Part> parts = question.parts;
        List<String> typed = parts.size() == 1 ? List.of(answer.typed()) : split(answer.typed());
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            String text = typed.size() == parts.size() ? typed.get(i) : "";
            texts.add(says(parts.get(i), text, values.get(i)) ? text : written(parts.get(i), values.get(i)));
        }
        return texts;
    }

    private static List<String> split(String typed) {
        List<String> pieces = new ArrayList<>();
        int start = 0;
        for (int end = typed.indexOf(BETWEEN_PARTS); end >= 0; end = typed.indexOf(BETWEEN_PARTS, start)) {
            pieces.add(typed.substring(start, end));
            start = end + BETWEEN_PARTS.length();
        }
        pieces.add(typed.substring(start));
        return pieces;
    }

    /** Whether a text reads as a value. */
    private static boolean says(Part part, String text, Object value) {
        if (text.isBlank()) {
            return false;
        }
        try {
            return Values.read(part, text, Optional.empty()).value().equals(value);
        } catch (Unfit e) {
            return false;
        }
    }

    private static String written(Part part, Object value) {
        String text;
        if (value instanceof Enum<?> constant) {
            text = Words.of(constant);
        } else if (value instanceof Quantity quantity) {
            text = says(part, quantity.toString(), quantity) ? quantity.toString() : fraction(quantity);
        } else if (value instanceof LocalDate date) {
            text = date.toString();
        } else {
            text = value.toString();
        }
        if (part.component.form() != Component.Form.TEXT && !says(part, text, value)) {
            throw new IllegalArgumentException("no file can hold the value " + value + " of " + part.key);
        }
        return text;
    }

    /** An exact number that does not end as a decimal, as a whole number and a fraction. */
    private static String fraction(Quantity quantity) {
        BigInteger[] whole = quantity.value()
                .numerator()
                .abs()
                .divideAndRemainder(quantity.value().denominator());
        return (quantity.signum() < 0 ? "-" : "")
                + (whole[0].signum() == 0 ? "" : whole[0] + " ")
                + whole[1]
                + "/"
                + quantity.value().denominator()
                + " "
                + quantity.unit().symbol();
    }
}
