package gaugeglass.steam.observed;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Counted;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Stage;
import java.util.List;

/** How much fuel the burner takes at full fire. */
public final class InputMeasures {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS = List.of(
            InputMeasured.class, GasClock.class, HeatingValueFrom.class, GasHeatingValue.class, OilNozzle.class);

    private InputMeasures() {}

    /** How the input was found. */
    public enum InputMethod {
        GAS_METER,
        OIL_NOZZLE,
        /** No meter to clock: the orifices are the plate's, and so is the pressure at them, read with a gauge. */
        ORIFICES_AND_PRESSURE_AS_PLATE,
        NOT_MEASURED
    }

    /** How the input at full fire was measured on this visit. */
    @Item(
            id = "input.measured",
            of = "boiler",
            stage = Stage.HOT,
            ask = "How was the input at full fire measured today?",
            look = "Gas: clock the meter. Oil: nozzle and pump pressure. No meter, as with propane: orifices and their"
                    + " pressure against the plate.")
    public record InputMeasured(InputMethod method) {}

    /** A gas meter's dial, timed. */
    @Item(
            id = "input.gas-clock",
            of = "boiler",
            stage = Stage.HOT,
            ask = "Gas meter: size of the test dial, turns, and the time they took?",
            look =
                    "All else on the meter off, the burner at full fire. A minute or more: one second in twenty is five percent.",
            unreadBecause = {"not clocked", "other users on the meter"})
    public record GasClock(
            @Measured(unit = Unit.CUBIC_FOOT, from = "0.01", to = "100")
            Quantity dial,

            @Counted(from = 1, to = 1000) int turns,

            @Measured(unit = Unit.SECOND, from = "5", to = "3600")
            Quantity time) {}

    /** Whose heating value is used. */
    public enum HeatingValueSource {
        SUPPLIERS_FIGURE,
        TABLE
    }

    /** Where the gas's heating value is taken from. */
    @Item(
            id = "input.heat-from",
            of = "boiler",
            stage = Stage.HOT,
            ask = "Is the gas supplier's heating value at hand, or is the table's taken?",
            look = "The gas bill has it. The table's is an average, and is trusted less.")
    public record HeatingValueFrom(HeatingValueSource from) {}

    /** The gas's heating value by its supplier. */
    @Item(
            id = "input.gas-heat",
            of = "boiler",
            stage = Stage.HOT,
            ask = "What gross heating value does the gas supplier give?",
            unreadBecause = {"bill not at hand"})
    public record GasHeatingValue(
            @Measured(unit = Unit.BTU_PER_CUBIC_FOOT, from = "400", to = "3500")
            Quantity heat) {}

    /** An oil burner's nozzle and the pressure at it. */
    @Item(
            id = "input.nozzle",
            of = "boiler",
            stage = Stage.HOT,
            ask = "Oil nozzle: what is it marked, and what pressure does the pump's gauge show?",
            look =
                    "Marked for 100 psi; the gauge in the nozzle port, the burner at full fire. Several nozzles: their sum.",
            unreadBecause = {"nozzle not seen", "pressure not taken"})
    public record OilNozzle(
            @Measured(unit = Unit.GALLON_PER_HOUR, from = "0.2", to = "50")
            Quantity marked,

            @Measured(unit = Unit.PSI, from = "80", to = "300")
            Quantity pressure) {}
}
