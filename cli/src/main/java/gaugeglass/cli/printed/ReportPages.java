package gaugeglass.cli.printed;

import gaugeglass.cli.picture.MakeUpChart;
import gaugeglass.cli.picture.Picture;
import gaugeglass.cli.picture.PicturesSeen;
import gaugeglass.cli.printed.View.Appendix;
import gaugeglass.cli.printed.View.Degree;
import gaugeglass.cli.printed.View.Group;
import gaugeglass.cli.printed.View.Named;
import gaugeglass.cli.printed.View.NotSeen;
import gaugeglass.cli.printed.View.Observed;
import gaugeglass.cli.printed.View.Question;
import gaugeglass.cli.printed.View.Reckoned;
import gaugeglass.cli.report.Naming;
import gaugeglass.cli.report.TextReport;
import gaugeglass.cli.report.Urgencies;
import gaugeglass.cli.visit.Judged;
import gaugeglass.engine.Assessment;
import gaugeglass.engine.Assessment.Cause;
import gaugeglass.engine.Assessment.Finding;
import gaugeglass.engine.Assessment.Gate;
import gaugeglass.engine.Assessment.LimitUsed;
import gaugeglass.engine.Assessment.Ref;
import gaugeglass.engine.Assessment.Said;
import gaugeglass.engine.Assessment.Wanting;
import gaugeglass.engine.Assessment.Word;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.book.Book;
import gaugeglass.engine.book.Card;
import gaugeglass.engine.book.Caution;
import gaugeglass.engine.book.LaidOn;
import gaugeglass.engine.book.Limit;
import gaugeglass.engine.book.Source;
import gaugeglass.engine.book.Urgency;
import gaugeglass.engine.facts.Missing;
import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.Inspection.Decision;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.Roster;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;

/** Puts what a visit came to into words, for one reader. */
final class ReportPages {
    /** What holds a gate is named up to this many times; beyond it the list of what was not looked at tells more. */
    private static final int MOST_REASONS = 3;

    /** As many open questions as an owner reads. */
    private static final int MOST_QUESTIONS = 6;

    private final Rulebook rulebook;
    private final Book book;
    private final Vocabulary vocabulary;
    private final Naming naming;
    private final WorkList workList;
    private final boolean isForFile;

    ReportPages(Rulebook rulebook, Reader reader) {
        this.rulebook = rulebook;
        this.book = rulebook.book();
        this.vocabulary = rulebook.vocabulary();
        this.naming = new Naming(vocabulary, book);
        this.workList = new WorkList(book, naming);
        this.isForFile = reader == Reader.FILE;
    }

    /** Every unit's work, in the visit's order. */
    List<List<WorkLine>> work(Judged.Visit visit) {
        return visit.units().stream()
                .map(unit -> workList.of(visit.inspection(), unit.assessment()))
                .toList();
    }

    View of(Judged.Visit visit, Photos photos, PaperSize size, String css) {
        Inspection inspection = visit.inspection();
        List<View.Unit> units = new ArrayList<>();
        for (Judged.Unit unit : visit.units()) {
            units.add(new OfUnit(inspection, unit, "u" + (units.size() + 1), photos).whole());
        }
        String site = inspection.siteName().isEmpty() ? inspection.siteId() : inspection.siteName();
        String about = site + ", visit of " + inspection.date();
        return new View(
                "Start-up inspection: " + about,
                isForFile,
                size,
                css,
                site + (inspection.siteName().isEmpty() ? "" : " (" + inspection.siteId() + ")"),
                "Visit of " + inspection.date()
                        + (inspection.started().isEmpty() ? "" : ", begun at " + inspection.started())
                        + (inspection.by().isEmpty() ? "" : ", by " + inspection.by())
                        + (visit.date().equals(inspection.date()) ? "" : "; judged for " + visit.date())
                        + laidOn(),
                inspection.note(),
                about + (isForFile ? ", full report for the file" : ""),
                units,
                isForFile ? appendix(inspection) : new Appendix(List.of(), List.of(), List.of(), List.of()),
                TextReport.DEFERS);
    }

    // ---- for the whole visit

    private Appendix appendix(Inspection inspection) {
        List<View.Limit> limits = new ArrayList<>();
        for (Limit limit : book.allLimits()) {
            limits.add(new View.Limit(
                    limit.id(),
                    limit.written(),
                    limit.meaning(),
                    TextReport.basis(limit.basis())
                            + sources(limit.sources())
                            + (limit.layer().isEmpty() || limit.layer().equals(book.name())
                                    ? ""
                                    : "; set by " + limit.layer())));
        }
        List<View.Earlier> earlier = new ArrayList<>();
        for (Inspection.Earlier one : inspection.earlier()) {
            String what = book.cards().containsKey(one.rule())
                    ? naming.title(one.rule(), one.subject())
                    : one.rule() + (one.subject().isEmpty() ? "" : " (" + one.subject() + ")");
            earlier.add(new View.Earlier(
                    what,
                    one.unit(),
                    QUICK.getOrDefault(one.urgency(), one.urgency()),
                    one.foundOn().toString(),
                    one.decision() == Decision.NONE
                            ? "no decision recorded"
                            : Words.of(one.decision())
                                    + (one.decidedBy().isEmpty() ? "" : " by " + one.decidedBy())
                                    + (one.decidedOn().isEmpty() ? "" : " on " + one.decidedOn())));
        }
        return new Appendix(
                limits,
                earlier,
                inspection.remarks().stream().map(Object::toString).toList(),
                judgedBy());
    }

    private String laidOn() {
        StringBuilder words = new StringBuilder();
        for (LaidOn pack : rulebook.packs()) {
            words.append(words.length() == 0 ? "; judged by " + book.name() + " with " : " and ")
                    .append(pack.told());
        }
        return words.toString();
    }

    private List<Named> judgedBy() {
        List<Named> all = new ArrayList<>(List.of(
                new Named("Rulebook", book.name()),
                new Named("Version", book.version()),
                new Named("Digest of its files", book.hash())));
        for (LaidOn pack : rulebook.packs()) {
            all.add(new Named("Laid over it", pack.told()));
            all.add(new Named("Digest of its files", pack.hash()));
        }
        return all;
    }

    private static final Map<String, String> QUICK =
            java.util.Arrays.stream(Urgency.values()).collect(Collectors.toMap(Urgency::word, Urgencies::heading));

    private static String sources(List<Source> sources) {
        return sources.isEmpty()
                ? ""
                : ": "
                        + sources.stream()
                                .map(source -> source.name() + " ("
                                        + source.known().word().replace('-', ' ') + ")")
                                .collect(Collectors.joining("; "));
    }

    /** One unit's part in the making. */
    private final class OfUnit {
        private final Inspection inspection;
        private final Judged.Unit unit;
        private final Assessment assessment;
        private final Observations observations;
        private final String anchor;
        private final Photos photos;
        private final Set<String> cautioned = new HashSet<>();
        private int number;

        OfUnit(Inspection inspection, Judged.Unit unit, String anchor, Photos photos) {
            this.inspection = inspection;
            this.unit = unit;
            this.assessment = unit.assessment();
            this.observations = unit.visited().observations();
            this.anchor = anchor;
            this.photos = photos;
        }

        View.Unit whole() {
            String label = vocabulary.unit().label();
            String name = assessment.unit().isEmpty()
                    ? "No " + label + " is described in this inspection"
                    : Character.toUpperCase(label.charAt(0)) + label.substring(1) + " " + assessment.unit()
                            + (unit.visited().name().isEmpty()
                                    ? ""
                                    : ", " + unit.visited().name());
            List<Degree> degrees = new ArrayList<>();
            for (Urgency urgency : Urgency.values()) {
                degree(urgency).ifPresent(degrees::add);
            }
            return new View.Unit(
                    anchor,
                    name,
                    gates(),
                    degrees,
                    putRight(),
                    waived(),
                    causes(),
                    pictures(),
                    workList.of(inspection, assessment),
                    notSeen(),
                    embedded(),
                    isForFile ? observed() : List.of(),
                    isForFile ? reckoned() : List.of(),
                    isForFile ? outcomes() : List.of(),
                    closing());
        }

        /** What was read; an owner is shown the make-up where something was found by it. */
        private List<Picture> pictures() {
            List<Picture> pictures = new ArrayList<>(PicturesSeen.of(observations, anchor));
            if (isForFile || assessment.findings().stream().anyMatch(this::isFoundByMeter)) {
                MakeUpChart.of(anchor + "-make-up", observations, book).ifPresent(pictures::add);
            }
            return pictures;
        }

        private boolean isFoundByMeter(Finding finding) {
            return finding.evidence().stream()
                    .filter(this::isItem)
                    .map(fact -> vocabulary.item(fact.getClass()).orElseThrow())
                    .anyMatch(item -> item.isReckoned() && item.group().equals("water-use"));
        }

        // ---- the two gates

        private List<View.Gate> gates() {
            Gate firing = assessment.testFiring();
            Gate release = assessment.release();
            return List.of(
                    gate("Test firing, with somebody standing by all the time", firing, List.of()),
                    gate(
                            "Leaving it to run by itself",
                            release,
                            firing.permit() == release.permit() ? reasons(firing) : List.of()));
        }

        private static List<Ref> reasons(Gate gate) {
            return switch (gate.permit()) {
                case FORBIDDEN -> gate.against();
                case NOT_KNOWN -> gate.open();
                case NOTHING_FOUND_AGAINST -> List.of();
            };
        }

        /** One gate; what the gate before it told already is not told again. */
        private View.Gate gate(String question, Gate gate, List<Ref> told) {
            List<Ref> refs = new ArrayList<>(reasons(gate));
            boolean same = !told.isEmpty() && refs.containsAll(told);
            if (same) {
                refs.removeAll(told);
            }
            int open = gate.open().size();
            String lacking = (open == 1 ? "1 check" : open + " checks") + " that could forbid it "
                    + (open == 1 ? "lacks" : "lack") + " an answer";
            return switch (gate.permit()) {
                case FORBIDDEN ->
                    new View.Gate(
                            question,
                            "Forbidden",
                            false,
                            !same
                                    ? "It is forbidden by:"
                                    : refs.isEmpty()
                                            ? "It is forbidden by the same."
                                            : "It is forbidden by the same, and by:",
                            titles(refs),
                            open == 0 ? "" : "Besides, " + lacking + ".");
                case NOT_KNOWN -> {
                    // What forbids is named whole; what is only open is told by what was not looked at.
                    int shown = refs.size() <= MOST_REASONS ? refs.size() : MOST_REASONS - 1;
                    yield new View.Gate(
                            question,
                            "Not known",
                            false,
                            lacking
                                    + (!same
                                            ? ":"
                                            : refs.isEmpty()
                                                    ? ", the same as there."
                                                    : ", those there among them, and:"),
                            titles(refs.subList(0, shown)),
                            shown < refs.size() ? "and " + (refs.size() - shown) + " more." : "");
                }
                case NOTHING_FOUND_AGAINST ->
                    new View.Gate(
                            question,
                            "Nothing found against it",
                            true,
                            "",
                            List.of(),
                            "Among what was looked at. It is no promise about the rest.");
            };
        }

        private List<String> titles(List<Ref> refs) {
            return refs.stream()
                    .map(ref -> naming.title(ref.rule(), ref.subject()))
                    .toList();
        }

        // ---- findings

        private Optional<Degree> degree(Urgency urgency) {
            Map<String, List<Finding>> entries = new LinkedHashMap<>();
            for (Finding finding : assessment.findings()) {
                if (finding.urgency() == urgency && finding.isStanding()) {
                    // An owner reads once what is the same for several; the file keeps each by itself.
                    String key = finding.rule() + " " + finding.state() + (isForFile ? " " + finding.subject() : "");
                    entries.computeIfAbsent(key, k -> new ArrayList<>()).add(finding);
                }
            }
            List<View.Finding> findings =
                    entries.values().stream().map(this::finding).toList();
            return findings.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new Degree(Urgencies.heading(urgency), urgency == Urgency.STOP, findings));
        }

        /** One entry for findings of one practice. */
        private View.Finding finding(List<Finding> same) {
            number++;
            Finding first = same.get(0);
            List<View.Caution> cautions = new ArrayList<>();
            List<String> above = new ArrayList<>();
            for (String id : first.cautions()) {
                Caution caution = book.cautions().get(id);
                if (caution != null && cautioned.add(id)) {
                    cautions.add(new View.Caution(ended(caution.title()), caution.text()));
                } else if (caution != null) {
                    above.add(caution.title());
                }
            }
            String about = book.card(first.rule()).about();
            List<String> subjects = new ArrayList<>();
            Set<String> seen = new LinkedHashSet<>();
            List<String> disputes = new ArrayList<>();
            List<String> decided = new ArrayList<>();
            for (Finding finding : same) {
                String subject = naming.subject(about, finding.subject());
                String before = same.size() == 1 || subject.isEmpty() ? "" : subject + ": ";
                subjects.add(subject);
                seen.addAll(finding.seen());
                if (!finding.dispute().isEmpty()) {
                    disputes.add(before + ended(finding.dispute()));
                }
                WorkList.decision(inspection, assessment.unit(), finding)
                        .ifPresent(one -> decided.add(before + ended(WorkLine.told(one))));
            }
            return new View.Finding(
                    number,
                    same.size() == 1
                            ? naming.title(first.rule(), first.subject())
                            : first.title() + " (" + String.join(", ", subjects) + ")",
                    first.state() == Assessment.Standing.ARISEN
                            ? "It was not there at arrival; it came up during the visit."
                            : "",
                    List.copyOf(seen),
                    first.why(),
                    first.action(),
                    cautions,
                    String.join("; ", above),
                    disputes,
                    decided,
                    isForFile ? tail(first) : List.of());
        }

        private List<Named> tail(Finding finding) {
            List<Named> tail = new ArrayList<>();
            for (LimitUsed limit : finding.limits()) {
                tail.add(new Named("Limit", limit.value() + ": " + limit.meaning() + " (" + limit.setBy() + ")"));
            }
            for (Object fact : finding.evidence()) {
                if (isItem(fact)) {
                    tail.add(new Named("Evidence", naming.told(fact)));
                }
            }
            Card card = book.card(finding.rule());
            tail.add(new Named(
                    "Rule",
                    finding.rule() + (finding.subject().isEmpty() ? "" : ":" + finding.subject()) + ", band "
                            + finding.band() + "; "
                            + TextReport.basis(finding.basis()) + sources(card.sources()) + "; concerns "
                            + finding.consequence().word().replace('-', ' ')));
            if (!card.notWhen().isEmpty()) {
                tail.add(new Named("Not right when", card.notWhen()));
            }
            return tail;
        }

        private boolean isItem(Object fact) {
            return fact instanceof Record && vocabulary.item(fact.getClass()).isPresent();
        }

        private List<Named> waived() {
            List<Named> all = new ArrayList<>();
            for (Assessment.Waived one : assessment.waived()) {
                Finding finding = one.finding();
                all.add(new Named(
                        naming.title(finding.rule(), finding.subject()),
                        String.join(" ", finding.seen()) + " " + TextReport.waiver(one.waiver())));
            }
            for (Assessment.WaiverLeft one : assessment.waiversLeft()) {
                all.add(new Named(
                        naming.title(one.waiver().check(), one.waiver().subject()),
                        "This waiver counts for nothing: " + one.reason() + ". " + TextReport.waiver(one.waiver())));
            }
            return all;
        }

        private List<View.PutRight> putRight() {
            List<View.PutRight> all = new ArrayList<>();
            for (Finding finding : assessment.findings()) {
                if (!finding.isStanding()) {
                    all.add(new View.PutRight(
                            naming.title(finding.rule(), finding.subject()),
                            Urgencies.heading(finding.urgency()),
                            finding.seen(),
                            finding.retest().stream().map(naming::told).toList(),
                            isForFile ? tail(finding) : List.of()));
                }
            }
            return all;
        }

        private List<View.Cause> causes() {
            List<View.Cause> all = new ArrayList<>();
            for (Cause cause : assessment.diagnoses()) {
                String about = book.diagnoses().stream()
                        .filter(diagnosis -> diagnosis.id().equals(cause.id()))
                        .findFirst()
                        .map(diagnosis -> naming.subject(diagnosis.about(), cause.subject()))
                        .orElse(cause.subject());
                List<Named> points = new ArrayList<>();
                if (isForFile) {
                    cause.points().forEach(said -> points.add(new Named("For", said.text())));
                    cause.against().forEach(said -> points.add(new Named("Against", said.text())));
                }
                String reasons = cause.points().stream().map(Said::text).collect(Collectors.joining(" "));
                all.add(new View.Cause(
                        ended(cause.cause() + (about.isEmpty() ? "" : " (" + about + ")"))
                                + (isForFile || reasons.isEmpty() ? "" : " It would explain: " + ended(reasons))
                                + (cause.settle().isEmpty() ? "" : " What would settle it: " + ended(cause.settle())),
                        points));
            }
            return all;
        }

        // ---- what is not known

        private NotSeen notSeen() {
            List<Wanting> wanting = assessment.wanting();
            long open = assessment.count(Word.UNDETERMINED);
            if (wanting.isEmpty() && open == 0) {
                return new NotSeen("", List.of(), "");
            }
            Map<String, List<Wanting>> byQuestion = new LinkedHashMap<>();
            for (Wanting one : wanting) {
                // An owner reads once what is asked of several; the file keeps the place of each.
                String question = naming.question(one.answer());
                String key = isForFile ? question + " " + naming.place(one.answer()) : question;
                byQuestion.computeIfAbsent(key, k -> new ArrayList<>()).add(one);
            }
            int all = byQuestion.size();
            int shown = isForFile || all <= MOST_QUESTIONS + 1 ? all : MOST_QUESTIONS;
            List<Question> questions = byQuestion.values().stream()
                    .limit(shown)
                    .map(this::question)
                    .toList();
            String answers = wanting.size() == 1 ? "1 answer is missing" : wanting.size() + " answers are missing";
            String checks = open == 1 ? "1 check" : open + " checks";
            return new NotSeen(
                    answers + ", and " + checks + " of " + assessment.outcomes().size()
                            + " could not be made for want of " + (wanting.size() == 1 ? "it" : "them")
                            + ". Nothing is taken to be in order because nobody looked.",
                    questions,
                    shown < all
                            ? "and " + (all - shown) + " more questions, which the full report for the file lists."
                            : "");
        }

        private Question question(List<Wanting> same) {
            Missing first = same.get(0).answer();
            Set<String> asked = new LinkedHashSet<>();
            Set<String> reasons = new LinkedHashSet<>();
            for (Wanting one : same) {
                asked.add(naming.asked(one.answer()));
                reasons.add(one.answer().reason());
            }
            asked.remove("");
            reasons.remove("");
            return new Question(
                    naming.question(first) + (asked.isEmpty() ? "" : " (" + String.join("; ", asked) + ")"),
                    String.join("; ", reasons),
                    same.stream().anyMatch(Wanting::holdsGate),
                    isForFile ? naming.place(first) : "");
        }

        // ---- pictures that somebody took

        private List<Photos.Photo> embedded() {
            List<Photos.Photo> all = new ArrayList<>();
            for (Answer answer : observations.answers()) {
                for (String name : answer.photos()) {
                    all.add(photos.of(name, caption(answer)));
                }
            }
            return all;
        }

        private String caption(Answer answer) {
            String about = naming.subject(answer.item().kind(), answer.subject());
            return answer.item().ask()
                    + (about.isEmpty() ? "" : " (" + about + ")")
                    + (answer.state() == State.AS_LEFT ? " As left." : "");
        }

        // ---- for the file

        private List<Group> observed() {
            Map<String, List<Observed>> groups = new LinkedHashMap<>();
            Map<ItemType, Map<List<Object>, List<Answer>>> byItem = new LinkedHashMap<>();
            for (ItemType item : vocabulary.items()) {
                byItem.put(item, new LinkedHashMap<>());
            }
            for (Answer answer : observations.answers()) {
                byItem.get(answer.item())
                        .computeIfAbsent(answer.keys(), keys -> new ArrayList<>())
                        .add(answer);
            }
            for (Kind kind : vocabulary.kinds()) {
                if (kind.isCounted()) {
                    count(kind).ifPresent(row -> groups.computeIfAbsent("Equipment", g -> new ArrayList<>())
                            .add(row));
                }
            }
            byItem.forEach((item, byKeys) -> {
                Kind kind = vocabulary.kind(item.kind()).orElseThrow();
                byKeys.forEach((keys, answers) -> {
                    String heading = keys.isEmpty()
                            ? item.group().replace('-', ' ')
                            : vocabulary.counted(kind).label() + " " + keys.get(0);
                    String capital = Character.toUpperCase(heading.charAt(0)) + heading.substring(1);
                    groups.computeIfAbsent(capital, g -> new ArrayList<>()).add(row(item, keys, answers));
                });
            });
            return groups.entrySet().stream()
                    .map(entry -> new Group(entry.getKey(), entry.getValue()))
                    .toList();
        }

        private Optional<Observed> count(Kind kind) {
            Roster roster = observations.roster(kind.id());
            if (roster.asFound().isEmpty()
                    && roster.asLeft().isEmpty()
                    && roster.unread().isEmpty()) {
                return Optional.empty();
            }
            List<String> notes = new ArrayList<>();
            for (Roster.Tag tag : roster.tags()) {
                if (tag.presence() != Roster.Presence.THROUGHOUT) {
                    notes.add(tag.name()
                            + (tag.presence() == Roster.Presence.AS_FOUND
                                    ? " was taken out on the visit"
                                    : " was put in on the visit"));
                }
            }
            return Optional.of(new Observed(
                    Naming.counting(kind.label()),
                    roster.unread().isEmpty() ? number(roster.asFound()) : "could not be counted: " + roster.unread(),
                    number(roster.asLeft()),
                    notes));
        }

        private String number(OptionalInt number) {
            return number.isPresent() ? String.valueOf(number.getAsInt()) : "";
        }

        private Observed row(ItemType item, List<Object> keys, List<Answer> answers) {
            String found = "";
            String left = "";
            List<String> notes = new ArrayList<>();
            for (Answer answer : answers) {
                String text = answer.fact().isPresent()
                        ? naming.values(item, answer.fact().get())
                        : "could not be read: " + answer.unread();
                boolean isLeft = answer.state() == State.AS_LEFT;
                String when = isLeft ? "as left: " : "";
                if (isLeft) {
                    left = text;
                } else {
                    found = text;
                }
                if (!answer.note().isEmpty()) {
                    notes.add(when + answer.note());
                }
                if (!answer.at().isEmpty()) {
                    notes.add(when + "at " + answer.at());
                }
                if (!answer.photos().isEmpty()) {
                    notes.add(when + "photo " + String.join(", ", answer.photos()));
                }
            }
            String member = keys.size() > 1 ? " (" + Words.spoken(keys.get(1)) + ")" : "";
            return new Observed(item.ask() + member, found, left, notes);
        }

        private List<Reckoned> reckoned() {
            Set<Object> facts = new LinkedHashSet<>();
            assessment.findings().forEach(finding -> facts.addAll(finding.evidence()));
            List<Reckoned> all = new ArrayList<>();
            for (Object fact : facts) {
                if (isItem(fact)) {
                    ItemType item = vocabulary.item(fact.getClass()).orElseThrow();
                    if (item.isReckoned()) {
                        all.add(reckoned(item, (Record) fact));
                    }
                }
            }
            return all;
        }

        private Reckoned reckoned(ItemType item, Record fact) {
            List<Object> keys = item.keysOf(fact);
            List<String> from = new ArrayList<>();
            for (ItemType need : rulebook.workedOutFrom(item)) {
                for (Answer answer : observations.answers()) {
                    boolean same = answer.keys().isEmpty()
                            || keys.isEmpty()
                            || answer.keys().equals(keys);
                    if (answer.item().equals(need) && same) {
                        answer.fact()
                                .ifPresent(seen -> from.add(naming.told(seen)
                                        + (answer.keys().isEmpty() || !keys.isEmpty()
                                                ? ""
                                                : " (" + answer.subject() + ")")));
                    }
                }
                if (need.isReckoned()) {
                    from.add(need.ask() + " (worked out as well)");
                }
            }
            String about = naming.subject(item.kind(), gaugeglass.engine.observation.Subjects.of(keys));
            return new Reckoned(
                    item.ask() + (about.isEmpty() ? "" : " (" + about + ")"),
                    naming.values(item, fact),
                    item.look(),
                    from);
        }

        private List<View.Outcome> outcomes() {
            List<View.Outcome> all = new ArrayList<>();
            for (Assessment.Outcome outcome : assessment.outcomes()) {
                String word =
                        switch (outcome.outcome()) {
                            case FOUND -> "found";
                            case IN_ORDER -> "in order";
                            case UNDETERMINED -> "not judged";
                            case NOT_APPLICABLE -> "does not apply";
                        };
                all.add(new View.Outcome(
                        outcome.rule() + (outcome.subject().isEmpty() ? "" : ":" + outcome.subject()),
                        naming.title(outcome.rule(), outcome.subject()),
                        word
                                + outcome.mayBe()
                                        .map(urgency -> "; may be: " + Urgencies.heading(urgency))
                                        .orElse(""),
                        outcome.missing().stream().map(this::lacking).collect(Collectors.joining(", "))));
            }
            return all;
        }

        private String lacking(Missing missing) {
            return naming.place(missing) + (missing.reason().isEmpty() ? "" : " (" + missing.reason() + ")");
        }

        private String closing() {
            long standing =
                    assessment.findings().stream().filter(Finding::isStanding).count();
            long right = assessment.findings().size() - standing;
            return (standing == 0 ? "Nothing found" : standing == 1 ? "1 finding" : standing + " findings")
                    + (right == 0 ? "" : ", " + right + " put right")
                    + ". Checks: " + assessment.count(Word.IN_ORDER) + " in order, "
                    + assessment.count(Word.UNDETERMINED) + " not judged, "
                    + assessment.count(Word.NOT_APPLICABLE) + " do not apply.";
        }
    }

    private static String ended(String sentence) {
        String text = sentence.strip();
        return text.isEmpty() || ".!?".indexOf(text.charAt(text.length() - 1)) >= 0 ? text : text + ".";
    }
}
