package gaugeglass.engine.observation;

import gaugeglass.engine.observation.Layout.Part;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.QuantityFormatException;
import gaugeglass.engine.text.Nearest;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;

/** Reads one written value as what its question asks for. */
final class Values {
    private Values() {}

    /** What is wrong with a written value. */
    static final class Unfit extends Exception {
        private static final long serialVersionUID = 1L;

        final String expected;
        final String nearest;

        Unfit(String what, String expected, String nearest) {
            super(what, null, false, false);
            this.expected = expected;
            this.nearest = nearest;
        }
    }

    /**
     * A value, and what had to be made of it.
     *
     * @param remark empty where it was taken as written
     */
    record Read(Object value, String remark) {}

    static Read read(Part part, String text, Optional<LocalDate> visit) throws Unfit {
        return switch (part.component.form()) {
            case CHOICE -> new Read(choice(part, text), "");
            case QUANTITY -> new Read(quantity(part, text), "");
            case COUNT -> new Read(count(part, text), "");
            case DATE -> date(text, visit);
            case TEXT -> new Read(text, "");
        };
    }

    /** The words of a choice, as a phrase. */
    static String words(Part part) {
        return "one of " + String.join(", ", part.component.choices());
    }

    private static Object choice(Part part, String text) throws Unfit {
        Object constant = part.constants().get(text);
        if (constant != null) {
            return constant;
        }
        String word = word(text);
        constant = part.constants().get(word);
        if (constant != null) {
            return constant;
        }
        String quoted = "\"" + shown(text) + "\"";
        switch (word) {
            case "yes", "no", "y", "n", "true", "false", "on", "off":
                throw new Unfit(quoted + " does not tell which is meant", words(part), "");
            case "unread", "unknown", "not-known", "not-seen", "n/a", "na", "?", "-", "--", "none":
                throw new Unfit(
                        quoted + " is no answer here",
                        words(part) + "; or the group \"unread: why\"; or nothing, where nobody looked",
                        "");
            default:
                throw new Unfit(
                        quoted + " is not one of the answers",
                        words(part),
                        Nearest.to(word, part.component.choices()).orElse(""));
        }
    }

    /** A typed word in the form of a constant's: lower case with hyphens. */
    static String word(String text) {
        StringBuilder word = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == ' ' || c == '_' || c == '-' || c == '\u2010' || c == '\u2011' || c == '\u2013') {
                if (word.length() > 0 && word.charAt(word.length() - 1) != '-') {
                    word.append('-');
                }
            } else {
                word.append(Character.toLowerCase(c));
            }
        }
        return word.length() == 0 ? text : word.toString();
    }

    private static Quantity quantity(Part part, String text) throws Unfit {
        Quantity quantity;
        try {
            quantity = Quantity.parse(text, part.component.unit().dimension());
        } catch (QuantityFormatException e) {
            throw new Unfit(
                    "\"" + e.typed() + "\": " + e.problem(),
                    e.expected(),
                    e.nearest().orElse(""));
        }
        if (quantity.isBelow(part.least()) || quantity.isAbove(part.most())) {
            throw new Unfit("\"" + shown(text) + "\" is outside what is believed", part.span(), "");
        }
        return quantity;
    }

    private static Integer count(Part part, String text) throws Unfit {
        int number = whole(text, part.span());
        if (number < Integer.parseInt(part.component.from()) || number > Integer.parseInt(part.component.to())) {
            throw new Unfit("\"" + shown(text) + "\" is outside what is believed", part.span(), "");
        }
        return number;
    }

    static int whole(String text, String span) throws Unfit {
        int start = text.startsWith("-") || text.startsWith("+") ? 1 : 0;
        boolean fits = text.length() > start && text.length() - start < 10;
        for (int i = start; fits && i < text.length(); i++) {
            fits = text.charAt(i) >= '0' && text.charAt(i) <= '9';
        }
        if (!fits) {
            throw new Unfit("\"" + shown(text) + "\" is no whole number", "a whole number, " + span, "");
        }
        return Integer.parseInt(text);
    }

    private static Read date(String text, Optional<LocalDate> visit) throws Unfit {
        Read read;
        if (text.length() == 10) {
            read = new Read(day(text), "");
        } else {
            // The earliest day: what is judged by age is then judged on the side of caution.
            LocalDate first =
                    text.length() == 7 ? day(text + "-01") : text.length() == 4 ? day(text + "-01-01") : day(text);
            read = new Read(first, "\"" + text + "\" is taken as " + first);
        }
        LocalDate date = (LocalDate) read.value();
        if (visit.isPresent() && date.isAfter(visit.get())) {
            throw new Unfit(
                    "\"" + text + "\" is later than the visit of " + visit.get(), "the day of the visit or before", "");
        }
        return read;
    }

    /** A day in the form {@code 2026-09-14}. */
    static LocalDate day(String text) throws Unfit {
        boolean shaped = text.length() == 10 && text.charAt(4) == '-' && text.charAt(7) == '-';
        for (int i = 0; shaped && i < 10; i++) {
            shaped = i == 4 || i == 7 || text.charAt(i) >= '0' && text.charAt(i) <= '9';
        }
        if (!shaped) {
            throw new Unfit(
                    "\"" + shown(text) + "\" is not written as a date", "year, month and day such as 2026-09-14", "");
        }
        int year = Integer.parseInt(text.substring(0, 4));
        int month = Integer.parseInt(text.substring(5, 7));
        int day = Integer.parseInt(text.substring(8));
        if (year < EARLIEST_YEAR) {
            throw new Unfit("\"" + text + "\" lies too far back", "a year from " + EARLIEST_YEAR + " on", "");
        }
        try {
            return LocalDate.of(year, month, day);
        } catch (DateTimeException e) {
            throw new Unfit("there is no day \"" + text + "\"", "a day that the calendar has", "");
        }
    }

    /** No piece of equipment still in use, and no paper about one, is believed to be older. */
    private static final int EARLIEST_YEAR = 1800;

    /** A time of day in the form {@code 9:40}, {@code 09:40} or {@code 09:40:15}, kept as typed. */
    static String time(String text) throws Unfit {
        String[] parts = text.split(":", -1);
        boolean fits = parts.length == 2 || parts.length == 3;
        for (int i = 0; fits && i < parts.length; i++) {
            String part = parts[i];
            fits = part.length() == 2 || i == 0 && part.length() == 1;
            for (int c = 0; fits && c < part.length(); c++) {
                fits = part.charAt(c) >= '0' && part.charAt(c) <= '9';
            }
            fits = fits && Integer.parseInt(part) < (i == 0 ? 24 : 60);
        }
        if (!fits) {
            throw new Unfit("\"" + shown(text) + "\" is not written as a time of day", "a time such as 09:40", "");
        }
        return text;
    }

    static String shown(String text) {
        return gaugeglass.engine.reading.Node.shortened(text);
    }
}
