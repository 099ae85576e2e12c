package gaugeglass.steam.observed;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Stage;
import java.time.LocalDate;
import java.util.List;

/** How the boiler's body and its flue are found, and what stands too close to it. */
public final class BoilerCondition {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS = List.of(
            FluewaysRecord.class,
            FluewaysCleaned.class,
            StoredAgainstBoiler.class,
            ServiceClearance.class,
            FlueSeen.class,
            BoilerStructure.class,
            BoilerLeakSeen.class,
            FluewaySoot.class,
            FluePlume.class,
            FreshWaterHeated.class);

    private BoilerCondition() {}

    /** Whether something that burns lies against the boiler. */
    public enum StoredGoods {
        NONE,
        COMBUSTIBLES_AGAINST_IT
    }

    /** Whether combustibles are stored against the boiler. */
    @Item(
            id = "clearance.stored",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "Is anything that burns stored against the boiler or its flue?")
    public record StoredAgainstBoiler(StoredGoods goods) {}

    /** The narrowest way to a side that is serviced. */
    @Item(
            id = "clearance.service",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "How wide is the narrowest way to a side of the boiler that must be reached?",
            look = "Burner, clean-out doors, cutoffs, glass, blow-off.")
    public record ServiceClearance(
            @Measured(unit = Unit.INCH, from = "0", to = "600")
            Quantity narrowest) {}

    /** How the flue is found. */
    public enum FlueState {
        SOUND,
        DISCONNECTED,
        RUSTED_THROUGH,
        BLOCKED,
        SPILL_MARKS
    }

    /** The worst that is seen of the flue from the boiler to the chimney's foot. */
    @Item(
            id = "flue.state",
            of = "boiler",
            stage = Stage.COLD,
            ask = "What is the worst to be seen of the flue, from the boiler to the chimney?",
            look =
                    "Joints, screws, rust from inside, the chimney's clean-out; soot or melted plastic by the draft hood.",
            unreadBecause = {"boxed in", "chimney not opened"})
    public record FlueSeen(FlueState state) {}

    /** How the boiler's body is found. */
    public enum StructureState {
        SOUND,
        WASTED,
        CRACKED,
        WEEPING,
        MOUNTING_BROKEN,
        UNAPPROVED_REPAIR
    }

    /** The worst that is seen of the boiler's pressure parts and mountings. */
    @Item(
            id = "condition.structure",
            of = "boiler",
            stage = Stage.COLD,
            ask = "What is the worst to be seen of the boiler's pressure parts and mountings?",
            look = "Doors open, lamp in: sections, tube ends, mud legs, seams, stays, nozzles, supports.",
            unreadBecause = {"doors not opened"})
    public record BoilerStructure(StructureState worst) {}

    /** Where the boiler loses water. */
    public enum BoilerLeak {
        NONE,
        WATER_IN_FLUE_PASSAGES,
        SECTION_OR_TUBE,
        FILL_TEST_LEAKED
    }

    /** Whether the boiler itself loses water. */
    @Item(
            id = "condition.leak",
            of = "boiler",
            stage = Stage.COLD,
            ask = "Does the boiler itself lose water?",
            look = "Before anything is lit: lamp into the flue passages and under the base. A fill test is made on a"
                    + " boiler that is cold through and through, and on no other.",
            unreadBecause = {"doors not opened"})
    public record BoilerLeakSeen(BoilerLeak leak) {}

    /** How thick the soot lies where the gases pass. */
    @Item(
            id = "condition.soot",
            of = "boiler",
            stage = Stage.COLD,
            ask = "How thick does the soot lie in the flueways, where it is thickest?",
            look =
                    "Doors and covers off, lamp and mirror; scratch it with a rule. A grey bloom that wipes off is 0 in.",
            unreadBecause = {"doors not opened"})
    public record FluewaySoot(
            @Measured(unit = Unit.INCH, from = "0", to = "3")
            Quantity thickest) {}

    /** Whether the last cleaning is dated. */
    public enum FluewaysNote {
        DATED,
        NOT_ON_RECORD
    }

    /** Whether it is on record when the flueways were last cleaned. */
    @Item(
            id = "condition.flueways-record",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "Is it on record when the flueways were last cleaned?",
            look = "Opened, looked through and found clean counts. Log, tag, work order.")
    public record FluewaysRecord(FluewaysNote note) {}

    /** When the flueways were last cleaned. */
    @Item(
            id = "condition.flueways-cleaned",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "When were the flueways last cleaned, or opened and found clean?")
    public record FluewaysCleaned(LocalDate on) {}

    /** What comes out of the chimney. */
    public enum Plume {
        NONE,
        CLEARED_AS_IT_WARMED,
        STAYED_WHITE,
        STAYED_WHITE_BUT_FILL_TEST_HELD
    }

    /** Whether the chimney shows a white plume while the boiler fires. */
    @Item(
            id = "condition.plume",
            of = "boiler",
            stage = Stage.FIRING,
            ask = "Does the chimney show a white plume, and does it clear as boiler and flue warm up?",
            unreadBecause = {"chimney not in sight", "dark outside"})
    public record FluePlume(Plume plume) {}

    /** What became of fresh water. */
    public enum FreshWater {
        NONE_FED,
        STEAMED,
        LEFT_COLD
    }

    /** Whether water that was fed on this visit or after lay-up was heated at once. */
    @Item(
            id = "condition.fresh-water",
            of = "boiler",
            stage = Stage.HOT,
            ask = "If much fresh water went in, on this visit or since it was laid up: was it steamed straight away?",
            look = "Much is more than the glass shows from end to end.",
            unreadBecause = {"not known when it was filled"})
    public record FreshWaterHeated(FreshWater after) {}
}
