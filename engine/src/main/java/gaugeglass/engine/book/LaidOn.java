package gaugeglass.engine.book;

import java.util.List;

/**
 * What was laid over a rulebook, so that a result can say by what it was judged.
 *
 * @param name its short name, the same over all its versions
 * @param title its name for people
 * @param version its version
 * @param level whose it is, as a word
 * @param hash a digest of its files
 * @param replaces the ids of the rulebook's checks in whose place it puts its own
 */
public record LaidOn(String name, String title, String version, String level, String hash, List<String> replaces) {
    public LaidOn {
        replaces = List.copyOf(replaces);
    }

    /** Its title and version, as people say it. */
    public String told() {
        String told = title + " " + version + " (" + level + ")";
        return replaces.isEmpty()
                ? told
                : told + ", with checks of its own in the place of " + String.join(" and ", replaces);
    }
}
