package gaugeglass.steam.reckoned;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Seen;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.steam.observed.Site.AirFreeArea;
import gaugeglass.steam.observed.Site.AirRoute;
import gaugeglass.steam.observed.Site.AirSupply;
import gaugeglass.steam.observed.Site.RoomInput;
import gaugeglass.steam.reckon.CombustionAir;
import java.util.List;

/** The free area of a room's openings beside what its fires need; of rooms that take their air through openings. */
public final class RoomAirReckoning implements Reckoning {
    /** The limit that gives the area for a million Btu/h. */
    public static final String PER_MILLION = "site.air-area-per-million";

    /**
     * The openings a room has beside those it needs.
     *
     * @param free free area of all openings
     * @param needed free area for the total input
     */
    @Item(
            id = "site.room-air",
            look = "needed = total input / 1,000,000 Btu/h x the limit's area; beside it the free area as measured.",
            of = "site",
            stage = Stage.COLD,
            ask = "The free area of the openings, beside what the total input needs.")
    public record RoomAir(
            @Measured(unit = Unit.SQUARE_INCH, from = "0", to = "50000")
            Quantity free,

            @Measured(unit = Unit.SQUARE_INCH, from = "0", to = "50000")
            Quantity needed) {}

    @Override
    public Class<? extends Record> gives() {
        return RoomAir.class;
    }

    @Override
    public List<Class<? extends Record>> needs() {
        return List.of(AirSupply.class, RoomInput.class, AirFreeArea.class);
    }

    @Override
    public List<String> limits() {
        return List.of(PER_MILLION);
    }

    @Override
    public List<RoomAir> work(Seen seen, String which) {
        if (seen.the(AirSupply.class).route() != AirRoute.OPENINGS) {
            return List.of();
        }
        Quantity needed = CombustionAir.needed(seen.the(RoomInput.class).total(), seen.limit(PER_MILLION));
        return List.of(new RoomAir(seen.the(AirFreeArea.class).free(), needed));
    }
}
