package gaugeglass.engine.toy;

import gaugeglass.engine.vocabulary.Counted;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Stage;

/** How many spare links lie in the kit? */
@Item(id = "chain.spares", of = "bicycle", stage = Stage.COLD, ask = "How many spare links lie in the kit?")
public record ChainSpares(@Counted(from = 0, to = 20) int links) {}
