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
    public static final List<Class<? extends Record>> ITEMS =
            List.of(FeederFitted.class, FeederPower.class, FeederSupply.class, FeederAction.class, FeederLevel.class);

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
        DEAD
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
            ask = "Does the automatic feeder have power, as found?",
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
}
