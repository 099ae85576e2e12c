package gaugeglass.steam.observed;

import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Stage;
import java.util.List;

/** What the papers, and the tags on the boiler, say before it is touched. */
public final class Records {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS =
            List.of(EarlierFindings.class, LayupTag.class, LayupPapers.class, DeviceDates.class);

    private Records() {}

    /** What is still open from the last visit. */
    public enum OpenFinding {
        NONE_OPEN,
        STOP_OPEN,
        NOW_OPEN,
        NO_EARLIER_VISIT
    }

    /** The gravest finding of the last visit that nobody has signed off. */
    @Item(
            id = "records.open-finding",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "What is the gravest finding of the last visit without a closing record?",
            look = "A closing record says what was done, when and by whom.",
            unreadBecause = {"last report not at hand"})
    public record EarlierFindings(OpenFinding gravest) {}

    /** Whether a tag warns. */
    public enum WarningTag {
        NONE,
        HANGING
    }

    /** Whether a tag says that the boiler is drained, isolated or under repair. */
    @Item(
            id = "layup.tag",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "Does a tag say that the boiler is drained, isolated or under repair?",
            look = "Burner, switch, fuel valve, feed, doors. Leave it where it hangs.")
    public record LayupTag(WarningTag tag) {}

    /** Whether laying-up is written down. */
    public enum LayupNote {
        RECORDED,
        NOT_RECORDED
    }

    /** Whether it is written down how the boiler was laid up. */
    @Item(
            id = "layup.record",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask =
                    "Is it written down how the boiler was laid up: bowl cleaned, feeder off, wet and heated through, or dry?")
    public record LayupPapers(LayupNote note) {}

    /** Whether installation dates are known. */
    public enum DateRecord {
        ALL_RECORDED,
        SOME_NOT_RECORDED
    }

    /** Whether it is known when cutoffs, controls, feeder, traps and safety valves were put in. */
    @Item(
            id = "records.device-dates",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "Is it on record when each cutoff, control, feeder, trap and safety valve was put in?")
    public record DeviceDates(DateRecord note) {}
}
