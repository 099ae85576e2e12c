package gaugeglass.engine.quantity;

import gaugeglass.engine.text.Nearest;
import java.time.Period;
import java.util.List;

/**
 * Reads and prints service lives and intervals in calendar units: {@code 10 years}, {@code 6
 * months}, {@code 7 days}.
 *
 * <p>They are {@link Period}s and not quantities of time because a year is no fixed number of days:
 * what is due is found by adding the period to a date.
 */
public final class Periods {

    private static final String EXPECTED = "a whole number and days, weeks, months or years, as in 6 months";
    private static final List<String> SPELLINGS = List.of(
            "days", "day", "d", "weeks", "week", "wk", "wks", "months", "month", "mo", "mos", "years", "year", "yr",
            "yrs", "y");
    private static final int MOST_DIGITS = 4;

    private Periods() {}

    /**
     * The period that a person wrote: a whole number from 0 to 9999 and a calendar unit.
     *
     * @throws QuantityFormatException if the text is anything else; a fraction of a year is to be
     *     written in months
     */
    public static Period parse(String text) {
        int start = 0;
        int end = text.length();
        while (start < end && Characters.isSpace(text.charAt(start))) {
            start++;
        }
        while (end > start && Characters.isSpace(text.charAt(end - 1))) {
            end--;
        }
        int at = start;
        while (at < end && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
            at++;
        }
        if (at == start) {
            throw refuse(text, start == end ? "nothing is written" : "does not begin with a whole number");
        }
        if (at - start > MOST_DIGITS) {
            throw refuse(text, "longer than anything lasts");
        }
        int count = Integer.parseInt(text.substring(start, at));
        while (at < end && Characters.isSpace(text.charAt(at))) {
            at++;
        }
        if (at == end) {
            throw refuse(text, "a unit is needed");
        }
        String word = text.substring(at, end);
        for (int i = 0; i < word.length(); i++) {
            char c = word.charAt(i);
            if (c >= '0' && c <= '9' || c == ',' || c == '/' || c >= 0x80 && !Characters.isShapeless(c)) {
                throw refuse(text, "not one whole number and one unit");
            }
        }
        return of(text, count, word);
    }

    /** The period in the form that {@link #parse} takes; a period of mixed units is refused. */
    public static String print(Period period) {
        int days = period.getDays();
        int months = period.getMonths();
        int years = period.getYears();
        if ((days == 0 ? 0 : 1) + (months == 0 ? 0 : 1) + (years == 0 ? 0 : 1) > 1 || period.isNegative()) {
            throw new IllegalArgumentException("period of more than one unit, or below zero: " + period);
        }
        return years != 0 ? counted(years, "year") : months != 0 ? counted(months, "month") : counted(days, "day");
    }

    private static Period of(String text, int count, String word) {
        switch (QuantityText.squeeze(word)) {
            case "day", "days", "d":
                return Period.ofDays(count);
            case "week", "weeks", "wk", "wks":
                return Period.ofWeeks(count);
            case "month", "months", "mo", "mos":
                return Period.ofMonths(count);
            case "year", "years", "yr", "yrs", "y":
                return Period.ofYears(count);
            case "m":
                throw refuse(text, "m may be minutes or months");
            default:
                throw new QuantityFormatException(
                        text,
                        "no calendar unit is spelled '" + QuantityFormatException.shown(word) + "'",
                        EXPECTED,
                        Nearest.to(word, SPELLINGS).orElse(""));
        }
    }

    private static String counted(int count, String unit) {
        return count + " " + unit + (count == 1 ? "" : "s");
    }

    private static QuantityFormatException refuse(String text, String problem) {
        return new QuantityFormatException(text, problem, EXPECTED, "");
    }
}
