package gaugeglass.cli.fleet;

import gaugeglass.engine.Assessment.Due;
import gaugeglass.steam.reckoned.MakeUpYear;
import java.time.LocalDate;
import java.util.List;

/**
 * What is counted of one visit; made beside others on any thread, and small.
 *
 * @param site the site's id
 * @param siteName its name; may be empty
 * @param visited the day of the visit
 * @param date the day for which it was judged
 * @param units what is counted of each unit
 */
public record Summary(String site, String siteName, LocalDate visited, LocalDate date, List<Unit> units) {

    /**
     * What is counted of one unit.
     *
     * @param id its id; empty where the visit describes none
     * @param testFiring the ordinal of that permit
     * @param release the ordinal of that permit
     * @param found each practice that stands, as {@link Found} packs it, in ascending order
     * @param counts how many findings stand of each urgency, most urgent first
     * @param words for each practice, by its number, the ordinal of what became of it; -1 where nothing is counted
     * @param open the answers that are missing, each once
     * @param due what falls due
     * @param water what its meter tells of its make-up, year by year
     */
    record Unit(
            String id,
            int testFiring,
            int release,
            char[] found,
            char[] counts,
            byte[] words,
            List<Open> open,
            List<Due> due,
            List<MakeUpYear> water) {}

    /**
     * A question without an answer.
     *
     * @param item what was asked, as its number
     * @param isUnread whether somebody looked, and it could not be read
     * @param holdsGate whether it keeps a permit from being known
     */
    record Open(int item, boolean isUnread, boolean holdsGate) {}
}
