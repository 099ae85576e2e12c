package gaugeglass.steam.observed;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Counted;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Stage;
import java.util.List;

/** What an analyser shows of the flue gas of a steady fire. */
public final class FlueGas {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS =
            List.of(CombustionTest.class, FlueSample.class, FlueCoTrend.class, FlueSmoke.class);

    private FlueGas() {}

    /** Whether flue gas was sampled. */
    public enum SampleTaken {
        TAKEN,
        NOT_TAKEN
    }

    /** Whether the flue gas was sampled on this visit. */
    @Item(
            id = "combustion.test",
            of = "boiler",
            stage = Stage.HOT,
            ask = "Was the flue gas sampled with an analyser today?")
    public record CombustionTest(SampleTaken sample) {}

    /** Carbon monoxide and oxygen of one sample of dry flue gas. */
    @Item(
            id = "combustion.sample",
            of = "boiler",
            stage = Stage.HOT,
            ask = "Carbon monoxide and oxygen in the flue gas, as the analyser shows them?",
            look =
                    "In the boiler's outlet, before draft hood or regulator lets room air in; steady for ten minutes. As read,"
                            + " not recounted to air-free. Several outlets or two fuels: the worst.",
            unreadBecause = {"analyser out of order", "no place to sample"})
    public record FlueSample(
            @Measured(unit = Unit.PARTS_PER_MILLION, from = "0", to = "50000")
            Quantity co,

            @Measured(unit = Unit.PERCENT, from = "0", to = "25")
            Quantity oxygen) {}

    /** Where the carbon monoxide was going. */
    public enum CoCourse {
        STEADY,
        FALLING,
        RISING
    }

    /** Where the carbon monoxide in the flue was going when the probe was drawn. */
    @Item(
            id = "combustion.co-trend",
            of = "boiler",
            stage = Stage.HOT,
            ask = "After ten minutes of steady fire, is the carbon monoxide steady, falling or still rising?",
            look = "Rising: from one reading to the next by more than the analyser wanders by itself.",
            unreadBecause = {"sampled once only"})
    public record FlueCoTrend(CoCourse trend) {}

    /** The smoke of an oil flame, as the nearest spot of the comparison scale, 0 (white) to 9 (black). */
    @Item(
            id = "combustion.smoke-spot",
            of = "boiler",
            stage = Stage.HOT,
            ask = "Which spot of the smoke scale does the oil flame leave on the filter paper?",
            look =
                    "Ten slow strokes of the pump where the sample is taken, the fire ten minutes steady. Between two spots, the"
                            + " darker. A yellow or oily spot is unburned oil: write down 9.",
            unreadBecause = {"no smoke pump", "fired on gas today"})
    public record FlueSmoke(@Counted(from = 0, to = 9) int spot) {}
}
