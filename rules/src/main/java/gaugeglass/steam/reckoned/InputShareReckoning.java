package gaugeglass.steam.reckoned;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Seen;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.steam.observed.BoilerPlate.PlateInput;
import gaugeglass.steam.reckoned.InputReckoning.InputTaken;
import java.util.List;

/** The measured input as a share of the plate's. */
public final class InputShareReckoning implements Reckoning {
    /**
     * Measured input over the plate's.
     *
     * @param share as measured, exact
     * @param least that it may be by what the reading is worth, exact
     */
    @Item(
            id = "input.of-plate",
            look = "share = measured input / input on the plate x 100; the same of the least.",
            of = "boiler",
            stage = Stage.HOT,
            ask = "The measured input as a share of the plate's.")
    public record InputOfPlate(
            @Measured(unit = Unit.PERCENT, from = "0", to = "10000000000")
            Quantity share,

            @Measured(unit = Unit.PERCENT, from = "0", to = "10000000000")
            Quantity least) {}

    @Override
    public Class<? extends Record> gives() {
        return InputOfPlate.class;
    }

    @Override
    public List<Class<? extends Record>> needs() {
        return List.of(InputTaken.class, PlateInput.class);
    }

    @Override
    public List<InputOfPlate> work(Seen seen, String which) {
        InputTaken taken = seen.the(InputTaken.class);
        Quantity plate = seen.the(PlateInput.class).input();
        return List.of(new InputOfPlate(percent(taken.input(), plate), percent(taken.least(), plate)));
    }

    private static Quantity percent(Quantity input, Quantity plate) {
        return Quantity.of(input.ratioTo(plate), Unit.TIMES).inUnit(Unit.PERCENT);
    }
}
