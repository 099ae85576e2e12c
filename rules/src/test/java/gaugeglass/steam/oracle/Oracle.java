package gaugeglass.steam.oracle;

import gaugeglass.engine.book.Limit;
import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.Roster;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.observation.Subjects;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.vocabulary.Component;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Seen;
import gaugeglass.engine.vocabulary.Vocabulary;
import gaugeglass.steam.oracle.Chooser.DeadEnd;
import gaugeglass.steam.oracle.DrlText.OBind;
import gaugeglass.steam.oracle.DrlText.OPattern;
import gaugeglass.steam.oracle.DrlText.ORule;
import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;
import org.apache.commons.jexl3.JexlArithmetic;
import org.apache.commons.jexl3.JexlBuilder;
import org.apache.commons.jexl3.JexlContext;
import org.apache.commons.jexl3.JexlEngine;
import org.apache.commons.jexl3.JexlExpression;
import org.apache.commons.jexl3.introspection.JexlPermissions;

/**
 * Says what may become of a rule by trying out answers: it reads the rule's text with an expression library, fills in
 * what was not seen with every answer of a finite list, or with values around the limits, and looks whether the rule
 * then holds. It shares no code with the engine's judges, and is slow.
 */
final class Oracle {
    /** Marks a part of a fact in an expression. */
    static final String PART = "part_";

    private static final int MOST_RUNS = 1500;
    private static final int RANDOM_RUNS = 300;

    /** A log of a thousand rows shows nothing that a few do not. */
    private static final int MOST_MORE = 6;

    private static final JexlEngine JEXL = new JexlBuilder()
            .arithmetic(new JexlArithmetic(true))
            .permissions(JexlPermissions.UNRESTRICTED)
            .strict(true)
            .silent(false)
            .create();

    private final Vocabulary vocabulary;
    private final Map<String, Limit> limits;
    private final Map<String, ItemType> bySimpleName = new HashMap<>();
    private final Map<String, Reckoning> reckonings = new HashMap<>();
    private final Map<String, Map<String, Object>> enums = new HashMap<>();
    private final Map<String, JexlExpression> expressions = new HashMap<>();

    Oracle(Vocabulary vocabulary, Map<String, Limit> limits, Collection<Reckoning> all) {
        this.vocabulary = vocabulary;
        this.limits = limits;
        for (ItemType item : vocabulary.items()) {
            bySimpleName.put(item.type().getSimpleName(), item);
            for (Component component : item.components()) {
                if (component.form() == Component.Form.CHOICE) {
                    Map<String, Object> constants = new HashMap<>();
                    for (Object constant : item.constants(component)) {
                        constants.put(((Enum<?>) constant).name(), constant);
                    }
                    String name = component.type();
                    enums.put(name.substring(Math.max(name.lastIndexOf('.'), name.lastIndexOf('$')) + 1), constants);
                }
            }
        }
        all.forEach(reckoning -> reckonings.put(reckoning.gives().getSimpleName(), reckoning));
    }

    /** What may become of a rule for one subject. */
    record Fate(boolean found, boolean possible) {}

    /** Judges a rule for every subject of the kind it is about; for the whole where it is about none. */
    Map<String, Fate> judge(ORule rule, String about, Observations observations, State state, LocalDate date) {
        Visit visit = new Visit(observations, state, date, around(rule));
        List<String> subjects = new ArrayList<>();
        if (rule.isAbout()) {
            subjects.addAll(visit.listed(about));
            if (visit.isOpen(about)) {
                subjects.add(Subjects.NOT_LISTED);
            }
        } else {
            subjects.add("");
        }
        Map<String, Fate> fates = new LinkedHashMap<>();
        for (String subject : subjects) {
            boolean found = search(rule, subject, visit, true);
            fates.put(subject, new Fate(found, found || search(rule, subject, visit, false)));
        }
        return fates;
    }

    private boolean search(ORule rule, String subject, Visit visit, boolean knownOnly) {
        Chooser chooser = new Chooser();
        int runs = 0;
        do {
            if (holds(rule, subject, visit, chooser, knownOnly)) {
                return true;
            }
        } while (chooser.next() && ++runs < MOST_RUNS);
        if (runs >= MOST_RUNS) {
            Chooser dice = new Chooser();
            dice.shuffle(new Random(rule.name().hashCode()));
            for (int i = 0; i < RANDOM_RUNS; i++) {
                if (holds(rule, subject, visit, dice, knownOnly)) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean holds(ORule rule, String subject, Visit visit, Chooser chooser, boolean knownOnly) {
        try {
            World world = new World(visit, chooser, knownOnly);
            Map<String, Object> bound = new HashMap<>();
            for (OPattern pattern : rule.patterns()) {
                match(pattern, subject, world, bound);
            }
            return true;
        } catch (DeadEnd end) {
            return false;
        }
    }

    private void match(OPattern pattern, String subject, World world, Map<String, Object> bound) {
        Parts parts;
        switch (pattern.type()) {
            case "Visit":
                parts = part -> world.visit.date;
                break;
            case "Limit":
                String named = pattern.constraints().get(0);
                Limit limit = limits.get(named.substring(named.indexOf('"') + 1, named.lastIndexOf('"')));
                parts = part -> switch (part) {
                    case "quantity" -> limit.quantity();
                    case "period" -> limit.period();
                    case "number" -> limit.number();
                    default -> limit.id();
                };
                break;
            case "Fitted":
                List<Kind> kinds =
                        vocabulary.kinds().stream().filter(Kind::isCounted).toList();
                Kind kind = kinds.get(world.chooser.choose(kinds.size()));
                parts = part -> part.equals("kind") ? kind.id() : world.fitted(kind);
                break;
            default:
                ItemType item = bySimpleName.get(pattern.type());
                List<List<Object>> places = world.places(item);
                List<Object> keys = places.get(pick(world, places.size()));
                List<Object> shown = keys;
                boolean about = pattern.binds().stream()
                        .anyMatch(bind -> bind.variable().equals("$about"));
                if (about
                        && !keys.get(0)
                                .equals(world.tagOf(
                                        subject, vocabulary.kind(item.kind()).orElseThrow()))) {
                    throw new DeadEnd();
                }
                List<Component> keyParts =
                        item.components().stream().filter(Component::key).toList();
                parts = part -> {
                    for (int i = 0; i < keyParts.size(); i++) {
                        if (keyParts.get(i).name().equals(part)) {
                            return shown.get(i);
                        }
                    }
                    Record fact = world.fact(item, shown);
                    List<Component> values = item.values();
                    for (int i = 0; i < values.size(); i++) {
                        if (values.get(i).name().equals(part)) {
                            return item.valuesOf(fact).get(i);
                        }
                    }
                    throw new IllegalStateException(part + " of " + item);
                };
                constraints(pattern, parts, bound);
                world.fact(item, keys);
                return;
        }
        constraints(pattern, parts, bound);
    }

    private static int pick(World world, int width) {
        return width == 1 ? 0 : world.chooser.choose(width);
    }

    private void constraints(OPattern pattern, Parts parts, Map<String, Object> bound) {
        for (OBind bind : pattern.binds()) {
            bound.put(bind.variable(), new Later(parts, bind.part()));
        }
        Context context = new Context(parts, bound);
        for (String constraint : pattern.constraints()) {
            Object result = expressions
                    .computeIfAbsent(constraint, JEXL::createExpression)
                    .evaluate(context);
            if (!Boolean.TRUE.equals(result)) {
                throw new DeadEnd();
            }
        }
    }

    /** The parts of one fact by name. */
    private interface Parts {
        Object get(String part);
    }

    /** A bound part, looked at when it is used. */
    private record Later(Parts parts, String part) {}

    private final class Context implements JexlContext {
        private final Parts parts;
        private final Map<String, Object> bound;

        private Context(Parts parts, Map<String, Object> bound) {
            this.parts = parts;
            this.bound = bound;
        }

        @Override
        public Object get(String name) {
            if (name.startsWith(PART)) {
                return parts.get(name.substring(PART.length()));
            }
            if (bound.get(name) instanceof Later later) {
                return later.parts().get(later.part());
            }
            return enums.get(name);
        }

        @Override
        public boolean has(String name) {
            return name.startsWith(PART) || bound.containsKey(name) || enums.containsKey(name);
        }

        @Override
        public void set(String name, Object value) {
            throw new IllegalStateException("a condition sets " + name);
        }
    }

    // ---- what is known of a visit

    /** The limits that a rule's values may be compared with: its own and those of what is reckoned for it. */
    private List<Limit> around(ORule rule) {
        Set<Limit> around = new LinkedHashSet<>();
        for (OPattern pattern : rule.patterns()) {
            if (pattern.type().equals("Limit")) {
                String named = pattern.constraints().get(0);
                around.add(limits.get(named.substring(named.indexOf('"') + 1, named.lastIndexOf('"'))));
            }
            reckoned(pattern.type(), around);
        }
        return List.copyOf(around);
    }

    private void reckoned(String type, Set<Limit> around) {
        Reckoning reckoning = reckonings.get(type);
        if (reckoning != null) {
            reckoning.limits().forEach(id -> around.add(limits.get(id)));
            reckoning.needs().forEach(need -> reckoned(need.getSimpleName(), around));
        }
    }

    private final class Visit {
        private final Observations observations;
        private final State state;
        private final LocalDate date;
        private final List<Limit> around;
        private final Map<ItemType, List<List<Object>>> domains = new HashMap<>();

        private Visit(Observations observations, State state, LocalDate date, List<Limit> around) {
            this.observations = observations;
            this.state = state;
            this.date = date;
            this.around = around;
        }

        List<String> listed(String kind) {
            List<String> tags = new ArrayList<>();
            for (Roster.Tag tag : observations.roster(kind).tags()) {
                boolean gone = tag.presence() == Roster.Presence.AS_FOUND && state == State.AS_LEFT;
                boolean notYet = tag.presence() == Roster.Presence.AS_LEFT && state == State.AS_FOUND;
                if (!gone && !notYet) {
                    tags.add(tag.name());
                }
            }
            return tags;
        }

        OptionalInt number(String kind) {
            Roster roster = observations.roster(kind);
            if (state == State.AS_LEFT && roster.asLeft().isPresent()) {
                return roster.asLeft();
            }
            if (state == State.AS_FOUND || roster.asFound().isEmpty()) {
                return roster.asFound();
            }
            int change = 0;
            for (Roster.Tag tag : roster.tags()) {
                change += tag.presence() == Roster.Presence.AS_LEFT ? 1 : 0;
                change -= tag.presence() == Roster.Presence.AS_FOUND ? 1 : 0;
            }
            return OptionalInt.of(roster.asFound().getAsInt() + change);
        }

        boolean isOpen(String kind) {
            OptionalInt number = number(kind);
            return number.isEmpty() || number.getAsInt() > listed(kind).size();
        }

        Optional<Record> known(ItemType item, List<Object> keys) {
            Optional<Answer> answer = Optional.empty();
            if (state == State.AS_LEFT) {
                answer = observations.answer(item, keys, State.AS_LEFT);
            }
            if (answer.isEmpty()) {
                answer = observations.answer(item, keys, State.AS_FOUND);
            }
            return answer.flatMap(Answer::fact);
        }

        /** The rows of values that are tried for an item. */
        List<List<Object>> domain(ItemType item) {
            return domains.computeIfAbsent(item, i -> {
                List<List<Object>> rows = List.of(List.of());
                for (Component component : item.values()) {
                    List<List<Object>> longer = new ArrayList<>();
                    for (List<Object> row : rows) {
                        for (Object value : values(item, component)) {
                            List<Object> next = new ArrayList<>(row);
                            next.add(value);
                            longer.add(next);
                        }
                    }
                    rows = longer;
                }
                return rows;
            });
        }

        private Collection<Object> values(ItemType item, Component component) {
            Set<Object> values = new LinkedHashSet<>();
            switch (component.form()) {
                case CHOICE:
                    values.addAll(Arrays.asList(item.constants(component)));
                    break;
                case TEXT:
                    values.add("text");
                    break;
                case DATE:
                    values.add(date);
                    for (Limit limit : around) {
                        if (limit.value() instanceof Period period) {
                            for (int days = -1; days <= 1; days++) {
                                values.add(date.minus(period).plusDays(days));
                            }
                        }
                    }
                    values.add(LocalDate.of(1970, 1, 1));
                    break;
                case COUNT:
                    int from = Integer.parseInt(component.from());
                    int to = Integer.parseInt(component.to());
                    values.add(from);
                    values.add(to);
                    for (int number : numbers()) {
                        if (number >= from && number <= to) {
                            values.add(number);
                        }
                    }
                    break;
                default:
                    values.addAll(quantities(component));
            }
            return values;
        }

        private Set<Integer> numbers() {
            Set<Integer> numbers = new LinkedHashSet<>(List.of(0, 1, 2));
            for (Limit limit : around) {
                if (limit.value() instanceof Integer number) {
                    numbers.addAll(List.of(number - 1, number, number + 1));
                }
            }
            return numbers;
        }

        private Set<Quantity> quantities(Component component) {
            Quantity least = component.least();
            Quantity most = component.most();
            Set<Quantity> values = new LinkedHashSet<>(List.of(least, most));
            for (Limit limit : around) {
                if (limit.value() instanceof Quantity quantity && quantity.dimension() == least.dimension()) {
                    Quantity step =
                            Quantity.parse(limit.step(), quantity.dimension().distance());
                    values.addAll(List.of(quantity, quantity.minus(step), quantity.plus(step)));
                }
            }
            for (Answer answer : observations.answers()) {
                answer.fact().ifPresent(fact -> answer.item().valuesOf(fact).forEach(value -> {
                    if (value instanceof Quantity quantity && quantity.dimension() == least.dimension()) {
                        values.add(quantity);
                    }
                }));
            }
            values.removeIf(value -> value.compareTo(least) < 0 || value.compareTo(most) > 0);
            return values;
        }
    }

    // ---- one way that things may be

    private final class World {
        private final Visit visit;
        private final Chooser chooser;
        private final boolean knownOnly;
        private final Map<String, Integer> counts = new HashMap<>();
        private final Map<List<Object>, Optional<Record>> facts = new HashMap<>();

        private World(Visit visit, Chooser chooser, boolean knownOnly) {
            this.visit = visit;
            this.chooser = chooser;
            this.knownOnly = knownOnly;
        }

        /** How many there are; chosen where nobody counted them. */
        int fitted(Kind kind) {
            return counts.computeIfAbsent(kind.id(), id -> {
                OptionalInt number = visit.number(id);
                if (number.isPresent()) {
                    return number.getAsInt();
                }
                if (knownOnly) {
                    throw new DeadEnd();
                }
                int listed = visit.listed(id).size();
                return listed + chooser.choose(Math.min(Math.max(kind.most() - listed, 0), MOST_MORE) + 1);
            });
        }

        List<String> tags(Kind kind) {
            List<String> tags = new ArrayList<>(visit.listed(kind.id()));
            if (visit.isOpen(kind.id())) {
                if (knownOnly) {
                    throw new DeadEnd();
                }
                int listed = tags.size();
                for (int i = listed; i < fitted(kind); i++) {
                    tags.add("+" + (i - listed + 1));
                }
            }
            return tags;
        }

        Object tagOf(String subject, Kind kind) {
            return subject.equals(Subjects.NOT_LISTED) ? "+1" : subject;
        }

        List<List<Object>> places(ItemType item) {
            Kind kind = vocabulary.kind(item.kind()).orElseThrow();
            Kind counted = vocabulary.counted(kind);
            if (!counted.isCounted()) {
                return List.of(List.of());
            }
            List<List<Object>> places = new ArrayList<>();
            for (String tag : knownOnly ? visit.listed(counted.id()) : tags(counted)) {
                if (kind.isFixed()) {
                    vocabulary.members(kind).forEach(member -> places.add(List.of(tag, member)));
                } else {
                    places.add(List.of(tag));
                }
            }
            if (places.isEmpty()) {
                throw new DeadEnd();
            }
            return places;
        }

        Record fact(ItemType item, List<Object> keys) {
            return maybe(item, keys).orElseThrow(Chooser.Nothing::new);
        }

        private Optional<Record> maybe(ItemType item, List<Object> keys) {
            List<Object> place = new ArrayList<>(List.of(item.id()));
            place.addAll(keys);
            Optional<Record> fact = facts.get(place);
            if (fact == null) {
                fact = item.isReckoned() ? reckoned(item, keys) : Optional.of(observed(item, keys));
                facts.put(place, fact);
            }
            return fact;
        }

        private Optional<Record> reckoned(ItemType item, List<Object> keys) {
            Reckoning reckoning = reckonings.get(item.type().getSimpleName());
            try {
                for (Record fact : reckoning.work(new Answers(this), Subjects.of(keys))) {
                    return Optional.of(fact);
                }
            } catch (Chooser.Nothing nothing) {
                // What rests on a figure that does not exist here does not exist either.
            }
            return Optional.empty();
        }

        private Record observed(ItemType item, List<Object> keys) {
            Optional<Record> known = visit.known(item, keys);
            if (known.isPresent()) {
                return known.get();
            }
            if (knownOnly) {
                throw new DeadEnd();
            }
            List<List<Object>> domain = visit.domain(item);
            return item.make(keys, domain.get(chooser.choose(domain.size())));
        }
    }

    /** What a reckoning reads in one way that things may be. */
    private final class Answers implements Seen {
        private final World world;

        private Answers(World world) {
            this.world = world;
        }

        @Override
        public LocalDate date() {
            return world.visit.date;
        }

        @Override
        public Quantity limit(String id) {
            return limits.get(id).quantity();
        }

        @Override
        public <T extends Record> T the(Class<T> item) {
            return of(item);
        }

        @Override
        public <T extends Record> T of(Class<T> item, Object... keys) {
            return item.cast(world.fact(item(item), List.of(keys)));
        }

        @Override
        public <T extends Record> List<T> each(Class<T> item) {
            List<T> all = new ArrayList<>();
            for (List<Object> place : places(item)) {
                world.maybe(item(item), place).ifPresent(fact -> all.add(item.cast(fact)));
            }
            return all;
        }

        @Override
        public <T extends Record> boolean any(Class<T> item, Predicate<T> test) {
            return atLeast(1, item, test);
        }

        @Override
        public <T extends Record> boolean atLeast(int number, Class<T> item, Predicate<T> test) {
            if (world.knownOnly) {
                ItemType type = item(item);
                boolean open = false;
                int passed = 0;
                Kind counted = vocabulary.counted(vocabulary.kind(type.kind()).orElseThrow());
                for (List<Object> place : knownPlaces(type)) {
                    try {
                        Optional<Record> fact = world.maybe(type, place);
                        passed += fact.isPresent() && test.test(item.cast(fact.get())) ? 1 : 0;
                    } catch (DeadEnd unknown) {
                        open = true;
                    }
                }
                if (passed >= number) {
                    return true;
                }
                if (open || counted.isCounted() && world.visit.isOpen(counted.id())) {
                    throw new DeadEnd();
                }
                return false;
            }
            return each(item).stream().filter(test).count() >= number;
        }

        @Override
        public <T extends Record> boolean any(Class<T> item, String which, Predicate<T> test) {
            ItemType type = item(item);
            boolean open = false;
            for (List<Object> place : knownPlaces(type)) {
                if (place.get(0).equals(which)) {
                    try {
                        Optional<Record> fact = world.maybe(type, place);
                        if (fact.isPresent() && test.test(item.cast(fact.get()))) {
                            return true;
                        }
                    } catch (DeadEnd unknown) {
                        open = true;
                    }
                }
            }
            if (open) {
                throw new DeadEnd();
            }
            return false;
        }

        @Override
        public List<String> tags(String kind) {
            return world.tags(vocabulary.kind(kind).orElseThrow());
        }

        @Override
        public RuntimeException another(String kind, String why) {
            return new DeadEnd();
        }

        private <T extends Record> List<List<Object>> places(Class<T> item) {
            ItemType type = item(item);
            Kind counted = vocabulary.counted(vocabulary.kind(type.kind()).orElseThrow());
            // Reading each one is also knowing that there are no others.
            return counted.isCounted() && world.tags(counted).isEmpty() ? List.of() : world.places(type);
        }

        private List<List<Object>> knownPlaces(ItemType type) {
            Kind counted = vocabulary.counted(vocabulary.kind(type.kind()).orElseThrow());
            return counted.isCounted() && world.visit.listed(counted.id()).isEmpty() ? List.of() : world.places(type);
        }

        private ItemType item(Class<? extends Record> type) {
            return bySimpleName.get(type.getSimpleName());
        }
    }
}
