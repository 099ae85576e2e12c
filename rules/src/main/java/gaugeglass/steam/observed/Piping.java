package gaugeglass.steam.observed;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Counted;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Stage;
import java.util.List;

/** What is seen of the steam and return piping close to the boiler. */
public final class Piping {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS = List.of(
            StopValves.class,
            EqualizerPipe.class,
            EqualizerSize.class,
            ReturnProtection.class,
            LoopNipple.class,
            TakeOff.class,
            HeaderHeight.class,
            BoilerRisers.class,
            WetReturn.class);

    private Piping() {}

    /** How steam and return stop valves stand. */
    public enum StopValveState {
        NONE_FITTED,
        OPEN,
        SHUT,
        POSITION_NOT_PROVED
    }

    /** How the stop valves between boiler and system stand. */
    @Item(
            id = "piping.stop-valves",
            of = "boiler",
            stage = Stage.COLD,
            ask = "How do the stop valves in steam and return stand?",
            look = "Rising stem, or turn it and count; a handle proves nothing. Worst one counts.")
    public record StopValves(StopValveState state) {}

    /** How the equalizer is found. */
    public enum EqualizerState {
        OPEN,
        VALVED,
        MISSING,
        NOT_CALLED_FOR
    }

    /** How the pipe from the steam header down to the return is found. */
    @Item(
            id = "piping.equalizer",
            of = "boiler",
            stage = Stage.COLD,
            structural = true,
            ask = "Is there an equalizer from the header's end down to the return, and is it without valves?",
            look = "A valve in it counts whether it is open or shut. Not called for: the maker's drawing for a pumped"
                    + " return shows none.",
            unreadBecause = {"behind insulation"})
    public record EqualizerPipe(EqualizerState state) {}

    /** The nominal size of the equalizer. */
    @Item(
            id = "piping.equalizer-size",
            of = "boiler",
            stage = Stage.COLD,
            carried = true,
            ask = "What nominal pipe size is the equalizer, at its narrowest?",
            unreadBecause = {"behind insulation"})
    public record EqualizerSize(
            @Measured(unit = Unit.INCH, from = "0.5", to = "12")
            Quantity nominal) {}

    /** What keeps a gravity return from letting the boiler run empty. */
    public enum ReturnGuard {
        /** A loop: the return rises to just under the water line before it joins the equalizer. */
        LOOP,
        CHECK_VALVE_ONLY,
        NOTHING
    }

    /** What keeps the boiler's water in when the return leaks or steam pushes on it. */
    @Item(
            id = "piping.return-protection",
            of = "boiler",
            stage = Stage.COLD,
            structural = true,
            carried = true,
            ask =
                    "What keeps the boiler's water from running out into the gravity return: a loop, a check valve only, or nothing?",
            look = "The return rises to just under the water line and joins the equalizer there: that is the loop.",
            unreadBecause = {"behind insulation", "piping not followed"})
    public record ReturnProtection(ReturnGuard guard) {}

    /** How long the nipple is between loop and equalizer. */
    public enum NippleLength {
        CLOSE,
        LONG
    }

    /**
     * The nipple by which the loop joins the equalizer.
     *
     * @param below how far its centre is under the normal water line; above it is negative
     * @param length close, or long enough to lie as a pipe
     */
    @Item(
            id = "piping.loop-nipple",
            of = "boiler",
            stage = Stage.COLD,
            carried = true,
            ask =
                    "How far below the normal water line is the nipple that joins loop and equalizer, and is it a close one?",
            look =
                    "To the middle of the nipple; above the line is negative. Long is more than a close or short nipple.",
            unreadBecause = {"behind insulation"})
    public record LoopNipple(
            @Measured(unit = Unit.INCH, from = "-24", to = "60")
            Quantity below,

            NippleLength length) {}

    /** Where the mains leave the header. */
    public enum TakeOffPlace {
        /** Beyond the last riser, before the equalizer. */
        BEYOND_RISERS,
        BETWEEN_RISERS,
        /** Two streams of steam meet in one tee and leave through its branch. */
        BULL_HEADED,
        /** The riser runs on into the main by itself. */
        NO_HEADER
    }

    /** Where steam leaves the header, seen from where it comes in. */
    @Item(
            id = "piping.take-off",
            of = "boiler",
            stage = Stage.COLD,
            structural = true,
            carried = true,
            ask =
                    "Where do the mains leave the header: beyond all the boiler's risers, between them, or bull-headed from one tee?",
            look = "Go from the boiler: risers, then take-offs, then equalizer. The worst one counts.",
            unreadBecause = {"behind insulation"})
    public record TakeOff(TakeOffPlace place) {}

    /** How high the header stands. */
    @Item(
            id = "piping.header-height",
            of = "boiler",
            stage = Stage.COLD,
            carried = true,
            ask = "How far above the normal water line is the bottom of the header?",
            look = "Where the header was dropped on purpose, measure to the top of the risers' bend instead.",
            unreadBecause = {"behind insulation"})
    public record HeaderHeight(
            @Measured(unit = Unit.INCH, from = "0", to = "240")
            Quantity height) {}

    /**
     * The risers between boiler and header.
     *
     * @param number how many there are
     * @param size nominal size of the smallest, at its narrowest
     */
    @Item(
            id = "piping.risers",
            of = "boiler",
            stage = Stage.COLD,
            carried = true,
            ask = "How many risers carry steam from the boiler, and of what nominal pipe size is the smallest?",
            look = "Count those that are open to steam. A bushing or a reducing elbow is the size.",
            unreadBecause = {"behind insulation"})
    public record BoilerRisers(
            @Counted(from = 1, to = 8) int number,

            @Measured(unit = Unit.INCH, from = "1", to = "12")
            Quantity size) {}

    /** Whether a wet return holds. */
    public enum WetReturnState {
        TIGHT,
        LEAKING,
        /** There is none, or all of it is buried. */
        NONE_IN_SIGHT
    }

    /** What is seen of the returns that stand full of water. */
    @Item(
            id = "piping.wet-return",
            of = "boiler",
            stage = Stage.COLD,
            ask = "Does any wet return that can be seen leak, drip or show a fresh trail?",
            look = "Follow it along the wall and floor to the boiler. All of it buried: none in sight.",
            unreadBecause = {"not followed"})
    public record WetReturn(WetReturnState state) {}
}
