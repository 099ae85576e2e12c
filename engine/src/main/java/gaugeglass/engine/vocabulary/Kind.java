package gaugeglass.engine.vocabulary;

/**
 * A kind of thing that is observed.
 *
 * @param id the name used in items, cards and messages
 * @param plural the heading in an inspection file
 * @param label the words for one of them, as they appear in sentences
 * @param placement how many there are, and who says so
 * @param parent the kind that a fixed set belongs to; empty otherwise
 * @param members the class name of the enum that lists a fixed set; empty otherwise
 * @param most the greatest number that is believed for a counted kind; 0 otherwise
 */
public record Kind(
        String id, String plural, String label, Placement placement, String parent, String members, int most) {

    /** How many of a kind there are, and who says so. */
    public enum Placement {
        /** One for the whole site; shared by every unit there. */
        SITE,
        /** The unit that is judged. */
        UNIT,
        /** As many as were counted on the unit. */
        COUNTED,
        /** The same set for every one of its parent. */
        FIXED
    }

    public static Kind site(String id, String label) {
        return new Kind(id, id, label, Placement.SITE, "", "", 0);
    }

    public static Kind unit(String id, String plural, String label) {
        return new Kind(id, plural, label, Placement.UNIT, "", "", 0);
    }

    public static Kind counted(String id, String plural, String label, int most) {
        return new Kind(id, plural, label, Placement.COUNTED, "", "", most);
    }

    public static Kind fixed(String id, String plural, String label, String parent, Class<? extends Enum<?>> members) {
        return new Kind(id, plural, label, Placement.FIXED, parent, members.getName(), 0);
    }

    public boolean isCounted() {
        return placement == Placement.COUNTED;
    }

    public boolean isFixed() {
        return placement == Placement.FIXED;
    }

    /** The id of the question that counts them. */
    public String countId() {
        return id + ".fitted";
    }
}
