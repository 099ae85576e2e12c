package gaugeglass.steam.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Rule files as the oracle reads them: taken apart by hand, so that no parser, compiler or index of the engine has a
 * part in it.
 */
final class DrlText {
    private static final Pattern RULE =
            Pattern.compile("rule\\s+\"([^\"]+)\"\\s+when\\s(.*?)\\sthen\\s+end", Pattern.DOTALL);
    private static final Pattern BIND = Pattern.compile("(\\$\\w+)\\s*:\\s*(\\w+)");
    private static final Pattern ONE_OF = Pattern.compile("([\\w$.]+)\\s+(not\\s+)?in\\s*\\(([^)]*)\\)");
    private static final Pattern WORD = Pattern.compile("\"[^\"]*\"|[.$]?[A-Za-z_]\\w*");
    private static final Set<String> PLAIN = Set.of("true", "false");

    private DrlText() {}

    /** One rule. */
    record ORule(String name, List<OPattern> patterns) {
        boolean isAbout() {
            return patterns.stream()
                    .anyMatch(p -> p.binds().stream().anyMatch(b -> b.variable().equals("$about")));
        }
    }

    /** One pattern; the constraints are rewritten for the expression library. */
    record OPattern(String type, List<OBind> binds, List<String> constraints) {}

    record OBind(String variable, String part) {}

    static List<ORule> read(String text) {
        String bare = text.replaceAll("(?m)//.*$", "");
        List<ORule> rules = new ArrayList<>();
        Matcher matcher = RULE.matcher(bare);
        while (matcher.find()) {
            rules.add(new ORule(matcher.group(1), patterns(matcher.group(2))));
        }
        return rules;
    }

    private static List<OPattern> patterns(String body) {
        List<OPattern> patterns = new ArrayList<>();
        int at = 0;
        while (true) {
            int open = body.indexOf('(', at);
            if (open < 0) {
                return patterns;
            }
            int close = open;
            int depth = 0;
            do {
                char c = body.charAt(close++);
                depth += c == '(' ? 1 : c == ')' ? -1 : 0;
            } while (depth > 0);
            patterns.add(pattern(body.substring(at, open).strip(), body.substring(open + 1, close - 1)));
            at = close;
        }
    }

    private static OPattern pattern(String type, String inside) {
        List<OBind> binds = new ArrayList<>();
        List<String> constraints = new ArrayList<>();
        for (String part : split(inside)) {
            Matcher bind = BIND.matcher(part);
            if (bind.matches()) {
                binds.add(new OBind(bind.group(1), bind.group(2)));
            } else if (!part.isEmpty()) {
                constraints.add(rewritten(part));
            }
        }
        return new OPattern(type, binds, constraints);
    }

    private static List<String> split(String inside) {
        List<String> parts = new ArrayList<>();
        int depth = 0;
        int from = 0;
        for (int i = 0; i <= inside.length(); i++) {
            char c = i == inside.length() ? ',' : inside.charAt(i);
            depth += c == '(' ? 1 : c == ')' ? -1 : 0;
            if (c == ',' && depth == 0) {
                parts.add(inside.substring(from, i).strip());
                from = i + 1;
            }
        }
        return parts;
    }

    /** "One of" written out, and parts marked, as some names of parts mean something to the expression library. */
    private static String rewritten(String constraint) {
        Matcher oneOf = ONE_OF.matcher(constraint);
        String plain = oneOf.replaceAll(found -> {
            List<String> equal = new ArrayList<>();
            for (String choice : found.group(3).split(",")) {
                equal.add(found.group(1) + " == " + choice.strip());
            }
            String any = "(" + String.join(" || ", equal) + ")";
            return Matcher.quoteReplacement(found.group(2) == null ? any : "!" + any);
        });
        return WORD.matcher(plain).replaceAll(found -> {
            String word = found.group();
            boolean part = Character.isLowerCase(word.charAt(0)) && !PLAIN.contains(word);
            return Matcher.quoteReplacement(part ? Oracle.PART + word : word);
        });
    }
}
