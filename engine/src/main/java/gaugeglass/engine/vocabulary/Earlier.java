package gaugeglass.engine.vocabulary;

import java.time.LocalDate;

/**
 * A finding of an earlier visit, with what the owner decided about it.
 *
 * @param rule the card's id; it may have been retired since
 * @param unit the unit's id
 * @param subject the tag it was about; empty for the unit
 * @param urgency the urgency then, as a word
 * @param foundOn the day of the visit that found it first
 * @param decision what the owner decided
 * @param decidedBy who decided; empty where nobody did
 * @param decidedOn when, as typed in the form {@code 2026-09-14}; empty where nobody did
 */
public record Earlier(
        String rule,
        String unit,
        String subject,
        String urgency,
        LocalDate foundOn,
        Decision decision,
        String decidedBy,
        String decidedOn) {}
