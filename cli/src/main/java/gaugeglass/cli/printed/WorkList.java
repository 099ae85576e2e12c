package gaugeglass.cli.printed;

import gaugeglass.cli.report.Naming;
import gaugeglass.engine.Assessment;
import gaugeglass.engine.Assessment.Finding;
import gaugeglass.engine.Assessment.Ref;
import gaugeglass.engine.book.Book;
import gaugeglass.engine.book.Remedy;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.Inspection.Decided;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Findings gathered into lines of work: those with one remedy are one line. */
final class WorkList {
    private final Book book;
    private final Naming naming;

    WorkList(Book book, Naming naming) {
        this.book = book;
        this.naming = naming;
    }

    /** The work on one unit, most urgent first; what was put right on the visit is no work any more. */
    List<WorkLine> of(Inspection inspection, Assessment assessment) {
        Map<String, List<Finding>> byWork = new LinkedHashMap<>();
        for (Finding finding : assessment.findings()) {
            if (finding.isStanding()) {
                // Without a remedy the advice of the practice is the work, and only its own findings share it.
                String key = finding.remedy().isEmpty() ? "rule " + finding.rule() : "remedy " + finding.remedy();
                byWork.computeIfAbsent(key, k -> new ArrayList<>()).add(finding);
            }
        }
        List<WorkLine> lines = new ArrayList<>();
        byWork.values().forEach(findings -> lines.add(line(lines.size() + 1, inspection, assessment, findings)));
        return lines;
    }

    private WorkLine line(int number, Inspection inspection, Assessment assessment, List<Finding> findings) {
        // The assessment names the most urgent first.
        Finding first = findings.get(0);
        Remedy remedy = book.remedies().get(first.remedy());
        Set<String> about = new LinkedHashSet<>();
        Map<String, Set<String>> byKind = new LinkedHashMap<>();
        List<Ref> refs = new ArrayList<>();
        List<String> titles = new ArrayList<>();
        List<WorkLine.Decision> decisions = new ArrayList<>();
        for (Finding finding : findings) {
            String subject = naming.subject(book.card(finding.rule()).about(), finding.subject());
            if (!subject.isEmpty()) {
                about.add(subject);
                byKind.computeIfAbsent(book.card(finding.rule()).about(), k -> new LinkedHashSet<>())
                        .add(finding.subject());
            }
            refs.add(new Ref(finding.rule(), finding.subject()));
            titles.add(naming.title(finding.rule(), finding.subject()));
            decision(inspection, assessment.unit(), finding)
                    .ifPresent(decided -> decisions.add(new WorkLine.Decision(
                            subject.isEmpty() ? finding.title() : finding.title() + ", " + subject, decided)));
        }
        Parts parts = new Parts(book, naming, inspection, assessment.unit());
        return new WorkLine(
                number,
                assessment.unit(),
                first.urgency(),
                remedy == null ? "" : remedy.id(),
                remedy == null ? first.action() : remedy.work(),
                List.copyOf(about),
                byKind.entrySet().stream()
                        .map(kind -> naming.subjects(kind.getKey(), List.copyOf(kind.getValue())))
                        .collect(Collectors.joining(", ")),
                refs,
                titles,
                remedy == null ? List.of() : parts.of(remedy, findings),
                remedy == null ? List.of() : parts.takeAlong(remedy),
                decisions);
    }

    /** What the owner decided about a finding. */
    static Optional<Decided> decision(Inspection inspection, String unit, Finding finding) {
        return inspection.decisions().stream()
                .filter(decided -> decided.isAbout(finding.rule(), unit, finding.subject()))
                .findFirst();
    }
}
