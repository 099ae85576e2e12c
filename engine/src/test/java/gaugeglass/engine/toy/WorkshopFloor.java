package gaugeglass.engine.toy;

import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Stage;

/** Does the floor lie level? */
@Item(id = "site.floor", of = "site", stage = Stage.ARRIVAL, ask = "Does the floor lie level?", structural = true)
public record WorkshopFloor(Floor floor) {}
