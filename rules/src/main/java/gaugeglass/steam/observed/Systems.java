package gaugeglass.steam.observed;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Stage;
import java.util.List;

/** What kind of steam system the boiler serves, and what that asks of its pressure. */
public final class Systems {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS =
            List.of(SystemKind.class, SystemReturn.class, ReturnHeight.class, PressureNeed.class);

    private Systems() {}

    /** How steam goes out to the radiators and water comes out of them. */
    public enum SystemPiping {
        /** One pipe to each radiator, steam and water in the same pipe. */
        ONE_PIPE,
        /** Two pipes, a steam trap on each radiator. */
        TWO_PIPE_TRAPS,
        /** Two pipes, metered inlets or vapor devices, made to run on ounces. */
        TWO_PIPE_VAPOR
    }

    /** How water gets back into the boiler. */
    public enum WaterReturn {
        /** By its own weight alone. */
        GRAVITY,
        /** By a condensate, boiler-feed or vacuum pump. */
        PUMPED
    }

    /** Whether somebody has said that the system needs more pressure than heating does. */
    public enum NeedForPressure {
        NONE_STATED,
        STATED
    }

    /** The kind of system. */
    @Item(
            id = "system.kind",
            of = "boiler",
            stage = Stage.ARRIVAL,
            structural = true,
            carried = true,
            ask = "What system does the boiler serve: one-pipe, two-pipe with traps, or two-pipe vapor?",
            look = "Look at two or three radiators: pipes, air vents, traps, metered valves.",
            unreadBecause = {"no radiator could be seen", "mixed system"})
    public record SystemKind(SystemPiping kind) {}

    /** How the water comes back. */
    @Item(
            id = "system.return",
            of = "boiler",
            stage = Stage.ARRIVAL,
            structural = true,
            carried = true,
            ask = "Does water come back by gravity alone, or is it pumped?",
            look = "Follow the return to the boiler; a receiver with a pump makes it pumped.",
            unreadBecause = {"return could not be followed"})
    public record SystemReturn(WaterReturn way) {}

    /** How much height the returning water can stack up in. */
    @Item(
            id = "system.return-height",
            of = "boiler",
            stage = Stage.COLD,
            ask = "How far above the boiler's water line is the lowest end of a steam main or dry return?",
            look = "Measure plumb from the normal water line to where the lowest main or dry return drops.",
            unreadBecause = {"no access to the end of the main", "piping hidden"})
    public record ReturnHeight(
            @Measured(unit = Unit.INCH, from = "0", to = "600")
            Quantity height) {}

    /** Whether more pressure has been asked for, and by whom. */
    @Item(
            id = "system.pressure-need",
            of = "boiler",
            stage = Stage.COLD,
            ask = "Is there a stated need for more pressure than heating takes (process steam, a maker's instruction)?",
            look = "Written down, with a name and a reason. A habit is not a need.",
            unreadBecause = {"nobody to ask"})
    public record PressureNeed(NeedForPressure need) {}
}
