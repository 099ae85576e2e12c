package gaugeglass.steam.reckon;

import gaugeglass.engine.book.Basis;
import gaugeglass.engine.book.Source;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A reckoning worked out: what went in, each formula with the numbers put in, what came out, on what it stands, and what
 * has to be said with it.
 *
 * <p>The command line, a report and the rules all take their figures from here, so that they show the same thing. Answers
 * are exact unless their line says that a root, a power or the steam table is in them.
 *
 * @param given what went in, in the order of use
 * @param lines the steps, in the order worked; at least one
 * @param main what the answer is called that was asked for: the name of one of the lines
 * @param basis what the formula stands on
 * @param sources where its figures come from, each once
 * @param warnings what has to be said with the answer, as sentences
 */
public record Worked(
        List<Given> given, List<Line> lines, String main, Basis basis, List<Source> sources, List<String> warnings) {

    /**
     * A figure that went in.
     *
     * @param symbol its name in the formulas
     * @param what what it is
     * @param value number and unit, as typed where it was typed
     */
    public record Given(String symbol, String what, String value) {}

    /**
     * A step.
     *
     * @param what what it gives, in words
     * @param symbol its name in later formulas
     * @param formula the formula in names, or the table that was looked in
     * @param numbers the formula with the numbers put in; empty when a table was looked in
     * @param answer what it gives
     */
    public record Line(String what, String symbol, String formula, String numbers, Answer answer) {}

    /** What a step gives. */
    public sealed interface Answer {
        /** As people read it. */
        String shown();
    }

    /** A quantity, shown to four significant digits, or as typed when it is a nominal size. */
    public record Amount(Quantity quantity) implements Answer {
        private static final int DIGITS = 4;

        @Override
        public String shown() {
            return quantity.typed().isPresent()
                    ? quantity.toString()
                    : quantity.roundedToDigits(DIGITS).toString();
        }
    }

    /**
     * A plain number of something that has no unit of measure, money above all.
     *
     * @param number how many
     * @param places the decimal places that are shown
     * @param of of what, as printed
     */
    public record Count(Rational number, int places, String of) implements Answer {
        @Override
        public String shown() {
            Rational half = Rational.of(number.signum() < 0 ? -1 : 1, 2);
            Rational tens = Rational.of((long) Math.pow(10, places));
            Rational scaled = number.times(tens).plus(half);
            java.math.BigDecimal shown =
                    new java.math.BigDecimal(scaled.numerator().divide(scaled.denominator()), places);
            return of.isEmpty() ? shown.toPlainString() : shown.toPlainString() + " " + of;
        }
    }

    public Worked {
        given = List.copyOf(given);
        lines = List.copyOf(lines);
        sources = List.copyOf(sources);
        warnings = List.copyOf(warnings);
        String wanted = main;
        if (lines.stream().noneMatch(line -> line.what().equals(wanted))) {
            throw new IllegalArgumentException("no line gives " + main);
        }
    }

    /** The answer that was asked for. */
    public Answer answer() {
        return line(main).answer();
    }

    /**
     * The quantity that was asked for.
     *
     * @throws IllegalStateException if the answer is a plain number
     */
    public Quantity result() {
        return quantity(main);
    }

    /**
     * The quantity that one of the lines gives.
     *
     * @param what the line's {@code what}
     * @throws IllegalArgumentException if no line gives that
     * @throws IllegalStateException if it is a plain number
     */
    public Quantity quantity(String what) {
        if (line(what).answer() instanceof Amount amount) {
            return amount.quantity();
        }
        throw new IllegalStateException(what + " is a plain number");
    }

    /**
     * The plain number that one of the lines gives.
     *
     * @param what the line's {@code what}
     * @throws IllegalArgumentException if no line gives that
     * @throws IllegalStateException if it is a quantity
     */
    public Rational number(String what) {
        if (line(what).answer() instanceof Count count) {
            return count.number();
        }
        throw new IllegalStateException(what + " is a quantity");
    }

    /** Whether some line gives that. */
    public boolean gives(String what) {
        return lines.stream().anyMatch(line -> line.what().equals(what));
    }

    /** This reckoning followed by another; the answer asked for is the other's. */
    public Worked then(Worked next) {
        List<Given> allGiven = new ArrayList<>(given);
        next.given.stream().filter(g -> !allGiven.contains(g)).forEach(allGiven::add);
        List<Line> allLines = new ArrayList<>(lines);
        next.lines.stream().filter(l -> !allLines.contains(l)).forEach(allLines::add);
        Set<Source> allSources = new LinkedHashSet<>(sources);
        allSources.addAll(next.sources);
        Set<String> allWarnings = new LinkedHashSet<>(warnings);
        allWarnings.addAll(next.warnings);
        Basis weaker = basis.compareTo(next.basis) > 0 ? basis : next.basis;
        return new Worked(allGiven, allLines, next.main, weaker, List.copyOf(allSources), List.copyOf(allWarnings));
    }

    private Line line(String what) {
        for (Line line : lines) {
            if (line.what().equals(what)) {
                return line;
            }
        }
        throw new IllegalArgumentException("no line gives " + what);
    }
}
