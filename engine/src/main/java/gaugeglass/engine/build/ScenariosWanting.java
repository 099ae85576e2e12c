package gaugeglass.engine.build;

import gaugeglass.engine.Assessment.Word;
import gaugeglass.engine.book.Card;
import gaugeglass.engine.book.RuleEntry;
import gaugeglass.engine.build.Scenario.Expected;
import gaugeglass.engine.build.ScenarioRunner.Came;
import gaugeglass.engine.build.ScenarioRunner.Ran;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Trade;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Tells which scenarios a card lacks before it is proven. */
public final class ScenariosWanting {
    /** So many ways of being fitted are tried before a card is believed to apply to all. */
    private static final int MOST_TRIED = 3000;

    private final ScenarioRunner runner;
    private final Vocabulary vocabulary;
    private final Behind behind;

    public ScenariosWanting(ScenarioRunner runner, Trade trade) {
        this.runner = runner;
        this.vocabulary = runner.rulebook().vocabulary();
        this.behind = new Behind(vocabulary, trade);
    }

    /**
     * What a card lacks, a sentence each.
     *
     * @param all every scenario of the rulebook, run
     */
    public List<String> of(Card card, Collection<Ran> all) {
        List<Ran> own = all.stream()
                .filter(ran -> ran.scenario().card().equals(card.id()))
                .toList();
        List<RuleEntry> rules = runner.rulebook().book().rules().stream()
                .filter(rule -> rule.card().equals(card.id()))
                .toList();
        List<String> lacking = new ArrayList<>();
        Set<String> limits = new LinkedHashSet<>();
        for (RuleEntry rule : rules) {
            limits.addAll(behind.limits(rule));
            if (own.stream().noneMatch(ran -> finds(ran, rule))) {
                lacking.add("found " + rule.band() + ", by the rule \"" + rule.name() + "\"");
            }
        }
        if (!has(own, Word.UNDETERMINED)) {
            lacking.add(Word.UNDETERMINED.word());
        }
        if (!has(own, Word.IN_ORDER) && rules.stream().anyMatch(this::canBeInOrder)) {
            lacking.add(Word.IN_ORDER.word());
        }
        if (!has(own, Word.NOT_APPLICABLE) && canBeNotApplicable(card, rules)) {
            lacking.add(Word.NOT_APPLICABLE.word());
        }
        for (String limit : limits) {
            if (own.stream().noneMatch(ran -> ran.scenario().onLimits().contains(limit))) {
                lacking.add("on-limit: " + limit);
            }
        }
        return lacking;
    }

    private static boolean finds(Ran ran, RuleEntry rule) {
        return ran.asLeft().entrySet().stream().anyMatch(entry -> {
            Came came = entry.getValue();
            Expected expected = ran.scenario()
                    .expect()
                    .getOrDefault(entry.getKey(), ran.scenario().expect().get(Scenario.ALL));
            return expected != null
                    && came.is(expected)
                    && came.band().equals(rule.band())
                    && came.rules().contains(rule.name());
        });
    }

    private static boolean has(List<Ran> own, Word word) {
        return own.stream()
                .anyMatch(ran -> ran.scenario().expect().values().stream().anyMatch(e -> e.word() == word));
    }

    /** Whether it looks at how something is doing, not only at what is fitted. */
    private boolean canBeInOrder(RuleEntry rule) {
        for (RuleEntry.Step step : rule.steps()) {
            boolean doing = vocabulary.items().stream()
                    .anyMatch(item -> item.className().equals(step.type()) && !item.isStructural());
            if (doing && step.checks().indexOf('v') >= 0) {
                return true;
            }
        }
        return false;
    }

    /** Whether some way of being fitted rules every one of the rules out. */
    private boolean canBeNotApplicable(Card card, List<RuleEntry> rules) {
        Set<ItemType> looked = new LinkedHashSet<>();
        for (RuleEntry rule : rules) {
            rule.needs().forEach(id -> looked.add(vocabulary.item(id).orElseThrow()));
            behind.reckonings(rule).forEach(reckoning -> reckoning
                    .needs()
                    .forEach(type -> vocabulary.item(type).ifPresent(looked::add)));
        }
        List<ItemType> structural = looked.stream()
                .filter(item -> item.isStructural() && !item.isReckoned() && item.isFinite())
                .filter(item -> !vocabulary.kind(item.kind()).orElseThrow().isFixed())
                .toList();
        if (structural.isEmpty()) {
            return false;
        }
        Observations.Builder start = Observations.of(vocabulary, "1");
        for (Kind kind : vocabulary.kinds()) {
            if (kind.isCounted()) {
                start.fitted(kind.id(), State.AS_FOUND, 1).tag(kind.id(), "A");
            }
        }
        List<Observations> tried = new ArrayList<>(List.of(start.build()));
        for (ItemType item : structural) {
            List<Object> keys = vocabulary.kind(item.kind()).orElseThrow().isCounted() ? List.of("A") : List.of();
            List<Record> answers = item.completions(keys);
            if (tried.size() * answers.size() > MOST_TRIED) {
                break;
            }
            List<Observations> next = new ArrayList<>();
            for (Observations one : tried) {
                for (Record answer : answers) {
                    next.add(one.toBuilder().seen(answer).build());
                }
            }
            tried = next;
        }
        for (Observations one : tried) {
            boolean none = runner
                    .came(
                            card.id(),
                            one,
                            ScenarioReader.USUAL_DAY,
                            State.AS_FOUND,
                            runner.rulebook().book().allLimits())
                    .values()
                    .stream()
                    .allMatch(came -> came.word() == Word.NOT_APPLICABLE);
            if (none) {
                return true;
            }
        }
        return false;
    }
}
