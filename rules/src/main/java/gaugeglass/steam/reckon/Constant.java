package gaugeglass.steam.reckon;

import gaugeglass.engine.book.Source;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.quantity.Unit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A fixed figure that a formula uses.
 *
 * @param id its name in the table
 * @param value the exact number
 * @param unit its unit as printed; empty where it has none
 * @param what what it is, in words
 * @param source where it comes from
 */
public record Constant(String id, Rational value, String unit, String what, Source source) {
    private static final Map<String, Constant> ALL = read();

    static Constant of(String id) {
        Constant constant = ALL.get(id);
        if (constant == null) {
            throw new IllegalStateException("no constant " + id);
        }
        return constant;
    }

    /** The constant as a quantity of a unit that its printed one stands for. */
    Quantity in(Unit of) {
        return Quantity.of(value, of);
    }

    /** Every constant, in the order of their names. */
    public static List<Constant> all() {
        List<Constant> all = new ArrayList<>(ALL.values());
        all.sort((a, b) -> a.id().compareTo(b.id()));
        return List.copyOf(all);
    }

    private static Map<String, Constant> read() {
        Map<String, Constant> all = new HashMap<>();
        for (Table.Row row : Table.read("constants.csv").rows()) {
            Constant constant = new Constant(
                    row.text("id"),
                    row.number("value"),
                    row.text("unit"),
                    row.text("what"),
                    Sources.of(row.text("source")));
            if (all.put(constant.id(), constant) != null) {
                throw new IllegalStateException("constant " + constant.id() + " stands twice");
            }
        }
        return all;
    }
}
