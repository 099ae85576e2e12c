package gaugeglass.engine.pack;

import gaugeglass.engine.book.Book;
import gaugeglass.engine.book.StoredBook;
import gaugeglass.engine.history.Change;
import gaugeglass.engine.history.History;
import gaugeglass.engine.history.Release;
import gaugeglass.engine.history.Retired;
import gaugeglass.engine.history.Sort;
import gaugeglass.engine.history.Versions;
import gaugeglass.engine.text.Mistake;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What changed in a rulebook since the version that a pack was made for.
 *
 * @param pack the pack
 * @param here the version that is there
 * @param standing how the two stand to one another
 * @param touched what changed of that which the pack sets, words, waives, leaves out or looks at
 * @param rest everything else that changed
 */
public record Upgrade(Pack pack, String here, Standing standing, List<Change> touched, List<Change> rest) {
    /** How the version a pack was made for stands to the one that is there. */
    public enum Standing {
        /** They are the same. */
        SAME,
        /** It is an earlier one, and what changed is known. */
        EARLIER,
        /** It is a later one: this program cannot know what changed. */
        LATER,
        /** Nothing was recorded of it, as it was never released. */
        UNRECORDED
    }

    /** The messages that name an id which is not there. */
    private static final Pattern IS_NO =
            Pattern.compile("\"([^\"]+)\" is no (limit|check|item that is asked|observation|caution|remedy)\\b");

    public Upgrade {
        touched = List.copyOf(touched);
        rest = List.copyOf(rest);
    }

    /**
     * Compares.
     *
     * @param own what the pack has of its own, compiled; empty where it has nothing, or it could not be compiled
     * @param here the version of the rulebook that is there
     * @param history read only when the versions differ
     */
    public static Upgrade of(Pack pack, Optional<StoredBook> own, String here, History history) {
        String madeFor = pack.madeFor();
        if (madeFor.equals(here)) {
            return new Upgrade(pack, here, Standing.SAME, List.of(), List.of());
        }
        Optional<Release> then = history.release(madeFor);
        if (Versions.isVersion(madeFor) && Versions.isVersion(here) && Versions.compare(madeFor, here) > 0) {
            return new Upgrade(pack, here, Standing.LATER, List.of(), List.of());
        }
        if (then.isEmpty()) {
            return new Upgrade(pack, here, Standing.UNRECORDED, List.of(), List.of());
        }
        Map<Sort, Set<String>> ids = touched(pack, own);
        List<Change> touched = new ArrayList<>();
        List<Change> rest = new ArrayList<>();
        for (Change change : then.get().changesTo(history.here())) {
            (ids.get(change.sort()).contains(change.id()) ? touched : rest).add(change);
        }
        return new Upgrade(pack, here, Standing.EARLIER, touched, rest);
    }

    private static Map<Sort, Set<String>> touched(Pack pack, Optional<StoredBook> own) {
        Map<Sort, Set<String>> ids = new EnumMap<>(Sort.class);
        for (Sort sort : Sort.values()) {
            ids.put(sort, new TreeSet<>());
        }
        ids.get(Sort.LIMIT).addAll(pack.limits().settings().keySet());
        pack.wordings().forEach(one -> {
            ids.get(Sort.CHECK).add(one.card());
            ids.get(Sort.CAUTION).addAll(one.addCautions());
        });
        pack.urgencies().forEach(one -> ids.get(Sort.CHECK).add(one.card()));
        pack.waivers().forEach(one -> ids.get(Sort.CHECK).add(one.waiver().check()));
        pack.dropped().forEach(one -> ids.get(Sort.ITEM).add(one.item()));
        pack.settled().forEach(one -> ids.get(Sort.ITEM).add(one.item()));
        own.ifPresent(stored -> {
            Book book = stored.book();
            book.rules().forEach(rule -> {
                ids.get(Sort.CHECK).add(rule.card());
                ids.get(Sort.ITEM).addAll(rule.needs());
                ids.get(Sort.LIMIT).addAll(rule.limits());
            });
            book.cards().values().forEach(card -> {
                ids.get(Sort.CAUTION).addAll(card.cautions());
                ids.get(Sort.REMEDY).add(card.remedy());
            });
        });
        return ids;
    }

    /**
     * The same mistake, with what is known of the id it names where that was retired: whoever wrote it is not told of a
     * misspelt word then, but of what stands in its place.
     *
     * @param here the record of the rulebook that is there
     */
    public static Mistake explained(Mistake mistake, Release here) {
        Matcher named = IS_NO.matcher(mistake.what());
        if (!named.find()) {
            return mistake;
        }
        Sort sort =
                switch (named.group(2)) {
                    case "limit" -> Sort.LIMIT;
                    case "check" -> Sort.CHECK;
                    case "caution" -> Sort.CAUTION;
                    case "remedy" -> Sort.REMEDY;
                    default -> Sort.ITEM;
                };
        Optional<Retired> retired = here.retired(sort, named.group(1));
        return retired.map(one -> new Mistake(
                        mistake.file(),
                        mistake.line(),
                        mistake.column(),
                        mistake.where(),
                        mistake.what() + " any more: it was retired with version " + one.since() + ". " + one.why(),
                        one.replacement(),
                        ""))
                .orElse(mistake);
    }
}
