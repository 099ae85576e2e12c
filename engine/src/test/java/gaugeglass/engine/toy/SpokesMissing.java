package gaugeglass.engine.toy;

import gaugeglass.engine.vocabulary.Counted;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Of;
import gaugeglass.engine.vocabulary.Stage;

/** How many spokes are missing? */
@Item(id = "wheel.spokes-missing", of = "wheel", stage = Stage.COLD, ask = "How many spokes are missing?")
public record SpokesMissing(
        @Of String which, @Counted(from = 0, to = 40) int number) {}
