package gaugeglass.steam.reckoned;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Counted;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Seen;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.steam.observed.Piping.BoilerRisers;
import gaugeglass.steam.reckon.Equalizer;
import gaugeglass.steam.reckon.PipeFlow;
import gaugeglass.steam.reckon.PipeSize;
import gaugeglass.steam.reckoned.GrossOutputReckoning.GrossOutput;
import gaugeglass.steam.reckoned.LocalAir.AirPressure;
import java.util.List;

/**
 * How fast steam leaves the boiler at full fire, while there is no pressure yet: the gross output as steam, shared evenly
 * among risers that are all taken to be of the smallest one's size, at the lowest air pressure that the place may have.
 */
public final class ExitVelocityReckoning implements Reckoning {
    private static final Quantity NO_PRESSURE = Quantity.of(0, Unit.PSI);

    /**
     * How fast steam leaves the boiler.
     *
     * @param speed in each riser
     * @param number how many risers there are
     * @param size nominal size that was reckoned with
     */
    @Item(
            id = "piping.exit-velocity",
            look =
                    "steam = output x 34.5 / 33,475, shared among the risers; speed = steam x vg / (hour x bore) (IAPWS-IF97).",
            of = "boiler",
            stage = Stage.COLD,
            ask = "How fast does steam leave the boiler through its risers at full fire?")
    public record ExitVelocity(
            @Measured(unit = Unit.FOOT_PER_SECOND, from = "0", to = "50000")
            Quantity speed,

            @Counted(from = 1, to = 8) int number,

            @Measured(unit = Unit.INCH, from = "1", to = "12")
            Quantity size) {}

    @Override
    public Class<? extends Record> gives() {
        return ExitVelocity.class;
    }

    @Override
    public List<Class<? extends Record>> needs() {
        return List.of(GrossOutput.class, BoilerRisers.class, AirPressure.class);
    }

    @Override
    public List<ExitVelocity> work(Seen seen, String which) {
        BoilerRisers risers = seen.the(BoilerRisers.class);
        Quantity steam = Equalizer.steam(seen.the(GrossOutput.class).output()).dividedBy(risers.number());
        Quantity size = PipeSize.notAbove(risers.size()).nominal();
        Quantity air = seen.the(AirPressure.class).lowest();
        Quantity speed = PipeFlow.speed(steam, size, NO_PRESSURE, air).result();
        return List.of(new ExitVelocity(speed.rounded(1), risers.number(), size));
    }
}
