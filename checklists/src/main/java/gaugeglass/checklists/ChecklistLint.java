package gaugeglass.checklists;

import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Nearest;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Checks that a checklist can be walked: order, stages, and conditions that can come true. */
final class ChecklistLint {
    private final Vocabulary vocabulary;
    private final List<Mistake> mistakes;

    ChecklistLint(Vocabulary vocabulary, List<Mistake> mistakes) {
        this.vocabulary = vocabulary;
        this.mistakes = mistakes;
    }

    void check(Checklist checklist) {
        Map<String, Question> asked = new HashMap<>();
        Set<String> places = new HashSet<>();
        Stage reached = Stage.ARRIVAL;
        for (Section section : checklist.sections()) {
            if (section.stage().compareTo(reached) < 0) {
                wrong(
                        checklist,
                        section.id(),
                        "the section is of stage " + section.stage().word() + " and comes after stage "
                                + reached.word(),
                        "sections in the order of stages",
                        "");
            }
            reached = section.stage();
            member(checklist, section);
            section.panels().forEach(panel -> together(checklist, section, panel));
            for (Question question : section.questions()) {
                if (!places.add(question.gives() + "@" + section.member())) {
                    wrong(checklist, question, question.gives() + " is asked twice", "each observation once", "");
                }
                place(checklist, section, question);
                conditions(checklist, section, question, asked);
                asked.put(question.gives(), question);
            }
        }
    }

    /** What is put on one screen is asked one after the other. */
    private void together(Checklist checklist, Section section, Panel panel) {
        int first = -1;
        int last = -1;
        List<Question> asked = section.questions();
        for (int i = 0; i < asked.size(); i++) {
            if (panel.parts().contains(asked.get(i))) {
                first = first < 0 ? i : first;
                last = i;
            }
        }
        for (Question between : asked.subList(first, last)) {
            if (!panel.parts().contains(between)) {
                wrong(
                        checklist,
                        section.id(),
                        "\"" + between.id() + "\" stands between the parts of panel " + panel.id(),
                        "the parts of a panel one after another; make it a part, or put it before or behind them",
                        "");
            }
        }
    }

    private void member(Checklist checklist, Section section) {
        Optional<Kind> kind = vocabulary.kind(section.each());
        boolean fixed = kind.filter(Kind::isFixed).isPresent();
        if (fixed == section.member().isEmpty()) {
            wrong(
                    checklist,
                    section.id(),
                    fixed
                            ? "the section does not say which member it is about"
                            : "the section names a member, but goes over no fixed set",
                    fixed ? "member:" : "each: a fixed kind",
                    "");
        } else if (fixed) {
            List<String> members = Interview.members(vocabulary, kind.get());
            if (!members.contains(section.member())) {
                wrong(
                        checklist,
                        section.id(),
                        "\"" + section.member() + "\" is no member of "
                                + kind.get().id(),
                        "one of " + String.join(", ", members),
                        Nearest.to(section.member(), members).orElse(""));
            }
        }
    }

    private void place(Checklist checklist, Section section, Question question) {
        Kind kind = vocabulary.kind(question.kind()).orElseThrow();
        String wanted = question.isCount() || !kind.isCounted() && !kind.isFixed() ? "" : kind.id();
        if (!section.each().equals(wanted)) {
            wrong(
                    checklist,
                    question,
                    "it is asked " + (section.each().isEmpty() ? "once" : "for each " + section.each())
                            + ", but is about " + (wanted.isEmpty() ? "the whole" : "each " + wanted),
                    "a section with each: " + (wanted.isEmpty() ? "left out" : wanted),
                    "");
        }
        // A fixed kind's members are asked in several stages, and its items carry the latest of them.
        Stage stage = question.item().map(ItemType::stage).orElse(Stage.ARRIVAL);
        boolean guards = stage.isBeforeFiring() && !question.isCount();
        if (guards && !section.stage().isBeforeFiring()) {
            wrong(
                    checklist,
                    question,
                    question.gives() + " guards the first gate and is asked in stage "
                            + section.stage().word(),
                    "stage arrival or cold",
                    "");
        }
    }

    private void conditions(Checklist checklist, Section section, Question question, Map<String, Question> asked) {
        for (AskWhen condition : question.askWhen()) {
            Question earlier = asked.get(condition.item());
            if (earlier == null) {
                wrong(
                        checklist,
                        question,
                        "it is asked when " + condition.item() + " was answered, which is not asked before it",
                        "an item asked earlier",
                        Nearest.to(condition.item(), asked.keySet()).orElse(""));
                continue;
            }
            Kind kind = vocabulary.kind(earlier.kind()).orElseThrow();
            boolean same = earlier.isCount()
                    || !kind.isCounted() && !kind.isFixed()
                    || section.each().equals(kind.id())
                    || vocabulary
                            .kind(section.each())
                            .filter(each -> each.parent().equals(kind.id()))
                            .isPresent();
            if (!same) {
                wrong(
                        checklist,
                        question,
                        "it hangs on " + condition.item() + ", of which there may be several",
                        "an item of the same piece of equipment",
                        "");
            }
            List<String> words = earlier.isCount()
                    ? List.of(AskWhen.SOME, AskWhen.NONE)
                    : earlier.item().map(Checklists::words).orElse(List.of());
            for (String word : condition.words()) {
                if (!words.contains(word)) {
                    wrong(
                            checklist,
                            question,
                            "\"" + word + "\" is never an answer to " + condition.item(),
                            "one of " + String.join(", ", words),
                            Nearest.to(word, words).orElse(""));
                }
            }
            if (condition.words().isEmpty() || condition.words().containsAll(words)) {
                wrong(
                        checklist,
                        question,
                        "its condition on " + condition.item() + " "
                                + (condition.words().isEmpty() ? "can never hold" : "always holds"),
                        "some of the answers",
                        "");
            }
        }
    }

    private void wrong(Checklist checklist, Question question, String what, String expected, String nearest) {
        mistakes.add(new Mistake(
                question.file(), question.line(), 0, checklist.id() + "/" + question.id(), what, expected, nearest));
    }

    private void wrong(Checklist checklist, String where, String what, String expected, String nearest) {
        mistakes.add(new Mistake("checklists", 0, 0, checklist.id() + "/" + where, what, expected, nearest));
    }
}
