package gaugeglass.engine.observation;

import gaugeglass.engine.vocabulary.Decision;
import gaugeglass.engine.vocabulary.Earlier;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * One visit to one site, as an inspection file tells it: who and when, what was observed of each unit, and what earlier
 * visits found. Immutable.
 *
 * @param file the file as the person named it
 * @param format the version of the file's form
 * @param siteId the site's id, which stays the same over years
 * @param siteName the site's name; empty where none was given
 * @param site the answers about the site; each unit's observations hold them too
 * @param date the day of the visit
 * @param by who made it; may be empty
 * @param started the time it began, as typed; may be empty
 * @param note what the person added about the visit; may be empty
 * @param units the units visited, in the file's order; may be none
 * @param earlier what earlier visits found, with the owner's decisions
 * @param decisions what the owner decided about this visit's findings, in the file's order; one at most for a finding
 * @param judgedBy what judged it when it was made, as far as the file records it
 * @param remarks what the reader made of an answer that had to be completed, such as a year taken as its first day
 */
public record Inspection(
        String file,
        int format,
        String siteId,
        String siteName,
        List<Answer> site,
        LocalDate date,
        String by,
        String started,
        String note,
        List<Visited> units,
        List<Earlier> earlier,
        List<Decided> decisions,
        JudgedBy judgedBy,
        List<Remark> remarks) {
    /** The version of the form that this program reads and writes. */
    public static final int FORMAT = 1;

    public Inspection {
        site = List.copyOf(site);
        units = List.copyOf(units);
        earlier = List.copyOf(earlier);
        decisions = List.copyOf(decisions);
        remarks = List.copyOf(remarks);
    }

    /** A visit without earlier findings, made by a program; the answers about the site are the first unit's. */
    public static Inspection of(String siteId, String siteName, LocalDate date, List<Visited> units) {
        List<Answer> site = units.isEmpty()
                ? List.of()
                : units.get(0).observations().answers().stream()
                        .filter(answer -> answer.item()
                                .kind()
                                .equals(units.get(0)
                                        .observations()
                                        .vocabulary()
                                        .site()
                                        .id()))
                        .toList();
        return new Inspection(
                "",
                FORMAT,
                siteId,
                siteName,
                site,
                date,
                "",
                "",
                "",
                units,
                List.of(),
                List.of(),
                JudgedBy.NOT_RECORDED,
                List.of());
    }

    /**
     * One unit that was visited.
     *
     * @param name its name; empty where none was given
     * @param checklist the id of the checklist that is walked; empty where none is
     * @param observations what was observed of it and of the site
     */
    public record Visited(String name, String checklist, Observations observations) {
        /** One that was visited without a checklist. */
        public Visited(String name, Observations observations) {
            this(name, "", observations);
        }

        /** The unit's id, which stays the same over years. */
        public String id() {
            return observations.unit();
        }
    }

    /**
     * What the reader made of an answer.
     *
     * @param line where the answer stands, from 1
     * @param where the path of keys that leads there
     * @param what what was made of it, as a sentence without a full stop
     */
    public record Remark(int line, String where, String what) {
        @Override
        public String toString() {
            return where + ": " + what;
        }
    }

    /**
     * What the owner decided about a finding of this visit. It is shown, and changes no outcome.
     *
     * @param rule the card's id
     * @param unit the unit's id
     * @param subject the tag it is about; empty for the unit
     * @param decision done, deferred or refused
     * @param by who decided
     * @param on when; it may be later than the visit
     * @param note what was said about it; may be empty
     */
    public record Decided(
            String rule, String unit, String subject, Decision decision, String by, LocalDate on, String note) {
        public Decided {
            if (decision == Decision.NONE) {
                throw new IllegalArgumentException("a decision that is none is not recorded");
            }
        }

        /** Whether this is about the same finding. */
        public boolean isAbout(String otherRule, String otherUnit, String otherSubject) {
            return rule.equals(otherRule) && unit.equals(otherUnit) && subject.equals(otherSubject);
        }
    }

    /** The same visit with other decisions. */
    public Inspection withDecisions(List<Decided> others) {
        return new Inspection(
                file, format, siteId, siteName, site, date, by, started, note, units, earlier, others, judgedBy,
                remarks);
    }

    /** The same visit, with another record of what judged it. */
    public Inspection withJudgedBy(JudgedBy other) {
        return new Inspection(
                file, format, siteId, siteName, site, date, by, started, note, units, earlier, decisions, other,
                remarks);
    }

    /** The same visit with more remarks. */
    public Inspection withMore(List<Remark> more) {
        List<Remark> all = new ArrayList<>(remarks);
        all.addAll(more);
        return new Inspection(
                file, format, siteId, siteName, site, date, by, started, note, units, earlier, decisions, judgedBy,
                all);
    }
}
