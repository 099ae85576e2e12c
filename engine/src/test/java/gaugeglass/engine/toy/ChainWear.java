package gaugeglass.engine.toy;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Stage;

/** How far has the chain stretched? */
@Item(
        id = "chain.wear",
        of = "bicycle",
        stage = Stage.COLD,
        ask = "How far has the chain stretched?",
        unreadBecause = {"no gauge at hand"})
public record ChainWear(
        @Measured(unit = Unit.PERCENT, from = "0", to = "5") Quantity wear) {}
