package gaugeglass.engine.book;

/**
 * What was laid over a rulebook, so that a result can say by what it was judged.
 *
 * @param name its short name, the same over all its versions
 * @param title its name for people
 * @param version its version
 * @param level whose it is, as a word
 * @param hash a digest of its files
 */
public record LaidOn(String name, String title, String version, String level, String hash) {
    /** Its title and version, as people say it. */
    public String told() {
        return title + " " + version + " (" + level + ")";
    }
}
