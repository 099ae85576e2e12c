package gaugeglass.engine.observation;

import gaugeglass.engine.vocabulary.Earlier;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * What was observed of one unit on one visit, with what was observed of its site. Immutable.
 *
 * <p>What is not in it was not looked at. Nothing in it stands for "no".
 */
public final class Observations {
    private final Vocabulary vocabulary;
    private final String unit;
    private final Map<Key, Answer> answers;
    private final Map<String, Roster> rosters;
    private final List<Dispute> disputes;
    private final Optional<List<Earlier>> earlier;

    private record Key(String item, List<Object> keys, State state) {
        // Written out: a record's own are made with generated code, dear on a cold start.
        @Override
        public boolean equals(Object other) {
            return other instanceof Key key && key.item.equals(item) && key.state == state && key.keys.equals(keys);
        }

        @Override
        public int hashCode() {
            return 31 * item.hashCode() + keys.hashCode() + (state == State.AS_LEFT ? 1 : 0);
        }
    }

    /**
     * A finding that the person on the spot believes to be wrong. It is shown, and changes nothing.
     *
     * @param rule the card's id
     * @param subject the tag; empty for the unit
     * @param because why
     */
    public record Dispute(String rule, String subject, String because) {}

    private Observations(Builder builder) {
        this.vocabulary = builder.vocabulary;
        this.unit = builder.unit;
        this.answers = Collections.unmodifiableMap(new LinkedHashMap<>(builder.answers));
        this.rosters = Collections.unmodifiableMap(new LinkedHashMap<>(builder.rosters()));
        this.disputes = List.copyOf(builder.disputes);
        this.earlier = builder.earlier;
    }

    public static Builder of(Vocabulary vocabulary, String unit) {
        return new Builder(vocabulary, unit);
    }

    public Vocabulary vocabulary() {
        return vocabulary;
    }

    /** The unit's id, which stays the same over years. */
    public String unit() {
        return unit;
    }

    /** Every answer, in the order given. */
    public Collection<Answer> answers() {
        return answers.values();
    }

    public Optional<Answer> answer(ItemType item, List<?> keys, State state) {
        return Optional.ofNullable(answers.get(new Key(item.id(), List.copyOf(keys), state)));
    }

    /** The roster of a counted kind. */
    public Roster roster(String kind) {
        return rosters.getOrDefault(kind, Roster.EMPTY);
    }

    public List<Dispute> disputes() {
        return disputes;
    }

    /**
     * What earlier visits found of the unit, and what the owner decided; an empty list where they left nothing to think of,
     * nothing where it is not known what they found.
     */
    public Optional<List<Earlier>> earlier() {
        return earlier;
    }

    /** Whether anything was changed or tested again on the visit. */
    public boolean hasAsLeft() {
        for (Answer answer : answers.values()) {
            if (answer.state() == State.AS_LEFT) {
                return true;
            }
        }
        for (Roster roster : rosters.values()) {
            if (roster.asLeft().isPresent()) {
                return true;
            }
            for (Roster.Tag tag : roster.tags()) {
                if (tag.presence() != Roster.Presence.THROUGHOUT) {
                    return true;
                }
            }
        }
        return false;
    }

    /**
     * Equal to what holds the same answers, rosters, disputes and earlier findings of one unit, in one vocabulary, in any
     * order of answers.
     */
    @Override
    public boolean equals(Object object) {
        return object instanceof Observations other
                && vocabulary == other.vocabulary
                && unit.equals(other.unit)
                && answers.equals(other.answers)
                && rosters.equals(other.rosters)
                && disputes.equals(other.disputes)
                && earlier.equals(other.earlier);
    }

    @Override
    public int hashCode() {
        return Objects.hash(unit, answers, rosters);
    }

    /** A builder that holds everything in this. */
    public Builder toBuilder() {
        Builder builder = new Builder(vocabulary, unit);
        rosters.forEach((kind, roster) -> {
            roster.tags().forEach(tag -> builder.tag(kind, tag.name(), tag.presence()));
            roster.asFound().ifPresent(number -> builder.fitted(kind, State.AS_FOUND, number));
            roster.asLeft().ifPresent(number -> builder.fitted(kind, State.AS_LEFT, number));
            if (!roster.unread().isEmpty()) {
                builder.uncounted(kind, roster.unread());
            }
        });
        answers.values().forEach(builder::put);
        disputes.forEach(builder::dispute);
        earlier.ifPresent(builder::earlier);
        return builder;
    }

    /** Collects observations; two answers to one question in one state are refused. */
    public static final class Builder {
        private final Vocabulary vocabulary;
        private final String unit;
        private final Map<Key, Answer> answers = new LinkedHashMap<>();
        private final Map<String, List<Roster.Tag>> tags = new LinkedHashMap<>();
        private final Map<String, Set<String>> names = new HashMap<>();
        private final Map<String, Integer> asFound = new HashMap<>();
        private final Map<String, Integer> asLeft = new HashMap<>();
        private final Map<String, String> uncounted = new HashMap<>();
        private final List<Dispute> disputes = new ArrayList<>();
        private Optional<List<Earlier>> earlier = Optional.empty();

        private Builder(Vocabulary vocabulary, String unit) {
            this.vocabulary = vocabulary;
            this.unit = unit;
        }

        /** How many of a counted kind are fitted. */
        public Builder fitted(String kind, State state, int number) {
            tags.computeIfAbsent(kind, k -> new ArrayList<>());
            (state == State.AS_FOUND ? asFound : asLeft).put(kind, number);
            return this;
        }

        /** Why a kind could not be counted. */
        public Builder uncounted(String kind, String reason) {
            tags.computeIfAbsent(kind, k -> new ArrayList<>());
            uncounted.put(kind, reason);
            return this;
        }

        /** Describes one piece of equipment that is there throughout. */
        public Builder tag(String kind, String name) {
            return tag(kind, name, Roster.Presence.THROUGHOUT);
        }

        public Builder tag(String kind, String name, Roster.Presence presence) {
            // A log may have a thousand rows, so tags are not compared one with another.
            if (!names.computeIfAbsent(kind, k -> new HashSet<>()).add(name)) {
                throw new IllegalArgumentException("two of kind " + kind + " have the tag \"" + name + "\"");
            }
            tags.computeIfAbsent(kind, k -> new ArrayList<>()).add(new Roster.Tag(name, presence));
            return this;
        }

        /** What was seen at arrival. The record's own keys tell what it is about. */
        public Builder seen(Record fact) {
            return seen(fact, State.AS_FOUND);
        }

        public Builder seen(Record fact, State state) {
            ItemType item = vocabulary
                    .item(fact.getClass())
                    .orElseThrow(() -> new IllegalArgumentException(fact + " is no item of this vocabulary"));
            return put(Answer.seen(item, item.keysOf(fact), state, fact));
        }

        /** Looked at, and not to be read. */
        public Builder unread(String item, List<Object> keys, State state, String reason) {
            ItemType type = vocabulary
                    .item(item)
                    .orElseThrow(() -> new IllegalArgumentException("no item is called \"" + item + "\""));
            return put(Answer.unread(type, keys, state, reason));
        }

        public Builder put(Answer answer) {
            if (answer.item().isReckoned()) {
                throw new IllegalArgumentException(answer.item().id() + " is reckoned, not observed");
            }
            Key key = new Key(answer.item().id(), answer.keys(), answer.state());
            if (answers.putIfAbsent(key, answer) != null) {
                throw new IllegalArgumentException("two answers to "
                        + answer.item().id()
                        + (answer.keys().isEmpty() ? "" : " of " + answer.subject()));
            }
            return this;
        }

        /** Whether this question has an answer in this state. */
        public boolean has(ItemType item, List<?> keys, State state) {
            return answers.containsKey(new Key(item.id(), List.copyOf(keys), state));
        }

        public Builder dispute(Dispute dispute) {
            disputes.add(dispute);
            return this;
        }

        /** What earlier visits found of the unit: all of it, so that an empty list says that they left nothing. */
        public Builder earlier(List<Earlier> findings) {
            earlier = Optional.of(List.copyOf(findings));
            return this;
        }

        /** Takes one answer out again. */
        public Builder without(Answer answer) {
            answers.remove(new Key(answer.item().id(), answer.keys(), answer.state()));
            return this;
        }

        /** Takes out how many of a kind were said to be fitted. */
        public Builder withoutCount(String kind) {
            asFound.remove(kind);
            asLeft.remove(kind);
            return this;
        }

        /** Takes out a kind with its tags, whoever described them; the answers about them are taken out one by one. */
        public Builder withoutRoster(String kind) {
            tags.remove(kind);
            names.remove(kind);
            uncounted.remove(kind);
            return withoutCount(kind);
        }

        public Observations build() {
            return new Observations(this);
        }

        private Map<String, Roster> rosters() {
            Map<String, Roster> rosters = new LinkedHashMap<>();
            tags.forEach((kind, list) -> rosters.put(
                    kind,
                    new Roster(count(asFound, kind), count(asLeft, kind), list, uncounted.getOrDefault(kind, ""))));
            return rosters;
        }

        private static OptionalInt count(Map<String, Integer> counts, String kind) {
            Integer number = counts.get(kind);
            return number == null ? OptionalInt.empty() : OptionalInt.of(number);
        }
    }
}
