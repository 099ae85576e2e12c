package gaugeglass.cli.walk;

import gaugeglass.checklists.Checklist;
import gaugeglass.checklists.Interview;
import gaugeglass.checklists.Interview.Status;
import gaugeglass.checklists.Interview.Step;
import gaugeglass.checklists.Question;
import gaugeglass.checklists.Section;
import gaugeglass.cli.report.Naming;
import gaugeglass.engine.Assessment;
import gaugeglass.engine.Assessment.Finding;
import gaugeglass.engine.Assessment.Gate;
import gaugeglass.engine.Assessment.Permit;
import gaugeglass.engine.Assessment.Ref;
import gaugeglass.engine.Assessment.Wanting;
import gaugeglass.engine.Assessment.Word;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.book.Card;
import gaugeglass.engine.book.Caution;
import gaugeglass.engine.book.Urgency;
import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.observation.Subjects;
import gaugeglass.engine.reading.SourceText;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.Component;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;

/**
 * One walk through a checklist.
 *
 * <p>Nothing is kept but the inspection, and it is on disk before the next question is shown. The firing stage does not
 * open while something stands against test firing, or is not known.
 */
final class Walk {
    /** How a walk was left. */
    enum End {
        FINISHED,
        BROKEN_OFF
    }

    private final Talk talk;
    private final Rulebook rulebook;
    private final Vocabulary vocabulary;
    private final Why why;
    private final VisitFile file;
    private final Checklist checklist;
    private final Optional<Inspection> last;
    private final Supplier<String> clock;
    private final int unit;
    private final AskScreen screen;
    private final Naming naming;

    private Inspection inspection;
    private Assessment assessment;
    private Interview interview;

    /** What was shown already, so that a finding is said when it becomes certain and not again. */
    private final Set<Ref> told = new HashSet<>();

    /** Questions passed over in this walk; they come again at the end of their stage. */
    private final Set<String> skipped = new HashSet<>();

    /** The screens that were answered, the latest first. */
    private final Deque<List<Place>> trail = new ArrayDeque<>();

    /** Thrown by a person who wants to leave. */
    private static final class Leave extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Leave() {
            super("left", null, false, false);
        }
    }

    Walk(
            Talk talk,
            Rulebook rulebook,
            Why why,
            VisitFile file,
            Checklist checklist,
            Inspection inspection,
            int unit,
            Optional<Inspection> last,
            Supplier<String> clock) {
        this.talk = talk;
        this.rulebook = rulebook;
        this.vocabulary = rulebook.vocabulary();
        this.why = why;
        this.file = file;
        this.checklist = checklist;
        this.inspection = inspection;
        this.unit = unit;
        this.last = last;
        this.clock = clock;
        this.screen = new AskScreen(talk, rulebook.book());
        this.naming = new Naming(vocabulary, rulebook.book());
    }

    /** Asks until nothing is open or the person leaves; the inspection is on disk either way. */
    End run() {
        judge();
        assessment.findings().forEach(finding -> told.add(ref(finding)));
        try {
            while (true) {
                Optional<Step> next = next();
                if (next.isEmpty()) {
                    if (!skipped.isEmpty()) {
                        skipped.clear();
                        continue;
                    }
                    finish();
                    return End.FINISHED;
                }
                if (!next.get().section().stage().isBeforeFiring()
                        && assessment.testFiring().permit() != Permit.NOTHING_FOUND_AGAINST) {
                    barrier();
                } else {
                    screen(together(next.get()));
                }
            }
        } catch (Leave | Talk.Ended e) {
            return End.BROKEN_OFF;
        }
    }

    Talk talk() {
        return talk;
    }

    AskScreen screen() {
        return screen;
    }

    Checklist checklist() {
        return checklist;
    }

    LocalDate date() {
        return inspection.date();
    }

    Status status(Place place) {
        return interview.status(place.question().gives(), place.keys());
    }

    /** Notes a screen that was answered, so that it can be gone back to. */
    void answered(List<Place> places) {
        trail.push(places);
    }

    Observations observations() {
        return inspection.units().get(unit).observations();
    }

    private void judge() {
        interview = Interview.of(checklist, rulebook.observed(observations()));
        assessment = rulebook.assess(interview.judged(), inspection.date(), inspection.siteId());
    }

    private Optional<Step> next() {
        return interview.steps().stream()
                .filter(step -> step.status() == Status.OPEN
                        && !skipped.contains(Place.of(step).id()))
                .findFirst();
    }

    /** What is put on one screen with an open question, without what was passed over. */
    private List<Place> together(Step first) {
        return interview.together(first).stream()
                .map(Place::of)
                .filter(place -> !skipped.contains(place.id()))
                .toList();
    }

    private void screen(List<Place> places) {
        if (places.size() == 1) {
            ask(places.get(0));
        } else {
            new PanelAsk(this, places).ask();
        }
    }

    private static Ref ref(Finding finding) {
        return new Ref(finding.rule(), finding.subject());
    }

    // ---- asking

    private void ask(Place place) {
        head(place);
        while (true) {
            String typed = talk.line("> ").strip();
            if (typed.isEmpty()) {
                if (isAnswered(place)) {
                    answered(List.of(place));
                    return;
                }
                talk.say("Nothing was typed. Type an answer, s to skip, or ? for help.");
                continue;
            }
            boolean freeText = place.question().item().stream()
                    .flatMap(item -> item.values().stream())
                    .anyMatch(part -> part.form() == Component.Form.TEXT);
            Optional<Order> order = Order.of(typed, freeText);
            if (order.isPresent()) {
                if (obey(order.get(), place)) {
                    return;
                }
                continue;
            }
            if (place.question().isCount()
                    ? count(place, typed, State.AS_FOUND)
                    : answer(place, typed, State.AS_FOUND)) {
                trail.push(List.of(place));
                return;
            }
        }
    }

    private void head(Place place) {
        headLine(place);
        screen.question(place.question(), caution(place.question()));
        reason(List.of(place));
        current(place).ifPresent(answer -> talk.say("   Answered: " + Naming.answered(answer) + "  (Enter leaves it)"));
        place.question()
                .item()
                .flatMap(item -> observations().answer(item, place.keys(), State.AS_LEFT))
                .ifPresent(answer -> talk.say("   As left: " + Naming.answered(answer)));
        remembered(place)
                .ifPresent(answer -> talk.say("   Last visit: " + Naming.answered(answer) + "  (type = for the same)"));
        screen.choices(place.question());
    }

    /** Why it is asked: the gravest thing that hangs on the answers. */
    void reason(List<Place> places) {
        List<Card> hanging =
                why.cards(places.stream().map(place -> place.question().gives()).toList());
        if (!hanging.isEmpty()) {
            talk.say("   To find out whether: " + hanging.get(0).title()
                    + (hanging.size() > 1 ? "; and " + (hanging.size() - 1) + " more." : "."));
        }
    }

    /** The first line of a screen: the stage, how much of it is answered, the section and what it is about. */
    void headLine(Place place) {
        Section section = place.section();
        int all = 0;
        int done = 0;
        for (Step step : interview.steps()) {
            if (step.section().stage() == section.stage() && step.status() != Status.CLOSED) {
                all++;
                done += step.status() == Status.ANSWERED ? 1 : 0;
            }
        }
        String about = about(place.question(), place.keys());
        if (!section.each().isEmpty()) {
            // The section's title says what sort of thing it is, and which test; the line is short.
            about = String.valueOf(place.keys().get(0));
        }
        screen.head(section, about, done, all);
        if (place.question() == section.questions().get(0)) {
            screen.intro(section);
        }
    }

    String about(Question question, List<Object> keys) {
        if (keys.isEmpty()) {
            return "";
        }
        Kind kind = vocabulary.counted(vocabulary.kind(question.kind()).orElseThrow());
        return kind.label() + " " + tagged(keys);
    }

    /** A tag as it was given, and the member of a fixed set in words. */
    private static String tagged(List<Object> keys) {
        return keys.get(0) + (keys.size() > 1 ? ", " + Words.spoken(keys.get(1)) : "");
    }

    Optional<Caution> caution(Question question) {
        return Optional.ofNullable(rulebook.book().cautions().get(question.caution()));
    }

    Optional<Answer> current(Place place) {
        return place.question().item().flatMap(item -> observations().answer(item, place.keys(), State.AS_FOUND));
    }

    /** Identity and dates may be shown from last visit's file; never a reading or a test. */
    Optional<Answer> remembered(Place place) {
        return place.question()
                .item()
                .filter(ItemType::isCarried)
                .flatMap(item -> last.flatMap(inspected -> inspected.units().stream()
                        .filter(one -> one.id().equals(observations().unit()))
                        .findFirst()
                        .flatMap(one -> lastState(one.observations(), item, place.keys()))));
    }

    private static Optional<Answer> lastState(Observations observations, ItemType item, List<Object> keys) {
        return observations
                .answer(item, keys, State.AS_LEFT)
                .or(() -> observations.answer(item, keys, State.AS_FOUND))
                .filter(answer -> answer.fact().isPresent());
    }

    /** Whether a question has an answer, be it that it cannot be told. */
    boolean isAnswered(Place place) {
        return status(place) == Status.ANSWERED;
    }

    /** Takes an answer; false when it was not understood, which is said. */
    private boolean answer(Place place, String typed, State state) {
        ItemType item = place.question().item().orElseThrow();
        if (typed.equals("=") && remembered(place).isPresent()) {
            Answer same = remembered(place).get();
            keep(new Answer(item, place.keys(), state, same.fact(), "", "", List.of(), at(), same.typed()));
            return true;
        }
        Optional<Taken> taken = new Taking(talk, screen, item, place.question(), inspection.date()).take(typed);
        if (taken.isEmpty()) {
            return false;
        }
        Record fact = item.make(place.keys(), taken.get().values());
        keep(new Answer(
                item,
                place.keys(),
                state,
                Optional.of(fact),
                "",
                taken.get().note(),
                List.of(),
                at(),
                taken.get().typed()));
        talk.say("   = " + taken.get().echo());
        return true;
    }

    String at() {
        return clock.get();
    }

    boolean count(Place place, String typed, State state) {
        Kind kind = vocabulary.kind(place.question().kind()).orElseThrow();
        Optional<Integer> read = Count.read(typed, kind);
        if (read.isEmpty()) {
            talk.say(Count.wrong(typed, kind));
            return false;
        }
        int number = read.get();
        List<String> tags = observations().roster(kind.id()).tags(state);
        if (number < tags.size()) {
            talk.say(tags.size() + " are described already: " + String.join(", ", tags)
                    + ". What was described is not thrown away; correct it in the file.");
            return false;
        }
        List<String> added = number > tags.size() ? newTags(kind, tags, number) : List.of();
        store(Visit.counted(inspection, unit, kind, state, number, added));
        return true;
    }

    /** The tags of those that are not described yet, all in one line. */
    private List<String> newTags(Kind kind, List<String> tags, int number) {
        List<String> suggested = new ArrayList<>();
        for (int i = tags.size() + 1; i <= number; i++) {
            suggested.add(kind.id() + "-" + i);
        }
        String which = suggested.size() == 1 ? "its tag" : "their " + suggested.size() + " tags, with commas between";
        while (true) {
            String typed = talk.line(
                            kind.label() + ": " + which + " (Enter for " + String.join(", ", suggested) + ") > ")
                    .strip();
            List<String> chosen = new ArrayList<>(suggested);
            if (!typed.isEmpty()) {
                chosen.clear();
                for (String tag : typed.split("[,;]")) {
                    chosen.add(tag.strip());
                }
            }
            Set<String> used = new TreeSet<>(tags);
            Optional<String> wrong = chosen.stream()
                    .filter(tag -> tag.isEmpty()
                            || tag.contains("/")
                            || tag.contains("\\")
                            || tag.equals(Subjects.NOT_LISTED)
                            || tag.length() > 40)
                    .findFirst();
            Optional<String> doubled =
                    chosen.stream().filter(tag -> !used.add(tag)).findFirst();
            if (wrong.isPresent()) {
                talk.say("\"" + wrong.get() + "\" is no tag: a tag is a short name without a slash.");
            } else if (doubled.isPresent()) {
                talk.say("\"" + doubled.get() + "\" is the tag of another one.");
            } else if (chosen.size() != suggested.size()) {
                talk.say(chosen.size() + (chosen.size() == 1 ? " tag was" : " tags were") + " typed for "
                        + suggested.size() + ".");
            } else {
                return chosen;
            }
        }
    }

    private void keep(Answer answer) {
        keep(List.of(answer));
    }

    /** Puts answers on disk together. */
    void keep(List<Answer> answers) {
        Inspection changed = inspection;
        for (Answer answer : answers) {
            changed = Visit.with(changed, unit, answer);
        }
        store(changed);
    }

    /** Puts the new state on disk, then judges it and says what became certain. */
    private void store(Inspection changed) {
        while (true) {
            try {
                file.save(changed);
                break;
            } catch (IOException e) {
                talk.say("THIS ANSWER IS NOT YET ON DISK: " + VisitFile.reason(e));
                talk.say(
                        "The file still holds everything before it. Make room or access, then press Enter to try again;"
                                + " or type q to leave without this answer.");
                if (talk.line("> ").strip().equals("q")) {
                    throw new Leave();
                }
            }
        }
        inspection = changed;
        judge();
        announce();
    }

    private void announce() {
        for (Finding finding : assessment.findings()) {
            if (finding.isStanding() && told.add(ref(finding))) {
                screen.finding(finding, naming(finding.rule(), finding.subject()));
                if (finding.urgency() == Urgency.STOP) {
                    talk.line("Press Enter when you have read this > ");
                }
            }
        }
    }

    private String naming(String rule, String subject) {
        Card card = rulebook.book().card(rule);
        return subject.isEmpty() ? card.title() : card.title() + " (" + card.about() + " " + subject + ")";
    }

    // ---- orders

    /** Does what was ordered; true when the question has been left. */
    boolean obey(Order order, Place place) {
        switch (order.verb()) {
            case BACK -> {
                return back();
            }
            case SKIP -> {
                skip(List.of(place));
                return true;
            }
            case CANNOT -> {
                if (cannot(place, order.words())) {
                    trail.push(List.of(place));
                    return true;
                }
                return false;
            }
            case NOTE -> {
                return note(place, order.words(), false);
            }
            case PHOTO -> {
                return note(place, order.words(), true);
            }
            case AS_LEFT -> {
                asLeft();
                return true;
            }
            case DISPUTE -> {
                dispute();
                return true;
            }
            case FINDINGS -> {
                findings();
                return true;
            }
            case TABLE -> {
                table(order.words());
                return true;
            }
            case HELP -> {
                screen.help();
                return false;
            }
            case QUIT -> throw new Leave();
        }
        throw new IllegalStateException("no such order: " + order);
    }

    /** Goes back to the screen before; false where there is none. */
    boolean back() {
        if (trail.isEmpty()) {
            talk.say("This is where this walk began.");
            return false;
        }
        screen(trail.pop());
        return true;
    }

    void skip(List<Place> places) {
        places.forEach(place -> skipped.add(place.id()));
        talk.say("   Passed over. " + (places.size() == 1 ? "It comes" : "They come")
                + " again, and until then there is no answer.");
    }

    boolean cannot(Place place, String words) {
        List<String> usual =
                place.question().item().map(ItemType::unreadBecause).orElse(List.of());
        String reason = words;
        if (reason.isEmpty()) {
            for (int i = 0; i < usual.size(); i++) {
                talk.say("   " + (i + 1) + "  " + usual.get(i));
            }
            reason = talk.line("Cannot tell, because > ").strip();
        }
        if (reason.isEmpty()) {
            talk.say("A reason is needed: it tells the next person what to bring.");
            return false;
        }
        if (reason.length() == 1
                && Character.isDigit(reason.charAt(0))
                && reason.charAt(0) - '0' <= usual.size()
                && reason.charAt(0) != '0') {
            reason = usual.get(reason.charAt(0) - '1');
        }
        if (place.question().isCount()) {
            Kind kind = vocabulary.kind(place.question().kind()).orElseThrow();
            store(Visit.uncounted(inspection, unit, kind, reason));
        } else {
            ItemType item = place.question().item().orElseThrow();
            keep(new Answer(item, place.keys(), State.AS_FOUND, Optional.empty(), reason, "", List.of(), at(), ""));
        }
        return true;
    }

    /** A note or a picture's name goes with the answer that is there, or with the one before. */
    boolean note(Place place, String words, boolean photo) {
        Optional<Answer> there = current(place);
        if (there.isEmpty() && !trail.isEmpty()) {
            List<Place> before = trail.peek();
            there = current(before.get(before.size() - 1));
        }
        if (there.isEmpty()) {
            talk.say("Answer first; a note goes with an answer.");
            return false;
        }
        String text = words.isEmpty()
                ? talk.line(photo ? "Name of the picture > " : "Note > ").strip()
                : words;
        if (text.isEmpty()) {
            return false;
        }
        Answer answer = there.get();
        List<String> photos = new ArrayList<>(answer.photos());
        if (photo) {
            photos.add(text);
        }
        String note = photo ? answer.note() : answer.note().isEmpty() ? text : answer.note() + "; " + text;
        keep(new Answer(
                answer.item(),
                answer.keys(),
                answer.state(),
                answer.fact(),
                answer.unread(),
                note,
                photos,
                answer.at(),
                answer.typed()));
        talk.say("   Kept with: " + answer.item().ask());
        return false;
    }

    // ---- rows of a table

    /** Takes rows pasted, or out of a file, as answers about equipment of one kind. */
    private void table(String fileName) {
        List<Kind> kinds = Rows.kinds(vocabulary);
        for (int i = 0; i < kinds.size(); i++) {
            talk.say("   " + (i + 1) + "  " + kinds.get(i).plural());
        }
        Optional<Kind> chosen =
                chosen(talk.line("A table of which (number, Enter for none) > ").strip(), kinds);
        if (chosen.isEmpty()) {
            return;
        }
        Kind kind = chosen.get();
        Rows rows = new Rows(vocabulary, kind, inspection.date(), at());
        String text;
        if (fileName.isEmpty()) {
            talk.say("Headings: " + String.join(", ", rows.headings()) + ". Leave out what you have no column for.");
            talk.say("Paste the table, headings first; a line with only a full stop ends it.");
            StringBuilder pasted = new StringBuilder();
            while (true) {
                String line = talk.line("");
                if (line.strip().equals(".")) {
                    break;
                }
                pasted.append(line).append('\n');
            }
            text = pasted.toString();
        } else {
            try {
                text = SourceText.read(file.path().resolveSibling(fileName));
            } catch (Mistakes e) {
                e.all().forEach(mistake -> talk.say(mistake.message()));
                return;
            }
        }
        take(kind, rows.read(text), text);
    }

    private static Optional<Kind> chosen(String number, List<Kind> kinds) {
        try {
            return Optional.of(kinds.get(Integer.parseInt(number) - 1));
        } catch (NumberFormatException | IndexOutOfBoundsException e) {
            return Optional.empty();
        }
    }

    /** Puts what a table holds on disk in one step; what was not understood is named, and kept beside the file. */
    private void take(Kind kind, Rows.Read read, String text) {
        List<String> described = observations().roster(kind.id()).tags(State.AS_FOUND);
        List<String> added = Rows.added(observations(), kind, read.tags());
        int number = described.size() + added.size();
        if (number > kind.most()) {
            talk.say(number + " are more than are believed (" + kind.most() + "). Nothing was taken.");
            keptBeside(text);
            return;
        }
        Inspection changed = inspection;
        if (!added.isEmpty()) {
            int counted = observations().roster(kind.id()).asFound().orElse(0);
            changed = Visit.counted(changed, unit, kind, State.AS_FOUND, Math.max(counted, number), added);
        }
        int replaced = 0;
        for (Answer answer : read.answers()) {
            boolean stood = observations()
                    .answer(answer.item(), answer.keys(), State.AS_FOUND)
                    .filter(old -> !old.fact().equals(answer.fact()))
                    .isPresent();
            replaced += stood ? 1 : 0;
            changed = Visit.with(changed, unit, answer);
        }
        if (changed != inspection) {
            store(changed);
        }
        talk.say("   = " + read.answers().size() + " answers about "
                + read.tags().size() + " of the " + kind.plural()
                + (added.isEmpty() ? "" : "; new: " + String.join(", ", added))
                + (replaced == 0 ? "" : "; " + replaced + " put in the place of another answer"));
        if (!read.mistakes().isEmpty()) {
            talk.say("NOT TAKEN, and still to be answered:");
            for (Mistake mistake : read.mistakes()) {
                talk.say("   line " + mistake.line() + ", " + mistake.where() + ": " + Tokens.said(mistake));
            }
            keptBeside(text);
            talk.line("Press Enter when you have read this > ");
        }
    }

    private void keptBeside(String text) {
        try {
            talk.say("The whole table is in "
                    + file.keepBeside("table.csv", text).getFileName() + "; mend it there, then type t and its name.");
        } catch (IOException e) {
            talk.say("The table could not be kept beside the file: " + VisitFile.reason(e));
        }
    }

    private Optional<Finding> pick(String what) {
        List<Finding> standing =
                assessment.findings().stream().filter(Finding::isStanding).toList();
        if (standing.isEmpty()) {
            talk.say("No finding stands.");
            return Optional.empty();
        }
        for (int i = 0; i < standing.size(); i++) {
            talk.say("   " + (i + 1) + "  "
                    + naming(standing.get(i).rule(), standing.get(i).subject()));
        }
        String number = talk.line(what + " (number, Enter for none) > ").strip();
        try {
            return Optional.of(standing.get(Integer.parseInt(number) - 1));
        } catch (NumberFormatException | IndexOutOfBoundsException e) {
            return Optional.empty();
        }
    }

    /** Asks again what a finding rests on, after work was done or a test was repeated. */
    void asLeft() {
        Optional<Finding> finding = pick("Which one was put right or tested again?");
        if (finding.isEmpty()) {
            return;
        }
        talk.say("Answer each as it is NOW. Enter alone leaves it as it was found.");
        for (String id : why.items(finding.get().rule())) {
            for (Step step : interview.steps()) {
                boolean own = step.keys().isEmpty()
                        || step.keys().get(0).equals(finding.get().subject());
                if (step.question().gives().equals(id) && own && step.status() == Status.ANSWERED) {
                    askAgain(Place.of(step));
                }
            }
        }
        boolean stands =
                assessment.findings().stream().anyMatch(one -> ref(one).equals(ref(finding.get())) && one.isStanding());
        if (!stands) {
            talk.say("It is put right; what was found stays on record.");
            return;
        }
        List<String> missing = assessment.outcomes().stream()
                .filter(one -> one.outcome() == Word.UNDETERMINED
                        && new Ref(one.rule(), one.subject()).equals(ref(finding.get())))
                .flatMap(one -> one.missing().stream())
                .map(naming::question)
                .distinct()
                .toList();
        talk.say(
                missing.isEmpty()
                        ? "It still stands."
                        : "It stands until this is answered too, as it is now: " + String.join(" ", missing));
    }

    private void askAgain(Place place) {
        head(place);
        while (true) {
            String typed = talk.line("now > ").strip();
            if (typed.isEmpty()) {
                return;
            }
            if (typed.equals("u") || typed.startsWith("u ")) {
                String reason = typed.length() > 2
                        ? typed.substring(2)
                        : talk.line("Cannot tell, because > ").strip();
                place.question()
                        .item()
                        .ifPresent(item -> keep(new Answer(
                                item,
                                place.keys(),
                                State.AS_LEFT,
                                Optional.empty(),
                                reason.isEmpty() ? "not tested again yet" : reason,
                                "",
                                List.of(),
                                at(),
                                "")));
                return;
            }
            if (place.question().isCount() ? count(place, typed, State.AS_LEFT) : answer(place, typed, State.AS_LEFT)) {
                return;
            }
        }
    }

    void dispute() {
        Optional<Finding> finding = pick("Which one do you believe to be wrong?");
        if (finding.isEmpty()) {
            return;
        }
        String because = talk.line("Because > ").strip();
        if (because.isEmpty()) {
            talk.say("Without a reason nothing is recorded.");
            return;
        }
        store(Visit.disputed(
                inspection,
                unit,
                new Observations.Dispute(finding.get().rule(), finding.get().subject(), because)));
        talk.say("Recorded, and shown with the finding. It changes nothing of what the finding forbids.");
    }

    void findings() {
        gate("Attended test firing", assessment.testFiring());
        gate("Release to automatic operation", assessment.release());
        for (Finding finding : assessment.findings()) {
            screen.line(finding, naming(finding.rule(), finding.subject()));
        }
        for (Assessment.Waived one : assessment.waived()) {
            screen.waived(one, naming(one.finding().rule(), one.finding().subject()));
        }
        talk.line("Press Enter to go on > ");
    }

    private void gate(String name, Gate gate) {
        talk.say(name + ": "
                + switch (gate.permit()) {
                    case FORBIDDEN -> "FORBIDDEN";
                    case NOT_KNOWN -> "not known";
                    case NOTHING_FOUND_AGAINST -> "nothing found against it";
                });
    }

    /** What is shown in place of the firing stage while it may not open. */
    private void barrier() {
        talk.page();
        talk.say("THE FIRING STAGE IS CLOSED");
        gate("Attended test firing", assessment.testFiring());
        talk.say("");
        for (Ref against : assessment.testFiring().against()) {
            talk.say(" x " + naming(against.rule(), against.subject()));
            talk.say("     " + rulebook.book().card(against.rule()).action());
        }
        Map<Integer, Place> offered = new LinkedHashMap<>();
        Set<Ref> open = new HashSet<>(assessment.testFiring().open());
        int number = 1;
        for (Wanting wanting : assessment.wanting()) {
            if (number > 9 || wanting.settles().stream().noneMatch(open::contains)) {
                continue;
            }
            Optional<Place> place = place(wanting);
            if (place.isPresent()) {
                offered.put(number, place.get());
                talk.say(" " + number + " " + question(place.get()) + reason(wanting));
                number++;
            }
        }
        int more = open.size();
        if (more > 0) {
            talk.say("(" + more + " practice" + (more == 1 ? "" : "s") + " not known before firing.)");
        }
        talk.say("");
        talk.say("A number answers that question. l: something was put right. d: dispute. f: findings. q: leave.");
        String typed = talk.line("> ").strip();
        Optional<Order> order = Order.of(typed, false);
        if (order.isPresent()) {
            switch (order.get().verb()) {
                case AS_LEFT -> asLeft();
                case DISPUTE -> dispute();
                case FINDINGS -> findings();
                case QUIT -> throw new Leave();
                default -> talk.say("Not here.");
            }
            return;
        }
        try {
            Place place = offered.get(Integer.valueOf(typed));
            if (place != null) {
                ask(place);
            }
        } catch (NumberFormatException e) {
            talk.say("\"" + typed + "\" is none of these.");
        }
    }

    private static String reason(Wanting wanting) {
        return wanting.answer().reason().isEmpty()
                ? ""
                : "  (" + wanting.answer().reason() + ")";
    }

    private String question(Place place) {
        String about = about(place.question(), place.keys());
        return (about.isEmpty() ? "" : about + ": ") + place.question().ask();
    }

    private Optional<Place> place(Wanting wanting) {
        for (Step step : interview.steps()) {
            if (step.question().gives().equals(wanting.answer().item())
                    && Subjects.of(step.keys()).equals(wanting.answer().subject())
                    && step.status() != Status.CLOSED) {
                return Optional.of(Place.of(step));
            }
        }
        return Optional.empty();
    }

    private void finish() {
        talk.page();
        talk.say("Every question of \"" + checklist.title() + "\" has been put.");
        findings();
        long open = assessment.count(Word.UNDETERMINED);
        talk.say(
                open == 0
                        ? "Nothing is left undetermined."
                        : open + " practices are undetermined; assess names what would settle them.");
        talk.say("The inspection is in " + file.path().getFileName() + ".");
        List<String> aside = new ArrayList<>();
        interview.countsSetAside().forEach(kind -> aside.add(Naming.counting(kind.label())));
        interview.setAside().forEach(answer -> aside.add(answer.item().ask()));
        if (!aside.isEmpty()) {
            talk.say("Set aside, as an earlier answer closes them: " + String.join("; ", aside));
        }
    }

    /** The stage that a stage of the walk is in; only for the head line. */
    static String words(Stage stage) {
        return switch (stage) {
            case ARRIVAL -> "Arrival";
            case COLD -> "Cold";
            case FIRING -> "Firing";
            case HOT -> "Hot";
            case LEAVING -> "Leaving";
        };
    }
}
