package gaugeglass.steam.observed;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Of;
import gaugeglass.engine.vocabulary.Stage;
import java.util.List;

/** What is seen of each pressure control, and what came of testing it. */
public final class Controls {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS = List.of(
            ManualResetRule.class,
            ControlRole.class,
            ControlCondition.class,
            ControlSwitch.class,
            ControlLevel.class,
            ControlReset.class,
            ControlDial.class,
            ControlCutInMark.class,
            ControlCutOutMark.class,
            ControlDifferentialMark.class,
            ControlRangeTop.class,
            ControlLowestCutOut.class,
            ControlProofRecord.class,
            ControlTest.class);

    private Controls() {}

    /** What a pressure control is there for. */
    public enum ControlDuty {
        /** Stops and starts the burner in everyday running. */
        OPERATING,
        /** Stops it when the operating control has not. */
        HIGH_LIMIT,
        /** Turns the fire up and down. */
        MODULATING
    }

    /** How a control looks. */
    public enum ControlState {
        SOUND,
        /** Steam has been in it, or it has been cooked from outside. */
        HEAT_DAMAGED,
        /** Its contacts are jumpered, wired round or held. */
        BYPASSED
    }

    /** What makes the contact. */
    public enum SwitchType {
        MERCURY_BULB,
        DRY_CONTACTS,
        ELECTRONIC
    }

    /** How a control hangs. */
    public enum Levelness {
        LEVEL,
        OUT_OF_LEVEL
    }

    /** How a control lets the burner start again. */
    public enum ControlResetType {
        AUTOMATIC,
        MANUAL
    }

    /** What a control's marks mean. */
    public enum DialMarks {
        /** The main scale is the cut-in; the differential is added to get the cut-out. */
        CUT_IN_PLUS_DIFFERENTIAL,
        /** The main scale is the cut-out; the differential is taken off to get the cut-in. */
        CUT_OUT_LESS_DIFFERENTIAL,
        /** Both are marked. */
        CUT_IN_AND_CUT_OUT,
        /** Only the cut-out; usual with manual reset. */
        CUT_OUT_ONLY
    }

    /** How fresh the last proof is that the control stopped a burner. */
    public enum ProofRecord {
        LAST_SEASON,
        LONGER_AGO,
        NONE
    }

    /** What came of today's test under fire. */
    public enum TestOutcome {
        /** Pressure rose to the setting and the flame went out. */
        STOPPED_AT_PRESSURE,
        /** The setting was brought down to the pressure there was, and the flame went out. */
        STOPPED_WHEN_LOWERED,
        KEPT_FIRING,
        PRESSURE_NOT_REACHED,
        NOT_TESTED
    }

    /** Whether the place asks for a high limit that stays out until somebody comes. */
    public enum LimitResetRule {
        REQUIRED,
        NOT_REQUIRED
    }

    /** Whether a manual-reset high limit is required here. */
    @Item(
            id = "required.manual-reset-limit",
            of = "boiler",
            stage = Stage.ARRIVAL,
            structural = true,
            carried = true,
            ask = "Does the jurisdiction or the maker require a manual-reset high limit here?",
            unreadBecause = {"jurisdiction not asked"})
    public record ManualResetRule(LimitResetRule here) {}

    /** What the control is there for. */
    @Item(
            id = "control.role",
            of = "control",
            stage = Stage.ARRIVAL,
            structural = true,
            carried = true,
            ask = "Is this the operating control, the high limit, or a modulating control?",
            look = "By its wiring and its setting. A single control with nothing above it is the operating control.",
            unreadBecause = {"wiring could not be followed"})
    public record ControlRole(@Of String which, ControlDuty role) {}

    /** How the control looks. */
    @Item(
            id = "control.condition",
            of = "control",
            stage = Stage.COLD,
            ask = "Locked out and opened: is the control sound, heat-damaged, or bypassed?",
            look = "Browned plastic, a sagged bellows or corrosion is heat damage. Any jumper or wedge is a bypass.",
            unreadBecause = {"cover would not come off"})
    public record ControlCondition(@Of String which, ControlState condition) {}

    /** What makes its contact. */
    @Item(
            id = "control.switch",
            of = "control",
            stage = Stage.COLD,
            carried = true,
            ask = "What makes the contact: a mercury bulb, dry contacts, or electronics?",
            look = "A glass bulb with silver liquid is mercury. Do not touch it.",
            unreadBecause = {"cover would not come off"})
    public record ControlSwitch(@Of String which, SwitchType type) {}

    /** How it hangs. */
    @Item(
            id = "control.level",
            of = "control",
            stage = Stage.COLD,
            ask = "Does the control hang level, by its own mark or a small level?",
            look = "A siphon loop straightens as it warms: see that the tilt would not swing the bulb.")
    public record ControlLevel(@Of String which, Levelness level) {}

    /** How it resets. */
    @Item(
            id = "control.reset",
            of = "control",
            stage = Stage.COLD,
            structural = true,
            carried = true,
            ask = "Does the control reset by itself or by hand?",
            unreadBecause = {"cover would not come off"})
    public record ControlReset(@Of String which, ControlResetType reset) {}

    /** What its marks mean. */
    @Item(
            id = "control.dial",
            of = "control",
            stage = Stage.COLD,
            structural = true,
            carried = true,
            ask =
                    "What is marked on the control: cut-in and differential, cut-out and differential, both ends, or cut-out"
                            + " only?",
            look = "Read the words beside the scales; a differential may be added or taken off.",
            unreadBecause = {"marks not legible"})
    public record ControlDial(@Of String which, DialMarks marks) {}

    /** The cut-in that is set. */
    @Item(
            id = "control.cut-in-mark",
            of = "control",
            stage = Stage.COLD,
            ask = "Where is the cut-in set?",
            look = "Only where the control has a cut-in scale. With the unit marked there.",
            unreadBecause = {"marks not legible"})
    public record ControlCutInMark(
            @Of String which,

            @Measured(unit = Unit.PSI, from = "-7", to = "60")
            Quantity pressure) {}

    /** The cut-out that is set. */
    @Item(
            id = "control.cut-out-mark",
            of = "control",
            stage = Stage.COLD,
            ask = "Where is the cut-out set?",
            look = "Only where the control has a cut-out scale. With the unit marked there.",
            unreadBecause = {"marks not legible"})
    public record ControlCutOutMark(
            @Of String which,

            @Measured(unit = Unit.PSI, from = "0", to = "60")
            Quantity pressure) {}

    /** The differential that is set. */
    @Item(
            id = "control.differential-mark",
            of = "control",
            stage = Stage.COLD,
            ask = "Where is the differential set?",
            look = "On some the wheel under the cover. With the unit marked there.",
            unreadBecause = {"marks not legible"})
    public record ControlDifferentialMark(
            @Of String which,

            @Measured(unit = Unit.PSI, from = "0", to = "30")
            Quantity pressure) {}

    /** The highest cut-out the control can be set to. */
    @Item(
            id = "control.range-top",
            of = "control",
            stage = Stage.COLD,
            carried = true,
            ask = "What is the highest pressure this control can be set to?",
            look = "Top of its scale, or a stop fitted below it.",
            unreadBecause = {"marks not legible"})
    public record ControlRangeTop(
            @Of String which,

            @Measured(unit = Unit.PSI, from = "0", to = "300")
            Quantity pressure) {}

    /** The lowest cut-out the control can be set to. */
    @Item(
            id = "control.lowest-cut-out",
            of = "control",
            stage = Stage.COLD,
            carried = true,
            ask = "What is the lowest cut-out this control can be set to?",
            look = "Its lowest cut-in plus its least differential, where it is marked so.",
            unreadBecause = {"marks not legible"})
    public record ControlLowestCutOut(
            @Of String which,

            @Measured(unit = Unit.PSI, from = "0", to = "60")
            Quantity pressure) {}

    /** Whether an earlier visit proved it. */
    @Item(
            id = "control.proof-record",
            of = "control",
            stage = Stage.ARRIVAL,
            ask = "Is there a record that this control stopped the burner: last season, longer ago, or none?",
            look = "In the log or on the last report.")
    public record ControlProofRecord(@Of String which, ProofRecord proof) {}

    /** What came of testing it today. */
    @Item(
            id = "control.test",
            of = "control",
            stage = Stage.FIRING,
            ask = "Under fire today: did this control put the flame out, and how was it made to?",
            look =
                    "Hold a call for heat. Lower the setting where pressure will not rise to it; set it back after. Watch the"
                            + " flame, not the fan.",
            unreadBecause = {"burner was not fired"})
    public record ControlTest(@Of String which, TestOutcome outcome) {}
}
