package gaugeglass.engine.toy;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Of;
import gaugeglass.engine.vocabulary.Stage;

/** Over what distance did it stop? */
@Item(id = "pull.distance", of = "pull", stage = Stage.HOT, ask = "Over what distance did it stop?")
public record PullDistance(
        @Of String which,
        @Of Weather weather,
        @Measured(unit = Unit.FOOT, from = "0", to = "300") Quantity distance) {}
