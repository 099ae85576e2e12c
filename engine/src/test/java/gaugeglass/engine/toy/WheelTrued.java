package gaugeglass.engine.toy;

import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Of;
import gaugeglass.engine.vocabulary.Stage;
import java.time.LocalDate;

/** When was the wheel last trued? */
@Item(id = "wheel.trued", of = "wheel", stage = Stage.COLD, ask = "When was the wheel last trued?")
public record WheelTrued(@Of String which, LocalDate on) {}
