package gaugeglass.engine.build;

import gaugeglass.engine.book.RuleEntry;
import gaugeglass.engine.build.WrittenRule.WrittenBind;
import gaugeglass.engine.build.WrittenRule.WrittenPattern;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Nearest;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Tells whether the expressions of a rule are of the few forms that a pack may use: comparisons of parts of facts, bound
 * variables, choices and 0 or 1, with the few methods by which quantities, dates and periods are compared and moved. All
 * else is refused, whatever it is: there is no list of what is dangerous that could be too short.
 *
 * <p>The grammar: {@code alternatives := all ('||' all)*; all := one ('&&' one)*; one := '(' alternatives ')' | sum
 * ['not'] 'in' '(' sum (',' sum)* ')' | sum comparison sum | sum}, a sum being a name with calls behind it.
 */
final class AllowList {
    private static final Set<String> METHODS = Set.of(
            "minus", "plus", "abs", "isAbove", "isBelow", "isAtLeast", "isAtMost", "isBefore", "isAfter", "isEqual");
    private static final Set<String> COMPARISONS = Set.of("<", "<=", ">", ">=", "==", "!=");
    private static final Pattern PART = Pattern.compile("[a-z]\\w*");
    private static final Pattern VARIABLE = Pattern.compile("\\$[a-z]\\w*");
    private static final Pattern TOKEN = Pattern.compile(
            "\\s*(?:(\"[^\"\\\\{}]*\")|(\\$?[A-Za-z_]\\w*)|([01])(?![\\w.])|" + "(\\|\\||&&|<=|>=|==|!=|[<>(),.]))");

    private final List<Mistake> mistakes;
    private List<String> tokens = List.of();
    private int at;

    AllowList(List<Mistake> mistakes) {
        this.mistakes = mistakes;
    }

    /** Ends the reading of one expression. */
    private static final class Refused extends Exception {
        private static final long serialVersionUID = 1L;
        private final String near;

        Refused(String what, String near) {
            super(what, null, false, false);
            this.near = near;
        }
    }

    void check(List<WrittenRule> rules) {
        for (WrittenRule rule : rules) {
            for (WrittenPattern pattern : rule.patterns()) {
                for (WrittenBind bind : pattern.binds()) {
                    if (!VARIABLE.matcher(bind.variable()).matches()
                            || !PART.matcher(bind.part()).matches()) {
                        wrong(rule, pattern, bind.variable() + " : " + bind.part(), "more than a part is bound", "");
                    }
                }
                for (String constraint : pattern.constraints()) {
                    check(rule, pattern, constraint);
                }
            }
        }
    }

    private void check(WrittenRule rule, WrittenPattern pattern, String text) {
        try {
            tokens = tokens(text);
            at = 0;
            alternatives();
            if (at < tokens.size()) {
                throw new Refused("\"" + tokens.get(at) + "\" is not understood here", "");
            }
        } catch (Refused e) {
            wrong(rule, pattern, text, String.valueOf(e.getMessage()), e.near);
        }
    }

    private static List<String> tokens(String text) throws Refused {
        List<String> tokens = new ArrayList<>();
        Matcher matcher = TOKEN.matcher(text);
        int end = 0;
        String rest = text.stripTrailing();
        while (end < rest.length()) {
            matcher.region(end, rest.length());
            if (!matcher.lookingAt()) {
                throw new Refused(
                        "\"" + rest.substring(end).strip().substring(0, 1) + "\" may not stand in a rule", "");
            }
            tokens.add(matcher.group().strip());
            end = matcher.end();
        }
        return tokens;
    }

    private String peek() {
        return at < tokens.size() ? tokens.get(at) : "";
    }

    private boolean take(String token) {
        if (peek().equals(token)) {
            at++;
            return true;
        }
        return false;
    }

    private void need(String token) throws Refused {
        if (!take(token)) {
            throw new Refused(
                    peek().isEmpty()
                            ? "it ends too soon"
                            : "\"" + peek() + "\" stands where " + token + " was expected",
                    "");
        }
    }

    private void alternatives() throws Refused {
        do {
            all();
        } while (take("||"));
    }

    private void all() throws Refused {
        do {
            one();
        } while (take("&&"));
    }

    private void one() throws Refused {
        if (take("(")) {
            alternatives();
            need(")");
            return;
        }
        sum();
        boolean not = take("not");
        if (take("in")) {
            need("(");
            do {
                sum();
            } while (take(","));
            need(")");
        } else if (not) {
            need("in");
        } else if (COMPARISONS.contains(peek())) {
            at++;
            sum();
        }
    }

    private void sum() throws Refused {
        String first = peek();
        at++;
        if (first.startsWith("\"") || first.equals("0") || first.equals("1")) {
            return;
        }
        if (first.isEmpty() || !Character.isLetter(first.charAt(0)) && first.charAt(0) != '$') {
            throw new Refused(first.isEmpty() ? "it ends too soon" : "\"" + first + "\" is not understood here", "");
        }
        if (Character.isUpperCase(first.charAt(0))) {
            need(".");
            String constant = peek();
            if (!constant.matches("[A-Z][A-Z0-9_]*")) {
                throw new Refused("\"" + first + "." + constant + "\" is no choice", "");
            }
            at++;
            if (peek().equals(".") || peek().equals("(")) {
                throw new Refused("something is called on " + first + "." + constant, "");
            }
            return;
        }
        if (peek().equals("(")) {
            throw new Refused("\"" + first + "\" is called", "");
        }
        while (take(".")) {
            String method = peek();
            if (!METHODS.contains(method)) {
                throw new Refused(
                        "\"" + method + "\" may not be called or read in a pack's rule",
                        Nearest.to(method, METHODS).orElse(""));
            }
            at++;
            need("(");
            if (!take(")")) {
                do {
                    sum();
                } while (take(","));
                need(")");
            }
        }
    }

    private void wrong(WrittenRule rule, WrittenPattern pattern, String text, String what, String near) {
        mistakes.add(new Mistake(
                rule.file(),
                pattern.line(),
                0,
                RuleEntry.name(rule.card(), rule.band(), rule.variant()),
                what + ", in " + text.strip(),
                "comparisons of parts, limits and choices, with " + String.join(", ", new java.util.TreeSet<>(METHODS)),
                near));
    }
}
