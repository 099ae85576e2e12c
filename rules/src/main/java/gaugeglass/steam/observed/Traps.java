package gaugeglass.steam.observed;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Counted;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Of;
import gaugeglass.engine.vocabulary.Stage;
import java.time.LocalDate;
import java.util.List;

/**
 * What is seen of the steam traps: each place where one belongs, and what they are as a set.
 *
 * <p>A building may have hundreds, so there are few questions about each: what it is, how it sits, how it was judged, and
 * then one row of readings or one thing seen or heard.
 */
public final class Traps {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS = List.of(
            TrapSurveyRecord.class,
            TrapSurveyed.class,
            SeasonDegreeDays.class,
            FuelPrice.class,
            RadiatorAirVents.class,
            TrapKind.class,
            TrapMounting.class,
            TrapJudged.class,
            TrapRow.class,
            TrapHeard.class);

    private Traps() {}

    /** Whether the date of the last survey is known. */
    public enum TrapSurveyNote {
        ON_RECORD,
        NONE_ON_RECORD
    }

    /** Whether it is on record when all traps were last tested. */
    @Item(
            id = "trap-survey.record",
            of = "boiler",
            stage = Stage.HOT,
            ask = "Is it on record when every trap of the system was last tested?",
            look = "A list with a result for each trap. Today counts once every one of them has been judged.",
            unreadBecause = {"papers not at hand"})
    public record TrapSurveyRecord(TrapSurveyNote note) {}

    /** When all traps were last tested. */
    @Item(
            id = "trap-survey.done",
            of = "boiler",
            stage = Stage.HOT,
            carried = true,
            ask = "When was every trap of the system last tested?",
            unreadBecause = {"date not legible"})
    public record TrapSurveyed(LocalDate on) {}

    /** How much cold a usual heating season brings to the place. */
    @Item(
            id = "site.season-degree-days",
            of = "site",
            stage = Stage.HOT,
            carried = true,
            ask = "How many degree days has a usual heating season at this place?",
            look = "From the weather service or the fuel dealer; over 65 F, the whole season.",
            unreadBecause = {"not looked up"})
    public record SeasonDegreeDays(
            @Measured(unit = Unit.FAHRENHEIT_DAY, from = "100", to = "12000")
            Quantity cold) {}

    /** What heat costs as fuel. */
    @Item(
            id = "site.fuel-price",
            of = "site",
            stage = Stage.HOT,
            ask = "What does a million Btu of the fuel cost, in cents?",
            look =
                    "From a bill: the price of a therm times ten; the price of a gallon of oil times a little over seven.",
            unreadBecause = {"no bill at hand"})
    public record FuelPrice(@Counted(from = 1, to = 100000) int cents) {}

    /** Whether radiators with a trap also have an air vent. */
    public enum VentsBesideTraps {
        NONE,
        ON_SOME
    }

    /** Whether somebody put air vents on radiators that have a trap. */
    @Item(
            id = "radiators.air-vents",
            of = "boiler",
            stage = Stage.HOT,
            ask = "Are there air vents on radiators that have a trap?",
            look = "Write in the note on which.",
            unreadBecause = {"no radiator could be seen"})
    public record RadiatorAirVents(VentsBesideTraps vents) {}

    /** What sort of trap it is. */
    public enum TrapType {
        /** Opens to what is cooler than steam. */
        THERMOSTATIC,
        /** Lets water out as hot as the steam. */
        FLOAT_AND_THERMOSTATIC,
        /** Lets water out as hot as the steam. */
        INVERTED_BUCKET,
        OTHER,
        /** A trap belongs here and there is none. */
        NONE_FITTED
    }

    /** What sort of trap is here. */
    @Item(
            id = "trap.kind",
            of = "trap",
            stage = Stage.HOT,
            structural = true,
            carried = true,
            ask = "What sort of trap is here?",
            look = "None fitted: a unit or the end of a line that should have one and has not.",
            unreadBecause = {"behind a cover"})
    public record TrapKind(@Of String which, TrapType kind) {}

    /** What is wrong with the way a trap sits. */
    public enum TrapSeat {
        AS_IT_SHOULD,
        SEVERAL_UNITS_ON_IT,
        INSULATED,
        WRONG_WAY_UP
    }

    /** How a trap sits in the piping. */
    @Item(
            id = "trap.mounting",
            of = "trap",
            stage = Stage.HOT,
            ask = "How does it sit: one unit to the trap, the right way up, a thermostatic one bare?",
            look = "Arrow and maker's mark; where two things are wrong, the one further down the list.",
            unreadBecause = {"behind a cover"})
    public record TrapMounting(@Of String which, TrapSeat seat) {}

    /** What a trap was judged by. */
    public enum TrapProof {
        BY_TEMPERATURE,
        /** Through a test valve or sight glass, or by its sound. */
        BY_SIGHT_OR_SOUND,
        /** Nothing was to be judged. */
        NO_STEAM_AT_IT
    }

    /**
     * What a trap was judged by today.
     *
     * <p>It counts as telling what is fitted, since it tells which judgement applies: a trap without steam is neither
     * good nor bad today.
     */
    @Item(
            id = "trap.judged",
            of = "trap",
            stage = Stage.HOT,
            structural = true,
            ask = "Is steam at it, and what is it judged by?",
            look =
                    "Half an hour of steady steam, its valve open. Where the radiator is off or its zone shut, no steam.",
            unreadBecause = {"not reached", "steam was not raised"})
    public record TrapJudged(@Of String which, TrapProof proof) {}

    /** How steam gets to a trap. */
    public enum SteamAhead {
        /** The unit calls, its valve is full open, nothing meters it. */
        FULL,
        /** By an orifice, or a valve part open. */
        THROTTLED
    }

    /** What the other outlets on the same return do meanwhile. */
    public enum OtherOutlets {
        NONE_HOT,
        /** They were shut off, and this one was given time. */
        SHUT_OFF,
        SOME_HOT
    }

    /** One trap's row of readings, taken together. */
    @Item(
            id = "trap.row",
            of = "trap",
            stage = Stage.HOT,
            ask =
                    "Steam ahead of it, temperature before it, temperature after it, and the other outlets on its return?",
            look = "On bare metal, a hand's width before and after. Others hot: shut them off, wait, and read again.",
            unreadBecause = {"no probe at hand", "pipe covered", "steam was not raised"})
    public record TrapRow(
            @Of String which,
            SteamAhead ahead,

            @Measured(unit = Unit.FAHRENHEIT, from = "32", to = "300")
            Quantity inlet,

            @Measured(unit = Unit.FAHRENHEIT, from = "32", to = "300")
            Quantity outlet,

            OtherOutlets others) {}

    /** What a trap showed or sounded like. */
    public enum TrapSound {
        /** Water in pushes, and quiet between. */
        HOLDS,
        /** Live steam. */
        BLOWS
    }

    /** What a trap showed or sounded like. */
    @Item(
            id = "trap.heard",
            of = "trap",
            stage = Stage.HOT,
            ask = "By sight or sound: does it hold steam back, or blow?",
            look =
                    "Water flashes as it comes out and looks like steam; live steam is clear at the opening and does not stop.",
            unreadBecause = {"too much noise"})
    public record TrapHeard(@Of String which, TrapSound sound) {}
}
