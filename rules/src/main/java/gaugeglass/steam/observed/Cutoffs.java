package gaugeglass.steam.observed;

import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Of;
import gaugeglass.engine.vocabulary.Stage;
import java.time.LocalDate;
import java.util.List;

/** What is seen of each low-water fuel cutoff. */
public final class Cutoffs {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS = List.of(CutoffKind.class, CutoffInstalled.class);

    private Cutoffs() {}

    /** How a cutoff senses water. */
    public enum CutoffType {
        FLOAT,
        PROBE
    }

    /** How the cutoff senses water. */
    @Item(
            id = "cutoff.kind",
            of = "cutoff",
            stage = Stage.ARRIVAL,
            structural = true,
            carried = true,
            ask = "How does the cutoff sense water: a float in a bowl, or a probe?",
            unreadBecause = {"no nameplate", "lagged over"})
    public record CutoffKind(@Of String which, CutoffType kind) {}

    /** When the cutoff was put in. */
    @Item(
            id = "cutoff.installed",
            of = "cutoff",
            stage = Stage.ARRIVAL,
            carried = true,
            ask = "When was the cutoff put in?",
            look = "A tag or the date code; the year alone will do.",
            unreadBecause = {"no date on it", "no record"})
    public record CutoffInstalled(@Of String which, LocalDate on) {}
}
