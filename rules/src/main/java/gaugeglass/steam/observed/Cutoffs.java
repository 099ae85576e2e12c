package gaugeglass.steam.observed;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Of;
import gaugeglass.engine.vocabulary.Stage;
import java.time.LocalDate;
import java.util.List;

/** What is seen of each low-water fuel cutoff, and what is required of them here. */
public final class Cutoffs {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS = List.of(
            SecondCutoffRequired.class,
            ManualResetRequired.class,
            FloatWithProbeRequired.class,
            CutoffKind.class,
            CutoffFunction.class,
            CutoffReset.class,
            CutoffFeederWiring.class,
            CutoffInstalled.class,
            CutoffWiring.class,
            CutoffConnectionValve.class,
            CutoffConnectionOutlet.class,
            CutoffCleanouts.class,
            CutoffTestTapping.class,
            CutoffFlushValve.class,
            CutoffMark.class,
            CutoffContacts.class,
            CutoffOpening.class,
            CutoffOpened.class,
            CutoffFlushLog.class,
            CutoffOffSeason.class,
            FlushManner.class,
            LastFlush.class,
            MakersOrder.class,
            SlowDrainRecord.class,
            SlowDrained.class);

    private Cutoffs() {}

    /** Whether the rules in force at this place ask for something. */
    public enum CutoffRequirement {
        REQUIRED,
        NOT_REQUIRED
    }

    /** How a cutoff senses water. */
    public enum CutoffType {
        FLOAT,
        PROBE
    }

    /** What a cutoff switches. */
    public enum CutoffDuty {
        /** One switch, which stops the burner. */
        BURNER_SWITCH,
        /** Made as a cutoff, with a second switch that calls a feeder. */
        CUTOFF_WITH_FEEDER_CONTACTS,
        /** Made as a feeder, which stops the burner when its feeding does not help. */
        FEEDER_CUTOFF,
        /** Runs a feed pump, and stops the burner at a lower level. */
        PUMP_CONTROLLER,
        NOT_IDENTIFIED
    }

    /** Who lets the burner come back after low water. */
    public enum ResetManner {
        AUTOMATIC,
        MANUAL
    }

    /** Whether a cutoff's float or probe calls the feeder. */
    public enum FeederCall {
        WIRED,
        NOT_WIRED
    }

    /** How a cutoff's burner contacts are wired. */
    public enum CutoffCircuit {
        IN_CIRCUIT,
        JUMPERED,
        WIRED_OUT
    }

    /** A shut-off valve between boiler and cutoff. */
    public enum ConnectionValve {
        NONE,
        OPEN,
        SHUT
    }

    /** Something else drawn off the cutoff's connecting piping. */
    public enum ConnectionOutlet {
        NONE,
        FITTED
    }

    /** Openings by which the connecting piping can be rodded. */
    public enum Cleanouts {
        AT_EVERY_TURN,
        LACKING,
        /** The cutoff sits in the boiler or straight on it. */
        NO_PIPING
    }

    /** What stands on the tapping through which the float can be pressed. */
    public enum TestTapping {
        FREE,
        BUILT_OVER,
        NONE_PROVIDED
    }

    /** The valve under a bowl. */
    public enum FlushValveState {
        WORKS,
        NOT_FITTED,
        SEIZED,
        PASSING,
        PLUGGED,
        /** A probe in the boiler itself has no bowl to flush. */
        NO_BOWL
    }

    /** What a cutoff's contacts say to the burner. */
    public enum ContactState {
        PERMITTING,
        HOLDING_OUT
    }

    /** Whether there is a dated record of some work. */
    public enum CutoffRecord {
        ON_RECORD,
        NONE_ON_RECORD
    }

    /** How the weekly flushes are recorded. */
    public enum FlushLog {
        KEPT_WEEKLY,
        WITH_GAPS,
        NOT_KEPT,
        /** Newly put in, so that there is no week to record yet. */
        NOT_YET_IN_SERVICE
    }

    /** What a cutoff did over the off-season. */
    public enum OffSeason {
        STOOD_IDLE,
        KEPT_IN_USE
    }

    /** How a bowl was flushed. */
    public enum FlushWay {
        SHUT_AND_REPEATED,
        LEFT_OPEN,
        NOT_FLUSHED
    }

    /** What the last flush brought. */
    public enum FlushWater {
        CLEAR,
        CLOUDY,
        RUST_FLAKES,
        NOT_FLUSHED
    }

    /** How the maker's sheet compares with what was heard. */
    public enum SheetOrder {
        AS_HEARD,
        CONTRADICTS,
        NOT_AT_HAND
    }

    /** Whether two cutoffs are required here. */
    @Item(
            id = "required.second-cutoff",
            of = "boiler",
            stage = Stage.ARRIVAL,
            structural = true,
            carried = true,
            ask = "Do the rules in force here require a second low-water cutoff on this boiler?",
            look = "Rules differ by place, by input and by year of installation: ask the authority or the insurer.",
            unreadBecause = {"not looked up"})
    public record SecondCutoffRequired(CutoffRequirement state) {}

    /** Whether a cutoff with manual reset is required here. */
    @Item(
            id = "required.manual-reset-cutoff",
            of = "boiler",
            stage = Stage.ARRIVAL,
            structural = true,
            carried = true,
            ask = "Do the rules in force here require a low-water cutoff with manual reset on this boiler?",
            unreadBecause = {"not looked up"})
    public record ManualResetRequired(CutoffRequirement state) {}

    /** Whether a float must stand beside a probe here. */
    @Item(
            id = "required.float-with-probe",
            of = "boiler",
            stage = Stage.ARRIVAL,
            structural = true,
            carried = true,
            ask = "Do the rules in force here require a float-operated cutoff beside a probe?",
            unreadBecause = {"not looked up"})
    public record FloatWithProbeRequired(CutoffRequirement state) {}

    /** How the cutoff senses water. */
    @Item(
            id = "cutoff.kind",
            of = "cutoff",
            stage = Stage.ARRIVAL,
            structural = true,
            carried = true,
            ask = "How does the cutoff sense water: a float in a bowl, or a probe?",
            unreadBecause = {"no nameplate", "lagged over"})
    public record CutoffKind(@Of String which, CutoffType kind) {}

    /** What the cutoff switches. */
    @Item(
            id = "cutoff.function",
            of = "cutoff",
            stage = Stage.ARRIVAL,
            structural = true,
            carried = true,
            ask =
                    "What is the control's function: plain burner switch, cutoff with feeder contacts, feeder-cutoff, pump"
                            + " controller?",
            look = "Nameplate, wiring diagram in the cover, number of switches.")
    public record CutoffFunction(@Of String which, CutoffDuty duty) {}

    /** Who resets the cutoff. */
    @Item(
            id = "cutoff.reset",
            of = "cutoff",
            stage = Stage.ARRIVAL,
            structural = true,
            carried = true,
            ask = "Does the cutoff reset by itself or by hand?",
            unreadBecause = {"no nameplate", "cover not opened"})
    public record CutoffReset(@Of String which, ResetManner manner) {}

    /** Whether the cutoff calls the feeder. */
    @Item(
            id = "cutoff.feeder-wiring",
            of = "cutoff",
            stage = Stage.ARRIVAL,
            structural = true,
            ask = "Is a feeder or feed pump wired to this cutoff?",
            unreadBecause = {"cover not opened"})
    public record CutoffFeederWiring(@Of String which, FeederCall call) {}

    /** When the cutoff was put in. */
    @Item(
            id = "cutoff.installed",
            of = "cutoff",
            stage = Stage.ARRIVAL,
            carried = true,
            ask = "When was the cutoff put in?",
            look = "A tag or the date code; the year alone will do.",
            unreadBecause = {"no date on it", "no record"})
    public record CutoffInstalled(@Of String which, LocalDate on) {}

    /** How the cutoff is wired. */
    @Item(
            id = "cutoff.wiring",
            of = "cutoff",
            stage = Stage.COLD,
            ask = "Are the cutoff's burner contacts in the burner circuit, jumpered, or wired out?",
            look =
                    "Power off and locked. Follow both wires; look for a jumper at the control and at the terminal strip.",
            unreadBecause = {"cover not opened"})
    public record CutoffWiring(@Of String which, CutoffCircuit circuit) {}

    /** A valve in the connecting piping. */
    @Item(
            id = "cutoff.connection-valve",
            of = "cutoff",
            stage = Stage.COLD,
            ask = "Is there a shut-off valve between the boiler and the cutoff, and how does it stand?")
    public record CutoffConnectionValve(@Of String which, ConnectionValve valve) {}

    /** Another outlet on the connecting piping. */
    @Item(
            id = "cutoff.connection-outlet",
            of = "cutoff",
            stage = Stage.COLD,
            ask = "Is steam or water drawn for anything else from the cutoff's connecting piping?",
            look = "Gauges, pressure controls and drains opened by hand do not count.")
    public record CutoffConnectionOutlet(@Of String which, ConnectionOutlet outlet) {}

    /** Clean-outs in the connecting piping. */
    @Item(
            id = "cutoff.cleanouts",
            of = "cutoff",
            stage = Stage.COLD,
            ask = "Does the cutoff's connecting piping have a cross or tee with a plug at every right-angle turn?")
    public record CutoffCleanouts(@Of String which, Cleanouts cleanouts) {}

    /** What stands on the test tapping. */
    @Item(
            id = "cutoff.test-tapping",
            of = "cutoff",
            stage = Stage.COLD,
            ask = "Is the tapping through which the float can be pressed free, or is something built on it?")
    public record CutoffTestTapping(@Of String which, TestTapping tapping) {}

    /** The valve under the bowl. */
    @Item(
            id = "cutoff.flush-valve",
            of = "cutoff",
            stage = Stage.COLD,
            ask = "Does the flush valve under the bowl open fully, run, and shut tight?")
    public record CutoffFlushValve(@Of String which, FlushValveState state) {}

    /** Where the cutoff's mark stands. */
    @Item(
            id = "cutoff.mark",
            of = "cutoff",
            stage = Stage.COLD,
            ask =
                    "How far above the lowest visible part of the glass is the level at which the cutoff stops the burner?",
            look = "The mark cast on its body, or the tip of the probe. Below the visible glass is negative.",
            unreadBecause = {"no mark", "lagged over"})
    public record CutoffMark(
            @Of String which,

            @Measured(unit = Unit.INCH, from = "-24", to = "24")
            Quantity height) {}

    /** What the contacts say at the level that is there. */
    @Item(
            id = "cutoff.contacts",
            of = "cutoff",
            stage = Stage.COLD,
            ask = "At the level that is there now, do the cutoff's contacts permit the burner or hold it out?",
            look = "Power off and locked: measure across the contacts, or see the control's light once power is back.",
            unreadBecause = {"cover not opened", "no meter"})
    public record CutoffContacts(@Of String which, ContactState state) {}

    /** Whether there is a record of the last cleaning. */
    @Item(
            id = "cutoff.opening",
            of = "cutoff",
            stage = Stage.COLD,
            ask = "Is there a dated record that the bowl was opened, or the probe pulled, and cleaned? Today's counts.")
    public record CutoffOpening(@Of String which, CutoffRecord state) {}

    /** When the cutoff was last opened and cleaned. */
    @Item(
            id = "cutoff.opened",
            of = "cutoff",
            stage = Stage.COLD,
            carried = true,
            ask = "When was the bowl last opened, or the probe last pulled, and cleaned?",
            unreadBecause = {"no record"})
    public record CutoffOpened(@Of String which, LocalDate on) {}

    /** The record of weekly flushes. */
    @Item(
            id = "cutoff.flush-log",
            of = "cutoff",
            stage = Stage.COLD,
            ask = "Does a log show a flush every week that the cutoff was in service?")
    public record CutoffFlushLog(@Of String which, FlushLog log) {}

    /** What the cutoff did over the off-season. */
    @Item(
            id = "cutoff.off-season",
            of = "cutoff",
            stage = Stage.COLD,
            ask = "Did the boiler stand idle over the off-season?")
    public record CutoffOffSeason(@Of String which, OffSeason state) {}

    /** How the bowl was flushed today. */
    @Item(
            id = "cutoff.flush-manner",
            of = "cutoff",
            stage = Stage.FIRING,
            ask = "How was the bowl flushed: drain shut when the rush slowed, and repeated, or left open?")
    public record FlushManner(@Of String which, FlushWay way) {}

    /** What the last flush of today brought. */
    @Item(
            id = "cutoff.last-flush",
            of = "cutoff",
            stage = Stage.FIRING,
            ask = "How did the last flush of today run?",
            look = "Into a bucket or a white cup, where flakes show.")
    public record LastFlush(@Of String which, FlushWater water) {}

    /** How the maker's sheet compares with the order of switching heard. */
    @Item(
            id = "cutoff.makers-order",
            of = "cutoff",
            stage = Stage.FIRING,
            ask = "What does the maker's sheet for this control say of the order in which the switches were heard?")
    public record MakersOrder(@Of String which, SheetOrder sheet) {}

    /** Whether an earlier slow-drain test is on record. */
    @Item(
            id = "cutoff.slow-drain-record",
            of = "cutoff",
            stage = Stage.FIRING,
            ask = "Is there a dated record of an earlier slow-drain test that put the flame out?")
    public record SlowDrainRecord(@Of String which, CutoffRecord state) {}

    /** When the last recorded slow-drain test was made. */
    @Item(
            id = "cutoff.slow-drained",
            of = "cutoff",
            stage = Stage.FIRING,
            carried = true,
            ask = "When was the last recorded slow-drain test that put the flame out?",
            unreadBecause = {"no record"})
    public record SlowDrained(@Of String which, LocalDate on) {}
}
