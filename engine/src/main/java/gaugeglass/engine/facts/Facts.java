package gaugeglass.engine.facts;

import gaugeglass.engine.book.Limit;
import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.Roster;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.observation.Subjects;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Seen;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.function.Predicate;

/** Everything that may be a fact in one state of one visit: a slot for each, known or not. */
public final class Facts {
    /** A count is tried out number by number up to this many; beyond it is simply unknown. */
    private static final int MOST_COUNTS = 24;

    private final Map<Class<?>, Table> tables = new HashMap<>();
    private final Map<String, List<String>> tags = new HashMap<>();
    private final Map<String, List<Missing>> open = new HashMap<>();

    /** The slots of one type of fact. */
    public static final class Table {
        private final List<Slot> all = new ArrayList<>();
        private final Map<Object, List<Slot>> byKey = new HashMap<>();

        private void add(Slot slot) {
            all.add(slot);
            if (!slot.keys().isEmpty()) {
                byKey.computeIfAbsent(slot.keys().get(0), k -> new ArrayList<>(2))
                        .add(slot);
            }
        }

        public List<Slot> all() {
            return all;
        }

        /** The slots whose first key is this. */
        public List<Slot> of(Object key) {
            return byKey.getOrDefault(key, List.of());
        }
    }

    private static final Table NOTHING = new Table();

    private Facts() {}

    /**
     * Lays out the facts of one state.
     *
     * @param observations what was seen
     * @param state which answers count: as left, an answer given after work replaces the one before
     * @param date the visit's day
     * @param limits the limits in force
     * @param reckonings in the order in which they may use one another's results
     */
    public static Facts of(
            Observations observations,
            State state,
            LocalDate date,
            Collection<Limit> limits,
            List<Reckoning> reckonings) {
        Facts facts = new Facts();
        Vocabulary vocabulary = observations.vocabulary();
        Visit visit = new Visit(date);
        facts.fixed(Visit.class, List.of(), visit);
        Map<String, Limit> limitsById = new HashMap<>();
        for (Limit limit : limits) {
            limitsById.put(limit.id(), limit);
            facts.fixed(Limit.class, List.of(limit.id()), limit);
        }
        for (Kind kind : vocabulary.kinds()) {
            if (kind.isCounted()) {
                facts.count(kind, observations.roster(kind.id()), state);
            }
        }
        for (ItemType item : vocabulary.items()) {
            if (!item.isReckoned()) {
                Kind kind = vocabulary.kind(item.kind()).orElseThrow();
                for (List<Object> keys : facts.keys(vocabulary, kind)) {
                    facts.item(observations, item, keys, vocabulary.counted(kind), state);
                }
            }
        }
        Reading reading = facts.new Reading(date, limitsById, false);
        for (Reckoning reckoning : reckonings) {
            ItemType item = vocabulary
                    .item(reckoning.gives())
                    .orElseThrow(() -> new IllegalStateException(reckoning.gives() + " is no item"));
            Kind kind = vocabulary.kind(item.kind()).orElseThrow();
            for (List<Object> keys : facts.keys(vocabulary, kind)) {
                facts.reckon(reckoning, item, keys, vocabulary.counted(kind), reading);
            }
        }
        return facts;
    }

    public Table table(Class<?> type) {
        return tables.getOrDefault(type, NOTHING);
    }

    public Collection<Table> tables() {
        return tables.values();
    }

    /**
     * The tags of a counted kind; the last is {@link Subjects#NOT_LISTED} where some may not be
     * described.
     */
    public List<String> tags(String kind) {
        return tags.getOrDefault(kind, List.of());
    }

    /** What is wanting before a kind's tags are complete; empty when they are. */
    public List<Missing> open(String kind) {
        return open.getOrDefault(kind, List.of());
    }

    private void fixed(Class<?> type, List<Object> keys, Object fact) {
        add(Slot.known(type, keys, fact, true, List::of, () -> fact));
    }

    private void add(Slot slot) {
        tables.computeIfAbsent(slot.type(), t -> new Table()).add(slot);
    }

    private void count(Kind kind, Roster roster, State state) {
        List<String> listed = roster.tags(state);
        OptionalInt fitted = roster.fitted(state);
        List<Object> keys = List.of(kind.id());
        Fitted witness = new Fitted(kind.id(), listed.size());
        List<Missing> lacking = List.of();
        if (fitted.isEmpty()) {
            lacking = List.of(new Missing(kind.countId(), Subjects.UNIT, roster.unread()));
            List<Fitted> candidates = new ArrayList<>();
            if (kind.most() - listed.size() < MOST_COUNTS) {
                for (int number = listed.size(); number <= Math.max(kind.most(), listed.size()); number++) {
                    candidates.add(new Fitted(kind.id(), number));
                }
            }
            add(Slot.unknown(Fitted.class, keys, lacking, () -> candidates, () -> witness));
        } else {
            add(Slot.known(
                    Fitted.class, keys, new Fitted(kind.id(), fitted.getAsInt()), true, List::of, () -> witness));
            int wanting = fitted.getAsInt() - listed.size();
            if (wanting > 0) {
                lacking = List.of(new Missing(
                        kind.id(), Subjects.NOT_LISTED, wanting + " of " + fitted.getAsInt() + " not described"));
            }
        }
        List<String> all = new ArrayList<>(listed);
        if (!lacking.isEmpty()) {
            all.add(Subjects.NOT_LISTED);
        }
        tags.put(kind.id(), all);
        open.put(kind.id(), lacking);
    }

    private List<List<Object>> keys(Vocabulary vocabulary, Kind kind) {
        switch (kind.placement()) {
            case COUNTED:
                List<List<Object>> singles = new ArrayList<>();
                for (String tag : tags(kind.id())) {
                    singles.add(List.of(tag));
                }
                return singles;
            case FIXED:
                List<List<Object>> pairs = new ArrayList<>();
                Kind parent = vocabulary.kind(kind.parent()).orElseThrow();
                for (String tag : tags(parent.id())) {
                    for (Object member : vocabulary.members(kind)) {
                        pairs.add(List.of(tag, member));
                    }
                }
                return pairs;
            default:
                return List.of(List.of());
        }
    }

    private void item(Observations observations, ItemType item, List<Object> keys, Kind counted, State state) {
        Optional<Answer> answer = Optional.empty();
        if (state == State.AS_LEFT) {
            answer = observations.answer(item, keys, State.AS_LEFT);
        }
        if (answer.isEmpty()) {
            answer = observations.answer(item, keys, State.AS_FOUND);
        }
        Optional<Record> fact = answer.flatMap(Answer::fact);
        if (fact.isPresent()) {
            add(Slot.known(
                    item.type(),
                    keys,
                    fact.get(),
                    item.isStructural(),
                    () -> listed(item, keys),
                    () -> item.witness(keys)));
        } else {
            String reason = answer.map(Answer::unread).orElse("");
            List<Missing> lacking = keys.contains(Subjects.NOT_LISTED)
                    ? open(counted.id())
                    : List.of(new Missing(item.id(), Subjects.of(keys), reason));
            add(Slot.unknown(item.type(), keys, lacking, () -> listed(item, keys), () -> item.witness(keys)));
        }
    }

    private static List<? extends Record> listed(ItemType item, List<Object> keys) {
        return item.isFinite() ? item.completions(keys) : List.of();
    }

    private void reckon(Reckoning reckoning, ItemType item, List<Object> keys, Kind counted, Reading reading) {
        Class<?> type = reckoning.gives();
        if (keys.contains(Subjects.NOT_LISTED)) {
            add(Slot.unknown(type, keys, open(counted.id()), () -> listed(item, keys), () -> item.witness(keys)));
            return;
        }
        try {
            List<? extends Record> worked = reckoning.work(reading, Subjects.of(keys));
            if (worked.isEmpty()) {
                nothing(reckoning, item, keys, reading);
            }
            for (Record fact : worked) {
                if (!item.keysOf(fact).equals(keys)) {
                    throw new IllegalStateException(item.id() + " was reckoned for " + keys + " and gave " + fact);
                }
                add(Slot.known(
                        type, keys, fact, item.isStructural(), () -> listed(item, keys), () -> item.witness(keys)));
            }
        } catch (Lacking lacking) {
            add(Slot.unknown(type, keys, lacking.missing, () -> listed(item, keys), () -> item.witness(keys)));
        } catch (Nothing nothing) {
            nothing(reckoning, item, keys, reading);
        }
    }

    /** There is nothing to reckon; whether because of what is fitted is seen by looking at that alone. */
    private void nothing(Reckoning reckoning, ItemType item, List<Object> keys, Reading reading) {
        boolean structural = true;
        try {
            structural = reckoning.work(reading.structural(), Subjects.of(keys)).isEmpty();
        } catch (Lacking lacking) {
            structural = false;
        } catch (Nothing nothing) {
            // Nothing again, so what is fitted tells it.
        }
        add(Slot.empty(reckoning.gives(), keys, structural, () -> listed(item, keys), () -> item.witness(keys)));
    }

    /** Ends a reckoning that rests on another of which there was nothing to reckon. */
    private static final class Nothing extends RuntimeException {
        private static final long serialVersionUID = 1L;

        private Nothing() {
            super(null, null, false, false);
        }
    }

    /** Ends a reckoning that asked for an answer nobody gave. */
    private static final class Lacking extends RuntimeException {
        private static final long serialVersionUID = 1L;

        private final transient List<Missing> missing;

        private Lacking(Collection<Missing> missing) {
            super(null, null, false, false);
            this.missing = List.copyOf(new TreeSet<>(missing));
        }
    }

    private final class Reading implements Seen {
        private final LocalDate date;
        private final Map<String, Limit> limits;
        private final boolean structuralOnly;

        private Reading(LocalDate date, Map<String, Limit> limits, boolean structuralOnly) {
            this.date = date;
            this.limits = limits;
            this.structuralOnly = structuralOnly;
        }

        /** Reads only answers that tell what is fitted; any other counts as not seen. */
        private Reading structural() {
            return new Reading(date, limits, true);
        }

        private boolean isOpen(Slot slot) {
            return !slot.isKnown() && !slot.isEmpty() || structuralOnly && !slot.isStructural();
        }

        @Override
        public LocalDate date() {
            return date;
        }

        @Override
        public Quantity limit(String id) {
            Limit limit = limits.get(id);
            if (limit == null) {
                throw new IllegalStateException("a reckoning asks for the limit " + id + ", which is not there");
            }
            return limit.quantity();
        }

        @Override
        public <T extends Record> T the(Class<T> item) {
            return of(item);
        }

        @Override
        public <T extends Record> T of(Class<T> item, Object... keys) {
            List<Object> wanted = Arrays.asList(keys);
            Table table = table(item);
            for (Slot slot : wanted.isEmpty() ? table.all() : table.of(wanted.get(0))) {
                if (slot.keys().equals(wanted)) {
                    return seen(item, slot);
                }
            }
            throw new IllegalStateException(
                    "a reckoning asks for " + item.getSimpleName() + " of " + wanted + ", which has no place");
        }

        @Override
        public <T extends Record> List<T> each(Class<T> item) {
            List<T> all = new ArrayList<>();
            List<Missing> missing = new ArrayList<>();
            boolean open = false;
            for (Slot slot : table(item).all()) {
                open |= isOpen(slot);
                missing.addAll(slot.lacking());
                slot.fact().ifPresent(fact -> all.add(item.cast(fact)));
            }
            if (open) {
                throw new Lacking(missing);
            }
            return all;
        }

        @Override
        public <T extends Record> boolean any(Class<T> item, Predicate<T> test) {
            return atLeast(1, item, table(item).all(), test);
        }

        @Override
        public <T extends Record> boolean any(Class<T> item, String which, Predicate<T> test) {
            return atLeast(1, item, table(item).of(which), test);
        }

        @Override
        public <T extends Record> boolean atLeast(int number, Class<T> item, Predicate<T> test) {
            return atLeast(number, item, table(item).all(), test);
        }

        private <T extends Record> boolean atLeast(int number, Class<T> item, List<Slot> slots, Predicate<T> test) {
            List<Missing> missing = new ArrayList<>();
            int passed = 0;
            boolean open = false;
            for (Slot slot : slots) {
                if (isOpen(slot)) {
                    open = true;
                    missing.addAll(slot.lacking());
                } else if (slot.isKnown() && test.test(item.cast(slot.fact().orElseThrow())) && ++passed >= number) {
                    return true;
                }
            }
            if (open) {
                throw new Lacking(missing);
            }
            return false;
        }

        @Override
        public List<String> tags(String kind) {
            if (!open(kind).isEmpty()) {
                throw new Lacking(open(kind));
            }
            return Facts.this.tags(kind);
        }

        @Override
        public RuntimeException another(String kind, String why) {
            return new Lacking(List.of(new Missing(kind, Subjects.NOT_LISTED, why)));
        }

        private <T extends Record> T seen(Class<T> item, Slot slot) {
            if (isOpen(slot)) {
                throw new Lacking(slot.lacking());
            }
            return item.cast(slot.fact().orElseThrow(Nothing::new));
        }
    }
}
