package gaugeglass.engine.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * An exact fraction of two whole numbers, always in lowest terms with a positive denominator.
 *
 * <p>Immutable. Two fractions are equal exactly when they are the same number.
 */
public final class Rational implements Comparable<Rational> {

    public static final Rational ZERO = new Rational(BigInteger.ZERO, BigInteger.ONE);
    public static final Rational ONE = new Rational(BigInteger.ONE, BigInteger.ONE);

    /** Two numbers below this many bits can be multiplied in a long. */
    private static final int SMALL = 31;

    private final BigInteger numerator;
    private final BigInteger denominator;

    private Rational(BigInteger numerator, BigInteger denominator) {
        this.numerator = numerator;
        this.denominator = denominator;
    }

    /** The whole number. */
    public static Rational of(long whole) {
        return whole == 0 ? ZERO : whole == 1 ? ONE : new Rational(BigInteger.valueOf(whole), BigInteger.ONE);
    }

    /**
     * The fraction of two whole numbers.
     *
     * @throws ArithmeticException if the denominator is zero
     */
    public static Rational of(long numerator, long denominator) {
        return of(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
    }

    /**
     * The fraction of two whole numbers.
     *
     * @throws ArithmeticException if the denominator is zero
     */
    public static Rational of(BigInteger numerator, BigInteger denominator) {
        if (denominator.signum() == 0) {
            throw new ArithmeticException("a fraction over zero");
        }
        if (denominator.signum() < 0) {
            return of(numerator.negate(), denominator.negate());
        }
        if (denominator.equals(BigInteger.ONE)) {
            return new Rational(numerator, denominator);
        }
        BigInteger common = common(numerator, denominator);
        return common.equals(BigInteger.ONE)
                ? new Rational(numerator, denominator)
                : new Rational(numerator.divide(common), denominator.divide(common));
    }

    /** The greatest common divisor; of numbers that fit a long worked out there, as nearly all do. */
    private static BigInteger common(BigInteger numerator, BigInteger denominator) {
        if (numerator.bitLength() >= Long.SIZE - 1 || denominator.bitLength() >= Long.SIZE - 1) {
            return numerator.gcd(denominator);
        }
        long a = Math.abs(numerator.longValue());
        long b = denominator.longValue();
        while (b != 0) {
            long rest = a % b;
            a = b;
            b = rest;
        }
        return BigInteger.valueOf(a);
    }

    /** The exact value of a decimal number. */
    public static Rational of(BigDecimal decimal) {
        return decimal.scale() <= 0
                ? new Rational(decimal.toBigIntegerExact(), BigInteger.ONE)
                : of(decimal.unscaledValue(), BigInteger.TEN.pow(decimal.scale()));
    }

    /** The upper part of the fraction in lowest terms; it carries the sign. */
    public BigInteger numerator() {
        return numerator;
    }

    /** The lower part of the fraction in lowest terms; 1 or more. */
    public BigInteger denominator() {
        return denominator;
    }

    /** -1, 0 or 1 as the number is below, at or above zero. */
    public int signum() {
        return numerator.signum();
    }

    /** Whether the number has no fractional part. */
    public boolean isWhole() {
        return denominator.equals(BigInteger.ONE);
    }

    public Rational plus(Rational other) {
        if (denominator.equals(other.denominator)) {
            return of(numerator.add(other.numerator), denominator);
        }
        return of(
                numerator.multiply(other.denominator).add(other.numerator.multiply(denominator)),
                denominator.multiply(other.denominator));
    }

    public Rational minus(Rational other) {
        return plus(other.negated());
    }

    public Rational times(Rational other) {
        return of(numerator.multiply(other.numerator), denominator.multiply(other.denominator));
    }

    /**
     * The quotient.
     *
     * @throws ArithmeticException if the divisor is zero
     */
    public Rational dividedBy(Rational other) {
        return of(numerator.multiply(other.denominator), denominator.multiply(other.numerator));
    }

    public Rational negated() {
        return new Rational(numerator.negate(), denominator);
    }

    public Rational abs() {
        return numerator.signum() < 0 ? negated() : this;
    }

    /**
     * The number as a decimal, correctly rounded as the context says; an unlimited context is
     * refused.
     */
    public BigDecimal toBigDecimal(MathContext context) {
        if (context.getPrecision() == 0) {
            throw new IllegalArgumentException("a decimal of unlimited length; name the digits wanted");
        }
        return new BigDecimal(numerator).divide(new BigDecimal(denominator), context);
    }

    @Override
    public int compareTo(Rational other) {
        if (denominator.equals(other.denominator)) {
            return numerator.compareTo(other.numerator);
        }
        if (numerator.bitLength() <= SMALL
                && denominator.bitLength() <= SMALL
                && other.numerator.bitLength() <= SMALL
                && other.denominator.bitLength() <= SMALL) {
            return Long.compare(
                    numerator.longValue() * other.denominator.longValue(),
                    other.numerator.longValue() * denominator.longValue());
        }
        return numerator.multiply(other.denominator).compareTo(other.numerator.multiply(denominator));
    }

    @Override
    public boolean equals(Object other) {
        return this == other
                || other instanceof Rational that
                        && numerator.equals(that.numerator)
                        && denominator.equals(that.denominator);
    }

    @Override
    public int hashCode() {
        return 31 * numerator.hashCode() + denominator.hashCode();
    }

    /** The decimal when it ends within nine digits, else the fraction, as in {@code 1/3}. */
    @Override
    public String toString() {
        BigDecimal decimal = toBigDecimal(new MathContext(9, RoundingMode.HALF_UP));
        return of(decimal).equals(this) ? plain(decimal) : numerator + "/" + denominator;
    }

    static String plain(BigDecimal decimal) {
        return decimal.signum() == 0 ? "0" : decimal.stripTrailingZeros().toPlainString();
    }
}
