package gaugeglass.engine.book;

/**
 * One line of work; findings with the same remedy are put right together.
 *
 * @param id its name
 * @param work what is done, as an order line
 */
public record Remedy(String id, String work) {}
