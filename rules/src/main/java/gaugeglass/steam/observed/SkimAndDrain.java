package gaugeglass.steam.observed;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Stage;
import java.util.List;

/** How the boiler's water can be skimmed and drained, and whether it needs it. */
public final class SkimAndDrain {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS = List.of(
            SkimTapping.class,
            SkimRecord.class,
            BoilerWaterLook.class,
            DrainFitted.class,
            DrainSize.class,
            DrainAction.class,
            DrainOutlet.class,
            DrainTemperature.class);

    private SkimAndDrain() {}

    /** Whether the boiler can be skimmed. */
    public enum SkimOpening {
        USABLE,
        TOO_SMALL,
        NONE
    }

    /** The tapping from which the water's surface is skimmed. */
    @Item(
            id = "skim.tapping",
            of = "boiler",
            stage = Stage.COLD,
            carried = true,
            ask = "Is there a tapping at the water line from which the boiler can be skimmed, and is it large enough?",
            look =
                    "At the line, in the open, large enough for the maker's skim pipe. Behind a control it is no use: none.")
    public record SkimTapping(SkimOpening opening) {}

    /** Whether the boiler was skimmed after the last work on its pipes. */
    public enum SkimSincePipework {
        SKIMMED_SINCE,
        NOT_SKIMMED_SINCE
    }

    /** Whether the boiler was skimmed after pipes, valves or the boiler itself were new. */
    @Item(
            id = "skim.since-pipework",
            of = "boiler",
            stage = Stage.COLD,
            ask = "Was the boiler skimmed after the last new boiler, pipe or valve was put in?",
            look = "Cutting oil comes back with the water for weeks. The log, the work orders, bright threads.",
            unreadBecause = {"no record", "nobody to ask"})
    public record SkimRecord(SkimSincePipework since) {}

    /** How a sample of the boiler's water looks. */
    public enum WaterLook {
        CLEAR,
        DIRTY,
        OILY
    }

    /** How the boiler's water looks in a jar. */
    @Item(
            id = "skim.sample",
            of = "boiler",
            stage = Stage.COLD,
            ask = "How does water drawn from the glass drain look in a clean jar?",
            look =
                    "After the first rush. A rainbow, a film or froth that stays is oily; rust alone in the first cupful is not dirty.",
            unreadBecause = {"no sample drawn"})
    public record BoilerWaterLook(WaterLook look) {}

    /** Whether there is a bottom drain. */
    public enum DrainPresence {
        FITTED,
        NOT_FITTED
    }

    /** Whether the boiler has a drain with a valve at its lowest point. */
    @Item(
            id = "drain.presence",
            of = "boiler",
            stage = Stage.COLD,
            structural = true,
            carried = true,
            ask = "Has the boiler a drain with a valve at its lowest water space?")
    public record DrainFitted(DrainPresence presence) {}

    /** The nominal size of the drain. */
    @Item(
            id = "drain.size",
            of = "boiler",
            stage = Stage.COLD,
            carried = true,
            ask = "What nominal pipe size is the bottom drain, at its narrowest?",
            unreadBecause = {"behind insulation"})
    public record DrainSize(
            @Measured(unit = Unit.INCH, from = "0.25", to = "6")
            Quantity nominal) {}

    /** What the drain does when it is opened and shut. */
    public enum DrainRun {
        RUNS_AND_SHUTS,
        RUNS_POORLY,
        DOES_NOT_RUN,
        DRIPS_WHEN_SHUT
    }

    /** What the drain does when it is tried. */
    @Item(
            id = "drain.action",
            of = "boiler",
            stage = Stage.COLD,
            ask = "Opened on the cold boiler, does the bottom drain run freely, and does it shut tight again?",
            look = "A bucket and a quarter of a minute are enough.",
            unreadBecause = {"not tried", "boiler not cold"})
    public record DrainAction(DrainRun run) {}

    /** Where drained water goes. */
    public enum DrainDischarge {
        /** It is drained cold only, to where cold water may go. */
        DRAINED_COLD,
        /** Through a vessel or a mixing valve that cools it. */
        COOLED_FIRST,
        /** Caught in a vessel and carried. */
        BUCKET,
        HOT_TO_SEWER,
        WHERE_PEOPLE_PASS
    }

    /** Where water that is blown down or drained goes. */
    @Item(
            id = "drain.outlet",
            of = "boiler",
            stage = Stage.COLD,
            structural = true,
            carried = true,
            ask = "Where does the water go that is blown down or drained?",
            look =
                    "Follow the pipe. An open end from which it can reach people: where-people-pass. Several ways: the worst.")
    public record DrainOutlet(DrainDischarge outlet) {}

    /** How hot water goes into the sewer. */
    @Item(
            id = "drain.temperature",
            of = "boiler",
            stage = Stage.COLD,
            ask = "How hot is blown-down water at the most where it enters the sewer?",
            look = "Measured at the last hot blowdown, or the boiler water's own temperature.",
            unreadBecause = {"never measured"})
    public record DrainTemperature(
            @Measured(unit = Unit.FAHRENHEIT, from = "33", to = "260")
            Quantity hottest) {}
}
