package gaugeglass.steam.reckoned;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Of;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Seen;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.steam.observed.Controls.ControlCutInMark;
import gaugeglass.steam.observed.Controls.ControlCutOutMark;
import gaugeglass.steam.observed.Controls.ControlDial;
import gaugeglass.steam.observed.Controls.ControlDifferentialMark;
import gaugeglass.steam.observed.Controls.ControlDuty;
import gaugeglass.steam.observed.Controls.ControlRole;
import gaugeglass.steam.observed.Controls.DialMarks;
import java.util.ArrayList;
import java.util.List;

/** At which pressures the controls stop the burner and let it start, whichever way their dials are marked. */
public final class ControlSettings {
    /** In the order in which they may use one another's results. */
    public static final List<Reckoning> ALL =
            List.of(new CutOut(), new CutIn(), new Differential(), new Operating(), new HighLimit());

    private ControlSettings() {}

    /** The pressure at which a control stops the burner. */
    @Item(
            id = "control.cut-out",
            look = "By what is printed beside the marks: cut-in + differential, or the cut-out as marked.",
            of = "control",
            stage = Stage.COLD,
            ask = "At which pressure does this control stop the burner?")
    public record ControlCutOut(
            @Of String which,

            @Measured(unit = Unit.PSI, from = "-7", to = "90")
            Quantity pressure) {}

    /** The pressure at which a control lets the burner start again. */
    @Item(
            id = "control.cut-in",
            look = "By what is printed beside the marks: cut-out - differential, or the cut-in as marked.",
            of = "control",
            stage = Stage.COLD,
            ask = "At which pressure does this control let the burner start again?")
    public record ControlCutIn(
            @Of String which,

            @Measured(unit = Unit.PSI, from = "-37", to = "60")
            Quantity pressure) {}

    /** How far a control's cut-out lies above its cut-in. */
    @Item(
            id = "control.differential",
            look = "By what is printed beside the marks: the differential as marked, or cut-out - cut-in.",
            of = "control",
            stage = Stage.COLD,
            ask = "How far does this control's cut-out lie above its cut-in?")
    public record ControlDifferential(
            @Of String which,

            @Measured(unit = Unit.PSI, from = "-60", to = "97")
            Quantity pressure) {}

    /** The pressure at which everyday running ends: the lowest cut-out of the operating controls. */
    @Item(
            id = "controls.operating-cut-out",
            look = "The lowest cut-out of the operating controls.",
            of = "boiler",
            stage = Stage.COLD,
            ask = "At which pressure do the operating controls stop the burner?")
    public record OperatingCutOut(
            @Measured(unit = Unit.PSI, from = "-7", to = "90")
            Quantity pressure) {}

    /** The pressure at which the first high limit stops the burner. */
    @Item(
            id = "controls.limit-cut-out",
            look = "The lowest cut-out of the high limits.",
            of = "boiler",
            stage = Stage.COLD,
            ask = "At which pressure does the first high limit stop the burner?")
    public record HighLimitCutOut(
            @Measured(unit = Unit.PSI, from = "-7", to = "90")
            Quantity pressure) {}

    private static final List<Class<? extends Record>> MARKS =
            List.of(ControlDial.class, ControlCutInMark.class, ControlCutOutMark.class, ControlDifferentialMark.class);

    /** Works out a control's cut-out. */
    public static final class CutOut implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return ControlCutOut.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return MARKS;
        }

        @Override
        public List<ControlCutOut> work(Seen seen, String which) {
            Quantity out = seen.of(ControlDial.class, which).marks() == DialMarks.CUT_IN_PLUS_DIFFERENTIAL
                    ? seen.of(ControlCutInMark.class, which)
                            .pressure()
                            .plus(seen.of(ControlDifferentialMark.class, which).pressure())
                    : seen.of(ControlCutOutMark.class, which).pressure();
            return List.of(new ControlCutOut(which, out));
        }
    }

    /** Works out a control's cut-in; one with a cut-out only has none. */
    public static final class CutIn implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return ControlCutIn.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return MARKS;
        }

        @Override
        public List<ControlCutIn> work(Seen seen, String which) {
            return switch (seen.of(ControlDial.class, which).marks()) {
                case CUT_OUT_ONLY -> List.of();
                case CUT_OUT_LESS_DIFFERENTIAL ->
                    List.of(new ControlCutIn(
                            which,
                            seen.of(ControlCutOutMark.class, which)
                                    .pressure()
                                    .minus(seen.of(ControlDifferentialMark.class, which)
                                            .pressure())));
                case CUT_IN_PLUS_DIFFERENTIAL, CUT_IN_AND_CUT_OUT ->
                    List.of(new ControlCutIn(
                            which, seen.of(ControlCutInMark.class, which).pressure()));
            };
        }
    }

    /** Works out a control's differential: as marked, or between its two marks. */
    public static final class Differential implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return ControlDifferential.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return MARKS;
        }

        @Override
        public List<ControlDifferential> work(Seen seen, String which) {
            return switch (seen.of(ControlDial.class, which).marks()) {
                case CUT_OUT_ONLY -> List.of();
                case CUT_IN_PLUS_DIFFERENTIAL, CUT_OUT_LESS_DIFFERENTIAL ->
                    List.of(new ControlDifferential(
                            which, seen.of(ControlDifferentialMark.class, which).pressure()));
                case CUT_IN_AND_CUT_OUT ->
                    List.of(new ControlDifferential(
                            which,
                            seen.of(ControlCutOutMark.class, which)
                                    .pressure()
                                    .minus(seen.of(ControlCutInMark.class, which)
                                            .pressure())));
            };
        }
    }

    /** Works out the operating cut-out; there is none without an operating control. */
    public static final class Operating implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return OperatingCutOut.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(ControlRole.class, ControlCutOut.class);
        }

        @Override
        public List<OperatingCutOut> work(Seen seen, String which) {
            return lowest(seen, ControlDuty.OPERATING).stream()
                    .map(OperatingCutOut::new)
                    .toList();
        }
    }

    /** Works out the high limit's cut-out; there is none without a high limit. */
    public static final class HighLimit implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return HighLimitCutOut.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(ControlRole.class, ControlCutOut.class);
        }

        @Override
        public List<HighLimitCutOut> work(Seen seen, String which) {
            return lowest(seen, ControlDuty.HIGH_LIMIT).stream()
                    .map(HighLimitCutOut::new)
                    .toList();
        }
    }

    private static List<Quantity> lowest(Seen seen, ControlDuty role) {
        List<Quantity> all = new ArrayList<>();
        for (String tag : seen.tags("control")) {
            if (seen.of(ControlRole.class, tag).role() == role) {
                all.add(seen.of(ControlCutOut.class, tag).pressure());
            }
        }
        return all.stream().sorted().limit(1).toList();
    }
}
