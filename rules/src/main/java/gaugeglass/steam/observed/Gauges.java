package gaugeglass.steam.observed;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Counted;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Of;
import gaugeglass.engine.vocabulary.Stage;
import java.util.List;

/**
 * What is seen of each pressure gauge.
 *
 * <p>The figure at the top of the dial and the unit printed on it are two observations: a figure without its unit is no
 * pressure.
 */
public final class Gauges {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS = List.of(
            GaugeDialCeiling.class,
            GaugeRole.class,
            GaugeFace.class,
            GaugeUnitRead.class,
            GaugeUnitPrinted.class,
            GaugeTopFigure.class,
            GaugeDialStart.class,
            GaugeGradeMark.class,
            GaugeCock.class,
            GaugeOverpressure.class,
            GaugePointerCold.class,
            GaugeAtCutOut.class,
            GaugeWithSteam.class);

    private Gauges() {}

    /** What a gauge is there for. */
    public enum GaugeUse {
        /** The gauge that the boiler must have. */
        BOILERS_OWN,
        /** A finer one beside it, for ounces or inches. */
        LOW_RANGE,
        /** Another, on a return or a vacuum line, that does not show the boiler's pressure. */
        ELSEWHERE
    }

    /** Whether a dial can be read at all. */
    public enum FaceState {
        READABLE,
        CANNOT_BE_READ
    }

    /** Whether somebody read the unit that is printed on a dial. */
    public enum UnitOnDial {
        READ,
        WORN_OFF,
        NONE_PRINTED,
        NOT_READ
    }

    /** The units that dials are printed in. */
    public enum DialUnit {
        PSI(Unit.PSI),
        OUNCES(Unit.OUNCE_PER_SQUARE_INCH),
        INCHES_OF_WATER(Unit.INCH_OF_WATER),
        INCHES_OF_MERCURY(Unit.INCH_OF_MERCURY),
        KILOPASCALS(Unit.KILOPASCAL),
        MILLIBARS(Unit.MILLIBAR),
        BARS(Unit.BAR);

        private final Unit unit;

        DialUnit(Unit unit) {
            this.unit = unit;
        }

        /** The unit of gauge pressure that the word stands for. */
        public Unit unit() {
            return unit;
        }
    }

    /** Where a dial begins. */
    public enum DialStart {
        ZERO,
        /** A compound dial: full vacuum, then zero, then pressure. */
        VACUUM
    }

    /** The accuracy that a dial claims for itself. */
    public enum AccuracyMark {
        GRADE_4A,
        GRADE_3A,
        GRADE_2A,
        GRADE_1A,
        GRADE_A,
        GRADE_B,
        GRADE_C,
        GRADE_D,
        NOT_MARKED
    }

    /** Whether the way to a gauge is open. */
    public enum CockPosition {
        OPEN,
        SHUT,
        POSITION_NOT_PROVED,
        NO_COCK
    }

    /** What a gauge may see without harm. */
    public enum OverpressureMark {
        /** Rated for the safety valve's set pressure or more. */
        RATED,
        NOT_RATED,
        NOT_MARKED
    }

    /** Where the pointer stands with no pressure behind it. */
    public enum ColdPointer {
        AT_ZERO,
        ABOVE_ZERO,
        BELOW_ZERO
    }

    /** Whether a rule of the place caps the boiler gauge's dial. */
    public enum DialCeiling {
        APPLIES,
        DOES_NOT_APPLY
    }

    /** Whether local rules cap the dial of the boiler's own gauge. */
    @Item(
            id = "required.gauge-dial-ceiling",
            of = "boiler",
            stage = Stage.ARRIVAL,
            structural = true,
            carried = true,
            ask = "Does the jurisdiction cap the top of the boiler gauge's dial?",
            look = "Some do, at 60 psi; most only say how low the top may be. Ask the authority once.",
            unreadBecause = {"jurisdiction not asked"})
    public record GaugeDialCeiling(DialCeiling here) {}

    /** What the gauge is there for. */
    @Item(
            id = "gauge.role",
            of = "gauge",
            stage = Stage.ARRIVAL,
            structural = true,
            carried = true,
            ask = "Is this the boiler's own gauge, a low-range gauge beside it, or one elsewhere?",
            look = "By where it is piped. What is printed on the dial does not say it.",
            unreadBecause = {"piping could not be followed"})
    public record GaugeRole(@Of String which, GaugeUse role) {}

    /** Whether the dial can be read. */
    @Item(
            id = "gauge.face",
            of = "gauge",
            stage = Stage.ARRIVAL,
            ask = "Can the dial be read from where the boiler is tended?",
            look = "Glass whole and clear, pointer on its shaft, figures there.")
    public record GaugeFace(@Of String which, FaceState face) {}

    /** Whether the printed unit was read. */
    @Item(
            id = "gauge.unit-read",
            of = "gauge",
            stage = Stage.ARRIVAL,
            ask = "Did you read the unit printed on this dial with your own eyes today?",
            look = "Small print near the middle. The figures do not tell: 0 to 30 is made in several units.")
    public record GaugeUnitRead(@Of String which, UnitOnDial print) {}

    /** The printed unit. */
    @Item(
            id = "gauge.unit",
            of = "gauge",
            stage = Stage.ARRIVAL,
            ask = "Which unit is printed on the dial?",
            look = "Letter for letter as printed: psi, oz, inches of water, inches of mercury, kPa.",
            unreadBecause = {"worn off", "none printed", "out of sight"})
    public record GaugeUnitPrinted(@Of String which, DialUnit printed) {}

    /** The figure at the top of the scale. */
    @Item(
            id = "gauge.top-figure",
            of = "gauge",
            stage = Stage.ARRIVAL,
            ask = "Which figure stands at the top end of the dial?",
            look = "The number only; its unit is asked by itself.",
            unreadBecause = {"worn off", "not a whole number"})
    public record GaugeTopFigure(
            @Of String which, @Counted(from = 1, to = 1000) int figure) {}

    /** Where the scale begins. */
    @Item(
            id = "gauge.dial-start",
            of = "gauge",
            stage = Stage.ARRIVAL,
            structural = true,
            ask = "Does the dial start at zero, or with a vacuum scale below zero?",
            unreadBecause = {"worn off"})
    public record GaugeDialStart(@Of String which, DialStart start) {}

    /** The accuracy grade on the dial. */
    @Item(
            id = "gauge.grade",
            of = "gauge",
            stage = Stage.ARRIVAL,
            ask = "Which accuracy grade is marked on the dial?",
            look = "Small print such as GRADE B or 3-2-3 %, which is the same. Often nothing is marked.",
            unreadBecause = {"out of sight"})
    public record GaugeGradeMark(@Of String which, AccuracyMark mark) {}

    /** The gauge's cock. */
    @Item(
            id = "gauge.cock",
            of = "gauge",
            stage = Stage.COLD,
            ask = "Is the gauge's cock open, shut, or is there none?",
            look =
                    "Handle or slot in line with the pipe is usual for open. Loose or rounded handle: position not proved.")
    public record GaugeCock(@Of String which, CockPosition cock) {}

    /** What pressure a gauge may see unharmed. */
    @Item(
            id = "gauge.overpressure",
            of = "gauge",
            stage = Stage.COLD,
            ask = "Is the gauge rated to see the safety valve's pressure without harm?",
            look = "On the dial, on the back or on the maker's sheet.",
            unreadBecause = {"maker's sheet not at hand"})
    public record GaugeOverpressure(@Of String which, OverpressureMark mark) {}

    /** The pointer on a cold, vented boiler. */
    @Item(
            id = "gauge.cold-pointer",
            of = "gauge",
            stage = Stage.COLD,
            ask = "Cold and open to the air, where does the pointer rest?",
            look = "Boiler cold and vented, cock open. Tap the glass. Half a pointer's width is at zero.",
            unreadBecause = {"boiler not cold", "boiler not vented", "dial cannot be read"})
    public record GaugePointerCold(@Of String which, ColdPointer pointer) {}

    /** What the gauge showed when a control stopped the burner, and what that control was set to then. */
    @Item(
            id = "gauge.at-cut-out",
            of = "gauge",
            stage = Stage.FIRING,
            ask = "When the pressure control stopped the burner: gauge reading, and the cut-out it was set to then?",
            look = "Both at that moment. Where the setting was lowered for the test, the lowered setting.",
            unreadBecause = {"pressure never reached", "unit not read", "dial cannot be read"})
    public record GaugeAtCutOut(
            @Of String which,

            @Measured(unit = Unit.PSI, from = "-7", to = "60")
            Quantity reading,

            @Measured(unit = Unit.PSI, from = "0", to = "60")
            Quantity setting) {}

    /** What the gauge showed when the steam temperature was taken. */
    @Item(
            id = "gauge.with-steam",
            of = "gauge",
            stage = Stage.HOT,
            ask = "What did the gauge read at the moment the steam temperature was taken?",
            look = "In the unit printed on the dial, at the same minute as the temperature.",
            unreadBecause = {"steam was not raised", "unit not read", "dial cannot be read"})
    public record GaugeWithSteam(
            @Of String which,

            @Measured(unit = Unit.PSI, from = "-7", to = "60")
            Quantity reading) {}
}
