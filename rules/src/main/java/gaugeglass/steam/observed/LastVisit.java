package gaugeglass.steam.observed;

import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Of;
import gaugeglass.engine.vocabulary.Stage;
import java.time.LocalDate;
import java.util.List;

/**
 * What last visit's report says, and what the owner made of it.
 *
 * <p>Where an inspection holds the findings of earlier visits they tell all of this, and nobody is asked; the questions
 * are for reports on paper.
 */
public final class LastVisit {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS = List.of(
            OwnerDecisions.class,
            Deferral.class,
            DeferredSince.class,
            FeederLastVisit.class,
            CutoffLastVisit.class,
            ControlLastVisit.class,
            SafetyValveLastVisit.class);

    private LastVisit() {}

    /** Whether the owner decided on what was found. */
    public enum OwnerWord {
        ALL_DECIDED,
        SOME_NOT_DECIDED,
        NOTHING_WAS_FOUND
    }

    /** Whether the owner's decision stands beside each finding of the last visit. */
    @Item(
            id = "records.owner-decisions",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "Does the owner's decision stand beside each finding of the last visit: done, deferred or refused?",
            look = "It counts with a name and a day.",
            unreadBecause = {"last report not at hand"})
    public record OwnerDecisions(OwnerWord decided) {}

    /** Whether something that was found is put off. */
    public enum PutOff {
        NOTHING_DEFERRED,
        SOMETHING_DEFERRED
    }

    /** Whether the owner deferred anything that is not done yet. */
    @Item(
            id = "records.deferral",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "Has the owner deferred anything that was found, and is it not done yet?",
            look = "What was refused is not deferred.",
            unreadBecause = {"last report not at hand"})
    public record Deferral(PutOff state) {}

    /** When that which was deferred longest was first found. */
    @Item(
            id = "records.deferred-since",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "Of what is deferred: on which day was the oldest first found?",
            look = "The first report in which it stands, not the last.",
            unreadBecause = {"older reports not at hand"})
    public record DeferredSince(LocalDate on) {}

    /** How a device came through the last visit. */
    public enum LastVisitResult {
        /** It worked, was not tried, or was not there yet. */
        DID_NOT_FAIL,
        FAILED_AND_MENDED,
        FAILED_AND_LEFT
    }

    /** Whether the feeder failed on the last visit. */
    @Item(
            id = "feeder.last-visit",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "Had the automatic feeder failed or locked out on the last visit, and was it mended?",
            look = "Mended: cleaned, set or replaced. Where there was none it did not fail.",
            unreadBecause = {"last report not at hand"})
    public record FeederLastVisit(LastVisitResult result) {}

    /** Whether this cutoff failed on the last visit. */
    @Item(
            id = "cutoff.last-visit",
            of = "cutoff",
            stage = Stage.ARRIVAL,
            ask = "Had the cutoff at this place failed a test on the last visit, and was it mended?",
            look = "Mended: cleaned, set, rewired or replaced.",
            unreadBecause = {"last report not at hand"})
    public record CutoffLastVisit(@Of String which, LastVisitResult result) {}

    /** Whether this control failed on the last visit. */
    @Item(
            id = "control.last-visit",
            of = "control",
            stage = Stage.ARRIVAL,
            ask = "Had the control at this place failed to stop the burner on the last visit, and was it mended?",
            look = "Mended: set, its siphon cleared, or replaced.",
            unreadBecause = {"last report not at hand"})
    public record ControlLastVisit(@Of String which, LastVisitResult result) {}

    /** Whether this safety valve was found unfit on the last visit. */
    @Item(
            id = "safety-valve.last-visit",
            of = "safety-valve",
            stage = Stage.COLD,
            ask = "Had the safety valve at this place leaked or stuck on the last visit, and was it replaced?",
            unreadBecause = {"last report not at hand"})
    public record SafetyValveLastVisit(@Of String which, LastVisitResult result) {}
}
