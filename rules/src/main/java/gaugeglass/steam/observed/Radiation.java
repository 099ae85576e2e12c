package gaugeglass.steam.observed;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Stage;
import java.util.List;

/** How much radiation the boiler serves, by a survey of its radiators. */
public final class Radiation {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS = List.of(RadiatorSurvey.class, ConnectedRadiation.class);

    private Radiation() {}

    /** Whether somebody has counted and measured the radiators. */
    public enum SurveyState {
        /** Their sum is written down. */
        ON_RECORD,
        /** They are counted and measured on this visit, one by one. */
        TAKEN_TODAY,
        NOT_ON_RECORD
    }

    /** How it is known what radiators the boiler serves. */
    @Item(
            id = "load.survey",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "Is a survey of this boiler's radiators on record, or is one taken today?",
            look = "Every radiator, its sections and its height. A boiler's net rating is no survey.",
            unreadBecause = {"file not at hand"})
    public record RadiatorSurvey(SurveyState survey) {}

    /** The sum of the radiators by the survey. */
    @Item(
            id = "load.connected",
            of = "boiler",
            stage = Stage.ARRIVAL,
            carried = true,
            ask = "What do the radiators come to by the survey, in square feet of radiation (EDR)?",
            look = "The radiators that are connected today. Those taken out or added since change the sum.",
            unreadBecause = {"sum not legible", "radiators changed since"})
    public record ConnectedRadiation(
            @Measured(unit = Unit.SQUARE_FOOT, from = "10", to = "100000")
            Quantity radiation) {}
}
