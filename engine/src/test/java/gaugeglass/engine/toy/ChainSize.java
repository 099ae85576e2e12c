package gaugeglass.engine.toy;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Counted;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Stage;

/** How long is the chain, and how many links has it? */
@Item(id = "chain.size", of = "bicycle", stage = Stage.COLD, ask = "How long is the chain, and how many links has it?")
public record ChainSize(
        @Measured(unit = Unit.INCH, from = "30", to = "80") Quantity length,
        @Counted(from = 60, to = 160) int links) {}
