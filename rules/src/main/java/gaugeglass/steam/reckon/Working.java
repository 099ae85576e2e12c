package gaugeglass.steam.reckon;

import gaugeglass.engine.book.Basis;
import gaugeglass.engine.book.Source;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.steam.reckon.Worked.Amount;
import gaugeglass.steam.reckon.Worked.Answer;
import gaugeglass.steam.reckon.Worked.Count;
import gaugeglass.steam.reckon.Worked.Given;
import gaugeglass.steam.reckon.Worked.Line;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A sheet on which a reckoning is worked, line by line, into a {@link Worked}. */
final class Working {
    private final Basis basis;
    private final Map<String, Rational> values = new LinkedHashMap<>();
    private final List<Given> given = new ArrayList<>();
    private final List<Line> lines = new ArrayList<>();
    private final Set<Source> sources = new LinkedHashSet<>();
    private final Set<String> warnings = new LinkedHashSet<>();

    private Working(Basis basis) {
        this.basis = basis;
    }

    static Working on(Basis basis) {
        return new Working(basis);
    }

    /** Puts a quantity in, counted in the unit that the formulas want. */
    Working let(String symbol, String what, Quantity quantity, Unit unit) {
        bind(symbol, quantity.valueIn(unit));
        boolean isTyped = quantity.typed().isPresent();
        String value = (isTyped ? quantity : quantity.inUnit(unit)).toString();
        given.add(new Given(
                symbol,
                what,
                isTyped && quantity.unit() != unit
                        ? value + " = " + new Amount(quantity.inUnit(unit)).shown()
                        : value));
        return this;
    }

    /** Puts a plain number in. */
    Working let(String symbol, String what, Rational number, String of) {
        bind(symbol, number);
        given.add(new Given(symbol, what, of.isEmpty() ? number.toString() : number + " " + of));
        return this;
    }

    /** Puts a fixed figure in, and its source. */
    Working constant(String symbol, String id) {
        Constant constant = Constant.of(id);
        let(symbol, constant.what(), constant.value(), constant.unit());
        sources.add(constant.source());
        return this;
    }

    /** Puts in what was looked up for this reckoning, as a line of its own. */
    Working looked(String what, String symbol, String where, Quantity found, Unit unit, String source) {
        bind(symbol, found.valueIn(unit));
        sources.add(Sources.of(source));
        lines.add(new Line(what, symbol, where, "", new Amount(found)));
        return this;
    }

    /** Works a formula out, exactly but for roots and broken powers; its value can be used by name below. */
    Working line(String what, String symbol, String formula, Unit unit) {
        Rational value = Formula.value(formula, values);
        return add(what, symbol, formula, value, new Amount(Quantity.of(value, unit)));
    }

    /** Works a formula out whose answer is no quantity. */
    Working count(String what, String symbol, String formula, int places, String of) {
        Rational value = Formula.value(formula, values);
        return add(what, symbol, formula, value, new Count(value, places, of));
    }

    Working source(String id) {
        sources.add(Sources.of(id));
        return this;
    }

    Working warn(String sentence) {
        warnings.add(sentence);
        return this;
    }

    Working warnIf(boolean condition, String sentence) {
        return condition ? warn(sentence) : this;
    }

    /** The value of a name, exactly. */
    Rational value(String symbol) {
        Rational value = values.get(symbol);
        if (value == null) {
            throw new IllegalStateException("no value for " + symbol);
        }
        return value;
    }

    /** The sheet, with the last line as the answer. */
    Worked worked() {
        return worked(lines.get(lines.size() - 1).what());
    }

    /** The sheet, with the named line as the answer. */
    Worked worked(String main) {
        return new Worked(given, lines, main, basis, List.copyOf(sources), List.copyOf(warnings));
    }

    private Working add(String what, String symbol, String formula, Rational value, Answer answer) {
        String numbers = Formula.withNumbers(formula, values);
        bind(symbol, value);
        lines.add(new Line(what, symbol, formula, numbers, answer));
        return this;
    }

    private void bind(String symbol, Rational value) {
        if (values.put(symbol, value) != null) {
            throw new IllegalStateException(symbol + " is taken twice");
        }
    }
}
