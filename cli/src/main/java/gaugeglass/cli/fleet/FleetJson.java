package gaugeglass.cli.fleet;

import gaugeglass.cli.report.JsonReport;
import gaugeglass.cli.report.Naming;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.book.Book;
import gaugeglass.engine.book.LaidOn;
import gaugeglass.engine.book.Urgency;
import gaugeglass.engine.facts.Missing;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.reading.NodeWriter;
import gaugeglass.engine.text.Words;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * What a fleet comes to, as programs read it; {@code docs/schema/fleet.schema.json} describes the form.
 *
 * <p>It is written row by row, each on its line: a hundred thousand sites are never held as one text.
 */
public final class FleetJson {
    /** The version of the form. */
    static final int FORMAT = 1;

    private final Totals totals;
    private final Book book;
    private final List<LaidOn> packs;
    private final Naming naming;

    public FleetJson(Totals totals, Rulebook rulebook, Naming naming) {
        this.totals = totals;
        this.packs = rulebook.packs();
        this.book = rulebook.book();
        this.naming = naming;
    }

    /** Writes everything, piece by piece. */
    public void write(Consumer<String> out) {
        out.accept("{\n  \"format\" : " + FORMAT);
        one(out, "rulebook", fields("name", book.name(), "version", book.version(), "hash", book.hash()));
        rows(out, "packs", packs, JsonReport::laidOn);
        one(out, "visits", totals.visits());
        one(out, "boilerVisits", totals.unitVisits());
        one(out, "unusable", totals.unusable());
        one(out, "boilers", totals.units());
        one(out, "first", totals.first().toString());
        one(out, "last", totals.last().toString());
        one(out, "asOf", totals.asOf().toString());
        rows(out, "sites", totals.sites(), FleetJson::site);
        rows(out, "findings", totals.found(), this::found);
        due(out);
        makeUp(out);
        rows(out, "open", totals.open(), this::open);
        rows(out, "neverFound", totals.never(), this::never);
        out.accept("\n}\n");
    }

    private static void one(Consumer<String> out, String key, Object value) {
        out.accept(",\n  \"" + key + "\" : " + NodeWriter.line(value));
    }

    private static <R> void rows(
            Consumer<String> out, String key, List<R> rows, Function<R, Map<String, Object>> fields) {
        out.accept(",\n  \"" + key + "\" : [");
        String before = "\n    ";
        for (R row : rows) {
            out.accept(before + NodeWriter.line(fields.apply(row)));
            before = ",\n    ";
        }
        out.accept(rows.isEmpty() ? "]" : "\n  ]");
    }

    private static Map<String, Object> site(Totals.SiteRow row) {
        return fields(
                "site", row.id(),
                "siteName", row.name(),
                "visited", row.visited().toString(),
                "boilers", row.units(),
                "worst", row.worstWord(),
                "testFiring", row.testFiring().word(),
                "release", row.release().word(),
                "counts", counts(row.counts()));
    }

    private Map<String, Object> found(Totals.FoundRow row) {
        return fields(
                "rule", row.rule(),
                "title", book.card(row.rule()).title(),
                "boilers", row.units(),
                "sites", row.sites(),
                "byUrgency", counts(row.byUrgency()));
    }

    /** The devices of each row are written one by one: there may be more of them than fit into one text. */
    private void due(Consumer<String> out) {
        out.accept(",\n  \"due\" : [");
        String before = "\n    ";
        for (Totals.DueRow row : totals.due()) {
            String whole = NodeWriter.line(due(row));
            out.accept(before + whole.substring(0, whole.length() - 1) + ",\"devices\":[");
            String[] between = {"\n      "};
            totals.eachDue(row, one -> {
                out.accept(between[0] + NodeWriter.line(device(one)));
                between[0] = ",\n      ";
            });
            out.accept("]}");
            before = ",\n    ";
        }
        out.accept(totals.due().isEmpty() ? "]" : "\n  ]");
    }

    private static Map<String, Object> device(Totals.DueThing one) {
        return fields(
                "site",
                one.site(),
                "siteName",
                one.siteName(),
                "boiler",
                one.unit(),
                "tag",
                one.subject(),
                "due",
                one.day().map(LocalDate::toString).orElse(""));
    }

    private void makeUp(Consumer<String> out) {
        MakeUps all = totals.makeUps();
        Optional<MakeUps.Usual> usual = all.usual();
        out.accept(",\n  \"makeUp\" : {\n    ");
        String whole = NodeWriter.line(fields(
                "shareSites", all.shareSites(),
                "leastSites", MakeUps.LEAST_SITES,
                "lowerQuarter", told(usual.map(MakeUps.Usual::lower), 3),
                "middle", told(usual.map(MakeUps.Usual::middle), 3),
                "upperQuarter", told(usual.map(MakeUps.Usual::upper), 3),
                "fence", told(usual.map(MakeUps.Usual::fence), 3),
                "rise", MakeUps.told(all.rise(), 2),
                "leastYears", MakeUps.LEAST_YEARS));
        out.accept(whole.substring(1, whole.length() - 1));
        rows(out, "boilers", all.rows(), FleetJson::boiler);
        out.accept("\n  }");
    }

    private static Map<String, Object> boiler(MakeUps.Row row) {
        Optional<MakeUps.Own> own = row.own();
        return fields(
                "site", row.site(),
                "siteName", row.siteName(),
                "boiler", row.unit(),
                "year", row.year(),
                "gallonsADay", MakeUps.told(row.perDay(), 3),
                "percentOfSteam", told(row.share(), 3),
                "earlierYears", own.map(MakeUps.Own::years).orElse(0),
                "comparedBy", own.map(one -> Words.of(one.by())).orElse(""),
                "theirMiddle", told(own.map(MakeUps.Own::middle), 3),
                "timesTheirMiddle", told(own.flatMap(MakeUps.Own::times), 2),
                "timesTheSites", told(row.times(), 2),
                "standsOutAgainst", Words.of(row.out()));
    }

    private static String told(Optional<Rational> number, int places) {
        return number.map(one -> MakeUps.told(one, places)).orElse("");
    }

    private Map<String, Object> due(Totals.DueRow row) {
        Map<String, Object> quarters = new LinkedHashMap<>();
        row.quarters().forEach((quarter, count) -> quarters.put(quarter.toString(), count));
        return fields(
                "rule", row.rule(),
                "title", book.card(row.rule()).title(),
                "item", row.item(),
                "overdue", row.overdue(),
                "quarters", quarters,
                "unknown", row.unknown());
    }

    private Map<String, Object> open(Totals.OpenRow row) {
        return fields(
                "item", row.item(),
                "ask", naming.question(new Missing(row.item(), "", "")),
                "open", row.open(),
                "holdsGate", row.holdsGate(),
                "unread", row.unread());
    }

    private Map<String, Object> never(Totals.NeverRow row) {
        return fields(
                "rule", row.rule(),
                "title", book.card(row.rule()).title(),
                "undetermined", row.undetermined(),
                "inOrder", row.inOrder(),
                "notApplicable", row.notApplicable());
    }

    private static Map<String, Object> counts(int[] counts) {
        Map<String, Object> fields = new LinkedHashMap<>();
        for (Urgency urgency : Urgency.values()) {
            fields.put(urgency.word(), counts[urgency.ordinal()]);
        }
        return fields;
    }

    private static Map<String, Object> fields(Object... pairs) {
        Map<String, Object> fields = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            fields.put((String) pairs[i], pairs[i + 1]);
        }
        return fields;
    }
}
