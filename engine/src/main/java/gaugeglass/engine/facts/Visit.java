package gaugeglass.engine.facts;

import java.time.LocalDate;

/**
 * The visit that is judged; a fact of every session.
 *
 * @param date its day
 */
public record Visit(LocalDate date) {}
