package gaugeglass.steam.reckoned;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Seen;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.steam.observed.Site.AirFanFlow;
import gaugeglass.steam.observed.Site.AirRoute;
import gaugeglass.steam.observed.Site.AirSupply;
import gaugeglass.steam.observed.Site.RoomInput;
import gaugeglass.steam.reckon.CombustionAir;
import java.util.List;

/** The air that a room's fan delivers beside what its fires need; of rooms that are given their air by a fan. */
public final class FanAirReckoning implements Reckoning {
    /** The limit that gives the flow for a million Btu/h. */
    public static final String PER_MILLION = "site.air-flow-per-million";

    /**
     * The air a room is given beside what it needs.
     *
     * @param flow of the fan
     * @param needed for the total input
     */
    @Item(
            id = "site.fan-air",
            look = "needed = total input / 1,000,000 Btu/h x the limit's flow; beside it the flow as measured.",
            of = "site",
            stage = Stage.COLD,
            ask = "The air that the fan delivers, beside what the total input needs.")
    public record FanAir(
            @Measured(unit = Unit.CUBIC_FOOT_PER_MINUTE, from = "0", to = "50000")
            Quantity flow,

            @Measured(unit = Unit.CUBIC_FOOT_PER_MINUTE, from = "0", to = "50000")
            Quantity needed) {}

    @Override
    public Class<? extends Record> gives() {
        return FanAir.class;
    }

    @Override
    public List<Class<? extends Record>> needs() {
        return List.of(AirSupply.class, RoomInput.class, AirFanFlow.class);
    }

    @Override
    public List<String> limits() {
        return List.of(PER_MILLION);
    }

    @Override
    public List<FanAir> work(Seen seen, String which) {
        if (seen.the(AirSupply.class).route() != AirRoute.FAN) {
            return List.of();
        }
        Quantity needed = CombustionAir.needed(seen.the(RoomInput.class).total(), seen.limit(PER_MILLION));
        return List.of(new FanAir(seen.the(AirFanFlow.class).flow(), needed));
    }
}
