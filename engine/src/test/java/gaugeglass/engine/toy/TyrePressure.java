package gaugeglass.engine.toy;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Of;
import gaugeglass.engine.vocabulary.Stage;

/** What pressure does the tyre hold? */
@Item(
        id = "wheel.pressure",
        of = "wheel",
        stage = Stage.COLD,
        ask = "What pressure does the tyre hold?",
        unreadBecause = {"valve stuck", "no gauge at hand"})
public record TyrePressure(
        @Of String which,
        @Measured(unit = Unit.PSI, from = "0", to = "150") Quantity pressure) {}
