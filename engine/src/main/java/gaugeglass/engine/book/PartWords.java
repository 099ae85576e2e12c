package gaugeglass.engine.book;

import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Nearest;
import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.Component;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The words in braces in what a line of work needs: they stand for what was seen of the thing that the work is done
 * to. It is an item's id, or with an item of several values the id, a dot and the value's name.
 */
public final class PartWords {
    private static final Pattern PLACE = Pattern.compile("\\{([^{}]*)\\}");

    private PartWords() {}

    /**
     * What a place in braces stands for.
     *
     * @param item whose answer
     * @param value which of its values, from 0; all of them where it is -1
     */
    public record Place(ItemType item, int value) {}

    /** What words in braces stand for; nothing where they name no item, or no value of it. */
    public static Optional<Place> place(Vocabulary vocabulary, String name) {
        Optional<ItemType> whole = vocabulary.item(name);
        if (whole.isPresent()) {
            return Optional.of(new Place(whole.get(), -1));
        }
        int dot = name.lastIndexOf('.');
        Optional<ItemType> item = vocabulary.item(dot < 0 ? "" : name.substring(0, dot));
        if (item.isPresent()) {
            List<Component> values = item.get().values();
            for (int i = 0; i < values.size(); i++) {
                if (Words.hyphened(values.get(i).name()).equals(name.substring(dot + 1))) {
                    return Optional.of(new Place(item.get(), i));
                }
            }
        }
        return Optional.empty();
    }

    /**
     * Fills in what was seen.
     *
     * @param said gives the words for what stands in braces
     */
    public static String filled(String part, Function<String, String> said) {
        return PLACE.matcher(part).replaceAll(place -> Matcher.quoteReplacement(said.apply(place.group(1))));
    }

    /**
     * What is wrong with the words in braces of a line of work.
     *
     * @param file where it stands
     * @param vocabulary what can be seen
     * @param kinds the kinds that the cards which name this work are about; empty text for the unit
     */
    public static List<Mistake> mistakes(String file, Remedy remedy, Vocabulary vocabulary, Set<String> kinds) {
        List<Mistake> mistakes = new ArrayList<>();
        check(file, remedy, remedy.parts(), vocabulary, kinds, mistakes);
        // What is taken once belongs to no single thing.
        check(file, remedy, remedy.takeAlong(), vocabulary, Set.of(), mistakes);
        return mistakes;
    }

    private static void check(
            String file,
            Remedy remedy,
            List<String> texts,
            Vocabulary vocabulary,
            Set<String> kinds,
            List<Mistake> mistakes) {
        for (String text : texts) {
            Matcher places = PLACE.matcher(text);
            while (places.find()) {
                String name = places.group(1);
                Optional<Place> place = place(vocabulary, name);
                if (place.isEmpty()) {
                    List<String> known =
                            vocabulary.items().stream().map(ItemType::id).toList();
                    mistakes.add(new Mistake(
                            file,
                            0,
                            0,
                            remedy.id(),
                            "{" + name + "} is no observation",
                            "an item's id, or its id, a dot and the name of one of its values",
                            Nearest.to(name, known).orElse("")));
                } else if (!isKnownOf(place.get().item(), vocabulary, kinds)) {
                    mistakes.add(new Mistake(
                            file,
                            0,
                            0,
                            remedy.id(),
                            "{" + name + "} is not seen of what this work is done to",
                            "an item that is observed of the site, of the unit, or of what its findings are about",
                            ""));
                }
            }
            if (PLACE.matcher(text).replaceAll("").matches(".*[{}].*")) {
                mistakes.add(new Mistake(
                        file, 0, 0, remedy.id(), "a brace without its other half: " + text, "{an item's id}", ""));
            }
        }
    }

    private static boolean isKnownOf(ItemType item, Vocabulary vocabulary, Set<String> kinds) {
        Kind kind = vocabulary.kind(item.kind()).orElseThrow();
        boolean isOfAll = kind.equals(vocabulary.site()) || kind.equals(vocabulary.unit());
        return !item.isReckoned() && (isOfAll || kinds.contains(item.kind()));
    }
}
