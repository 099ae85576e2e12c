package gaugeglass.steam.reckoned;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Seen;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.steam.observed.AirPressures.Barometer;
import gaugeglass.steam.reckon.Saturation;
import gaugeglass.steam.reckoned.LocalAir.AirPressure;
import java.util.ArrayList;
import java.util.List;

/**
 * The pressure that the steam's temperature stands for: the most it may be, where a strapped-on probe or the weather
 * leaves room.
 */
public final class SteamFromTemperature implements Reckoning {
    static final String NEAR_VALVE = "gauge.near-valve-pressure";

    /** The gauge pressure that the steam temperature stands for. */
    @Item(
            id = "steam.pressure",
            look =
                    "pressure = psat(steam temperature, as hot as the probe's place allows) - air pressure (IAPWS-IF97).",
            of = "boiler",
            stage = Stage.HOT,
            ask = "Which pressure does the steam temperature stand for, at the most?")
    public record SteamPressure(
            @Measured(unit = Unit.PSI, from = "-16", to = "140")
            Quantity pressure) {}

    @Override
    public Class<? extends Record> gives() {
        return SteamPressure.class;
    }

    @Override
    public List<Class<? extends Record>> needs() {
        List<Class<? extends Record>> needs = new ArrayList<>(TrueSteam.NEEDS);
        needs.add(AirPressure.class);
        needs.add(Barometer.class);
        return needs;
    }

    @Override
    public List<String> limits() {
        return List.of(TrueSteam.LOW_AT_MOST, NEAR_VALVE);
    }

    @Override
    public List<SteamPressure> work(Seen seen, String which) {
        Quantity hottest = TrueSteam.hottest(seen);
        Quantity near = seen.limit(NEAR_VALVE);
        Quantity air =
                LocalAir.deciding(seen, at -> Saturation.pressure(hottest, at).isAtLeast(near));
        return List.of(new SteamPressure(Saturation.pressure(hottest, air)));
    }
}
