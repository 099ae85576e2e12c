package gaugeglass.checklists;

import gaugeglass.engine.quantity.Dimension;
import gaugeglass.engine.vocabulary.ItemType;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One question of a checklist.
 *
 * @param id its name for good
 * @param gives the id of the observation that the answer is, or of the count of a kind
 * @param item the observation; empty where the question counts a kind
 * @param ask the question, in trade words
 * @param look how to look; may be empty
 * @param choices what each choice word means, by word; may be empty
 * @param take how the answer is taken where it is not simply typed
 * @param events for {@link Take#EVENTS}, the word of an event by the key that marks it; empty otherwise
 * @param readings for {@link Take#READINGS}, what is read against time where that is not the answer itself
 * @param caution the id of a caution shown at this step; empty where there is none
 * @param askWhen all of these must hold, else it is not asked
 * @param file the file it stands in
 * @param line its line there
 */
public record Question(
        String id,
        String gives,
        Optional<ItemType> item,
        String ask,
        String look,
        Map<String, String> choices,
        Take take,
        Map<String, String> events,
        Optional<Dimension> readings,
        String caution,
        List<AskWhen> askWhen,
        String file,
        int line) {

    /** How an answer is taken. */
    public enum Take {
        /** Typed, or chosen by its number. */
        TYPED,
        /** By keys pressed as things are heard, in order; the order makes the answer's word. */
        EVENTS,
        /** By readings typed one after another against time; the last one is the answer, or goes with it. */
        READINGS
    }

    public Question {
        events = Collections.unmodifiableMap(new LinkedHashMap<>(events));
        choices = Collections.unmodifiableMap(new LinkedHashMap<>(choices));
        askWhen = List.copyOf(askWhen);
    }

    /** The answer's word where nothing was heard. */
    static final String NOTHING_HEARD = "nothing";

    /** The answer's word for events, in the order in which each was heard first. */
    public static String heard(List<String> events) {
        return events.isEmpty()
                ? NOTHING_HEARD
                : events.size() == 1 ? events.get(0) + "-only" : String.join("-then-", events);
    }

    /** Whether it asks how many of a kind are fitted. */
    public boolean isCount() {
        return item.isEmpty();
    }

    /** The kind that it counts, or that its observation is about. */
    public String kind() {
        return item.map(ItemType::kind).orElseGet(() -> gives.substring(0, gives.indexOf('.')));
    }
}
