package gaugeglass.steam.reckoned;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Seen;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.steam.reckoned.ControlSettings.OperatingCutOut;
import java.util.List;

/**
 * How high water must be able to stand in the returns before it runs into the boiler by its own weight.
 *
 * <p>On one pipe the boiler's pressure is at both ends of the water, but for what steam loses on its way to the end of the
 * main: that drop, friction and a margin are to be balanced. Behind traps the returns are open to the air, and the whole
 * cut-out pressure is. Whether either is wanted, for the kind of system and return, is the rules' to say.
 */
public final class ReturnHeads {
    static final String DROP = "return.one-pipe-drop";
    static final String HEAD_ONE_PIPE = "return.one-pipe-head-per-psi";
    static final String FRICTION = "return.one-pipe-friction";
    static final String MARGIN = "return.one-pipe-margin";
    static final String HEAD_TWO_PIPE = "return.two-pipe-head-per-psi";

    /** In the order in which they may use one another's results. */
    public static final List<Reckoning> ALL = List.of(new OnePipe(), new TwoPipe());

    private ReturnHeads() {}

    /** The height that the returning water needs above the boiler's water line on one pipe. */
    @Item(
            id = "system.one-pipe-head",
            look = "height = the limit's inches a psi x the main's pressure drop + friction + margin.",
            of = "boiler",
            stage = Stage.COLD,
            ask = "How high must water be able to stand in a one-pipe system's return?")
    public record OnePipeHead(
            @Measured(unit = Unit.INCH, from = "0", to = "3000")
            Quantity height) {}

    /**
     * The height that the returning water needs above the boiler's water line behind traps.
     *
     * @param height from the boiler's normal water line
     * @param setting the operating cut-out that it balances
     */
    @Item(
            id = "system.two-pipe-head",
            look = "height = the limit's inches a psi x the operating cut-out.",
            of = "boiler",
            stage = Stage.COLD,
            ask = "How high must water be able to stand in a two-pipe system's returns?")
    public record TwoPipeHead(
            @Measured(unit = Unit.INCH, from = "0", to = "3000")
            Quantity height,

            @Measured(unit = Unit.PSI, from = "-7", to = "90")
            Quantity setting) {}

    /** Works out the height on one pipe. */
    public static final class OnePipe implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return OnePipeHead.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of();
        }

        @Override
        public List<String> limits() {
            return List.of(DROP, HEAD_ONE_PIPE, FRICTION, MARGIN);
        }

        @Override
        public List<OnePipeHead> work(Seen seen, String which) {
            Quantity drop = seen.limit(HEAD_ONE_PIPE).times(seen.limit(DROP).valueIn(Unit.PSI));
            return List.of(new OnePipeHead(drop.plus(seen.limit(FRICTION)).plus(seen.limit(MARGIN))));
        }
    }

    /** Works out the height behind traps. */
    public static final class TwoPipe implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return TwoPipeHead.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(OperatingCutOut.class);
        }

        @Override
        public List<String> limits() {
            return List.of(HEAD_TWO_PIPE);
        }

        @Override
        public List<TwoPipeHead> work(Seen seen, String which) {
            return seen.each(OperatingCutOut.class).stream()
                    .map(cutOut -> new TwoPipeHead(
                            seen.limit(HEAD_TWO_PIPE).times(cutOut.pressure().valueIn(Unit.PSI)), cutOut.pressure()))
                    .toList();
        }
    }
}
