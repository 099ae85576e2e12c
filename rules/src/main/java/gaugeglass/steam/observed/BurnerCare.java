package gaugeglass.steam.observed;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Stage;
import java.util.List;

/** How a burner is fed and kept: gas pressures, the start of a gas burner with a fan, the service of an oil burner. */
public final class BurnerCare {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS = List.of(
            OilRenewed.class,
            OilElectrodes.class,
            OilPump.class,
            OilVacuum.class,
            OilAfterDrip.class,
            DraftRegulator.class,
            GasLockUp.class,
            GasInlet.class,
            GasManifold.class,
            LowFireStart.class,
            FlameSignal.class,
            BurnerLinkage.class);

    private BurnerCare() {}

    /** What of filter and nozzle was renewed. */
    public enum OilPartsRenewed {
        FILTER_AND_NOZZLE,
        FILTER_ONLY,
        NOZZLE_ONLY,
        NEITHER
    }

    /** Whether filter and nozzle of the oil burner were renewed at this start-up. */
    @Item(
            id = "oil.renewed",
            of = "boiler",
            stage = Stage.COLD,
            ask = "Which were renewed at this start-up: the oil filter, the nozzle?",
            look = "The nozzle of the same figure, angle and pattern as the maker's sheet has it.")
    public record OilRenewed(OilPartsRenewed renewed) {}

    /** How the electrodes stand. */
    public enum ElectrodeState {
        SET_BY_THE_SHEET,
        OUT_OF_PLACE,
        CRACKED_OR_WORN,
        NOT_LOOKED_AT
    }

    /** Whether the electrodes of the oil burner stand as they should. */
    @Item(
            id = "oil.electrodes",
            of = "boiler",
            stage = Stage.COLD,
            ask = "Electrodes: set by the maker's sheet, out of place, cracked or worn, or not looked at?",
            look = "Gap, height and distance from the nozzle with a gauge; porcelain without a hair crack.")
    public record OilElectrodes(ElectrodeState state) {}

    /** How the pump's pressure stands. */
    public enum PumpPressure {
        AS_THE_SHEET,
        OFF_THE_SHEET,
        NOT_READ
    }

    /** Whether the oil pump gives the pressure that the maker's sheet asks for. */
    @Item(
            id = "oil.pump",
            of = "boiler",
            stage = Stage.FIRING,
            ask = "Oil pump's pressure under fire: as the maker's sheet has it, off it, or not read?",
            look = "Gauge in the nozzle port or bleeder; after shutdown it holds.")
    public record OilPump(PumpPressure pressure) {}

    /** The vacuum at the oil pump's inlet. */
    @Item(
            id = "oil.vacuum",
            of = "boiler",
            stage = Stage.FIRING,
            ask = "Vacuum at the pump's inlet under fire, as in 6 inHg vacuum (oil that runs to the pump: 0 inHg)?",
            look = "Gauge in the pump's free inlet port, ten minutes into the fire.",
            unreadBecause = {"no vacuum gauge"})
    public record OilVacuum(
            @Measured(unit = Unit.INCH_OF_MERCURY, from = "-30", to = "20")
            Quantity reading) {}

    /** Whether oil drips after shutdown. */
    public enum AfterDrip {
        NONE,
        DRIPS
    }

    /** Whether the nozzle drips after shutdown. */
    @Item(
            id = "oil.after-drip",
            of = "boiler",
            stage = Stage.FIRING,
            ask = "After shutdown, does the nozzle drip or a small flame linger on it?",
            unreadBecause = {"nozzle not in sight"})
    public record OilAfterDrip(AfterDrip drip) {}

    /** How the draft regulator stands. */
    public enum RegulatorState {
        SWINGS_FREELY,
        STUCK,
        MISSING,
        NONE_CALLED_FOR
    }

    /** Whether the draft regulator of an oil burner does its work. */
    @Item(
            id = "oil.draft-regulator",
            of = "boiler",
            stage = Stage.FIRING,
            ask = "Does the draft regulator swing freely, or is it stuck, missing, or not called for by the maker?")
    public record DraftRegulator(RegulatorState state) {}

    /** How a gas pressure stands to the maker's figures. */
    public enum GasPressureState {
        WITHIN_THE_PLATE,
        BELOW_THE_PLATE,
        ABOVE_THE_PLATE
    }

    /** The gas pressure that stands at the inlet when nothing burns. */
    @Item(
            id = "gas.lock-up",
            of = "boiler",
            stage = Stage.FIRING,
            ask = "Burner off, gas pressure at the inlet: within the plate's figures, below or above?",
            look =
                    "Gauge at the inlet tapping; read again after five minutes: a regulator that passes lets it creep up.",
            unreadBecause = {"no gas gauge", "no tapping"})
    public record GasLockUp(GasPressureState state) {}

    /** The gas pressure that is left at the inlet under full fire. */
    @Item(
            id = "gas.inlet",
            of = "boiler",
            stage = Stage.FIRING,
            ask = "Full fire, gas pressure at the inlet: within the plate's figures, below or above?",
            look = "With every other appliance on the same pipe firing too.",
            unreadBecause = {"no gas gauge", "no tapping"})
    public record GasInlet(GasPressureState state) {}

    /** The gas pressure at the burner's manifold under full fire. */
    @Item(
            id = "gas.manifold",
            of = "boiler",
            stage = Stage.FIRING,
            ask = "Full fire, gas pressure at the manifold: within the plate's figures, below or above?",
            look = "Gauge at the valve's outlet tapping. A plate without tolerance: within a tenth of its figure.",
            unreadBecause = {"no gas gauge", "no tapping"})
    public record GasManifold(GasPressureState state) {}

    /** At which rate a burner is lit. */
    public enum StartRate {
        LOW_FIRE_PROVEN,
        ABOVE_LOW_FIRE,
        SINGLE_RATE
    }

    /** Whether a gas burner with a fan lights at its low fire. */
    @Item(
            id = "burner.start-rate",
            of = "boiler",
            stage = Stage.FIRING,
            ask = "Does the burner light at proven low fire, above it, or has it one rate only?",
            look = "Watch linkage or drive through a start: the low-fire switch makes before the spark.")
    public record LowFireStart(StartRate rate) {}

    /** How strong the flame's signal is. */
    public enum SignalStrength {
        STRONG_AND_STEADY,
        WEAK,
        WANDERING
    }

    /** Whether the safeguard sees the flame well. */
    @Item(
            id = "burner.flame-signal",
            of = "boiler",
            stage = Stage.FIRING,
            ask = "Flame signal at low and at high fire: strong and steady, weak, or wandering?",
            look = "Against the figure in the safeguard's sheet; weak is below it at either fire.",
            unreadBecause = {"no meter for it"})
    public record FlameSignal(SignalStrength strength) {}

    /** How fuel and air are tied together. */
    public enum LinkageState {
        TIGHT,
        LOOSE_OR_WORN,
        NONE_FITTED
    }

    /** Whether what ties fuel and air together is tight. */
    @Item(
            id = "burner.linkage",
            of = "boiler",
            stage = Stage.FIRING,
            ask = "Linkage between fuel and air: tight, loose or worn, or none fitted?",
            look = "Every ball joint and set screw by hand, burner locked out; then through its travel.")
    public record BurnerLinkage(LinkageState state) {}
}
