package gaugeglass.engine.toy;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Seen;
import gaugeglass.engine.vocabulary.Trade;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.util.List;

/**
 * A toy trade: a workshop that looks over bicycles. It has a kind of every placement and an item of every form, and
 * stands for any trade in the tests of the engine.
 */
public final class Bicycles implements Trade {
    @Override
    public List<Kind> kinds() {
        return List.of(
                Kind.site("site", "workshop"),
                Kind.unit("bicycle", "bicycles", "bicycle"),
                Kind.counted("wheel", "wheels", "wheel", 4),
                Kind.counted("brake", "brakes", "brake", 3),
                Kind.fixed("pull", "pulls", "pull of the lever", "brake", Weather.class));
    }

    @Override
    public List<Class<? extends Record>> items() {
        return List.of(
                WorkshopFloor.class,
                WorkshopTemperature.class,
                FrameMaterial.class,
                FrameNumber.class,
                FrameMade.class,
                WheelPlace.class,
                BrakeKind.class,
                FrameCrack.class,
                ChainWear.class,
                ChainSize.class,
                ChainSpares.class,
                SaddleRaised.class,
                TyrePressure.class,
                TyreMarked.class,
                SpokesMissing.class,
                WheelTrued.class,
                PadThickness.class,
                PullGrip.class,
                PullDistance.class,
                RideNoise.class);
    }

    @Override
    public List<Reckoning> reckonings() {
        return List.of(new ShareOfMarked());
    }

    public static Vocabulary vocabulary() {
        return Vocabulary.of(new Bicycles());
    }

    /** The share of its marked pressure that a tyre holds. */
    private static final class ShareOfMarked implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return TyreShare.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(TyrePressure.class, TyreMarked.class);
        }

        @Override
        public List<? extends Record> work(Seen seen, String which) {
            Quantity marked = seen.of(TyreMarked.class, which).pressure();
            Rational share = seen.of(TyrePressure.class, which).pressure().ratioTo(marked);
            return List.of(new TyreShare(which, Quantity.of(share.times(Rational.of(100)), Unit.PERCENT)));
        }
    }
}
