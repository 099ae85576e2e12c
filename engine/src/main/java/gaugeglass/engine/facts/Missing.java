package gaugeglass.engine.facts;

/**
 * An answer that is wanting.
 *
 * @param item the item's id, or the id of the question that counts a kind
 * @param subject the tag it would be about; empty for the unit and the site
 * @param reason why there is none: empty where nobody was asked or said, else the reason given
 */
public record Missing(String item, String subject, String reason) implements Comparable<Missing> {
    @Override
    public int compareTo(Missing other) {
        int order = item.compareTo(other.item);
        if (order == 0) {
            order = subject.compareTo(other.subject);
        }
        return order == 0 ? reason.compareTo(other.reason) : order;
    }
}
