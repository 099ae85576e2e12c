package gaugeglass.steam.reckon;

import gaugeglass.engine.quantity.Dimension;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.quantity.Unit;

/**
 * The scale of a pressure gauge, from its lowest to its highest figure.
 *
 * @param bottom gauge pressure at the lowest figure; zero, or below it on a compound gauge
 * @param top gauge pressure at the highest figure; above the bottom
 */
public record GaugeScale(Quantity bottom, Quantity top) {
    private static final Quantity FIRST_QUARTER = Quantity.of(25, Unit.PERCENT);
    private static final Quantity LAST_QUARTER = Quantity.of(75, Unit.PERCENT);

    /**
     * @throws IllegalArgumentException if an end is no gauge pressure, the bottom is above zero, or the top is not above
     *     the bottom
     */
    public GaugeScale {
        if (bottom.dimension() != Dimension.PRESSURE || top.dimension() != Dimension.PRESSURE) {
            throw new IllegalArgumentException(
                    "a gauge scale from " + bottom + " to " + top + "; expected gauge pressures");
        }
        if (bottom.signum() > 0 || top.isAtMost(bottom)) {
            throw new IllegalArgumentException(
                    "a gauge scale from " + bottom + " to " + top + "; expected zero or less, and more above it");
        }
    }

    /** The usual scale, from zero to a top figure. */
    public static GaugeScale to(Quantity top) {
        return new GaugeScale(Quantity.of(0, top.unit()), top);
    }

    /** Top less bottom, in the top's unit. */
    public Quantity span() {
        return top.minus(bottom);
    }

    /**
     * How far up the scale a pressure stands: (pressure - bottom) / span, exactly, in percent. Below 0 % or above 100 %
     * the pointer is at its stop; the answer is still given, as how far is what is asked.
     *
     * @throws IllegalArgumentException for another dimension
     */
    public Quantity shareAt(Quantity pressure) {
        return Quantity.of(pressure.minus(bottom).ratioTo(span()), Unit.TIMES).inUnit(Unit.PERCENT);
    }

    /**
     * By how much the reading may be off either way: grade's percentage for that part of the scale x span, exactly, in the
     * top's unit. A pressure exactly on the border of a quarter gets the wider of the two.
     *
     * <p>1.5 psi on a 0-30 psi gauge of grade B stands at 5 % of the scale and is known only within 0.9 psi.
     *
     * @param pressure what the gauge shows, from bottom to top, ends included
     * @throws IllegalArgumentException off the scale, or for another dimension
     */
    public Quantity uncertaintyAt(Quantity pressure, GaugeGrade grade) {
        Ranges.within("reading", pressure, bottom, top);
        Quantity share = shareAt(pressure);
        boolean middle = share.isAbove(FIRST_QUARTER) && share.isBelow(LAST_QUARTER);
        Rational allowed = (middle ? grade.middleHalf() : grade.outerQuarters()).valueIn(Unit.TIMES);
        return span().times(allowed);
    }
}
