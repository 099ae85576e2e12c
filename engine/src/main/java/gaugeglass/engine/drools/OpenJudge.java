package gaugeglass.engine.drools;

import gaugeglass.engine.facts.Facts;
import gaugeglass.engine.facts.Missing;
import gaugeglass.engine.facts.Slot;
import gaugeglass.engine.observation.Subjects;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * The second judge: reads a rule's conditions with three values, so that what was not seen may be
 * anything.
 *
 * <p>An unseen slot is tried with every fact that may stand there, where those can be listed; the
 * same slot holds the same fact throughout one try. Where they cannot be listed it holds the
 * unknown, and a constraint that looks at it may be true. So a rule is ruled out only where no
 * possible answer could make it match.
 */
final class OpenJudge {
    /** Stands for a value that was not seen and cannot be listed. */
    private static final Object UNKNOWN = new Object();

    private final Program program;
    private final Facts facts;
    private final boolean structuralOnly;
    private final Object[] values;
    private final Slot[] used;
    private final Map<Slot, Object> tried = new IdentityHashMap<>();

    /** What may be or is, by subject. */
    final Map<String, Reach> reached = new HashMap<>();

    /** How far the rule got for one subject. */
    static final class Reach {
        /** The matches that need no further answer. */
        final List<Object[]> matches = new ArrayList<>();

        /** The answers on which another match hangs. */
        final Set<Missing> missing = new TreeSet<>();

        boolean isOpen;
    }

    private OpenJudge(Program program, Facts facts, boolean structuralOnly) {
        this.program = program;
        this.facts = facts;
        this.structuralOnly = structuralOnly;
        this.values = new Object[program.variables];
        this.used = new Slot[program.steps.length];
    }

    /** Reads one rule over everything that is or may be there. */
    static Map<String, Reach> read(Program program, Facts facts) {
        OpenJudge judge = new OpenJudge(program, facts, false);
        judge.step(0);
        return judge.reached;
    }

    /** Reads one rule as if only what is fitted were known. */
    static Map<String, Reach> readStructure(Program program, Facts facts) {
        OpenJudge judge = new OpenJudge(program, facts, true);
        judge.step(0);
        return judge.reached;
    }

    private void step(int number) {
        if (number == program.steps.length) {
            arrive();
            return;
        }
        Program.Step step = program.steps[number];
        Facts.Table table = facts.table(step.type());
        for (Slot slot : slots(step, table)) {
            used[number] = slot;
            if (slot.isKnown() && (!structuralOnly || slot.isStructural())) {
                hold(number, step, slot, slot.fact().orElseThrow());
                continue;
            }
            if (slot.isEmpty() && (!structuralOnly || slot.isStructural())) {
                continue;
            }
            Object already = tried.get(slot);
            if (already != null) {
                hold(number, step, slot, already);
                continue;
            }
            List<?> candidates = slot.candidates();
            if (candidates.isEmpty()) {
                hold(number, step, slot, UNKNOWN);
            } else {
                for (Object candidate : candidates) {
                    tried.put(slot, candidate);
                    hold(number, step, slot, candidate);
                }
                tried.remove(slot);
            }
        }
    }

    /** The slots that the pattern's first key lets in; a constraint tests that key all the same. */
    private Iterable<Slot> slots(Program.Step step, Facts.Table table) {
        if (step.join() >= 0 && values[step.join()] != UNKNOWN) {
            return table.of(values[step.join()]);
        }
        return step.literal().isEmpty() ? table.all() : table.of(step.literal());
    }

    private void hold(int number, Program.Step step, Slot slot, Object fact) {
        boolean unknown = fact == UNKNOWN;
        values[step.self()] = fact;
        // Before the bindings: a limit of another kind has no such value to bind.
        for (Program.Check check : step.checks()) {
            if (check.looksOnlyAt(step) && !mayHold(step, check, slot, unknown)) {
                return;
            }
        }
        for (Program.Bind bind : step.binds()) {
            if (!unknown) {
                values[bind.variable()] = bind.binding().eval(fact);
            } else {
                values[bind.variable()] = bind.isKey() ? bind.binding().eval(slot.witness()) : UNKNOWN;
            }
        }
        for (Program.Check check : step.checks()) {
            if (!check.looksOnlyAt(step) && !mayHold(step, check, slot, unknown)) {
                return;
            }
        }
        // What is fitted is read to tell the subjects that the rule could be about, and each but once.
        if (structuralOnly && number >= program.aboutStep && reached.containsKey(subject())) {
            return;
        }
        step(number + 1);
    }

    private String subject() {
        return program.about < 0 ? Subjects.UNIT : (String) values[program.about];
    }

    private boolean mayHold(Program.Step step, Program.Check check, Slot slot, boolean unknown) {
        if (unknown && !check.keysOnly()) {
            return true;
        }
        int[] inputs = check.inputs();
        Object[] taken = new Object[inputs.length];
        for (int i = 0; i < taken.length; i++) {
            Object value = values[inputs[i]];
            if (value == UNKNOWN) {
                if (inputs[i] != step.self()) {
                    return true;
                }
                value = slot.witness();
            }
            taken[i] = value;
        }
        return program.holds(check, taken);
    }

    private void arrive() {
        Reach reach = reached.computeIfAbsent(subject(), s -> new Reach());
        boolean certain = true;
        for (Slot slot : used) {
            certain &= slot.isKnown();
        }
        if (certain && !structuralOnly) {
            Object[] match = new Object[used.length];
            for (int i = 0; i < match.length; i++) {
                match[i] = used[i].fact().orElseThrow();
            }
            reach.matches.add(match);
            return;
        }
        reach.isOpen = true;
        if (!structuralOnly) {
            for (Slot slot : used) {
                reach.missing.addAll(slot.lacking());
            }
        }
    }
}
