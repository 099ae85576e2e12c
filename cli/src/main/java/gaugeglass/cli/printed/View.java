package gaugeglass.cli.printed;

import gaugeglass.cli.picture.Picture;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * Everything that a report says, in words and in order, as its template lays it out.
 *
 * @param title of the document
 * @param isForFile whether it is the full report for the file; the owner's otherwise
 * @param size the sheet of paper
 * @param css the style sheet
 * @param site the site in words
 * @param visited when, and by whom
 * @param note what was added about the visit; may be empty
 * @param foot what stands at the foot of each sheet
 * @param units each unit's part
 * @param appendix what only the report for the file has; empty lists otherwise
 * @param defers the line about who comes before this report
 */
record View(
        String title,
        boolean isForFile,
        PaperSize size,
        String css,
        String site,
        String visited,
        String note,
        String foot,
        List<Unit> units,
        Appendix appendix,
        String defers) {

    /**
     * One unit's part.
     *
     * @param anchor begins the ids of what belongs to it
     * @param name the unit in words
     * @param photos those that could be embedded or not, in the order of the answers
     * @param waived what is waived, with by whom and until when, and waivers that count for nothing
     * @param closing how many findings and checks there were
     */
    record Unit(
            String anchor,
            String name,
            List<Gate> gates,
            List<Degree> degrees,
            List<PutRight> putRight,
            List<Named> waived,
            List<Cause> causes,
            List<Picture> pictures,
            List<WorkLine> work,
            NotSeen notSeen,
            List<Photos.Photo> photos,
            List<Group> observed,
            List<Reckoned> reckoned,
            List<Outcome> outcomes,
            String closing) {
        /** The pictures as they lie beside one another. A row is kept on one sheet, and the next may begin another. */
        List<List<Picture>> pictureRows() {
            return rows(pictures, Picture::isWide);
        }

        /** The photos as they lie beside one another; what is said of a missing one has its own row. */
        List<List<Photos.Photo>> photoRows() {
            return rows(photos, photo -> !photo.missing().isEmpty());
        }

        private static <T> List<List<T>> rows(List<T> all, Predicate<T> isWide) {
            List<List<T>> rows = new ArrayList<>();
            boolean hasRoom = false;
            for (T one : all) {
                if (hasRoom && !isWide.test(one)) {
                    rows.get(rows.size() - 1).add(one);
                    hasRoom = false;
                } else {
                    rows.add(new ArrayList<>(List.of(one)));
                    hasRoom = !isWide.test(one);
                }
            }
            return rows;
        }
    }

    /**
     * One gate.
     *
     * @param question what may be done or not
     * @param answer in two or three words
     * @param isClear whether nothing was found against it
     * @param lead introduces the reasons; empty where there are none
     * @param more what stands below the reasons; may be empty
     */
    record Gate(String question, String answer, boolean isClear, String lead, List<String> reasons, String more) {}

    /** All standing findings of one urgency. */
    record Degree(String heading, boolean isStop, List<Finding> findings) {}

    /**
     * One finding.
     *
     * @param which the tags of what it is about, where the title only counts them; empty otherwise
     * @param cautions those that were not given in full further above
     * @param cautionsAbove the titles of those that were; may be empty
     * @param decided the owner's decisions; may be none
     * @param tail what only the report for the file adds
     */
    record Finding(
            int number,
            String title,
            String which,
            String arisen,
            List<String> seen,
            String why,
            String action,
            List<Caution> cautions,
            String cautionsAbove,
            List<String> disputes,
            List<String> decided,
            List<Named> tail) {}

    /** A warning. */
    record Caution(String title, String text) {}

    /** Something with its name before it. */
    record Named(String name, String text) {}

    /**
     * What was put right.
     *
     * @param which the tags of what it was, where the title only counts them; empty otherwise
     */
    record PutRight(
            String title, String which, String was, List<String> found, List<String> retest, List<Named> tail) {}

    record Cause(String sentence, List<Named> points) {}

    /**
     * What is not known.
     *
     * @param lead how much it is; empty where nothing is missing
     * @param questions those shown
     * @param more how many are not shown, in words; may be empty
     */
    record NotSeen(String lead, List<Question> questions, String more) {}

    /** A missing answer. */
    record Question(String asked, String reason, boolean holdsGate, String place) {}

    /**
     * Observations under one heading.
     *
     * @param isByTag whether each row is all that was seen of one thing; one observation otherwise
     */
    record Group(String heading, boolean isByTag, List<Observed> rows) {}

    record Observed(String question, String found, String left, List<String> notes) {}

    /** A figure that was worked out. */
    record Reckoned(String what, String value, String formula, List<String> from) {}

    record Outcome(String rule, String title, String outcome, String missing) {}

    /** What only the report for the file has, for the whole visit. */
    record Appendix(List<Limit> limits, List<Earlier> earlier, List<String> remarks, List<Named> rulebook) {}

    record Limit(String id, String value, String meaning, String setBy) {}

    record Earlier(String what, String unit, String urgency, String foundOn, String decision) {}
}
