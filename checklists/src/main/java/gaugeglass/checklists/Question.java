package gaugeglass.checklists;

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
        String caution,
        List<AskWhen> askWhen,
        String file,
        int line) {

    public Question {
        choices = Collections.unmodifiableMap(new LinkedHashMap<>(choices));
        askWhen = List.copyOf(askWhen);
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
