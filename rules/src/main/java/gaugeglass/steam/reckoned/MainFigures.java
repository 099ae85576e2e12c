package gaugeglass.steam.reckoned;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Of;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Seen;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.steam.observed.Mains.MainBare;
import gaugeglass.steam.observed.Mains.MainFall;
import gaugeglass.steam.observed.Mains.MainPipe;
import gaugeglass.steam.observed.Mains.WaterRuns;
import gaugeglass.steam.reckon.PipeFlow;
import gaugeglass.steam.reckon.PipeFlow.Service;
import gaugeglass.steam.reckon.PipeLoss;
import gaugeglass.steam.reckon.PipeSize;
import java.util.List;

/** What each steam main carries, and what it gives off where it is bare. */
public final class MainFigures {
    /** In any order. */
    public static final List<Reckoning> ALL = List.of(new Capacity(), new Loss());

    static final String STEAM = "main.steam-temperature";
    static final String ROOM = "main.room-temperature";

    private MainFigures() {}

    /** The radiation that a main carries by the table of dripped mains; of mains whose water runs with the steam. */
    @Item(
            id = "main.capacity",
            look = "The table of dripped mains, for the pipe's size and the run.",
            of = "main",
            stage = Stage.COLD,
            ask = "How much radiation does this main carry by the table of dripped mains?")
    public record MainCapacity(
            @Of String which,

            @Measured(unit = Unit.SQUARE_FOOT, from = "0", to = "100000")
            Quantity most) {}

    /** The heat that the bare part of a main gives off while there is steam in it. */
    @Item(
            id = "main.bare-loss",
            look = "all = each x length; each = pi x d / foot x (conv + rad), for still air and dull steel.",
            of = "main",
            stage = Stage.COLD,
            ask = "How much heat does the bare part of this main give off while steam is in it?")
    public record MainBareLoss(
            @Of String which,

            @Measured(unit = Unit.BTU_PER_HOUR, from = "0", to = "10000000")
            Quantity loss) {}

    private static final class Capacity implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return MainCapacity.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(MainFall.class, MainPipe.class);
        }

        @Override
        public List<MainCapacity> work(Seen seen, String which) {
            if (seen.of(MainFall.class, which).water() != WaterRuns.WITH_THE_STEAM) {
                return List.of();
            }
            MainPipe main = seen.of(MainPipe.class, which);
            Quantity size = PipeSize.notAbove(main.size()).nominal();
            return List.of(new MainCapacity(
                    which, PipeFlow.capacity(Service.MAIN, size, main.run()).result()));
        }
    }

    private static final class Loss implements Reckoning {
        private static final Quantity NOTHING_BARE = Quantity.of(0, Unit.FOOT);

        @Override
        public Class<? extends Record> gives() {
            return MainBareLoss.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(MainBare.class, MainPipe.class);
        }

        @Override
        public List<String> limits() {
            return List.of(STEAM, ROOM);
        }

        @Override
        public List<MainBareLoss> work(Seen seen, String which) {
            Quantity bare = seen.of(MainBare.class, which).length();
            if (bare.isAtMost(NOTHING_BARE)) {
                return List.of();
            }
            Quantity size =
                    PipeSize.notAbove(seen.of(MainPipe.class, which).size()).nominal();
            Quantity loss = PipeLoss.bare(size, bare, seen.limit(STEAM), seen.limit(ROOM))
                    .result();
            return List.of(new MainBareLoss(which, loss.rounded(0)));
        }
    }
}
