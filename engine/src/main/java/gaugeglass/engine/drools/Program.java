package gaugeglass.engine.drools;

import gaugeglass.engine.book.RuleEntry;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.drools.model.Binding;
import org.drools.model.Condition;
import org.drools.model.Consequence;
import org.drools.model.Constraint;
import org.drools.model.Pattern;
import org.drools.model.Rule;
import org.drools.model.SingleConstraint;
import org.drools.model.Variable;
import org.drools.model.functions.PredicateN;

/** One rule's compiled conditions, laid out for the second judge. */
final class Program {
    /** The variable that names a rule's subject. */
    static final String ABOUT = "$about";

    final RuleEntry rule;
    final Step[] steps;
    final int variables;

    /** The subject's variable; -1 where the rule is about the unit. */
    final int about;

    /** The number of the pattern that binds it; 0 where the rule is about the unit. */
    final int aboutStep;

    private Program(RuleEntry rule, Step[] steps, int variables, int about, int aboutStep) {
        this.rule = rule;
        this.steps = steps;
        this.variables = variables;
        this.about = about;
        this.aboutStep = aboutStep;
    }

    /** One pattern. Where the first key must equal a variable, {@code join} is its number, else -1. */
    record Step(Class<?> type, int self, Bind[] binds, Check[] checks, int join, String literal) {}

    /** One binding of a part of the pattern's fact to a variable. */
    record Bind(int variable, Binding binding, boolean isKey) {}

    /** One constraint; {@code inputs} are the variables it takes, in order. */
    record Check(PredicateN predicate, int[] inputs, boolean keysOnly, String text) {
        /** Whether it looks at the pattern's own fact and at nothing else. */
        boolean looksOnlyAt(Step step) {
            return inputs.length == 1 && inputs[0] == step.self();
        }
    }

    /**
     * Lays out a rule.
     *
     * @throws IllegalStateException when the rule holds anything but patterns joined by "and", or
     *     when the index does not fit it
     */
    static Program of(Rule rule, RuleEntry entry) {
        List<Pattern<?>> patterns = patterns(rule);
        if (patterns.size() != entry.steps().size()) {
            throw misfit(
                    rule,
                    "it has " + patterns.size() + " patterns, not "
                            + entry.steps().size());
        }
        Map<String, Integer> numbers = new HashMap<>();
        Step[] steps = new Step[patterns.size()];
        int aboutStep = 0;
        for (int i = 0; i < steps.length; i++) {
            boolean before = numbers.containsKey(ABOUT);
            steps[i] = step(rule, patterns.get(i), entry.steps().get(i), numbers);
            if (!before && numbers.containsKey(ABOUT)) {
                aboutStep = i;
            }
        }
        return new Program(entry, steps, numbers.size(), numbers.getOrDefault(ABOUT, -1), aboutStep);
    }

    /** The patterns of a rule, in order. */
    static List<Pattern<?>> patterns(Rule rule) {
        List<Pattern<?>> patterns = new ArrayList<>();
        patterns(rule, rule.getView(), patterns);
        return patterns;
    }

    private static Step step(Rule rule, Pattern<?> pattern, RuleEntry.Step indexed, Map<String, Integer> numbers) {
        Class<?> type = pattern.getPatternVariable().getType();
        if (!type.getName().equals(indexed.type())) {
            throw misfit(rule, "a pattern is over " + type.getName() + ", not " + indexed.type());
        }
        int self = number(numbers, pattern.getPatternVariable());
        List<Bind> binds = new ArrayList<>();
        for (Binding binding : pattern.getBindings()) {
            if (binding.getInputVariables().length > 1) {
                throw misfit(rule, "a binding takes more than the pattern's own fact");
            }
            Variable<?> bound = binding.getBoundVariable();
            binds.add(
                    new Bind(number(numbers, bound), binding, indexed.keyBinds().contains(bound.getName())));
        }
        List<SingleConstraint> constraints = new ArrayList<>();
        constraints(rule, pattern.getConstraint(), constraints);
        if (constraints.size() != indexed.checks().length()) {
            throw misfit(
                    rule,
                    "a pattern has "
                            + constraints.size()
                            + " constraints, not "
                            + indexed.checks().length());
        }
        Check[] checks = new Check[constraints.size()];
        for (int i = 0; i < checks.length; i++) {
            SingleConstraint constraint = constraints.get(i);
            Variable<?>[] taken = constraint.getVariables();
            int[] inputs = new int[taken.length];
            for (int j = 0; j < inputs.length; j++) {
                inputs[j] = number(numbers, taken[j]);
            }
            checks[i] = new Check(
                    constraint.getPredicate(), inputs, indexed.checks().charAt(i) == 'k', constraint.getExprId());
        }
        int join = indexed.join().isEmpty() ? -1 : numbers.get(indexed.join());
        return new Step(type, self, binds.toArray(new Bind[0]), checks, join, indexed.literal());
    }

    /** Whether a constraint is true of these values, in the order in which it takes them. */
    boolean holds(Check check, Object... taken) {
        try {
            return check.predicate().test(taken);
        } catch (RuntimeException e) {
            throw e;
        } catch (Exception e) {
            throw new IllegalStateException(
                    "a condition of \"" + rule.name() + "\" failed on " + Arrays.toString(taken), e);
        }
    }

    private static int number(Map<String, Integer> numbers, Variable<?> variable) {
        return numbers.computeIfAbsent(variable.getName(), name -> numbers.size());
    }

    private static void patterns(Rule rule, Condition condition, List<Pattern<?>> patterns) {
        if (condition instanceof Pattern<?> pattern) {
            patterns.add(pattern);
        } else if (condition.getType() == Condition.Type.AND) {
            condition.getSubConditions().forEach(sub -> patterns(rule, sub, patterns));
        } else if (!(condition instanceof Consequence) && condition.getType() != Condition.Type.CONSEQUENCE) {
            throw misfit(rule, "it holds \"" + condition.getType() + "\", which cannot be judged with answers missing");
        }
    }

    private static void constraints(Rule rule, Constraint constraint, List<SingleConstraint> all) {
        if (constraint == SingleConstraint.TRUE) {
            return;
        }
        if (constraint instanceof SingleConstraint single) {
            all.add(single);
        } else if (constraint.getType() == Constraint.Type.AND || constraint.getType() == Constraint.Type.MULTIPLE) {
            constraint.getChildren().forEach(child -> constraints(rule, child, all));
        } else {
            throw misfit(rule, "a pattern joins constraints by \"" + constraint.getType() + "\"");
        }
    }

    private static IllegalStateException misfit(Rule rule, String why) {
        return new IllegalStateException("the rule \"" + rule.getName() + "\" does not fit its index: " + why);
    }
}
