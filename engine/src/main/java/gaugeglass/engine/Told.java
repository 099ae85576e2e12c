package gaugeglass.engine;

import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.Roster;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Telling;
import java.util.ArrayList;
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
                // What was put in on the visit has its answers as left.
                boolean putIn = tags.stream()
                        .anyMatch(tag -> keys.contains(tag.name()) && tag.presence() == Roster.Presence.AS_LEFT);
                State state = putIn ? State.AS_LEFT : State.AS_FOUND;
                Optional<Answer> same = observations
                        .answer(item, keys, state)
                        .filter(typed -> typed.fact().filter(fact::equals).isPresent());
                List<String> others = new ArrayList<>();
                for (State one : State.values()) {
                    observations.answer(item, keys, one).ifPresent(typed -> {
                        builder.without(typed);
                        if (typed.fact().filter(own -> !own.equals(fact)).isPresent()) {
                            others.add(NOTE + typed.typed() + (typed.note().isEmpty() ? "" : ": " + typed.note()));
                        }
                    });
                }
                // Somebody's own answer says the same, and keeps what was noted beside it.
                builder.put(same.orElseGet(() -> Answer.told(item, keys, state, fact, String.join("; ", others))));
            }
        }
        return builder.build();
    }
}
