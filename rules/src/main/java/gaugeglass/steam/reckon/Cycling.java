package gaugeglass.steam.reckon;

import static gaugeglass.engine.quantity.Unit.MINUTE;
import static gaugeglass.engine.quantity.Unit.PERCENT;
import static gaugeglass.engine.quantity.Unit.PER_HOUR;
import static gaugeglass.engine.quantity.Unit.SECOND;

import gaugeglass.engine.book.Basis;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;

/**
 * How often and how long a burner runs, from the times it came on and went off.
 *
 * <p>Formula: cycles per hour = (burns - 1) / (last start - first start); share of time = time on, the last burn left out, over
 * the same span. Exact. The day may pass midnight once a pause or a burn; a pause of 24 hours cannot be told from none.
 */
public final class Cycling {
    /** The line that gives the cycles per hour. */
    public static final String PER_HOUR_LINE = "cycles";

    /** The line that gives the mean burn. */
    public static final String MEAN = "mean burn";

    /** The line that gives the shortest burn. */
    public static final String SHORTEST = "shortest burn";

    /** The line that gives the share of time the burner is on. */
    public static final String SHARE = "share of the time on";

    private static final int DAY = 86_400;

    private Cycling() {}

    /**
     * One burn.
     *
     * @param on when the flame came
     * @param off when it went; earlier in the day means after midnight
     */
    public record Burn(LocalTime on, LocalTime off) {
        /**
         * @throws IllegalArgumentException when it lasts no time
         */
        public Burn {
            if (on.equals(off)) {
                throw new IllegalArgumentException("burn from " + on + " to " + off + " lasts no time");
            }
        }

        int seconds() {
            return between(on, off);
        }
    }

    /**
     * One burn by a watch that goes on.
     *
     * @param lit when the flame came, s
     * @param out when it went, s; later
     */
    public record Spell(Rational lit, Rational out) {}

    /**
     * How long the burns are and how often they come.
     *
     * @param mean length of a burn
     * @param often burns an hour, from the first start to the last
     */
    public record Pace(Quantity mean, Quantity often) {}

    /**
     * The pace of a row of burns, exact; the same figures as the sheet's.
     *
     * @param spells two or more in the order they happened, each after the one before
     * @throws IllegalArgumentException for fewer than two
     */
    public static Pace pace(List<Spell> spells) {
        if (spells.size() < 2) {
            throw new IllegalArgumentException(spells.size() + " burn; expected two or more");
        }
        Rational burning = Rational.ZERO;
        for (Spell spell : spells) {
            burning = burning.plus(spell.out().minus(spell.lit()));
        }
        Rational span = spells.get(spells.size() - 1).lit().minus(spells.get(0).lit());
        Quantity mean = Quantity.of(burning.dividedBy(Rational.of(spells.size())), SECOND)
                .inUnit(MINUTE);
        Rational often = Rational.of(spells.size() - 1L)
                .dividedBy(span)
                .times(Constant.of("seconds-an-hour").value());
        return new Pace(mean, Quantity.of(often, PER_HOUR));
    }

    /**
     * What a row of burns comes to.
     *
     * @param burns two or more, in the order they happened, each after the one before; they may pass midnight
     * @throws IllegalArgumentException for fewer than two, or for burns that come to more than a day together
     */
    public static Worked of(List<Burn> burns) {
        if (burns.size() < 2) {
            throw new IllegalArgumentException(
                    burns.size() + " burn; expected two or more, as a cycle ends where the next burn begins");
        }
        int span = 0;
        int on = 0;
        List<Integer> lengths = new ArrayList<>();
        for (int i = 0; i < burns.size(); i++) {
            int length = burns.get(i).seconds();
            lengths.add(length);
            if (i + 1 < burns.size()) {
                int pause = between(burns.get(i).off(), burns.get(i + 1).on());
                if (pause == 0) {
                    throw new IllegalArgumentException(
                            "burns that touch at " + burns.get(i).off() + " are one burn");
                }
                span += length + pause;
                on += length;
            }
        }
        int last = lengths.get(lengths.size() - 1);
        if (span + last > DAY) {
            throw new IllegalArgumentException("burns out of order, or over more than a day: from "
                    + burns.get(0).on() + " to " + burns.get(burns.size() - 1).off());
        }
        int shortest = lengths.stream().mapToInt(Integer::intValue).min().orElseThrow();
        return Working.on(Basis.CALCULATED)
                .let("n", "burns", Rational.of(burns.size()), "")
                .let("span", "first start to last start", Quantity.of(span, SECOND), SECOND)
                .let("on", "burning time in it", Quantity.of(on, SECOND), SECOND)
                .let("last", "the last burn", Quantity.of(last, SECOND), SECOND)
                .let("least", "the shortest burn", Quantity.of(shortest, SECOND), SECOND)
                .constant("hour", "seconds-an-hour")
                .constant("sixty", "minutes-an-hour")
                .line(MEAN, "mean", "(on + last) / n / sixty", MINUTE)
                .line(SHORTEST, "short", "least / sixty", MINUTE)
                .line(SHARE, "share", "on / span x 100", PERCENT)
                .line(PER_HOUR_LINE, "cycles", "(n - 1) / span x hour", PER_HOUR)
                .worked();
    }

    private static int between(LocalTime from, LocalTime to) {
        return Math.floorMod(to.toSecondOfDay() - from.toSecondOfDay(), DAY);
    }
}
