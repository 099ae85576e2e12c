package gaugeglass.engine.toy;

import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Of;
import gaugeglass.engine.vocabulary.Stage;

/** How does the brake work? */
@Item(
        id = "brake.kind",
        of = "brake",
        stage = Stage.ARRIVAL,
        ask = "How does the brake work?",
        structural = true,
        carried = true)
public record BrakeKind(@Of String which, BrakeSort sort) {}
