package gaugeglass.engine.pack;

import gaugeglass.engine.book.Book;
import gaugeglass.engine.book.Card;
import gaugeglass.engine.book.LaidOn;
import gaugeglass.engine.book.Limit;
import gaugeglass.engine.book.LimitLayer;
import gaugeglass.engine.book.LimitLayer.Level;
import gaugeglass.engine.book.RuleEntry;
import gaugeglass.engine.book.StoredBook;
import gaugeglass.engine.book.Waiver;
import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import gaugeglass.engine.text.Nearest;
import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.Component;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Trade;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Packs laid over a rulebook, lowest level first: what the rulebook says then, and what that does to an inspection.
 *
 * <p>All is laid on or nothing: a pack that may not say what it says is refused whole.
 */
public final class Tailoring {
    private static final Set<String> RESERVED = Set.of("standard", "gaugeglass", "none");

    private final StoredBook stored;
    private final List<Pack> packs;
    private final List<Answer> settled;
    private final List<Waiver> waivers;
    private final Map<ItemType, String> dropped;
    private final List<ItemType> added;

    private Tailoring(
            StoredBook stored,
            List<Pack> packs,
            List<Answer> settled,
            List<Waiver> waivers,
            Map<ItemType, String> dropped,
            List<ItemType> added) {
        this.stored = stored;
        this.added = List.copyOf(added);
        this.waivers = List.copyOf(waivers);
        this.dropped = dropped;
        this.packs = List.copyOf(packs);
        this.settled = List.copyOf(settled);
    }

    /**
     * Lays packs over a rulebook, lowest level first, and in the order given here within a level. Those of one level may not
     * contradict one another.
     *
     * @param trade the rulebook's trade
     * @param compiled by a pack's name, what it has of its own; its classes are in the loaders of their vocabularies
     * @throws Mistakes with everything that they may not say
     */
    public static Tailoring of(StoredBook standard, List<Pack> packs, Trade trade, Map<String, StoredBook> compiled) {
        List<Pack> ordered = new ArrayList<>(packs);
        ordered.sort(Comparator.comparing(Pack::level));
        List<Mistake> mistakes = new ArrayList<>();
        names(standard.book(), ordered, mistakes);
        if (!mistakes.isEmpty()) {
            throw new Mistakes(mistakes);
        }
        Book book = standard.book();
        Vocabulary vocabulary = standard.vocabulary();
        List<ItemType> added = new ArrayList<>();
        for (Pack pack : ordered) {
            StoredBook own = compiled.get(pack.name());
            if (own != null) {
                for (ItemType item : own.vocabulary().items()) {
                    if (standard.vocabulary().item(item.id()).isEmpty()) {
                        added.add(item);
                    }
                }
                book = joined(standard.book(), book, pack, own.book(), mistakes);
            }
            Set<String> checks = own == null ? Set.of() : own.book().cards().keySet();
            for (Pack.Replaced one : pack.replaced()) {
                if (!checks.contains(one.check())) {
                    mistakes.add(one.place()
                            .wrong(
                                    "the pack has no check of its own called \"" + one.check() + "\"",
                                    "a card and rules of this id in the pack",
                                    Nearest.to(one.check(), checks).orElse("")));
                }
            }
        }
        try {
            vocabulary = vocabulary.with(added);
        } catch (IllegalArgumentException e) {
            mistakes.add(
                    new Mistake("--pack", 0, 0, "", "two packs describe one observation: " + e.getMessage(), "", ""));
        }
        try {
            book = book.withLimits(LimitLayer.over(
                    book.limits(), ordered.stream().map(Pack::limits).toList()));
        } catch (Mistakes e) {
            mistakes.addAll(e.all());
        }
        List<Answer> settled = new ArrayList<>();
        Map<String, Pack> settledBy = new HashMap<>();
        Vocabulary known = vocabulary;
        for (Pack pack : ordered) {
            lawful(pack, mistakes);
            for (Pack.Settled one : pack.settled()) {
                settled(known, pack, one, mistakes).ifPresent(answer -> {
                    Optional<Answer> other = settled.stream()
                            .filter(before -> before.item().equals(answer.item()))
                            .findFirst();
                    Optional<Pack> by = Optional.ofNullable(settledBy.putIfAbsent(one.item(), pack));
                    if (by.isEmpty()) {
                        settled.add(answer);
                    } else if (by.get().equals(pack)) {
                        wrong(pack, one, one.item() + " is settled twice", "each once", "", mistakes);
                    } else if (!other.orElseThrow().fact().equals(answer.fact())) {
                        wrong(
                                pack,
                                one,
                                pack.title() + " says " + answer.typed() + " and "
                                        + by.get().title() + " says "
                                        + other.get().typed() + " of " + one.item(),
                                "one answer in both, or in one of them alone",
                                "",
                                mistakes);
                    }
                });
            }
        }
        new Replacing(standard, book, trade, ordered, mistakes).check();
        Rewording words = new Rewording(book, trade, vocabulary, mistakes);
        List<Waiver> waivers = new ArrayList<>();
        Map<ItemType, String> dropped = new LinkedHashMap<>();
        for (Pack pack : ordered) {
            words.apply(pack);
            waivers.addAll(words.waivers(pack));
            dropped.putAll(words.dropped(pack));
        }
        book = words.book();
        if (!mistakes.isEmpty()) {
            throw new Mistakes(mistakes);
        }
        return new Tailoring(
                new StoredBook(standard.trade(), vocabulary, book), ordered, settled, waivers, dropped, added);
    }

    /** By the id of a check that was replaced, the package in which its rules are compiled now. */
    public Map<String, String> replaced() {
        Map<String, String> all = new HashMap<>();
        for (Pack pack : packs) {
            pack.replaced().forEach(one -> all.put(one.check(), CompiledPack.packageOf(pack.name())));
        }
        return all;
    }

    /** The items that packs add, in their order. */
    public List<ItemType> added() {
        return added;
    }

    /** The waivers of all packs, in their order. */
    public List<Waiver> waivers() {
        return waivers;
    }

    /** The ids of the items that are not asked. */
    public Set<String> notAsked() {
        return dropped.keySet().stream().map(ItemType::id).collect(Collectors.toSet());
    }

    /** The book with a pack's own checks behind those that are there. */
    private static Book joined(Book standard, Book book, Pack pack, Book own, List<Mistake> mistakes) {
        Map<String, Card> cards = new LinkedHashMap<>(book.cards());
        Map<String, Limit> limits = new LinkedHashMap<>(book.limits());
        Map<String, String> replaced = new LinkedHashMap<>(book.replaced());
        Set<String> declared =
                pack.replaced().stream().map(Pack.Replaced::check).collect(Collectors.toSet());
        own.cards().forEach((id, card) -> {
            if (cards.put(id, card) == null) {
                return;
            }
            // Only what came with the program is replaced, and only once: a pack below has its reasons.
            if (!declared.contains(id) || !standard.cards().containsKey(id) || replaced.containsKey(id)) {
                mistakes.add(twice(pack, "check", id));
            } else {
                replaced.put(id, pack.title() + " " + pack.version());
            }
        });
        own.limits().forEach((id, limit) -> {
            if (limits.put(id, limit) != null) {
                mistakes.add(twice(pack, "limit", id));
            }
        });
        List<RuleEntry> rules = new ArrayList<>();
        for (RuleEntry rule : book.rules()) {
            if (!own.cards().containsKey(rule.card())) {
                rules.add(rule);
            }
        }
        rules.addAll(own.rules());
        List<String> models = new ArrayList<>(book.models());
        models.addAll(own.models());
        return new Book(
                book.name(),
                book.version(),
                book.hash(),
                cards,
                limits,
                book.cautions(),
                book.remedies(),
                book.diagnoses(),
                rules,
                models,
                replaced);
    }

    private static Mistake twice(Pack pack, String what, String id) {
        return new Mistake(
                pack.files().name(), 0, 0, id, "there is a " + what + " of this id below it", "an id of its own", "");
    }

    private static void names(Book book, List<Pack> packs, List<Mistake> mistakes) {
        Map<String, Pack> byName = new HashMap<>();
        for (Pack pack : packs) {
            String place = pack.files().place(PackFiles.MANIFEST);
            String own = slug(book.name());
            if (pack.name().equals(own) || slug(pack.title()).equals(own) || RESERVED.contains(pack.name())) {
                mistakes.add(new Mistake(
                        place,
                        0,
                        0,
                        "pack",
                        "\"" + (pack.name().equals(own) ? pack.name() : pack.title())
                                + "\" is the name of what comes with the program",
                        "a name of the pack's own",
                        ""));
            }
            Pack other = byName.putIfAbsent(pack.name(), pack);
            if (other != null) {
                mistakes.add(new Mistake(
                        place,
                        0,
                        0,
                        "pack",
                        other.files().hash().equals(pack.files().hash())
                                ? "the pack " + pack.name() + " is named twice"
                                : "there are two packs called " + pack.name() + ", the other in "
                                        + other.files().name(),
                        "each pack once",
                        ""));
            }
            if (!pack.tailors().equals(book.name())) {
                mistakes.add(new Mistake(
                        place,
                        0,
                        0,
                        "tailors",
                        "it is made for \"" + pack.tailors() + "\"",
                        book.name(),
                        Nearest.to(pack.tailors(), List.of(book.name())).orElse("")));
            }
        }
    }

    private static String slug(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    }

    /** What only a law can do. */
    private static void lawful(Pack pack, List<Mistake> mistakes) {
        if (pack.level() != Level.JURISDICTION) {
            return;
        }
        pack.limits().settings().forEach((id, setting) -> {
            if (setting.sources().isEmpty()) {
                mistakes.add(new Mistake(
                        pack.limits().file(),
                        setting.line(),
                        setting.column(),
                        "limits/" + id,
                        "it does not say by what document the jurisdiction sets this",
                        "sources: with a name, and how it is known",
                        ""));
            }
        });
    }

    private static Optional<Answer> settled(
            Vocabulary vocabulary, Pack pack, Pack.Settled one, List<Mistake> mistakes) {
        List<String> known = vocabulary.items().stream()
                .map(ItemType::id)
                .filter(id -> id.startsWith(Pack.REQUIRED))
                .toList();
        Optional<ItemType> item = vocabulary.item(one.item());
        if (pack.level() != Level.JURISDICTION) {
            wrong(
                    pack,
                    one,
                    "only a jurisdiction's pack settles what is required",
                    "level: jurisdiction",
                    "",
                    mistakes);
            return Optional.empty();
        }
        if (item.isEmpty() || !known.contains(one.item())) {
            wrong(
                    pack,
                    one,
                    item.isEmpty()
                            ? "\"" + one.item() + "\" is no observation"
                            : one.item() + " is seen at the equipment; no pack can answer it",
                    "one of " + String.join(", ", known),
                    Nearest.to(one.item(), known).orElse(""),
                    mistakes);
            return Optional.empty();
        }
        if (one.sources().isEmpty()) {
            wrong(
                    pack,
                    one,
                    "it does not say by what document",
                    "sources: with a name, and how it is known",
                    "",
                    mistakes);
        }
        Component part = item.get().values().get(0);
        for (Object constant : item.get().constants(part)) {
            if (Words.of((Enum<?>) constant).equals(one.answer())) {
                Record fact = item.get().make(List.of(), List.of(constant));
                String by = one.sources().isEmpty()
                        ? ""
                        : ": " + one.sources().get(0).name();
                String note = "settled by " + pack.title() + " " + pack.version() + by;
                return Optional.of(new Answer(
                        item.get(),
                        List.of(),
                        State.AS_FOUND,
                        Optional.of(fact),
                        "",
                        note,
                        List.of(),
                        "",
                        one.answer()));
            }
        }
        wrong(
                pack,
                one,
                "\"" + one.answer() + "\" is no answer to " + one.item(),
                "one of " + String.join(", ", part.choices()),
                Nearest.to(one.answer(), part.choices()).orElse(""),
                mistakes);
        return Optional.empty();
    }

    private static void wrong(
            Pack pack, Pack.Settled one, String what, String expected, String nearest, List<Mistake> mistakes) {
        mistakes.add(new Mistake(
                pack.files().place("settled.yaml"), one.line(), one.column(), "settled", what, expected, nearest));
    }

    /** The rulebook as it is with the packs laid over it. */
    public StoredBook stored() {
        return stored;
    }

    /** The packs, lowest first. */
    public List<Pack> packs() {
        return packs;
    }

    /** The text of a file of one of the packs, by the name that messages give it; empty where none has it. */
    public Optional<String> text(String place) {
        for (Pack pack : packs) {
            PackFiles files = pack.files();
            for (String name : files.names()) {
                if (files.place(name).equals(place)) {
                    return Optional.of(files.text(name));
                }
            }
        }
        return Optional.empty();
    }

    /** How they are named in results, lowest first. */
    public List<LaidOn> laidOn() {
        return packs.stream().map(Pack::laidOn).toList();
    }

    /**
     * What counts as observed with the packs laid over: a jurisdiction's answers about what is required stand in the place
     * of whatever the inspection says of it, with a note that tells so. Doing it twice changes nothing more.
     */
    public Observations observed(Observations observations) {
        if (settled.isEmpty() && dropped.isEmpty()) {
            return observations;
        }
        Observations.Builder builder = observations.toBuilder();
        dropped.forEach((item, why) -> {
            for (List<Object> keys : places(observations, item)) {
                if (!builder.has(item, keys, State.AS_FOUND)) {
                    builder.put(Answer.unread(item, keys, State.AS_FOUND, why));
                }
            }
        });
        for (Answer answer : settled) {
            String said = "";
            for (State state : State.values()) {
                Optional<Answer> own = observations.answer(answer.item(), List.of(), state);
                if (own.isPresent()) {
                    builder.without(own.get());
                    said = own.get().fact().equals(answer.fact())
                                    || own.get().typed().isEmpty()
                            ? said
                            : own.get().typed();
                }
            }
            builder.put(said.isEmpty() ? answer : withNote(answer, answer.note() + "; the inspection says " + said));
        }
        return builder.build();
    }

    private List<List<Object>> places(Observations observations, ItemType item) {
        Kind kind = stored.vocabulary().kind(item.kind()).orElseThrow();
        if (!kind.isCounted()) {
            return List.of(List.of());
        }
        List<List<Object>> places = new ArrayList<>();
        observations.roster(kind.id()).tags(State.AS_FOUND).forEach(tag -> places.add(List.of(tag)));
        return places;
    }

    private static Answer withNote(Answer answer, String note) {
        return new Answer(
                answer.item(),
                answer.keys(),
                answer.state(),
                answer.fact(),
                answer.unread(),
                note,
                answer.photos(),
                answer.at(),
                answer.typed());
    }
}
