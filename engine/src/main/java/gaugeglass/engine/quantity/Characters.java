package gaugeglass.engine.quantity;

import java.util.Locale;

/**
 * What single characters of a written quantity stand for: the typographic forms that phones and
 * office programs put in.
 */
final class Characters {

    private Characters() {}

    /** The ASCII sign that a typographic character is a form of, or nothing. */
    static String sign(char c) {
        return switch (c) {
            case '\u2010', '\u2011', '\u2012', '\u2013', '\u2212' -> "-";
            case '\u2044', '\u2215' -> "/";
            case '`', '\u2032', '\u2018', '\u2019', '\u201b', '\u00b4' -> "'";
            case '\u2033', '\u201c', '\u201d', '\u201e', '\u201f' -> "\"";
            case '\u00b0', '\u00ba', '\u02da' -> " deg ";
            case '\u2103' -> " deg C";
            case '\u2109' -> " deg F";
            default -> "";
        };
    }

    /** The plain digit of a raised or lowered 2 or 3, or nothing. */
    static String smallDigit(char c) {
        return switch (c) {
            case '\u00b2', '\u2082' -> "2";
            case '\u00b3' -> "3";
            default -> "";
        };
    }

    /** The fraction a single character stands for, or nothing. */
    static String fraction(char c) {
        return switch (c) {
            case '\u00bc' -> "1/4";
            case '\u00bd' -> "1/2";
            case '\u00be' -> "3/4";
            case '\u2150' -> "1/7";
            case '\u2151' -> "1/9";
            case '\u2152' -> "1/10";
            case '\u2153' -> "1/3";
            case '\u2154' -> "2/3";
            case '\u2155' -> "1/5";
            case '\u2156' -> "2/5";
            case '\u2157' -> "3/5";
            case '\u2158' -> "4/5";
            case '\u2159' -> "1/6";
            case '\u215a' -> "5/6";
            case '\u215b' -> "1/8";
            case '\u215c' -> "3/8";
            case '\u215d' -> "5/8";
            case '\u215e' -> "7/8";
            default -> "";
        };
    }

    /** Whether the character is a kind of space; a tab is one, a line break is not. */
    static boolean isSpace(char c) {
        return c == ' ' || c == '\t' || c >= 0x80 && Character.getType(c) == Character.SPACE_SEPARATOR;
    }

    /**
     * Whether the character has no shape of its own: controls, line breaks, invisible and private
     * ones.
     */
    static boolean isShapeless(char c) {
        if (c < 0x7f) {
            return c < ' ';
        }
        return switch (Character.getType(c)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.PRIVATE_USE,
                    Character.UNASSIGNED,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.NON_SPACING_MARK,
                    Character.ENCLOSING_MARK,
                    Character.COMBINING_SPACING_MARK -> true;
            default -> false;
        };
    }

    static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    static boolean isLetter(char c) {
        return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z';
    }

    /**
     * The character's number in Unicode, as messages name one that must not be shown: {@code
     * U+200B}.
     */
    static String codePoint(char c) {
        return "U+" + Integer.toHexString(0x10000 | c).substring(1).toUpperCase(Locale.ROOT);
    }
}
