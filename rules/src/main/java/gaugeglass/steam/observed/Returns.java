package gaugeglass.steam.observed;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Stage;
import java.util.List;

/** What is seen of the way water takes back to the boiler: returns, receiver, pump, zones. */
public final class Returns {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS = List.of(
            ZoneValves.class,
            BuriedReturn.class,
            ReturnVent.class,
            OldReturnDevice.class,
            ReturnCheck.class,
            BoilerVacuum.class,
            ReceiverPump.class,
            ReceiverState.class,
            PumpSet.class,
            PumpStart.class,
            ReceiverTemperature.class,
            VacuumPump.class,
            VacuumHeld.class);

    private Returns() {}

    /** How zone valves are found. */
    public enum ZoneValveState {
        NONE_FITTED,
        DRAIN_WHEN_SHUT,
        STRAND_WATER,
        ALL_SHUT_WHILE_FIRING
    }

    /** How valves that shut off parts of the system are found. */
    @Item(
            id = "zone.valves",
            of = "boiler",
            stage = Stage.HOT,
            ask =
                    "Zone valves: none, or do their mains drain when shut, and is one always open while the burner fires?",
            look = "Close each by its thermostat and listen on opening; water left behind hammers.",
            unreadBecause = {"not reached"})
    public record ZoneValves(ZoneValveState state) {}

    /** Whether a return lies where nobody sees it. */
    public enum ReturnBurial {
        NONE_BURIED,
        /** By a level test with the returns shut, a meter on the feed that is read, or an inspection opening. */
        BURIED_AND_WATCHED,
        BURIED_UNWATCHED
    }

    /** Whether a return is buried, and watched. */
    @Item(
            id = "return.buried",
            of = "boiler",
            stage = Stage.HOT,
            structural = true,
            carried = true,
            ask = "Does a return run under a floor or in the ground, and is there a way to watch it?",
            look = "Follow it out of the boiler room. A feed meter that is read at each visit is a way to watch it.",
            unreadBecause = {"return could not be followed"})
    public record BuriedReturn(ReturnBurial burial) {}

    /** What comes out of the vent of the returns. */
    public enum ReturnVentState {
        AIR_ONLY,
        STEAM
    }

    /** What comes out where the returns are open to the air. */
    @Item(
            id = "return.vent",
            of = "boiler",
            stage = Stage.HOT,
            ask = "What comes from the vent of the returns, or of the receiver: air only, or steam?",
            look = "After half an hour of steady steam. A wisp from a hot receiver is steam.",
            unreadBecause = {"no open vent found", "vent out of reach", "steam was not raised"})
    public record ReturnVent(ReturnVentState state) {}

    /** How an old return trap or air trap is found. */
    public enum OldDeviceState {
        NONE_LEFT,
        VENTS_AND_HOLDS,
        NOT_PROVED,
        DOES_NOT_SERVE
    }

    /** Whether a device of the old system is still in the circuit. */
    @Item(
            id = "return.old-device",
            of = "boiler",
            stage = Stage.HOT,
            ask = "Is an old return trap or air trap still in the circuit, and does it vent air and hold steam?",
            look = "Iron vessels near the boiler, some way above the water line.",
            unreadBecause = {"cannot be told apart"})
    public record OldReturnDevice(OldDeviceState state) {}

    /** How a check valve is found. */
    public enum CheckState {
        NONE_FITTED,
        HOLDS,
        PASSES
    }

    /** Whether the check valve in the return holds. */
    @Item(
            id = "return.check",
            of = "boiler",
            stage = Stage.HOT,
            ask = "Does the check valve in the return hold?",
            look = "Water backs up, or the level sinks in the boiler, as pressure rises: it passes. Worst one counts.",
            unreadBecause = {"not tried"})
    public record ReturnCheck(CheckState state) {}

    /** Whether the boiler pulls a vacuum. */
    public enum VacuumPulled {
        NONE,
        /** On a system that was made for it. */
        MEANT_TO,
        WHERE_IT_MUST_NOT
    }

    /** What the boiler does as it cools. */
    @Item(
            id = "vacuum.boiler",
            of = "boiler",
            stage = Stage.HOT,
            ask = "As it cools, does the boiler pull a vacuum where it must not?",
            look = "Gauge below zero, water drawn up out of the receiver or the returns.",
            unreadBecause = {"not seen cooling"})
    public record BoilerVacuum(VacuumPulled pulled) {}

    /** What pumps the water back. */
    public enum PumpType {
        /** Empties its receiver when that is full. */
        CONDENSATE,
        /** Stores water and feeds it as the boiler wants it. */
        BOILER_FEED,
        /** Holds the returns below the pressure of the air. */
        VACUUM
    }

    /** What pumps the water back. */
    @Item(
            id = "receiver.pump",
            of = "boiler",
            stage = Stage.HOT,
            structural = true,
            carried = true,
            ask = "What pumps the water back: a condensate, a boiler-feed or a vacuum pump?")
    public record ReceiverPump(PumpType kind) {}

    /** How the receiver is found. */
    public enum ReceiverCondition {
        SOUND,
        NO_OVERFLOW,
        FLOAT_STUCK,
        PUMP_DOES_NOT_KEEP_UP,
        OVERFLOWING
    }

    /** How the receiver is found. */
    @Item(
            id = "receiver.state",
            of = "boiler",
            stage = Stage.HOT,
            ask = "How is the receiver found: float free, pump keeping up, with an overflow, and not overflowing?",
            look = "Where several things are wrong, the one further down the list.",
            unreadBecause = {"closed, without a glass"})
    public record ReceiverState(ReceiverCondition state) {}

    /** Which part of a pump set fails. */
    public enum PumpSetState {
        ALL_WORK,
        ALARM_FAILS,
        CHECK_PASSES,
        PUMP_FAILS
    }

    /** Whether pump, check valve and high-water alarm work. */
    @Item(
            id = "receiver.set",
            of = "boiler",
            stage = Stage.HOT,
            ask = "Tried today: do pump, its check valve and the high-water alarm work?",
            look = "Raise the float by hand, each pump in turn. Where several fail, the one further down the list.",
            unreadBecause = {"not tried"})
    public record PumpSet(PumpSetState state) {}

    /** What starts the pump. */
    public enum PumpStarter {
        BOILERS_LEVEL,
        RECEIVERS_LEVEL,
        BY_HAND
    }

    /** What starts a boiler-feed pump. */
    @Item(
            id = "receiver.starts",
            of = "boiler",
            stage = Stage.HOT,
            ask = "What starts the boiler-feed pump: the boiler's level, the receiver's, or a hand?",
            look = "Follow the wires to the control on the boiler; see it start as the level falls.",
            unreadBecause = {"wiring not followed"})
    public record PumpStart(PumpStarter starter) {}

    /** How hot the water in the receiver is. */
    @Item(
            id = "receiver.temperature",
            of = "boiler",
            stage = Stage.HOT,
            ask = "How hot is the water in the receiver?",
            look = "After half an hour of steady steam. Bare hot iron burns: gloves.",
            unreadBecause = {"no probe at hand", "steam was not raised"})
    public record ReceiverTemperature(
            @Measured(unit = Unit.FAHRENHEIT, from = "32", to = "250")
            Quantity temperature) {}

    /** How a vacuum pump runs. */
    public enum VacuumPumpRun {
        HOLDS,
        SHORT_CYCLES,
        NEVER_STOPS
    }

    /** How the vacuum pump runs. */
    @Item(
            id = "vacuum.pump",
            of = "boiler",
            stage = Stage.HOT,
            ask = "Does the vacuum pump hold its vacuum between runs, or start every few minutes, or never stop?",
            unreadBecause = {"steam was not raised"})
    public record VacuumPump(VacuumPumpRun run) {}

    /** How far the returns are below the pressure of the air. */
    @Item(
            id = "vacuum.held",
            of = "boiler",
            stage = Stage.HOT,
            ask = "How much vacuum do the returns hold, as the gauge shows it?",
            look = "The least of several looks; water there boils at less than 212 F.",
            unreadBecause = {"no vacuum gauge", "steam was not raised"})
    public record VacuumHeld(
            @Measured(unit = Unit.INCH_OF_MERCURY, from = "0", to = "25")
            Quantity vacuum) {}
}
