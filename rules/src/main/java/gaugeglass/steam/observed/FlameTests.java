package gaugeglass.steam.observed;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Stage;
import java.util.List;

/** What is seen of a burner's safeguards while it lights, burns and goes out. */
public final class FlameTests {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS = List.of(
            PilotProof.class, Purge.class, FlameFailure.class, FlameFailureTime.class, FlameAfterShutdown.class);

    private FlameTests() {}

    /** What watches the flame of an atmospheric gas burner. */
    public enum PilotWatch {
        /** A pilot that always burns, and a thermocouple in it. */
        THERMOCOUPLE,
        /** A pilot or burner lit at each start, and its flame proved electrically. */
        ELECTRONIC
    }

    /** What watches the flame of an atmospheric gas burner. */
    @Item(
            id = "flame.pilot",
            of = "boiler",
            stage = Stage.ARRIVAL,
            structural = true,
            carried = true,
            ask = "What watches the flame: a thermocouple in a standing pilot, or an electronic control?",
            unreadBecause = {"control not identified"})
    public record PilotProof(PilotWatch watch) {}

    /** How the chamber was purged before the burner lit. */
    public enum PurgeRun {
        IN_FULL,
        TOO_SHORT,
        NO_PURGE,
        /** Neither the control's maker nor the code asks for one on this burner. */
        NONE_CALLED_FOR
    }

    /** Whether the fan aired the chamber before the burner lit, for as long as its control's sheet says. */
    @Item(
            id = "flame.purge",
            of = "boiler",
            stage = Stage.FIRING,
            ask = "Before it lit, did the fan purge the chamber for as long as the control's sheet says?",
            look = "Time it from the fan at speed to the spark, and hold it against the sheet, not against memory.",
            unreadBecause = {"not fired", "sheet not at hand"})
    public record Purge(PurgeRun run) {}

    /** What the fuel did when the flame was taken away. */
    public enum FuelAtFlameLoss {
        SHUT_OFF,
        STAYED_OPEN
    }

    /** Whether the control shut the fuel off when it lost sight of the flame. */
    @Item(
            id = "flame.failure",
            of = "boiler",
            stage = Stage.FIRING,
            ask = "With the flame taken away, did the control shut the fuel off by itself?",
            look =
                    "By the control's sheet. Gas: shut the pilot or main cock by hand, listen for the valves, keep the hand on"
                            + " the cock. Oil: take the flame sensor out of sight. A burner for both fuels: the worse of the two.",
            unreadBecause = {"not fired", "not tested"})
    public record FlameFailure(FuelAtFlameLoss fuel) {}

    /** How long that took. */
    @Item(
            id = "flame.failure-time",
            of = "boiler",
            stage = Stage.FIRING,
            ask = "How long from the flame's end to the fuel shut off?",
            look = "To the click or the motor's stop; shut it by hand when it takes longer than the sheet says.",
            unreadBecause = {"not timed"})
    public record FlameFailureTime(
            @Measured(unit = Unit.SECOND, from = "0", to = "600")
            Quantity time) {}

    /** What the flame did when the burner was switched off. */
    public enum FlameAtShutdown {
        OUT_AT_ONCE,
        LINGERED
    }

    /** Whether the flame was gone as soon as the fuel valves had shut. */
    @Item(
            id = "flame.after-shutdown",
            of = "boiler",
            stage = Stage.FIRING,
            ask = "Switched off, was the flame out as soon as its valves had shut?",
            look =
                    "Through the sight glass, to the last blue tongue. Valves take a second or so, some with motors up to five.",
            unreadBecause = {"not fired", "no sight glass"})
    public record FlameAfterShutdown(FlameAtShutdown flame) {}
}
