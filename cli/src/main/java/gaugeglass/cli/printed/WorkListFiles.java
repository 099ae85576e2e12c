package gaugeglass.cli.printed;

import gaugeglass.cli.table.Csv;
import gaugeglass.cli.visit.Judged;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.Inspection.Decided;
import gaugeglass.engine.reading.NodeWriter;
import gaugeglass.engine.text.Words;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Lists of work as other programs take them: a table for a spreadsheet, and JSON. */
final class WorkListFiles {
    /** The version of both forms. */
    static final int FORMAT = 1;

    private WorkListFiles() {}

    /** One row for each line of work, below a row of headings. */
    static String csv(Judged.Visit visit, List<List<WorkLine>> byUnit) {
        StringWriter out = new StringWriter();
        List<String> headings = List.of(
                "site",
                "visited",
                "boiler",
                "line",
                "urgency",
                "work",
                "about",
                "findings",
                "checks",
                "parts",
                "take along",
                "decision",
                "decided by",
                "decided on",
                "note");
        try (Csv csv = Csv.to(out, headings)) {
            byUnit.forEach(lines -> lines.forEach(line -> csv.row(cells(visit.inspection(), line))));
        }
        return out.toString();
    }

    private static List<String> cells(Inspection inspection, WorkLine line) {
        List<String> checks = new ArrayList<>();
        line.findings()
                .forEach(ref -> checks.add(ref.subject().isEmpty() ? ref.rule() : ref.rule() + ":" + ref.subject()));
        List<Decided> decided =
                line.decisions().stream().map(WorkLine.Decision::decided).toList();
        return List.of(
                inspection.siteName().isEmpty() ? inspection.siteId() : inspection.siteName(),
                inspection.date().toString(),
                line.unit(),
                String.valueOf(line.number()),
                line.soon(),
                line.work(),
                String.join("; ", line.about()),
                String.join("; ", line.titles()),
                String.join("; ", checks),
                String.join("; ", line.parts().stream().map(WorkLine.Part::told).toList()),
                String.join("; ", line.takeAlong()),
                joined(decided.stream().map(one -> Words.of(one.decision())).toList()),
                joined(decided.stream().map(Decided::by).toList()),
                joined(decided.stream().map(one -> one.on().toString()).toList()),
                joined(decided.stream().map(Decided::note).toList()));
    }

    private static String joined(List<String> texts) {
        return String.join(
                "; ", texts.stream().filter(text -> !text.isEmpty()).distinct().toList());
    }

    /**
     * Everything of the work, in the form that {@code docs/schema/work.schema.json} describes.
     *
     * @param judgedBy which rules judged, as keys
     */
    static String json(Judged.Visit visit, Map<String, Object> judgedBy, List<List<WorkLine>> byUnit) {
        Inspection inspection = visit.inspection();
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("format", FORMAT);
        all.putAll(judgedBy);
        all.put("site", inspection.siteId());
        all.put("siteName", inspection.siteName());
        all.put("visited", inspection.date().toString());
        all.put("date", visit.date().toString());
        List<Object> lines = new ArrayList<>();
        byUnit.forEach(unit -> unit.forEach(line -> lines.add(line(line))));
        all.put("work", lines);
        return NodeWriter.pretty(all) + "\n";
    }

    private static Map<String, Object> line(WorkLine line) {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("boiler", line.unit());
        fields.put("line", line.number());
        fields.put("urgency", line.urgency().word());
        fields.put("remedy", line.remedy());
        fields.put("work", line.work());
        fields.put("about", line.about());
        List<Object> findings = new ArrayList<>();
        for (int i = 0; i < line.findings().size(); i++) {
            Map<String, Object> finding = new LinkedHashMap<>();
            finding.put("rule", line.findings().get(i).rule());
            finding.put("subject", line.findings().get(i).subject());
            finding.put("title", line.titles().get(i));
            findings.add(finding);
        }
        fields.put("findings", findings);
        List<Object> decisions = new ArrayList<>();
        for (WorkLine.Decision one : line.decisions()) {
            Decided decided = one.decided();
            Map<String, Object> decision = new LinkedHashMap<>();
            decision.put("rule", decided.rule());
            decision.put("subject", decided.subject());
            decision.put("decision", Words.of(decided.decision()));
            decision.put("by", decided.by());
            decision.put("on", decided.on().toString());
            decision.put("note", decided.note());
            decisions.add(decision);
        }
        List<Object> parts = new ArrayList<>();
        for (WorkLine.Part one : line.parts()) {
            Map<String, Object> part = new LinkedHashMap<>();
            part.put("number", one.number());
            part.put("what", one.what());
            part.put("subjects", one.subjects());
            parts.add(part);
        }
        fields.put("parts", parts);
        fields.put("takeAlong", line.takeAlong());
        fields.put("decisions", decisions);
        return fields;
    }
}
