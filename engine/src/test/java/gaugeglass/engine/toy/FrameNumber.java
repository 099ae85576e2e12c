package gaugeglass.engine.toy;

import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Stage;

/** Which number is stamped into the frame? */
@Item(
        id = "frame.number",
        of = "bicycle",
        stage = Stage.ARRIVAL,
        ask = "Which number is stamped into the frame?",
        carried = true,
        unreadBecause = {"painted over", "worn away"})
public record FrameNumber(String number) {}
