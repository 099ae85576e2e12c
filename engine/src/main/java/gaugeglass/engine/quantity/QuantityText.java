package gaugeglass.engine.quantity;

import gaugeglass.engine.text.Nearest;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads one written quantity from left to right: a sign, a number, a unit.
 *
 * <p>Hand-written and without regular expressions because every inspection reads dozens of
 * quantities before it can answer. The rule throughout: what has one meaning is taken, what could
 * have two is refused and both are named.
 */
final class QuantityText {

    private static final int LONGEST = 64;
    private static final int MOST_DIGITS = 15;

    private final String typed;
    private final String expected;
    private final String text;
    private int at;
    private boolean mixed;

    private QuantityText(String typed, String expected) {
        this.typed = typed;
        this.expected = expected;
        if (typed.length() > LONGEST) {
            throw refuse("longer than a quantity can be");
        }
        this.text = plain(typed);
    }

    static Quantity parse(String typed, Dimension expected) {
        return new QuantityText(typed, expected.writtenAs()).quantity(expected);
    }

    static Rational number(String typed) {
        QuantityText reader = new QuantityText(typed, "a number such as 1.5, 3/4 or 1 1/2");
        Rational number = reader.signedNumber();
        if (reader.at < reader.text.length()) {
            throw reader.refuse("something follows the number");
        }
        return number;
    }

    private Quantity quantity(Dimension dimension) {
        Rational number = signedNumber();
        String written = text.substring(at).strip();
        if (written.isEmpty()) {
            throw refuse("a unit is needed");
        }
        if (startsAnotherNumber(written)) {
            throw refuse("more than one number", "one number and one unit");
        }
        String key = squeeze(written);
        if (dimension == Dimension.PRESSURE) {
            String without = withoutVacuum(key);
            if (!without.equals(key)) {
                if (number.signum() < 0) {
                    throw refuse("a minus sign and the word vacuum say the same thing twice", "one of the two");
                }
                number = number.negated();
                key = without;
            }
        }
        Optional<Unit> unit = Unit.withKey(key, dimension);
        if (unit.isEmpty()) {
            throw notAUnit(written, key, dimension);
        }
        if (number.signum() < 0 && !dimension.canBeNegative()) {
            throw refuse("below zero, which no " + dimension.words() + " can be");
        }
        if (dimension == Dimension.TEMPERATURE && unit.get().toBase(number).signum() < 0) {
            throw refuse("below absolute zero, which no temperature can be");
        }
        return Quantity.typed(
                number, unit.get(), QuantityFormatException.shown(typed).strip());
    }

    // ---- the number

    private Rational signedNumber() {
        boolean below = peek(at) == '-';
        if (below || peek(at) == '+') {
            at++;
        }
        Rational number = number();
        refuseWhatMayNotFollow();
        return below ? number.negated() : number;
    }

    private Rational number() {
        int start = at;
        while (Characters.isDigit(peek(at)) || peek(at) == '.' || peek(at) == ',') {
            at++;
        }
        String token = text.substring(start, at);
        if (token.isEmpty()) {
            throw refuse(text.isEmpty() ? "nothing is written" : "does not begin with a number");
        }
        if (token.indexOf(',') >= 0) {
            throw comma(token);
        }
        if (peek(at) == '/') {
            return fraction(whole(token));
        }
        int next = peek(at) == '-' ? at + 1 : afterSpaces(at);
        if (next > at && Characters.isDigit(peek(next))) {
            int end = next;
            while (Characters.isDigit(peek(end))) {
                end++;
            }
            if (peek(end) == '/' && Characters.isDigit(peek(end + 1))) {
                BigInteger whole = whole(token);
                BigInteger upper = whole(text.substring(next, end));
                at = end;
                mixed = true;
                return fraction(upper).plus(Rational.of(whole, BigInteger.ONE));
            }
            if (peek(at) == ' ') {
                throw end - next == 3 && token.indexOf('.') < 0
                        ? refuse("a space inside a number", token + text.substring(next, end))
                        : refuse("more than one number", "one number and one unit");
            }
        }
        return decimal(token);
    }

    /** The fraction whose upper part has been read and whose stroke comes next. */
    private Rational fraction(BigInteger upper) {
        int start = ++at;
        while (Characters.isDigit(peek(at))) {
            at++;
        }
        if (start == at) {
            throw refuse("nothing below the fraction stroke");
        }
        BigInteger lower = whole(text.substring(start, at));
        if (lower.signum() == 0) {
            throw refuse("a fraction over zero");
        }
        if (upper.compareTo(lower) >= 0 && mixed) {
            throw refuse("a fraction of one or more after a whole number");
        }
        if (upper.compareTo(lower) >= 0) {
            // 11/2 is as likely 1 1/2 with its space lost as it is five and a half.
            BigInteger[] parts = upper.divideAndRemainder(lower);
            String apart = parts[1].signum() == 0 ? parts[0].toString() : parts[0] + " " + parts[1] + "/" + lower;
            throw refuse(
                    "a fraction of one or more may be a mixed number that lost its space",
                    apart + " if that is meant, else the whole number apart from the fraction");
        }
        return Rational.of(upper, lower);
    }

    private BigInteger whole(String token) {
        if (token.indexOf('.') >= 0) {
            throw refuse("a decimal and a fraction in one number");
        }
        if (token.length() > MOST_DIGITS) {
            throw refuse("more than " + MOST_DIGITS + " digits");
        }
        return BigInteger.valueOf(Long.parseLong(token));
    }

    private Rational decimal(String token) {
        int point = token.indexOf('.');
        if (point < 0) {
            return Rational.of(whole(token), BigInteger.ONE);
        }
        if (token.indexOf('.', point + 1) >= 0) {
            throw refuse("more than one decimal point");
        }
        String before = token.substring(0, point);
        String after = token.substring(point + 1);
        if (after.isEmpty()) {
            throw refuse("nothing after the decimal point", before.isEmpty() ? expected : before);
        }
        return Rational.of(whole(before.concat(after)), BigInteger.TEN.pow(after.length()));
    }

    private void refuseWhatMayNotFollow() {
        char next = peek(at);
        if (next == 'e' || next == 'E') {
            char power = peek(at + 1);
            if (Characters.isDigit(power) || (power == '-' || power == '+') && Characters.isDigit(peek(at + 2))) {
                throw refuse("a number with an exponent", "the number written out");
            }
        }
        int stroke = afterSpaces(at);
        if (peek(stroke) == '-' && Characters.isDigit(peek(afterSpaces(stroke + 1)))) {
            throw refuse("a range, or a subtraction", "one number and one unit");
        }
    }

    /**
     * A comma is a thousands mark to one reader and a decimal point to the next, so it is never
     * taken.
     */
    private QuantityFormatException comma(String token) {
        String without = token.replace(",", "");
        int first = token.indexOf(',');
        int point = token.indexOf('.');
        String[] groups = (point < 0 ? token : token.substring(0, point)).split(",", -1);
        boolean thousands = groups.length > 1
                && !groups[0].isEmpty()
                && groups[0].length() <= 3
                && (point < 0 || point > token.lastIndexOf(','));
        for (int i = 1; i < groups.length; i++) {
            thousands &= groups[i].length() == 3;
        }
        String decimal = Rational.plain(decimalOf(token, first));
        if (thousands && groups.length == 2 && point < 0) {
            return refuse(
                    "a comma may mark thousands or decimals",
                    "written without a comma: " + without + ", or " + decimal + " if decimals are meant");
        }
        if (thousands) {
            return refuse("a comma in a number", "written without commas: " + without);
        }
        if (point < 0 && groups.length == 2 && !groups[1].isEmpty()) {
            return refuse(
                    "a decimal comma",
                    "written with a point: " + (groups[0].isEmpty() ? "0" : groups[0]) + "." + groups[1]);
        }
        return refuse("commas that mark neither thousands nor decimals", "a number without commas");
    }

    private static BigDecimal decimalOf(String token, int comma) {
        String digits = token.replace(",", "").replace(".", "");
        return digits.isEmpty() ? BigDecimal.ZERO : new BigDecimal(new BigInteger(digits), digits.length() - comma);
    }

    // ---- the unit

    /** Whether a digit stands where no unit has one: after a space, a mark or a stroke. */
    private static boolean startsAnotherNumber(String written) {
        for (int i = 0; i < written.length(); i++) {
            if (Characters.isDigit(written.charAt(i))) {
                char before = i == 0 ? ' ' : written.charAt(i - 1);
                if (!Characters.isLetter(before)
                        && !Characters.isDigit(before)
                        && !(before == '^' && i > 1 && Characters.isLetter(written.charAt(i - 2)))) {
                    return true;
                }
            }
        }
        return false;
    }

    private static String withoutVacuum(String key) {
        String word = key.endsWith("vacuum") ? "vacuum" : key.endsWith("vac") ? "vac" : "";
        return key.substring(0, key.length() - word.length());
    }

    private QuantityFormatException notAUnit(String written, String key, Dimension dimension) {
        if (key.isEmpty()) {
            return refuse("a unit is needed");
        }
        Optional<QuantityFormatException> doubt = knownDoubt(key, dimension);
        if (doubt.isPresent()) {
            return doubt.get();
        }
        if (dimension == Dimension.PRESSURE
                && Unit.withKey(key, Dimension.ABSOLUTE_PRESSURE).isPresent()) {
            return refuse(
                    "counts from a perfect vacuum, but a gauge counts from the air around it",
                    "psi as the gauge" + " shows it (" + dimension.usualUnits() + ")");
        }
        if (dimension == Dimension.ABSOLUTE_PRESSURE
                && Unit.withKey(key, Dimension.PRESSURE).isPresent()) {
            return refuse(
                    "counts from the air around it, but an absolute pressure counts from a perfect vacuum",
                    dimension.usualUnits());
        }
        List<String> spellings = new ArrayList<>();
        for (Dimension other : Dimension.values()) {
            Optional<Unit> unit = Unit.withKey(key, other);
            if (unit.isPresent()) {
                return refuse(unit.get().symbol()
                        + (other == Dimension.RATIO ? " tells a share" : " is a unit of " + other.words()));
            }
        }
        for (Unit unit : Unit.of(dimension)) {
            spellings.addAll(unit.spellings());
        }
        return refuse(
                "no " + (dimension == Dimension.RATIO ? "share" : "unit of " + dimension.words()) + " is spelled '"
                        + written + "'",
                expected,
                Nearest.to(key, spellings)
                        .map(near -> symbolFor(near, dimension))
                        .orElse(""));
    }

    private static String symbolFor(String spelling, Dimension dimension) {
        for (Unit unit : Unit.of(dimension)) {
            if (squeeze(unit.symbol()).equals(spelling)) {
                return unit.symbol();
            }
        }
        return spelling;
    }

    /** The refusal for a spelling that people do write and that has two meanings. */
    private Optional<QuantityFormatException> knownDoubt(String key, Dimension dimension) {
        return switch (dimension) {
            case PRESSURE ->
                switch (key) {
                    case "in", "ins", "inch", "inches" -> doubt("inches of what is not said", "inH2O or inHg");
                    case "ft", "foot", "feet" -> doubt("feet of what is not said", "ftH2O");
                    case "mpa" -> doubt("M may be a thousandth or a million", "kPa or bar");
                    case "wc", "wg", "h2o", "water", "watercolumn" ->
                        doubt("a water column measured in what is not said", "inH2O or ftH2O");
                    default -> Optional.empty();
                };
            case TIME ->
                switch (key) {
                    case "m" -> doubt("m may be minutes, months or metres", "min for minutes");
                    case "y", "yr", "yrs", "year", "years", "mo", "mos", "month", "months" ->
                        doubt("years and months are no fixed length of time", dimension.usualUnits());
                    default -> Optional.empty();
                };
            case TEMPERATURE, TEMPERATURE_DIFFERENCE ->
                switch (key) {
                    case "deg", "degs", "degree", "degrees" -> doubt("degrees of which scale is not said", "F or C");
                    default -> Optional.empty();
                };
            case VOLUME ->
                switch (key) {
                    case "ccf", "mcf" -> doubt("a count of hundreds or thousands of cubic feet", "ft3, written out");
                    default -> Optional.empty();
                };
            case RATIO ->
                switch (key) {
                    case "ppb" -> doubt("parts per billion are not read", "ppm, written out");
                    default -> Optional.empty();
                };
            case POWER ->
                switch (key) {
                    case "btu", "btus" -> doubt("an amount of heat and not a rate", "Btu/h");
                    case "mw" -> doubt("M may be a thousandth or a million", "kW");
                    case "hp", "horsepower" ->
                        doubt(
                                "may be a motor's horsepower or the horsepower of steam output",
                                "bhp for steam output, or Btu/h, MBH or kW");
                    default ->
                        key.startsWith("mbtu") || key.startsWith("mmbtu")
                                ? doubt("M may be a thousand or a million", "MBH for thousands, or Btu/h written out")
                                : Optional.empty();
                };
            default -> Optional.empty();
        };
    }

    private Optional<QuantityFormatException> doubt(String problem, String wanted) {
        return Optional.of(refuse(problem, wanted));
    }

    /**
     * The form in which spellings are compared: lower case, no spaces, no points after letters, no
     * hyphens between words, a stroke for "per", words for the marks of inch and foot.
     */
    static String squeeze(String spelling) {
        StringBuilder key = new StringBuilder(spelling.length());
        for (int i = 0; i < spelling.length(); i++) {
            char c = spelling.charAt(i);
            char before = i == 0 ? ' ' : spelling.charAt(i - 1);
            char after = i + 1 == spelling.length() ? ' ' : spelling.charAt(i + 1);
            if (c >= 'A' && c <= 'Z') {
                c += 'a' - 'A';
            }
            if (c == '"') {
                key.append("in");
            } else if (c == '\'' && after == '\'') {
                key.append("in");
                i++;
            } else if (c == '\'') {
                key.append("ft");
            } else if (c == 'p' && before == ' ' && i > 0 && isWordPer(spelling, i)) {
                key.append('/');
                i += 2;
            } else if (c == ' '
                    || c == '.' && Characters.isLetter(before)
                    || c == '-'
                            && (Characters.isLetter(before) || Characters.isDigit(before))
                            && Characters.isLetter(after)
                    || c == '^' && Characters.isLetter(before) && Characters.isDigit(after)) {
                continue;
            } else {
                key.append(c);
            }
        }
        return key.toString();
    }

    private static boolean isWordPer(String spelling, int at) {
        return spelling.regionMatches(true, at, "per ", 0, 4);
    }

    // ---- characters

    /**
     * The text in ASCII: typographic forms of a sign become the sign, what cannot be seen or has no
     * use is refused.
     */
    private String plain(String raw) {
        StringBuilder result = new StringBuilder(raw.length() + 4);
        for (int i = 0; i < raw.length(); i++) {
            char c = raw.charAt(i);
            char before = result.isEmpty() ? ' ' : result.charAt(result.length() - 1);
            if (Characters.isSpace(c)) {
                result.append(' ');
            } else if (Characters.isShapeless(c)) {
                throw refuse("holds a character that cannot be seen (" + Characters.codePoint(c) + ")");
            } else if (!Characters.fraction(c).isEmpty()) {
                if (i + 1 < raw.length() && Characters.isDigit(raw.charAt(i + 1))) {
                    // In ASCII, one half and a 5 would run together into 1/25.
                    throw refuse("a digit directly after a fraction");
                }
                result.append(Characters.isDigit(before) ? " " : "").append(Characters.fraction(c));
            } else if (!Characters.smallDigit(c).isEmpty()) {
                if (!Characters.isLetter(before)) {
                    throw refuse("a raised or lowered digit that belongs to no unit");
                }
                result.append(Characters.smallDigit(c));
            } else if (!Characters.sign(c).isEmpty()) {
                result.append(Characters.sign(c));
            } else if (c < 0x7f) {
                result.append(c);
            } else {
                throw refuse("holds a character that has no meaning here (" + Characters.codePoint(c) + ")");
            }
        }
        return result.toString().strip();
    }

    private char peek(int index) {
        return index < text.length() ? text.charAt(index) : '\0';
    }

    private int afterSpaces(int index) {
        int result = index;
        while (peek(result) == ' ') {
            result++;
        }
        return result;
    }

    private QuantityFormatException refuse(String problem) {
        return refuse(problem, expected);
    }

    private QuantityFormatException refuse(String problem, String wanted) {
        return refuse(problem, wanted, "");
    }

    private QuantityFormatException refuse(String problem, String wanted, String nearest) {
        return new QuantityFormatException(typed, problem, wanted, nearest);
    }
}
