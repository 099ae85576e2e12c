package gaugeglass.steam.observed;

import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Stage;
import java.util.List;

/** What is seen of a coil that heats domestic water inside the steam boiler. */
public final class Coil {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS =
            List.of(CoilFitted.class, CoilHolds.class, CoilTempering.class);

    private Coil() {}

    /** Whether there is a coil. */
    public enum CoilPresence {
        FITTED,
        NOT_FITTED
    }

    /** Whether a domestic coil sits in the boiler. */
    @Item(
            id = "coil.presence",
            of = "boiler",
            stage = Stage.ARRIVAL,
            structural = true,
            carried = true,
            ask = "Does a coil in the boiler heat domestic water?")
    public record CoilFitted(CoilPresence presence) {}

    /** What the level does while the coil is under pressure and the feed is shut. */
    public enum CoilTest {
        LEVEL_HELD,
        ROSE_UNTIL_COIL_WAS_SHUT,
        FLOODED_UNTIL_COIL_WAS_SHUT,
        ROSE_WITH_COIL_SHUT_TOO
    }

    /** What the level did at rest with the feed shut, coil open and then coil shut. */
    @Item(
            id = "coil.test",
            of = "boiler",
            stage = Stage.COLD,
            ask = "At rest with the feed shut: does the level hold, and if it rises, does shutting the coil stop it?",
            look =
                    "Mark the glass and wait; then shut both coil valves, mark again. Flooded: the water had left the top"
                            + " of the glass.",
            unreadBecause = {"not tested", "coil valves do not hold"})
    public record CoilHolds(CoilTest result) {}

    /** Whether the coil's hot water is mixed down. */
    public enum TemperingState {
        FITTED,
        NOT_FITTED
    }

    /** Whether a tempering valve stands between coil and taps. */
    @Item(
            id = "coil.tempering",
            of = "boiler",
            stage = Stage.COLD,
            ask = "Does a tempering valve mix the coil's water down before it goes to the taps?",
            look =
                    "On the coil's outlet, with a cold line to it. A valve that is there but shut or bypassed is not fitted.",
            unreadBecause = {"piping hidden"})
    public record CoilTempering(TemperingState valve) {}
}
