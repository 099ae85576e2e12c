package gaugeglass.checklists;

import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.Roster;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A checklist over what has been observed so far: which questions are open, answered, or closed by an earlier answer.
 *
 * <p>It keeps nothing of its own. The same observations always give the same interview, so that one that was broken off
 * goes on where it was.
 */
public final class Interview {
    private final Checklist checklist;
    private final Vocabulary vocabulary;
    private final Observations observations;
    private final List<Step> steps = new ArrayList<>();
    private final Map<Place, Status> statuses = new HashMap<>();

    /** Where a question stands. */
    public enum Status {
        /** Not answered, and to be asked. */
        OPEN,
        /** Answered, or said to be unreadable. */
        ANSWERED,
        /** An earlier answer leaves nothing to ask. */
        CLOSED,
        /** An earlier question that decides whether it is asked is itself still open. */
        WAITING
    }

    /**
     * One question about one thing.
     *
     * @param section the section it is asked in
     * @param question the question
     * @param keys the tag and, for a fixed set, the member; empty for the unit and the site
     * @param status where it stands
     */
    public record Step(Section section, Question question, List<Object> keys, Status status) {
        public Step {
            keys = List.copyOf(keys);
        }
    }

    private record Place(String item, List<Object> keys) {}

    private Interview(Checklist checklist, Observations observations) {
        this.checklist = checklist;
        this.vocabulary = observations.vocabulary();
        this.observations = observations;
    }

    /** Lays a checklist over observations, as found. */
    public static Interview of(Checklist checklist, Observations observations) {
        Interview interview = new Interview(checklist, observations);
        checklist.sections().forEach(interview::lay);
        return interview;
    }

    private void lay(Section section) {
        for (List<Object> keys : keys(section)) {
            for (Question question : section.questions()) {
                Status status = status(section, question, keys);
                statuses.put(new Place(question.gives(), keys), status);
                steps.add(new Step(section, question, keys, status));
            }
        }
    }

    private List<List<Object>> keys(Section section) {
        if (section.each().isEmpty()) {
            return List.of(List.of());
        }
        Kind kind = vocabulary.kind(section.each()).orElseThrow();
        return keys(
                vocabulary,
                section,
                observations.roster(vocabulary.counted(kind).id()).tags(State.AS_FOUND));
    }

    /**
     * What a section asks about: each tag, with the section's member of a fixed set.
     *
     * @param section one that is repeated for each of a kind
     * @param tags of the kind, or of the kind that the set is of
     */
    public static List<List<Object>> keys(Vocabulary vocabulary, Section section, List<String> tags) {
        Kind kind = vocabulary.kind(section.each()).orElseThrow();
        List<List<Object>> all = new ArrayList<>();
        for (String tag : tags) {
            if (kind.isCounted()) {
                all.add(List.of(tag));
            } else {
                vocabulary.members(kind).stream()
                        .filter(member -> Words.of((Enum<?>) member).equals(section.member()))
                        .forEach(member -> all.add(List.of(tag, member)));
            }
        }
        return all;
    }

    /** The words for the members of a fixed kind. */
    static List<String> members(Vocabulary vocabulary, Kind kind) {
        List<String> words = new ArrayList<>();
        vocabulary.members(kind).forEach(member -> words.add(Words.of((Enum<?>) member)));
        return words;
    }

    private Status status(Section section, Question question, List<Object> keys) {
        Status counted = section.each().isEmpty()
                ? Status.ANSWERED
                : ofCount(vocabulary.counted(vocabulary.kind(section.each()).orElseThrow()));
        if (counted == Status.CLOSED) {
            return Status.CLOSED;
        }
        boolean waits = counted == Status.WAITING;
        for (AskWhen condition : question.askWhen()) {
            switch (holds(condition, keys)) {
                case CLOSED -> {
                    return Status.CLOSED;
                }
                case WAITING -> waits = true;
                default -> {}
            }
        }
        if (waits) {
            return Status.WAITING;
        }
        return isAnswered(question, keys) ? Status.ANSWERED : Status.OPEN;
    }

    /** CLOSED where the earlier answer rules it out, WAITING where there is none yet, OPEN where it may be asked. */
    private Status holds(AskWhen condition, List<Object> keys) {
        Optional<ItemType> item = vocabulary.item(condition.item());
        if (item.isEmpty()) {
            Kind kind = vocabulary
                    .kind(condition.item().substring(0, condition.item().indexOf('.')))
                    .orElseThrow();
            Status count = ofCount(kind);
            if (count == Status.CLOSED || count == Status.WAITING) {
                return count;
            }
            Roster roster = observations.roster(kind.id());
            if (roster.asFound().isEmpty()) {
                return roster.unread().isEmpty() ? Status.WAITING : Status.OPEN;
            }
            String word = roster.asFound().getAsInt() > 0 ? AskWhen.SOME : AskWhen.NONE;
            return condition.words().contains(word) ? Status.OPEN : Status.CLOSED;
        }
        List<Object> own = keysOf(item.get(), keys);
        Status earlier = statuses.getOrDefault(new Place(condition.item(), own), Status.OPEN);
        if (earlier == Status.CLOSED || earlier == Status.WAITING) {
            return earlier;
        }
        Optional<Answer> answer = observations.answer(item.get(), own, State.AS_FOUND);
        if (answer.isEmpty()) {
            return Status.WAITING;
        }
        if (answer.get().fact().isEmpty()) {
            // What could not be read closes nothing: the question may still matter, so it is asked.
            return Status.OPEN;
        }
        for (Object value : item.get().valuesOf(answer.get().fact().get())) {
            if (value instanceof Enum<?> choice && condition.words().contains(Words.of(choice))) {
                return Status.OPEN;
            }
        }
        return Status.CLOSED;
    }

    /** Where the question how many there are stands; as if answered where this checklist does not ask it. */
    private Status ofCount(Kind kind) {
        return statuses.getOrDefault(new Place(kind.countId(), List.of()), Status.ANSWERED);
    }

    /** The keys under which an item is answered, seen from a question with these keys. */
    private List<Object> keysOf(ItemType item, List<Object> keys) {
        Kind kind = vocabulary.kind(item.kind()).orElseThrow();
        int number = kind.isFixed() ? 2 : kind.isCounted() ? 1 : 0;
        return keys.subList(0, Math.min(number, keys.size()));
    }

    private boolean isAnswered(Question question, List<Object> keys) {
        if (question.isCount()) {
            Roster roster = observations.roster(question.kind());
            return roster.asFound().isPresent() || !roster.unread().isEmpty();
        }
        return observations
                .answer(question.item().orElseThrow(), keys, State.AS_FOUND)
                .isPresent();
    }

    public Checklist checklist() {
        return checklist;
    }

    /** Every step, in order, with where it stands. */
    public List<Step> steps() {
        return List.copyOf(steps);
    }

    /** The first question to ask. */
    public Optional<Step> next() {
        return steps.stream().filter(step -> step.status() == Status.OPEN).findFirst();
    }

    /** Where the question with these keys stands; CLOSED where this checklist does not ask it. */
    public Status status(String gives, List<Object> keys) {
        return statuses.getOrDefault(new Place(gives, keys), Status.CLOSED);
    }

    /**
     * What is put on one screen with an open question: the parts of its panel about the same thing that are open, or that
     * hang on such a part, in the order of the section; the question alone where it is on no panel.
     */
    public List<Step> together(Step open) {
        Optional<Panel> panel = open.section().panel(open.question());
        if (panel.isEmpty()) {
            return List.of(open);
        }
        List<Step> together = new ArrayList<>();
        Set<String> given = new HashSet<>();
        for (Step step : steps) {
            if (step.section() == open.section()
                    && step.keys().equals(open.keys())
                    && panel.get().parts().contains(step.question())) {
                boolean hangs = step.status() == Status.WAITING
                        && !isAnswered(step.question(), step.keys())
                        && step.question().askWhen().stream().anyMatch(when -> given.contains(when.item()));
                if (step.status() == Status.OPEN || hangs) {
                    given.add(step.question().gives());
                    together.add(step);
                }
            }
        }
        return together;
    }

    /** The answers to questions that an earlier answer closes, or that stand under one. They are listed, never judged. */
    public List<Answer> setAside() {
        List<Answer> aside = new ArrayList<>();
        for (Answer answer : observations.answers()) {
            Status status = statuses.get(new Place(answer.item().id(), answer.keys()));
            Kind counted =
                    vocabulary.counted(vocabulary.kind(answer.item().kind()).orElseThrow());
            if (status == Status.CLOSED || counted.isCounted() && ofCount(counted) == Status.CLOSED) {
                aside.add(answer);
            }
        }
        return aside;
    }

    /** The kinds that were counted or described though an earlier answer leaves none to count; they are set aside too. */
    public List<Kind> countsSetAside() {
        return vocabulary.kinds().stream()
                .filter(Kind::isCounted)
                .filter(kind -> ofCount(kind) == Status.CLOSED
                        && !observations.roster(kind.id()).equals(Roster.EMPTY))
                .toList();
    }

    /** What is to be judged: the observations without the answers and counts that are set aside. */
    public Observations judged() {
        Observations.Builder builder = observations.toBuilder();
        setAside().forEach(builder::without);
        countsSetAside().forEach(kind -> builder.withoutRoster(kind.id()));
        return builder.build();
    }
}
