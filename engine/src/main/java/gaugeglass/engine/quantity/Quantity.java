package gaugeglass.engine.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A measured or limiting value: an exact number, its unit, and the text it was typed as.
 *
 * <p>Immutable. Two quantities are equal when they have one dimension and are exactly the same
 * amount, whatever their units and texts: {@code 16 oz/in2} equals {@code 1 psi}. Quantities of
 * different dimensions are never equal, and ordering, adding or dividing them is an {@link
 * IllegalArgumentException} that names both.
 */
public final class Quantity implements Comparable<Quantity> {

    private static final int EXACT_DIGITS = 9;
    private static final int ROUNDED_DIGITS = 5;

    private final Rational value;
    private final Unit unit;
    private final String typed;

    /** The value in SI, worked out when first needed; computing it twice in a race does no harm. */
    private @Nullable Rational base;

    private Quantity(Rational value, Unit unit, String typed) {
        this.value = value;
        this.unit = unit;
        this.typed = typed;
    }

    /**
     * A quantity from a number written as a decimal or a fraction ({@code 1.5}, {@code 3/4}, {@code
     * 1 1/2}).
     *
     * @throws QuantityFormatException if the number is not written so
     */
    public static Quantity of(String number, Unit unit) {
        return new Quantity(QuantityText.number(number), unit, "");
    }

    /** A quantity of a whole number of units. */
    public static Quantity of(long number, Unit unit) {
        return new Quantity(Rational.of(number), unit, "");
    }

    /** A quantity of an exact number of units. */
    public static Quantity of(Rational number, Unit unit) {
        return new Quantity(Objects.requireNonNull(number), unit, "");
    }

    /**
     * The quantity that a person wrote, read as the expected dimension: {@code 8 oz} is a pressure
     * where a pressure is expected and a weight where a weight is.
     *
     * <p>Takes decimals, fractions and mixed numbers ({@code 1-1/2 in}), the usual spellings of
     * each unit, inch marks, degree signs, fraction characters, and {@code vacuum} after a pressure
     * for a value below zero. Whatever could be read in two ways is refused: commas, a missing
     * unit, a range, an improper fraction.
     *
     * @throws QuantityFormatException if the text cannot be read without guessing; it says how to
     *     write it
     */
    public static Quantity parse(String text, Dimension expected) {
        return QuantityText.parse(text, expected);
    }

    /** A quantity that was read before: an exact number of units, and the text that a person typed for it. */
    public static Quantity typed(Rational value, Unit unit, String typed) {
        return new Quantity(value, unit, typed);
    }

    /** The exact number of units. */
    public Rational value() {
        return value;
    }

    public Unit unit() {
        return unit;
    }

    public Dimension dimension() {
        return unit.dimension();
    }

    /** What the person typed, if this quantity was read from text and not worked out. */
    public Optional<String> typed() {
        return typed.isEmpty() ? Optional.empty() : Optional.of(typed);
    }

    /** -1, 0 or 1 as the value in its own unit is below, at or above zero. */
    public int signum() {
        return value.signum();
    }

    /** Whether this is more than the other; false when equal. */
    public boolean isAbove(Quantity other) {
        return compareTo(other) > 0;
    }

    /** Whether this is less than the other; false when equal. */
    public boolean isBelow(Quantity other) {
        return compareTo(other) < 0;
    }

    /** Whether this is the other or more. */
    public boolean isAtLeast(Quantity other) {
        return compareTo(other) >= 0;
    }

    /** Whether this is the other or less. */
    public boolean isAtMost(Quantity other) {
        return compareTo(other) <= 0;
    }

    /**
     * The sum, in this quantity's unit. A point (temperature, absolute pressure) takes a distance
     * (temperature difference, gauge pressure), in either order, and gives a point in the point's
     * unit.
     *
     * @throws IllegalArgumentException if the dimensions do not add up, as two points do not
     */
    public Quantity plus(Quantity other) {
        Dimension mine = dimension();
        Dimension theirs = other.dimension();
        if (theirs.isPoint() && !mine.isPoint()) {
            return other.plus(this);
        }
        if (theirs.isPoint() || mine.distance() != theirs) {
            throw mismatch("add", other);
        }
        return of(value.plus(other.valueIn(unit.distanceUnit())), unit);
    }

    /**
     * The difference, in this quantity's unit. Two points give a distance; a point less a distance
     * gives a point.
     *
     * @throws IllegalArgumentException if the dimensions do not go together
     */
    public Quantity minus(Quantity other) {
        Dimension mine = dimension();
        if (mine == other.dimension()) {
            return of(value.minus(other.valueIn(unit)), unit.distanceUnit());
        }
        if (mine.distance() == other.dimension()) {
            return of(value.minus(other.valueIn(unit.distanceUnit())), unit);
        }
        throw mismatch("subtract", other);
    }

    /**
     * So many times this quantity.
     *
     * @throws IllegalArgumentException if this is a temperature: twice 70 F is no temperature
     */
    public Quantity times(Rational factor) {
        if (dimension() == Dimension.TEMPERATURE) {
            throw new IllegalArgumentException(
                    "cannot multiply or divide " + named() + "; only a temperature difference can be");
        }
        return of(value.times(factor), unit);
    }

    /** So many times this quantity; as {@link #times(Rational)}. */
    public Quantity times(long factor) {
        return times(Rational.of(factor));
    }

    /**
     * This quantity shared out; as {@link #times(Rational)}.
     *
     * @throws ArithmeticException if the divisor is zero
     */
    public Quantity dividedBy(Rational divisor) {
        return times(Rational.ONE.dividedBy(divisor));
    }

    /** This quantity shared out; as {@link #dividedBy(Rational)}. */
    public Quantity dividedBy(long divisor) {
        return dividedBy(Rational.of(divisor));
    }

    /** The amount without its sign. */
    public Quantity abs() {
        return value.signum() < 0 ? of(value.negated(), unit) : this;
    }

    /**
     * How many times the other this is.
     *
     * @throws IllegalArgumentException if the dimensions differ, or are temperatures
     * @throws ArithmeticException if the other is zero
     */
    public Rational ratioTo(Quantity other) {
        if (dimension() != other.dimension() || dimension() == Dimension.TEMPERATURE) {
            throw mismatch("divide", other);
        }
        return value.dividedBy(other.valueIn(unit));
    }

    /**
     * The exact number of another unit of the same dimension.
     *
     * @throws IllegalArgumentException if the unit is of another dimension
     */
    public Rational valueIn(Unit other) {
        if (other == unit) {
            return value;
        }
        if (other.dimension() != dimension()) {
            throw new IllegalArgumentException("cannot express "
                    + named()
                    + " in "
                    + other.symbol()
                    + " ("
                    + other.dimension().words()
                    + ")");
        }
        return other.fromBase(base());
    }

    /** The number of another unit to 16 significant digits; for showing, not for judging. */
    public BigDecimal in(Unit other) {
        return in(other, MathContext.DECIMAL64);
    }

    /** The number of another unit, rounded as the context says; for showing, not for judging. */
    public BigDecimal in(Unit other, MathContext context) {
        return valueIn(other).toBigDecimal(context);
    }

    /**
     * The number of another unit to so many significant digits, halves away from zero; for showing,
     * not for judging.
     */
    public BigDecimal in(Unit other, int digits) {
        return in(other, new MathContext(digits, RoundingMode.HALF_UP));
    }

    /** The same exact amount in another unit; it is then no longer as typed. */
    public Quantity inUnit(Unit other) {
        return other == unit ? this : of(valueIn(other), other);
    }

    /** This quantity with so many decimal places in its own unit, halves away from zero. */
    public Quantity rounded(int places) {
        Rational tens = Rational.of(BigInteger.TEN.pow(places), BigInteger.ONE);
        Rational scaled = value.abs().times(tens).plus(Rational.of(1, 2));
        BigInteger whole = scaled.numerator().divide(scaled.denominator());
        Rational result = Rational.of(whole, BigInteger.ONE).dividedBy(tens);
        return of(value.signum() < 0 ? result.negated() : result, unit);
    }

    /** This quantity with so many significant digits in its own unit, halves away from zero. */
    public Quantity roundedToDigits(int digits) {
        return of(Rational.of(in(unit, digits)), unit);
    }

    /**
     * Orders by amount, exactly.
     *
     * @throws IllegalArgumentException if the dimensions differ
     */
    @Override
    public int compareTo(Quantity other) {
        if (unit == other.unit) {
            return value.compareTo(other.value);
        }
        if (dimension() != other.dimension()) {
            throw mismatch("compare", other);
        }
        return base().compareTo(other.base());
    }

    @Override
    public boolean equals(Object object) {
        if (this == object) {
            return true;
        }
        if (!(object instanceof Quantity other)) {
            return false;
        }
        return unit == other.unit
                ? value.equals(other.value)
                : dimension() == other.dimension() && base().equals(other.base());
    }

    @Override
    public int hashCode() {
        // The ordinal and not the enum's own hash, which changes from run to run.
        return 31 * base().hashCode() + dimension().ordinal();
    }

    /**
     * What was typed; for a quantity that was worked out, number and symbol.
     *
     * <p>A number that ends within nine digits is shown whole and reads back as the same quantity;
     * any other is rounded to five significant digits.
     */
    @Override
    public String toString() {
        if (!typed.isEmpty()) {
            return typed;
        }
        BigDecimal number = value.toBigDecimal(new MathContext(EXACT_DIGITS, RoundingMode.HALF_UP));
        if (!Rational.of(number).equals(value)) {
            number = value.toBigDecimal(new MathContext(ROUNDED_DIGITS, RoundingMode.HALF_UP));
        }
        return Rational.plain(number).concat(" ").concat(unit.symbol());
    }

    private Rational base() {
        Rational known = base;
        if (known == null) {
            known = unit.toBase(value);
            base = known;
        }
        return known;
    }

    private String named() {
        return this + " (" + dimension().words() + ")";
    }

    private IllegalArgumentException mismatch(String verb, Quantity other) {
        return new IllegalArgumentException("cannot " + verb + " " + named() + " and " + other.named());
    }
}
