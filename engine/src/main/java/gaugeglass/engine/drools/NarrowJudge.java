package gaugeglass.engine.drools;

import gaugeglass.engine.facts.Facts;
import gaugeglass.engine.facts.Slot;
import gaugeglass.engine.facts.Visit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import org.drools.model.EntryPoint;
import org.drools.model.Global;
import org.drools.model.Model;
import org.drools.model.Query;
import org.drools.model.Rule;
import org.drools.model.TypeMetaData;

/**
 * The first judge for one visit: sessions over those rules only whose every pattern is passed by some fact. A rule with a
 * pattern that no fact passes cannot match, whatever its other patterns hold, so nothing is left out; and making the
 * network, which is most of a cold start, is spared for the rules that a sound visit has nothing for.
 *
 * <p>Where a single fact passes a pattern, what the pattern binds is known, and later conditions on it are tested too;
 * which facts belong together is the session's to say.
 */
final class NarrowJudge implements FirstJudge {
    private final List<Model> models;
    private final Executor helper;
    private final Map<String, Program> programs = new HashMap<>();
    private final Set<String> made = new HashSet<>();
    private List<CompletableFuture<SessionJudge>> sessions = List.of();

    /**
     * The first judge for one visit.
     *
     * @param programs the rules of these models
     * @param helper makes all parts of the network but the first
     */
    NarrowJudge(List<Model> models, List<Program> programs, Executor helper) {
        this.models = models;
        this.helper = helper;
        programs.forEach(program -> this.programs.put(program.rule.name(), program));
    }

    /** Makes and runs a small network, so that the engine's own classes are there when the visit's network is made. */
    static void warmUp(Model model) {
        List<Rule> few =
                model.getRules().subList(0, Math.min(2, model.getRules().size()));
        new SessionJudge(List.of(new Part(model, few))).tryOut(new Visit(LocalDate.EPOCH));
    }

    /** The sessions are kept, so that a second state of the same visit seldom needs others. */
    @Override
    public synchronized void matches(Facts facts, Map<String, List<Evidence>> matches) {
        Set<String> able = new HashSet<>();
        for (Program program : programs.values()) {
            if (mayMatch(program, facts)) {
                able.add(program.rule.name());
            }
        }
        if (sessions.isEmpty() || !made.containsAll(able)) {
            made.clear();
            made.addAll(able);
            sessions = sessions(able);
        }
        List<CompletableFuture<Map<String, List<Evidence>>>> all = new ArrayList<>();
        for (CompletableFuture<SessionJudge> session : sessions) {
            all.add(session.thenApply(one -> {
                Map<String, List<Evidence>> found = new LinkedHashMap<>();
                one.matches(facts, found);
                return found;
            }));
        }
        all.forEach(one -> matches.putAll(Judges.made(one)));
    }

    private List<CompletableFuture<SessionJudge>> sessions(Set<String> able) {
        List<CompletableFuture<SessionJudge>> parts = new ArrayList<>();
        for (Model model : models) {
            List<Rule> rules = new ArrayList<>();
            for (Rule rule : model.getRules()) {
                if (able.contains(rule.getName())) {
                    rules.add(rule);
                }
            }
            Executor where = parts.size() == models.size() - 1 ? Runnable::run : helper;
            parts.add(CompletableFuture.supplyAsync(() -> new SessionJudge(List.of(new Part(model, rules))), where));
        }
        return parts;
    }

    /** Whether each pattern of a rule is passed by some known fact. */
    static boolean mayMatch(Program program, Facts facts) {
        Object[] bound = new Object[program.variables];
        for (Program.Step step : program.steps) {
            Facts.Table table = facts.table(step.type());
            Object only = null;
            int passing = 0;
            for (Slot slot : step.literal().isEmpty() ? table.all() : table.of(step.literal())) {
                if (slot.isKnown() && passes(program, step, slot.fact().orElseThrow(), bound)) {
                    only = slot.fact().orElseThrow();
                    passing++;
                }
            }
            if (passing == 0) {
                return false;
            }
            if (passing == 1) {
                for (Program.Bind bind : step.binds()) {
                    bound[bind.variable()] = bind.binding().eval(only);
                }
            }
        }
        return true;
    }

    private static boolean passes(Program program, Program.Step step, Object fact, Object[] bound) {
        bound[step.self()] = fact;
        for (Program.Check check : step.checks()) {
            if (check.looksOnlyAt(step) && !program.holds(check, fact)) {
                return false;
            }
        }
        // Of this pattern itself nothing is bound yet: a limit of another kind has no such value to bind.
        for (Program.Check check : step.checks()) {
            if (!check.looksOnlyAt(step)) {
                Object[] taken = taken(check, bound);
                if (taken.length > 0 && !program.holds(check, taken)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** What a constraint takes; nothing where part of it is not known. */
    private static Object[] taken(Program.Check check, Object[] bound) {
        Object[] taken = new Object[check.inputs().length];
        for (int i = 0; i < taken.length; i++) {
            taken[i] = bound[check.inputs()[i]];
            if (taken[i] == null) {
                return new Object[0];
            }
        }
        return taken;
    }

    /** A compiled model with fewer rules. */
    record Part(Model whole, List<Rule> rules) implements Model {
        @Override
        public String getName() {
            return whole.getName();
        }

        @Override
        public String getPackageName() {
            return whole.getPackageName();
        }

        @Override
        @SuppressWarnings("rawtypes")
        public List<Global> getGlobals() {
            return whole.getGlobals();
        }

        @Override
        public List<Rule> getRules() {
            return rules;
        }

        @Override
        public List<Query> getQueries() {
            return whole.getQueries();
        }

        @Override
        public List<TypeMetaData> getTypeMetaDatas() {
            return whole.getTypeMetaDatas();
        }

        @Override
        public List<EntryPoint> getEntryPoints() {
            return whole.getEntryPoints();
        }
    }
}
