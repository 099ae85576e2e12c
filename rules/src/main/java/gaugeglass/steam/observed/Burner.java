package gaugeglass.steam.observed;

import gaugeglass.engine.vocabulary.Counted;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Stage;
import java.util.List;

/** What burns and how, and what is seen of the burner before it is lit. */
public final class Burner {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS = List.of(
            BurnerFuel.class,
            BurnerBuild.class,
            BurnerResets.class,
            SafeguardBypass.class,
            BurnerFront.class,
            PuffMarks.class,
            ChamberOil.class,
            OilHeatValve.class,
            GasValveTest.class);

    private Burner() {}

    /** What is burned. */
    public enum Fuel {
        NATURAL_GAS,
        PROPANE,
        OIL,
        GAS_AND_OIL,
        SOLID
    }

    /** What the burner burns. */
    @Item(
            id = "burner.fuel",
            of = "boiler",
            stage = Stage.ARRIVAL,
            structural = true,
            carried = true,
            ask = "What does the burner burn?")
    public record BurnerFuel(Fuel fuel) {}

    /** How the burner is built. */
    public enum BurnerType {
        ATMOSPHERIC_GAS,
        POWER_GAS,
        POWER_OIL,
        DUAL_FUEL,
        SOLID_FUEL
    }

    /** How the burner is built. */
    @Item(
            id = "burner.type",
            of = "boiler",
            stage = Stage.ARRIVAL,
            structural = true,
            carried = true,
            ask = "How is the burner built: atmospheric gas, power gas, power oil, for both fuels, or a grate?",
            look = "Power burners have a fan; some in-shot gas burners have one only in the vent and are atmospheric.",
            unreadBecause = {"no plate"})
    public record BurnerBuild(BurnerType build) {}

    /** How often the burner's lockout was reset by hand. */
    @Item(
            id = "burner.resets",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "How often has the burner's lockout been reset by hand since the last visit?",
            look = "The log, the control's own history, and whoever presses the button.",
            unreadBecause = {"nobody to ask", "no log"})
    public record BurnerResets(@Counted(from = 0, to = 1000) int times) {}

    /** Which safeguard is bypassed. */
    public enum BypassedSwitch {
        NONE,
        AIR_PROVING,
        GAS_PRESSURE,
        ROLLOUT,
        BLOCKED_VENT,
        DAMPER_PROVING,
        FLAME_SENSOR,
        ANOTHER
    }

    /** Whether one of the burner's own safeguards is jumpered, wedged or wired out. */
    @Item(
            id = "burner.bypass",
            of = "boiler",
            stage = Stage.COLD,
            ask = "Is any of the burner's safeguards jumpered, wedged or wired out?",
            look = "Locked out, covers off: a stray loop of wire, a taped plunger, a switch that hangs loose.",
            unreadBecause = {"covers not opened"})
    public record SafeguardBypass(BypassedSwitch found) {}

    /** How the burner's front looks. */
    public enum FrontMarks {
        CLEAN,
        SCORCHED
    }

    /** Whether flame has come out at the burner's opening. */
    @Item(
            id = "burner.front",
            of = "boiler",
            stage = Stage.COLD,
            ask = "Is anything scorched at the burner's opening?",
            look = "Blistered paint, brittle wire, a blue-brown jacket, soot licks above the opening.")
    public record BurnerFront(FrontMarks marks) {}

    /** Whether fuel lit late. */
    public enum PuffSign {
        NONE,
        MARKS_OR_REPORT
    }

    /** Whether marks or people tell of a puff. */
    @Item(
            id = "burner.puff",
            of = "boiler",
            stage = Stage.COLD,
            ask = "Do marks, or people, tell of a puff or bang at lighting?",
            look = "Soot blown out at doors and joints, a sprung door, a moved flue joint; ask about a bang or smell.")
    public record PuffMarks(PuffSign sign) {}

    /** Whether oil lies in the chamber. */
    public enum ChamberState {
        DRY,
        OIL_POOLED
    }

    /** Whether unburned oil lies in the combustion chamber. */
    @Item(
            id = "burner.chamber-oil",
            of = "boiler",
            stage = Stage.COLD,
            ask = "Does unburned oil lie in the chamber, or is its floor soaked?",
            unreadBecause = {"chamber not opened"})
    public record ChamberOil(ChamberState state) {}

    /** Where valves that heat shuts stand in the oil line, and where one is missing. */
    public enum OilValves {
        FITTED,
        NONE_AT_BURNER,
        NONE_AT_TANK,
        NONE
    }

    /** Whether heat of a fire would shut the oil line. */
    @Item(
            id = "burner.oil-heat-valve",
            of = "boiler",
            stage = Stage.COLD,
            ask =
                    "Are valves that heat shuts fitted in the oil line, at the burner and where the line leaves the tank?",
            look =
                    "A spring-loaded valve held open by a stem that melts, its spindle free. A tank outdoors or a line that leaves at"
                            + " the tank's top needs none there: answer for the burner alone.",
            unreadBecause = {"oil line not in sight"})
    public record OilHeatValve(OilValves valves) {}

    /** Whether shut gas valves hold. */
    public enum ValveTightness {
        TIGHT,
        PASSES
    }

    /** Whether the shut gas valves hold, by the leak test of the valve train. */
    @Item(
            id = "burner.gas-valve",
            of = "boiler",
            stage = Stage.COLD,
            ask = "Do the shut gas valves hold in the leak test?",
            look =
                    "By the test cocks, to the maker's bubble count, the manual valve behind them shut. A combination valve"
                            + " without cocks: a gas detector at the burner's ports, or a gauge on the outlet tapping, with the"
                            + " burner locked out and the gas on.",
            unreadBecause = {"not tested", "no way to test it"})
    public record GasValveTest(ValveTightness result) {}
}
