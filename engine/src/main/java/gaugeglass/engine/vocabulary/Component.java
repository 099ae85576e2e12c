package gaugeglass.engine.vocabulary;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import java.util.List;

/**
 * One part of an observation.
 *
 * @param name the record component's name
 * @param form what kind of value it takes
 * @param key whether it tells which one was observed, rather than what was seen
 * @param type the class name of the enum for a choice; empty otherwise
 * @param choices the words of a choice, in the enum's order; empty otherwise
 * @param unitName the name of a quantity's usual {@link Unit}; empty otherwise
 * @param from the least value believed, in the usual unit or as a whole number; empty otherwise
 * @param to the greatest value believed; empty otherwise
 */
public record Component(
        String name,
        Form form,
        boolean key,
        String type,
        List<String> choices,
        String unitName,
        String from,
        String to) {

    /** What a part of an observation holds. */
    public enum Form {
        CHOICE,
        QUANTITY,
        COUNT,
        DATE,
        TEXT
    }

    public Component {
        choices = List.copyOf(choices);
    }

    /** The usual unit of a quantity. */
    public Unit unit() {
        return Unit.valueOf(unitName);
    }

    /** The least quantity that is believed. */
    public Quantity least() {
        return Quantity.of(from, unit());
    }

    /** The greatest quantity that is believed. */
    public Quantity most() {
        return Quantity.of(to, unit());
    }

    /** Whether all its possible values can be listed. */
    public boolean isFinite() {
        return form == Form.CHOICE;
    }
}
