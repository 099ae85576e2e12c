package gaugeglass.cli.printed;

import gaugeglass.engine.Assessment.Ref;
import gaugeglass.engine.book.Urgency;
import gaugeglass.engine.observation.Inspection.Decided;
import java.util.List;

/**
 * One line of work: what puts some findings right together.
 *
 * @param number its place in the list, from 1
 * @param unit the unit's id
 * @param urgency of the most urgent finding
 * @param remedy the id of the work; empty where the finding has none and its advice stands in for it
 * @param work as an order line
 * @param about what it is done to, in words; empty for the unit as a whole
 * @param things the same in one phrase, which of many things names only their number
 * @param findings what it puts right, most urgent first
 * @param titles the findings in words, in the same order
 * @param parts what has to be bought for it
 * @param takeAlong what has to be taken along, once for all of it
 * @param decisions what the owner decided about them, in the same order; may be fewer
 */
record WorkLine(
        int number,
        String unit,
        Urgency urgency,
        String remedy,
        String work,
        List<String> about,
        String things,
        List<Ref> findings,
        List<String> titles,
        List<Part> parts,
        List<String> takeAlong,
        List<Decision> decisions) {

    /**
     * What is needed for each of some things.
     *
     * @param what it, in words
     * @param subjects the tags of the things; one empty tag for the unit
     */
    record Part(String what, List<String> subjects) {
        int number() {
            return subjects.size();
        }

        /** With how many of it, where that is more than one. */
        String told() {
            return number() == 1 ? what : number() + " x " + what;
        }
    }

    /** A decision with what it is about in words. */
    record Decision(String about, Decided decided) {}

    /** Whether every finding of this line has been decided upon. */
    boolean isDecided() {
        return decisions.size() == findings.size();
    }

    /** How soon, in words. */
    String soon() {
        return gaugeglass.cli.report.Urgencies.heading(urgency);
    }

    /** Decisions in words; all alike are told once. */
    List<String> decided() {
        boolean same = isDecided()
                && decisions.stream().map(one -> told(one.decided())).distinct().count() == 1;
        return same
                ? List.of(told(decisions.get(0).decided()))
                : decisions.stream()
                        .map(one -> one.about() + ": " + told(one.decided()))
                        .toList();
    }

    /** One decision as a sentence without a full stop. */
    static String told(Decided decided) {
        return gaugeglass.engine.text.Words.of(decided.decision()) + " by " + decided.by() + " on " + decided.on()
                + (decided.note().isEmpty() ? "" : " (" + decided.note() + ")");
    }
}
