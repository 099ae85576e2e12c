package gaugeglass.engine.toy;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Of;
import gaugeglass.engine.vocabulary.Stage;

/** Which share of the marked pressure does the tyre hold? */
@Item(
        id = "wheel.pressure-share",
        of = "wheel",
        stage = Stage.COLD,
        ask = "Which share of the marked pressure does the tyre hold?")
public record TyreShare(
        @Of String which,

        @Measured(unit = Unit.PERCENT, from = "0", to = "1000")
        Quantity share) {}
