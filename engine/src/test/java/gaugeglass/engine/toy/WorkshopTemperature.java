package gaugeglass.engine.toy;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Stage;

/** How warm is it in the workshop? */
@Item(
        id = "site.temperature",
        of = "site",
        stage = Stage.ARRIVAL,
        ask = "How warm is it in the workshop?",
        unreadBecause = {"no thermometer"})
public record WorkshopTemperature(
        @Measured(unit = Unit.FAHRENHEIT, from = "20", to = "120")
        Quantity temperature) {}
