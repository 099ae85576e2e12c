package gaugeglass.steam.observed;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Stage;
import java.util.List;

/** Whether the flue gas goes up the chimney. */
public final class DraftTests {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS = List.of(Spillage.class, SpillageTime.class);

    private DraftTests() {}

    /** What came out at the draft hood or regulator. */
    public enum SpilledGas {
        NONE,
        /** At first, while the chimney was cold. */
        STOPPED,
        STILL_SPILLING,
        /** The vent is closed from the burner to the open air. */
        NO_OPENING
    }

    /** Whether flue gas comes out into the room, with the house at its worst. */
    @Item(
            id = "draft.spillage",
            of = "boiler",
            stage = Stage.FIRING,
            ask =
                    "From a cold start, doors shut and every fan on: does flue gas come out at the draft hood, regulator or doors?",
            look =
                    "Smoke, a mirror or the meter all the way round. Set the house up first: room door shut, exhaust fans and"
                            + " dryer running, fireplace damper as people leave it.",
            unreadBecause = {"not fired", "worst case not set up"})
    public record Spillage(SpilledGas gas) {}

    /** How long flue gas came out before the chimney drew. */
    @Item(
            id = "draft.spillage-time",
            of = "boiler",
            stage = Stage.FIRING,
            ask = "How long after lighting did it stop coming out?",
            unreadBecause = {"not timed"})
    public record SpillageTime(
            @Measured(unit = Unit.MINUTE, from = "0", to = "60")
            Quantity after) {}
}
