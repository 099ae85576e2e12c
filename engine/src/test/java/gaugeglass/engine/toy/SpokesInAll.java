package gaugeglass.engine.toy;

import gaugeglass.engine.vocabulary.Counted;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Stage;

/** How many spokes are missing on all wheels together; reckoned. */
@Item(id = "spokes.in-all", of = "bicycle", stage = Stage.COLD, ask = "How many spokes are missing in all?")
public record SpokesInAll(@Counted(from = 0, to = 160) int number) {}
