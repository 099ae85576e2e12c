package gaugeglass.steam.reckoned;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Of;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Seen;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.steam.observed.CutoffTests.CutoffTestFall;
import gaugeglass.steam.observed.CutoffTests.Method;
import java.util.List;

/** How fast the level fell in the slow drain of a cutoff, and how much water it left. */
public final class SlowFall implements Reckoning {
    private static final Quantity NOTHING = Quantity.of(0, Unit.INCH);
    private static final Quantity MINUTE = Quantity.of(60, Unit.SECOND);

    /**
     * The fall of the level in a slow drain.
     *
     * @param fall how far in a minute; nothing where the level did not fall
     * @param left how far above the lowest visible part of the glass the water stood when the flame went out
     */
    @Item(
            id = "cutoff.slow-fall",
            of = "cutoff",
            stage = Stage.FIRING,
            ask = "How far did the level fall in a minute of the slow drain?",
            look = "(level at its beginning - level at its end) / time")
    public record CutoffSlowFall(
            @Of String which,

            @Measured(unit = Unit.INCH, from = "0", to = "2160")
            Quantity fall,

            @Measured(unit = Unit.INCH, from = "0", to = "36")
            Quantity left) {}

    @Override
    public Class<? extends Record> gives() {
        return CutoffSlowFall.class;
    }

    @Override
    public List<Class<? extends Record>> needs() {
        return List.of(CutoffTestFall.class);
    }

    @Override
    public List<CutoffSlowFall> work(Seen seen, String which) {
        CutoffTestFall noted = seen.of(CutoffTestFall.class, which, Method.SLOW_DRAIN);
        Quantity fallen = noted.begin().minus(noted.end());
        Quantity inMinute =
                fallen.isBelow(NOTHING) ? NOTHING : fallen.inUnit(Unit.INCH).times(MINUTE.ratioTo(noted.time()));
        return List.of(new CutoffSlowFall(which, inMinute, noted.end()));
    }
}
