package gaugeglass.engine.book;

import java.time.LocalDate;

/**
 * A deviation that somebody answers for, from one check at one place until a day. It hides nothing: the finding is shown
 * with it, and a stop is never waived.
 *
 * @param check the card's id
 * @param site the site's id
 * @param unit the unit's id; empty for every unit there
 * @param subject the tag it is about; empty for every one
 * @param by who answers for it
 * @param why the reason
 * @param from the first day it holds
 * @param until the last day it holds
 * @param pack what it stands in
 */
public record Waiver(
        String check,
        String site,
        String unit,
        String subject,
        String by,
        String why,
        LocalDate from,
        LocalDate until,
        String pack) {
    /** Whether it is about this unit at all, whatever the day. */
    public boolean isAt(String someSite, String someUnit) {
        return site.equals(someSite) && (unit.isEmpty() || unit.equals(someUnit));
    }

    /** Whether it covers a finding there. */
    public boolean covers(String rule, String someSubject) {
        return check.equals(rule) && (subject.isEmpty() || subject.equals(someSubject));
    }

    /** Whether it holds on a day; both ends count. */
    public boolean holdsOn(LocalDate day) {
        return !day.isBefore(from) && !day.isAfter(until);
    }
}
