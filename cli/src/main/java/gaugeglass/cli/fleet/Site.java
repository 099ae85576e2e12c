package gaugeglass.cli.fleet;

import java.util.Arrays;

/** What a fleet keeps of one site: how each of its units stands by its own latest visit. */
final class Site {
    final String id;
    String name = "";

    /** The latest visit to any of its units, in days since 1970. */
    int visited = Integer.MIN_VALUE;

    private Stand[] stands = new Stand[0];

    Site(String id) {
        this.id = id;
    }

    /**
     * How one unit stands. There is one for each unit of a fleet, so it is packed.
     *
     * @param unit its id
     * @param visited the day of its latest visit, in days since 1970
     * @param testFiring the ordinal of that permit
     * @param release the ordinal of that permit
     * @param found as {@link Found} packs them
     * @param counts how many findings stand of each urgency
     * @param due three numbers for each thing that falls due: what, of which subject, and the day
     * @param water its make-up, of all visits
     */
    record Stand(
            String unit,
            int visited,
            byte testFiring,
            byte release,
            char[] found,
            char[] counts,
            int[] due,
            WaterYears water) {
        static final int DUE_PARTS = 3;

        /** Where a due thing's day is not known. */
        static final int NO_DAY = Integer.MIN_VALUE;

        /** Whether its latest visit tells what it took. */
        boolean isWaterTold() {
            return water.isTold(visited);
        }

        /** The same with what is known of its make-up besides. */
        private Stand with(WaterYears all) {
            return new Stand(unit, visited, testFiring, release, found, counts, due, all);
        }

        /** The ordinal of the worst urgency that stands; one more than the last where none does. */
        int worst() {
            for (int i = 0; i < counts.length; i++) {
                if (counts[i] > 0) {
                    return i;
                }
            }
            return counts.length;
        }
    }

    /** Takes a unit's stand where it has none yet that is later; of two visits on one day the one read later counts. */
    void take(Stand stand) {
        for (int i = 0; i < stands.length; i++) {
            if (stands[i].unit().equals(stand.unit())) {
                Stand other = stands[i];
                WaterYears water = other.water().and(stand.water(), stand.visited());
                stands[i] = (stand.visited() < other.visited() ? other : stand).with(water);
                return;
            }
        }
        stands = Arrays.copyOf(stands, stands.length + 1);
        stands[stands.length - 1] = stand;
    }

    /**
     * The units, by id. A visit that describes no unit tells of the site alone: it stands beside the units until one of them
     * is visited on that day or later.
     */
    Stand[] stands() {
        Stand[] all = stands.clone();
        Arrays.sort(all, (a, b) -> a.unit().compareTo(b.unit()));
        if (all.length > 1 && all[0].unit().isEmpty()) {
            for (int i = 1; i < all.length; i++) {
                if (all[i].visited() >= all[0].visited()) {
                    return Arrays.copyOfRange(all, 1, all.length);
                }
            }
        }
        return all;
    }
}
