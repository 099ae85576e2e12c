package gaugeglass.cli.fleet;

import gaugeglass.cli.report.Naming;
import gaugeglass.cli.table.Csv;
import gaugeglass.engine.book.Book;
import gaugeglass.engine.book.Urgency;
import gaugeglass.engine.facts.Missing;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.text.Words;
import java.io.Writer;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One of a fleet's tables for a spreadsheet, whole. */
public final class FleetCsv {
    private final Totals totals;
    private final Book book;
    private final Naming naming;

    public FleetCsv(Totals totals, Book book, Naming naming) {
        this.totals = totals;
        this.book = book;
        this.naming = naming;
    }

    /** Writes a table, a row of headings first. */
    public void write(FleetTable table, Writer out) {
        switch (table) {
            case SITES -> sites(out);
            case FINDINGS -> findings(out);
            case DUE -> due(out);
            case MAKE_UP -> makeUp(out);
            case OPEN -> open(out);
            case NEVER_FOUND -> never(out);
        }
    }

    private static List<String> urgencies(String... before) {
        List<String> headings = new ArrayList<>(List.of(before));
        for (Urgency urgency : Urgency.values()) {
            headings.add(urgency.word());
        }
        return headings;
    }

    private static void add(List<String> cells, int[] counts) {
        for (int count : counts) {
            cells.add(String.valueOf(count));
        }
    }

    private void sites(Writer out) {
        try (Csv csv =
                Csv.to(out, urgencies("site", "name", "visited", "boilers", "worst", "test firing", "release"))) {
            for (Totals.SiteRow site : totals.sites()) {
                List<String> cells = new ArrayList<>(List.of(
                        site.id(),
                        site.name(),
                        site.visited().toString(),
                        String.valueOf(site.units()),
                        site.worstWord(),
                        site.testFiring().word(),
                        site.release().word()));
                add(cells, site.counts());
                csv.row(cells);
            }
        }
    }

    private void findings(Writer out) {
        try (Csv csv = Csv.to(out, urgencies("check", "title", "boilers", "sites"))) {
            for (Totals.FoundRow row : totals.found()) {
                List<String> cells = new ArrayList<>(List.of(
                        row.rule(),
                        book.card(row.rule()).title(),
                        String.valueOf(row.units()),
                        String.valueOf(row.sites())));
                add(cells, row.byUrgency());
                csv.row(cells);
            }
        }
    }

    private void due(Writer out) {
        try (Csv csv = Csv.to(
                out,
                List.of(
                        "site",
                        "name",
                        "boiler",
                        "about",
                        "tag",
                        "check",
                        "title",
                        "dated by",
                        "due",
                        "quarter",
                        "state"))) {
            totals.eachDue(one -> {
                csv.row(List.of(
                        one.site(),
                        one.siteName(),
                        one.unit(),
                        naming.subject(book.card(one.rule()).about(), one.subject()),
                        one.subject(),
                        one.rule(),
                        book.card(one.rule()).title(),
                        one.item(),
                        one.day().map(LocalDate::toString).orElse(""),
                        one.day().map(day -> Totals.Quarter.of(day).toString()).orElse(""),
                        one.day()
                                .map(day -> day.isAfter(totals.asOf()) ? "to come" : "overdue")
                                .orElse("date not seen")));
            });
        }
    }

    private void makeUp(Writer out) {
        List<String> headings = List.of(
                "site",
                "name",
                "boiler",
                "year",
                "gallons a day",
                "percent of steam",
                "earlier years",
                "compared by",
                "their middle",
                "times their middle",
                "sites",
                "their middle percent",
                "times the sites",
                "stands out against");
        MakeUps all = totals.makeUps();
        try (Csv csv = Csv.to(out, headings)) {
            for (MakeUps.Row row : all.rows()) {
                Optional<MakeUps.Own> own = row.own();
                csv.row(List.of(
                        row.site(),
                        row.siteName(),
                        row.unit(),
                        String.valueOf(row.year()),
                        MakeUps.told(row.perDay(), 3),
                        told(row.share(), 3),
                        own.map(one -> String.valueOf(one.years())).orElse(""),
                        own.map(one -> Words.spoken(one.by())).orElse(""),
                        told(own.map(MakeUps.Own::middle), 3),
                        told(own.flatMap(MakeUps.Own::times), 2),
                        all.usual().map(one -> String.valueOf(one.sites())).orElse(""),
                        told(all.usual().map(MakeUps.Usual::middle), 3),
                        told(row.times(), 2),
                        Words.spoken(row.out())));
            }
        }
    }

    private static String told(Optional<Rational> number, int places) {
        return number.map(one -> MakeUps.told(one, places)).orElse("");
    }

    private void open(Writer out) {
        try (Csv csv = Csv.to(out, List.of("item", "question", "open", "holds a permit", "could not be read"))) {
            for (Totals.OpenRow row : totals.open()) {
                csv.row(List.of(
                        row.item(),
                        naming.question(new Missing(row.item(), "", "")),
                        String.valueOf(row.open()),
                        String.valueOf(row.holdsGate()),
                        String.valueOf(row.unread())));
            }
        }
    }

    private void never(Writer out) {
        try (Csv csv = Csv.to(out, List.of("check", "title", "not judged", "in order", "does not apply"))) {
            for (Totals.NeverRow row : totals.never()) {
                csv.row(List.of(
                        row.rule(),
                        book.card(row.rule()).title(),
                        String.valueOf(row.undetermined()),
                        String.valueOf(row.inOrder()),
                        String.valueOf(row.notApplicable())));
            }
        }
    }
}
