package gaugeglass.steam.reckon;

import gaugeglass.engine.quantity.Rational;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Map;

/**
 * A formula as people write it, worked out exactly: {@code 3600 x dial x turns / time}.
 *
 * <p>What is shown is what is computed: there is no second copy of the formula in code. It knows numbers, names, {@code +
 * - x /}, brackets, {@code ^} with a whole exponent, all exact, and two that are not: {@code sqrt(...)} and {@code ^}
 * with a broken exponent give {@value #DIGITS} significant digits.
 */
final class Formula {
    private static final int DIGITS = 12;
    private static final MathContext ROUNDED = new MathContext(DIGITS, RoundingMode.HALF_UP);
    private static final int SHOWN_DIGITS = 6;

    private final String text;
    private final Map<String, Rational> values;
    private int at;

    private Formula(String text, Map<String, Rational> values) {
        this.text = text;
        this.values = values;
    }

    /**
     * The value of a formula.
     *
     * @throws IllegalStateException if it is not well formed or names what has no value: a fault of the program
     * @throws ArithmeticException if something is divided by zero
     */
    static Rational value(String text, Map<String, Rational> values) {
        Formula formula = new Formula(text, values);
        Rational value = formula.sum();
        if (formula.at < text.length()) {
            throw formula.wrong();
        }
        return value;
    }

    /** The formula with numbers in place of names, each to six significant digits. */
    static String withNumbers(String text, Map<String, Rational> values) {
        StringBuilder out = new StringBuilder();
        int i = 0;
        while (i < text.length()) {
            if (!isLetter(text.charAt(i))) {
                out.append(text.charAt(i++));
                continue;
            }
            int start = i;
            while (i < text.length() && isWord(text.charAt(i))) {
                i++;
            }
            String name = text.substring(start, i);
            Rational value = values.get(name);
            out.append(value == null ? name : shown(value));
        }
        return out.toString();
    }

    private static String shown(Rational value) {
        BigDecimal number = value.toBigDecimal(new MathContext(SHOWN_DIGITS, RoundingMode.HALF_UP))
                .stripTrailingZeros();
        String plain = number.signum() == 0 ? "0" : number.toPlainString();
        return value.signum() < 0 ? "(" + plain + ")" : plain;
    }

    private Rational sum() {
        Rational value = product();
        for (char c = peek(); c == '+' || c == '-'; c = peek()) {
            at++;
            Rational next = product();
            value = c == '+' ? value.plus(next) : value.minus(next);
        }
        return value;
    }

    private Rational product() {
        Rational value = power();
        for (char c = peek(); c == '/' || c == 'x' && isTimes(); c = peek()) {
            at++;
            Rational next = power();
            value = c == '/' ? value.dividedBy(next) : value.times(next);
        }
        return value;
    }

    private Rational power() {
        Rational base = single();
        if (peek() != '^') {
            return base;
        }
        at++;
        Rational exponent = single();
        if (exponent.isWhole()) {
            int times = exponent.numerator().intValueExact();
            Rational value = Rational.ONE;
            for (int i = 0; i < Math.abs(times); i++) {
                value = value.times(base);
            }
            return times < 0 ? Rational.ONE.dividedBy(value) : value;
        }
        return rounded(BigDecimal.valueOf(
                StrictMath.pow(number(base).doubleValue(), number(exponent).doubleValue())));
    }

    private Rational single() {
        char c = peek();
        if (c == '(') {
            at++;
            Rational value = sum();
            if (peek() != ')') {
                throw wrong();
            }
            at++;
            return value;
        }
        int start = at;
        if (isLetter(c)) {
            while (at < text.length() && isWord(text.charAt(at))) {
                at++;
            }
            String name = text.substring(start, at);
            if (name.equals("sqrt")) {
                return rounded(number(single()).sqrt(ROUNDED));
            }
            Rational value = values.get(name);
            if (value == null) {
                throw new IllegalStateException("no value for " + name + " in " + text);
            }
            return value;
        }
        while (at < text.length() && (isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
            at++;
        }
        if (start == at) {
            throw wrong();
        }
        return Rational.of(new BigDecimal(text.substring(start, at)));
    }

    private static BigDecimal number(Rational value) {
        return value.toBigDecimal(new MathContext(20, RoundingMode.HALF_UP));
    }

    private static Rational rounded(BigDecimal value) {
        return Rational.of(value.round(ROUNDED));
    }

    /** Whether the x here is a sign and not the beginning of a name. */
    private boolean isTimes() {
        return at + 1 == text.length() || !isWord(text.charAt(at + 1));
    }

    private char peek() {
        while (at < text.length() && text.charAt(at) == ' ') {
            at++;
        }
        return at < text.length() ? text.charAt(at) : '\0';
    }

    private static boolean isLetter(char c) {
        return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z';
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private static boolean isWord(char c) {
        return isLetter(c) || isDigit(c) || c == '_';
    }

    private IllegalStateException wrong() {
        return new IllegalStateException("not a formula at character " + (at + 1) + ": " + text);
    }
}
