package gaugeglass.steam.observed;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Stage;
import java.util.List;

/** What is met on the way into the boiler room: its air, its dangers, and what the whole room shares. */
public final class Site {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS = List.of(
            GasSmelled.class,
            GasMeterReading.class,
            RoomCarbonMonoxide.class,
            OutdoorCarbonMonoxide.class,
            GasLeakSearch.class,
            OilLeakSeen.class,
            FloodMarks.class,
            WaterPipesInFrost.class,
            RoomDrainage.class,
            RoomWiring.class,
            SafetyCircuit.class,
            CarbonMonoxideAlarm.class,
            EmergencySwitch.class,
            EmergencySwitchTest.class,
            RoomInsulation.class,
            AirSupply.class,
            AirWay.class,
            RoomInput.class,
            AirFreeArea.class,
            AirFanFlow.class,
            ReliefSizingRule.class);

    private Site() {}

    /** Whether gas can be smelled. */
    public enum GasSmell {
        NONE,
        SMELLED
    }

    /** Whether fuel gas, or the stuff added to it, can be smelled. */
    @Item(
            id = "site.gas-smell",
            of = "site",
            stage = Stage.ARRIVAL,
            ask = "Do you smell gas, at the door or inside?",
            look = "Smell before you switch anything. Low down for propane, high up for natural gas.",
            unreadBecause = {"cannot smell today"})
    public record GasSmelled(GasSmell smell) {}

    /** What a combustible-gas meter shows, as a share of the lower explosive limit. */
    @Item(
            id = "site.gas-meter",
            of = "site",
            stage = Stage.ARRIVAL,
            ask = "What does the combustible-gas meter show, in percent of the lower explosive limit?",
            look = "Zero it in fresh air and keep it running from before the door on; note the highest figure. Carry it"
                    + " on an oil job too.",
            unreadBecause = {"no meter here", "meter out of calibration"})
    public record GasMeterReading(
            @Measured(unit = Unit.PERCENT, from = "0", to = "100")
            Quantity share) {}

    /** Carbon monoxide in the air of the boiler room. */
    @Item(
            id = "site.co",
            of = "site",
            stage = Stage.ARRIVAL,
            ask = "How much carbon monoxide is in the boiler room's air?",
            look = "Meter on before the door; the steady figure at head height, away from a draft hood.",
            unreadBecause = {"no meter here", "meter out of calibration"})
    public record RoomCarbonMonoxide(
            @Measured(unit = Unit.PARTS_PER_MILLION, from = "0", to = "2000")
            Quantity reading) {}

    /** Carbon monoxide outdoors, which the meter brings in with it. */
    @Item(
            id = "site.co-outdoors",
            of = "site",
            stage = Stage.ARRIVAL,
            ask = "How much carbon monoxide does the meter show outdoors?",
            look = "Before going in, away from the running van.",
            unreadBecause = {"not read before going in"})
    public record OutdoorCarbonMonoxide(
            @Measured(unit = Unit.PARTS_PER_MILLION, from = "0", to = "2000")
            Quantity reading) {}

    /** What a search of the gas joints came to. */
    public enum GasLeak {
        NONE_FOUND,
        LEAK_FOUND,
        NO_GAS_PIPING
    }

    /** What the leak detector or the soap said at the gas joints. */
    @Item(
            id = "site.gas-leak",
            of = "site",
            stage = Stage.COLD,
            ask = "Does any gas joint leak, up to the burner's last manual valve?",
            look = "Detector first, soap to find the place. Never a flame.",
            unreadBecause = {"piping out of reach"})
    public record GasLeakSearch(GasLeak result) {}

    /** How much oil has got out. */
    public enum OilLeak {
        NONE,
        DRIP,
        POOL,
        SPRAY,
        NO_OIL_ON_SITE
    }

    /** Whether oil gets out of tank, line, pump or burner. */
    @Item(
            id = "site.oil-leak",
            of = "site",
            stage = Stage.ARRIVAL,
            ask = "Does oil get out anywhere between the tank and the burner?",
            look = "Under the pump, the filter, the fittings; the tank's foot; a film on floor water.",
            unreadBecause = {"tank buried", "line under the floor"})
    public record OilLeakSeen(OilLeak leak) {}

    /** Whether the equipment has been under water. */
    public enum Flooding {
        NO_SIGN,
        EQUIPMENT_WAS_UNDER_WATER,
        REPLACED_SINCE
    }

    /** Whether water has stood over gas, burner or electrical controls. */
    @Item(
            id = "site.flooded",
            of = "site",
            stage = Stage.ARRIVAL,
            ask = "Has water stood over any gas, burner or electrical control?",
            look = "Tide marks and silt on jackets and conduit; ask who was here in the storm.",
            unreadBecause = {"freshly painted"})
    public record FloodMarks(Flooding sign) {}

    /** How water pipes stand to frost. */
    public enum FrostState {
        PROTECTED,
        EXPOSED,
        FROZEN
    }

    /** Whether water pipes in or near the room are frozen or may freeze. */
    @Item(
            id = "site.frost",
            of = "site",
            stage = Stage.ARRIVAL,
            ask = "Is any feed, return or glass frozen, or exposed to frost?",
            look = "Returns along outside walls and in crawl spaces; broken windows.",
            unreadBecause = {"returns out of sight"})
    public record WaterPipesInFrost(FrostState state) {}

    /** Whether water stays in the room. */
    public enum RoomWater {
        DRY,
        TAKES_WATER
    }

    /** Whether the room takes in water. */
    @Item(
            id = "site.drainage",
            of = "site",
            stage = Stage.ARRIVAL,
            ask = "Does the room take in water?",
            look = "Lime lines on the walls, a rusted boiler base, a pump that does not run.")
    public record RoomDrainage(RoomWater water) {}

    /** How the wiring looks. */
    public enum Wiring {
        SOUND,
        UNBONDED,
        SCORCHED,
        WET
    }

    /** The worst that is seen of the boiler's wiring. */
    @Item(
            id = "site.wiring",
            of = "site",
            stage = Stage.COLD,
            ask = "What is the worst to be seen of the wiring to burner and controls?",
            look = "Locked out, covers off: brown insulation, water tracks, a jacket without its bonding conductor.",
            unreadBecause = {"covers not opened"})
    public record RoomWiring(Wiring worst) {}

    /** Which conductor the safety contacts break. */
    public enum SafetyContacts {
        IN_LIVE,
        IN_NEUTRAL
    }

    /** Which conductor the burner's safety contacts break. */
    @Item(
            id = "site.safety-contacts",
            of = "site",
            stage = Stage.COLD,
            structural = true,
            ask = "Do all safety contacts break the live conductor, or is one in the neutral?",
            look =
                    "Trace cutoff, limit and switch against the wiring diagram; one tracing serves until the wiring changes.",
            unreadBecause = {"no diagram", "not traced"})
    public record SafetyCircuit(SafetyContacts conductor) {}

    /** The state of a carbon monoxide alarm. */
    public enum AlarmState {
        WORKING,
        NOT_WORKING,
        NONE
    }

    /** Whether the building warns of carbon monoxide where people sleep and by the boiler. */
    @Item(
            id = "site.co-alarm",
            of = "site",
            stage = Stage.ARRIVAL,
            ask = "Is there a working carbon monoxide alarm by the boiler and where people sleep?",
            look = "Press its test button; read its end-of-life date.",
            unreadBecause = {"no access to the flats"})
    public record CarbonMonoxideAlarm(AlarmState state) {}

    /** Where the emergency switch is. */
    public enum SwitchPlace {
        OUTSIDE_THE_DOOR,
        INSIDE_ONLY,
        NONE
    }

    /** Where the burner's emergency switch is. */
    @Item(
            id = "site.emergency-switch",
            of = "site",
            stage = Stage.ARRIVAL,
            structural = true,
            ask = "Where is the emergency switch of the burner?",
            look = "Red plate, outside each door of the boiler room.")
    public record EmergencySwitch(SwitchPlace place) {}

    /** What the emergency switch does. */
    public enum SwitchEffect {
        STOPS_BURNER,
        DOES_NOT_STOP_BURNER
    }

    /** What the emergency switch did when it was tried. */
    @Item(
            id = "site.emergency-switch-effect",
            of = "site",
            stage = Stage.FIRING,
            ask = "With the burner called for, does the emergency switch stop it?",
            look = "Try each switch, with somebody at the burner.",
            unreadBecause = {"burner not running", "not tried"})
    public record EmergencySwitchTest(SwitchEffect effect) {}

    /** What the old insulation may be. */
    public enum OldInsulation {
        NONE_SUSPECTED,
        SUSPECTED_AND_SOUND,
        SUSPECTED_AND_DAMAGED,
        SUSPECTED_IN_THE_WAY,
        TESTED_FREE
    }

    /** Whether insulation on boiler and pipes is presumed to hold asbestos, and how it lies. */
    @Item(
            id = "site.insulation",
            of = "site",
            stage = Stage.ARRIVAL,
            ask = "Is there insulation that must be presumed to hold asbestos, and how is it?",
            look = "White or grey, hard or corrugated, put on before 1981 or of no known date. Do not touch it.",
            unreadBecause = {"covered over"})
    public record RoomInsulation(OldInsulation state) {}

    /** How combustion air reaches the room. */
    public enum AirRoute {
        OPENINGS,
        FAN,
        DUCTED_TO_BURNER,
        NONE_PROVIDED
    }

    /** How the room, or the burner, is given its air. */
    @Item(
            id = "site.air-route",
            of = "site",
            stage = Stage.COLD,
            structural = true,
            ask = "How does combustion air come in: openings, a fan, a duct to the burner, or not at all?")
    public record AirSupply(AirRoute route) {}

    /** Whether the air can get through. */
    public enum AirState {
        CLEAR,
        PARTLY_BLOCKED,
        BLOCKED,
        FAN_NOT_WORKING
    }

    /** Whether the way of the combustion air is clear. */
    @Item(
            id = "site.air-way",
            of = "site",
            stage = Stage.COLD,
            ask = "Is the way of the combustion air clear?",
            look =
                    "Leaves, lint and board on louvres and screens, inside and out; a damper that opens; a fan that turns.",
            unreadBecause = {"outside not reached"})
    public record AirWay(AirState state) {}

    /** The input of everything in the room that burns. */
    @Item(
            id = "site.room-input",
            of = "site",
            stage = Stage.COLD,
            ask = "What is the total input of everything that burns in this room?",
            look = "Boilers, water heaters, dryers, from their plates. Oil No. 2: about 140,000 Btu for each gallon.",
            unreadBecause = {"a plate not legible"})
    public record RoomInput(
            @Measured(unit = Unit.BTU_PER_HOUR, from = "10000", to = "50000000")
            Quantity total) {}

    /** The free area of the openings. */
    @Item(
            id = "site.air-free-area",
            of = "site",
            stage = Stage.COLD,
            ask = "What is the free area of the combustion-air openings together?",
            look =
                    "What is left between the louvre blades and the screen, not the hole in the wall; its maker gives the share.",
            unreadBecause = {"louvre not marked", "out of reach"})
    public record AirFreeArea(
            @Measured(unit = Unit.SQUARE_INCH, from = "0", to = "50000")
            Quantity free) {}

    /** What the air fan moves. */
    @Item(
            id = "site.air-fan-flow",
            of = "site",
            stage = Stage.COLD,
            ask = "How much air does the combustion-air fan deliver?",
            look = "From its plate, at the pressure it works against.",
            unreadBecause = {"no plate"})
    public record AirFanFlow(
            @Measured(unit = Unit.CUBIC_FOOT_PER_MINUTE, from = "0", to = "50000")
            Quantity flow) {}

    /** How the jurisdiction sizes safety valves. */
    public enum SizingRule {
        BY_OUTPUT,
        BY_HEATING_SURFACE
    }

    /** How the jurisdiction sizes the safety valves of a boiler that bears no mark for it. */
    @Item(
            id = "site.relief-sizing",
            of = "site",
            stage = Stage.ARRIVAL,
            structural = true,
            carried = true,
            ask = "By what does the jurisdiction size safety valves where the boiler is not marked: output, or heating"
                    + " surface of a steel boiler?",
            look = "Ask the inspection office once; most say output.")
    public record ReliefSizingRule(SizingRule sizing) {}
}
