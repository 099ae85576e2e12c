package gaugeglass.engine.toy;

import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Of;
import gaugeglass.engine.vocabulary.Stage;

/** Is it the front or the rear wheel? */
@Item(
        id = "wheel.place",
        of = "wheel",
        stage = Stage.ARRIVAL,
        ask = "Is it the front or the rear wheel?",
        structural = true,
        carried = true)
public record WheelPlace(@Of String which, Place place) {}
