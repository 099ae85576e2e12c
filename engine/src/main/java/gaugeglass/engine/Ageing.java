package gaugeglass.engine;

import gaugeglass.engine.Assessment.Due;
import gaugeglass.engine.book.Limit;
import gaugeglass.engine.book.RuleEntry;
import gaugeglass.engine.drools.Verdict;
import gaugeglass.engine.facts.Facts;
import gaugeglass.engine.facts.Missing;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.vocabulary.Component;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The rules that come to be found by waiting: each holds one dated answer against one limit that is a span of time.
 *
 * <p>What is old enough, and which things a limit is for, is the rules' to say, and is not said here again. They are
 * read once for a day on which every span has passed: what is found then will be found some day. That day follows from
 * the dated answer and the limit that matched.
 */
final class Ageing {
    /** So far ahead that every span of time has passed. */
    private static final LocalDate WHEN_ALL_HAS_PASSED = LocalDate.of(9999, 12, 31);

    private final Rulebook rulebook;
    private final Set<RuleEntry> rules;
    private final Set<String> dated;
    private final List<Reckoning> reckonings;

    private Ageing(Rulebook rulebook, Set<RuleEntry> rules, Set<String> dated, List<Reckoning> reckonings) {
        this.rulebook = rulebook;
        this.rules = rules;
        this.dated = dated;
        this.reckonings = reckonings;
    }

    static Ageing of(Rulebook rulebook) {
        Vocabulary vocabulary = rulebook.vocabulary();
        // By identity: a rule's own hash looks at all its parts.
        Set<RuleEntry> rules = Collections.newSetFromMap(new IdentityHashMap<>());
        Set<String> dated = new HashSet<>();
        Set<String> needs = new HashSet<>();
        for (RuleEntry rule : rulebook.book().rules()) {
            List<String> dates = rule.needs().stream()
                    .filter(id -> vocabulary.item(id).filter(Ageing::isDate).isPresent())
                    .toList();
            long spans = rule.limits().stream()
                    .filter(id -> rulebook.book().limits().get(id).value() instanceof Period)
                    .count();
            if (dates.size() == 1
                    && spans == 1
                    && !rulebook.book().card(rule.card()).sign()) {
                rules.add(rule);
                dated.addAll(dates);
                needs.addAll(rule.needs());
            }
        }
        return new Ageing(rulebook, rules, dated, reckonings(rulebook, needs));
    }

    private static boolean isDate(ItemType item) {
        return item.values().size() == 1 && item.values().get(0).form() == Component.Form.DATE;
    }

    /** Those reckonings whose results the rules look at, and those that these rest on; in their order. */
    private static List<Reckoning> reckonings(Rulebook rulebook, Set<String> needs) {
        List<Reckoning> wanted = new ArrayList<>();
        List<Reckoning> all = rulebook.reckonings();
        Set<String> reached = new HashSet<>(needs);
        // One may rest on an earlier one only.
        for (int i = all.size() - 1; i >= 0; i--) {
            Reckoning reckoning = all.get(i);
            if (rulebook.vocabulary()
                    .item(reckoning.gives())
                    .filter(item -> reached.contains(item.id()))
                    .isPresent()) {
                wanted.add(0, reckoning);
                reckoning
                        .needs()
                        .forEach(need -> rulebook.vocabulary().item(need).ifPresent(item -> reached.add(item.id())));
            }
        }
        return wanted;
    }

    /** What falls due, by practice, subject and dated answer; of several bands of a practice the first to come. */
    List<Due> due(Observations observations) {
        Facts facts = Facts.of(
                observations,
                State.AS_LEFT,
                WHEN_ALL_HAS_PASSED,
                rulebook.book().allLimits(),
                reckonings);
        Map<List<String>, Due> first = new LinkedHashMap<>();
        for (Verdict verdict : rulebook.judges().ahead(facts, rules)) {
            due(verdict)
                    .ifPresent(due -> first.merge(
                            List.of(due.rule(), due.subject(), due.item()), due, (a, b) -> isBefore(b, a) ? b : a));
        }
        return List.copyOf(first.values());
    }

    private static boolean isBefore(Due one, Due other) {
        // A day that is known tells more than one that is not.
        return one.day().isPresent()
                && (other.day().isEmpty()
                        || one.day().get().isBefore(other.day().get()));
    }

    private Optional<Due> due(Verdict verdict) {
        String card = verdict.rule().card();
        if (verdict.outcome() == Verdict.Outcome.FOUND) {
            LocalDate since = LocalDate.MAX;
            String dating = "";
            String limit = "";
            Period span = Period.ZERO;
            // Several matches differ in what does not age.
            for (Object fact : verdict.evidence().get(0).facts()) {
                if (fact instanceof Limit one && one.value() instanceof Period period) {
                    limit = one.id();
                    span = period;
                } else if (fact instanceof Record record) {
                    Optional<ItemType> item =
                            rulebook.vocabulary().item(record.getClass()).filter(one -> dated.contains(one.id()));
                    if (item.isPresent()) {
                        since = (LocalDate) item.get().valuesOf(record).get(0);
                        dating = item.get().id();
                    }
                }
            }
            return Optional.of(new Due(
                    card,
                    verdict.subject(),
                    dating,
                    limit,
                    Optional.of(since),
                    Optional.of(firstDayPast(since, span))));
        }
        for (Missing missing : verdict.missing()) {
            if (dated.contains(missing.item())) {
                return Optional.of(new Due(
                        card,
                        verdict.subject(),
                        missing.item(),
                        spanOf(verdict.rule()),
                        Optional.empty(),
                        Optional.empty()));
            }
        }
        return Optional.empty();
    }

    private String spanOf(RuleEntry rule) {
        return rule.limits().stream()
                .filter(id -> rulebook.book().limits().get(id).value() instanceof Period)
                .findFirst()
                .orElseThrow();
    }

    /** The first day for which the other lies more than a span back; a month's end makes it more than an addition. */
    private static LocalDate firstDayPast(LocalDate since, Period span) {
        LocalDate day = since.plus(span);
        while (since.isBefore(day.minusDays(1).minus(span))) {
            day = day.minusDays(1);
        }
        while (!since.isBefore(day.minus(span))) {
            day = day.plusDays(1);
        }
        return day;
    }
}
