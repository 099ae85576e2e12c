package gaugeglass.steam.proof;

import gaugeglass.engine.Assessment.Word;
import gaugeglass.engine.build.Scenario;
import gaugeglass.engine.build.Scenario.Expected;
import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.Roster;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes further visits of those that the scenarios describe. */
final class Visits {
    private static final String OTHER = "'";

    private Visits() {}

    /**
     * Both visits in one: the equipment of the second stands beside that of the first, under other tags. Empty where
     * they differ in what both say of the unit or the site, or are of different days.
     */
    static Optional<Observations> crossed(Scenario one, Scenario two) {
        Observations first = one.given();
        Observations second = two.given();
        Vocabulary vocabulary = first.vocabulary();
        if (!one.date().equals(two.date()) || first.hasAsLeft() || second.hasAsLeft()) {
            return Optional.empty();
        }
        Observations.Builder both = Observations.of(vocabulary, first.unit());
        boolean grown = false;
        for (Kind kind : vocabulary.kinds()) {
            if (!kind.isCounted()) {
                continue;
            }
            Roster a = first.roster(kind.id());
            Roster b = second.roster(kind.id());
            a.tags().forEach(tag -> both.tag(kind.id(), tag.name()));
            b.tags().forEach(tag -> both.tag(kind.id(), tag.name() + OTHER));
            grown |= !a.tags().isEmpty() && !b.tags().isEmpty();
            if (a.asFound().isPresent() || b.asFound().isPresent()) {
                int number = a.asFound().orElse(a.tags().size())
                        + b.asFound().orElse(b.tags().size());
                if (number > kind.most()) {
                    return Optional.empty();
                }
                both.fitted(kind.id(), State.AS_FOUND, number);
            }
        }
        if (!grown) {
            return Optional.empty();
        }
        first.answers().forEach(both::put);
        for (Answer answer : second.answers()) {
            if (answer.keys().isEmpty()) {
                Optional<Answer> other = first.answer(answer.item(), answer.keys(), State.AS_FOUND);
                if (other.isEmpty()) {
                    both.put(answer);
                } else if (!other.get().fact().equals(answer.fact())) {
                    return Optional.empty();
                }
            } else {
                List<Object> keys = new ArrayList<>(answer.keys());
                keys.set(0, keys.get(0) + OTHER);
                both.put(
                        answer.fact().isPresent()
                                ? Answer.seen(
                                        answer.item(),
                                        keys,
                                        State.AS_FOUND,
                                        answer.item()
                                                .make(
                                                        keys,
                                                        answer.item()
                                                                .valuesOf(answer.fact()
                                                                        .get())))
                                : Answer.unread(answer.item(), keys, State.AS_FOUND, answer.unread()));
            }
        }
        return Optional.of(both.build());
    }

    /** The visit with a number said for each kind that it does not count. */
    static Optional<Observations> counted(Observations observations, int number) {
        Observations.Builder builder = observations.toBuilder();
        boolean changed = false;
        for (Kind kind : observations.vocabulary().kinds()) {
            if (kind.isCounted() && observations.roster(kind.id()).equals(Roster.EMPTY) && number <= kind.most()) {
                builder.fitted(kind.id(), State.AS_FOUND, number);
                changed = true;
            }
        }
        return changed ? Optional.of(builder.build()) : Optional.empty();
    }

    /** Whether a scenario expects its card to be found for some subject. */
    static boolean finds(Scenario scenario) {
        return scenario.expect().values().stream().map(Expected::word).anyMatch(Word.FOUND::equals);
    }
}
