package gaugeglass.steam.reckoned;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Of;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Seen;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.steam.observed.Gauges.AccuracyMark;
import gaugeglass.steam.observed.Gauges.DialStart;
import gaugeglass.steam.observed.Gauges.GaugeAtCutOut;
import gaugeglass.steam.observed.Gauges.GaugeDialStart;
import gaugeglass.steam.observed.Gauges.GaugeGradeMark;
import gaugeglass.steam.observed.Gauges.GaugeRole;
import gaugeglass.steam.observed.Gauges.GaugeTopFigure;
import gaugeglass.steam.observed.Gauges.GaugeUnitPrinted;
import gaugeglass.steam.observed.Gauges.GaugeUse;
import gaugeglass.steam.reckon.GaugeGrade;
import gaugeglass.steam.reckon.GaugeScale;
import gaugeglass.steam.reckoned.ControlSettings.OperatingCutOut;
import java.util.List;

/** What a dial is worth: its top as a pressure, and how a working pressure stands on it. */
public final class GaugeDials {
    /** In the order in which they may use one another's results. */
    public static final List<Reckoning> ALL = List.of(new Top(), new Doubt(), new WorkingShare(), new CutOutGap());

    private static final Quantity FULL_VACUUM = Quantity.of(-30, Unit.INCH_OF_MERCURY);

    private GaugeDials() {}

    /** The pressure at the top of the dial: its figure in its printed unit, and never otherwise. */
    @Item(
            id = "gauge.scale-top",
            look = "The figure at the top of the dial in the unit that is printed on it.",
            of = "gauge",
            stage = Stage.ARRIVAL,
            ask = "Which pressure stands at the top of the dial?")
    public record GaugeScaleTop(
            @Of String which,

            @Measured(unit = Unit.PSI, from = "0.001", to = "15000")
            Quantity pressure) {}

    /** How much of the working pressure the gauge's own error swallows. */
    @Item(
            id = "gauge.doubt",
            look =
                    "doubt = the grade's error, a share of the span, over the working pressure x 100; a dial without a mark counts as grade B (ASME B40.100).",
            of = "gauge",
            stage = Stage.COLD,
            ask = "What share of the working pressure may the gauge be wrong by?")
    public record GaugeDoubt(
            @Of String which,

            @Measured(unit = Unit.PERCENT, from = "0", to = "100000")
            Quantity share) {}

    /** How far up a low-range dial the working pressure stands. */
    @Item(
            id = "gauge.working-share",
            look = "share = operating cut-out / top of the dial x 100.",
            of = "gauge",
            stage = Stage.COLD,
            ask = "How far up this dial does the working pressure stand?")
    public record GaugeWorkingShare(
            @Of String which,

            @Measured(unit = Unit.PERCENT, from = "0", to = "100000")
            Quantity share) {}

    /** How far the reading at cut-out was off the setting. */
    @Item(
            id = "gauge.cut-out-gap",
            look = "gap = reading - setting, whichever is more.",
            of = "gauge",
            stage = Stage.FIRING,
            ask = "How far was the reading at cut-out off the setting?")
    public record GaugeCutOutGap(
            @Of String which,

            @Measured(unit = Unit.PSI, from = "-7", to = "60")
            Quantity reading,

            @Measured(unit = Unit.PSI, from = "0", to = "60")
            Quantity setting,

            @Measured(unit = Unit.PSI, from = "0", to = "100")
            Quantity difference) {}

    /** Works out the top. */
    public static final class Top implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return GaugeScaleTop.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(GaugeTopFigure.class, GaugeUnitPrinted.class);
        }

        @Override
        public List<GaugeScaleTop> work(Seen seen, String which) {
            Unit unit = seen.of(GaugeUnitPrinted.class, which).printed().unit();
            return List.of(new GaugeScaleTop(
                    which, Quantity.of(seen.of(GaugeTopFigure.class, which).figure(), unit)));
        }
    }

    /**
     * Works out the doubt of the boiler's own gauge at the operating cut-out. A dial without a mark is taken as grade B, the
     * ordinary one: nobody leaves a better grade unmarked.
     */
    public static final class Doubt implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return GaugeDoubt.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(
                    GaugeRole.class,
                    GaugeScaleTop.class,
                    GaugeDialStart.class,
                    GaugeGradeMark.class,
                    OperatingCutOut.class);
        }

        @Override
        public List<GaugeDoubt> work(Seen seen, String which) {
            if (seen.of(GaugeRole.class, which).role() != GaugeUse.BOILERS_OWN) {
                return List.of();
            }
            Quantity top = seen.of(GaugeScaleTop.class, which).pressure();
            for (OperatingCutOut working : seen.each(OperatingCutOut.class)) {
                if (working.pressure().signum() > 0 && working.pressure().isAtMost(top)) {
                    boolean compound = seen.of(GaugeDialStart.class, which).start() == DialStart.VACUUM;
                    GaugeScale scale = compound ? new GaugeScale(FULL_VACUUM, top) : GaugeScale.to(top);
                    Quantity doubt = scale.uncertaintyAt(
                            working.pressure(),
                            grade(seen.of(GaugeGradeMark.class, which).mark()));
                    return List.of(new GaugeDoubt(
                            which,
                            Quantity.of(doubt.ratioTo(working.pressure()), Unit.TIMES)
                                    .inUnit(Unit.PERCENT)));
                }
            }
            return List.of();
        }

        private static GaugeGrade grade(AccuracyMark mark) {
            return mark == AccuracyMark.NOT_MARKED ? GaugeGrade.GRADE_B : GaugeGrade.valueOf(mark.name());
        }
    }

    /** Works out how far up a low-range dial the operating cut-out stands. */
    public static final class WorkingShare implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return GaugeWorkingShare.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(GaugeRole.class, GaugeScaleTop.class, OperatingCutOut.class);
        }

        @Override
        public List<GaugeWorkingShare> work(Seen seen, String which) {
            if (seen.of(GaugeRole.class, which).role() != GaugeUse.LOW_RANGE) {
                return List.of();
            }
            GaugeScale scale = GaugeScale.to(seen.of(GaugeScaleTop.class, which).pressure());
            return seen.each(OperatingCutOut.class).stream()
                    .map(working -> new GaugeWorkingShare(which, scale.shareAt(working.pressure())))
                    .toList();
        }
    }

    /** Works out the gap at cut-out. */
    public static final class CutOutGap implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return GaugeCutOutGap.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(GaugeAtCutOut.class);
        }

        @Override
        public List<GaugeCutOutGap> work(Seen seen, String which) {
            GaugeAtCutOut at = seen.of(GaugeAtCutOut.class, which);
            return List.of(new GaugeCutOutGap(
                    which,
                    at.reading(),
                    at.setting(),
                    at.reading().minus(at.setting()).abs()));
        }
    }
}
