package gaugeglass.steam.reckoned;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Seen;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.steam.observed.BoilerPlate.BoilerConstruction;
import gaugeglass.steam.observed.BoilerPlate.BoilerMake;
import gaugeglass.steam.observed.BoilerPlate.HeatingSurface;
import gaugeglass.steam.observed.BoilerPlate.PlateMark;
import gaugeglass.steam.observed.BoilerPlate.PlateReliefCapacity;
import gaugeglass.steam.observed.BoilerPlate.PlateReliefMark;
import gaugeglass.steam.observed.SafetyValves.SafetyValveCapacity;
import gaugeglass.steam.observed.Site.ReliefSizingRule;
import gaugeglass.steam.observed.Site.SizingRule;
import gaugeglass.steam.reckon.ReliefCapacity;
import gaugeglass.steam.reckon.ReliefCapacity.Tubes;
import gaugeglass.steam.reckoned.GrossOutputReckoning.GrossOutput;
import java.util.List;

/**
 * What the safety valves together can pass, beside what the boiler needs: the boiler's own marking governs, else output or,
 * where the jurisdiction says so of steel boilers, heating surface.
 */
public final class ReliefReckoning implements Reckoning {
    /**
     * What the valves can pass beside what they must.
     *
     * @param fitted of the valves together; of those first looked at, where they alone suffice
     * @param needed by the boiler
     */
    @Item(
            id = "relief.capacity",
            look =
                    "Sum of the valves' stamped capacities, beside the least on the plate; without one, output / 1000 Btu a pound, or heating surface x the code's pounds a square foot.",
            of = "boiler",
            stage = Stage.COLD,
            ask = "What the safety valves can pass together, beside what the boiler needs.")
    public record ReliefTogether(
            @Measured(unit = Unit.POUND_PER_HOUR, from = "0", to = "200000")
            Quantity fitted,

            @Measured(unit = Unit.POUND_PER_HOUR, from = "0", to = "50000")
            Quantity needed) {}

    @Override
    public Class<? extends Record> gives() {
        return ReliefTogether.class;
    }

    @Override
    public List<Class<? extends Record>> needs() {
        return List.of(
                PlateReliefMark.class,
                PlateReliefCapacity.class,
                ReliefSizingRule.class,
                BoilerConstruction.class,
                HeatingSurface.class,
                GrossOutput.class,
                SafetyValveCapacity.class);
    }

    @Override
    public List<ReliefTogether> work(Seen seen, String which) {
        Quantity needed = needed(seen);
        Total total = new Total(needed);
        // No valve passes less than nothing: when those already seen suffice, the others cannot make them too small.
        seen.any(SafetyValveCapacity.class, total::sufficesWith);
        return List.of(new ReliefTogether(total.sum, needed));
    }

    private static Quantity needed(Seen seen) {
        if (seen.the(PlateReliefMark.class).mark() == PlateMark.MARKED) {
            return seen.the(PlateReliefCapacity.class).least();
        }
        if (seen.the(ReliefSizingRule.class).sizing() == SizingRule.BY_HEATING_SURFACE) {
            BoilerMake make = seen.the(BoilerConstruction.class).make();
            if (make != BoilerMake.CAST_IRON) {
                Tubes tubes = make == BoilerMake.STEEL_FIRETUBE ? Tubes.FIRE : Tubes.WATER;
                return ReliefCapacity.bySurface(seen.the(HeatingSurface.class).area(), tubes);
            }
        }
        return ReliefCapacity.byOutput(seen.the(GrossOutput.class).output());
    }

    /** The sum of the valves looked at so far. */
    private static final class Total {
        private final Quantity needed;
        private Quantity sum = Quantity.of(0, Unit.POUND_PER_HOUR);

        private Total(Quantity needed) {
            this.needed = needed;
        }

        private boolean sufficesWith(SafetyValveCapacity valve) {
            sum = sum.plus(valve.flow());
            return sum.isAtLeast(needed);
        }
    }
}
