package gaugeglass.steam.observed;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Of;
import gaugeglass.engine.vocabulary.Stage;
import java.util.List;

/** How the burner comes and goes once the system is hot. */
public final class Burns {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS = List.of(BurnEnd.class, BurnTimes.class);

    private Burns() {}

    /** What ends a burn. */
    public enum EndOfBurn {
        /** The operating control, at its cut-out. */
        PRESSURE,
        /** The thermostat, or whatever else calls for heat, was satisfied. */
        HEAT_CALL_SATISFIED,
        /** It burned on for as long as it was watched. */
        BURNED_ON
    }

    /** What ends the burns of a hot system. */
    @Item(
            id = "cycling.ended",
            of = "boiler",
            stage = Stage.HOT,
            ask = "With every radiator hot and the heat call held, what ends the burns?",
            look = "Half an hour will do. Look at the gauge as the flame goes out.",
            unreadBecause = {"not watched for so long", "radiators not hot yet"})
    public record BurnEnd(EndOfBurn by) {}

    /**
     * One burn that pressure ended, by a watch that was started once and left to go on.
     *
     * @param lit when the flame came
     * @param out when it went
     */
    @Item(
            id = "burn.times",
            of = "burn",
            stage = Stage.HOT,
            ask = "On a watch that goes on: when did the flame come, and when did it go?",
            look = "In minutes since the watch was started. Two burns in a row or more; five tell it well.",
            unreadBecause = {"missed"})
    public record BurnTimes(
            @Of String which,

            @Measured(unit = Unit.MINUTE, from = "0", to = "1440")
            Quantity lit,

            @Measured(unit = Unit.MINUTE, from = "0", to = "1440")
            Quantity out) {}
}
