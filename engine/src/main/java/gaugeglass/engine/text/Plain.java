package gaugeglass.engine.text;

/**
 * Makes what somebody typed harmless to show: no control characters, no direction tricks, one line.
 */
public final class Plain {
    private Plain() {}

    /**
     * The text with each control or invisible formatting character shown as {@code \}{@code uXXXX}.
     */
    public static String of(String text) {
        StringBuilder plain = null;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            int kind = Character.getType(c);
            boolean bad = c < ' '
                    || c >= 0x7F && c < 0xA0
                    || kind == Character.FORMAT
                    || kind == Character.LINE_SEPARATOR
                    || kind == Character.PARAGRAPH_SEPARATOR
                    || kind == Character.SURROGATE && !isPaired(text, i);
            if (bad && plain == null) {
                plain = new StringBuilder(text.length() + 16).append(text, 0, i);
            }
            if (plain != null) {
                if (bad) {
                    String hex = Integer.toHexString(c);
                    plain.append("\\u").append("0000", 0, 4 - hex.length()).append(hex);
                } else {
                    plain.append(c);
                }
            }
        }
        return plain == null ? text : plain.toString();
    }

    private static boolean isPaired(String text, int i) {
        char c = text.charAt(i);
        if (Character.isHighSurrogate(c)) {
            return i + 1 < text.length() && Character.isLowSurrogate(text.charAt(i + 1));
        }
        return i > 0 && Character.isHighSurrogate(text.charAt(i - 1));
    }
}
