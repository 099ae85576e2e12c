package gaugeglass.engine.observation;

import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.vocabulary.Component;
import gaugeglass.engine.vocabulary.ItemType;
import java.time.LocalDate;
import java.util.Optional;

/** Reads one answer as it is typed at a question, exactly as it would be read in a file. */
public final class AnswerText {
    private AnswerText() {}

    /**
     * What came of one typed text.
     *
     * @param value what was understood; empty where it was not
     * @param remark what had to be made of it, such as a year taken as its first day; may be empty
     * @param mistake what is wrong with it; empty where nothing is
     */
    public record Typed(Optional<Object> value, String remark, Optional<Mistake> mistake) {}

    /**
     * Reads the text for one part of an item.
     *
     * @param visit the day of the visit, after which no date may lie
     */
    public static Typed read(ItemType item, Component part, String text, LocalDate visit) {
        try {
            Values.Read read = Values.read(new Layout.Part(item, part), text.strip(), Optional.of(visit));
            return new Typed(Optional.of(read.value()), read.remark(), Optional.empty());
        } catch (Values.Unfit unfit) {
            return new Typed(
                    Optional.empty(),
                    "",
                    Optional.of(new Mistake("", 0, 0, "", unfit.getMessage(), unfit.expected, unfit.nearest)));
        }
    }
}
