package gaugeglass.steam.reckoned;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Seen;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.steam.observed.Site.OutdoorCarbonMonoxide;
import gaugeglass.steam.observed.Site.RoomCarbonMonoxide;
import java.util.List;

/** By how much the room's air holds more carbon monoxide than the air outdoors. */
public final class RoomCoRiseReckoning implements Reckoning {
    /** The limit up to which a rise is left alone. */
    public static final String OVER_OUTDOORS = "site.co-over-outdoors";

    /**
     * Carbon monoxide indoors less outdoors.
     *
     * @param rise the difference; where the room alone is within the limit, the most it can be. Below zero where the air
     *     outdoors is worse
     */
    @Item(
            id = "site.co-rise",
            look =
                    "rise = reading in the room - reading outdoors; the room's reading alone where it is no more than the limit.",
            of = "site",
            stage = Stage.ARRIVAL,
            ask = "By how much the room's carbon monoxide is above that outdoors.")
    public record RoomCoRise(
            @Measured(unit = Unit.PARTS_PER_MILLION, from = "-2000", to = "2000")
            Quantity rise) {}

    @Override
    public Class<? extends Record> gives() {
        return RoomCoRise.class;
    }

    @Override
    public List<Class<? extends Record>> needs() {
        return List.of(RoomCarbonMonoxide.class, OutdoorCarbonMonoxide.class);
    }

    @Override
    public List<String> limits() {
        return List.of(OVER_OUTDOORS);
    }

    @Override
    public List<RoomCoRise> work(Seen seen, String which) {
        Quantity room = seen.the(RoomCarbonMonoxide.class).reading();
        // Outdoors there is never less than none, so a room this clean needs no reading outdoors.
        if (room.isAtMost(seen.limit(OVER_OUTDOORS))) {
            return List.of(new RoomCoRise(room));
        }
        return List.of(
                new RoomCoRise(room.minus(seen.the(OutdoorCarbonMonoxide.class).reading())));
    }
}
