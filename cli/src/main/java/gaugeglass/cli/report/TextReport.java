package gaugeglass.cli.report;

import gaugeglass.cli.paper.Paper;
import gaugeglass.cli.paper.Screen;
import gaugeglass.cli.paper.Style;
import gaugeglass.engine.Assessment;
import gaugeglass.engine.Assessment.Cause;
import gaugeglass.engine.Assessment.Finding;
import gaugeglass.engine.Assessment.Gate;
import gaugeglass.engine.Assessment.LimitUsed;
import gaugeglass.engine.Assessment.Permit;
import gaugeglass.engine.Assessment.Ref;
import gaugeglass.engine.Assessment.Said;
import gaugeglass.engine.Assessment.Standing;
import gaugeglass.engine.Assessment.Wanting;
import gaugeglass.engine.Assessment.Word;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.book.Basis;
import gaugeglass.engine.book.Book;
import gaugeglass.engine.book.Caution;
import gaugeglass.engine.book.LaidOn;
import gaugeglass.engine.book.Remedy;
import gaugeglass.engine.book.Urgency;
import gaugeglass.engine.book.Waiver;
import gaugeglass.engine.facts.Missing;
import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.Inspection.Decided;
import gaugeglass.engine.observation.Inspection.Visited;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.text.Words;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Assessments as a person reads them on a screen: may it be fired, what is wrong, what is not known. */
public final class TextReport {
    /** More open checks than this tell nothing that the missing answers below do not tell better. */
    private static final int MOST_OPEN = 3;

    /** As many questions as somebody will go back to the boiler for. */
    private static final int MOST_WANTING = 6;

    private static final int LABEL = 9;

    private static final int PERMIT = 33;

    /** So much of a digest tells one pack from another by eye; the whole is in the JSON and the report for the file. */
    private static final int SHORT_HASH = 12;

    private static final Gate NOTHING_TOLD = new Gate(Permit.NOTHING_FOUND_AGAINST, List.of(), List.of());

    /** Who comes before everything that this program says. */
    public static final String DEFERS =
            "The local code, the authority having jurisdiction, the boiler maker's instructions and the judgement of a"
                    + " licensed person come before every line of this list.";

    private final Book book;
    private final Naming naming;
    private final String unitLabel;
    private final Screen screen;
    private final List<LaidOn> packs;

    public TextReport(Rulebook rulebook, Screen screen) {
        this.book = rulebook.book();
        this.naming = new Naming(rulebook.vocabulary(), book);
        this.unitLabel = rulebook.vocabulary().unit().label();
        this.screen = screen;
        this.packs = rulebook.packs();
    }

    /**
     * The report on one unit.
     *
     * @param inspection the visit it belongs to
     * @param visited the unit
     * @param assessment what it came to
     */
    public String of(Inspection inspection, Visited visited, Assessment assessment) {
        return new Page(inspection, visited, assessment).write();
    }

    /** The text of one report in the making. */
    private final class Page {
        private final Paper paper = new Paper(screen);
        private final Inspection inspection;
        private final Visited visited;
        private final Assessment assessment;
        private final Set<String> cautioned = new HashSet<>();
        private final Map<String, Integer> advised = new HashMap<>();
        private int number;

        private Page(Inspection inspection, Visited visited, Assessment assessment) {
            this.inspection = inspection;
            this.visited = visited;
            this.assessment = assessment;
        }

        private String write() {
            head();
            gates();
            for (Urgency urgency : Urgency.values()) {
                findings(urgency);
            }
            putRight();
            waived();
            causes();
            notJudged();
            notes();
            closing();
            return paper.toString();
        }

        private void head() {
            String site = inspection.siteName().isEmpty()
                    ? inspection.siteId()
                    : inspection.siteName() + " (" + inspection.siteId() + ")";
            String unit = assessment.unit().isEmpty()
                    ? "no " + unitLabel + " is described in this file"
                    : unitLabel + " " + assessment.unit() + (visited.name().isEmpty() ? "" : ", " + visited.name());
            paper.line(site + " - " + unit, Style.STRONG);
            String by = inspection.by().isEmpty() ? "" : " by " + inspection.by();
            paper.line("Visit of " + inspection.date() + by + day(), Style.PLAIN);
            if (!packs.isEmpty()) {
                paper.hanging("Judged by: ", judgedBy(), Style.PLAIN);
            }
            if (!inspection.note().isEmpty()) {
                paper.hanging("Note: ", inspection.note(), Style.PLAIN);
            }
        }

        private String judgedBy() {
            StringBuilder words = new StringBuilder(book.name()).append(' ').append(book.version());
            for (LaidOn pack : packs) {
                words.append(", then ").append(pack.told()).append(", digest ").append(pack.hash(), 0, SHORT_HASH);
            }
            return words.toString();
        }

        private String day() {
            LocalDate judged = assessment.date();
            return judged.equals(inspection.date()) ? "" : ", judged for " + judged;
        }

        // ---- the two gates

        private void gates() {
            paper.gap();
            permit("Attended test firing", assessment.testFiring());
            permit("Release to automatic operation", assessment.release());
            paper.gap();
            reasons("Test firing", assessment.testFiring(), NOTHING_TOLD);
            reasons("Release", assessment.release(), assessment.testFiring());
            paper.line(DEFERS, Style.PLAIN);
        }

        private void permit(String what, Gate gate) {
            String word =
                    switch (gate.permit()) {
                        case FORBIDDEN -> "FORBIDDEN";
                        case NOT_KNOWN -> "NOT KNOWN";
                        case NOTHING_FOUND_AGAINST -> "nothing found against it";
                    };
            Style style =
                    switch (gate.permit()) {
                        case FORBIDDEN -> Style.ALARM;
                        case NOT_KNOWN -> Style.WARNING;
                        case NOTHING_FOUND_AGAINST -> Style.STRONG;
                    };
            String lead = what + ":";
            paper.hanging(lead + " ".repeat(PERMIT - lead.length()), word, style);
        }

        /** Why a permit is not given; what the gate before it told already is not told again. */
        private void reasons(String what, Gate gate, Gate before) {
            against(what, gate.against(), before.against());
            open(what, gate, before.open());
            paper.gap();
        }

        private void against(String what, List<Ref> against, List<Ref> told) {
            if (against.isEmpty()) {
                return;
            }
            List<Ref> own = new ArrayList<>(against);
            boolean same = !told.isEmpty() && own.containsAll(told);
            if (same) {
                own.removeAll(told);
            }
            if (own.isEmpty()) {
                paper.line(what + " is forbidden by the same.", Style.PLAIN);
                return;
            }
            paper.line(what + " is forbidden by" + (same ? " the same, and by:" : ":"), Style.PLAIN);
            bullets(own, Integer.MAX_VALUE);
        }

        private void open(String what, Gate gate, List<Ref> told) {
            int open = gate.open().size();
            if (open == 0) {
                return;
            }
            boolean same = !told.isEmpty() && gate.open().containsAll(told);
            List<Ref> own = new ArrayList<>(gate.open());
            if (same) {
                own.removeAll(told);
            }
            String checks = (open == 1 ? "1 check" : open + " checks") + " that could forbid it "
                    + (open == 1 ? "lacks" : "lack") + " an answer";
            String lead = gate.against().isEmpty() ? what + " is not known: " + checks : "Besides, " + checks;
            if (own.isEmpty()) {
                paper.line(lead + ", the same.", Style.PLAIN);
                return;
            }
            paper.line(lead + ". Not ruled out" + (same ? ", besides the same:" : ":"), Style.PLAIN);
            bullets(own, MOST_OPEN);
        }

        /** Checks, each once with all that it is about; one more than the most is still shown. */
        private void bullets(List<Ref> refs, int most) {
            Map<String, List<String>> byRule = Alike.byRule(refs);
            int shown = byRule.size() - 1 <= most ? byRule.size() : most;
            int left = refs.size();
            for (Map.Entry<String, List<String>> one : byRule.entrySet()) {
                if (shown-- > 0) {
                    paper.hanging("  - ", naming.title(one.getKey(), one.getValue()), Style.PLAIN);
                    left -= one.getValue().size();
                }
            }
            if (left > 0) {
                paper.hanging("  - ", "and " + left + " more", Style.PLAIN);
            }
        }

        // ---- findings

        private void findings(Urgency urgency) {
            List<Finding> standing = new ArrayList<>();
            for (Finding finding : assessment.findings()) {
                if (finding.urgency() == urgency && finding.isStanding()) {
                    standing.add(finding);
                }
            }
            if (standing.isEmpty()) {
                return;
            }
            heading(Urgencies.heading(urgency), Urgencies.style(urgency));
            for (Alike alike : Alike.of(standing)) {
                Finding finding = alike.first();
                title(alike);
                if (finding.state() == Standing.ARISEN) {
                    part("New", "It was not there at arrival; it came up during the visit.");
                }
                seen("Seen", alike);
                limits(alike);
                advice(finding);
                alike.each(this::dispute).forEach(said -> part("Disputed", said));
                alike.each(this::decisions).forEach(said -> part("Owner", said));
                part(
                        "Rule",
                        finding.rule() + ", " + basis(finding.basis())
                                + book.replacement(finding.rule())
                                        .map(words -> ", " + words)
                                        .orElse(""));
            }
        }

        private void seen(String label, Alike alike) {
            alike.seenInShort("And so on: what was read at the others stands in the report for the file.")
                    .forEach(one -> part(label, one));
        }

        private void limits(Alike alike) {
            Set<String> said = new LinkedHashSet<>();
            for (Finding finding : alike.all()) {
                finding.limits().forEach(limit -> said.add(limit(limit)));
            }
            said.forEach(limit -> part("Limit", limit));
        }

        /** Why and what to do; said once where one check found the same in several places. */
        private void advice(Finding finding) {
            Integer before = advised.putIfAbsent(finding.rule(), number);
            if (before != null) {
                part("Do", "As said at " + before + ", with the same cautions.");
                return;
            }
            part("Why", finding.why());
            part("Do", finding.action());
            Remedy remedy = book.remedies().get(finding.remedy());
            if (remedy != null) {
                part("Work", remedy.work());
            }
            for (String id : finding.cautions()) {
                caution(id);
            }
        }

        private void heading(String words, Style style) {
            paper.gap();
            paper.line(words.toUpperCase(Locale.ROOT), style);
        }

        private void title(Alike alike) {
            paper.gap();
            number++;
            String lead = (number < 10 ? " " : "") + number + ". ";
            paper.hanging(lead, naming.title(alike.first().rule(), alike.subjects()), Style.STRONG);
            if (!alike.which().isEmpty()) {
                part("Which", alike.which());
            }
        }

        private void part(String label, String words) {
            String lead = "    " + label + " ".repeat(Math.max(1, LABEL - label.length()));
            paper.hanging(lead, words, Style.PLAIN);
        }

        private String limit(LimitUsed limit) {
            return limit.value() + ": " + limit.meaning() + ". Set by " + limit.setBy()
                    + (limit.layer().isEmpty() || limit.layer().equals(book.name()) ? "" : " (" + limit.layer() + ")")
                    + ".";
        }

        private void caution(String id) {
            Caution caution = book.cautions().get(id);
            if (caution == null) {
                return;
            }
            if (cautioned.add(id)) {
                part("CAUTION", ended(caution.title()) + " " + caution.text());
            } else {
                part("CAUTION", ended(caution.title()) + " In full above.");
            }
        }

        private String dispute(Finding finding) {
            return finding.dispute().isEmpty() ? "" : ended(finding.dispute()) + " It counts all the same.";
        }

        private String decisions(Finding finding) {
            List<String> said = new ArrayList<>();
            for (Decided decided : inspection.decisions()) {
                if (decided.isAbout(finding.rule(), assessment.unit(), finding.subject())) {
                    said.add(Words.of(decided.decision()) + " by " + decided.by() + " on " + decided.on()
                            + (decided.note().isEmpty() ? "." : ": " + ended(decided.note())));
                }
            }
            return String.join(" ", said);
        }

        private void putRight() {
            List<Finding> right = new ArrayList<>();
            for (Finding finding : assessment.findings()) {
                if (!finding.isStanding()) {
                    right.add(finding);
                }
            }
            if (!right.isEmpty()) {
                heading("Put right on this visit", Style.STRONG);
            }
            for (Alike alike : Alike.of(right)) {
                title(alike);
                part("Was", Urgencies.heading(alike.first().urgency()));
                seen("Found", alike);
                alike.eachOf(this::retests).forEach(said -> part("Retest", said));
                alike.each(this::dispute).forEach(said -> part("Disputed", said));
                part("Rule", alike.first().rule());
            }
        }

        private List<String> retests(Finding finding) {
            List<String> said = new ArrayList<>();
            finding.retest().forEach(fact -> said.add(naming.told(fact)));
            return said;
        }

        private void waived() {
            if (assessment.waived().isEmpty() && assessment.waiversLeft().isEmpty()) {
                return;
            }
            heading("Waived", Style.WARNING);
            paper.line("Found all the same. Somebody answers for leaving each as it is.", Style.PLAIN);
            Alike.byWaiver(assessment.waived()).forEach((waiver, findings) -> {
                for (Alike alike : findings) {
                    title(alike);
                    seen("Seen", alike);
                    part("Would be", Urgencies.heading(alike.first().urgency()));
                    part("Waived", waiver(waiver));
                    part("Rule", alike.first().rule());
                }
            });
            for (Assessment.WaiverLeft one : assessment.waiversLeft()) {
                paper.gap();
                paper.hanging(
                        "  - ",
                        "The waiver of "
                                + naming.title(
                                        one.waiver().check(), one.waiver().subject()) + " counts for nothing: "
                                + one.reason() + ". " + waiver(one.waiver()),
                        Style.PLAIN);
            }
        }

        // ---- causes

        private void causes() {
            if (assessment.diagnoses().isEmpty()) {
                return;
            }
            heading("Likely causes", Style.STRONG);
            paper.line("Inferred from what was found; none of it was seen.", Style.PLAIN);
            for (Cause cause : assessment.diagnoses()) {
                paper.gap();
                String about = diagnosed(cause);
                paper.hanging("  * ", cause.cause() + (about.isEmpty() ? "" : " (" + about + ")"), Style.STRONG);
                if (isPutRight(cause)) {
                    part("Now", "What points to it was put right on this visit.");
                }
                for (Said said : cause.points()) {
                    part("For", said(cause, said));
                }
                for (Said said : cause.against()) {
                    part("Against", said(cause, said));
                }
                if (!cause.settle().isEmpty()) {
                    part("Settle", cause.settle());
                }
            }
        }

        /** Causes are sought in what was found at arrival; by now all that points to one may be gone. */
        private boolean isPutRight(Cause cause) {
            for (Said said : cause.points()) {
                boolean gone = false;
                for (Finding finding : assessment.findings()) {
                    gone |= finding.rule().equals(said.rule())
                            && finding.subject().equals(said.subject())
                            && !finding.isStanding();
                }
                if (!gone) {
                    return false;
                }
            }
            return !cause.points().isEmpty();
        }

        private String diagnosed(Cause cause) {
            return book.diagnoses().stream()
                    .filter(diagnosis -> diagnosis.id().equals(cause.id()))
                    .findFirst()
                    .map(diagnosis -> naming.subject(diagnosis.about(), cause.subject()))
                    .orElse(cause.subject());
        }

        private String said(Cause cause, Said said) {
            boolean other = !said.subject().isEmpty() && !said.subject().equals(cause.subject());
            return said.text()
                    + (other ? " (" + naming.subject(book.card(said.rule()).about(), said.subject()) + ")" : "");
        }

        // ---- what is not known

        private void notJudged() {
            long open = assessment.count(Word.UNDETERMINED);
            List<Wanting> wanting = assessment.wanting();
            if (open == 0 && wanting.isEmpty()) {
                return;
            }
            heading("Not judged", Style.WARNING);
            long checks = assessment.outcomes().size();
            paper.line(
                    wanting.size() == 1
                            ? "One answer is missing."
                            : wanting.size() + " answers are missing, and "
                                    + (open == 1 ? "1 check" : open + " checks") + " of " + checks
                                    + " could not be made for want of them."
                                    + " These would settle most"
                                    + (wanting.get(0).holdsGate() ? ", those that hold a permit first:" : ":"),
                    Style.PLAIN);
            Map<String, List<Wanting>> byQuestion = naming.byQuestion(wanting);
            int shown = byQuestion.size() > MOST_WANTING + 1 ? MOST_WANTING : byQuestion.size();
            int left = wanting.size();
            for (List<Wanting> same : byQuestion.values()) {
                if (shown-- > 0) {
                    wanted(same);
                    left -= same.size();
                }
            }
            if (left > 0) {
                paper.gap();
                paper.hanging("  ? ", "and " + left + " more.", Style.PLAIN);
            }
        }

        /** One question, with all that it is asked of. */
        private void wanted(List<Wanting> same) {
            Missing first = same.get(0).answer();
            paper.gap();
            String asked = naming.asked(same);
            paper.hanging("  ? ", naming.question(first) + (asked.isEmpty() ? "" : " (" + asked + ")"), Style.PLAIN);
            Set<String> reasons = new LinkedHashSet<>();
            Set<Ref> settles = new LinkedHashSet<>();
            boolean holdsGate = false;
            for (Wanting one : same) {
                reasons.add(one.answer().reason());
                settles.addAll(one.settles());
                holdsGate |= one.holdsGate();
            }
            reasons.remove("");
            paper.indented(
                    4,
                    (reasons.isEmpty() ? "" : "Not known because: " + ended(String.join("; ", reasons)) + " ")
                            + (settles.size() == 1 ? "1 check waits" : settles.size() + " checks wait")
                            + " for " + (same.size() == 1 ? "it" : "them") + (holdsGate ? ", and a permit" : "")
                            + ". In the file: " + naming.place(first)
                            + (same.size() == 1 ? "" : ", and likewise for the others"));
        }

        // ---- what else was written down

        private void notes() {
            boolean first = true;
            for (Answer answer : visited.observations().answers()) {
                boolean photos = !answer.photos().isEmpty();
                if (answer.note().isEmpty() && !photos) {
                    continue;
                }
                if (first) {
                    heading("Written down beside the answers", Style.STRONG);
                    first = false;
                }
                String left = answer.state() == State.AS_LEFT ? " (as left)" : "";
                paper.hanging(
                        "  - ",
                        naming.place(answer) + left + ": " + answer.note()
                                + (photos ? " [pictures: " + String.join(", ", answer.photos()) + "]" : ""),
                        Style.PLAIN);
            }
            if (!inspection.remarks().isEmpty()) {
                heading("How answers were read", Style.STRONG);
                inspection.remarks().forEach(remark -> paper.hanging("  - ", remark.toString(), Style.PLAIN));
            }
        }

        private void closing() {
            paper.gap();
            Tally tally = Tally.of(assessment);
            List<String> parts = new ArrayList<>();
            for (Urgency urgency : Urgency.values()) {
                int count = tally.standing(urgency);
                if (count > 0) {
                    parts.add(count + " " + Urgencies.counted(urgency));
                }
            }
            String found = parts.isEmpty() ? "Found: nothing" : "Found: " + String.join(", ", parts);
            String right = tally.putRight() == 0 ? "" : "; " + tally.putRight() + " put right";
            paper.line(
                    found + right + ". Checks: " + assessment.count(Word.IN_ORDER) + " in order, "
                            + assessment.count(Word.UNDETERMINED) + " not judged, "
                            + assessment.count(Word.NOT_APPLICABLE) + " do not apply.",
                    Style.STRONG);
        }
    }

    /** A sentence with its full stop. */
    public static String ended(String sentence) {
        String text = sentence.strip();
        return text.isEmpty() || ".!?".indexOf(text.charAt(text.length() - 1)) >= 0 ? text : text + ".";
    }

    /** Who waived, until when, and why. */
    public static String waiver(Waiver waiver) {
        return "By " + waiver.by() + ", from " + waiver.from() + " until " + waiver.until() + ": " + ended(waiver.why())
                + " (" + waiver.pack() + ")";
    }

    /** What something stands on, behind what it is. */
    public static String basis(Basis basis) {
        return basis == Basis.STANDARD ? "from " + basis.told() : basis.told();
    }
}
