package gaugeglass.engine.vocabulary;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** One item of the vocabulary: what may be observed, of what, in which form. */
public final class ItemType {
    /** More completions than this are not listed: the slot is then simply unknown. */
    private static final int MOST_COMPLETIONS = 400;

    private final String id;
    private final String kind;
    private final Stage stage;
    private final String ask;
    private final String look;
    private final boolean structural;
    private final boolean carried;
    private final boolean reckoned;
    private final List<String> unreadBecause;
    private final String className;
    private final List<Component> components;
    private final ClassLoader loader;
    private volatile Constructor<? extends Record> constructor;
    private volatile Method[] accessors;

    ItemType(
            String id,
            String kind,
            Stage stage,
            String ask,
            String look,
            boolean structural,
            boolean carried,
            boolean reckoned,
            List<String> unreadBecause,
            String className,
            List<Component> components,
            ClassLoader loader) {
        this.id = id;
        this.kind = kind;
        this.stage = stage;
        this.ask = ask;
        this.look = look;
        this.structural = structural;
        this.carried = carried;
        this.reckoned = reckoned;
        this.unreadBecause = List.copyOf(unreadBecause);
        this.className = className;
        this.components = List.copyOf(components);
        this.loader = loader;
    }

    /**
     * An item that is described and not written as an annotated record; its class must have these components in order.
     *
     * @param loader where the class is; it is loaded when a fact is first made
     */
    public static ItemType described(
            String id,
            String kind,
            Stage stage,
            String ask,
            String look,
            boolean structural,
            boolean carried,
            List<String> unreadBecause,
            String className,
            List<Component> components,
            ClassLoader loader) {
        return new ItemType(
                id, kind, stage, ask, look, structural, carried, false, unreadBecause, className, components, loader);
    }

    public String id() {
        return id;
    }

    /** The heading or kind before the dot of the id. */
    public String group() {
        return id.substring(0, id.indexOf('.'));
    }

    /** The part of the id after the dot: the key in an inspection file. */
    public String name() {
        return id.substring(id.indexOf('.') + 1);
    }

    /** The id of the kind that it is observed of. */
    public String kind() {
        return kind;
    }

    public Stage stage() {
        return stage;
    }

    public String ask() {
        return ask;
    }

    public String look() {
        return look;
    }

    public boolean isStructural() {
        return structural;
    }

    public boolean isCarried() {
        return carried;
    }

    /** Whether it is worked out from other items rather than asked. */
    public boolean isReckoned() {
        return reckoned;
    }

    public List<String> unreadBecause() {
        return unreadBecause;
    }

    public String className() {
        return className;
    }

    public List<Component> components() {
        return components;
    }

    /** The components that hold what was seen, in order; the keys are left out. */
    public List<Component> values() {
        List<Component> values = new ArrayList<>(components.size());
        for (Component component : components) {
            if (!component.key()) {
                values.add(component);
            }
        }
        return values;
    }

    public Optional<Component> component(String name) {
        return components.stream().filter(c -> c.name().equals(name)).findFirst();
    }

    /** The record class. */
    public Class<? extends Record> type() {
        return constructor().getDeclaringClass();
    }

    /** Makes the fact from its keys and values, each list in the components' order. */
    public Record make(List<?> keys, List<?> values) {
        Object[] all = new Object[components.size()];
        int key = 0;
        int value = 0;
        for (int i = 0; i < all.length; i++) {
            all[i] = components.get(i).key() ? keys.get(key++) : values.get(value++);
        }
        return make(all);
    }

    private Record make(Object[] all) {
        try {
            return constructor().newInstance(all);
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException("cannot make " + className + " of " + Arrays.toString(all), e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot make " + className + " of " + Arrays.toString(all), e);
        }
    }

    /** The keys that a fact of this item carries. */
    public List<Object> keysOf(Record fact) {
        List<Object> keys = new ArrayList<>(2);
        for (int i = 0; i < components.size(); i++) {
            if (components.get(i).key()) {
                keys.add(part(fact, i));
            }
        }
        return keys;
    }

    /** The values that a fact of this item carries. */
    public List<Object> valuesOf(Record fact) {
        List<Object> values = new ArrayList<>(2);
        for (int i = 0; i < components.size(); i++) {
            if (!components.get(i).key()) {
                values.add(part(fact, i));
            }
        }
        return values;
    }

    private Object part(Record fact, int i) {
        try {
            return accessors()[i].invoke(fact);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot read " + fact, e);
        }
    }

    /** Found at first use, as the JVM makes them anew at each asking; two threads that find them at once find the same. */
    private Method[] accessors() {
        Method[] known = accessors;
        if (known == null) {
            RecordComponent[] parts = type().getRecordComponents();
            known = new Method[parts.length];
            for (int i = 0; i < parts.length; i++) {
                known[i] = parts[i].getAccessor();
            }
            accessors = known;
        }
        return known;
    }

    /** Whether every possible answer can be listed. */
    public boolean isFinite() {
        long product = 1;
        for (Component component : components) {
            if (!component.key()) {
                if (!component.isFinite()) {
                    return false;
                }
                product *= component.choices().size();
            }
        }
        return product <= MOST_COMPLETIONS;
    }

    /** Every possible answer about the one with these keys; only for a finite item. */
    public List<Record> completions(List<?> keys) {
        List<Object[]> rows = new ArrayList<>();
        rows.add(new Object[components.size()]);
        int key = 0;
        for (int i = 0; i < components.size(); i++) {
            Component component = components.get(i);
            List<Object[]> next = new ArrayList<>();
            Object[] choices = component.key() ? new Object[] {keys.get(key++)} : constants(component);
            for (Object[] row : rows) {
                for (Object choice : choices) {
                    Object[] longer = row.clone();
                    longer[i] = choice;
                    next.add(longer);
                }
            }
            rows = next;
        }
        List<Record> all = new ArrayList<>(rows.size());
        for (Object[] row : rows) {
            all.add(make(row));
        }
        return all;
    }

    /** A fact with these keys whose values mean nothing: only its keys may be looked at. */
    public Record witness(List<?> keys) {
        Object[] all = new Object[components.size()];
        int key = 0;
        for (int i = 0; i < all.length; i++) {
            Component component = components.get(i);
            all[i] = component.key()
                    ? keys.get(key++)
                    : switch (component.form()) {
                        case CHOICE -> constants(component)[0];
                        case QUANTITY -> component.least();
                        case COUNT -> Integer.valueOf(component.from());
                        case DATE -> LocalDate.EPOCH;
                        case TEXT -> "?";
                    };
        }
        return make(all);
    }

    /** The constants of a choice, in order. */
    public Object[] constants(Component component) {
        return load(component.type()).getEnumConstants();
    }

    private Class<?> load(String name) {
        try {
            return Class.forName(name, true, loader);
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException("the class " + name + " of item " + id + " is not there", e);
        }
    }

    private Constructor<? extends Record> constructor() {
        Constructor<? extends Record> found = constructor;
        if (found == null) {
            found = canonical(load(className).asSubclass(Record.class));
            constructor = found;
        }
        return found;
    }

    @SuppressWarnings("unchecked")
    private Constructor<? extends Record> canonical(Class<? extends Record> type) {
        for (Constructor<?> candidate : type.getDeclaredConstructors()) {
            if (candidate.getParameterCount() == components.size()) {
                return (Constructor<? extends Record>) candidate;
            }
        }
        throw new IllegalStateException(className + " has no constructor of all its parts");
    }

    @Override
    public String toString() {
        return id;
    }
}
