package gaugeglass.steam.observed;

import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Stage;
import java.util.List;

/** How the boiler gets its fire. */
public final class Firing {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS = List.of(BurnerFiring.class);

    private Firing() {}

    /** Whether a fire is started and stopped by controls or by a hand. */
    public enum FiringManner {
        AUTOMATIC,
        HAND_FIRED
    }

    /** How the boiler is fired. */
    @Item(
            id = "burner.firing",
            of = "boiler",
            stage = Stage.ARRIVAL,
            structural = true,
            ask = "Is the boiler fired automatically or by hand?")
    public record BurnerFiring(FiringManner manner) {}
}
