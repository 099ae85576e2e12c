package gaugeglass.engine;

import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.Roster;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Telling;
import java.util.List;
import java.util.Optional;

/**
 * The answers that earlier visits' findings give. They stand in the place of what was typed: the findings are the
 * record itself, an answer about them is what somebody read in it.
 */
final class Told {
    private static final String NOTE = "told by what earlier visits found; the inspection says ";

    private Told() {}

    /** The observations with what is told; those without earlier findings as they are. */
    static Observations with(List<Telling> tellings, Observations observations) {
        if (observations.earlier().isEmpty()) {
            return observations;
        }
        Observations.Builder builder = observations.toBuilder();
        for (Telling telling : tellings) {
            ItemType item = observations.vocabulary().item(telling.gives()).orElseThrow();
            Kind kind = observations.vocabulary().kind(item.kind()).orElseThrow();
            List<Roster.Tag> tags =
                    kind.isCounted() ? observations.roster(kind.id()).tags() : List.of();
            List<String> names = tags.stream().map(Roster.Tag::name).toList();
            for (Record fact : telling.tell(observations.earlier().get(), names)) {
                List<Object> keys = item.keysOf(fact);
                String note = "";
                for (State state : State.values()) {
                    Optional<Answer> typed = observations.answer(item, keys, state);
                    typed.ifPresent(builder::without);
                    if (typed.flatMap(Answer::fact)
                            .filter(own -> !own.equals(fact))
                            .isPresent()) {
                        note = NOTE + typed.get().typed();
                    }
                }
                // What was put in on the visit has its answers as left.
                boolean putIn = tags.stream()
                        .anyMatch(tag -> keys.contains(tag.name()) && tag.presence() == Roster.Presence.AS_LEFT);
                builder.put(Answer.told(item, keys, putIn ? State.AS_LEFT : State.AS_FOUND, fact, note));
            }
        }
        return builder.build();
    }
}
