package gaugeglass.engine.book;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.QuantityFormatException;
import gaugeglass.engine.reading.Form;
import gaugeglass.engine.reading.Node;
import gaugeglass.engine.reading.NodeReader;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import gaugeglass.engine.text.Nearest;
import gaugeglass.engine.text.Words;
import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Values that somebody sets over those of the layer below: a jurisdiction's, a company's or a visit's.
 *
 * <p>A limit that a standard or code sets may only be moved to the more cautious side, and no limit may leave the span
 * that its table gives it. Whatever breaks that is refused, and nothing of the layer is applied.
 *
 * @param name who sets the values, as shown beside each
 * @param level where it stands over the others
 * @param settings the values by limit id
 * @param file the file it was read from
 */
public record LimitLayer(String name, Level level, Map<String, Setting> settings, String file) {

    /** Whose layer it is; each is laid over those before it. */
    public enum Level {
        JURISDICTION,
        COMPANY,
        VISIT
    }

    /**
     * A value as written, with its place.
     *
     * @param sources the documents that set it; may be none
     */
    public record Setting(String value, int line, int column, List<Source> sources) {
        public Setting {
            sources = List.copyOf(sources);
        }
    }

    public LimitLayer {
        settings = Collections.unmodifiableMap(new LinkedHashMap<>(settings));
    }

    /**
     * Reads a layer.
     *
     * @throws Mistakes with everything that is wrong in the text; whether its values are allowed is seen by
     *     {@link #over}
     */
    public static LimitLayer read(String file, String text) {
        List<Mistake> mistakes = new ArrayList<>();
        Form form = Form.of(file, "", NodeReader.read(file, text, mistakes), mistakes);
        String name = form.text("layer");
        if (!form.has("level")) {
            form.text("level");
        }
        Level level = form.word("level", Level.class, Level.VISIT);
        Map<String, Setting> settings = settings(form.form("limits"));
        form.close();
        if (!mistakes.isEmpty()) {
            throw new Mistakes(mistakes);
        }
        return new LimitLayer(name, level, settings, file);
    }

    /** Reads values by limit id: each a value alone, or a group with the value and its sources. */
    public static Map<String, Setting> settings(Form limits) {
        Map<String, Setting> settings = new LinkedHashMap<>();
        limits.fields().all().forEach((id, field) -> {
            Node node = field.value();
            if (node instanceof Node.Fields) {
                Form one = limits.form(id);
                settings.put(
                        id,
                        new Setting(
                                one.text("value"),
                                one.node("value").map(Node::line).orElse(node.line()),
                                one.node("value").map(Node::column).orElse(node.column()),
                                BookReader.sources(one)));
                one.close();
            } else {
                settings.put(id, new Setting(limits.text(id), node.line(), node.column(), List.of()));
            }
        });
        return settings;
    }

    /**
     * The limits in force with layers laid over a table, lowest level first, and in the order given here within a level. Two
     * laws may set one limit, the later only more cautiously; of two others on one level neither is above the other, so they
     * must agree.
     *
     * @throws Mistakes with every value that is not allowed
     */
    public static Map<String, Limit> over(Map<String, Limit> table, List<LimitLayer> layers) {
        List<Mistake> mistakes = new ArrayList<>();
        Map<String, Limit> inForce = new LinkedHashMap<>(table);
        List<LimitLayer> ordered = new ArrayList<>(layers);
        ordered.sort(Comparator.comparing(LimitLayer::level));
        Map<String, LimitLayer> setBy = new HashMap<>();
        for (LimitLayer layer : ordered) {
            layer.settings.forEach((id, setting) -> {
                Limit below = inForce.get(id);
                if (below == null) {
                    layer.wrong(
                            mistakes,
                            id,
                            setting,
                            "\"" + id + "\" is no limit",
                            "a limit of the table",
                            Nearest.to(id, table.keySet()).orElse(""));
                } else {
                    Optional<LimitLayer> other = Optional.ofNullable(setBy.put(id, layer));
                    Limit above = layer.lay(below, setting, other, mistakes);
                    inForce.put(id, above);
                }
            });
        }
        if (!mistakes.isEmpty()) {
            throw new Mistakes(mistakes);
        }
        return inForce;
    }

    private Limit lay(Limit below, Setting setting, Optional<LimitLayer> before, List<Mistake> mistakes) {
        String measures = BookReader.measures(below.value());
        Object value;
        try {
            value = BookReader.value(setting.value(), measures);
        } catch (QuantityFormatException e) {
            wrong(
                    mistakes,
                    below.id(),
                    setting,
                    e.problem(),
                    e.expected(),
                    e.nearest().orElse(""));
            return below;
        } catch (IllegalArgumentException e) {
            wrong(
                    mistakes,
                    below.id(),
                    setting,
                    "\"" + setting.value() + "\" is no " + measures,
                    "a value like " + below.written(),
                    "");
            return below;
        }
        int change = compare(value, below.value());
        if (change != 0
                && level != Level.JURISDICTION
                && before.filter(other -> other.level == level).isPresent()) {
            wrong(
                    mistakes,
                    below.id(),
                    setting,
                    name + " sets " + setting.value() + ", and " + before.get().name + " sets " + below.written()
                            + "; both are of the level " + Words.of(level) + ", so neither is above the other",
                    "one value in both, or in one of them alone",
                    "");
            return below;
        }
        boolean loosens = below.safer() == Limit.Safer.LOWER && change > 0
                || below.safer() == Limit.Safer.HIGHER && change < 0
                || below.safer() == Limit.Safer.NEITHER && change != 0;
        if (below.basis() == Basis.STANDARD && loosens) {
            wrong(
                    mistakes,
                    below.id(),
                    setting,
                    setting.value() + " is less cautious than " + below.written() + ", which "
                            + before.filter(other -> other.level == Level.JURISDICTION)
                                    .map(LimitLayer::name)
                                    .orElse("a standard")
                            + " sets",
                    below.safer() == Limit.Safer.NEITHER
                            ? "the value of the standard"
                            : below.written() + " or " + below.safer().word(),
                    "");
            return below;
        }
        boolean under = !below.least().isEmpty() && compare(value, BookReader.value(below.least(), measures)) < 0;
        boolean over = !below.most().isEmpty() && compare(value, BookReader.value(below.most(), measures)) > 0;
        if (under || over) {
            wrong(
                    mistakes,
                    below.id(),
                    setting,
                    setting.value() + " lies outside the span that the table allows",
                    "from " + (below.least().isEmpty() ? "anything" : below.least()) + " to "
                            + (below.most().isEmpty() ? "anything" : below.most()),
                    "");
            return below;
        }
        Limit above = below.with(value, setting.value(), name);
        // What a jurisdiction sets is its law: whoever comes after may be stricter, and nothing else.
        return level == Level.JURISDICTION ? above.setByLaw(setting.sources()) : above;
    }

    /** Orders two values of one limit. */
    private static int compare(Object one, Object other) {
        if (one instanceof Quantity quantity) {
            return quantity.compareTo((Quantity) other);
        }
        if (one instanceof Period period) {
            return LocalDate.EPOCH.plus(period).compareTo(LocalDate.EPOCH.plus((Period) other));
        }
        return ((Integer) one).compareTo((Integer) other);
    }

    private void wrong(
            List<Mistake> mistakes, String id, Setting setting, String what, String expected, String nearest) {
        mistakes.add(new Mistake(file, setting.line(), setting.column(), "limits/" + id, what, expected, nearest));
    }
}
