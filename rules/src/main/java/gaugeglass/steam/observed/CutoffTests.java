package gaugeglass.steam.observed;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Of;
import gaugeglass.engine.vocabulary.Stage;
import java.util.List;

/** What is seen and heard when a low-water cutoff is tested; each cutoff has a place for each way of testing it. */
public final class CutoffTests {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS = List.of(
            CutoffTestResult.class,
            CutoffTestHeatCall.class,
            CutoffTestPressure.class,
            CutoffTestFeed.class,
            CutoffTestFloat.class,
            CutoffTestSwitches.class,
            CutoffTestTime.class,
            CutoffTestLevel.class,
            CutoffTestLevelNotes.class,
            CutoffTestFall.class,
            CutoffTestRefill.class,
            CutoffTestRecovery.class,
            CutoffTestFeederWater.class);

    private CutoffTests() {}

    /** The ways of testing a cutoff, from the one that proves least to the one that proves most. */
    public enum Method {
        /** The float pressed by hand, or a probe's push-button. */
        HAND_PRESS,
        /** The bowl flushed with the burner off. */
        COLD_FLUSH,
        /** The bowl drained quickly while the burner fires. */
        BOWL_DRAIN,
        /** The boiler's level let down slowly while the burner fires, with the feed shut. */
        SLOW_DRAIN
    }

    /** What became of the flame; a test that was not made says so. */
    public enum FlameResult {
        NOT_DONE,
        /** There was no flame to put out. */
        BURNER_IDLE,
        FLAME_OUT,
        KEPT_FIRING,
        /** Something was heard, but nobody watched the flame. */
        FLAME_NOT_WATCHED,
        /** The water never came down to the cutoff's mark. */
        LEVEL_NOT_REACHED
    }

    /** Whether something else than the cutoff would have kept the burner running. */
    public enum HeatCallState {
        HELD,
        NOT_HELD
    }

    /** Where the pressure stood against the operating control. */
    public enum PressureState {
        BELOW_CUT_OUT,
        AT_OR_ABOVE_CUT_OUT
    }

    /** Whether water could come in during a test. */
    public enum FeedState {
        SHUT,
        LIVE
    }

    /** What the float, or a probe's relay, did. */
    public enum FloatMotion {
        MOVED,
        DID_NOT_MOVE,
        NOT_NOTICED
    }

    /** What was heard of the switches, in order, as the float fell. */
    public enum SwitchOrder {
        BURNER_THEN_FEEDER,
        FEEDER_THEN_BURNER,
        BURNER_ONLY,
        FEEDER_ONLY,
        NOTHING
    }

    /** Where the water stood when the cutoff acted. */
    public enum WaterAtCutOut {
        IN_GLASS,
        OUT_OF_GLASS
    }

    /** Whether the falling level was written down. */
    public enum LevelNotes {
        NOTED,
        NOT_NOTED
    }

    /** How the burner came back. */
    public enum BurnerRecovery {
        AFTER_LEVEL,
        BEFORE_LEVEL,
        DID_NOT_COME_BACK,
        /** Stays out until somebody presses the cutoff's reset. */
        HELD_FOR_RESET
    }

    /** What came of the call to the feeder. */
    public enum FeederDelivery {
        WATER_CAME,
        NO_WATER_CAME,
        NOT_CALLED,
        /** Shut off on purpose for the test. */
        SHUT_FOR_TEST,
        NO_FEEDER
    }

    /** What became of the flame. */
    @Item(
            id = "cutoff-test.result",
            of = "cutoff-test",
            stage = Stage.FIRING,
            ask = "Was this test made today, and what became of the flame?",
            look =
                    "Watch the flame itself. A click is not a flame out, and the fan that runs on is not flame. If the level never"
                            + " came down to the cutoff's mark, say so: that is no failure and no proof. Stop the burner by its switch"
                            + " before the water leaves the glass.")
    public record CutoffTestResult(@Of String which, @Of Method method, FlameResult result) {}

    /** Whether a heat call was held. */
    @Item(
            id = "cutoff-test.heat-call",
            of = "cutoff-test",
            stage = Stage.FIRING,
            ask = "Was a heat call held through the whole test?",
            look = "Thermostat, timer, aquastat and tank controls all calling.")
    public record CutoffTestHeatCall(@Of String which, @Of Method method, HeatCallState state) {}

    /** Where the pressure stood. */
    @Item(
            id = "cutoff-test.pressure",
            of = "cutoff-test",
            stage = Stage.FIRING,
            ask = "Was the pressure below cut-out through the whole test?")
    public record CutoffTestPressure(@Of String which, @Of Method method, PressureState state) {}

    /** Whether the feed was shut. */
    @Item(
            id = "cutoff-test.feed",
            of = "cutoff-test",
            stage = Stage.FIRING,
            ask = "Was all feed shut off through the test: feeder, pump and bypass?")
    public record CutoffTestFeed(@Of String which, @Of Method method, FeedState state) {}

    /** Whether the float moved. */
    @Item(
            id = "cutoff-test.float",
            of = "cutoff-test",
            stage = Stage.FIRING,
            ask = "Was the float felt or heard to move, or did the probe's relay answer?")
    public record CutoffTestFloat(@Of String which, @Of Method method, FloatMotion motion) {}

    /** The order of the switches. */
    @Item(
            id = "cutoff-test.switches",
            of = "cutoff-test",
            stage = Stage.FIRING,
            ask = "Which switches were heard as the level fell, and in which order?",
            unreadBecause = {"too loud"})
    public record CutoffTestSwitches(@Of String which, @Of Method method, SwitchOrder order) {}

    /** How long the flame took to go out. */
    @Item(
            id = "cutoff-test.time",
            of = "cutoff-test",
            stage = Stage.FIRING,
            ask = "How long after the burner switch was heard did the flame go out?",
            unreadBecause = {"no watch at hand", "switch not heard"})
    public record CutoffTestTime(
            @Of String which,
            @Of Method method,

            @Measured(unit = Unit.SECOND, from = "0", to = "600")
            Quantity time) {}

    /** Where the water stood at cut-out. */
    @Item(
            id = "cutoff-test.level",
            of = "cutoff-test",
            stage = Stage.FIRING,
            ask = "When the cutoff acted in the slow drain, did water still show in the glass?")
    public record CutoffTestLevel(@Of String which, @Of Method method, WaterAtCutOut water) {}

    /** Whether the level was noted against time. */
    @Item(
            id = "cutoff-test.level-notes",
            of = "cutoff-test",
            stage = Stage.FIRING,
            ask = "Was the level noted against time while it was let down?")
    public record CutoffTestLevelNotes(@Of String which, @Of Method method, LevelNotes notes) {}

    /** The fall of the level, from the opened drain to the flame that went out. */
    @Item(
            id = "cutoff-test.fall",
            of = "cutoff-test",
            stage = Stage.FIRING,
            ask = "At which level did the fall begin, at which did the flame go out, and how long did it take?",
            look = "Both above the lowest visible part of the glass; the time from the opened drain to the flame out.")
    public record CutoffTestFall(
            @Of String which,
            @Of Method method,

            @Measured(unit = Unit.INCH, from = "0", to = "36")
            Quantity begin,

            @Measured(unit = Unit.INCH, from = "0", to = "36")
            Quantity end,

            @Measured(unit = Unit.SECOND, from = "1", to = "7200")
            Quantity time) {}

    /** How long the bowl took to fill again. */
    @Item(
            id = "cutoff-test.refill",
            of = "cutoff-test",
            stage = Stage.FIRING,
            ask = "How long after the drain was shut was the bowl full again?",
            look =
                    "From shutting the drain until the float is back or the switch is heard. Not back in ten minutes: write 10 min.",
            unreadBecause = {"no watch at hand"})
    public record CutoffTestRefill(
            @Of String which,
            @Of Method method,

            @Measured(unit = Unit.SECOND, from = "0", to = "600")
            Quantity time) {}

    /** How the burner came back. */
    @Item(
            id = "cutoff-test.recovery",
            of = "cutoff-test",
            stage = Stage.FIRING,
            ask =
                    "When did the burner come back: after the level had recovered, before, not at all, or only once reset by hand?")
    public record CutoffTestRecovery(@Of String which, @Of Method method, BurnerRecovery recovery) {}

    /** What the feeder delivered. */
    @Item(
            id = "cutoff-test.feeder-water",
            of = "cutoff-test",
            stage = Stage.FIRING,
            ask = "Did the feeder, when called in this test, bring water?")
    public record CutoffTestFeederWater(
            @Of String which, @Of Method method, FeederDelivery delivery) {}
}
