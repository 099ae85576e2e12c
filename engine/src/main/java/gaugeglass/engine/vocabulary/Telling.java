package gaugeglass.engine.vocabulary;

import java.util.List;

/**
 * Tells an answer from what earlier visits found, where an inspection holds that. The question may also be asked: it is
 * where nothing is known of earlier visits, as when their reports are on paper.
 */
public interface Telling {
    /** The record class of the answer; it carries {@link Item}, and is observed, not reckoned. */
    Class<? extends Record> gives();

    /**
     * Tells the answers.
     *
     * @param earlier every finding of earlier visits to the unit that is still to be thought of; may be none
     * @param tags the pieces of equipment that the question is about, as they are described; empty where it is about the
     *     unit
     * @return one for each tag, or one for the unit; none where earlier findings do not tell it
     */
    List<? extends Record> tell(List<Earlier> earlier, List<String> tags);
}
