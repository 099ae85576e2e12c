package gaugeglass.cli.walk;

import gaugeglass.engine.Rulebook;
import gaugeglass.engine.book.Book;
import gaugeglass.engine.book.Card;
import gaugeglass.engine.book.RuleEntry;
import gaugeglass.engine.facts.Fitted;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which practices hang on which question, so that a question can say why it is asked. */
final class Why {
    private final Map<String, Set<String>> cardsByItem = new HashMap<>();
    private final Map<String, Set<String>> itemsByCard = new HashMap<>();
    private final Book book;

    Why(Rulebook rulebook) {
        this.book = rulebook.book();
        Vocabulary vocabulary = rulebook.vocabulary();
        for (RuleEntry rule : book.rules()) {
            Set<String> items = new LinkedHashSet<>();
            for (String need : rule.needs()) {
                vocabulary.item(need).ifPresent(item -> addAsked(rulebook, item, items));
            }
            for (RuleEntry.Step step : rule.steps()) {
                if (step.type().equals(Fitted.class.getName())
                        && !step.literal().isEmpty()) {
                    items.add(vocabulary.kind(step.literal()).orElseThrow().countId());
                }
            }
            for (String item : items) {
                cardsByItem.computeIfAbsent(item, i -> new LinkedHashSet<>()).add(rule.card());
            }
            itemsByCard.computeIfAbsent(rule.card(), c -> new LinkedHashSet<>()).addAll(items);
        }
    }

    /** The item itself where it is asked, or those behind it where it is worked out. */
    private static void addAsked(Rulebook rulebook, ItemType item, Set<String> items) {
        if (item.isReckoned()) {
            rulebook.workedOutFrom(item).forEach(from -> addAsked(rulebook, from, items));
        } else {
            items.add(item.id());
        }
    }

    /** What hangs on any of some answers, the most urgent first; signs are left out. */
    List<Card> cards(List<String> items) {
        List<Card> cards = new ArrayList<>();
        Set<String> ids = new LinkedHashSet<>();
        items.forEach(item -> ids.addAll(cardsByItem.getOrDefault(item, Set.of())));
        for (String id : ids) {
            if (!book.card(id).sign()) {
                cards.add(book.card(id));
            }
        }
        cards.sort(Comparator.comparing(Card::worst)
                .thenComparing(Card::consequence)
                .thenComparing(Card::id));
        return cards;
    }

    /** The questions behind a practice. */
    Set<String> items(String card) {
        return itemsByCard.getOrDefault(card, Set.of());
    }
}
