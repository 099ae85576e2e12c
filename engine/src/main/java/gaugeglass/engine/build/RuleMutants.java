package gaugeglass.engine.build;

import gaugeglass.engine.book.RuleEntry;
import gaugeglass.engine.build.WrittenRule.WrittenBind;
import gaugeglass.engine.build.WrittenRule.WrittenPattern;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Breaks a rule in every small way: a condition dropped, a pattern dropped, a comparison turned round or moved by its
 * boundary, "and" and "or" swapped. The scenarios of the card must notice each.
 */
public final class RuleMutants {
    private static final Pattern TOKEN = Pattern.compile("\"[^\"]*\"|<=|>=|==|!=|<|>|&&|\\|\\||\\bnot\\s+in\\b|\\bin\\b"
            + "|\\.isAbove\\b|\\.isBelow\\b|\\.isAtLeast\\b|\\.isAtMost\\b|\\.isBefore\\b|\\.isAfter\\b"
            + "|\\.minus\\b|\\.plus\\b");

    private static final Map<String, List<String>> CHANGES = Map.ofEntries(
            Map.entry("<", List.of(">=", "<=")),
            Map.entry("<=", List.of(">", "<")),
            Map.entry(">", List.of("<=", ">=")),
            Map.entry(">=", List.of("<", ">")),
            Map.entry("==", List.of("!=")),
            Map.entry("!=", List.of("==")),
            Map.entry("&&", List.of("||")),
            Map.entry("||", List.of("&&")),
            Map.entry("in", List.of("not in")),
            Map.entry("not in", List.of("in")),
            Map.entry(".isAbove", List.of(".isAtMost", ".isAtLeast")),
            Map.entry(".isBelow", List.of(".isAtLeast", ".isAtMost")),
            Map.entry(".isAtLeast", List.of(".isBelow", ".isAbove")),
            Map.entry(".isAtMost", List.of(".isAbove", ".isBelow")),
            Map.entry(".isBefore", List.of(".isAfter")),
            Map.entry(".isAfter", List.of(".isBefore")),
            Map.entry(".minus", List.of(".plus")),
            Map.entry(".plus", List.of(".minus")));

    private RuleMutants() {}

    /**
     * A broken rule.
     *
     * @param of the rule's name
     * @param change what was done to it, in words that no other change of the rule has
     * @param rule the rule as broken; it still bears the name of the sound one
     */
    public record Mutant(String of, String change, WrittenRule rule) {
        /** The rule's name and the change, as they stand in a list of survivors. */
        public String title() {
            return of + ": " + change;
        }
    }

    /** Every mutant of a rule. What names a limit is not broken: a rule that names none is refused anyway. */
    public static List<Mutant> of(WrittenRule rule) {
        List<Mutant> mutants = new ArrayList<>();
        for (int p = 0; p < rule.patterns().size(); p++) {
            WrittenPattern pattern = rule.patterns().get(p);
            if (pattern.type().equals("Limit")) {
                continue;
            }
            String where = pattern.type() + " " + (p + 1);
            if (rule.patterns().size() > 1 && !isBoundElsewhere(rule, p)) {
                List<WrittenPattern> patterns = new ArrayList<>(rule.patterns());
                patterns.remove(p);
                add(mutants, rule, "without the pattern " + where, patterns);
            }
            for (int c = 0; c < pattern.constraints().size(); c++) {
                String constraint = pattern.constraints().get(c);
                List<String> fewer = new ArrayList<>(pattern.constraints());
                fewer.remove(c);
                add(mutants, rule, where + " without " + constraint, p, fewer);
                for (String changed : changed(constraint)) {
                    List<String> other = new ArrayList<>(pattern.constraints());
                    other.set(c, changed);
                    add(mutants, rule, where + " with " + changed, p, other);
                }
            }
        }
        return mutants;
    }

    private static void add(List<Mutant> mutants, WrittenRule rule, String change, int p, List<String> constraints) {
        WrittenPattern pattern = rule.patterns().get(p);
        List<WrittenPattern> patterns = new ArrayList<>(rule.patterns());
        patterns.set(p, new WrittenPattern(pattern.type(), pattern.line(), pattern.binds(), constraints));
        add(mutants, rule, change, patterns);
    }

    private static void add(List<Mutant> mutants, WrittenRule rule, String change, List<WrittenPattern> patterns) {
        mutants.add(new Mutant(
                RuleEntry.name(rule.card(), rule.band(), rule.variant()),
                change,
                new WrittenRule(rule.card(), rule.band(), rule.variant(), rule.file(), rule.line(), patterns)));
    }

    /** Whether another pattern uses what this one binds, or the rule is about what this one binds. */
    private static boolean isBoundElsewhere(WrittenRule rule, int number) {
        for (WrittenBind bind : rule.patterns().get(number).binds()) {
            if (bind.variable().equals("$about")) {
                return true;
            }
            Pattern use = Pattern.compile(Pattern.quote(bind.variable()) + "(?!\\w)");
            for (int p = 0; p < rule.patterns().size(); p++) {
                if (p != number
                        && rule.patterns().get(p).constraints().stream()
                                .anyMatch(constraint -> use.matcher(constraint).find())) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The constraint with one operator changed, in every way. */
    private static List<String> changed(String constraint) {
        List<String> changed = new ArrayList<>();
        Matcher matcher = TOKEN.matcher(constraint);
        while (matcher.find()) {
            String token = matcher.group().replaceAll("\\s+", " ");
            for (String other : CHANGES.getOrDefault(token, List.of())) {
                changed.add(constraint.substring(0, matcher.start()) + other + constraint.substring(matcher.end()));
            }
        }
        return changed;
    }
}
