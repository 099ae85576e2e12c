package gaugeglass.engine.drools;

import gaugeglass.engine.book.RuleEntry;
import gaugeglass.engine.facts.Facts;
import gaugeglass.engine.facts.Missing;
import gaugeglass.engine.observation.Subjects;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import java.util.concurrent.Future;
import java.util.function.Function;
import org.drools.model.Model;
import org.drools.model.Rule;

/**
 * Both judges over one set of compiled rules; immutable, and used by any number of threads at once.
 */
public final class Judges {
    private final CompletableFuture<Parts> parts;
    private final CompletableFuture<?> ready;

    private Judges(CompletableFuture<Parts> parts, CompletableFuture<?> ready) {
        this.parts = parts;
        this.ready = ready;
    }

    /** What the second judge reads, and the first judge. */
    private record Parts(List<Program> programs, FirstJudge first) {}

    /**
     * Takes up compiled rules, and is ready when it returns.
     *
     * @param models the names of their model classes
     * @param entries the index, in the order in which verdicts are wanted
     * @param loader where the classes are
     * @throws IllegalStateException when classes and index do not fit each other
     */
    public static Judges of(Collection<String> models, List<RuleEntry> entries, ClassLoader loader) {
        return of(models, entries, Map.of(), loader);
    }

    /**
     * The same, with some rules left out.
     *
     * @param replaced by the id of a card, the package whose rules of it count; all others of it are left out
     */
    public static Judges of(
            Collection<String> models, List<RuleEntry> entries, Map<String, String> replaced, ClassLoader loader) {
        List<Model> loaded = new ArrayList<>();
        models.forEach(name -> loaded.add(model(name, replaced, loader)));
        Parts parts = new Parts(programs(loaded, entries), new SessionJudge(loaded));
        return new Judges(CompletableFuture.completedFuture(parts), CompletableFuture.completedFuture(parts));
    }

    /**
     * Takes up compiled rules for one visit: the first judge's network is made when that visit's facts are known, and of
     * those rules only that they can match. What can be made ready before is made ready beside the caller.
     *
     * @param entries comes while the models are loaded
     * @param replaced by the id of a card, the package whose rules of it count; all others of it are left out
     * @param helper runs what goes on beside
     */
    public static Judges forOne(
            Collection<String> models,
            Future<List<RuleEntry>> entries,
            Map<String, String> replaced,
            ClassLoader loader,
            Executor helper) {
        CompletableFuture<Parts> parts = new CompletableFuture<>();
        CompletableFuture<Void> ready = CompletableFuture.runAsync(
                () -> {
                    try {
                        List<Model> loaded = new ArrayList<>();
                        models.forEach(name -> loaded.add(model(name, replaced, loader)));
                        List<Program> programs = programs(loaded, entries.get());
                        parts.complete(new Parts(programs, new NarrowJudge(loaded, programs, helper)));
                        NarrowJudge.warmUp(loaded.get(0));
                    } catch (RuntimeException | Error e) {
                        parts.completeExceptionally(e);
                        throw e;
                    } catch (InterruptedException | ExecutionException e) {
                        // Whoever was to give the index has failed, and says why.
                        parts.completeExceptionally(e);
                        throw new IllegalStateException("there is no index of the rules", e);
                    }
                },
                helper);
        return new Judges(parts, ready);
    }

    private static Model model(String name, Map<String, String> replaced, ClassLoader loader) {
        Model whole = model(name, loader);
        if (replaced.isEmpty()) {
            return whole;
        }
        List<Rule> rules = new ArrayList<>();
        for (Rule rule : whole.getRules()) {
            String card = rule.getName().substring(0, Math.max(0, rule.getName().indexOf(" / ")));
            Optional<String> owner = Optional.ofNullable(replaced.get(card));
            if (owner.isEmpty() || name.startsWith(owner.get() + ".")) {
                rules.add(rule);
            }
        }
        return rules.size() == whole.getRules().size() ? whole : new NarrowJudge.Part(whole, rules);
    }

    private static Model model(String name, ClassLoader loader) {
        try {
            return (Model)
                    Class.forName(name, true, loader).getDeclaredConstructor().newInstance();
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("the compiled rules " + name + " cannot be loaded", e);
        }
    }

    private static List<Program> programs(List<Model> models, List<RuleEntry> entries) {
        Map<String, Rule> rules = new HashMap<>();
        for (Model model : models) {
            model.getRules().forEach(rule -> rules.put(rule.getName(), rule));
        }
        List<Program> programs = new ArrayList<>(entries.size());
        for (RuleEntry entry : entries) {
            Rule rule = rules.remove(entry.name());
            if (rule == null) {
                throw new IllegalStateException("the rule \"" + entry.name() + "\" is indexed but not compiled");
            }
            programs.add(Program.of(rule, entry));
        }
        if (!rules.isEmpty()) {
            throw new IllegalStateException("rules are compiled but not indexed: " + rules.keySet());
        }
        return programs;
    }

    static <T> T made(CompletableFuture<T> making) {
        try {
            return making.join();
        } catch (CompletionException e) {
            throw new IllegalStateException(
                    "the rules cannot be made ready: " + e.getCause().getMessage(), e.getCause());
        }
    }

    /**
     * Judges every rule for every subject.
     *
     * @param facts what is and what may be there
     * @param about the counted kind that a card is about; empty text where it is about the unit
     * @return a verdict for each rule and subject, in the index's order, subjects in the roster's
     * @throws JudgesDisagree when the judges do not see the same matches
     */
    public List<Verdict> judge(Facts facts, Function<RuleEntry, String> about) {
        Parts made = made(parts);
        List<Program> programs = made.programs();
        List<Map<String, OpenJudge.Reach>> reached = new ArrayList<>(programs.size());
        for (Program program : programs) {
            reached.add(OpenJudge.read(program, facts));
        }
        Map<String, List<Evidence>> matches = new HashMap<>();
        made(ready);
        made.first().matches(facts, matches);
        List<Verdict> verdicts = new ArrayList<>();
        for (int i = 0; i < reached.size(); i++) {
            Program program = programs.get(i);
            List<Evidence> found = matches.getOrDefault(program.rule.name(), List.of());
            agree(program, found, reached.get(i));
            verdicts(program, facts, about.apply(program.rule), found, reached.get(i), verdicts);
        }
        return verdicts;
    }

    /**
     * Reads a few rules with the second judge alone, for a look ahead on which no verdict hangs.
     *
     * @param facts what is and what may be there
     * @param only the rules that are read, told apart as the objects of the index that they are
     * @return what was found, with the facts that matched and nothing bound, and what is open, in the index's order,
     *     subjects sorted; nothing of what is ruled out
     */
    public List<Verdict> ahead(Facts facts, Collection<RuleEntry> only) {
        List<Verdict> verdicts = new ArrayList<>();
        for (Program program : made(parts).programs()) {
            if (!only.contains(program.rule)) {
                continue;
            }
            new TreeMap<>(OpenJudge.read(program, facts)).forEach((subject, reach) -> {
                if (!reach.matches.isEmpty()) {
                    List<Evidence> evidence = new ArrayList<>();
                    reach.matches.forEach(match -> evidence.add(new Evidence(List.of(match), Map.of())));
                    verdicts.add(new Verdict(program.rule, subject, Verdict.Outcome.FOUND, evidence, List.of()));
                } else {
                    List<Missing> missing = List.copyOf(reach.missing);
                    verdicts.add(new Verdict(program.rule, subject, Verdict.Outcome.UNDETERMINED, List.of(), missing));
                }
            });
        }
        return verdicts;
    }

    private static void verdicts(
            Program program,
            Facts facts,
            String kind,
            List<Evidence> found,
            Map<String, OpenJudge.Reach> reached,
            List<Verdict> verdicts) {
        Map<String, List<Evidence>> bySubject = new HashMap<>();
        for (Evidence evidence : found) {
            bySubject
                    .computeIfAbsent(subject(program, evidence), s -> new ArrayList<>())
                    .add(evidence);
        }
        List<String> subjects = kind.isEmpty() ? List.of(Subjects.UNIT) : facts.tags(kind);
        int placed = 0;
        for (String subject : subjects) {
            placed += reached.containsKey(subject) ? 1 : 0;
        }
        if (placed != reached.size()) {
            throw new IllegalStateException(
                    "\"" + program.rule.name() + "\" is about " + reached.keySet() + ", not all of which is a " + kind);
        }
        if (subjects.isEmpty()) {
            verdicts.add(
                    new Verdict(program.rule, Subjects.UNIT, Verdict.Outcome.NOT_APPLICABLE, List.of(), List.of()));
            return;
        }
        Map<String, OpenJudge.Reach> structure = null;
        for (String subject : subjects) {
            OpenJudge.Reach reach = reached.get(subject);
            if (reach != null && !reach.matches.isEmpty()) {
                verdicts.add(
                        new Verdict(program.rule, subject, Verdict.Outcome.FOUND, bySubject.get(subject), List.of()));
            } else if (reach != null && reach.isOpen) {
                List<Missing> missing = List.copyOf(reach.missing);
                verdicts.add(new Verdict(program.rule, subject, Verdict.Outcome.UNDETERMINED, List.of(), missing));
            } else {
                if (structure == null) {
                    structure = OpenJudge.readStructure(program, facts);
                }
                verdicts.add(new Verdict(
                        program.rule,
                        subject,
                        structure.containsKey(subject) ? Verdict.Outcome.IN_ORDER : Verdict.Outcome.NOT_APPLICABLE,
                        List.of(),
                        List.of()));
            }
        }
    }

    private static String subject(Program program, Evidence evidence) {
        return program.about < 0 ? Subjects.UNIT : (String) evidence.bound().get(Program.ABOUT.substring(1));
    }

    /**
     * Every match of the session must be one of the second judge's certain ones, and the other way
     * round.
     */
    private static void agree(Program program, List<Evidence> found, Map<String, OpenJudge.Reach> reached) {
        int certain = 0;
        for (OpenJudge.Reach reach : reached.values()) {
            certain += reach.matches.size();
        }
        Set<Match> matches = new HashSet<>();
        for (Evidence evidence : found) {
            matches.add(new Match(evidence.facts().toArray()));
        }
        boolean agreed = matches.size() == found.size() && certain == found.size();
        for (OpenJudge.Reach reach : reached.values()) {
            for (Object[] match : reach.matches) {
                agreed &= matches.contains(new Match(match));
            }
        }
        if (!agreed) {
            throw new JudgesDisagree("the judges disagree on \"" + program.rule.name() + "\": one sees " + found.size()
                    + " matches, the other " + certain);
        }
    }

    /** The facts of one match; the same facts are the same match, however equal others may be. */
    private static final class Match {
        private final Object[] facts;

        Match(Object[] facts) {
            this.facts = facts;
        }

        @Override
        public boolean equals(Object other) {
            if (!(other instanceof Match match) || match.facts.length != facts.length) {
                return false;
            }
            for (int i = 0; i < facts.length; i++) {
                if (facts[i] != match.facts[i]) {
                    return false;
                }
            }
            return true;
        }

        @Override
        public int hashCode() {
            int hash = 1;
            for (Object fact : facts) {
                hash = 31 * hash + System.identityHashCode(fact);
            }
            return hash;
        }
    }
}
