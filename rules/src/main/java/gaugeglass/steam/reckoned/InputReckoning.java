package gaugeglass.steam.reckoned;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Seen;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.steam.observed.Burner.BurnerBuild;
import gaugeglass.steam.observed.Burner.BurnerFuel;
import gaugeglass.steam.observed.Burner.BurnerType;
import gaugeglass.steam.observed.InputMeasures.GasClock;
import gaugeglass.steam.observed.InputMeasures.GasHeatingValue;
import gaugeglass.steam.observed.InputMeasures.HeatingValueFrom;
import gaugeglass.steam.observed.InputMeasures.HeatingValueSource;
import gaugeglass.steam.observed.InputMeasures.InputMeasured;
import gaugeglass.steam.observed.InputMeasures.InputMethod;
import gaugeglass.steam.observed.InputMeasures.OilNozzle;
import gaugeglass.steam.reckon.Fuel;
import gaugeglass.steam.reckon.GasInput;
import gaugeglass.steam.reckon.OilInput;
import gaugeglass.steam.reckon.Worked;
import java.util.List;

/**
 * What the burner takes in at full fire, and the least that it may be by what the reading is worth: a second at the watch, some
 * pressure at the pump's gauge, and a share where the heating value is a table's.
 *
 * <p>An input that was not measured is unknown for want of the clocking; one whose orifices and pressure are the plate's is
 * the plate's, and there is nothing to work out.
 */
public final class InputReckoning implements Reckoning {
    /** The limit that says how far a table's heating value is trusted. */
    public static final String TABLE_DOUBT = "firing.table-heat-doubt";

    /** The limit that says how far a pump's gauge is trusted. */
    public static final String GAUGE_DOUBT = "firing.oil-gauge-doubt";

    /** The limit that says what a gallon of oil is counted as on plates. */
    public static final String OIL_HEAT = "firing.oil-plate-heat";

    /**
     * The input as measured.
     *
     * @param input at full fire
     * @param least that it may be
     */
    @Item(
            id = "input.taken",
            look =
                    "Gas: input = hour x dial x turns / time x heat. Oil: input = rated x sqrt(p / mark) x heat. The least allows for a second of the hand or the gauge's error.",
            of = "boiler",
            stage = Stage.HOT,
            ask = "The input at full fire as measured, and the least that it may be.")
    public record InputTaken(
            @Measured(unit = Unit.BTU_PER_HOUR, from = "0", to = "1000000000000")
            Quantity input,

            @Measured(unit = Unit.BTU_PER_HOUR, from = "0", to = "1000000000000")
            Quantity least) {}

    @Override
    public Class<? extends Record> gives() {
        return InputTaken.class;
    }

    @Override
    public List<Class<? extends Record>> needs() {
        return List.of(
                BurnerBuild.class,
                BurnerFuel.class,
                InputMeasured.class,
                GasClock.class,
                HeatingValueFrom.class,
                GasHeatingValue.class,
                OilNozzle.class);
    }

    @Override
    public List<String> limits() {
        return List.of(TABLE_DOUBT, GAUGE_DOUBT, OIL_HEAT);
    }

    @Override
    public List<InputTaken> work(Seen seen, String which) {
        BurnerType build = seen.the(BurnerBuild.class).build();
        if (build == BurnerType.SOLID_FUEL) {
            return List.of();
        }
        InputMethod method = seen.the(InputMeasured.class).method();
        if (method == InputMethod.ORIFICES_AND_PRESSURE_AS_PLATE) {
            return List.of();
        }
        boolean isOil =
                method == InputMethod.OIL_NOZZLE || method == InputMethod.NOT_MEASURED && build == BurnerType.POWER_OIL;
        return List.of(isOil ? oil(seen) : gas(seen));
    }

    private static InputTaken oil(Seen seen) {
        OilNozzle nozzle = seen.the(OilNozzle.class);
        Worked worked =
                OilInput.nozzle(nozzle.marked(), nozzle.pressure(), seen.limit(GAUGE_DOUBT), seen.limit(OIL_HEAT));
        return new InputTaken(worked.quantity(OilInput.INPUT), worked.quantity(OilInput.LOWEST));
    }

    private static InputTaken gas(Seen seen) {
        GasClock clock = seen.the(GasClock.class);
        boolean isTable = seen.the(HeatingValueFrom.class).from() == HeatingValueSource.TABLE;
        Quantity heat = isTable
                ? table(seen.the(BurnerFuel.class).fuel())
                : seen.the(GasHeatingValue.class).heat();
        Worked worked = GasInput.clocked(clock.dial(), Rational.of(clock.turns()), clock.time(), heat);
        Quantity least = worked.quantity(GasInput.LOWEST);
        if (isTable) {
            least = least.minus(least.times(seen.limit(TABLE_DOUBT).valueIn(Unit.TIMES)));
        }
        return new InputTaken(worked.quantity(GasInput.INPUT), least);
    }

    private static Quantity table(gaugeglass.steam.observed.Burner.Fuel fuel) {
        return (fuel == gaugeglass.steam.observed.Burner.Fuel.PROPANE ? Fuel.PROPANE : Fuel.NATURAL_GAS).heatingValue();
    }
}
