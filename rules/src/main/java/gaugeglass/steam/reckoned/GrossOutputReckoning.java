package gaugeglass.steam.reckoned;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Seen;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.steam.observed.BoilerPlate.PlateInput;
import gaugeglass.steam.observed.BoilerPlate.PlateMark;
import gaugeglass.steam.observed.BoilerPlate.PlateOutput;
import gaugeglass.steam.observed.BoilerPlate.PlateOutputMark;
import java.util.List;

/** The boiler's gross output: what the plate says, else a share of the input that it says. */
public final class GrossOutputReckoning implements Reckoning {
    /** The limit that gives the share. */
    public static final String SHARE = "plate.output-of-input";

    /** The boiler's gross output. */
    @Item(
            id = "plate.gross-output",
            look = "The output on the plate; where none is marked, input on the plate x the limit's share.",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "The boiler's gross output, from its plate or reckoned from its input.")
    public record GrossOutput(
            @Measured(unit = Unit.BTU_PER_HOUR, from = "0", to = "20000000")
            Quantity output) {}

    @Override
    public Class<? extends Record> gives() {
        return GrossOutput.class;
    }

    @Override
    public List<Class<? extends Record>> needs() {
        return List.of(PlateOutputMark.class, PlateOutput.class, PlateInput.class);
    }

    @Override
    public List<String> limits() {
        return List.of(SHARE);
    }

    @Override
    public List<GrossOutput> work(Seen seen, String which) {
        if (seen.the(PlateOutputMark.class).mark() == PlateMark.MARKED) {
            return List.of(new GrossOutput(seen.the(PlateOutput.class).output()));
        }
        Quantity input = seen.the(PlateInput.class).input();
        return List.of(new GrossOutput(ofInput(input, seen.limit(SHARE))));
    }

    /** The output that is taken for a boiler of which only the input is known. */
    static Quantity ofInput(Quantity input, Quantity share) {
        return input.times(share.valueIn(Unit.TIMES));
    }
}
