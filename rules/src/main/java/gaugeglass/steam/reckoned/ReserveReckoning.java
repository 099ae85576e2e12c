package gaugeglass.steam.reckoned;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Seen;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.steam.observed.WaterLevel.WaterReserve;
import gaugeglass.steam.reckon.LowWaterTime;
import gaugeglass.steam.reckon.Saturation;
import gaugeglass.steam.reckoned.GrossOutputReckoning.GrossOutput;
import java.util.List;

/**
 * How long full fire takes from the normal line to the cutoff's, when nothing is fed and nothing comes back.
 *
 * <p>Reckoned for steam without pressure under the standard atmosphere: whatever else a low-pressure boiler may run at, the
 * latent heat is less by 3 % at the most, and the time with it.
 */
public final class ReserveReckoning implements Reckoning {
    private static final Quantity OPEN = Quantity.of(0, Unit.PSI);

    /** The time that the water between the two lines lasts. */
    @Item(
            id = "level.reserve-time",
            of = "boiler",
            stage = Stage.COLD,
            ask =
                    "How long full fire takes from the normal line to the cutoff's, with no feed and nothing coming back.",
            look = "Water between the two lines x density of boiling water / (output / latent heat)")
    public record WaterReserveTime(
            @Measured(unit = Unit.MINUTE, from = "0", to = "100000")
            Quantity time) {}

    @Override
    public Class<? extends Record> gives() {
        return WaterReserveTime.class;
    }

    @Override
    public List<Class<? extends Record>> needs() {
        return List.of(WaterReserve.class, GrossOutput.class);
    }

    @Override
    public List<WaterReserveTime> work(Seen seen, String which) {
        Quantity time = LowWaterTime.minutes(
                        seen.the(WaterReserve.class).volume(),
                        seen.the(GrossOutput.class).output(),
                        OPEN,
                        Saturation.STANDARD_ATMOSPHERE)
                .quantity(LowWaterTime.TIME);
        return List.of(new WaterReserveTime(time));
    }
}
