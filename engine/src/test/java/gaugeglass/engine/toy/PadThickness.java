package gaugeglass.engine.toy;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Of;
import gaugeglass.engine.vocabulary.Stage;

/** How thick is the thinner pad? */
@Item(
        id = "brake.pad",
        of = "brake",
        stage = Stage.COLD,
        ask = "How thick is the thinner pad?",
        unreadBecause = {"wheel not taken out"})
public record PadThickness(
        @Of String which,

        @Measured(unit = Unit.MILLIMETRE, from = "0", to = "20")
        Quantity thickness) {}
