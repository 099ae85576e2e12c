package gaugeglass.engine.build;

import gaugeglass.engine.book.Band;
import gaugeglass.engine.book.Card;
import gaugeglass.engine.book.Limit;
import gaugeglass.engine.book.RuleEntry;
import gaugeglass.engine.build.WrittenRule.WrittenBind;
import gaugeglass.engine.build.WrittenRule.WrittenPattern;
import gaugeglass.engine.facts.Fitted;
import gaugeglass.engine.facts.Visit;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Nearest;
import gaugeglass.engine.vocabulary.Component;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.time.Period;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Checks written rules against vocabulary, cards and limits, and makes the index from them. */
final class RuleLint {
    private static final Pattern JOIN = Pattern.compile("(\\w+) == (\\$\\w+)");
    private static final Pattern LITERAL = Pattern.compile("(\\w+) == \"([^\"]*)\"");
    private static final Pattern TOKEN =
            Pattern.compile("\"[^\"]*\"|(?<![\\w.$])\\d[\\w.]*|\\.?\\s*\\$?[A-Za-z_]\\w*|\\S");
    private static final Pattern WORD = Pattern.compile("\\{(\\w+)\\}");
    private static final Set<String> PLAIN_NUMBERS = Set.of("0", "1");
    private static final Set<String> KEYWORDS =
            Set.of("in", "not", "matches", "contains", "memberOf", "true", "false", "null", "instanceof", "new");
    private static final Set<String> ALLOWED_KEYWORDS = Set.of("in", "not", "true", "false");

    /** The facts that every session has, by their simple name: class, key parts, other parts. */
    private record Type(String className, List<String> keys, List<String> values, Optional<ItemType> item) {}

    private final Vocabulary vocabulary;
    private final Map<String, Card> cards;
    private final Map<String, Limit> limits;
    private final List<Mistake> mistakes;
    private final Map<String, Type> types = new TreeMap<>();

    RuleLint(Vocabulary vocabulary, Map<String, Card> cards, Map<String, Limit> limits, List<Mistake> mistakes) {
        this.vocabulary = vocabulary;
        this.cards = cards;
        this.limits = limits;
        this.mistakes = mistakes;
        types.put("Visit", new Type(Visit.class.getName(), List.of(), List.of("date"), Optional.empty()));
        types.put(
                "Limit",
                new Type(
                        Limit.class.getName(),
                        List.of("id"),
                        List.of("quantity", "period", "number"),
                        Optional.empty()));
        types.put("Fitted", new Type(Fitted.class.getName(), List.of("kind"), List.of("number"), Optional.empty()));
        for (ItemType item : vocabulary.items()) {
            List<String> keys = new ArrayList<>();
            List<String> values = new ArrayList<>();
            item.components().forEach(c -> (c.key() ? keys : values).add(c.name()));
            types.put(simpleName(item), new Type(item.className(), keys, values, Optional.of(item)));
        }
    }

    static String simpleName(ItemType item) {
        String name = item.className();
        return name.substring(Math.max(name.lastIndexOf('.'), name.lastIndexOf('$')) + 1);
    }

    /** The index entries of sound rules; what is not sound is a mistake. */
    List<RuleEntry> entries(List<WrittenRule> rules) {
        List<RuleEntry> entries = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (WrittenRule rule : rules) {
            RuleEntry entry = entry(rule);
            if (!names.add(entry.name())) {
                wrong(
                        rule,
                        rule.line(),
                        "two rules are called \"" + entry.name() + "\"",
                        "a third part to tell them apart",
                        "");
            }
            entries.add(entry);
        }
        return entries;
    }

    private RuleEntry entry(WrittenRule rule) {
        Card card = cards.get(rule.card());
        if (card == null) {
            wrong(
                    rule,
                    rule.line(),
                    "\"" + rule.card() + "\" has no card",
                    "a card with that id",
                    near(rule.card(), cards.keySet()));
        } else if (card.band(rule.band()).isEmpty()) {
            wrong(
                    rule,
                    rule.line(),
                    "the card " + rule.card() + " has no band \"" + rule.band() + "\"",
                    "one of " + String.join(", ", card.bands().keySet()),
                    near(rule.band(), card.bands().keySet()));
        }
        Set<String> needs = new LinkedHashSet<>();
        Set<String> used = new LinkedHashSet<>();
        List<RuleEntry.Step> steps = new ArrayList<>();
        Map<String, Boolean> bound = new HashMap<>();
        String firstKey = "";
        for (WrittenPattern pattern : rule.patterns()) {
            Type type = types.get(pattern.type());
            if (type == null) {
                wrong(
                        rule,
                        pattern.line(),
                        "\"" + pattern.type() + "\" is no observation",
                        "an observation as the rules call it, Visit, Limit or Fitted",
                        near(pattern.type(), types.keySet()));
                continue;
            }
            type.item().ifPresent(item -> needs.add(item.id()));
            List<String> keyBinds = new ArrayList<>();
            for (WrittenBind bind : pattern.binds()) {
                part(rule, pattern, type, bind.part());
                if (bound.put(bind.variable(), true) != null) {
                    wrong(rule, pattern.line(), bind.variable() + " is bound twice", "a name of its own", "");
                }
                if (type.keys().contains(bind.part())) {
                    keyBinds.add(bind.variable());
                } else if (bind.variable().equals("$about")) {
                    wrong(rule, pattern.line(), "$about is bound to what was seen", "$about : which", "");
                }
            }
            StringBuilder checks = new StringBuilder();
            String join = "";
            String literal = "";
            for (String constraint : pattern.constraints()) {
                checks.append(looksAtKeysOnly(rule, pattern, type, constraint, bound.keySet()) ? 'k' : 'v');
                Matcher matcher = JOIN.matcher(constraint);
                if (matcher.matches()
                        && !type.keys().isEmpty()
                        && matcher.group(1).equals(type.keys().get(0))) {
                    join = matcher.group(2);
                }
                matcher = LITERAL.matcher(constraint);
                if (matcher.matches()
                        && !type.keys().isEmpty()
                        && matcher.group(1).equals(type.keys().get(0))) {
                    literal = matcher.group(2);
                }
            }
            if (type.className().equals(Limit.class.getName())) {
                limit(rule, pattern, used);
            }
            if (type.item().isPresent() && !type.keys().isEmpty()) {
                boolean bindsFirst = pattern.binds().stream()
                        .anyMatch(bind -> bind.part().equals(type.keys().get(0)));
                if (firstKey.isEmpty()) {
                    firstKey = type.item().get().kind();
                    if (!bindsFirst && join.isEmpty()) {
                        wrong(
                                rule,
                                pattern.line(),
                                pattern.type() + " does not say which one",
                                "$about : " + type.keys().get(0),
                                "");
                    }
                } else if (join.isEmpty()) {
                    wrong(
                            rule,
                            pattern.line(),
                            pattern.type() + " is not tied to the one the rule is about",
                            type.keys().get(0) + " == $about",
                            "");
                }
            }
            steps.add(new RuleEntry.Step(type.className(), checks.toString(), keyBinds, join, literal));
        }
        if (card != null) {
            about(rule, card, bound.containsKey("$about"));
            words(rule, card, bound.keySet());
        }
        return new RuleEntry(
                rule.card(),
                rule.band(),
                rule.variant(),
                rule.file(),
                rule.line(),
                List.copyOf(needs),
                List.copyOf(used),
                steps);
    }

    private void about(WrittenRule rule, Card card, boolean boundAbout) {
        Optional<Kind> kind = vocabulary.kind(card.about());
        boolean counted = kind.isPresent() && kind.get().isCounted();
        if (!card.about().isEmpty() && kind.isEmpty()) {
            wrong(
                    rule,
                    rule.line(),
                    "the card " + card.id() + " is about \"" + card.about() + "\", which is no kind",
                    "a kind of the vocabulary",
                    near(card.about(), vocabulary.kinds().stream().map(Kind::id).toList()));
        } else if (counted != boundAbout) {
            wrong(
                    rule,
                    rule.line(),
                    counted
                            ? "the card is about a " + card.about() + ", but the rule does not bind $about"
                            : "the rule binds $about, but its card is about the whole",
                    counted ? "$about : which" : "about: a kind on the card",
                    "");
        }
    }

    private void words(WrittenRule rule, Card card, Set<String> bound) {
        Optional<Band> band = card.band(rule.band());
        if (band.isEmpty()) {
            return;
        }
        Matcher matcher = WORD.matcher(band.get().seen(rule.variant()));
        while (matcher.find()) {
            if (!bound.contains("$" + matcher.group(1))) {
                wrong(
                        rule,
                        rule.line(),
                        "the card says {" + matcher.group(1) + "}, which this rule does not bind",
                        "$" + matcher.group(1) + " : a part",
                        near("$" + matcher.group(1), bound));
            }
        }
    }

    private void limit(WrittenRule rule, WrittenPattern pattern, Set<String> used) {
        Matcher matcher = Pattern.compile("id == \"([^\"]*)\"").matcher(String.join(", ", pattern.constraints()));
        if (pattern.constraints().size() != 1
                || !matcher.matches()
                || pattern.binds().size() != 1) {
            wrong(
                    rule,
                    pattern.line(),
                    "a Limit is not named plainly",
                    "Limit( id == \"its id\", $name : quantity )",
                    "");
            return;
        }
        String id = matcher.group(1);
        Limit limit = limits.get(id);
        if (limit == null) {
            wrong(
                    rule,
                    pattern.line(),
                    "\"" + id + "\" is no limit",
                    "a limit of the table",
                    near(id, limits.keySet()));
            return;
        }
        used.add(id);
        String fits =
                limit.value() instanceof Period ? "period" : limit.value() instanceof Integer ? "number" : "quantity";
        if (!pattern.binds().get(0).part().equals(fits)) {
            wrong(
                    rule,
                    pattern.line(),
                    "the limit " + id + " is read as a "
                            + pattern.binds().get(0).part(),
                    "$name : " + fits,
                    "");
        }
    }

    private boolean looksAtKeysOnly(
            WrittenRule rule, WrittenPattern pattern, Type type, String constraint, Set<String> bound) {
        boolean values = false;
        boolean keys = false;
        Matcher matcher = TOKEN.matcher(constraint);
        while (matcher.find()) {
            // A word brings the spaces before it along.
            String token = matcher.group().strip();
            char first = token.charAt(0);
            if (first == '"' || first == '.') {
                continue;
            }
            if (Character.isDigit(first)) {
                if (!PLAIN_NUMBERS.contains(token)) {
                    wrong(
                            rule,
                            pattern.line(),
                            "the number " + token + " stands in a rule",
                            "a limit of the table",
                            "");
                }
            } else if (first == '$') {
                if (!bound.contains(token)) {
                    wrong(rule, pattern.line(), token + " is not bound", "one of " + bound, near(token, bound));
                }
            } else if (Character.isLowerCase(first)) {
                if (KEYWORDS.contains(token)) {
                    if (!ALLOWED_KEYWORDS.contains(token)) {
                        wrong(
                                rule,
                                pattern.line(),
                                "\"" + token + "\" is not used in a rule",
                                "a plain comparison",
                                "");
                    }
                    continue;
                }
                part(rule, pattern, type, token);
                keys |= type.keys().contains(token);
                values |= !type.keys().contains(token);
            } else if (Character.isUpperCase(first) && !isConstant(type, constraint, matcher)) {
                wrong(
                        rule,
                        pattern.line(),
                        "\"" + constraint + "\" uses a word that is not one of the choices",
                        choices(type),
                        near(constant(constraint, matcher), constants(type)));
            }
        }
        return keys && !values;
    }

    /** Whether the name at the matcher is an enum of one of the type's parts, followed by one of its constants. */
    private static boolean isConstant(Type type, String constraint, Matcher matcher) {
        return constants(type).contains(constant(constraint, matcher));
    }

    /** The name that begins at the matcher. */
    private static String constant(String constraint, Matcher matcher) {
        String rest = constraint.substring(matcher.start()).strip();
        int end = 0;
        while (end < rest.length() && (Character.isJavaIdentifierPart(rest.charAt(end)) || rest.charAt(end) == '.')) {
            end++;
        }
        return rest.substring(0, end);
    }

    private static List<String> constants(Type type) {
        List<String> choices = new ArrayList<>();
        type.item().ifPresent(item -> item.components().forEach(component -> {
            if (component.form() == Component.Form.CHOICE) {
                String name = component.type();
                name = name.substring(Math.max(name.lastIndexOf('.'), name.lastIndexOf('$')) + 1);
                for (Object constant : item.constants(component)) {
                    choices.add(name + "." + ((Enum<?>) constant).name());
                }
            }
        }));
        return choices;
    }

    private static String choices(Type type) {
        List<String> choices = constants(type);
        return choices.isEmpty() ? "no choice here" : "one of " + String.join(", ", choices);
    }

    private void part(WrittenRule rule, WrittenPattern pattern, Type type, String part) {
        if (!type.keys().contains(part) && !type.values().contains(part)) {
            List<String> all = new ArrayList<>(type.keys());
            all.addAll(type.values());
            wrong(
                    rule,
                    pattern.line(),
                    "\"" + part + "\" is no part of " + pattern.type(),
                    "one of " + String.join(", ", all),
                    near(part, all));
        }
    }

    private static String near(String typed, Collection<String> known) {
        return Nearest.to(typed, known).orElse("");
    }

    private void wrong(WrittenRule rule, int line, String what, String expected, String nearest) {
        mistakes.add(new Mistake(
                rule.file(),
                line,
                0,
                RuleEntry.name(rule.card(), rule.band(), rule.variant()),
                what,
                expected,
                nearest));
    }
}
