package gaugeglass.cli.fleet;

import gaugeglass.cli.paper.Paper;
import gaugeglass.cli.paper.Screen;
import gaugeglass.cli.paper.Style;
import gaugeglass.cli.report.Naming;
import gaugeglass.cli.report.Urgencies;
import gaugeglass.engine.Assessment.Permit;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.book.Book;
import gaugeglass.engine.book.LaidOn;
import gaugeglass.engine.book.Urgency;
import gaugeglass.engine.facts.Missing;
import gaugeglass.engine.quantity.Rational;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a fleet comes to, as a person reads it: the head of each table, numbers on the left and words on the right. */
public final class FleetText {
    /** The quarter that is running, and three more; what lies beyond is one column. */
    private static final int QUARTERS = 4;

    private final Totals totals;
    private final Book book;
    private final List<LaidOn> packs;
    private final Naming naming;
    private final int most;
    private final Paper paper;

    /**
     * A writer.
     *
     * @param most how many rows of each table are shown
     */
    public FleetText(Totals totals, Rulebook rulebook, Naming naming, Screen screen, int most) {
        this.totals = totals;
        this.packs = rulebook.packs();
        this.book = rulebook.book();
        this.naming = naming;
        this.most = most;
        this.paper = new Paper(screen);
    }

    public String write() {
        paper.line(
                counted(totals.visits(), "visit") + " to "
                        + counted(totals.sites().size(), "site") + " with "
                        + counted(totals.units(), "boiler") + ", " + days() + "."
                        + (totals.unusable() == 0
                                ? ""
                                : " " + counted(totals.unusable(), "file") + " could not be used."),
                Style.STRONG);
        paper.line(
                "Each boiler stands as its latest visit left it; of two on one day, as the one read later did.",
                Style.PLAIN);
        packs.forEach(pack -> paper.line("Judged with " + pack.told() + ".", Style.PLAIN));
        sites();
        found();
        due();
        makeUp();
        open();
        never();
        return paper.toString();
    }

    private String days() {
        return totals.first().equals(totals.last())
                ? "on " + totals.first()
                : "from " + totals.first() + " to " + totals.last();
    }

    static String counted(int number, String thing) {
        return number + " " + thing + (number == 1 ? "" : "s");
    }

    private void heading(String title, String what) {
        paper.gap();
        paper.line(title.toUpperCase(Locale.ROOT), Style.STRONG);
        paper.line(what, Style.PLAIN);
        paper.gap();
    }

    private void more(int all, FleetTable table) {
        if (all > most) {
            paper.gap();
            paper.line(
                    (all - most) + " more: --as csv --table "
                            + table.name().toLowerCase(Locale.ROOT).replace('_', '-') + ", or --top " + all,
                    Style.FAINT);
        }
    }

    private void sites() {
        heading("Sites by worst standing finding", "How many, then the worst of them.");
        for (int worst = 0; worst <= Urgency.values().length; worst++) {
            int at = worst;
            long count =
                    totals.sites().stream().filter(site -> site.worst() == at).count();
            if (count > 0) {
                paper.hanging(
                        right(count, 9),
                        worst < Urgency.values().length ? Urgencies.heading(Urgency.values()[worst]) : "Nothing found",
                        Style.PLAIN);
            }
        }
        paper.gap();
        List<String> headings = new ArrayList<>();
        for (Urgency urgency : Urgency.values()) {
            headings.add(urgency.word());
        }
        row(headings, 7, "site");
        for (Totals.SiteRow site : head(totals.sites())) {
            List<String> cells = new ArrayList<>();
            for (int count : site.counts()) {
                cells.add(count == 0 ? "-" : String.valueOf(count));
            }
            row(cells, 7, named(site.id(), site.name()) + ", " + site.visited() + permits(site));
        }
        more(totals.sites().size(), FleetTable.SITES);
    }

    private static String permits(Totals.SiteRow site) {
        if (site.testFiring() == site.release()) {
            return site.release() == Permit.NOTHING_FOUND_AGAINST
                    ? ""
                    : "; test firing and release " + said(site.release());
        }
        return (site.testFiring() == Permit.NOTHING_FOUND_AGAINST ? "" : "; test firing " + said(site.testFiring()))
                + (site.release() == Permit.NOTHING_FOUND_AGAINST ? "" : "; release " + said(site.release()));
    }

    private static String said(Permit permit) {
        return permit.word().replace('-', ' ');
    }

    private void found() {
        heading(
                "Most common findings",
                "On how many boilers each stands, at how many sites, and its worst urgency there.");
        if (totals.found().isEmpty()) {
            paper.indented(2, "nothing stands");
            return;
        }
        row(List.of("boilers", "sites", "worst"), 9, "finding");
        for (Totals.FoundRow row : head(totals.found())) {
            row(
                    List.of(
                            String.valueOf(row.units()),
                            String.valueOf(row.sites()),
                            Urgency.values()[row.worst()].word()),
                    9,
                    title(row.rule()));
        }
        more(totals.found().size(), FleetTable.FINDINGS);
    }

    private String title(String rule) {
        return book.card(rule).title() + " (" + rule + ")";
    }

    private void due() {
        heading(
                "Due by quarter",
                "What will be found by waiting, if nothing is done before. Due: on " + totals.asOf()
                        + " already. Undated: when it was put in, tested or cleaned was not seen.");
        if (totals.due().isEmpty()) {
            paper.indented(2, "nothing that falls due was seen");
            return;
        }
        List<Totals.Quarter> quarters = new ArrayList<>();
        Totals.Quarter quarter = Totals.Quarter.of(totals.asOf());
        for (int i = 0; i < QUARTERS; i++) {
            quarters.add(quarter);
            quarter = quarter.next();
        }
        List<String> headings = new ArrayList<>(List.of("due"));
        // The century is known, and seven columns are many.
        quarters.forEach(one -> headings.add(one.toString().substring(2)));
        headings.addAll(List.of("later", "undated"));
        row(headings, 7, "check");
        for (Totals.DueRow row : totals.due()) {
            List<String> cells = new ArrayList<>(List.of(dash(row.overdue())));
            int later = row.all() - row.overdue() - row.unknown();
            for (Totals.Quarter one : quarters) {
                int count = row.quarters().getOrDefault(one, 0);
                later -= count;
                cells.add(dash(count));
            }
            cells.add(dash(later));
            cells.add(dash(row.unknown()));
            boolean isOnly = totals.due().stream()
                            .filter(other -> other.rule().equals(row.rule()))
                            .count()
                    == 1;
            row(
                    cells,
                    7,
                    row.rule()
                            + (isOnly
                                    ? ""
                                    : ", " + row.item().substring(row.item().indexOf('.') + 1)));
        }
        paper.gap();
        paper.line("Which they are: --as csv --table due", Style.FAINT);
    }

    private static String dash(int count) {
        return count == 0 ? "-" : String.valueOf(count);
    }

    private void makeUp() {
        MakeUps all = totals.makeUps();
        List<MakeUps.Row> out = all.rows().stream().filter(MakeUps.Row::isOut).toList();
        heading(
                "Make-up that stands out",
                "Of " + counted(totals.units(), "boiler") + ", the latest visit to "
                        + all.rows().size()
                        + " tells the year's make-up, as the meter's log has it. " + usual(all)
                        + " A boiler stands out against itself with more than " + MakeUps.told(all.rise(), 1)
                        + " times the middle of its earlier years, where at least " + MakeUps.LEAST_YEARS
                        + " are known. Standing out is a question to ask, and no finding.");
        if (out.isEmpty()) {
            paper.indented(2, "none stands out");
        } else {
            row(List.of("percent", "x sites", "gal/day", "x own", "years"), 8, "boiler");
        }
        for (MakeUps.Row row : head(out)) {
            row(
                    List.of(
                            told(row.share(), 2),
                            told(row.times(), 1),
                            MakeUps.told(row.perDay(), 2),
                            told(row.own().flatMap(MakeUps.Own::times), 1),
                            row.own().map(own -> String.valueOf(own.years())).orElse("-")),
                    8,
                    row.unit() + ", " + named(row.site(), row.siteName()) + ", against " + against(row));
        }
        if (out.size() > most) {
            more(out.size(), FleetTable.MAKE_UP);
        } else if (!all.rows().isEmpty()) {
            paper.gap();
            paper.line("All of them: --as csv --table make-up", Style.FAINT);
        }
    }

    private static String usual(MakeUps all) {
        if (all.usual().isEmpty()) {
            return "A share of the steam made is known at " + counted(all.shareSites(), "site") + ", and fewer than "
                    + MakeUps.LEAST_SITES + " tell nothing of what is usual: none is held against the others.";
        }
        MakeUps.Usual usual = all.usual().get();
        return "At " + usual.sites()
                + " sites a share of the steam made is known, and each counts once: half of them lie"
                + " from " + MakeUps.told(usual.lower(), 2) + " % to " + MakeUps.told(usual.upper(), 2)
                + " %, the middle one at " + MakeUps.told(usual.middle(), 2)
                + " %. A boiler stands out against the others above " + MakeUps.told(usual.fence(), 2)
                + " %, which is one and a half times the width of that half beyond it.";
    }

    private static String against(MakeUps.Row row) {
        return switch (row.out()) {
            case NOTHING -> "nothing";
            case ITSELF -> "itself";
            case OTHERS -> "the others";
            case BOTH -> "the others and itself";
        };
    }

    private static String told(Optional<Rational> number, int places) {
        return number.map(one -> MakeUps.told(one, places)).orElse("-");
    }

    private static String named(String site, String name) {
        return name.isEmpty() ? site : name + " (" + site + ")";
    }

    private void open() {
        heading(
                "Most often left open",
                "On how many of all " + counted(totals.unitVisits(), "visit") + " to a boiler, on how many of them it"
                        + " keeps a permit from being known, and on how many it could not be read.");
        if (totals.open().isEmpty()) {
            paper.indented(2, "nothing was left open");
            return;
        }
        row(List.of("open", "permit", "unread"), 8, "question");
        for (Totals.OpenRow row : head(totals.open())) {
            row(
                    List.of(String.valueOf(row.open()), dash(row.holdsGate()), dash(row.unread())),
                    8,
                    naming.question(new Missing(row.item(), "", "")) + " (" + row.item() + ")");
        }
        more(totals.open().size(), FleetTable.OPEN);
    }

    private void never() {
        List<Totals.NeverRow> rows = totals.never();
        heading(
                "Never found anything",
                counted(rows.size(), "check") + " on no visit, those first that were least often judged at all: a check"
                        + " that always lacks an answer, or never applies, proves nothing.");
        if (rows.isEmpty()) {
            return;
        }
        row(List.of("not judged", "in order", "n/a"), 11, "check");
        for (Totals.NeverRow row : head(rows)) {
            row(
                    List.of(dash(row.undetermined()), dash(row.inOrder()), dash(row.notApplicable())),
                    11,
                    title(row.rule()));
        }
        more(rows.size(), FleetTable.NEVER_FOUND);
    }

    private <R> List<R> head(List<R> rows) {
        return rows.subList(0, Math.min(most, rows.size()));
    }

    private void row(List<String> numbers, int width, String words) {
        StringBuilder lead = new StringBuilder();
        numbers.forEach(number ->
                lead.append(" ".repeat(Math.max(1, width - number.length()))).append(number));
        paper.hanging(lead.append("  ").toString(), words, Style.PLAIN);
    }

    private static String right(long number, int width) {
        String text = String.valueOf(number);
        return " ".repeat(Math.max(1, width - 2 - text.length())) + text + "  ";
    }
}
