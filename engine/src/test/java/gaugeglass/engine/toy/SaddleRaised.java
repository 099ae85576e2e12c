package gaugeglass.engine.toy;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Stage;
import java.time.LocalDate;

/** How far is the post out, and who marked how far it may be? */
@Item(
        id = "saddle.raised",
        of = "bicycle",
        stage = Stage.COLD,
        ask = "How far is the post out, and who marked how far it may be?")
public record SaddleRaised(
        @Measured(unit = Unit.INCH, from = "0", to = "20") Quantity height, String markedBy, LocalDate markedOn) {}
