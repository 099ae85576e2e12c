package gaugeglass.steam.reckoned;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Seen;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.steam.reckon.Equalizer;
import gaugeglass.steam.reckoned.GrossOutputReckoning.GrossOutput;
import java.util.List;

/** The least equalizer for what the boiler makes. */
public final class EqualizerReckoning implements Reckoning {
    /**
     * The least equalizer.
     *
     * @param least nominal pipe size
     * @param steam what the boiler makes, from and at 212 F
     */
    @Item(
            id = "piping.equalizer-needed",
            look = "steam = output x 34.5 / 33,475; then the least size that the table of equalizers gives for it.",
            of = "boiler",
            stage = Stage.COLD,
            ask = "The least nominal size of the equalizer, for the steam that the boiler makes.")
    public record EqualizerNeeded(
            @Measured(unit = Unit.INCH, from = "1.5", to = "4")
            Quantity least,

            @Measured(unit = Unit.POUND_PER_HOUR, from = "0", to = "20000")
            Quantity steam) {}

    @Override
    public Class<? extends Record> gives() {
        return EqualizerNeeded.class;
    }

    @Override
    public List<Class<? extends Record>> needs() {
        return List.of(GrossOutput.class);
    }

    @Override
    public List<EqualizerNeeded> work(Seen seen, String which) {
        Quantity steam = Equalizer.steam(seen.the(GrossOutput.class).output());
        return List.of(new EqualizerNeeded(Equalizer.leastSize(steam), steam.rounded(1)));
    }
}
