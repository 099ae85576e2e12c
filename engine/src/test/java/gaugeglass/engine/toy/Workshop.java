package gaugeglass.engine.toy;

import gaugeglass.engine.Rulebook;
import gaugeglass.engine.build.RulebookBuild;
import gaugeglass.engine.build.RulebookSource;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Seen;
import gaugeglass.engine.vocabulary.Trade;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The toy trade with a rulebook over it, and with reckonings that look at all wheels or all brakes. */
public final class Workshop implements Trade {
    private static final Bicycles BICYCLES = new Bicycles();

    @Override
    public List<Kind> kinds() {
        return BICYCLES.kinds();
    }

    @Override
    public List<Class<? extends Record>> items() {
        return BICYCLES.items();
    }

    @Override
    public List<Reckoning> reckonings() {
        List<Reckoning> all = new ArrayList<>(BICYCLES.reckonings());
        all.add(new AllSpokes());
        all.add(new AnyDisc());
        return all;
    }

    /** The toy rulebook's files, by name. */
    public static Map<String, String> texts() {
        return RulebookSource.files(Path.of("src/test/resources/toy-rulebook"));
    }

    /** The toy rulebook, built once. */
    public static RulebookBuild.Built built() {
        return Once.BUILT;
    }

    /** The toy rulebook, loaded once. */
    public static Rulebook rulebook() {
        return Once.RULEBOOK;
    }

    private static final class Once {
        private static final RulebookBuild.Built BUILT =
                RulebookBuild.build("toy", "1", "gaugeglass.engine.toy.compiled", new Workshop(), texts());
        private static final Rulebook RULEBOOK = Rulebook.of(BUILT.stored(), BUILT.loader());
    }

    private static final class AllSpokes implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return SpokesInAll.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(SpokesMissing.class);
        }

        @Override
        public List<? extends Record> work(Seen seen, String which) {
            if (seen.tags("wheel").isEmpty()) {
                return List.of();
            }
            int number = 0;
            for (SpokesMissing wheel : seen.each(SpokesMissing.class)) {
                number += wheel.number();
            }
            return number == 0 ? List.of() : List.of(new SpokesInAll(number));
        }
    }

    private static final class AnyDisc implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return DiscFitted.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(BrakeKind.class);
        }

        @Override
        public List<? extends Record> work(Seen seen, String which) {
            return seen.any(BrakeKind.class, brake -> brake.sort() == BrakeSort.DISC)
                    ? List.of(new DiscFitted(BrakeSort.DISC))
                    : List.of();
        }
    }
}
