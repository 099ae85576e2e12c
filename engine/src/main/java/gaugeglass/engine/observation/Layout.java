package gaugeglass.engine.observation;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.Component;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Where each question of a vocabulary stands in an inspection file. Made once and shared: reading, writing, the schema
 * and the blank form all follow this one plan.
 */
final class Layout {
    static final String AS_LEFT = "as-left";

    /** Keys with a meaning of their own beside the questions of a place. */
    static final Set<String> BESIDE_SITE = Set.of("id", "name", AS_LEFT, "at");

    static final Set<String> BESIDE_UNIT = Set.of("id", "name", "checklist", AS_LEFT, "at", "disputed");
    static final Set<String> BESIDE_COUNTED = Set.of("tag", "present", AS_LEFT, "at");
    static final Set<String> BESIDE_FIXED = Set.of("at");
    static final Set<String> BESIDE_PARTS = Set.of("unread", "note", "photos", "at", "value");

    final Vocabulary vocabulary;
    final Kind unit;
    final Map<String, Question> site = new LinkedHashMap<>();
    final Map<String, Map<String, Question>> groups = new LinkedHashMap<>();
    final Map<String, Equipment> equipment = new LinkedHashMap<>();

    /** The keys of the site and of a unit, and of what each has as left. */
    final Set<String> siteKeys = new LinkedHashSet<>(List.of("id", "name"));

    final Set<String> siteLeftKeys = new LinkedHashSet<>(List.of("at"));
    final Set<String> unitKeys = new LinkedHashSet<>(List.of("id", "name", "checklist"));
    final Set<String> leftKeys = new LinkedHashSet<>(List.of("at"));

    /** A counted kind with its questions, by its plural. */
    static final class Equipment {
        final Kind kind;
        final Map<String, Question> questions = new LinkedHashMap<>();
        final Map<String, FixedSet> sets = new LinkedHashMap<>();

        /** The keys of one of them, and of what it has as left. */
        final Set<String> keys = new LinkedHashSet<>(List.of("tag", "present"));

        final Set<String> leftKeys = new LinkedHashSet<>(List.of("at"));

        private Equipment(Kind kind) {
            this.kind = kind;
        }
    }

    /** A fixed kind with its members and its questions, by its plural. */
    static final class FixedSet {
        final Kind kind;
        final Map<String, Object> members = new LinkedHashMap<>();
        final Map<String, Question> questions = new LinkedHashMap<>();
        final Set<String> keys = new LinkedHashSet<>(List.of("at"));

        private FixedSet(Kind kind) {
            this.kind = kind;
        }
    }

    /** One question, with its value parts laid ready. */
    static final class Question {
        final ItemType item;
        final List<Part> parts = new ArrayList<>();

        /** The keys of an answer that is a group. */
        final Set<String> keys = new LinkedHashSet<>();

        /** What a group of several parts must be, in words. */
        final String wanted;

        private Question(ItemType item) {
            this.item = item;
            for (Component component : item.values()) {
                parts.add(new Part(item, component));
            }
            if (parts.size() == 1) {
                keys.add("value");
            } else {
                parts.forEach(part -> keys.add(part.key));
            }
            wanted = parts.size() == 1 ? "" : "a group with the keys " + String.join(", ", keys);
            keys.addAll(List.of("unread", "note", "photos", "at"));
        }

        String key() {
            return item.name();
        }
    }

    /** One value part of a question. */
    static final class Part {
        private final ItemType item;
        final Component component;
        /** The key in a group of several parts. */
        final String key;

        private @Nullable Map<String, Object> constants;
        private @Nullable Quantity least;
        private @Nullable Quantity most;

        Part(ItemType item, Component component) {
            this.item = item;
            this.component = component;
            this.key = Words.hyphened(component.name());
        }

        /** The constants of a choice by their words; loaded when first asked for. */
        Map<String, Object> constants() {
            Map<String, Object> known = constants;
            if (known == null) {
                Map<String, Object> words = new HashMap<>();
                for (Object constant : item.constants(component)) {
                    words.put(Words.of((Enum<?>) constant), constant);
                }
                // Immutable, so that a thread that sees it at all sees all of it.
                known = Map.copyOf(words);
                constants = known;
            }
            return known;
        }

        Quantity least() {
            Quantity known = least;
            if (known == null) {
                known = component.least();
                least = known;
            }
            return known;
        }

        Quantity most() {
            Quantity known = most;
            if (known == null) {
                known = component.most();
                most = known;
            }
            return known;
        }

        /** The span that is believed, in words. */
        String span() {
            return component.form() == Component.Form.QUANTITY
                    ? least() + " to " + most()
                    : component.from() + " to " + component.to();
        }
    }

    /**
     * Lays out a vocabulary.
     *
     * @throws IllegalArgumentException when two questions would stand under one key
     */
    Layout(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
        this.unit = vocabulary.unit();
        for (Kind kind : vocabulary.kinds()) {
            if (kind.isCounted()) {
                free(kind.plural(), BESIDE_UNIT, equipment, "kind " + kind.id());
                equipment.put(kind.plural(), new Equipment(kind));
            }
        }
        Map<String, FixedSet> sets = new HashMap<>();
        for (Kind kind : vocabulary.kinds()) {
            if (kind.isFixed()) {
                Equipment parent = equipmentOf(kind.parent());
                free(kind.plural(), BESIDE_COUNTED, parent.sets, "kind " + kind.id());
                FixedSet set = new FixedSet(kind);
                for (Object member : vocabulary.members(kind)) {
                    set.members.put(Words.of((Enum<?>) member), member);
                }
                parent.sets.put(kind.plural(), set);
                sets.put(kind.id(), set);
            }
        }
        for (ItemType item : vocabulary.items()) {
            if (!item.isReckoned()) {
                place(item, sets);
            }
        }
        siteKeys.addAll(site.keySet());
        siteKeys.add(AS_LEFT);
        siteLeftKeys.addAll(site.keySet());
        unitKeys.addAll(groups.keySet());
        unitKeys.addAll(equipment.keySet());
        unitKeys.add(AS_LEFT);
        unitKeys.add("disputed");
        leftKeys.addAll(groups.keySet());
        leftKeys.addAll(equipment.keySet());
        for (Equipment own : equipment.values()) {
            for (Set<String> keys : List.of(own.keys, own.leftKeys)) {
                keys.addAll(own.questions.keySet());
                keys.addAll(own.sets.keySet());
            }
            own.keys.add(AS_LEFT);
            own.sets.values().forEach(set -> set.keys.addAll(set.questions.keySet()));
        }
    }

    private void place(ItemType item, Map<String, FixedSet> sets) {
        Kind kind = vocabulary.kind(item.kind()).orElseThrow();
        String named = "item " + item.id();
        Map<String, Question> questions;
        switch (kind.placement()) {
            case SITE:
                free(item.name(), BESIDE_SITE, Map.of(), named);
                questions = site;
                break;
            case UNIT:
                free(item.group(), BESIDE_UNIT, equipment, named);
                free(item.name(), BESIDE_FIXED, Map.of(), named);
                questions = groups.computeIfAbsent(item.group(), g -> new LinkedHashMap<>());
                break;
            case COUNTED:
                Equipment own = equipmentOf(kind.id());
                free(item.name(), BESIDE_COUNTED, own.sets, named);
                questions = own.questions;
                break;
            default:
                free(item.name(), BESIDE_FIXED, Map.of(), named);
                questions = sets.get(kind.id()).questions;
        }
        Question question = new Question(item);
        if (question.parts.isEmpty()) {
            throw new IllegalArgumentException(named + " has no part that holds what was seen");
        }
        if (question.parts.size() > 1) {
            question.parts.forEach(part -> free(part.key, BESIDE_PARTS, Map.of(), named));
        }
        if (questions.put(item.name(), question) != null) {
            throw new IllegalArgumentException(
                    "two items stand under the key " + item.name() + "; one is " + item.id());
        }
    }

    private static void free(String key, Set<String> taken, Map<String, ?> others, String by) {
        if (taken.contains(key) || others.containsKey(key)) {
            throw new IllegalArgumentException(by + " cannot stand under the key " + key + ": it has another meaning");
        }
    }

    private Equipment equipmentOf(String kind) {
        for (Equipment one : equipment.values()) {
            if (one.kind.id().equals(kind)) {
                return one;
            }
        }
        throw new IllegalArgumentException("a fixed kind belongs to \"" + kind + "\", which is not counted");
    }

    /** Every question, place by place. */
    List<Question> questions() {
        List<Question> all = new ArrayList<>(site.values());
        groups.values().forEach(questions -> all.addAll(questions.values()));
        for (Equipment own : equipment.values()) {
            all.addAll(own.questions.values());
            own.sets.values().forEach(set -> all.addAll(set.questions.values()));
        }
        return all;
    }

    /** Where a word that stands in the wrong place belongs; empty where it is no word of the vocabulary. */
    List<String> placesOf(String word) {
        List<String> places = new ArrayList<>();
        for (Question question : site.values()) {
            add(places, word, question, vocabulary.site().id() + "/" + question.key());
        }
        String each = unit.plural();
        groups.forEach((group, questions) -> {
            if (group.equals(word)) {
                places.add(each + "/" + group);
            }
            addAll(places, word, questions.values(), each + "/" + group + "/");
        });
        equipment.forEach((plural, own) -> {
            if (plural.equals(word) || own.kind.id().equals(word)) {
                places.add(each + "/" + plural);
            }
            String one = each + "/" + plural + "/each/";
            addAll(places, word, own.questions.values(), one);
            own.sets.forEach((name, set) -> {
                if (name.equals(word) || set.kind.id().equals(word)) {
                    places.add(one + name);
                }
                addAll(places, word, set.questions.values(), one + name + "/.../");
            });
        });
        return places;
    }

    private static void addAll(List<String> places, String word, Collection<Question> questions, String before) {
        for (Question question : questions) {
            add(places, word, question, before + question.key());
        }
    }

    private static void add(List<String> places, String word, Question question, String place) {
        if (question.key().equals(word) || question.item.id().equals(word)) {
            places.add(place);
        }
    }
}
