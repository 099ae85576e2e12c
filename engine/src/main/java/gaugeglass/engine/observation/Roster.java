package gaugeglass.engine.observation;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * Which pieces of one kind of equipment were described, and how many were said to be fitted.
 *
 * @param asFound how many were fitted at arrival; empty where nobody said
 * @param asLeft how many are fitted at the end; empty where nobody said, and then it follows from
 *     the tags
 * @param tags those described, in order
 * @param unread why they could not be counted; empty where they were, or nobody tried
 */
public record Roster(OptionalInt asFound, OptionalInt asLeft, List<Tag> tags, String unread) {

    /** Nothing counted, nothing described. */
    public static final Roster EMPTY = new Roster(OptionalInt.empty(), OptionalInt.empty(), List.of(), "");

    public Roster {
        tags = List.copyOf(tags);
    }

    /**
     * One piece of equipment.
     *
     * @param name its tag, which stays the same over years
     * @param presence in which states it is there
     */
    public record Tag(String name, Presence presence) {}

    /** In which states a piece of equipment is there. */
    public enum Presence {
        THROUGHOUT,
        /** Taken out on the visit. */
        AS_FOUND,
        /** Put in on the visit. */
        AS_LEFT
    }

    /** The tags there in a state. */
    public List<String> tags(State state) {
        List<String> names = new ArrayList<>();
        for (Tag tag : tags) {
            if (tag.presence() == Presence.THROUGHOUT
                    || tag.presence() == (state == State.AS_FOUND ? Presence.AS_FOUND : Presence.AS_LEFT)) {
                names.add(tag.name());
            }
        }
        return names;
    }

    /** How many are fitted in a state; empty where it is not known. */
    public OptionalInt fitted(State state) {
        if (state == State.AS_FOUND || asFound.isEmpty() && asLeft.isEmpty()) {
            return asFound;
        }
        if (asLeft.isPresent()) {
            return asLeft;
        }
        return OptionalInt.of(asFound.getAsInt()
                - tags(State.AS_FOUND).size()
                + tags(State.AS_LEFT).size());
    }
}
