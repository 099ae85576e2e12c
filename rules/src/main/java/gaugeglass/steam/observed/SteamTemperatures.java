package gaugeglass.steam.observed;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Stage;
import java.util.List;

/** The temperature of the boiler's steam: the witness that no dial can talk over. */
public final class SteamTemperatures {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS = List.of(SteamProbePlace.class, SteamTemperature.class);

    private SteamTemperatures() {}

    /** Where the probe was. */
    public enum ProbePlace {
        /** In a well or in the steam itself. */
        IMMERSED,
        /** Clamped to the outside of a bare pipe; it reads a few degrees low. */
        STRAPPED_ON
    }

    /** How the steam temperature was taken. */
    @Item(
            id = "steam.probe",
            of = "boiler",
            stage = Stage.HOT,
            ask = "How was the steam temperature taken: probe in the steam, or strapped to the pipe?",
            look = "At the header or a riser that is hot all round and has blown its air out.",
            unreadBecause = {"no probe at hand", "steam was not raised"})
    public record SteamProbePlace(ProbePlace place) {}

    /** The steam temperature as the probe showed it. */
    @Item(
            id = "steam.temperature",
            of = "boiler",
            stage = Stage.HOT,
            ask = "What steam temperature did the probe show, as read?",
            look = "While steaming, steady, air gone. Bare hot pipe burns: gloves, and no reaching over it.",
            unreadBecause = {"no probe at hand", "steam was not raised", "never steady"})
    public record SteamTemperature(
            @Measured(unit = Unit.FAHRENHEIT, from = "100", to = "350")
            Quantity temperature) {}
}
