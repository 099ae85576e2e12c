package gaugeglass.engine.toy;

import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Stage;
import java.time.LocalDate;

/** When was the frame made? */
@Item(id = "frame.made", of = "bicycle", stage = Stage.ARRIVAL, ask = "When was the frame made?", carried = true)
public record FrameMade(LocalDate on) {}
