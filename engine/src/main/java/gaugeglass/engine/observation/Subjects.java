package gaugeglass.engine.observation;

import gaugeglass.engine.text.Words;
import java.util.List;

/** How a subject's keys are written as one word. */
public final class Subjects {
    /** The subject of what is only about the unit or the site. */
    public static final String UNIT = "";

    /** The tag of those that must be there but were not described. */
    public static final String NOT_LISTED = "(not listed)";

    private Subjects() {}

    /** {@code TAG}, {@code TAG/member}, or nothing where there are no keys. */
    public static String of(List<?> keys) {
        StringBuilder subject = new StringBuilder();
        for (Object key : keys) {
            if (subject.length() > 0) {
                subject.append('/');
            }
            subject.append(key instanceof Enum<?> member ? Words.of(member) : key);
        }
        return subject.toString();
    }
}
