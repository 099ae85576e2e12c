package gaugeglass.cli.walk;

import gaugeglass.checklists.Checklist;
import gaugeglass.checklists.Checklists;
import gaugeglass.checklists.Interview;
import gaugeglass.checklists.Interview.Step;
import gaugeglass.engine.Assessment;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.InspectionReader;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.Component;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Kind;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Predicate;

/** What the tests of walks share: visits to type, and what came of a walk. */
final class Walked {
    static final LocalDate DAY = LocalDate.of(2026, 9, 14);
    static final Rulebook RULEBOOK = Rulebook.load(Walked.class.getClassLoader());
    static final Checklists CHECKLISTS = Checklists.standard(RULEBOOK.vocabulary());
    static final Checklist FULL = CHECKLISTS.checklist("one-pipe-start-up").orElseThrow();

    private Walked() {}

    static Inspection example(String name) {
        return read(Path.of("..", "docs", "examples", name));
    }

    static Observations church() {
        return example("well-kept-church.yaml").units().get(0).observations();
    }

    static Inspection read(Path path) {
        try {
            return new InspectionReader(RULEBOOK.vocabulary())
                    .read(path.getFileName().toString(), Files.readString(path));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Observations unit(Path path) {
        return read(path).units().get(0).observations();
    }

    static Assessment assess(Path path) {
        return RULEBOOK.assess(unit(path), read(path).date());
    }

    static TypedTalk begun() {
        return new TypedTalk().type("chapel", "The chapel", "P. Example", "B1", "n");
    }

    /** Walks, and gives what kept the walk from beginning. */
    static List<String> walk(Checklist checklist, TypedTalk talk, Path path) {
        List<String> complaints = new ArrayList<>();
        new Walking(RULEBOOK, DAY, () -> "09:00")
                .walk(talk, path, Optional.empty(), Optional.of(checklist.id()), complaints::add);
        return complaints;
    }

    static int indexOf(List<Typist.Screen> screens, String item) {
        for (int i = 0; i < screens.size(); i++) {
            if (screens.get(i).asks(item)) {
                return i;
            }
        }
        throw new AssertionError(item + " is not asked");
    }

    /** The observations with one answer changed, about the first one of its kind. */
    static Observations with(Observations observations, String item, String word) {
        Answer old = observations.answers().stream()
                .filter(answer -> answer.item().id().equals(item))
                .findFirst()
                .orElseThrow();
        Object choice = Arrays.stream(old.item().constants(old.item().values().get(0)))
                .filter(constant -> Words.of((Enum<?>) constant).equals(word))
                .findFirst()
                .orElseThrow();
        Answer changed =
                Answer.seen(old.item(), old.keys(), State.AS_FOUND, old.item().make(old.keys(), List.of(choice)));
        return observations.toBuilder().without(old).put(changed).build();
    }

    /** What was answered, without when and how. */
    static Map<String, String> facts(Observations observations) {
        Map<String, String> facts = new TreeMap<>();
        observations
                .answers()
                .forEach(answer -> facts.put(
                        answer.item().id() + " " + answer.subject() + " " + answer.state(),
                        answer.fact().map(String::valueOf).orElse("unread: " + answer.unread())));
        for (Kind kind : RULEBOOK.vocabulary().kinds()) {
            if (kind.isCounted() && observations.roster(kind.id()).asFound().isPresent()) {
                facts.put(kind.id(), String.valueOf(observations.roster(kind.id())));
            }
        }
        return facts;
    }

    /**
     * A visit with made-up answers.
     *
     * @param kept the items whose answers are taken from another visit where it has them
     */
    static Observations random(Checklist checklist, long seed, Observations from, Predicate<ItemType> kept) {
        Random random = new Random(seed);
        Observations so = Observations.of(RULEBOOK.vocabulary(), "B1").build();
        Optional<Step> next = Interview.of(checklist, so).next();
        while (next.isPresent()) {
            Step step = next.get();
            Observations.Builder builder = so.toBuilder();
            if (step.question().isCount()) {
                String kind = step.question().kind();
                List<String> tags = from.roster(kind).tags(State.AS_FOUND);
                builder.fitted(kind, State.AS_FOUND, tags.size());
                tags.forEach(tag -> builder.tag(kind, tag));
            } else {
                ItemType item = step.question().item().orElseThrow();
                Optional<Record> fact = from.answer(item, step.keys(), State.AS_FOUND)
                        .flatMap(Answer::fact)
                        .filter(f -> kept.test(item));
                builder.put(Answer.seen(
                        item,
                        step.keys(),
                        State.AS_FOUND,
                        fact.orElseGet(() -> item.make(
                                step.keys(),
                                item.values().stream()
                                        .map(part -> value(item, part, random))
                                        .toList()))));
            }
            so = builder.build();
            next = Interview.of(checklist, so).next();
        }
        return so;
    }

    private static Object value(ItemType item, Component part, Random random) {
        return switch (part.form()) {
            case CHOICE -> item.constants(part)[random.nextInt(item.constants(part).length)];
            case QUANTITY -> {
                Quantity span = part.most().minus(part.least());
                yield part.least().plus(span.times(random.nextInt(9)).dividedBy(8));
            }
            case COUNT ->
                Integer.parseInt(part.from())
                        + random.nextInt(Integer.parseInt(part.to()) - Integer.parseInt(part.from()) + 1);
            case DATE -> DAY.minusDays(random.nextInt(9000));
            case TEXT -> "words";
        };
    }
}
