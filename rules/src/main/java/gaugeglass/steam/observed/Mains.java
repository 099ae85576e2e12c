package gaugeglass.steam.observed;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Of;
import gaugeglass.engine.vocabulary.Stage;
import java.util.List;

/** What is seen of each steam main, and of the radiators' valves and the noise of the whole. */
public final class Mains {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS = List.of(
            MainVenting.class,
            MainVentPlace.class,
            MainPipe.class,
            MainFall.class,
            MainLoad.class,
            MainBare.class,
            MainVentAction.class,
            MainFillTime.class,
            RadiatorValves.class,
            WaterHammer.class);

    private Mains() {}

    /** By what way air leaves a main. */
    public enum AirWayOut {
        VENT,
        /** Through a trap at its end into a dry return that is vented itself. */
        TRAP_TO_VENTED_RETURN,
        NONE
    }

    /** How air leaves the end of a main. */
    @Item(
            id = "main.venting",
            of = "main",
            stage = Stage.COLD,
            structural = true,
            carried = true,
            ask = "How does air leave the end of this main: a vent, a trap to a vented return, or not at all?",
            look = "A plug where a vent should be is not at all. Radiator vents do not count.",
            unreadBecause = {"end of the main not found", "behind a ceiling"})
    public record MainVenting(@Of String which, AirWayOut way) {}

    /**
     * Where the vent stands on its main.
     *
     * @param before how far before the end of the main, where its water drops or turns
     * @param nipple length of the nipple that lifts it off the main
     */
    @Item(
            id = "main.vent-place",
            of = "main",
            stage = Stage.COLD,
            carried = true,
            ask = "How far before the end of the main does its vent stand, and on how long a nipple?",
            look =
                    "The end is the elbow or tee where the water drops. Screwed straight into the fitting: a nipple of 0 in.",
            unreadBecause = {"behind a ceiling"})
    public record MainVentPlace(
            @Of String which,

            @Measured(unit = Unit.INCH, from = "0", to = "600")
            Quantity before,

            @Measured(unit = Unit.INCH, from = "0", to = "48")
            Quantity nipple) {}

    /**
     * A main as a pipe.
     *
     * @param size nominal size at its narrowest
     * @param run equivalent length, fittings counted in
     */
    @Item(
            id = "main.pipe",
            of = "main",
            stage = Stage.COLD,
            carried = true,
            ask = "What is the main's nominal size at its narrowest, and its length with fittings counted in?",
            look = "Pace it out to its far end. For a small system add half of that for elbows and tees.",
            unreadBecause = {"behind a ceiling", "longer than can be followed"})
    public record MainPipe(
            @Of String which,

            @Measured(unit = Unit.INCH, from = "1", to = "12")
            Quantity size,

            @Measured(unit = Unit.FOOT, from = "1", to = "400")
            Quantity run) {}

    /** Which way the water in a main runs. */
    public enum WaterRuns {
        WITH_THE_STEAM,
        AGAINST_THE_STEAM
    }

    /** The worst that is seen of how a main and its runouts lie. */
    public enum PipeLine {
        STRAIGHT,
        SAGS,
        RUNOUT_FALLS_AWAY
    }

    /**
     * How a main falls.
     *
     * @param water which way it runs
     * @param fall how far it falls in 10 ft, that way; rising is negative
     * @param line the worst of main and runouts
     */
    @Item(
            id = "main.fall",
            of = "main",
            stage = Stage.COLD,
            ask = "Which way does the main's water run, how far does the pipe fall that way in 10 ft, and does it sag?",
            look =
                    "Level on the pipe where it lies worst, then sight along it and its runouts. To a drip at the far end is with the"
                            + " steam; back to the boiler is against it.",
            unreadBecause = {"behind a ceiling", "out of reach"})
    public record MainFall(
            @Of String which,
            WaterRuns water,

            @Measured(unit = Unit.INCH, from = "-12", to = "60")
            Quantity fall,

            PipeLine line) {}

    /** What hangs on a main. */
    @Item(
            id = "main.load",
            of = "main",
            stage = Stage.COLD,
            carried = true,
            ask = "How much radiation does this main serve, in square feet EDR?",
            look = "From the radiator survey: every radiator on it, and bare risers too.",
            unreadBecause = {"no survey"})
    public record MainLoad(
            @Of String which,

            @Measured(unit = Unit.SQUARE_FOOT, from = "0", to = "100000")
            Quantity radiation) {}

    /** How much of a main has no insulation. */
    @Item(
            id = "main.bare",
            of = "main",
            stage = Stage.COLD,
            ask = "How many feet of this main are bare?",
            look = "Do not touch or move old insulation to see. Bare valves and unions count by their length.",
            unreadBecause = {"behind a ceiling"})
    public record MainBare(
            @Of String which,

            @Measured(unit = Unit.FOOT, from = "0", to = "400")
            Quantity length) {}

    /** What a main's vent did as steam came. */
    public enum VentAction {
        BLEW_AIR_THEN_SHUT,
        STAYED_SHUT,
        PASSED_STEAM
    }

    /** How a main's vent works. */
    @Item(
            id = "main.vent-action",
            of = "main",
            stage = Stage.HOT,
            ask = "As the main filled, did its vent blow air and then shut on steam?",
            look = "A thread or a cold mirror at its opening, from the side; no face over it.",
            unreadBecause = {"main already hot", "never filled"})
    public record MainVentAction(@Of String which, VentAction action) {}

    /** How long a main takes to fill. */
    @Item(
            id = "main.fill-time",
            of = "main",
            stage = Stage.HOT,
            ask = "How long after the header was hot was the far end of this main hot?",
            look = "From a cold start, by a probe or a hand near, not on, the pipe.",
            unreadBecause = {"main already hot", "never filled"})
    public record MainFillTime(
            @Of String which,

            @Measured(unit = Unit.MINUTE, from = "0", to = "240")
            Quantity time) {}

    /** How the hand valves of one-pipe radiators stand. */
    public enum HandValves {
        ALL_OPEN_OR_SHUT,
        SOME_PART_OPEN
    }

    /** Whether any one-pipe radiator is throttled. */
    @Item(
            id = "distribution.radiator-valves",
            of = "boiler",
            stage = Stage.HOT,
            ask = "Is every one-pipe radiator's hand valve either full open or full shut?",
            look = "Turn each as far as it goes; ask whoever lives there.",
            unreadBecause = {"rooms locked"})
    public record RadiatorValves(HandValves valves) {}

    /** When pipes hammer. */
    public enum HammerTime {
        NONE,
        AT_START,
        MID_CYCLE,
        AFTER_SHUT_OFF
    }

    /** Whether and when pipes hammer. */
    @Item(
            id = "distribution.hammer",
            of = "boiler",
            stage = Stage.HOT,
            ask =
                    "Do pipes hammer, and if so, when is it worst: at the start, in mid-cycle, or after the burner stops?",
            look = "Listen through a whole firing, and ask those who live there.",
            unreadBecause = {"no whole firing heard", "nobody to ask"})
    public record WaterHammer(HammerTime heard) {}
}
