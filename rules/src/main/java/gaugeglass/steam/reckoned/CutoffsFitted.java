package gaugeglass.steam.reckoned;

import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Seen;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.steam.observed.Cutoffs.CutoffKind;
import gaugeglass.steam.observed.Cutoffs.CutoffReset;
import gaugeglass.steam.observed.Cutoffs.CutoffType;
import gaugeglass.steam.observed.Cutoffs.ResetManner;
import java.util.List;

/** Whether a boiler has a cutoff of a certain make-up among those fitted. */
public final class CutoffsFitted {
    /** In any order. */
    public static final List<Reckoning> ALL = List.of(new ManualReset(), new Floats());

    private CutoffsFitted() {}

    /** Whether at least one such cutoff is there. */
    public enum AmongCutoffs {
        PRESENT,
        ABSENT
    }

    /** Whether a cutoff with manual reset is fitted. */
    @Item(
            id = "cutoffs.manual-reset",
            look = "One of all cutoffs suffices; none is told only when all are described.",
            of = "boiler",
            stage = Stage.ARRIVAL,
            structural = true,
            ask = "Whether one of the cutoffs has a manual reset.")
    public record ManualResetCutoff(AmongCutoffs state) {}

    /** Whether a float-operated cutoff is fitted. */
    @Item(
            id = "cutoffs.float",
            look = "One of all cutoffs suffices; none is told only when all are described.",
            of = "boiler",
            stage = Stage.ARRIVAL,
            structural = true,
            ask = "Whether one of the cutoffs is operated by a float.")
    public record FloatCutoff(AmongCutoffs state) {}

    private static AmongCutoffs state(boolean present) {
        return present ? AmongCutoffs.PRESENT : AmongCutoffs.ABSENT;
    }

    private static final class ManualReset implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return ManualResetCutoff.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(CutoffReset.class);
        }

        @Override
        public List<ManualResetCutoff> work(Seen seen, String which) {
            return List.of(new ManualResetCutoff(
                    state(seen.any(CutoffReset.class, cutoff -> cutoff.manner() == ResetManner.MANUAL))));
        }
    }

    private static final class Floats implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return FloatCutoff.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(CutoffKind.class);
        }

        @Override
        public List<FloatCutoff> work(Seen seen, String which) {
            return List.of(
                    new FloatCutoff(state(seen.any(CutoffKind.class, cutoff -> cutoff.kind() == CutoffType.FLOAT))));
        }
    }
}
