package gaugeglass.steam.observed;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Of;
import gaugeglass.engine.vocabulary.Stage;
import java.time.LocalDate;
import java.util.List;

/** What is seen of each safety valve. */
public final class SafetyValves {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS = List.of(
            SafetyValveWay.class,
            SafetyValveSet.class,
            SafetyValveCapacity.class,
            SafetyValveDischarge.class,
            SafetyValveCondition.class,
            SafetyValveLeverRecord.class,
            SafetyValveLeverTested.class,
            SafetyValvePressureRecord.class,
            SafetyValvePressureTested.class);

    private SafetyValves() {}

    /** Whether steam can get through the valve. */
    public enum ReliefWay {
        CLEAR,
        PLUGGED,
        CAPPED,
        VALVE_BETWEEN
    }

    /** Whether anything stands in the way from the boiler through the valve to the open end. */
    @Item(
            id = "safety-valve.way",
            of = "safety-valve",
            stage = Stage.COLD,
            ask = "Is the way clear from the boiler through the safety valve to the open end of its pipe?",
            look = "Any valve in between counts, open or shut. A plug or cap at the end, or a gagged lever, too.",
            unreadBecause = {"piped out of sight"})
    public record SafetyValveWay(@Of String which, ReliefWay way) {}

    /** The pressure that the valve is stamped to open at. */
    @Item(
            id = "safety-valve.set-pressure",
            of = "safety-valve",
            stage = Stage.COLD,
            ask = "At what pressure is the safety valve stamped to open?",
            look = "The plate or the rim. A valve for hot water is often stamped 30 psi and does not belong here.",
            unreadBecause = {"stamp not legible", "no plate"})
    public record SafetyValveSet(
            @Of String which,

            @Measured(unit = Unit.PSI, from = "1", to = "250")
            Quantity pressure) {}

    /** How much steam the valve is stamped to pass. */
    @Item(
            id = "safety-valve.capacity",
            of = "safety-valve",
            stage = Stage.COLD,
            ask = "How much steam is the safety valve stamped to pass, in lb/h?",
            look = "A stamp in Btu/h: divide by 1000.",
            unreadBecause = {"stamp not legible", "no plate"})
    public record SafetyValveCapacity(
            @Of String which,

            @Measured(unit = Unit.POUND_PER_HOUR, from = "1", to = "50000")
            Quantity flow) {}

    /** Where and how the valve blows off. */
    public enum ReliefDischarge {
        FULL_SIZE_IN_SIGHT,
        REDUCED,
        VALVED,
        THREADED_END,
        WHERE_IT_CAN_SCALD,
        OUT_OF_SIGHT,
        NO_PIPE
    }

    /** The worst that is seen of the valve's discharge pipe. */
    @Item(
            id = "safety-valve.discharge",
            of = "safety-valve",
            stage = Stage.COLD,
            ask = "What is the worst to be seen of the safety valve's discharge pipe?",
            look =
                    "Full size, falling, no valve, no thread at the end, ending in sight near the floor where it hits nobody.",
            unreadBecause = {"end not found"})
    public record SafetyValveDischarge(@Of String which, ReliefDischarge outlet) {}

    /** How the valve shuts and moves. */
    public enum ReliefCondition {
        TIGHT,
        WEEP_MARKS,
        WEEPS_AT_KNOWN_PRESSURE,
        WEEPS_AT_UNKNOWN_PRESSURE,
        STICKS,
        DOES_NOT_RESEAT
    }

    /** How the valve shuts, and how it moved when it was last moved. */
    @Item(
            id = "safety-valve.condition",
            of = "safety-valve",
            stage = Stage.COLD,
            ask = "Does the safety valve shut tight and move freely?",
            look = "Cold: look for lime, rust trails and a seized lever. If it weeps on steam, read the pressure by"
                    + " something other than the boiler's own gauge before you blame the valve.",
            unreadBecause = {"out of reach"})
    public record SafetyValveCondition(@Of String which, ReliefCondition condition) {}

    /** Whether there is a record of a test. */
    public enum TestRecord {
        DATED,
        NONE
    }

    /** Whether it is known when the lever was last lifted. */
    @Item(
            id = "safety-valve.lever-record",
            of = "safety-valve",
            stage = Stage.HOT,
            ask = "Is there a dated record, today's included, of the valve being lifted by its lever?",
            look = "Lift only with steam under it, at the pressure its maker asks for and with the discharge clear of"
                    + " people; never raise the boiler's pressure for the sake of the test.")
    public record SafetyValveLeverRecord(@Of String which, TestRecord note) {}

    /** When the valve was last lifted by its lever. */
    @Item(
            id = "safety-valve.lever-tested",
            of = "safety-valve",
            stage = Stage.HOT,
            ask = "On which day was the valve last lifted by its lever?")
    public record SafetyValveLeverTested(@Of String which, LocalDate on) {}

    /** Whether it is known when the valve last proved its set pressure. */
    @Item(
            id = "safety-valve.pressure-record",
            of = "safety-valve",
            stage = Stage.COLD,
            ask = "Is there a dated record of the valve being proved at its set pressure, or put in new?",
            look = "A shop's test tag, or the date code of a new valve.")
    public record SafetyValvePressureRecord(@Of String which, TestRecord note) {}

    /** When the valve last proved its set pressure. */
    @Item(
            id = "safety-valve.pressure-tested",
            of = "safety-valve",
            stage = Stage.COLD,
            ask = "On which day was the valve last proved at its set pressure, or put in new?")
    public record SafetyValvePressureTested(@Of String which, LocalDate on) {}
}
