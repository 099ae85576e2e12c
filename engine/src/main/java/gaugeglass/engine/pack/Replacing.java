package gaugeglass.engine.pack;

import gaugeglass.engine.book.Basis;
import gaugeglass.engine.book.Book;
import gaugeglass.engine.book.Card;
import gaugeglass.engine.book.Clue;
import gaugeglass.engine.book.Diagnosis;
import gaugeglass.engine.book.Limit;
import gaugeglass.engine.book.RuleEntry;
import gaugeglass.engine.book.StoredBook;
import gaugeglass.engine.book.Urgency;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Trade;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** The checks in whose place packs put their own, held against what no pack may take away. */
final class Replacing {
    private final StoredBook standard;
    private final Book book;
    private final Trade trade;
    private final List<Pack> packs;
    private final List<Mistake> mistakes;

    /**
     * Readies it.
     *
     * @param standard the rulebook as it comes with the program
     * @param book the same with the packs' own checks in it and all limits in force: what a law set is a standard there
     * @param packs lowest first
     */
    Replacing(StoredBook standard, Book book, Trade trade, List<Pack> packs, List<Mistake> mistakes) {
        this.standard = standard;
        this.book = book;
        this.trade = trade;
        this.packs = packs;
        this.mistakes = mistakes;
    }

    void check() {
        for (Pack pack : packs) {
            for (Pack.Replaced one : pack.replaced()) {
                Card old = standard.book().cards().get(one.check());
                Card now = book.cards().get(one.check());
                if (old == null) {
                    mistakes.add(one.place()
                            .wrong(
                                    "the rulebook has no check called \"" + one.check()
                                            + "\", so there is nothing to replace",
                                    "the pack's check without a line in replaced.yaml",
                                    ""));
                } else if (now != null && now != old) {
                    refusal(pack, old, now)
                            .ifPresent(why -> mistakes.add(one.place()
                                    .wrong(why, "a check of the pack's own beside it, under another id", "")));
                }
            }
        }
    }

    /** Why a check stays as it is. */
    private Optional<String> refusal(Pack pack, Card old, Card now) {
        String id = old.id();
        if (!old.sign() && old.worst() == Urgency.STOP) {
            return Optional.of(id + " can forbid firing, so its rules stand as they are");
        }
        if (old.release()) {
            return Optional.of("release waits for " + id + ", so its rules stand as they are");
        }
        if (old.sign() || now.sign()) {
            return Optional.of(
                    old.sign()
                            ? id + " is a sign that causes are known by, so its rules stand as they are"
                            : id + " would be a sign, and never found");
        }
        if (old.basis() == Basis.STANDARD) {
            return Optional.of(id + " is what a standard asks, so its rules stand as they are");
        }
        Optional<Limit> set = limits(id).stream()
                .map(limit -> book.limits().get(limit))
                .filter(limit -> limit.basis() == Basis.STANDARD)
                .findFirst();
        if (set.isPresent()) {
            return Optional.of(id + " holds what was seen against " + set.get().id()
                    + ", which a standard or a law sets, so its" + " rules stand as they are");
        }
        Optional<Diagnosis> cause = standard.book().diagnoses().stream()
                .filter(diagnosis -> Stream.concat(diagnosis.points().stream(), diagnosis.against().stream())
                        .map(Clue::card)
                        .anyMatch(id::equals))
                .findFirst();
        if (cause.isPresent()) {
            return Optional.of(
                    id + " tells for or against the cause " + cause.get().id() + ", so its rules stand as they are");
        }
        if (!old.about().equals(now.about())) {
            return Optional.of(
                    id + " is about another kind of thing: \"" + old.about() + "\", not \"" + now.about() + "\"");
        }
        return packs.stream()
                .filter(other -> other != pack
                        && Stream.concat(
                                        other.urgencies().stream().map(Pack.Urgencies::card),
                                        other.wordings().stream().map(Pack.Wording::card))
                                .anyMatch(id::equals))
                .findFirst()
                .map(other -> other.title() + " has its own words or urgency for " + id + ", which " + pack.title()
                        + " cannot replace");
    }

    /** The limits that a check's rules in the rulebook use, themselves or through what is reckoned. */
    private Set<String> limits(String card) {
        Set<String> limits = new LinkedHashSet<>();
        Deque<String> items = new ArrayDeque<>();
        for (RuleEntry rule : standard.book().rules()) {
            if (rule.card().equals(card)) {
                limits.addAll(rule.limits());
                items.addAll(rule.needs());
            }
        }
        Set<String> seen = new HashSet<>();
        while (!items.isEmpty()) {
            String id = items.pop();
            if (seen.add(id)) {
                for (Reckoning reckoning : trade.reckonings()) {
                    boolean gives = item(reckoning.gives()).filter(id::equals).isPresent();
                    if (gives) {
                        limits.addAll(reckoning.limits());
                        items.addAll(items(reckoning.needs()));
                    }
                }
            }
        }
        return limits;
    }

    private List<String> items(Collection<Class<? extends Record>> types) {
        return types.stream().flatMap(type -> item(type).stream()).toList();
    }

    private Optional<String> item(Class<? extends Record> type) {
        return standard.vocabulary().item(type).map(ItemType::id);
    }
}
