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
import gaugeglass.cli.report.Alike;
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
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.Roster;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.Decision;
import gaugeglass.engine.vocabulary.Earlier;
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

    private static final int MOST_AT_FOOT = 40;

    /** As many things of one kind as have a table each in the report for the file; more share one. */
    private static final int MOST_TABLES = 8;

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
                foot(site) + ", visit of " + inspection.date() + (isForFile ? ", full report for the file" : ""),
                units,
                isForFile ? appendix(inspection) : new Appendix(List.of(), List.of(), List.of(), List.of()),
                TextReport.DEFERS);
    }

    /** A name as far as it has room at the foot of a sheet; it stands whole at the head of the first. */
    static String foot(String name) {
        int points = name.codePointCount(0, name.length());
        return points <= MOST_AT_FOOT ? name : name.substring(0, name.offsetByCodePoints(0, MOST_AT_FOOT)) + "...";
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
        for (Earlier one : inspection.earlier()) {
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
                    List<String> titles = titles(refs);
                    int shown = titles.size() <= MOST_REASONS ? titles.size() : MOST_REASONS - 1;
                    int left = refs.size();
                    for (List<String> subjects :
                            Alike.byRule(refs).values().stream().limit(shown).toList()) {
                        left -= subjects.size();
                    }
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
                            titles.subList(0, shown),
                            left > 0 ? "and " + left + " more." : "");
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
            List<String> titles = new ArrayList<>();
            Alike.byRule(refs).forEach((rule, subjects) -> titles.add(naming.title(rule, subjects)));
            return titles;
        }

        // ---- findings

        private Optional<Degree> degree(Urgency urgency) {
            List<Finding> standing = assessment.findings().stream()
                    .filter(finding -> finding.urgency() == urgency && finding.isStanding())
                    .toList();
            List<View.Finding> findings =
                    Alike.of(standing).stream().map(this::finding).toList();
            return findings.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new Degree(Urgencies.heading(urgency), urgency == Urgency.STOP, findings));
        }

        /** One entry for findings of one practice. */
        private View.Finding finding(Alike alike) {
            number++;
            Finding first = alike.first();
            List<View.Caution> cautions = new ArrayList<>();
            List<String> above = new ArrayList<>();
            for (String id : first.cautions()) {
                Caution caution = book.cautions().get(id);
                if (caution != null && cautioned.add(id)) {
                    cautions.add(new View.Caution(TextReport.ended(caution.title()), caution.text()));
                } else if (caution != null) {
                    above.add(caution.title());
                }
            }
            return new View.Finding(
                    number,
                    naming.title(first.rule(), alike.subjects()),
                    alike.which(),
                    first.state() == Assessment.Standing.ARISEN
                            ? "It was not there at arrival; it came up during the visit."
                            : "",
                    seen(alike),
                    first.why(),
                    first.action(),
                    cautions,
                    String.join("; ", above),
                    alike.each(finding -> finding.dispute().isEmpty() ? "" : TextReport.ended(finding.dispute())),
                    alike.each(finding -> WorkList.decision(inspection, assessment.unit(), finding)
                            .map(one -> TextReport.ended(WorkLine.told(one)))
                            .orElse("")),
                    isForFile ? tail(alike) : List.of());
        }

        /** What was seen; an owner is shown as many readings as tell what is meant, and the file keeps all. */
        private List<String> seen(Alike alike) {
            return isForFile
                    ? alike.seen()
                    : alike.seenInShort(
                            "And so on: what was read at the others stands in the full report for the file.");
        }

        private List<Named> tail(Alike alike) {
            Finding first = alike.first();
            Set<Named> tail = new LinkedHashSet<>();
            for (Finding finding : alike.all()) {
                for (LimitUsed limit : finding.limits()) {
                    tail.add(new Named("Limit", limit.value() + ": " + limit.meaning() + " (" + limit.setBy() + ")"));
                }
            }
            boolean isShort = alike.which().isEmpty();
            for (Finding finding : isShort ? alike.all() : List.of(first)) {
                for (Object fact : finding.evidence()) {
                    if (isItem(fact)) {
                        String of = alike.isOne() ? "" : Naming.shortly(finding.subject()) + ": ";
                        tail.add(new Named("Evidence", of + naming.told(fact)));
                    }
                }
            }
            if (!isShort) {
                tail.add(new Named("Evidence", "the same answers of each of the others, listed below by its tag"));
            }
            Card card = book.card(first.rule());
            tail.add(new Named(
                    "Rule",
                    first.rule() + (first.subject().isEmpty() ? "" : ":" + String.join(", ", alike.subjects()))
                            + ", band " + first.band() + "; "
                            + TextReport.basis(first.basis()) + sources(card.sources())
                            + book.replacement(first.rule())
                                    .map(words -> "; " + words)
                                    .orElse("")
                            + "; concerns "
                            + first.consequence().word().replace('-', ' ')));
            if (!card.notWhen().isEmpty()) {
                tail.add(new Named("Not right when", card.notWhen()));
            }
            return List.copyOf(tail);
        }

        private boolean isItem(Object fact) {
            return fact instanceof Record && vocabulary.item(fact.getClass()).isPresent();
        }

        private List<Named> waived() {
            List<Named> all = new ArrayList<>();
            Alike.byWaiver(assessment.waived()).forEach((waiver, findings) -> {
                for (Alike alike : findings) {
                    String which = alike.which();
                    all.add(new Named(
                            naming.title(alike.first().rule(), alike.subjects()),
                            (which.isEmpty() ? "" : which + ". ") + String.join(" ", seen(alike)) + " "
                                    + TextReport.waiver(waiver)));
                }
            });
            for (Assessment.WaiverLeft one : assessment.waiversLeft()) {
                all.add(new Named(
                        naming.title(one.waiver().check(), one.waiver().subject()),
                        "This waiver counts for nothing: " + one.reason() + ". " + TextReport.waiver(one.waiver())));
            }
            return all;
        }

        private List<View.PutRight> putRight() {
            List<Finding> right = assessment.findings().stream()
                    .filter(finding -> !finding.isStanding())
                    .toList();
            List<View.PutRight> all = new ArrayList<>();
            for (Alike alike : Alike.of(right)) {
                all.add(new View.PutRight(
                        naming.title(alike.first().rule(), alike.subjects()),
                        alike.which(),
                        Urgencies.heading(alike.first().urgency()),
                        seen(alike),
                        alike.eachOf(finding ->
                                finding.retest().stream().map(naming::told).toList()),
                        isForFile ? tail(alike) : List.of()));
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
                        TextReport.ended(cause.cause() + (about.isEmpty() ? "" : " (" + about + ")"))
                                + (isForFile || reasons.isEmpty()
                                        ? ""
                                        : " It would explain: " + TextReport.ended(reasons))
                                + (cause.settle().isEmpty()
                                        ? ""
                                        : " What would settle it: " + TextReport.ended(cause.settle())),
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
            Map<String, List<Wanting>> byQuestion = naming.byQuestion(wanting);
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
            Set<String> reasons = new LinkedHashSet<>();
            List<String> subjects = new ArrayList<>();
            for (Wanting one : same) {
                reasons.add(one.answer().reason());
                subjects.add(one.answer().subject());
            }
            reasons.remove("");
            String asked = naming.asked(same);
            String which = isForFile && Naming.isLeftOut(subjects) ? ": " + Naming.which(subjects) : "";
            return new Question(
                    naming.question(first) + (asked.isEmpty() ? "" : " (" + asked + which + ")"),
                    String.join("; ", reasons),
                    same.stream().anyMatch(Wanting::holdsGate),
                    isForFile ? naming.place(first) + (same.size() == 1 ? "" : ", and likewise") : "");
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
                if (isMany(kind)) {
                    return;
                }
                byKeys.forEach((keys, answers) -> {
                    String heading = keys.isEmpty()
                            ? item.group().replace('-', ' ')
                            : vocabulary.counted(kind).label() + " " + keys.get(0);
                    String capital = Character.toUpperCase(heading.charAt(0)) + heading.substring(1);
                    groups.computeIfAbsent(capital, g -> new ArrayList<>()).add(row(item, keys, answers));
                });
            });
            List<Group> all = new ArrayList<>();
            groups.forEach((heading, rows) -> all.add(new Group(heading, false, rows)));
            for (Kind kind : vocabulary.kinds()) {
                if (kind.isCounted() && isMany(kind)) {
                    all.add(many(kind, byItem));
                }
            }
            return all;
        }

        /** Whether there is so much of a kind that a table for each would fill a folder. */
        private boolean isMany(Kind kind) {
            boolean isCounted = !kind.equals(vocabulary.site()) && !kind.equals(vocabulary.unit());
            return isCounted
                    && observations.roster(vocabulary.counted(kind).id()).tags().size() > MOST_TABLES;
        }

        /** One table for all of a kind: a row for each tag, below one that says what was asked. */
        private Group many(Kind counted, Map<ItemType, Map<List<Object>, List<Answer>>> byItem) {
            Map<String, List<Observed>> byTag = new LinkedHashMap<>();
            observations.roster(counted.id()).tags().forEach(tag -> byTag.put(tag.name(), new ArrayList<>()));
            List<String> asked = new ArrayList<>();
            byItem.forEach((item, byKeys) -> {
                Kind kind = vocabulary.kind(item.kind()).orElseThrow();
                if (byKeys.isEmpty() || !vocabulary.counted(kind).equals(counted) || !isMany(kind)) {
                    return;
                }
                asked.add(item.name().replace('-', ' ') + ": " + item.ask());
                byKeys.forEach((keys, answers) -> {
                    Observed row = row(item, keys, answers);
                    String name = (keys.size() > 1 ? Words.spoken(keys.get(1)) + ", " : "")
                            + item.name().replace('-', ' ') + ": ";
                    byTag.computeIfAbsent(String.valueOf(keys.get(0)), k -> new ArrayList<>())
                            .add(new Observed(
                                    name,
                                    row.found().isEmpty() ? "" : name + row.found(),
                                    row.left().isEmpty() ? "" : name + row.left(),
                                    row.notes().stream()
                                            .map(note -> name + note)
                                            .toList()));
                });
            });
            List<Observed> rows =
                    new ArrayList<>(List.of(new Observed("Asked of each", String.join(" ", asked), "", List.of())));
            byTag.forEach((tag, answers) -> rows.add(new Observed(
                    tag,
                    joined(answers.stream().map(Observed::found).toList()),
                    joined(answers.stream().map(Observed::left).toList()),
                    answers.stream().flatMap(row -> row.notes().stream()).toList())));
            String label = counted.label();
            return new Group(Character.toUpperCase(label.charAt(0)) + label.substring(1) + ", by tag", true, rows);
        }

        private static String joined(List<String> texts) {
            return String.join(
                    "; ", texts.stream().filter(text -> !text.isEmpty()).toList());
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

        /** Everything that can be worked out of the answers; what came out alike for several is one row. */
        private List<Reckoned> reckoned() {
            Map<ItemType, Map<String, List<Record>>> byItem = new LinkedHashMap<>();
            for (Record fact : rulebook.reckoned(observations, assessment.date())) {
                ItemType item = vocabulary.item(fact.getClass()).orElseThrow();
                byItem.computeIfAbsent(item, k -> new LinkedHashMap<>())
                        .computeIfAbsent(naming.values(item, fact), k -> new ArrayList<>())
                        .add(fact);
            }
            List<Reckoned> all = new ArrayList<>();
            byItem.forEach((item, byValue) -> {
                boolean isShort = byValue.size() <= MOST_TABLES;
                byValue.forEach((value, facts) -> all.add(reckoned(item, value, facts, isShort)));
            });
            return all;
        }

        private Reckoned reckoned(ItemType item, String value, List<Record> facts, boolean isShort) {
            List<String> subjects = new ArrayList<>();
            facts.forEach(fact -> subjects.add(gaugeglass.engine.observation.Subjects.of(item.keysOf(fact))));
            String about = naming.subjects(item.kind(), subjects)
                    + (Naming.isLeftOut(subjects) ? ": " + Naming.which(subjects) : "");
            List<String> from = new ArrayList<>();
            if (facts.size() > 1) {
                from.add("the answers of each of them");
            } else if (isShort) {
                from.addAll(from(item, item.keysOf(facts.get(0))));
            } else {
                from.add("its own answers");
            }
            for (Limit limit : rulebook.workedOutWith(item)) {
                from.add("limit " + limit.id() + ", " + limit.written());
            }
            return new Reckoned(item.ask() + (about.isEmpty() ? "" : " (" + about + ")"), value, item.look(), from);
        }

        private List<String> from(ItemType item, List<Object> keys) {
            List<String> from = new ArrayList<>();
            for (ItemType need : rulebook.workedOutFrom(item)) {
                Kind kind = vocabulary.kind(need.kind()).orElseThrow();
                if (need.isReckoned()) {
                    from.add(need.ask() + " (worked out as well)");
                } else if (keys.isEmpty() && isMany(kind)) {
                    from.add(
                            need.ask() + " (of each " + vocabulary.counted(kind).label() + ", listed above)");
                } else {
                    for (Answer answer : observations.answers()) {
                        boolean isOfIt = answer.keys().isEmpty()
                                || keys.isEmpty()
                                || answer.keys().equals(keys);
                        if (answer.item().equals(need) && isOfIt) {
                            String of = answer.keys().isEmpty() || !keys.isEmpty() ? "" : " (" + answer.subject() + ")";
                            answer.fact().ifPresent(seen -> from.add(naming.told(seen) + of));
                        }
                    }
                }
            }
            return from;
        }

        /** What became of each check; what is alike for several is one row with all their tags. */
        private List<View.Outcome> outcomes() {
            Map<String, List<Assessment.Outcome>> rows = new LinkedHashMap<>();
            for (Assessment.Outcome outcome : assessment.outcomes()) {
                StringBuilder key = new StringBuilder(outcome.rule()).append(outcome.outcome());
                key.append(outcome.mayBe());
                outcome.missing().forEach(missing -> key.append(' ')
                        .append(missing.item())
                        .append(missing.subject().equals(outcome.subject()))
                        .append(missing.subject().equals(outcome.subject()) ? "" : missing.subject())
                        .append(missing.reason()));
                rows.computeIfAbsent(key.toString(), k -> new ArrayList<>()).add(outcome);
            }
            List<View.Outcome> all = new ArrayList<>();
            rows.values().forEach(same -> all.add(outcome(same)));
            return all;
        }

        private View.Outcome outcome(List<Assessment.Outcome> same) {
            Assessment.Outcome first = same.get(0);
            List<String> subjects =
                    same.stream().map(Assessment.Outcome::subject).toList();
            String word =
                    switch (first.outcome()) {
                        case FOUND -> "found";
                        case IN_ORDER -> "in order";
                        case UNDETERMINED -> "not judged";
                        case NOT_APPLICABLE -> "does not apply";
                    };
            String missing = first.missing().stream().map(this::lacking).collect(Collectors.joining(", "));
            return new View.Outcome(
                    first.rule() + (first.subject().isEmpty() ? "" : ":" + String.join(", ", subjects)),
                    naming.title(first.rule(), subjects),
                    word
                            + first.mayBe()
                                    .map(urgency -> "; may be: " + Urgencies.heading(urgency))
                                    .orElse(""),
                    missing + (missing.isEmpty() || same.size() == 1 ? "" : ", and likewise for the others"));
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
}
