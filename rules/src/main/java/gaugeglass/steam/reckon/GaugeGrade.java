package gaugeglass.steam.reckon;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;

/**
 * Accuracy grade of a pressure gauge: how far its pointer may be off, in percent of span, by part of the scale.
 *
 * <p>Source: ASME B40.100, from memory, with high certainty.
 */
public enum GaugeGrade {
    GRADE_4A("4A", "0.1", "0.1"),
    GRADE_3A("3A", "0.25", "0.25"),
    GRADE_2A("2A", "0.5", "0.5"),
    GRADE_1A("1A", "1", "1"),
    GRADE_A("A", "2", "1"),
    GRADE_B("B", "3", "2"),
    GRADE_C("C", "4", "3"),
    GRADE_D("D", "5", "5");

    private final String mark;
    private final Quantity outerQuarters;
    private final Quantity middleHalf;

    GaugeGrade(String mark, String outerQuarters, String middleHalf) {
        this.mark = mark;
        this.outerQuarters = Quantity.of(outerQuarters, Unit.PERCENT);
        this.middleHalf = Quantity.of(middleHalf, Unit.PERCENT);
    }

    /** The grade as a dial shows it: {@code B}. */
    public String mark() {
        return mark;
    }

    /** What is allowed in the lowest and in the highest quarter of the scale, in percent of span. */
    public Quantity outerQuarters() {
        return outerQuarters;
    }

    /** What is allowed in the middle half of the scale, in percent of span. */
    public Quantity middleHalf() {
        return middleHalf;
    }
}
