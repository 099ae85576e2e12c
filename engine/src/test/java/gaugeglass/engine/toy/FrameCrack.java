package gaugeglass.engine.toy;

import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Stage;

/** Is there a crack at the joints? */
@Item(
        id = "frame.crack",
        of = "bicycle",
        stage = Stage.COLD,
        ask = "Is there a crack at the joints?",
        look = "Wipe the joints and look along them in raking light.")
public record FrameCrack(Crack crack) {}
