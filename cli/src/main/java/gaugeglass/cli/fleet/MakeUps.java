package gaugeglass.cli.fleet;

import gaugeglass.engine.book.Limit;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.quantity.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The make-up of a fleet's boilers side by side: each against its own earlier years, and against the other sites. What stands
 * out is a question and no finding; what is a finding the rules have said already.
 */
final class MakeUps {
    /** Fewer sites than this say nothing of what is usual. */
    static final int LEAST_SITES = 10;

    /** Fewer earlier years than this say nothing of what is usual; of three the middle one bears one odd year. */
    static final int LEAST_YEARS = 3;

    /** How many times the year before's a boiler may take; the limit of the rules is taken for the years before, too. */
    private static final String RISE = "water-use.rise";

    /** What is too little in a year to mean anything. */
    private static final String RISE_LEAST = "water-use.rise-least";

    private static final Rational DAYS = Rational.of(365);

    /**
     * What sites usually take, each counted once, by the middle of its boilers.
     *
     * @param sites how many sites stand behind it
     * @param lower a quarter of the sites lie at or below it; percent of the steam made
     * @param middle as many sites lie above as below it
     * @param upper a quarter of the sites lie at or above it
     * @param fence beyond it a boiler stands out: the upper quarter's, and one and a half times the distance from the lower
     *     quarter's
     */
    record Usual(int sites, Rational lower, Rational middle, Rational upper, Rational fence) {}

    /** What something is held against. */
    enum Against {
        SHARE,
        GALLONS_A_DAY
    }

    /**
     * A boiler's latest year against its earlier ones.
     *
     * @param by what is compared
     * @param years how many earlier years stand behind it
     * @param middle of these years
     * @param times how many times the middle the latest is; empty where the middle is nothing
     */
    record Own(Against by, int years, Rational middle, Optional<Rational> times, boolean isOut) {}

    /** Against what a boiler stands out. */
    enum Out {
        NOTHING,
        ITSELF,
        OTHERS,
        BOTH
    }

    /**
     * A boiler whose latest visit tells what it took.
     *
     * @param year in which the figures end
     * @param perDay gallons
     * @param share percent of the steam made; empty where that is not known
     * @param own empty where there are too few earlier years
     * @param times how many times the middle of the sites its share is; empty where one of the two is not known, or the
     *     middle is nothing
     * @param isBeyond whether it lies beyond the fence
     */
    record Row(
            String site,
            String siteName,
            String unit,
            int year,
            Rational perDay,
            Optional<Rational> share,
            Optional<Own> own,
            Optional<Rational> times,
            boolean isBeyond) {
        Out out() {
            boolean isOwn = own.filter(Own::isOut).isPresent();
            if (isBeyond) {
                return isOwn ? Out.BOTH : Out.OTHERS;
            }
            return isOwn ? Out.ITSELF : Out.NOTHING;
        }

        boolean isOut() {
            return out() != Out.NOTHING;
        }

        private Rational most() {
            Rational own = own().filter(Own::isOut).flatMap(Own::times).orElse(Rational.ZERO);
            Rational fleet = isBeyond ? times.orElse(Rational.ZERO) : Rational.ZERO;
            return own.compareTo(fleet) > 0 ? own : fleet;
        }
    }

    private final List<Row> rows = new ArrayList<>();
    private final Optional<Usual> usual;
    private final int shareSites;
    private final Rational rise;
    private final Rational riseLeast;

    /**
     * Compares.
     *
     * @param sites in order of their ids
     * @param limits of the rulebook
     */
    MakeUps(List<Site> sites, Map<String, Limit> limits) {
        this.rise = limits.get(RISE).quantity().valueIn(Unit.TIMES);
        this.riseLeast = limits.get(RISE_LEAST).quantity().valueIn(Unit.GALLON);
        List<Rational> ofSites = new ArrayList<>();
        for (Site site : sites) {
            List<Rational> shares = new ArrayList<>();
            for (Site.Stand stand : site.stands()) {
                if (stand.isWaterTold()) {
                    stand.water().share(0).ifPresent(shares::add);
                }
            }
            if (!shares.isEmpty()) {
                ofSites.add(quantile(shares, 1, 2));
            }
        }
        this.shareSites = ofSites.size();
        this.usual = shareSites < LEAST_SITES ? Optional.empty() : Optional.of(usual(ofSites));
        for (Site site : sites) {
            for (Site.Stand stand : site.stands()) {
                if (stand.isWaterTold()) {
                    rows.add(row(site, stand));
                }
            }
        }
        rows.sort(Comparator.comparing((Row row) -> !row.isOut())
                .thenComparing(Row::most, Comparator.reverseOrder())
                .thenComparing(row -> row.share().orElse(Rational.ZERO), Comparator.reverseOrder())
                .thenComparing(Row::perDay, Comparator.reverseOrder())
                .thenComparing(Row::site)
                .thenComparing(Row::unit));
    }

    private static Usual usual(List<Rational> shares) {
        Rational lower = quantile(shares, 1, 4);
        Rational upper = quantile(shares, 3, 4);
        Rational fence = upper.plus(upper.minus(lower).times(Rational.of(3, 2)));
        return new Usual(shares.size(), lower, quantile(shares, 1, 2), upper, fence);
    }

    /**
     * Below which a share of the values lies, between two of them in proportion: as QUARTILE of the OpenFormula standard
     * (ISO/IEC 26300-2), which a spreadsheet gives too.
     */
    static Rational quantile(List<Rational> values, int part, int of) {
        List<Rational> sorted = new ArrayList<>(values);
        sorted.sort(Comparator.naturalOrder());
        long place = (long) (sorted.size() - 1) * part;
        int below = (int) (place / of);
        Rational low = sorted.get(below);
        return place % of == 0 ? low : low.plus(sorted.get(below + 1).minus(low).times(Rational.of(place % of, of)));
    }

    private Row row(Site site, Site.Stand stand) {
        WaterYears water = stand.water();
        Optional<Rational> share = water.share(0);
        boolean isBeyond = isMuch(water)
                && share.isPresent()
                && usual.isPresent()
                && share.get().compareTo(usual.get().fence()) > 0;
        return new Row(
                site.id,
                site.name,
                stand.unit(),
                water.year(0),
                water.perDay(0),
                share,
                own(water),
                share.flatMap(one -> usual.flatMap(all -> times(one, all.middle()))),
                isBeyond);
    }

    private Optional<Own> own(WaterYears water) {
        List<Rational> shares = new ArrayList<>();
        List<Rational> days = new ArrayList<>();
        for (int i = 1; i < water.count(); i++) {
            water.share(i).ifPresent(shares::add);
            days.add(water.perDay(i));
        }
        if (water.share(0).isPresent() && shares.size() >= LEAST_YEARS) {
            return Optional.of(own(Against.SHARE, water.share(0).get(), shares, water));
        }
        return days.size() < LEAST_YEARS
                ? Optional.empty()
                : Optional.of(own(Against.GALLONS_A_DAY, water.perDay(0), days, water));
    }

    private Own own(Against by, Rational now, List<Rational> before, WaterYears water) {
        Rational middle = quantile(before, 1, 2);
        boolean isOut = isMuch(water) && now.compareTo(middle.times(rise)) > 0;
        return new Own(by, before.size(), middle, times(now, middle), isOut);
    }

    private boolean isMuch(WaterYears water) {
        return water.perDay(0).times(DAYS).compareTo(riseLeast) > 0;
    }

    private static Optional<Rational> times(Rational one, Rational middle) {
        return middle.signum() == 0 ? Optional.empty() : Optional.of(one.dividedBy(middle));
    }

    /**
     * A figure for people and programs, halves away from zero.
     *
     * @param places how many digits behind the point
     */
    static String told(Rational number, int places) {
        return new BigDecimal(number.numerator())
                .divide(new BigDecimal(number.denominator()), places, RoundingMode.HALF_UP)
                .toPlainString();
    }

    /** Those that stand out first, the most first; then by what they take. */
    List<Row> rows() {
        return rows;
    }

    /** What sites usually take; empty where too few tell it. */
    Optional<Usual> usual() {
        return usual;
    }

    /** How many sites tell a share of the steam. */
    int shareSites() {
        return shareSites;
    }

    /** How many times the middle of its earlier years a boiler may take before it stands out. */
    Rational rise() {
        return rise;
    }

    /** What is too little in a year to stand out, in gallons. */
    Rational riseLeast() {
        return riseLeast;
    }
}
