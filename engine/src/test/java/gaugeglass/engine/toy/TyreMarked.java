package gaugeglass.engine.toy;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Of;
import gaugeglass.engine.vocabulary.Stage;

/** Which greatest pressure is marked on the tyre? */
@Item(
        id = "wheel.marked",
        of = "wheel",
        stage = Stage.COLD,
        ask = "Which greatest pressure is marked on the tyre?",
        carried = true,
        unreadBecause = {"worn away"})
public record TyreMarked(
        @Of String which,
        @Measured(unit = Unit.PSI, from = "10", to = "150") Quantity pressure) {}
