package gaugeglass.engine.observation;

import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.ItemType;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * One answer: what was seen, or why it could not be read.
 *
 * @param item what was asked
 * @param keys the tag of the one it is about and, for a fixed kind, the member; empty for the unit
 *     and the site
 * @param state when on the visit it held
 * @param fact what was seen; empty where it could not be read
 * @param unread why it could not be read; empty where it was
 * @param note what the person added
 * @param photos names of pictures
 * @param at the time it was given, as typed; may be empty
 * @param typed the answer as it was written, or would be spoken where nobody was asked for it
 */
public record Answer(
        ItemType item,
        List<Object> keys,
        State state,
        Optional<Record> fact,
        String unread,
        String note,
        List<String> photos,
        String at,
        String typed) {
    public Answer {
        keys = List.copyOf(keys);
        photos = List.copyOf(photos);
    }

    /** An answer without a note. */
    public static Answer seen(ItemType item, List<Object> keys, State state, Record fact) {
        return new Answer(item, keys, state, Optional.of(fact), "", "", List.of(), "", "");
    }

    /** One that nobody was asked for, with where it comes from. */
    public static Answer told(ItemType item, List<Object> keys, State state, Record fact, String note) {
        String typed = item.valuesOf(fact).stream().map(Words::spoken).collect(Collectors.joining(", "));
        return new Answer(item, keys, state, Optional.of(fact), "", note, List.of(), "", typed);
    }

    /** Looked at, and not to be read. */
    public static Answer unread(ItemType item, List<Object> keys, State state, String reason) {
        return new Answer(item, keys, state, Optional.empty(), reason, "", List.of(), "", "");
    }

    /** What it is about, as one word: empty for the unit and the site. */
    public String subject() {
        return Subjects.of(keys);
    }
}
