package gaugeglass.engine.book;

import java.util.List;

/**
 * A likely cause that several findings point to together. It explains findings and never hides one.
 *
 * @param id its name
 * @param cause the cause, as a short sentence
 * @param about the kind of thing it is about; clues about another kind count for every one
 * @param points evidence for
 * @param against evidence against
 * @param settledBy the id of the observation that would settle it
 * @param settle how to settle it, in words
 * @param enough the least weight of evidence for, before it is put forward
 */
public record Diagnosis(
        String id,
        String cause,
        String about,
        List<Clue> points,
        List<Clue> against,
        String settledBy,
        String settle,
        int enough) {}
