package gaugeglass.steam.observed;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Stage;
import java.util.List;

/** What is seen of the steam and return piping close to the boiler. */
public final class Piping {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS =
            List.of(StopValves.class, EqualizerPipe.class, EqualizerSize.class);

    private Piping() {}

    /** How steam and return stop valves stand. */
    public enum StopValveState {
        NONE_FITTED,
        OPEN,
        SHUT,
        POSITION_NOT_PROVED
    }

    /** How the stop valves between boiler and system stand. */
    @Item(
            id = "piping.stop-valves",
            of = "boiler",
            stage = Stage.COLD,
            ask = "How do the stop valves in steam and return stand?",
            look = "Rising stem, or turn it and count; a handle proves nothing. Worst one counts.")
    public record StopValves(StopValveState state) {}

    /** How the equalizer is found. */
    public enum EqualizerState {
        OPEN,
        VALVED,
        MISSING,
        NOT_CALLED_FOR
    }

    /** How the pipe from the steam header down to the return is found. */
    @Item(
            id = "piping.equalizer",
            of = "boiler",
            stage = Stage.COLD,
            structural = true,
            ask = "Is there an equalizer from the header's end down to the return, and is it without valves?",
            look = "A valve in it counts whether it is open or shut. Not called for: the maker's drawing for a pumped"
                    + " return shows none.",
            unreadBecause = {"behind insulation"})
    public record EqualizerPipe(EqualizerState state) {}

    /** The nominal size of the equalizer. */
    @Item(
            id = "piping.equalizer-size",
            of = "boiler",
            stage = Stage.COLD,
            carried = true,
            ask = "What nominal pipe size is the equalizer, at its narrowest?",
            unreadBecause = {"behind insulation"})
    public record EqualizerSize(
            @Measured(unit = Unit.INCH, from = "0.5", to = "12")
            Quantity nominal) {}
}
