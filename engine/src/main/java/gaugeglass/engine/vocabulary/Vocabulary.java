package gaugeglass.engine.vocabulary;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.text.Words;
import java.lang.annotation.Annotation;
import java.lang.reflect.RecordComponent;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Every kind and every item that a rulebook knows, in the order in which a visit takes them. */
public final class Vocabulary {
    /** Names at which the rule compiler breaks: words of its own grammar, and pieces of names in what it generates. */
    private static final Set<String> UNUSABLE = Set.of("ph", "a", "e", "unit", "rule");

    private final Map<String, Kind> kinds;
    private final Map<String, ItemType> items;
    private final Map<String, ItemType> byClass;

    Vocabulary(Collection<Kind> kinds, Collection<ItemType> items) {
        Map<String, Kind> kindsById = new LinkedHashMap<>();
        for (Kind kind : kinds) {
            if (kindsById.put(kind.id(), kind) != null) {
                throw new IllegalArgumentException("two kinds are called " + kind.id());
            }
        }
        Map<String, ItemType> itemsById = new LinkedHashMap<>();
        Map<String, ItemType> itemsByClass = new HashMap<>();
        for (ItemType item : items) {
            if (itemsById.put(item.id(), item) != null) {
                throw new IllegalArgumentException("two items are called " + item.id());
            }
            if (itemsByClass.put(item.className(), item) != null) {
                throw new IllegalArgumentException(item.className() + " stands in the vocabulary twice");
            }
            Kind kind = kindsById.get(item.kind());
            if (kind == null) {
                throw new IllegalArgumentException(item.id() + " is of \"" + item.kind() + "\", which is no kind");
            }
            if (kind.isCounted() && !item.group().equals(kind.id())) {
                throw new IllegalArgumentException(
                        item.id() + " is of " + kind.id() + ": its id must begin with " + kind.id() + ".");
            }
        }
        this.kinds = Collections.unmodifiableMap(kindsById);
        this.items = Collections.unmodifiableMap(itemsById);
        this.byClass = itemsByClass;
    }

    /**
     * Reads a trade's own classes: slower than a stored vocabulary, and what a stored one is made
     * from.
     */
    public static Vocabulary of(Trade trade) {
        List<ItemType> items = new ArrayList<>();
        Map<String, Kind> kinds = new HashMap<>();
        trade.kinds().forEach(kind -> kinds.put(kind.id(), kind));
        for (Class<? extends Record> type : trade.items()) {
            items.add(itemOf(type, false, kinds));
        }
        for (Reckoning reckoning : trade.reckonings()) {
            items.add(itemOf(reckoning.gives(), true, kinds));
        }
        return new Vocabulary(trade.kinds(), items);
    }

    /**
     * The same with more items behind those that are there.
     *
     * @throws IllegalArgumentException when two items bear one id or class, or an item is of no kind
     */
    public Vocabulary with(Collection<ItemType> more) {
        List<ItemType> all = new ArrayList<>(items.values());
        all.addAll(more);
        return new Vocabulary(kinds.values(), all);
    }

    public Collection<Kind> kinds() {
        return kinds.values();
    }

    public Optional<Kind> kind(String id) {
        return Optional.ofNullable(kinds.get(id));
    }

    /** The unit that is judged. */
    public Kind unit() {
        return only(Kind.Placement.UNIT);
    }

    public Kind site() {
        return only(Kind.Placement.SITE);
    }

    private Kind only(Kind.Placement placement) {
        return kinds.values().stream()
                .filter(kind -> kind.placement() == placement)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no kind is placed " + placement));
    }

    public Collection<ItemType> items() {
        return items.values();
    }

    public Optional<ItemType> item(String id) {
        return Optional.ofNullable(items.get(id));
    }

    /** The item that a record class stands for. */
    public Optional<ItemType> item(Class<?> type) {
        return Optional.ofNullable(byClass.get(type.getName()));
    }

    /**
     * The counted kind whose tags tell one of this kind from another; the kind itself where none
     * are counted.
     */
    public Kind counted(Kind kind) {
        return kind.isFixed() ? kind(kind.parent()).orElseThrow() : kind;
    }

    /** The members of a fixed kind, in order. */
    public List<Object> members(Kind kind) {
        for (ItemType item : items.values()) {
            if (item.kind().equals(kind.id())) {
                for (Component component : item.components()) {
                    if (component.key() && component.form() == Component.Form.CHOICE) {
                        return List.of(item.constants(component));
                    }
                }
            }
        }
        return List.of();
    }

    /** The kinds that are a fixed set within this one. */
    public List<Kind> within(Kind parent) {
        return kinds.values().stream()
                .filter(kind -> kind.parent().equals(parent.id()))
                .toList();
    }

    private static ItemType itemOf(Class<? extends Record> type, boolean reckoned, Map<String, Kind> kinds) {
        Item item = type.getAnnotation(Item.class);
        if (item == null) {
            throw new IllegalArgumentException(type.getName() + " is not marked as an item");
        }
        List<Component> components = new ArrayList<>();
        int keys = 0;
        for (RecordComponent part : type.getRecordComponents()) {
            Component component = componentOf(type, part);
            components.add(component);
            keys += component.key() ? 1 : 0;
        }
        Kind kind = kinds.get(item.of());
        int wanted = kind == null || !kind.isCounted() && !kind.isFixed() ? 0 : kind.isFixed() ? 2 : 1;
        if (keys != wanted) {
            throw new IllegalArgumentException(
                    item.id() + " must have " + wanted + " parts marked @Of for kind " + item.of() + ", not " + keys);
        }
        return new ItemType(
                item.id(),
                item.of(),
                item.stage(),
                item.ask(),
                item.look(),
                item.structural(),
                item.carried(),
                reckoned,
                List.of(item.unreadBecause()),
                type.getName(),
                components,
                type.getClassLoader());
    }

    private static Component componentOf(Class<?> record, RecordComponent part) {
        if (UNUSABLE.contains(part.getName())) {
            throw new IllegalArgumentException(record.getName() + "." + part.getName()
                    + ": a part of this name makes the rule compiler fail without saying why; choose another");
        }
        boolean key = part.isAnnotationPresent(Of.class);
        Class<?> type = part.getType();
        if (type.isEnum()) {
            List<String> words = new ArrayList<>();
            for (Object constant : type.getEnumConstants()) {
                words.add(Words.of((Enum<?>) constant));
            }
            return new Component(part.getName(), Component.Form.CHOICE, key, type.getName(), words, "", "", "");
        }
        if (type == Quantity.class) {
            Measured measured = required(record, part, Measured.class);
            return new Component(
                    part.getName(),
                    Component.Form.QUANTITY,
                    key,
                    "",
                    List.of(),
                    measured.unit().name(),
                    measured.from(),
                    measured.to());
        }
        if (type == int.class) {
            Counted counted = required(record, part, Counted.class);
            return new Component(
                    part.getName(),
                    Component.Form.COUNT,
                    key,
                    "",
                    List.of(),
                    "",
                    String.valueOf(counted.from()),
                    String.valueOf(counted.to()));
        }
        if (type == LocalDate.class) {
            return new Component(part.getName(), Component.Form.DATE, key, "", List.of(), "", "", "");
        }
        if (type == String.class) {
            return new Component(part.getName(), Component.Form.TEXT, key, "", List.of(), "", "", "");
        }
        throw new IllegalArgumentException(record.getName()
                + "."
                + part.getName()
                + " has type "
                + type.getSimpleName()
                + "; a part is an enum, Quantity, int, LocalDate or String");
    }

    private static <A extends Annotation> A required(Class<?> record, RecordComponent part, Class<A> wanted) {
        A found = part.getAnnotation(wanted);
        if (found == null) {
            throw new IllegalArgumentException(
                    record.getName() + "." + part.getName() + " needs @" + wanted.getSimpleName());
        }
        return found;
    }
}
