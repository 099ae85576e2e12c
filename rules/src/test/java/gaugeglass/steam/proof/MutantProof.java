package gaugeglass.steam.proof;

import gaugeglass.engine.Assessment.Word;
import gaugeglass.engine.book.Band;
import gaugeglass.engine.book.Book;
import gaugeglass.engine.book.Card;
import gaugeglass.engine.book.Limit;
import gaugeglass.engine.book.RuleEntry;
import gaugeglass.engine.build.Limits;
import gaugeglass.engine.build.RuleCompiler;
import gaugeglass.engine.build.RuleFile;
import gaugeglass.engine.build.RuleMutants;
import gaugeglass.engine.build.RuleMutants.Mutant;
import gaugeglass.engine.build.Scenario;
import gaugeglass.engine.build.Scenario.Expected;
import gaugeglass.engine.build.WrittenRule;
import gaugeglass.engine.facts.Facts;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Vocabulary;
import gaugeglass.steam.SteamTrade;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.drools.model.Rule;

/**
 * Breaks every rule in every small way and tells which broken rules no scenario notices.
 *
 * <p>A broken rule is noticed when, with it in place of the sound one, the card would be found where a scenario expects
 * it not to be, not be found where one expects it, or be found in another band.
 */
public final class MutantProof {
    /** So many rules are compiled at once: more take too much memory, fewer too much time. */
    private static final int BATCH = 400;

    private final Vocabulary vocabulary = SteamProof.stored().vocabulary();
    private final Book book = SteamProof.stored().book();
    private final List<Reckoning> reckonings = new SteamTrade().reckonings();
    private final Map<String, List<RuleEntry>> byCard =
            book.rules().stream().collect(Collectors.groupingBy(RuleEntry::card));
    private final Map<String, List<Proof>> proofs = new LinkedHashMap<>();
    private final Sessions sound = Sessions.of(
            Sessions.rules(book.models(), MutantProof.class.getClassLoader()).values());

    private int tried;
    private int batches;
    private final List<String> survivors = new ArrayList<>();
    private final List<String> uncompiled = new ArrayList<>();

    /** One state of one visit, with what must be found on it: a band for each subject, "" for none. */
    private record Proof(
            String card,
            Observations given,
            LocalDate date,
            State state,
            Facts facts,
            Map<String, Set<String>> found,
            Map<String, String> bands) {}

    /**
     * What came of it.
     *
     * @param tried how many mutants were run
     * @param survivors those that no scenario notices
     * @param uncompiled those that are no rules
     */
    public record Result(int tried, List<String> survivors, List<String> uncompiled) {}

    private MutantProof(Collection<Scenario> scenarios) {
        Map<String, List<Scenario>> scenariosByCard = new LinkedHashMap<>();
        scenarios.forEach(scenario -> scenariosByCard
                .computeIfAbsent(scenario.card(), c -> new ArrayList<>())
                .add(scenario));
        scenariosByCard.forEach((card, own) -> {
            List<Proof> all = new ArrayList<>();
            for (Scenario scenario : own) {
                all.add(proof(scenario, State.AS_LEFT));
                if (!scenario.expectAsFound().isEmpty()) {
                    all.add(proof(scenario, State.AS_FOUND));
                }
                composed(own, scenario, all);
            }
            proofs.put(card, all);
        });
    }

    /** Runs all mutants of those rules in these files whose name has the wanted text. */
    public static Result run(Map<String, String> texts, Collection<Scenario> scenarios, String wanted) {
        MutantProof proof = new MutantProof(scenarios);
        List<Mutant> mutants = new ArrayList<>();
        texts.forEach((name, text) -> {
            if (name.endsWith(".drl")) {
                for (WrittenRule rule : RuleFile.read(name, text, new ArrayList<>())) {
                    RuleMutants.of(rule).stream()
                            .filter(mutant -> mutant.of().contains(wanted))
                            .forEach(mutants::add);
                }
            }
        });
        for (int from = 0; from < mutants.size(); from += BATCH) {
            proof.batch(mutants.subList(from, Math.min(mutants.size(), from + BATCH)));
        }
        proof.book.rules().stream().filter(rule -> rule.name().contains(wanted)).forEach(proof::limits);
        return new Result(proof.tried, proof.survivors, proof.uncompiled);
    }

    private Proof proof(Scenario scenario, State state) {
        Proof proof = proof(scenario.card(), scenario.given(), scenario.date(), state);
        Map<String, String> bands = new HashMap<>();
        Map<String, Expected> expected = scenario.expected(state);
        Set<String> subjects = new TreeSet<>(subjects(scenario.card(), proof.facts()));
        for (String subject : subjects) {
            Expected one = expected.getOrDefault(subject, expected.get(Scenario.ALL));
            bands.put(subject, one != null && one.word() == Word.FOUND ? one.band() : "");
        }
        return new Proof(proof.card(), proof.given(), proof.date(), state, proof.facts(), proof.found(), bands);
    }

    /** A proof that expects what the sound rules find. */
    private Proof proof(String card, Observations given, LocalDate date, State state) {
        Facts facts = Facts.of(given, state, date, book.allLimits(), reckonings);
        Map<String, Set<String>> found = sound.matches(facts);
        Map<String, String> bands = new HashMap<>();
        for (String subject : subjects(card, facts)) {
            bands.put(subject, band(card, subject, found, "", Set.of()));
        }
        return new Proof(card, given, date, state, facts, found, bands);
    }

    /** A found scenario's equipment beside that of another, and counts of what was not counted. */
    private void composed(List<Scenario> own, Scenario scenario, List<Proof> all) {
        for (int number = 0; number < 3; number++) {
            Visits.counted(scenario.given(), number).ifPresent(given -> {
                Proof plain = proof(scenario, State.AS_LEFT);
                Proof counted = proof(scenario.card(), given, scenario.date(), State.AS_LEFT);
                if (counted.bands().equals(plain.bands())) {
                    all.add(counted);
                }
            });
        }
        if (!Visits.finds(scenario)) {
            return;
        }
        for (Scenario other : own) {
            if (other == scenario) {
                continue;
            }
            Optional<Observations> both = Visits.crossed(scenario, other);
            both.ifPresent(given -> {
                Proof crossed = proof(scenario.card(), given, scenario.date(), State.AS_LEFT);
                Map<String, String> apart =
                        new HashMap<>(proof(scenario, State.AS_LEFT).bands());
                proof(other, State.AS_LEFT)
                        .bands()
                        .forEach((subject, band) -> apart.put(subject.isEmpty() ? subject : subject + "'", band));
                // Where standing side by side makes a difference to the sound rules, nothing is proven.
                if (subjects(scenario.card(), crossed.facts()).stream()
                        .allMatch(subject -> crossed.bands().get(subject).equals(apart.get(subject)))) {
                    all.add(crossed);
                }
            });
        }
    }

    private List<String> subjects(String card, Facts facts) {
        String about = book.card(card).about();
        boolean counted =
                vocabulary.kind(about).filter(kind -> kind.isCounted()).isPresent();
        return counted ? facts.tags(about) : List.of("");
    }

    /** The highest band found for a subject, with one rule's subjects put in place of what it found. */
    private String band(
            String card, String subject, Map<String, Set<String>> found, String instead, Set<String> subjects) {
        Card own = book.card(card);
        List<String> order = List.copyOf(own.bands().keySet());
        Set<String> bands = new LinkedHashSet<>();
        for (RuleEntry rule : byCard.getOrDefault(card, List.of())) {
            Set<String> matched = rule.name().equals(instead) ? subjects : found.getOrDefault(rule.name(), Set.of());
            if (matched.contains(subject)) {
                bands.add(rule.band());
            }
        }
        return bands.stream()
                .map(name -> own.band(name).orElseThrow())
                .min(Comparator.comparing(Band::urgency).thenComparing(band -> order.indexOf(band.name())))
                .map(Band::name)
                .orElse("");
    }

    private boolean notices(Proof proof, String rule, Set<String> subjects) {
        Set<String> all = new TreeSet<>(subjects);
        all.addAll(proof.bands().keySet());
        for (String subject : all) {
            String wanted = proof.bands().getOrDefault(subject, "");
            if (!band(proof.card(), subject, proof.found(), rule, subjects).equals(wanted)) {
                return true;
            }
        }
        return false;
    }

    // ---- rules

    private void batch(List<Mutant> mutants) {
        Map<String, Mutant> named = new LinkedHashMap<>();
        for (Mutant mutant : mutants) {
            named.put("m" + named.size() + " / m", mutant);
        }
        List<Mistake> mistakes = new ArrayList<>();
        RuleCompiler.Compiled compiled = compile(named, mistakes);
        if (!mistakes.isEmpty()) {
            if (mutants.size() == 1) {
                uncompiled.add(mutants.get(0).title() + ": " + mistakes.get(0).what());
                return;
            }
            // Somewhere in it is one that is no rule: halve until it stands alone.
            batch(mutants.subList(0, mutants.size() / 2));
            batch(mutants.subList(mutants.size() / 2, mutants.size()));
            return;
        }
        ClassLoader loader = compiled.loader(MutantProof.class.getClassLoader());
        Map<String, Rule> rules = Sessions.rules(compiled.models(), loader);
        Map<String, List<String>> namesByCard = new LinkedHashMap<>();
        named.forEach((name, mutant) -> namesByCard
                .computeIfAbsent(mutant.rule().card(), c -> new ArrayList<>())
                .add(name));
        namesByCard.forEach((card, names) -> {
            Set<String> alive = new LinkedHashSet<>(names);
            try {
                hunt(card, names, named, rules, alive);
            } catch (RuntimeException oneOfThemFails) {
                // A condition that throws is noticed; find which.
                alive.addAll(names);
                for (String name : names) {
                    try {
                        hunt(card, List.of(name), named, rules, alive);
                    } catch (RuntimeException fails) {
                        alive.remove(name);
                    }
                }
            }
            tried += names.size();
            alive.forEach(name -> survivors.add(named.get(name).title()));
        });
    }

    private void hunt(
            String card, List<String> names, Map<String, Mutant> named, Map<String, Rule> rules, Set<String> alive) {
        Sessions sessions = Sessions.of(names.stream().map(rules::get).toList());
        for (Proof proof : proofs.getOrDefault(card, List.of())) {
            Map<String, Set<String>> matches = sessions.matches(proof.facts());
            for (String name : names) {
                if (alive.contains(name)
                        && notices(proof, named.get(name).of(), matches.getOrDefault(name, Set.of()))) {
                    alive.remove(name);
                }
            }
        }
    }

    private RuleCompiler.Compiled compile(Map<String, Mutant> named, List<Mistake> mistakes) {
        Map<String, String> texts = new LinkedHashMap<>();
        StringBuilder text = new StringBuilder();
        named.forEach((name, mutant) -> {
            WrittenRule rule = mutant.rule();
            text.append(new WrittenRule(
                            name.substring(0, name.indexOf(' ')), "m", "", rule.file(), rule.line(), rule.patterns())
                    .text());
        });
        texts.put("mutants.drl", text.toString());
        return RuleCompiler.compile("gaugeglass.steam.mutants" + batches++, vocabulary, texts, mistakes);
    }

    // ---- limits

    private void limits(RuleEntry rule) {
        for (String id : SteamProof.limitsBehind(rule)) {
            List<Limit> moved = Limits.moved(book.limits().get(id));
            for (int i = 0; i < moved.size(); i++) {
                tried++;
                if (!noticesLimit(rule, moved.get(i))) {
                    survivors.add(rule.name() + ": limit " + id + " one step " + (i == 0 ? "lower" : "higher"));
                }
            }
        }
    }

    private boolean noticesLimit(RuleEntry rule, Limit moved) {
        Map<String, Limit> limits = new LinkedHashMap<>(book.limits());
        limits.put(moved.id(), moved);
        for (Proof proof : proofs.getOrDefault(rule.card(), List.of())) {
            Facts facts = Facts.of(proof.given(), proof.state(), proof.date(), limits.values(), reckonings);
            Set<String> subjects = sound.matches(facts).getOrDefault(rule.name(), Set.of());
            if (notices(proof, rule.name(), subjects)) {
                return true;
            }
        }
        return false;
    }
}
