package gaugeglass.steam.reckoned;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Seen;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.steam.observed.FlueGas.FlueSample;
import gaugeglass.steam.reckon.Combustion;
import java.util.List;

/** The flue gas's carbon monoxide as it would be without the air that thins it; of a sample too thin to conclude from, nothing. */
public final class AirFreeReckoning implements Reckoning {
    /** The limit that gives the oxygen above which a sample says nothing. */
    public static final String THIN = "combustion.oxygen-inconclusive";

    /**
     * Carbon monoxide free of air.
     *
     * @param free the carbon monoxide without the air
     * @param oxygen of the sample it was read in
     */
    @Item(
            id = "combustion.air-free",
            look =
                    "free = CO x air / (air - O2), with air the oxygen of dry air, 20.9 %; none where the sample is thinned past the limit.",
            of = "boiler",
            stage = Stage.HOT,
            ask = "The flue gas's carbon monoxide, counted free of air.")
    public record AirFreeCo(
            @Measured(unit = Unit.PARTS_PER_MILLION, from = "0", to = "1000000000")
            Quantity free,

            @Measured(unit = Unit.PERCENT, from = "0", to = "25")
            Quantity oxygen) {}

    @Override
    public Class<? extends Record> gives() {
        return AirFreeCo.class;
    }

    @Override
    public List<Class<? extends Record>> needs() {
        return List.of(FlueSample.class);
    }

    @Override
    public List<String> limits() {
        return List.of(THIN);
    }

    @Override
    public List<AirFreeCo> work(Seen seen, String which) {
        FlueSample sample = seen.the(FlueSample.class);
        if (sample.oxygen().isAbove(seen.limit(THIN))) {
            return List.of();
        }
        Quantity free = Combustion.airFreeCo(sample.co(), sample.oxygen()).result();
        return List.of(new AirFreeCo(free, sample.oxygen()));
    }
}
