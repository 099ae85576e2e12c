package gaugeglass.steam.observed;

import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Of;
import gaugeglass.engine.vocabulary.Stage;
import java.util.List;

/** What is seen and heard when a low-water cutoff is tested; each cutoff has a place for each way of testing it. */
public final class CutoffTests {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS = List.of(CutoffTestDone.class);

    private CutoffTests() {}

    /** The ways of testing a cutoff, from the one that proves least to the one that proves most. */
    public enum Method {
        HAND_PRESS,
        COLD_FLUSH,
        BOWL_DRAIN,
        SLOW_DRAIN
    }

    /** Whether something was done. */
    public enum Done {
        DONE,
        NOT_DONE
    }

    /** Whether this test was made today. */
    @Item(id = "cutoff-test.done", of = "cutoff-test", stage = Stage.FIRING, ask = "Was this test made today?")
    public record CutoffTestDone(@Of String which, @Of Method method, Done done) {}
}
