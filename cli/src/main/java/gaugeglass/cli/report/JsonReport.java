package gaugeglass.cli.report;

import gaugeglass.engine.Assessment;
import gaugeglass.engine.Assessment.Cause;
import gaugeglass.engine.Assessment.Finding;
import gaugeglass.engine.Assessment.Gate;
import gaugeglass.engine.Assessment.LimitUsed;
import gaugeglass.engine.Assessment.Outcome;
import gaugeglass.engine.Assessment.Ref;
import gaugeglass.engine.Assessment.Said;
import gaugeglass.engine.Assessment.Wanting;
import gaugeglass.engine.Assessment.Word;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.book.Book;
import gaugeglass.engine.book.Caution;
import gaugeglass.engine.book.LaidOn;
import gaugeglass.engine.book.Urgency;
import gaugeglass.engine.book.Waiver;
import gaugeglass.engine.facts.Missing;
import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.Inspection.Visited;
import gaugeglass.engine.observation.Subjects;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Assessments as programs read them; {@code docs/schema/assessment.schema.json} describes the form.
 *
 * <p>Every key is always there, an empty text or list standing for nothing, so that a reader needs no special cases.
 */
public final class JsonReport {
    /** The version of the form. */
    public static final int FORMAT = 1;

    private final Book book;
    private final Vocabulary vocabulary;
    private final Naming naming;
    private final List<LaidOn> packs;

    public JsonReport(Rulebook rulebook) {
        this.book = rulebook.book();
        this.packs = rulebook.packs();
        this.vocabulary = rulebook.vocabulary();
        this.naming = new Naming(vocabulary, book);
    }

    /** Which rules judged: the keys {@code rulebook} and {@code packs} of every form. */
    public static Map<String, Object> judgedBy(Book book, List<LaidOn> packs) {
        List<Object> laidOn = new ArrayList<>();
        for (LaidOn pack : packs) {
            laidOn.add(laidOn(pack));
        }
        return fields(
                "rulebook",
                fields("name", book.name(), "version", book.version(), "hash", book.hash()),
                "packs",
                laidOn);
    }

    /** One pack. */
    public static Map<String, Object> laidOn(LaidOn pack) {
        return fields(
                "name", pack.name(),
                "title", pack.title(),
                "version", pack.version(),
                "level", pack.level(),
                "hash", pack.hash(),
                "replaces", pack.replaces());
    }

    /** One visit; {@code boilers} is still empty and is given to {@link #add}. */
    public Map<String, Object> visit(String file, Inspection inspection, LocalDate date) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("format", FORMAT);
        all.putAll(judgedBy(book, packs));
        all.put("file", file);
        all.put("site", inspection.siteId());
        all.put("siteName", inspection.siteName());
        all.put("date", date.toString());
        all.put("visited", inspection.date().toString());
        all.put("by", inspection.by());
        all.put("note", inspection.note());
        List<Object> remarks = new ArrayList<>();
        inspection
                .remarks()
                .forEach(remark ->
                        remarks.add(fields("line", remark.line(), "where", remark.where(), "what", remark.what())));
        all.put("remarks", remarks);
        List<Object> decided = new ArrayList<>();
        for (Inspection.Decided one : inspection.decisions()) {
            decided.add(fields(
                    "rule", one.rule(),
                    "boiler", one.unit(),
                    "subject", one.subject(),
                    "decision", Words.of(one.decision()),
                    "by", one.by(),
                    "on", one.on().toString(),
                    "note", one.note()));
        }
        all.put("decisions", decided);
        all.put("boilers", new ArrayList<>());
        all.put("cautions", new ArrayList<>());
        return all;
    }

    /** Adds a unit to a visit. */
    @SuppressWarnings("unchecked")
    public void add(Map<String, Object> visit, Visited visited, Assessment assessment) {
        ((List<Object>) visit.get("boilers")).add(unit(visited, assessment));
        List<Object> cautions = (List<Object>) visit.get("cautions");
        Set<Object> known = new LinkedHashSet<>(cautions);
        for (Finding finding : assessment.findings()) {
            for (String id : finding.cautions()) {
                Caution caution = book.cautions().get(id);
                if (caution != null) {
                    known.add(fields("id", id, "title", caution.title(), "text", caution.text()));
                }
            }
        }
        cautions.clear();
        cautions.addAll(known);
    }

    /** What stands in the place of a visit that could not be used. */
    public static Map<String, Object> unusable(String file, List<Mistake> mistakes) {
        List<Object> all = new ArrayList<>();
        for (Mistake mistake : mistakes) {
            all.add(fields(
                    "line", mistake.line(),
                    "column", mistake.column(),
                    "where", mistake.where(),
                    "what", mistake.what(),
                    "expected", mistake.expected(),
                    "nearest", mistake.nearest()));
        }
        return fields("format", FORMAT, "file", file, "error", "this inspection could not be used", "mistakes", all);
    }

    /** What stands in the place of a visit on which the program failed. */
    public static Map<String, Object> fault(String file, String what) {
        return fields("format", FORMAT, "file", file, "error", what, "mistakes", List.of());
    }

    private Map<String, Object> unit(Visited visited, Assessment assessment) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("boiler", assessment.unit());
        all.put("boilerName", visited.name());
        gate(all, "testFiring", assessment.testFiring());
        gate(all, "release", assessment.release());
        List<Object> findings = new ArrayList<>();
        assessment.findings().forEach(finding -> findings.add(finding(finding)));
        all.put("findings", findings);
        List<Object> causes = new ArrayList<>();
        assessment.diagnoses().forEach(cause -> causes.add(cause(cause)));
        all.put("diagnoses", causes);
        List<Object> wanting = new ArrayList<>();
        assessment.wanting().forEach(one -> wanting.add(wanting(one)));
        all.put("wanting", wanting);
        List<Object> notes = new ArrayList<>();
        for (Answer answer : visited.observations().answers()) {
            if (!answer.note().isEmpty() || !answer.photos().isEmpty()) {
                notes.add(fields(
                        "item", answer.item().id(),
                        "subject", answer.subject(),
                        "state", Words.of(answer.state()),
                        "note", answer.note(),
                        "photos", answer.photos()));
            }
        }
        all.put("notes", notes);
        List<Object> waived = new ArrayList<>();
        for (Assessment.Waived one : assessment.waived()) {
            waived.add(fields("finding", finding(one.finding()), "waiver", waiver(one.waiver())));
        }
        all.put("waived", waived);
        List<Object> left = new ArrayList<>();
        for (Assessment.WaiverLeft one : assessment.waiversLeft()) {
            left.add(fields("waiver", waiver(one.waiver()), "reason", one.reason()));
        }
        all.put("waiversLeft", left);
        List<Object> outcomes = new ArrayList<>();
        assessment.outcomes().forEach(outcome -> outcomes.add(outcome(outcome)));
        all.put("outcomes", outcomes);
        all.put("counts", counts(assessment));
        return all;
    }

    private static Map<String, Object> waiver(Waiver waiver) {
        return fields(
                "check", waiver.check(),
                "subject", waiver.subject(),
                "by", waiver.by(),
                "why", waiver.why(),
                "from", waiver.from().toString(),
                "until", waiver.until().toString(),
                "pack", waiver.pack());
    }

    private static void gate(Map<String, Object> all, String name, Gate gate) {
        all.put(name, Words.of(gate.permit()));
        all.put(name + "Against", refs(gate.against()));
        all.put(name + "Open", refs(gate.open()));
    }

    private static List<Object> refs(List<Ref> refs) {
        List<Object> all = new ArrayList<>();
        refs.forEach(ref -> all.add(fields("rule", ref.rule(), "subject", ref.subject())));
        return all;
    }

    private Map<String, Object> finding(Finding finding) {
        List<Object> limits = new ArrayList<>();
        for (LimitUsed limit : finding.limits()) {
            limits.add(fields(
                    "id", limit.id(),
                    "value", limit.value(),
                    "meaning", limit.meaning(),
                    "setBy", limit.setBy(),
                    "layer", limit.layer()));
        }
        return fields(
                "rule", finding.rule(),
                "subject", finding.subject(),
                "urgency", finding.urgency().word(),
                "band", finding.band(),
                "state", finding.state().word(),
                "title", finding.title(),
                "seen", finding.seen(),
                "limits", limits,
                "why", finding.why(),
                "do", finding.action(),
                "remedy", finding.remedy(),
                "cautions", finding.cautions(),
                "consequence", finding.consequence().word(),
                "basis", finding.basis().word(),
                "evidence", facts(finding.evidence()),
                "retest", facts(finding.retest()),
                "disputed", finding.dispute());
    }

    private List<Object> facts(List<Object> facts) {
        List<Object> all = new ArrayList<>();
        for (Object fact : facts) {
            if (fact instanceof Record record) {
                vocabulary.item(record.getClass()).ifPresent(item -> all.add(fact(item, record)));
            }
        }
        return all;
    }

    private Map<String, Object> fact(ItemType item, Record record) {
        return fields(
                "item", item.id(),
                "subject", Subjects.of(item.keysOf(record)),
                "answer", naming.values(item, record));
    }

    private static Map<String, Object> cause(Cause cause) {
        return fields(
                "id", cause.id(),
                "subject", cause.subject(),
                "cause", cause.cause(),
                "for", said(cause.points()),
                "against", said(cause.against()),
                "settledBy", cause.settledBy(),
                "settle", cause.settle());
    }

    private static List<Object> said(List<Said> all) {
        List<Object> said = new ArrayList<>();
        all.forEach(one -> said.add(fields("rule", one.rule(), "subject", one.subject(), "text", one.text())));
        return said;
    }

    private Map<String, Object> wanting(Wanting wanting) {
        Missing missing = wanting.answer();
        return fields(
                "item", missing.item(),
                "subject", missing.subject(),
                "reason", missing.reason(),
                "ask", naming.question(missing),
                "settles", wanting.settles().size(),
                "holdsGate", wanting.holdsGate());
    }

    private static Map<String, Object> outcome(Outcome outcome) {
        List<Object> missing = new ArrayList<>();
        for (Missing one : outcome.missing()) {
            missing.add(fields("item", one.item(), "subject", one.subject(), "reason", one.reason()));
        }
        return fields(
                "rule", outcome.rule(),
                "subject", outcome.subject(),
                "outcome", outcome.outcome().word(),
                "mayBe", outcome.mayBe().map(Urgency::word).orElse(""),
                "missing", missing);
    }

    private static Map<String, Object> counts(Assessment assessment) {
        Tally tally = Tally.of(assessment);
        Map<String, Object> counts = new LinkedHashMap<>();
        for (Urgency urgency : Urgency.values()) {
            counts.put(urgency.word(), tally.standing(urgency));
        }
        counts.put("putRight", tally.putRight());
        counts.put("inOrder", assessment.count(Word.IN_ORDER));
        counts.put("undetermined", assessment.count(Word.UNDETERMINED));
        counts.put("notApplicable", assessment.count(Word.NOT_APPLICABLE));
        return counts;
    }

    /** Keys with their values, in the order given. */
    static Map<String, Object> fields(Object... pairs) {
        Map<String, Object> fields = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            fields.put((String) pairs[i], pairs[i + 1]);
        }
        return fields;
    }
}
