package gaugeglass.steam.reckoned;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Of;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Seen;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.steam.observed.Radiation.ConnectedRadiation;
import gaugeglass.steam.observed.Radiation.RadiatorSurvey;
import gaugeglass.steam.observed.Radiation.SurveyState;
import gaugeglass.steam.observed.Radiators.HeatingPipe;
import gaugeglass.steam.observed.Radiators.RadiatorArea;
import gaugeglass.steam.observed.Radiators.RadiatorPattern;
import gaugeglass.steam.observed.Radiators.RadiatorSections;
import gaugeglass.steam.observed.Radiators.RadiatorSort;
import gaugeglass.steam.observed.Radiators.WallSections;
import gaugeglass.steam.reckon.Load;
import gaugeglass.steam.reckon.PipeSize;
import gaugeglass.steam.reckon.Radiator;
import gaugeglass.steam.reckoned.GrossOutputReckoning.GrossOutput;
import gaugeglass.steam.reckoned.MeasuredInputs.InputOfPlate;
import java.util.List;

/**
 * What the radiators ask for, and the boiler's gross output as a share of that: by its plate, and as it is fired today.
 *
 * <p>A radiator whose height the tables do not have is worth what its maker's list says of it, and is unknown without: a height
 * in between is no figure.
 */
public final class LoadReckoning {
    /** In the order in which they may use one another's results. */
    public static final List<Reckoning> ALL = List.of(new Each(), new Sum(), new OfNeed(), new AsFired());

    private static final String RADIATOR = "radiator";

    private LoadReckoning() {}

    /** The radiation of one radiator. */
    @Item(
            id = "radiator.edr",
            look = "Sections x square feet of one, by pattern and height; bare pipe: pi x outside diameter x length.",
            of = "radiator",
            stage = Stage.HOT,
            ask = "The square feet of radiation (EDR) of this radiator.")
    public record RadiatorEdr(
            @Of String which,

            @Measured(unit = Unit.SQUARE_FOOT, from = "0", to = "4000")
            Quantity area) {}

    /** The radiation that the boiler serves. */
    @Item(
            id = "load.edr",
            look = "The sum on record, or the sum of the radiators that were counted and measured today.",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "The square feet of radiation (EDR) that the boiler serves.")
    public record ServedRadiation(
            @Measured(unit = Unit.SQUARE_FOOT, from = "0", to = "4000000")
            Quantity radiation) {}

    /**
     * Gross output over the output asked for.
     *
     * @param share exact; 100 % is a boiler that fits
     * @param needed gross output that the radiators ask for, piping and pickup counted
     */
    @Item(
            id = "load.output-of-need",
            look =
                    "heat = EDR x each, at 240 Btu/h a square foot; required = heat x pickup, which is 4/3 for piping and"
                            + " pickup; share = gross / required x 100.",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "The boiler's gross output as a share of what its radiators ask for.")
    public record OutputOfNeed(
            @Measured(unit = Unit.PERCENT, from = "0", to = "1000000")
            Quantity share,

            @Measured(unit = Unit.BTU_PER_HOUR, from = "0", to = "2000000000")
            Quantity needed) {}

    /**
     * Output as fired over the output asked for.
     *
     * <p>Output is taken to go with the input. A burner that is turned down loses a little less up the flue, so the boiler
     * gives a few percent more than this says.
     *
     * @param share exact; 100 % is a fire that fits the radiators
     */
    @Item(
            id = "load.as-fired",
            look = "share = the boiler's share of what its radiators ask for x measured input / input on the plate.",
            of = "boiler",
            stage = Stage.HOT,
            ask = "The output as fired today as a share of what the radiators ask for.")
    public record FiredOfNeed(
            @Measured(unit = Unit.PERCENT, from = "0", to = "100000000000000")
            Quantity share) {}

    private static final class Each implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return RadiatorEdr.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(
                    RadiatorSort.class,
                    RadiatorSections.class,
                    WallSections.class,
                    HeatingPipe.class,
                    RadiatorArea.class);
        }

        @Override
        public List<RadiatorEdr> work(Seen seen, String which) {
            RadiatorPattern pattern = seen.of(RadiatorSort.class, which).pattern();
            Radiator radiator =
                    switch (pattern) {
                        case WALL_SECTIONS -> wall(seen.of(WallSections.class, which));
                        case BARE_PIPE -> pipe(seen.of(HeatingPipe.class, which));
                        case OTHER_SORT -> listed(seen, which);
                        default -> sections(seen, which, pattern);
                    };
            return List.of(new RadiatorEdr(
                    which,
                    Quantity.of(radiator.count().times(radiator.each().valueIn(Unit.SQUARE_FOOT)), Unit.SQUARE_FOOT)));
        }

        private static Radiator sections(Seen seen, String which, RadiatorPattern pattern) {
            RadiatorSections row = seen.of(RadiatorSections.class, which);
            String known =
                    switch (pattern) {
                        case ONE_COLUMN -> "1-column";
                        case TWO_COLUMN -> "2-column";
                        case THREE_COLUMN -> "3-column";
                        case FOUR_COLUMN -> "4-column";
                        case THREE_TUBE -> "3-tube";
                        case FOUR_TUBE -> "4-tube";
                        case FIVE_TUBE -> "5-tube";
                        case SIX_TUBE -> "6-tube";
                        default -> throw new IllegalStateException(pattern + " has no sections");
                    };
            return Radiator.Sections.isTabulated(known, row.height())
                    ? new Radiator.Sections(Rational.of(row.sections()), known, row.height())
                    : listed(seen, which);
        }

        private static Radiator listed(Seen seen, String which) {
            return new Radiator.Known(seen.of(RadiatorArea.class, which).area());
        }

        private static Radiator wall(WallSections row) {
            String mark = row.size().name().replace("SIZE_", "");
            return new Radiator.Wall(Rational.of(row.sections()), mark);
        }

        private static Radiator pipe(HeatingPipe row) {
            return new Radiator.BarePipe(row.length(), PipeSize.notAbove(row.size()));
        }
    }

    private static final class Sum implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return ServedRadiation.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(RadiatorSurvey.class, ConnectedRadiation.class, RadiatorEdr.class);
        }

        @Override
        public List<ServedRadiation> work(Seen seen, String which) {
            if (seen.the(RadiatorSurvey.class).survey() != SurveyState.TAKEN_TODAY) {
                return List.of(
                        new ServedRadiation(seen.the(ConnectedRadiation.class).radiation()));
            }
            Quantity sum = Quantity.of(0, Unit.SQUARE_FOOT);
            List<RadiatorEdr> all = seen.each(RadiatorEdr.class);
            if (all.isEmpty()) {
                throw seen.another(RADIATOR, "a survey of no radiators tells no load");
            }
            for (RadiatorEdr one : all) {
                sum = sum.plus(one.area());
            }
            return List.of(new ServedRadiation(sum));
        }
    }

    private static final class OfNeed implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return OutputOfNeed.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(ServedRadiation.class, GrossOutput.class);
        }

        @Override
        public List<OutputOfNeed> work(Seen seen, String which) {
            Quantity needed = Load.required(seen.the(ServedRadiation.class).radiation());
            Quantity gross = seen.the(GrossOutput.class).output();
            Quantity share = Quantity.of(gross.ratioTo(needed), Unit.TIMES).inUnit(Unit.PERCENT);
            return List.of(new OutputOfNeed(share, needed));
        }
    }

    private static final class AsFired implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return FiredOfNeed.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(OutputOfNeed.class, InputOfPlate.class);
        }

        @Override
        public List<FiredOfNeed> work(Seen seen, String which) {
            Quantity ofNeed = seen.the(OutputOfNeed.class).share();
            Quantity ofPlate = seen.the(InputOfPlate.class).share();
            return List.of(new FiredOfNeed(ofNeed.times(ofPlate.valueIn(Unit.TIMES))));
        }
    }
}
