package gaugeglass.cli.fleet;

import gaugeglass.engine.Assessment.Permit;
import gaugeglass.engine.Assessment.Word;
import gaugeglass.engine.book.Urgency;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.IntPredicate;

/** What a fleet comes to, every list in a stated order: the same visits give the same totals, however they were judged. */
public final class Totals {
    private final Fleet fleet;
    private final LocalDate asOf;
    private final List<SiteRow> sites = new ArrayList<>();
    private final List<FoundRow> found = new ArrayList<>();
    private final List<DueRow> due = new ArrayList<>();
    private final List<Site> inOrder;
    private final MakeUps makeUps;
    private int units;

    /**
     * One site.
     *
     * @param visited the latest visit to any of its units
     * @param worst the ordinal of the worst urgency that stands; one more than the last where none does
     * @param counts how many findings stand of each urgency, over all units
     */
    record SiteRow(
            String id,
            String name,
            LocalDate visited,
            int units,
            int worst,
            Permit testFiring,
            Permit release,
            int[] counts) {
        /** The worst urgency as a word; empty where none stands. */
        String worstWord() {
            return worst < Urgency.values().length ? Urgency.values()[worst].word() : "";
        }
    }

    /**
     * One practice that stands somewhere.
     *
     * @param byUrgency on how many units it stands with which urgency
     */
    record FoundRow(String rule, int units, int sites, int[] byUrgency) {
        int worst() {
            for (int i = 0; i < byUrgency.length; i++) {
                if (byUrgency[i] > 0) {
                    return i;
                }
            }
            return byUrgency.length;
        }
    }

    /**
     * What falls due by one practice and one dated answer.
     *
     * @param overdue how many are due already
     * @param quarters how many fall due in which quarter to come
     * @param unknown of how many the date was not seen
     */
    record DueRow(String rule, String item, int overdue, SortedMap<Quarter, Integer> quarters, int unknown) {
        int all() {
            return overdue
                    + unknown
                    + quarters.values().stream().mapToInt(i -> i).sum();
        }
    }

    /** One thing that falls due; without a day where its date was not seen. */
    record DueThing(
            String site,
            String siteName,
            String unit,
            String rule,
            String item,
            String subject,
            Optional<LocalDate> day) {}

    /** A question that was left open. */
    record OpenRow(String item, int open, int holdsGate, int unread) {}

    /** A practice that found nothing on any visit. */
    record NeverRow(String rule, int undetermined, int inOrder, int notApplicable) {}

    /** A quarter of a year. */
    record Quarter(int year, int number) implements Comparable<Quarter> {
        static Quarter of(LocalDate day) {
            return new Quarter(day.getYear(), (day.getMonthValue() + 2) / 3);
        }

        Quarter next() {
            return number == 4 ? new Quarter(year + 1, 1) : new Quarter(year, number + 1);
        }

        @Override
        public int compareTo(Quarter other) {
            return year == other.year ? Integer.compare(number, other.number) : Integer.compare(year, other.year);
        }

        @Override
        public String toString() {
            return year + "-Q" + number;
        }
    }

    /**
     * Adds up.
     *
     * @param fleet all that was counted; at least one visit
     */
    public Totals(Fleet fleet) {
        this.fleet = fleet;
        this.asOf = fleet.judgedFor;
        this.inOrder = new ArrayList<>(fleet.sites.values());
        inOrder.sort(Comparator.comparing(site -> site.id));
        this.makeUps = new MakeUps(inOrder, fleet.summing.limits());
        int practices = fleet.summing.practices.size();
        int[][] byUrgency = new int[practices][Urgency.values().length];
        int[] foundSites = new int[practices];
        int[] lastSite = new int[practices];
        List<DueCount> counts = new ArrayList<>();
        for (int i = 0; i < fleet.dues.size(); i++) {
            counts.add(new DueCount());
        }
        int number = 0;
        for (Site site : inOrder) {
            number++;
            Site.Stand[] stands = site.stands();
            units += stands.length;
            sites.add(row(site, stands));
            for (Site.Stand stand : stands) {
                for (char one : stand.found()) {
                    int practice = Found.practice(one);
                    byUrgency[practice][Found.urgency(one)]++;
                    if (lastSite[practice] != number) {
                        lastSite[practice] = number;
                        foundSites[practice]++;
                    }
                }
                for (int i = 0; i < stand.due().length; i += Site.Stand.DUE_PARTS) {
                    counts.get(stand.due()[i]).add(stand.due()[i + 2], asOf);
                }
            }
        }
        sites.sort(Comparator.comparingInt(SiteRow::worst)
                .thenComparing(SiteRow::release)
                .thenComparing(SiteRow::testFiring)
                .thenComparing((a, b) -> Arrays.compare(b.counts(), a.counts()))
                .thenComparing(SiteRow::id));
        for (int i = 0; i < practices; i++) {
            if (foundSites[i] > 0) {
                int on = Arrays.stream(byUrgency[i]).sum();
                found.add(new FoundRow(fleet.summing.practices.text(i), on, foundSites[i], byUrgency[i]));
            }
        }
        found.sort(Comparator.comparingInt((FoundRow row) -> -row.units())
                .thenComparingInt(FoundRow::worst)
                .thenComparing(FoundRow::rule));
        for (int i = 0; i < counts.size(); i++) {
            DueCount count = counts.get(i);
            String[] parts = fleet.dues.text(i).split(" ", 2);
            DueRow row = new DueRow(parts[0], parts[1], count.overdue, count.quarters, count.unknown);
            if (row.all() > 0) {
                due.add(row);
            }
        }
        due.sort(Comparator.comparing(DueRow::rule).thenComparing(DueRow::item));
    }

    private static final class DueCount {
        private int overdue;
        private int unknown;
        private final SortedMap<Quarter, Integer> quarters = new TreeMap<>();

        private void add(int day, LocalDate asOf) {
            if (day == Site.Stand.NO_DAY) {
                unknown++;
            } else if (day <= asOf.toEpochDay()) {
                overdue++;
            } else {
                quarters.merge(Quarter.of(LocalDate.ofEpochDay(day)), 1, Integer::sum);
            }
        }
    }

    private static SiteRow row(Site site, Site.Stand[] stands) {
        int worst = Urgency.values().length;
        int testFiring = Permit.values().length - 1;
        int release = testFiring;
        int[] counts = new int[Urgency.values().length];
        for (Site.Stand stand : stands) {
            worst = Math.min(worst, stand.worst());
            testFiring = Math.min(testFiring, stand.testFiring());
            release = Math.min(release, stand.release());
            for (int i = 0; i < counts.length; i++) {
                counts[i] += stand.counts()[i];
            }
        }
        return new SiteRow(
                site.id,
                site.name,
                LocalDate.ofEpochDay(site.visited),
                stands.length,
                worst,
                Permit.values()[testFiring],
                Permit.values()[release],
                counts);
    }

    /** How many visits were judged. */
    int visits() {
        return fleet.visits;
    }

    /** On how many visits to a unit all that counts every visit rests. */
    int unitVisits() {
        return fleet.unitVisits;
    }

    int unusable() {
        return fleet.unusable;
    }

    /** How many units there are. */
    int units() {
        return units;
    }

    LocalDate first() {
        return fleet.first;
    }

    LocalDate last() {
        return fleet.last;
    }

    /** The day from which what falls due is counted: the latest for which a visit was judged. */
    LocalDate asOf() {
        return asOf;
    }

    /** Worst first, then where a permit is refused or not known, then the more findings, then by id. */
    List<SiteRow> sites() {
        return sites;
    }

    /** Most common first, then the more urgent, then by id. */
    List<FoundRow> found() {
        return found;
    }

    /** By the practice's id, then the answer's. */
    List<DueRow> due() {
        return due;
    }

    /** Gives each thing that falls due: by site, then unit, then as the rulebook has it. */
    void eachDue(Consumer<DueThing> taker) {
        eachDue(what -> true, taker);
    }

    /** Gives each thing of one row: by site, then unit, then subject. */
    void eachDue(DueRow row, Consumer<DueThing> taker) {
        int what = fleet.dues.known(row.rule() + ' ' + row.item());
        eachDue(other -> other == what, taker);
    }

    private void eachDue(IntPredicate wanted, Consumer<DueThing> taker) {
        for (Site site : inOrder) {
            for (Site.Stand stand : site.stands()) {
                int[] due = stand.due();
                for (int i = 0; i < due.length; i += Site.Stand.DUE_PARTS) {
                    if (!wanted.test(due[i])) {
                        continue;
                    }
                    String[] parts = fleet.dues.text(due[i]).split(" ", 2);
                    taker.accept(new DueThing(
                            site.id,
                            site.name,
                            stand.unit(),
                            parts[0],
                            parts[1],
                            fleet.subjects.text(due[i + 1]),
                            due[i + 2] == Site.Stand.NO_DAY
                                    ? Optional.empty()
                                    : Optional.of(LocalDate.ofEpochDay(due[i + 2]))));
                }
            }
        }
    }

    /** What the boilers take beside one another. */
    MakeUps makeUps() {
        return makeUps;
    }

    /** Most often open first, then what more often holds a permit, then by id. */
    List<OpenRow> open() {
        List<OpenRow> rows = new ArrayList<>();
        for (int i = 0; i < fleet.open.length; i++) {
            int[] counts = fleet.open[i];
            if (counts[0] > 0) {
                rows.add(new OpenRow(fleet.summing.items.text(i), counts[0], counts[1], counts[2]));
            }
        }
        rows.sort(Comparator.comparingInt((OpenRow row) -> -row.open())
                .thenComparingInt(row -> -row.holdsGate())
                .thenComparing(OpenRow::item));
        return rows;
    }

    /** Those first that were least often judged at all, then those that more often lacked an answer, then by id. */
    List<NeverRow> never() {
        List<NeverRow> rows = new ArrayList<>();
        for (int i = 0; i < fleet.words.length; i++) {
            int[] words = fleet.words[i];
            if (words[Word.FOUND.ordinal()] == 0) {
                rows.add(new NeverRow(
                        fleet.summing.practices.text(i),
                        words[Word.UNDETERMINED.ordinal()],
                        words[Word.IN_ORDER.ordinal()],
                        words[Word.NOT_APPLICABLE.ordinal()]));
            }
        }
        rows.sort(Comparator.comparingInt(NeverRow::inOrder)
                .thenComparingInt(row -> -row.undetermined())
                .thenComparing(NeverRow::rule));
        return rows;
    }

    /** Whether on any unit's latest visit something this urgent stands, or a permit is not given. */
    public boolean fails(Urgency failAt) {
        return sites.stream()
                .anyMatch(site -> site.worst() <= failAt.ordinal()
                        || site.testFiring() != Permit.NOTHING_FOUND_AGAINST
                        || site.release() != Permit.NOTHING_FOUND_AGAINST);
    }
}
