package gaugeglass.steam.reckoned;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Seen;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.steam.observed.AirPressures.AirPressureFrom;
import gaugeglass.steam.observed.AirPressures.Barometer;
import gaugeglass.steam.observed.AirPressures.Elevation;
import gaugeglass.steam.observed.AirPressures.KnownBy;
import gaugeglass.steam.reckon.StandardAtmosphere;
import java.util.List;
import java.util.function.Function;

/**
 * Between which two pressures the air at the place stands: the barometer itself where one was read, else what the
 * elevation gives on an average day with the weather's swing to either side.
 */
public final class LocalAir implements Reckoning {
    static final String SWING = "site.weather-swing";

    /**
     * The pressure of the air at the place.
     *
     * @param lowest what it may be at the least
     * @param highest what it may be at the most
     */
    @Item(
            id = "site.air-pressure",
            look =
                    "The barometer at the place; without one the standard atmosphere at the elevation (US Standard Atmosphere 1976), less and more the limit's swing of the weather.",
            of = "site",
            stage = Stage.ARRIVAL,
            ask = "Between which two pressures does the local air stand?")
    public record AirPressure(
            @Measured(unit = Unit.PSI_ABSOLUTE, from = "8", to = "16")
            Quantity lowest,

            @Measured(unit = Unit.PSI_ABSOLUTE, from = "8", to = "16")
            Quantity highest) {}

    @Override
    public Class<? extends Record> gives() {
        return AirPressure.class;
    }

    @Override
    public List<Class<? extends Record>> needs() {
        return List.of(AirPressureFrom.class, Barometer.class, Elevation.class);
    }

    @Override
    public List<String> limits() {
        return List.of(SWING);
    }

    @Override
    public List<AirPressure> work(Seen seen, String which) {
        Quantity average = usual(seen);
        if (seen.the(AirPressureFrom.class).known() == KnownBy.BAROMETER) {
            return List.of(new AirPressure(average, average));
        }
        Quantity swing = seen.limit(SWING);
        return List.of(new AirPressure(average.minus(swing), average.plus(swing)));
    }

    /** The one figure for the air, where what is judged allows for the weather: the barometer, else the elevation's average. */
    static Quantity usual(Seen seen) {
        return seen.the(AirPressureFrom.class).known() == KnownBy.BAROMETER
                ? seen.the(Barometer.class).pressure()
                : StandardAtmosphere.at(seen.the(Elevation.class).height());
    }

    /**
     * The air pressure to judge by: an end of what it may be, where the same follows from both ends; else the barometer,
     * which must then have been read.
     */
    static Quantity deciding(Seen seen, Function<Quantity, ?> follows) {
        AirPressure air = seen.the(AirPressure.class);
        return follows.apply(air.lowest()).equals(follows.apply(air.highest()))
                ? air.lowest()
                : seen.the(Barometer.class).pressure();
    }
}
