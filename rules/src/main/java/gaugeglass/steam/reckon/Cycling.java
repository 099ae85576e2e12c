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
     * What a row of burns comes to, by the clock.
     *
     * @param burns two or more, in the order they happened, each after the one before; they may pass midnight
     * @throws IllegalArgumentException for fewer than two, or for burns that come to more than a day together
     */
    public static Worked of(List<Burn> burns) {
        List<Spell> spells = new ArrayList<>();
        int lit = 0;
        for (int i = 0; i < burns.size(); i++) {
            int out = lit + burns.get(i).seconds();
            spells.add(new Spell(Rational.of(lit), Rational.of(out)));
            if (i + 1 < burns.size()) {
                int pause = between(burns.get(i).off(), burns.get(i + 1).on());
                if (pause == 0) {
                    throw new IllegalArgumentException(
                            "burns that touch at " + burns.get(i).off() + " are one burn");
                }
                lit = out + pause;
            } else if (out > DAY) {
                throw new IllegalArgumentException("burns out of order, or over more than a day: from "
                        + burns.get(0).on() + " to " + burns.get(i).off());
            }
        }
        return watched(spells);
    }

    /**
     * What a row of burns comes to, by a watch that goes on.
     *
     * @param spells two or more, in the order they happened, each after the one before
     * @throws IllegalArgumentException for fewer than two
     */
    public static Worked watched(List<Spell> spells) {
        if (spells.size() < 2) {
            throw new IllegalArgumentException(
                    spells.size() + " burn; expected two or more, as a cycle ends where the next burn begins");
        }
        List<Rational> lengths =
                spells.stream().map(spell -> spell.out().minus(spell.lit())).toList();
        Spell last = spells.get(spells.size() - 1);
        Rational span = last.lit().minus(spells.get(0).lit());
        Rational on = lengths.subList(0, lengths.size() - 1).stream().reduce(Rational.ZERO, Rational::plus);
        Rational shortest = lengths.stream().min(Rational::compareTo).orElseThrow();
        return Working.on(Basis.CALCULATED)
                .let("n", "burns", Rational.of(spells.size()), "")
                .let("span", "first start to last start", Quantity.of(span, SECOND), SECOND)
                .let("on", "burning time in it", Quantity.of(on, SECOND), SECOND)
                .let("last", "the last burn", Quantity.of(last.out().minus(last.lit()), SECOND), SECOND)
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
