package gaugeglass.steam.observed;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Stage;
import java.util.List;

/** What is seen of the automatic water feeder. */
public final class Feeder {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS = List.of(
            FeederFitted.class,
            FeederPower.class,
            FeederSupply.class,
            FeederAction.class,
            FeederLevel.class,
            MakeUpEntry.class,
            BackflowProtection.class,
            FeedTightness.class,
            FeedTrial.class,
            FeedEnd.class);

    private Feeder() {}

    /** Whether water is made up by a device or by hand. */
    public enum MakeUpManner {
        AUTOMATIC,
        BY_HAND
    }

    /** Whether the feeder has the power it works with. */
    public enum FeederPowerState {
        LIVE,
        /** Worked by a float alone. */
        NONE_NEEDED,
        DEAD,
        /** It has power, and has locked itself out or shows a fault. */
        LOCKED_OUT
    }

    /** Whether water stands ready at the feeder. */
    public enum FeederSupplyState {
        READY,
        SHUT_OFF
    }

    /** Whether the feeder is at work. */
    public enum FeederActionState {
        FEEDING,
        NOT_FEEDING
    }

    /** Whether an automatic feeder is fitted. */
    @Item(
            id = "feeder.make-up",
            of = "boiler",
            stage = Stage.ARRIVAL,
            structural = true,
            ask = "Is water made up by an automatic feeder or feed pump, or by hand?")
    public record FeederFitted(MakeUpManner manner) {}

    /** The feeder's power on arrival. */
    @Item(
            id = "feeder.power",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "Does the automatic feeder have power, or has it locked itself out, as found?",
            look = "A fault light, a blinking code or a reset that stands out is locked-out.",
            unreadBecause = {"no light on it"})
    public record FeederPower(FeederPowerState state) {}

    /** The feeder's water supply on arrival. */
    @Item(
            id = "feeder.supply",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "Does water stand ready at the automatic feeder, its valves open, as found?")
    public record FeederSupply(FeederSupplyState state) {}

    /** What the feeder does on arrival. */
    @Item(
            id = "feeder.action",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "Is the automatic feeder feeding, as found?",
            look = "Its light, its sound, a meter that turns, a cold pipe. A feeder may wait out a delay first.")
    public record FeederAction(FeederActionState action) {}

    /** Where the feeder begins to feed. */
    @Item(
            id = "feeder.level",
            of = "boiler",
            stage = Stage.COLD,
            carried = true,
            ask = "How far above the lowest visible part of the glass does the automatic feeder begin to feed?",
            look = "Its mark, or the mark of the float that calls it. Below the glass is negative.",
            unreadBecause = {"no mark", "no maker's sheet"})
    public record FeederLevel(
            @Measured(unit = Unit.INCH, from = "-12", to = "24")
            Quantity height) {}

    /** Where make-up comes into boiler or system. */
    public enum EntryPlace {
        /** Into a return, or by a tapping of its own. */
        RETURN_OR_OWN_TAPPING,
        /** Through a feeder that its maker built in one with the cutoff's float chamber. */
        BUILT_IN_WITH_CUTOFF,
        CUTOFF_CHAMBER_OR_PIPING,
        GLASS_OR_COLUMN,
        SAFETY_VALVE_OPENING,
        /** Nothing is piped to it. */
        NO_CONNECTION
    }

    /** Where the make-up connection comes in. */
    @Item(
            id = "feeder.entry",
            of = "boiler",
            stage = Stage.COLD,
            structural = true,
            carried = true,
            ask = "Where does the make-up pipe come in?",
            look = "Follow it to its end. Filled by a hose that is taken away again: no-connection.",
            unreadBecause = {"pipe could not be followed"})
    public record MakeUpEntry(EntryPlace place) {}

    /** What keeps boiler water out of the drinking water. */
    public enum BackflowGuard {
        PREVENTER_AND_CHECK,
        PREVENTER_ONLY,
        CHECK_ONLY,
        NEITHER
    }

    /** What stands in the make-up pipe against water that runs backwards. */
    @Item(
            id = "feeder.backflow",
            of = "boiler",
            stage = Stage.COLD,
            carried = true,
            ask = "Does the make-up pipe have a backflow preventer, and a check valve near the boiler?",
            unreadBecause = {"behind insulation", "pipe could not be followed"})
    public record BackflowProtection(BackflowGuard guard) {}

    /** What the level does while all feed is shut. */
    public enum RestLevel {
        HELD,
        /** With feeder and bypass shut it rose, and stopped when a valve further up was shut too. */
        ROSE_UNTIL_SUPPLY_WAS_SHUT,
        ROSE_WITH_SUPPLY_SHUT_TOO
    }

    /** Whether feeder and bypass hold when shut. */
    @Item(
            id = "feeder.tightness",
            of = "boiler",
            stage = Stage.COLD,
            ask = "At rest, feeder and bypass shut, does the level hold over a quarter of an hour?",
            look =
                    "Mark the glass once the returns are home. If it rises, shut the supply too and mark it again; and a coil,"
                            + " if there is one.",
            unreadBecause = {"not tried", "no valve to shut"})
    public record FeedTightness(RestLevel level) {}

    /** Whether water came when it was called. */
    public enum FeedResult {
        WATER_CAME,
        NO_WATER
    }

    /** Whether the feeder delivers when it is called on purpose. */
    @Item(
            id = "feeder.trial",
            of = "boiler",
            stage = Stage.COLD,
            ask = "With the boiler cold through and through, was the feeder called on purpose, and did water come?",
            look =
                    "On no other boiler than a cold one whose level is proven. Wait out its delay; watch level or meter.",
            unreadBecause = {"boiler not cold", "not tried"})
    public record FeedTrial(FeedResult result) {}

    /** Where the level stands when the feeder has stopped and all water is home. */
    public enum EndLevel {
        AT_ITS_LINE,
        ABOVE_NORMAL_AFTER_FEED,
        ABOVE_NORMAL_AFTER_RETURNS
    }

    /** Where the level ends after a feed, and when the returns are home. */
    @Item(
            id = "feeder.end-level",
            of = "boiler",
            stage = Stage.HOT,
            ask = "Where does the level end when the feeder has stopped, and again when the returns are home?",
            unreadBecause = {"returns not waited for"})
    public record FeedEnd(EndLevel level) {}
}
