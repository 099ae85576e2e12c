package gaugeglass.engine.text;

import java.time.Period;
import java.util.ArrayList;
import java.util.List;

/** Turns constants and values into the words that people write and read. */
public final class Words {
    private Words() {}

    /** The word for a constant: {@code MANUAL_RESET} is {@code manual-reset}. */
    public static String of(Enum<?> constant) {
        return hyphened(constant.name());
    }

    /** Lower case with hyphens, from a constant's name or a {@code camelCase} one. */
    public static String hyphened(String name) {
        StringBuilder word = new StringBuilder(name.length() + 4);
        boolean allUpper = true;
        for (int i = 0; i < name.length(); i++) {
            allUpper &= !Character.isLowerCase(name.charAt(i));
        }
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            if (c == '_') {
                word.append('-');
            } else if (Character.isUpperCase(c)) {
                if (!allUpper && i > 0) {
                    word.append('-');
                }
                word.append(Character.toLowerCase(c));
            } else {
                word.append(c);
            }
        }
        return word.toString();
    }

    /** How a value reads inside a sentence. */
    public static String spoken(Object value) {
        if (value instanceof Enum<?> constant) {
            return of(constant).replace('-', ' ');
        }
        if (value instanceof Period period) {
            return period(period);
        }
        return String.valueOf(value);
    }

    /** A period as {@code 10 years}, {@code 1 year 6 months}. */
    public static String period(Period period) {
        List<String> parts = new ArrayList<>();
        part(parts, period.getYears(), "year");
        part(parts, period.getMonths(), "month");
        part(parts, period.getDays(), "day");
        return parts.isEmpty() ? "0 days" : String.join(" ", parts);
    }

    private static void part(List<String> parts, int number, String unit) {
        if (number != 0) {
            parts.add(number + " " + unit + (number == 1 ? "" : "s"));
        }
    }
}
