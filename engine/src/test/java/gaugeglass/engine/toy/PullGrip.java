package gaugeglass.engine.toy;

import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Of;
import gaugeglass.engine.vocabulary.Stage;

/** Did the wheel hold when the lever was pulled? */
@Item(id = "pull.grip", of = "pull", stage = Stage.FIRING, ask = "Did the wheel hold when the lever was pulled?")
public record PullGrip(@Of String which, @Of Weather weather, Grip grip) {}
