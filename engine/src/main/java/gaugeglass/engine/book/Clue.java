package gaugeglass.engine.book;

/**
 * One piece of evidence in a diagnosis: a card with a given outcome.
 *
 * @param card the card's id
 * @param outcome whether it must have been found, or ruled out
 * @param weight how much it tells, 1 to 3; a clue of weight 3 is enough by itself
 * @param says the evidence in words
 */
public record Clue(String card, When outcome, int weight, String says) {

    /** What must have become of the card. */
    public enum When {
        FOUND,
        IN_ORDER
    }
}
