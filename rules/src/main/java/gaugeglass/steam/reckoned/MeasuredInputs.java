package gaugeglass.steam.reckoned;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Seen;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.steam.observed.BoilerPlate.PlateInput;
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
import java.util.function.Function;

/**
 * What the burner takes in at full fire, the least that it may be by what the reading is worth, and both against the plate.
 *
 * <p>A reading is worth a second at the watch, some pressure at the pump's gauge, and a share where the heating value is a
 * table's. An input that was not measured is unknown for want of the clocking; one whose orifices and pressure are the plate's
 * is the plate's, and there is nothing to work out.
 */
public final class MeasuredInputs {
    /** The limit that says how far a table's heating value is trusted. */
    public static final String TABLE_DOUBT = "firing.table-heat-doubt";

    /** The limit that says how far a pump's gauge is trusted. */
    public static final String GAUGE_DOUBT = "firing.oil-gauge-doubt";

    /** The limit that says what a gallon of oil is counted as on plates. */
    public static final String OIL_HEAT = "firing.oil-plate-heat";

    /** In the order in which they may use one another's results. */
    public static final List<Reckoning> ALL = List.of(new Taken(), new AtLeast(), new OfPlate(), new AtLeastOfPlate());

    private static final Quantity NO_DOUBT = Quantity.of(0, Unit.PSI);

    private static final List<Class<? extends Record>> ANSWERS = List.of(
            BurnerBuild.class,
            BurnerFuel.class,
            InputMeasured.class,
            GasClock.class,
            HeatingValueFrom.class,
            GasHeatingValue.class,
            OilNozzle.class);

    private MeasuredInputs() {}

    /** The input at full fire as measured. */
    @Item(
            id = "input.taken",
            look = "Gas: input = hour x dial x turns / time x heat. Oil: input = rated x sqrt(p / mark) x heat.",
            of = "boiler",
            stage = Stage.HOT,
            ask = "The input at full fire as measured.")
    public record InputTaken(
            @Measured(unit = Unit.BTU_PER_HOUR, from = "0", to = "1000000000000")
            Quantity input) {}

    /** The least that the input may be by what the reading is worth. */
    @Item(
            id = "input.at-least",
            look =
                    "As the measured input, with a second more at the watch and a table's heating value too high by the limit, or the pump's gauge too high by the limit.",
            of = "boiler",
            stage = Stage.HOT,
            ask = "The least that the input at full fire may be.")
    public record InputAtLeast(
            @Measured(unit = Unit.BTU_PER_HOUR, from = "0", to = "1000000000000")
            Quantity input) {}

    /** The measured input as a share of the plate's, exact. */
    @Item(
            id = "input.of-plate",
            look = "share = measured input / input on the plate x 100.",
            of = "boiler",
            stage = Stage.HOT,
            ask = "The measured input as a share of the plate's.")
    public record InputOfPlate(
            @Measured(unit = Unit.PERCENT, from = "0", to = "10000000000")
            Quantity share) {}

    /** The least that the input may be as a share of the plate's, exact. */
    @Item(
            id = "input.least-of-plate",
            look = "least = the least that the input may be / input on the plate x 100.",
            of = "boiler",
            stage = Stage.HOT,
            ask = "The least that the input may be, as a share of the plate's.")
    public record LeastOfPlate(
            @Measured(unit = Unit.PERCENT, from = "0", to = "10000000000")
            Quantity least) {}

    /** Works out of gas clock or nozzle, whichever was to be read; nothing where there is nothing to work out. */
    private static <T> List<T> measured(Seen seen, Function<Seen, T> gas, Function<Seen, T> oil) {
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
        return List.of((isOil ? oil : gas).apply(seen));
    }

    private static Worked nozzle(Seen seen, Quantity doubt) {
        OilNozzle nozzle = seen.the(OilNozzle.class);
        return OilInput.nozzle(nozzle.marked(), nozzle.pressure(), doubt, seen.limit(OIL_HEAT));
    }

    private static Worked clocked(Seen seen) {
        GasClock clock = seen.the(GasClock.class);
        Quantity heat = isTable(seen)
                ? table(seen.the(BurnerFuel.class).fuel())
                : seen.the(GasHeatingValue.class).heat();
        return GasInput.clocked(clock.dial(), Rational.of(clock.turns()), clock.time(), heat);
    }

    private static boolean isTable(Seen seen) {
        return seen.the(HeatingValueFrom.class).from() == HeatingValueSource.TABLE;
    }

    private static Quantity table(gaugeglass.steam.observed.Burner.Fuel fuel) {
        return (fuel == gaugeglass.steam.observed.Burner.Fuel.PROPANE ? Fuel.PROPANE : Fuel.NATURAL_GAS).heatingValue();
    }

    private static Quantity ofPlate(Seen seen, Quantity input) {
        return Quantity.of(input.ratioTo(seen.the(PlateInput.class).input()), Unit.TIMES)
                .inUnit(Unit.PERCENT);
    }

    private static final class Taken implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return InputTaken.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return ANSWERS;
        }

        @Override
        public List<String> limits() {
            return List.of(OIL_HEAT);
        }

        @Override
        public List<InputTaken> work(Seen seen, String which) {
            return measured(
                    seen,
                    all -> new InputTaken(clocked(all).quantity(GasInput.INPUT)),
                    all -> new InputTaken(nozzle(all, NO_DOUBT).quantity(OilInput.INPUT)));
        }
    }

    private static final class AtLeast implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return InputAtLeast.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return ANSWERS;
        }

        @Override
        public List<String> limits() {
            return List.of(TABLE_DOUBT, GAUGE_DOUBT, OIL_HEAT);
        }

        @Override
        public List<InputAtLeast> work(Seen seen, String which) {
            return measured(
                    seen,
                    all -> new InputAtLeast(leastGas(all)),
                    all -> new InputAtLeast(nozzle(all, all.limit(GAUGE_DOUBT)).quantity(OilInput.LOWEST)));
        }

        private static Quantity leastGas(Seen seen) {
            Quantity least = clocked(seen).quantity(GasInput.LOWEST);
            return isTable(seen)
                    ? least.minus(least.times(seen.limit(TABLE_DOUBT).valueIn(Unit.TIMES)))
                    : least;
        }
    }

    private static final class OfPlate implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return InputOfPlate.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(InputTaken.class, PlateInput.class);
        }

        @Override
        public List<InputOfPlate> work(Seen seen, String which) {
            return List.of(
                    new InputOfPlate(ofPlate(seen, seen.the(InputTaken.class).input())));
        }
    }

    private static final class AtLeastOfPlate implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return LeastOfPlate.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(InputAtLeast.class, PlateInput.class);
        }

        @Override
        public List<LeastOfPlate> work(Seen seen, String which) {
            return List.of(
                    new LeastOfPlate(ofPlate(seen, seen.the(InputAtLeast.class).input())));
        }
    }
}
