package gaugeglass.checklists;

import gaugeglass.checklists.Interview.Step;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.observation.Subjects;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.Component;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/** Walks a checklist to its end with made-up answers, putting each question as it comes. */
final class Answering {
    static final LocalDate DAY = LocalDate.of(2026, 9, 14);

    private final Vocabulary vocabulary;
    private final Checklist checklist;
    private final Random random;
    private final Map<String, String> preferred;
    private final List<Step> put = new ArrayList<>();
    private Observations observations;

    /**
     * Readies a walk.
     *
     * @param preferred for an item, or an item with its subject ({@code cutoff-test.result LWC/slow-drain}), the answer
     *     to give; what is not there is made up
     */
    Answering(Vocabulary vocabulary, Checklist checklist, long seed, Map<String, String> preferred) {
        this.vocabulary = vocabulary;
        this.checklist = checklist;
        this.random = new Random(seed);
        this.preferred = preferred;
        this.observations = Observations.of(vocabulary, "B1").build();
    }

    /** Every question that was put, in order. */
    List<Step> put() {
        return put;
    }

    Observations toTheEnd() {
        Optional<Step> next = Interview.of(checklist, observations).next();
        while (next.isPresent()) {
            put.add(next.get());
            observations = answered(next.get());
            next = Interview.of(checklist, observations).next();
        }
        return observations;
    }

    private Observations answered(Step step) {
        Observations.Builder builder = observations.toBuilder();
        Question question = step.question();
        if (question.isCount()) {
            String kind = question.kind();
            int number = preferred.containsKey(question.gives())
                    ? Integer.parseInt(preferred.get(question.gives()))
                    : random.nextInt(3);
            builder.fitted(kind, State.AS_FOUND, number);
            for (int i = 1; i <= number; i++) {
                builder.tag(kind, kind + "-" + i);
            }
            return builder.build();
        }
        ItemType item = question.item().orElseThrow();
        String subject = Subjects.of(step.keys());
        String wanted = preferred.getOrDefault(item.id() + " " + subject, preferred.getOrDefault(item.id(), ""));
        List<Object> values = new ArrayList<>();
        String[] parts = wanted.isEmpty() ? new String[0] : wanted.split(" \\| ");
        for (int i = 0; i < item.values().size(); i++) {
            values.add(value(item, item.values().get(i), i < parts.length ? parts[i] : ""));
        }
        return builder.seen(item.make(step.keys(), values)).build();
    }

    private Object value(ItemType item, Component part, String wanted) {
        switch (part.form()) {
            case CHOICE:
                Object[] constants = item.constants(part);
                for (Object constant : constants) {
                    if (Words.of((Enum<?>) constant).equals(wanted)) {
                        return constant;
                    }
                }
                return constants[random.nextInt(constants.length)];
            case QUANTITY:
                if (!wanted.isEmpty()) {
                    return Quantity.parse(wanted, part.unit().dimension());
                }
                Quantity span = part.most().minus(part.least());
                return part.least().plus(span.times(random.nextInt(9)).dividedBy(8));
            case COUNT:
                int from = Integer.parseInt(part.from());
                int to = Integer.parseInt(part.to());
                return wanted.isEmpty() ? from + random.nextInt(to - from + 1) : Integer.parseInt(wanted);
            case DATE:
                return wanted.isEmpty() ? DAY.minusDays(random.nextInt(9000)) : LocalDate.parse(wanted);
            default:
                return wanted.isEmpty() ? "words" : wanted;
        }
    }
}
