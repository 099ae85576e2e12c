package gaugeglass.cli.printed;

import java.util.List;

/**
 * A checklist as its printed page lays it out.
 *
 * @param title of the document
 * @param size the sheet of paper
 * @param css the style sheet
 * @param checklist the checklist's own heading
 * @param head what is written at the top, such as the site; an empty text leaves a line to write on
 * @param foot what stands at the foot of each sheet
 * @param units a part for each unit
 * @param stops what the answers marked as a stop mean
 * @param defers the line about who comes before this list
 */
record SheetView(
        String title,
        PaperSize size,
        String css,
        String checklist,
        List<View.Named> head,
        String foot,
        List<Unit> units,
        List<Stop> stops,
        String defers) {

    /** One unit's part: its name, empty to leave a line for it, and the stages of the visit. */
    record Unit(String name, List<Stage> stages) {}

    /**
     * One stage.
     *
     * @param gate what must be settled before it opens; empty where nothing stands before it
     */
    record Stage(String anchor, String heading, List<String> gate, List<Section> sections) {}

    /** Questions that are asked together, at least one, with what to know before; the text may be empty. */
    record Section(String heading, String intro, List<Question> questions) {}

    /**
     * One question.
     *
     * @param only where an earlier answer decides whether it is asked, which; may be empty
     * @param cautions those shown at this step
     * @param cautionAbove where the caution stands that was shown further above; may be empty
     * @param rows a line for each thing that it is asked of
     * @param toFill whether something is not answered, so that there is room to write
     */
    record Question(
            int number,
            String ask,
            String look,
            String only,
            List<View.Caution> cautions,
            String cautionAbove,
            List<Row> rows,
            boolean toFill) {}

    /**
     * The answer about one thing.
     *
     * @param label the thing; empty for the unit and the site
     * @param unread why it could not be read; empty where it was
     * @param left the answer as left; empty where nothing was changed
     * @param notes what was added, names of photos among it
     */
    record Row(String label, List<Part> parts, String unread, String left, List<String> notes) {}

    /**
     * One part of an answer.
     *
     * @param name of the part, where there are several
     * @param choices the words to choose from; none where something is written
     * @param hint the unit and the span, or how a date is written
     * @param stop which values are a stop; may be empty
     * @param written what was answered; empty where it was not
     */
    record Part(String name, List<Choice> choices, String hint, String stop, String written) {}

    /** One word to choose. */
    record Choice(String words, String meaning, boolean isTicked, boolean isStop) {}

    /** What a stop means. */
    record Stop(String title, List<String> answers, String action, List<String> cautions) {}
}
