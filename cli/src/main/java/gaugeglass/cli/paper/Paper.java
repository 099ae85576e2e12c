package gaugeglass.cli.paper;

import gaugeglass.engine.text.Plain;
import java.nio.charset.CharsetEncoder;
import java.util.ArrayList;
import java.util.List;

/**
 * Text laid out in columns for one screen.
 *
 * <p>Everything passes through one place that breaks lines between words and makes characters harmless: control
 * characters are written out, and so is what the screen's character set does not have.
 */
public final class Paper {
    private final Screen screen;
    private final CharsetEncoder encoder;
    private final StringBuilder text = new StringBuilder(4096);

    public Paper(Screen screen) {
        this.screen = screen;
        this.encoder = screen.charset().newEncoder();
    }

    /** A line without anything on it; never two in a row. */
    public void gap() {
        int length = text.length();
        if (length > 1 && !(text.charAt(length - 1) == '\n' && text.charAt(length - 2) == '\n')) {
            text.append('\n');
        }
    }

    /** A line across the whole screen. */
    public void rule(char c) {
        text.append(String.valueOf(c).repeat(screen.width())).append('\n');
    }

    /** Words from the left edge. */
    public void line(String words, Style style) {
        hanging("", "", words, style);
    }

    /** Words from an indent. */
    public void indented(int indent, String words) {
        String blank = " ".repeat(indent);
        hanging(blank, blank, words, Style.PLAIN);
    }

    /** Words that begin after a lead; further lines begin below the first word. */
    public void hanging(String lead, String words, Style style) {
        hanging(lead, " ".repeat(lead.length()), words, style);
    }

    /** Words that begin after a lead; further lines begin after another one. */
    public void hanging(String lead, String further, String words, Style style) {
        int room = Math.max(10, screen.width() - Math.max(lead.length(), further.length()));
        String before = lead;
        for (String line : broken(words, room)) {
            String whole = before + line;
            int end = whole.length();
            while (end > 0 && whole.charAt(end - 1) == ' ') {
                end--;
            }
            if (screen.colour()) {
                text.append(style.on()).append(whole, 0, end).append(style.off());
            } else {
                text.append(whole, 0, end);
            }
            text.append('\n');
            before = further;
        }
    }

    /** Appends words as they are. */
    public void raw(String words) {
        text.append(words);
    }

    private List<String> broken(String words, int room) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder(room);
        int used = 0;
        int from = 0;
        int length = words.length();
        while (from < length) {
            if (isBlank(words.charAt(from))) {
                from++;
                continue;
            }
            int to = from;
            while (to < length && !isBlank(words.charAt(to))) {
                to++;
            }
            String word = shown(words.substring(from, to));
            from = to;
            int width = width(word);
            if (used > 0 && used + 1 + width > room) {
                lines.add(line.toString());
                line.setLength(0);
                used = 0;
            }
            if (used > 0) {
                line.append(' ');
                used++;
            }
            while (width > room) {
                int cut = fitting(word, room);
                lines.add(word.substring(0, cut));
                word = word.substring(cut);
                width = width(word);
            }
            line.append(word);
            used += width;
        }
        if (used > 0 || lines.isEmpty()) {
            lines.add(line.toString());
        }
        return lines;
    }

    /** Only what ends a word in writing; a no-break space keeps its words together. */
    private static boolean isBlank(char c) {
        return c == ' ' || c == '\n' || c == '\r' || c == '\t';
    }

    /** One word as this screen can show it. */
    private String shown(String word) {
        String plain = Plain.of(word);
        boolean ascii = true;
        for (int i = 0; i < plain.length() && ascii; i++) {
            ascii = plain.charAt(i) < 0x80;
        }
        if (ascii || encoder.canEncode(plain)) {
            return plain;
        }
        StringBuilder out = new StringBuilder(plain.length() + 8);
        plain.codePoints().forEach(point -> {
            String one = Character.toString(point);
            if (encoder.canEncode(one)) {
                out.append(one);
            } else {
                String near = nearest(point);
                out.append(near.isEmpty() ? written(point) : near);
            }
        });
        return out.toString();
    }

    private static String written(int point) {
        StringBuilder out = new StringBuilder();
        for (char c : Character.toChars(point)) {
            String hex = Integer.toHexString(c);
            out.append("\\u").append("0000", 0, 4 - hex.length()).append(hex);
        }
        return out.toString();
    }

    /** Typographer's marks have a typewriter's form; a letter is never replaced by another. */
    private static String nearest(int point) {
        return switch (point) {
            case 0x2010, 0x2011, 0x2012, 0x2013, 0x2014, 0x2212 -> "-";
            case 0x2018, 0x2019, 0x201A, 0x2032 -> "'";
            case 0x201C, 0x201D, 0x201E, 0x2033 -> "\"";
            case 0x2026 -> "...";
            case 0x00A0, 0x202F, 0x2007 -> " ";
            case 0x00D7 -> "x";
            default -> "";
        };
    }

    private static int width(String word) {
        int width = 0;
        for (int i = 0; i < word.length(); ) {
            int point = word.codePointAt(i);
            width += columns(point);
            i += Character.charCount(point);
        }
        return width;
    }

    private static int fitting(String word, int room) {
        int used = 0;
        int i = 0;
        while (i < word.length()) {
            int point = word.codePointAt(i);
            used += columns(point);
            if (used > room) {
                break;
            }
            i += Character.charCount(point);
        }
        return Math.max(i, Character.charCount(word.codePointAt(0)));
    }

    /** How many columns a character takes on a terminal. */
    private static int columns(int point) {
        if (point < 0x300) {
            return 1;
        }
        int kind = Character.getType(point);
        if (kind == Character.NON_SPACING_MARK || kind == Character.ENCLOSING_MARK) {
            return 0;
        }
        boolean wide = point >= 0x1100 && point <= 0x115F
                || point >= 0x2E80 && point <= 0xA4CF
                || point >= 0xAC00 && point <= 0xD7A3
                || point >= 0xF900 && point <= 0xFAFF
                || point >= 0xFE30 && point <= 0xFE6F
                || point >= 0xFF00 && point <= 0xFF60
                || point >= 0xFFE0 && point <= 0xFFE6
                || point >= 0x1F300 && point <= 0x1FAFF
                || point >= 0x20000 && point <= 0x3FFFD;
        return wide ? 2 : 1;
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
