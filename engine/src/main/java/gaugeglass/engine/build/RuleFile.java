package gaugeglass.engine.build;

import gaugeglass.engine.build.WrittenRule.WrittenBind;
import gaugeglass.engine.build.WrittenRule.WrittenPattern;
import gaugeglass.engine.text.Mistake;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drools.drl.ast.descr.BaseDescr;
import org.drools.drl.ast.descr.ExprConstraintDescr;
import org.drools.drl.ast.descr.PackageDescr;
import org.drools.drl.ast.descr.PatternDescr;
import org.drools.drl.ast.descr.RuleDescr;
import org.drools.drl.parser.DrlParser;
import org.drools.drl.parser.DroolsError;
import org.drools.drl.parser.DroolsParserException;
import org.kie.internal.builder.conf.LanguageLevelOption;

/** Reads a rule file into its rules; whatever is not conditions only is a mistake with its place. */
public final class RuleFile {
    private static final Pattern PLACE = Pattern.compile("Line \\d+:(\\d+)");
    private static final Pattern INPUT = Pattern.compile("input '([^']*)'");

    private final String file;
    private final List<Mistake> mistakes;

    private RuleFile(String file, List<Mistake> mistakes) {
        this.file = file;
        this.mistakes = mistakes;
    }

    public static List<WrittenRule> read(String file, String text, List<Mistake> mistakes) {
        return new RuleFile(file, mistakes).rules(text);
    }

    private List<WrittenRule> rules(String text) {
        DrlParser parser = new DrlParser(LanguageLevelOption.DRL6);
        PackageDescr descr;
        try {
            descr = parser.parse(false, text);
        } catch (DroolsParserException e) {
            wrong(0, "the rule file cannot be read: " + e.getMessage(), "");
            return List.of();
        }
        if (parser.hasErrors()) {
            for (DroolsError error : parser.getErrors()) {
                int[] lines = error.getLines();
                unreadable(firstLine(error.getMessage()), lines.length > 0 ? lines[0] : 0);
            }
            return List.of();
        }
        if (!descr.getImports().isEmpty()
                || !descr.getFunctions().isEmpty()
                || !descr.getGlobals().isEmpty()
                || !descr.getTypeDeclarations().isEmpty()
                || !descr.getFunctionImports().isEmpty()
                || !descr.getEnumDeclarations().isEmpty()
                || !descr.getAttributes().isEmpty()
                || !descr.getEntryPointDeclarations().isEmpty()
                || !descr.getWindowDeclarations().isEmpty()
                || !descr.getAccumulateImports().isEmpty()
                || descr.getNamespace() != null && !descr.getNamespace().isEmpty()
                || descr.getUnit() != null) {
            wrong(1, "a rule file holds rules only", "no package, import, function, global or declare");
        }
        List<WrittenRule> rules = new ArrayList<>();
        for (RuleDescr rule : descr.getRules()) {
            rules.add(rule(rule));
        }
        return rules;
    }

    /** What the parser says in its own words, as a place and what stands there. */
    private void unreadable(String said, int line) {
        Matcher place = PLACE.matcher(said);
        Matcher input = INPUT.matcher(said);
        mistakes.add(new Mistake(
                file,
                line,
                place.find() ? Integer.parseInt(place.group(1)) + 1 : 0,
                "",
                "the rule cannot be read from here on"
                        + (input.find() ? ": \"" + input.group(1) + "\" cannot stand here" : ""),
                "rule \"card / band\" when ... then end, a condition on each line such as Name( part == value ), and each"
                        + " bracket and quotation mark closed",
                ""));
    }

    private WrittenRule rule(RuleDescr rule) {
        int line = rule.getLine();
        String[] parts = rule.getName().split(" / ", -1);
        if (parts.length < 2 || parts.length > 3) {
            wrong(
                    line,
                    "\"" + rule.getName() + "\" does not name a card and a band",
                    "\"card / band\" or \"card / band / variant\"");
        }
        if (!rule.isRule()
                || !rule.getAttributes().isEmpty()
                || rule.getParentName() != null
                || !rule.getAnnotationNames().isEmpty()) {
            wrong(line, "\"" + rule.getName() + "\" carries an attribute", "a rule is conditions only");
        }
        if (!rule.getNamedConsequences().isEmpty()
                || rule.getConsequence() != null
                        && !rule.getConsequence().toString().isBlank()) {
            wrong(
                    line,
                    "\"" + rule.getName() + "\" does something in its \"then\"",
                    "nothing there: the match is the finding");
        }
        List<WrittenPattern> patterns = new ArrayList<>();
        for (BaseDescr descr : rule.getLhs().getDescrs()) {
            if (descr instanceof PatternDescr pattern
                    && pattern.getSource() == null
                    && pattern.getIdentifier() == null
                    && pattern.getBehaviors().isEmpty()
                    && !pattern.isQuery()
                    && pattern.getAnnotationNames().isEmpty()) {
                patterns.add(pattern(pattern));
            } else {
                wrong(
                        descr.getLine(),
                        "\"" + rule.getName() + "\" holds more than plain patterns",
                        "patterns only: no or, not, exists, from, eval, accumulate or forall");
            }
        }
        return new WrittenRule(
                parts[0], parts.length > 1 ? parts[1] : "", parts.length > 2 ? parts[2] : "", file, line, patterns);
    }

    private WrittenPattern pattern(PatternDescr pattern) {
        List<WrittenBind> binds = new ArrayList<>();
        List<String> constraints = new ArrayList<>();
        for (BaseDescr descr : pattern.getDescrs()) {
            if (!(descr instanceof ExprConstraintDescr constraint)
                    || constraint.getType() == ExprConstraintDescr.Type.POSITIONAL) {
                wrong(
                        pattern.getLine(),
                        "a constraint of " + pattern.getObjectType() + " is not understood",
                        "part == value");
                continue;
            }
            String text = constraint.getExpression().strip();
            int colon = text.indexOf(':');
            if (text.startsWith("$") && colon > 0) {
                binds.add(new WrittenBind(
                        text.substring(0, colon).strip(),
                        text.substring(colon + 1).strip()));
            } else {
                constraints.add(text);
            }
        }
        return new WrittenPattern(pattern.getObjectType(), pattern.getLine(), binds, constraints);
    }

    private void wrong(int line, String what, String expected) {
        mistakes.add(new Mistake(file, line, 0, "", what, expected, ""));
    }

    private static String firstLine(String text) {
        int end = text.indexOf('\n');
        return end < 0 ? text : text.substring(0, end);
    }
}
