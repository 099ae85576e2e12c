package gaugeglass.engine.build;

import gaugeglass.engine.book.RuleEntry;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Trade;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What a rule stands on through what is reckoned for it. */
public final class Behind {
    private final Vocabulary vocabulary;
    private final List<Reckoning> all;

    public Behind(Vocabulary vocabulary, Trade trade) {
        this.vocabulary = vocabulary;
        this.all = List.copyOf(trade.reckonings());
    }

    /** The reckonings whose results a rule looks at, directly or through another one. */
    public List<Reckoning> reckonings(RuleEntry rule) {
        Set<String> wanted = new LinkedHashSet<>(rule.needs());
        List<Reckoning> behind = new ArrayList<>();
        // A reckoning uses only what stands before it in the list.
        for (int i = all.size() - 1; i >= 0; i--) {
            Reckoning reckoning = all.get(i);
            if (wanted.contains(vocabulary.item(reckoning.gives()).orElseThrow().id())) {
                behind.add(reckoning);
                reckoning.needs().forEach(type -> vocabulary.item(type).ifPresent(item -> wanted.add(item.id())));
            }
        }
        return behind;
    }

    /** The limits that a rule uses, by itself or through what is reckoned for it. */
    public Set<String> limits(RuleEntry rule) {
        Set<String> limits = new LinkedHashSet<>(rule.limits());
        reckonings(rule).forEach(reckoning -> limits.addAll(reckoning.limits()));
        return limits;
    }
}
