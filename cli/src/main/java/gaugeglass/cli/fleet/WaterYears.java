package gaugeglass.cli.fleet;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.steam.reckoned.MakeUpYear;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What a fleet keeps of a unit's make-up: one figure for each calendar year, latest first, and no more than a few of them.
 * There is one for each unit of a fleet, so it is packed; figures are kept
 * to a millionth, which is far finer than a meter is read.
 */
final class WaterYears {
    /** The latest year, and those before it against which it is held. */
    static final int MOST = 6;

    /** The calendar year, the day of the visit that told it, the share of the steam, and what went through by the day. */
    private static final int PARTS = 4;

    private static final int VISITED = 1;
    private static final int SHARE = 2;
    private static final int PER_DAY = 3;
    private static final int NO_SHARE = -1;
    private static final int FINENESS = 1_000_000;
    private static final WaterYears NONE = new WaterYears(new long[0]);

    private final long[] packed;

    private WaterYears(long[] packed) {
        this.packed = packed;
    }

    /**
     * What one visit tells.
     *
     * @param years latest first
     * @param visited the day of the visit, in days since 1970
     */
    static WaterYears of(List<MakeUpYear> years, int visited) {
        WaterYears all = NONE;
        for (int i = years.size() - 1; i >= 0; i--) {
            MakeUpYear year = years.get(i);
            long share = year.share().map(one -> millionths(one, Unit.PERCENT)).orElse((long) NO_SHARE);
            // Of two that end in one calendar year the later is kept.
            all = all.with(year.until().getYear(), visited, share, millionths(year.perDay(), Unit.GALLON_PER_DAY));
        }
        return all;
    }

    private static long millionths(Quantity quantity, Unit unit) {
        Rational whole = quantity.valueIn(unit).times(Rational.of(FINENESS)).plus(Rational.of(1, 2));
        return whole.numerator().divide(whole.denominator()).longValueExact();
    }

    /** The same with a year in its place, instead of what stood there. */
    private WaterYears with(long... year) {
        int at = 0;
        while (at < packed.length && packed[at] > year[0]) {
            at += PARTS;
        }
        int behind = at < packed.length && packed[at] == year[0] ? at + PARTS : at;
        long[] all = new long[at + PARTS + packed.length - behind];
        System.arraycopy(packed, 0, all, 0, at);
        System.arraycopy(year, 0, all, at, PARTS);
        System.arraycopy(packed, behind, all, at + PARTS, packed.length - behind);
        return new WaterYears(all.length > MOST * PARTS ? Arrays.copyOf(all, MOST * PARTS) : all);
    }

    /**
     * These and what another visit tells that was read after them. For each year the later visit counts; of two visits
     * on one day the one read later counts alone.
     */
    WaterYears and(WaterYears other, int visited) {
        WaterYears all = NONE;
        for (int i = 0; i < packed.length; i += PARTS) {
            if (packed[i + VISITED] != visited) {
                all = all.with(Arrays.copyOfRange(packed, i, i + PARTS));
            }
        }
        for (int i = 0; i < other.packed.length; i += PARTS) {
            if (!all.isKnownLater(other.packed[i], other.packed[i + VISITED])) {
                all = all.with(Arrays.copyOfRange(other.packed, i, i + PARTS));
            }
        }
        return all;
    }

    private boolean isKnownLater(long year, long visited) {
        for (int i = 0; i < packed.length; i += PARTS) {
            if (packed[i] == year) {
                return packed[i + VISITED] > visited;
            }
        }
        return false;
    }

    /** Whether a visit told the latest of them. */
    boolean isTold(int visited) {
        return packed.length > 0 && packed[VISITED] == visited;
    }

    /** How many there are. */
    int count() {
        return packed.length / PARTS;
    }

    /** The calendar year in which one ended; 0 is the latest. */
    int year(int index) {
        return (int) packed[index * PARTS];
    }

    /** What went through by the day, in gallons. */
    Rational perDay(int index) {
        return Rational.of(packed[index * PARTS + PER_DAY], FINENESS);
    }

    /** The share of the steam made, in percent; empty where it is not known. */
    Optional<Rational> share(int index) {
        long share = packed[index * PARTS + SHARE];
        return share == NO_SHARE ? Optional.empty() : Optional.of(Rational.of(share, FINENESS));
    }
}
