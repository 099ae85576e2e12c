package gaugeglass.engine.toy;

import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Stage;

/** What is the frame made of? */
@Item(
        id = "frame.material",
        of = "bicycle",
        stage = Stage.ARRIVAL,
        ask = "What is the frame made of?",
        structural = true,
        carried = true)
public record FrameMaterial(Material material) {}
