package gaugeglass.engine.history;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Versions of a rulebook: three whole numbers with dots, and {@code -SNAPSHOT} behind one that is still being worked on. */
public final class Versions {
    private static final Pattern VERSION = Pattern.compile("(\\d{1,4})\\.(\\d{1,4})\\.(\\d{1,4})(-SNAPSHOT)?");

    private Versions() {}

    /** Whether a text is one. */
    public static boolean isVersion(String text) {
        return VERSION.matcher(text).matches();
    }

    /** Whether it is one that was released, and so never changes again. */
    public static boolean isReleased(String text) {
        Matcher matcher = VERSION.matcher(text);
        return matcher.matches() && matcher.group(4) == null;
    }

    /**
     * Orders two versions; the one in work stands before its release.
     *
     * @throws IllegalArgumentException when one is no version
     */
    public static int compare(String one, String other) {
        Matcher first = VERSION.matcher(one);
        Matcher second = VERSION.matcher(other);
        if (!first.matches() || !second.matches()) {
            throw new IllegalArgumentException(one + " and " + other + " are not both versions");
        }
        for (int i = 1; i <= 3; i++) {
            int order = Integer.compare(Integer.parseInt(first.group(i)), Integer.parseInt(second.group(i)));
            if (order != 0) {
                return order;
            }
        }
        return Boolean.compare(first.group(4) == null, second.group(4) == null);
    }
}
