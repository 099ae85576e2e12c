package gaugeglass.cli.fleet;

import gaugeglass.engine.Assessment.Due;
import gaugeglass.engine.Assessment.Word;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;

/**
 * Counts over many visits. What it keeps grows with the number of units, by some hundred bytes for each, and not with the
 * number of visits; it is filled by one thread, in the order in which the visits are read.
 */
public final class Fleet {
    final Summing summing;
    final Map<String, Site> sites = new HashMap<>();
    final Numbers dues = new Numbers();
    final Numbers subjects = new Numbers();

    /** For each practice and each word, on how many visits to a unit it came out so. */
    final int[][] words;

    /** For each question: on how many visits to a unit it was open, held a permit, could not be read. */
    final int[][] open;

    int visits;
    int unitVisits;
    int unusable;
    LocalDate first = LocalDate.MAX;
    LocalDate last = LocalDate.MIN;
    LocalDate judgedFor = LocalDate.MIN;

    public Fleet(Summing summing) {
        this.summing = summing;
        this.words = new int[summing.practices.size()][Word.values().length];
        this.open = new int[summing.items.size()][3];
    }

    /** Counts one visit. */
    public void add(Summary summary) {
        visits++;
        first = earlier(first, summary.visited());
        last = later(last, summary.visited());
        judgedFor = later(judgedFor, summary.date());
        Site site = sites.computeIfAbsent(summary.site(), Site::new);
        int day = day(summary.visited());
        if (day >= site.visited) {
            site.visited = day;
            site.name = summary.siteName().isEmpty() ? site.name : summary.siteName();
        }
        for (Summary.Unit unit : summary.units()) {
            unitVisits++;
            for (int practice = 0; practice < words.length; practice++) {
                if (unit.words()[practice] >= 0) {
                    words[practice][unit.words()[practice]]++;
                }
            }
            for (Summary.Open one : unit.open()) {
                open[one.item()][0]++;
                open[one.item()][1] += one.holdsGate() ? 1 : 0;
                open[one.item()][2] += one.isUnread() ? 1 : 0;
            }
            site.take(stand(unit, day));
        }
    }

    /** Counts one file that could not be used. */
    public void addUnusable() {
        unusable++;
    }

    private Site.Stand stand(Summary.Unit unit, int day) {
        int[] due = new int[unit.due().size() * Site.Stand.DUE_PARTS];
        int next = 0;
        for (Due one : unit.due()) {
            due[next++] = dues.of(one.rule() + ' ' + one.item());
            due[next++] = subjects.of(one.subject());
            due[next++] = one.day().isPresent() ? day(one.day().get()) : Site.Stand.NO_DAY;
        }
        return new Site.Stand(
                unit.id(),
                day,
                (byte) unit.testFiring(),
                (byte) unit.release(),
                unit.found(),
                unit.counts(),
                due,
                WaterYears.of(unit.water(), day));
    }

    private static int day(LocalDate date) {
        return Math.toIntExact(date.toEpochDay());
    }

    private static LocalDate earlier(LocalDate one, LocalDate other) {
        return one.isBefore(other) ? one : other;
    }

    private static LocalDate later(LocalDate one, LocalDate other) {
        return one.isAfter(other) ? one : other;
    }
}
