package gaugeglass.engine.facts;

/**
 * How many of one kind of equipment are fitted; a fact of every session in which they were counted.
 *
 * @param kind the kind's id
 * @param number 0 or more
 */
public record Fitted(String kind, int number) {}
