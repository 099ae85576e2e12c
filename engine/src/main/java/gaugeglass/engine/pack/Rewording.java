package gaugeglass.engine.pack;

import gaugeglass.engine.book.Band;
import gaugeglass.engine.book.Book;
import gaugeglass.engine.book.Card;
import gaugeglass.engine.book.Caution;
import gaugeglass.engine.book.PartWords;
import gaugeglass.engine.book.Remedy;
import gaugeglass.engine.book.RuleEntry;
import gaugeglass.engine.book.Urgency;
import gaugeglass.engine.book.Waiver;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Nearest;
import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Trade;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Words, urgencies, dropped items and waivers of packs, held against what no pack may touch. */
final class Rewording {
    private final Book book;
    private final Trade trade;
    private final Vocabulary vocabulary;
    private final List<Mistake> mistakes;
    private final Map<String, Card> cards;
    private final Map<String, Caution> cautions;
    private final Map<String, Remedy> remedies;

    /** By what was said, the pack that said it last. */
    private final Map<String, Said> said = new HashMap<>();

    private record Said(Pack pack, String text) {}

    Rewording(Book book, Trade trade, Vocabulary vocabulary, List<Mistake> mistakes) {
        this.book = book;
        this.trade = trade;
        this.vocabulary = vocabulary;
        this.mistakes = mistakes;
        this.cards = new LinkedHashMap<>(book.cards());
        this.cautions = new LinkedHashMap<>(book.cautions());
        this.remedies = new LinkedHashMap<>(book.remedies());
    }

    /** The book as it is after everything applied so far. */
    Book book() {
        return new Book(
                book.name(),
                book.version(),
                book.hash(),
                cards,
                book.limits(),
                cautions,
                remedies,
                book.diagnoses(),
                book.rules(),
                book.models(),
                book.replaced());
    }

    void apply(Pack pack) {
        String file = pack.files().place("cautions.yaml");
        pack.cautions().forEach((id, caution) -> {
            if (cautions.putIfAbsent(id, caution) != null) {
                mistakes.add(new Mistake(
                        file,
                        0,
                        0,
                        id,
                        "the rulebook has a caution of this id, which is not replaced",
                        "another id",
                        ""));
            }
            said(new Pack.Place(file, 0, 0, id), List.of(caution.title(), caution.text()));
        });
        pack.remedies().forEach((id, remedy) -> {
            if (remedies.putIfAbsent(id, remedy) != null) {
                mistakes.add(new Mistake(
                        pack.files().place("remedies.yaml"),
                        0,
                        0,
                        id,
                        "the rulebook has a line of work of this id",
                        "another id",
                        ""));
            }
            said(new Pack.Place(pack.files().place("remedies.yaml"), 0, 0, id), texts(remedy));
            Set<String> kinds = cards.values().stream()
                    .filter(card -> card.remedy().equals(id))
                    .map(Card::about)
                    .collect(Collectors.toSet());
            mistakes.addAll(PartWords.mistakes(pack.files().place("remedies.yaml"), remedy, vocabulary, kinds));
        });
        pack.wordings().forEach(words -> {
            agrees(pack, words.place(), words.card() + ", title", words.title());
            agrees(pack, words.place(), words.card() + ", why", words.why());
            agrees(pack, words.place(), words.card() + ", do", words.action());
            agrees(pack, words.place(), words.card() + ", not-when", words.notWhen());
            word(words);
        });
        pack.urgencies().forEach(change -> {
            agrees(
                    pack,
                    change.place(),
                    change.card() + " / " + change.band(),
                    change.urgency().word());
            urgency(change);
        });
    }

    /** Of two packs of one level neither is above the other, so they may not say different things of one. */
    private void agrees(Pack pack, Pack.Place place, String of, String text) {
        if (text.isEmpty()) {
            return;
        }
        Said before = said.put(of, new Said(pack, text));
        if (before != null
                && before.pack() != pack
                && before.pack().level() == pack.level()
                && !before.text().equals(text)) {
            mistakes.add(place.wrong(
                    pack.title() + " says \"" + text + "\" and " + before.pack().title() + " says \"" + before.text()
                            + "\" of " + of + "; both are of the level " + Words.of(pack.level())
                            + ", so neither is above the other",
                    "one of the two alone",
                    ""));
        }
    }

    private static List<String> texts(Remedy remedy) {
        List<String> texts = new ArrayList<>(List.of(remedy.work()));
        texts.addAll(remedy.parts());
        texts.addAll(remedy.takeAlong());
        return texts;
    }

    private Optional<Card> card(String id, Pack.Place place) {
        Card card = cards.get(id);
        if (card == null) {
            mistakes.add(place.wrong(
                    "\"" + id + "\" is no check",
                    "the id of a check",
                    Nearest.to(id, cards.keySet()).orElse("")));
        }
        return Optional.ofNullable(card);
    }

    private static boolean canStop(Card card) {
        return !card.sign() && card.worst() == Urgency.STOP;
    }

    private void said(Pack.Place place, List<String> texts) {
        Set<String> reasons = new LinkedHashSet<>();
        trade.neverSaid().forEach((pattern, why) -> {
            if (texts.stream().anyMatch(text -> pattern.matcher(text).find())) {
                reasons.add(why);
            }
        });
        reasons.stream().sorted().forEach(why -> mistakes.add(place.wrong(why, "other words", "")));
    }

    private void word(Pack.Wording words) {
        Optional<Card> found = card(words.card(), words.place());
        if (found.isEmpty()) {
            return;
        }
        Card card = found.get();
        said(words.place(), words.texts());
        boolean replaces = !words.title().isEmpty()
                || !words.why().isEmpty()
                || !words.action().isEmpty()
                || !words.notWhen().isEmpty();
        if (replaces && canStop(card)) {
            mistakes.add(words.place()
                    .wrong(
                            card.id() + " can forbid firing, so its words stand as they are",
                            "also-do or add-cautions, which add to them",
                            ""));
        }
        List<String> all = new ArrayList<>(card.cautions());
        for (String id : words.addCautions()) {
            if (!cautions.containsKey(id)) {
                mistakes.add(words.place()
                        .wrong(
                                "\"" + id + "\" is no caution",
                                "a caution of the rulebook, or of the pack's cautions.yaml",
                                Nearest.to(id, cautions.keySet()).orElse("")));
            } else if (!all.contains(id)) {
                all.add(id);
            }
        }
        String action = or(words.action(), card.action());
        cards.put(
                card.id(),
                card.withWords(
                        or(words.title(), card.title()),
                        or(words.why(), card.why()),
                        words.alsoDo().isEmpty() ? action : action + " " + words.alsoDo(),
                        all,
                        or(words.notWhen(), card.notWhen())));
    }

    private static String or(String text, String otherwise) {
        return text.isEmpty() ? otherwise : text;
    }

    private void urgency(Pack.Urgencies change) {
        Optional<Card> found = card(change.card(), change.place());
        if (found.isEmpty()) {
            return;
        }
        Card card = found.get();
        Optional<Band> band = card.band(change.band());
        if (card.sign() || band.isEmpty()) {
            mistakes.add(change.place()
                    .wrong(
                            card.sign()
                                    ? card.id() + " is only a sign, and has no urgency"
                                    : "\"" + change.band() + "\" is no band of " + card.id(),
                            "one of " + String.join(", ", card.bands().keySet()),
                            Nearest.to(change.band(), card.bands().keySet()).orElse("")));
            return;
        }
        if (band.get().urgency() == Urgency.STOP && change.urgency() != Urgency.STOP) {
            mistakes.add(change.place()
                    .wrong(
                            "it forbids firing, and no pack lowers that to "
                                    + change.urgency().word(),
                            "stop",
                            ""));
            return;
        }
        if (card.release() && band.get().urgency().isAbove(change.urgency())) {
            mistakes.add(change.place()
                    .wrong(
                            "release waits for " + card.id() + ", and no pack makes it less urgent",
                            band.get().urgency().word() + " or more urgent",
                            ""));
            return;
        }
        if (change.urgency() == Urgency.STOP && card.cautions().isEmpty()) {
            mistakes.add(change.place().wrong("a stop without a caution", "add-cautions in words.yaml", ""));
        }
        Map<String, Band> bands = new LinkedHashMap<>();
        Urgency above = Urgency.STOP;
        for (Band one : card.bands().values()) {
            Band now = one.name().equals(change.band())
                    ? new Band(one.name(), change.urgency(), one.seen(), one.variants())
                    : one;
            if (now.urgency().isAbove(above)) {
                mistakes.add(change.place()
                        .wrong(
                                "the band \"" + now.name() + "\" would be more urgent than the one before it",
                                above.word() + " or less urgent",
                                ""));
            }
            above = now.urgency();
            bands.put(now.name(), now);
        }
        cards.put(card.id(), card.withBands(java.util.Collections.unmodifiableMap(bands)));
    }

    List<Waiver> waivers(Pack pack) {
        List<Waiver> sound = new ArrayList<>();
        for (Pack.Waiving one : pack.waivers()) {
            Optional<Card> card = card(one.waiver().check(), one.place());
            if (card.isEmpty()) {
                continue;
            }
            if (canStop(card.get())
                    && card.get().bands().values().stream().allMatch(b -> b.urgency() == Urgency.STOP)) {
                mistakes.add(one.place().wrong(card.get().id() + " forbids firing, and that is never waived", "", ""));
            } else if (card.get().release()) {
                mistakes.add(one.place()
                        .wrong("release waits for " + card.get().id() + ", and that is never waived", "", ""));
            } else if (card.get().sign()) {
                mistakes.add(one.place().wrong(card.get().id() + " is only a sign, and is never found", "", ""));
            } else if (one.waiver().until().isAfter(one.waiver().from().plusYears(LONGEST_WAIVER))) {
                mistakes.add(one.place()
                        .wrong(
                                "it holds for more than " + LONGEST_WAIVER + " years",
                                "a day until " + one.waiver().from().plusYears(LONGEST_WAIVER),
                                ""));
            } else {
                sound.add(one.waiver());
            }
        }
        return sound;
    }

    /** A waiver that outlives this is a rule, and is to be made one. */
    private static final int LONGEST_WAIVER = 2;

    /** The items left unasked, with what is said of each. */
    Map<ItemType, String> dropped(Pack pack) {
        Map<ItemType, String> dropped = new LinkedHashMap<>();
        for (Pack.Dropped one : pack.dropped()) {
            Optional<ItemType> item = vocabulary.item(one.item()).filter(i -> !i.isReckoned());
            if (item.isEmpty()) {
                Collection<String> known = vocabulary.items().stream()
                        .filter(i -> !i.isReckoned())
                        .map(ItemType::id)
                        .toList();
                mistakes.add(one.place()
                        .wrong(
                                "\"" + one.item() + "\" is no item that is asked",
                                "the id of an item",
                                Nearest.to(one.item(), known).orElse("")));
                continue;
            }
            List<String> guarded = guarded(item.get());
            if (!guarded.isEmpty()) {
                mistakes.add(one.place()
                        .wrong(
                                one.item() + " is needed to know whether it may be fired or released: " + guarded.get(0)
                                        + (guarded.size() > 1 ? " and " + (guarded.size() - 1) + " more" : ""),
                                "an item that no stop and no release hangs on",
                                ""));
            } else if (vocabulary.kind(item.get().kind()).orElseThrow().isFixed()) {
                mistakes.add(one.place().wrong("a test of a fixed set cannot be dropped", "another item", ""));
            } else {
                dropped.put(item.get(), "not asked: " + one.why() + " (" + pack.title() + ")");
            }
        }
        return dropped;
    }

    /** The checks that can stop or hold release and look at an item, directly or through what is reckoned from it. */
    private List<String> guarded(ItemType item) {
        Set<String> tainted = new HashSet<>(Set.of(item.id()));
        for (Reckoning reckoning : trade.reckonings()) {
            boolean needs = reckoning.needs().stream().anyMatch(type -> vocabulary
                    .item(type)
                    .filter(i -> tainted.contains(i.id()))
                    .isPresent());
            if (needs) {
                vocabulary.item(reckoning.gives()).ifPresent(gives -> tainted.add(gives.id()));
            }
        }
        List<String> guarded = new ArrayList<>();
        for (RuleEntry rule : book.rules()) {
            Card card = cards.get(rule.card());
            if ((canStop(card) || card.release())
                    && rule.needs().stream().anyMatch(tainted::contains)
                    && !guarded.contains(card.id())) {
                guarded.add(card.id());
            }
        }
        return guarded;
    }
}
