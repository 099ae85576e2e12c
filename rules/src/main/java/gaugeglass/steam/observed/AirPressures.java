package gaugeglass.steam.observed;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Stage;
import java.util.List;

/** How hard the air presses at the place; a pressure gauge counts from there. */
public final class AirPressures {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS =
            List.of(AirPressureFrom.class, Barometer.class, Elevation.class);

    private AirPressures() {}

    /** What the local air pressure is known by. */
    public enum KnownBy {
        BAROMETER,
        ELEVATION
    }

    /** Whether there is a barometer reading or only the elevation of the place. */
    @Item(
            id = "site.air-pressure-from",
            of = "site",
            stage = Stage.ARRIVAL,
            ask = "Is the local air pressure read from a barometer today, or only the elevation known?",
            look = "A weather report reduced to sea level is no barometer reading for a place on a hill.",
            unreadBecause = {"neither is known"})
    public record AirPressureFrom(KnownBy known) {}

    /** The barometer at the place. */
    @Item(
            id = "site.barometer",
            of = "site",
            stage = Stage.ARRIVAL,
            ask = "What does a barometer at the place read today, not reduced to sea level?",
            look = "Station pressure: a barometer held in the room, or a pressure meter's absolute reading.",
            unreadBecause = {"no barometer at hand"})
    public record Barometer(
            @Measured(unit = Unit.PSI_ABSOLUTE, from = LEAST, to = "15.5")
            Quantity pressure) {
        /** The lowest that is believed, in psi; the highest place that is believed has more. */
        public static final String LEAST = "9";
    }

    /** How high the place lies. */
    @Item(
            id = "site.elevation",
            of = "site",
            stage = Stage.ARRIVAL,
            carried = true,
            ask = "How high above sea level is the boiler room?",
            look = "From a map, to the nearest hundred feet.",
            unreadBecause = {"no map at hand"})
    public record Elevation(
            @Measured(unit = Unit.FOOT, from = "-300", to = "12000")
            Quantity height) {}
}
