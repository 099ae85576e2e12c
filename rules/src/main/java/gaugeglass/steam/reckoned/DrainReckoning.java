package gaugeglass.steam.reckoned;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Seen;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.steam.observed.SkimAndDrain.DrainFitted;
import gaugeglass.steam.observed.SkimAndDrain.DrainPresence;
import gaugeglass.steam.reckon.ReliefCapacity;
import gaugeglass.steam.reckon.Sizes;
import gaugeglass.steam.reckoned.GrossOutputReckoning.GrossOutput;
import java.util.List;

/** The least bottom drain for the steam that the boiler makes, counted as the safety valve's capacity is. */
public final class DrainReckoning implements Reckoning {
    /**
     * The least drain.
     *
     * @param least nominal pipe size
     * @param steam what the boiler makes
     */
    @Item(
            id = "drain.needed",
            of = "boiler",
            stage = Stage.COLD,
            ask = "The least nominal size of the bottom drain, for the steam that the boiler makes.",
            look = "Output / 1000 Btu a pound is the steam; the drain's size for it stands in the boiler code's table.")
    public record DrainNeeded(
            @Measured(unit = Unit.INCH, from = "0.75", to = "2")
            Quantity least,

            @Measured(unit = Unit.POUND_PER_HOUR, from = "0", to = "20000")
            Quantity steam) {}

    @Override
    public Class<? extends Record> gives() {
        return DrainNeeded.class;
    }

    @Override
    public List<Class<? extends Record>> needs() {
        return List.of(DrainFitted.class, GrossOutput.class);
    }

    @Override
    public List<DrainNeeded> work(Seen seen, String which) {
        if (seen.the(DrainFitted.class).presence() == DrainPresence.NOT_FITTED) {
            return List.of();
        }
        Quantity steam = ReliefCapacity.byOutput(seen.the(GrossOutput.class).output());
        return List.of(new DrainNeeded(Sizes.drain(steam).quantity(Sizes.DRAIN), steam.rounded(1)));
    }
}
