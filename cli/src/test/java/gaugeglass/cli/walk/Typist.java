package gaugeglass.cli.walk;

import gaugeglass.checklists.Checklist;
import gaugeglass.checklists.Interview;
import gaugeglass.checklists.Interview.Status;
import gaugeglass.checklists.Interview.Step;
import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.Component;
import gaugeglass.engine.vocabulary.ItemType;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What somebody types who gives the answers of a visit, screen by screen. */
final class Typist {
    private final Checklist checklist;
    private final Observations given;
    private final boolean byNumber;
    private Observations so;

    private Typist(Checklist checklist, Observations given, Observations so, boolean byNumber) {
        this.checklist = checklist;
        this.given = given;
        this.byNumber = byNumber;
        this.so = so;
    }

    /**
     * One screen.
     *
     * @param gives what is answered on it
     * @param lines what is typed
     * @param after everything answered when it is left
     */
    record Screen(List<String> gives, List<String> lines, Observations after) {
        boolean asks(String item) {
            return gives.contains(item);
        }

        /** Keys pressed, with Enter after each line. */
        int keys() {
            return lines.stream().mapToInt(line -> line.length() + 1).sum();
        }
    }

    static List<Screen> screens(Checklist checklist, Observations given) {
        return screens(checklist, given, nothing(given));
    }

    /** From where a walk was broken off. */
    static List<Screen> screens(Checklist checklist, Observations given, Observations so) {
        return new Typist(checklist, given, so, false).all();
    }

    private static Observations nothing(Observations given) {
        return Observations.of(given.vocabulary(), given.unit()).build();
    }

    /** As somebody types who wants to press few keys: choices by their numbers, and the tags that are offered. */
    static List<Screen> screensByNumber(Checklist checklist, Observations given) {
        return new Typist(checklist, given, nothing(given), true).all();
    }

    static String[] lines(List<Screen> screens) {
        return screens.stream().flatMap(screen -> screen.lines().stream()).toArray(String[]::new);
    }

    /** What is told by earlier findings is not asked. */
    private Interview interview() {
        return Interview.of(checklist, Walked.RULEBOOK.observed(so));
    }

    private List<Screen> all() {
        List<Screen> screens = new ArrayList<>();
        Optional<Step> next = interview().next();
        while (next.isPresent()) {
            screens.add(screen(next.get()));
            next = interview().next();
        }
        return screens;
    }

    private Screen screen(Step first) {
        List<Step> together = interview().together(first);
        List<String> gives = new ArrayList<>();
        List<String> words = new ArrayList<>();
        List<String> further = new ArrayList<>();
        for (Step step : together) {
            // What an answer on the same screen closes takes no word.
            if (interview().status(step.question().gives(), step.keys()) == Status.OPEN) {
                gives.add(step.question().gives());
                words.add(word(step, further));
            }
        }
        List<String> lines = new ArrayList<>();
        if (together.size() == 1 && words.get(0).contains(" | ")) {
            lines.addAll(List.of(words.get(0).split(" \\| ")));
        } else {
            lines.add(String.join(" ", words).replace(" | ", " "));
        }
        lines.addAll(further);
        return new Screen(gives, lines, so);
    }

    /** Answers one question, and gives the words for it; what is asked after the line goes into further lines. */
    private String word(Step step, List<String> further) {
        Observations.Builder builder = so.toBuilder();
        if (step.question().isCount()) {
            String kind = step.question().kind();
            List<String> tags = given.roster(kind).tags(State.AS_FOUND);
            if (!tags.isEmpty()) {
                further.add(String.join(", ", tags));
            }
            builder.fitted(kind, State.AS_FOUND, tags.size());
            tags.forEach(tag -> builder.tag(kind, tag));
            so = builder.build();
            return String.valueOf(tags.size());
        }
        ItemType item = step.question().item().orElseThrow();
        Optional<Answer> answer = given.answer(item, step.keys(), State.AS_FOUND);
        Optional<Record> fact = answer.flatMap(Answer::fact);
        if (fact.isEmpty()) {
            String reason =
                    answer.map(Answer::unread).filter(text -> !text.isEmpty()).orElse("not for this one");
            further.add(reason);
            so = builder.put(Answer.unread(item, step.keys(), State.AS_FOUND, reason))
                    .build();
            return "u";
        }
        so = builder.put(Answer.seen(item, step.keys(), State.AS_FOUND, fact.get()))
                .build();
        List<String> words = new ArrayList<>();
        List<Object> values = item.valuesOf(fact.get());
        for (int i = 0; i < values.size(); i++) {
            words.add(typed(item.values().get(i), values.get(i)));
        }
        return String.join(" | ", words);
    }

    private String typed(Component part, Object value) {
        if (value instanceof Enum<?> choice) {
            String word = Words.of(choice);
            return byNumber ? String.valueOf(part.choices().indexOf(word) + 1) : word;
        }
        return String.valueOf(value);
    }
}
