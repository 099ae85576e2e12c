package gaugeglass.engine.book;

/**
 * A warning shown wherever it applies.
 *
 * @param id its name
 * @param title a few words
 * @param text the warning itself
 */
public record Caution(String id, String title, String text) {}
