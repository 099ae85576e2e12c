package gaugeglass.cli.pack;

import gaugeglass.engine.book.BookReader;
import gaugeglass.engine.book.Consequence;
import gaugeglass.engine.book.Limit;
import gaugeglass.engine.book.StoredBook;
import gaugeglass.engine.book.Urgency;
import gaugeglass.engine.build.Limits;
import gaugeglass.engine.build.OwnItems;
import gaugeglass.engine.build.ScenarioReader;
import gaugeglass.engine.pack.Pack;
import gaugeglass.engine.pack.PackFiles;
import gaugeglass.engine.pack.PackReader;
import gaugeglass.engine.reading.Form;
import gaugeglass.engine.reading.NodeReader;
import gaugeglass.engine.reading.SourceText;
import gaugeglass.engine.reading.TableReader;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import gaugeglass.engine.text.Nearest;
import gaugeglass.engine.vocabulary.Component;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Period;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A rule by form: one observation held against choices or a limit, written out as rule, card and scenarios into a pack, to be
 * read and edited there. The form itself is no part of the pack.
 */
public final class RuleForm {
    private static final List<String> COMPARISONS =
            List.of("is", "above", "below", "at-or-above", "at-or-below", "older-than");

    private final Vocabulary vocabulary;
    private final Map<String, Limit> limits;
    private final List<Mistake> mistakes;

    private RuleForm(Vocabulary vocabulary, Map<String, Limit> limits, List<Mistake> mistakes) {
        this.vocabulary = vocabulary;
        this.limits = limits;
        this.mistakes = mistakes;
    }

    /** What one form came to. */
    private record Written(String subject, String card, String rule, String cardText) {}

    /**
     * Writes rules into a pack's folder.
     *
     * @param file the form: YAML, or CSV with a row for each rule
     * @return what was written, to be shown
     */
    public static List<String> write(StoredBook standard, Path folder, Path file) throws IOException {
        PackFiles files = PackFiles.read(folder);
        if (!Files.isDirectory(folder)) {
            throw wrong(folder.toString(), "a rule is written into a pack's folder, and this is a zip", "a folder");
        }
        // The manifest alone: what else is in the pack may be half done.
        Pack pack = PackReader.read(
                PackFiles.of(files.name(), Map.of(PackFiles.MANIFEST, files.bytes(PackFiles.MANIFEST))),
                standard.vocabulary().unit().id());
        List<Mistake> mistakes = new ArrayList<>();
        Vocabulary vocabulary = OwnItems.described(standard.vocabulary(), files, pack.name());
        Map<String, Limit> limits = new LinkedHashMap<>(standard.book().limits());
        if (files.has("limits.yaml")) {
            String place = files.place("limits.yaml");
            Form form = Form.of(place, "", NodeReader.read(place, files.text("limits.yaml"), mistakes), mistakes);
            form.forms("own").forEach(one -> {
                Limit limit = BookReader.limit(one, pack.title());
                limits.put(limit.id(), limit);
            });
        }
        String name = file.toString();
        String text = SourceText.read(file);
        List<Form> forms = name.toLowerCase(Locale.ROOT).endsWith(".csv")
                ? TableReader.read(name, text, mistakes)
                : List.of(Form.of(name, "", NodeReader.read(name, text, mistakes), mistakes));
        RuleForm reader = new RuleForm(vocabulary, limits, mistakes);
        List<Written> all = new ArrayList<>();
        for (Form form : forms) {
            reader.read(form).ifPresent(all::add);
        }
        for (Written one : all) {
            for (String known : files.names()) {
                if (known.endsWith(".cards.yaml") && files.text(known).contains("id: " + one.card() + "\n")) {
                    mistakes.add(new Mistake(
                            files.place(known),
                            0,
                            0,
                            one.card(),
                            "there is a card of this id in the pack; it is changed there, not by form",
                            "",
                            ""));
                }
            }
        }
        if (!mistakes.isEmpty()) {
            throw new Mistakes(mistakes);
        }
        List<String> told = new ArrayList<>();
        for (Written one : all) {
            append(folder.resolve(one.subject() + ".drl"), "", one.rule());
            append(folder.resolve(one.subject() + ".cards.yaml"), "cards:\n", one.cardText());
            told.add("Into " + folder + "/" + one.subject() + ".drl:");
            one.rule().lines().forEach(line -> told.add("    " + line));
            told.add("Into " + folder + "/" + one.subject() + ".cards.yaml:");
            one.cardText().lines().forEach(line -> told.add("    " + line));
        }
        told.add("");
        told.add("Read it, change what is not as meant, then: gaugeglass pack try " + folder);
        return told;
    }

    private static void append(Path file, String head, String text) throws IOException {
        String before = Files.exists(file) ? Files.readString(file) : head;
        String gap = before.isEmpty() || before.endsWith("\n") ? "" : "\n";
        Files.writeString(file, before + gap + text);
    }

    private static Mistakes wrong(String where, String what, String expected) {
        return new Mistakes(List.of(new Mistake(where, 0, 0, "", what, expected, "")));
    }

    private static List<String> list(Form form, String key) {
        List<String> all = new ArrayList<>();
        // In a table several words stand in one cell.
        form.texts(key).forEach(text -> Arrays.stream(text.split("\\s*[|;,]\\s*"))
                .filter(word -> !word.isEmpty())
                .forEach(all::add));
        return all;
    }

    private Optional<ItemType> item(Form form, String key) {
        String id = form.text(key);
        Optional<ItemType> item = vocabulary.item(id);
        if (item.isEmpty() && !id.isEmpty()) {
            Collection<String> known =
                    vocabulary.items().stream().map(ItemType::id).toList();
            form.wrong(
                    key,
                    "\"" + id + "\" is no observation",
                    "an id of gaugeglass rulebook --items, or of the pack's observations.yaml",
                    Nearest.to(id, known).orElse(""));
        }
        if (item.isPresent()
                && (item.get().values().size() != 1
                        || vocabulary.kind(item.get().kind()).orElseThrow().isFixed())) {
            form.wrong(key, id + " has more than one answer, and no form for that", "a rule written as DRL", "");
            return Optional.empty();
        }
        return item;
    }

    private Optional<Written> read(Form form) {
        int had = mistakes.size();
        String id = form.text("rule");
        if (!id.isEmpty() && !id.matches("[a-z][a-z0-9-]*\\.[a-z][a-z0-9-]*")) {
            form.wrong("rule", "\"" + id + "\" is no id of a check", "subject.what-is-found", "");
        }
        String title = form.text("title");
        Optional<ItemType> item = item(form, "observation");
        List<String> used = COMPARISONS.stream().filter(form::has).toList();
        if (used.size() != 1) {
            form.wrong(
                    "observation",
                    used.isEmpty() ? "it is held against nothing" : "it is held against several things",
                    "one of " + String.join(", ", COMPARISONS),
                    "");
        }
        String how = used.isEmpty() ? "is" : used.get(0);
        List<String> words = list(form, how);
        Urgency urgency = form.word("urgency", Urgency.class, Urgency.PLAN);
        Consequence consequence = form.word("consequence", Consequence.class, Consequence.PLANT);
        for (String key : List.of("urgency", "consequence")) {
            if (!form.has(key)) {
                form.text(key);
            }
        }
        String why = form.text("why");
        String action = form.text("do");
        String notWhen = form.text("not-when", "Nothing is known yet that looks like it and is not.");
        List<String> cautions = list(form, "cautions");
        String remedy = form.text("remedy", "");
        Optional<ItemType> only = form.has("for") ? item(form, "for") : Optional.empty();
        List<String> onlyWords = list(form, "for-is");
        if (form.has("for") != !onlyWords.isEmpty()) {
            form.wrong("for", "\"for\" and \"for-is\" go together", "both, or neither", "");
        }
        form.close();
        if (item.isEmpty() || mistakes.size() > had) {
            return Optional.empty();
        }
        Component part = item.get().values().get(0);
        Optional<Limit> limit = Optional.empty();
        if (how.equals("is")) {
            choices(form, "is", item.get(), words);
        } else {
            limit = limit(form, how, words, part);
        }
        only.ifPresent(one -> {
            choices(form, "for-is", one, onlyWords);
            Kind kind = vocabulary.kind(one.kind()).orElseThrow();
            if (kind.isCounted() && !one.kind().equals(item.get().kind())) {
                form.wrong("for", one.id() + " is about another kind of thing", "an observation of the same thing", "");
            }
        });
        if (mistakes.size() > had) {
            return Optional.empty();
        }
        String subject = id.substring(0, id.indexOf('.'));
        String rule = rule(id, item.get(), how, words, limit, only, onlyWords, why);
        String card = card(
                id,
                title,
                item.get(),
                how,
                words,
                limit,
                only,
                onlyWords,
                urgency,
                consequence,
                why,
                action,
                notWhen,
                cautions,
                remedy);
        return Optional.of(new Written(subject, id, rule, card));
    }

    private void choices(Form form, String key, ItemType item, List<String> words) {
        Component part = item.values().get(0);
        if (part.form() != Component.Form.CHOICE) {
            form.wrong(
                    key, item.id() + " has no choices", "a limit: " + String.join(", ", COMPARISONS.subList(1, 6)), "");
            return;
        }
        for (String word : words) {
            if (!part.choices().contains(word)) {
                form.wrong(
                        key,
                        "\"" + word + "\" is no choice of " + item.id(),
                        "one of " + String.join(", ", part.choices()),
                        Nearest.to(word, part.choices()).orElse(""));
            }
        }
        if (words.containsAll(part.choices())) {
            form.wrong(key, "these are all its choices, so nothing is told apart", "some of them", "");
        }
    }

    private Optional<Limit> limit(Form form, String how, List<String> words, Component part) {
        String id = words.isEmpty() ? "" : words.get(0);
        Limit limit = limits.get(id);
        if (limit == null || words.size() > 1) {
            form.wrong(
                    how,
                    "\"" + String.join(" ", words) + "\" is no limit",
                    "an id of gaugeglass rulebook --limits, or of own: in the pack's limits.yaml",
                    Nearest.to(id, limits.keySet()).orElse(""));
            return Optional.empty();
        }
        boolean fits = how.equals("older-than")
                ? part.form() == Component.Form.DATE && limit.value() instanceof Period
                : part.form() == Component.Form.QUANTITY
                                && limit.value() instanceof gaugeglass.engine.quantity.Quantity quantity
                                && quantity.dimension() == part.unit().dimension()
                        || part.form() == Component.Form.COUNT && limit.value() instanceof Integer;
        if (!fits) {
            form.wrong(
                    how,
                    limit.id() + " (" + limit.written() + ") does not measure what is observed",
                    "another limit",
                    "");
        }
        return Optional.of(limit);
    }

    private static String record(String className) {
        return className.substring(Math.max(className.lastIndexOf('.'), className.lastIndexOf('$')) + 1);
    }

    private static String constants(ItemType item, List<String> words) {
        Component part = item.values().get(0);
        String type = record(part.type());
        List<String> all = words.stream()
                .map(word -> type + "." + word.replace('-', '_').toUpperCase(Locale.ROOT))
                .toList();
        return all.size() == 1
                ? part.name() + " == " + all.get(0)
                : part.name() + " in (" + String.join(", ", all) + ")";
    }

    private String rule(
            String id,
            ItemType item,
            String how,
            List<String> words,
            Optional<Limit> limit,
            Optional<ItemType> only,
            List<String> onlyWords,
            String why) {
        boolean counted = vocabulary.kind(item.kind()).orElseThrow().isCounted();
        Component part = item.values().get(0);
        StringBuilder text =
                new StringBuilder("\n// ").append(why.replaceAll("\\s+", " ")).append('\n');
        text.append("rule \"").append(id).append(" / found\"\nwhen\n");
        if (how.equals("older-than")) {
            text.append("    Visit( $today : date )\n");
        }
        limit.ifPresent(one -> text.append("    Limit( id == \"")
                .append(one.id())
                .append("\", $limit : ")
                .append(
                        one.value() instanceof Period
                                ? "period"
                                : one.value() instanceof Integer ? "number" : "quantity")
                .append(" )\n"));
        boolean bound = false;
        if (only.isPresent()) {
            boolean same = vocabulary.kind(only.get().kind()).orElseThrow().isCounted();
            bound = same;
            text.append("    ")
                    .append(record(only.get().className()))
                    .append("( ")
                    .append(same ? "$about : which, " : "")
                    .append(constants(only.get(), onlyWords))
                    .append(" )\n");
        }
        String about = !counted ? "" : bound ? "which == $about, " : "$about : which, ";
        String test =
                switch (how) {
                    case "above" -> part.name() + " > $limit";
                    case "below" -> part.name() + " < $limit";
                    case "at-or-above" -> part.name() + " >= $limit";
                    case "at-or-below" -> part.name() + " <= $limit";
                    case "older-than" -> part.name() + " < $today.minus($limit)";
                    default -> constants(item, words);
                };
        return text.append("    ")
                .append(record(item.className()))
                .append("( ")
                .append(about)
                .append("$seen : ")
                .append(part.name())
                .append(", ")
                .append(test)
                .append(" )\nthen\nend\n")
                .toString();
    }

    private static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"").replaceAll("\\s+", " ") + "\"";
    }

    private String card(
            String id,
            String title,
            ItemType item,
            String how,
            List<String> words,
            Optional<Limit> limit,
            Optional<ItemType> only,
            List<String> onlyWords,
            Urgency urgency,
            Consequence consequence,
            String why,
            String action,
            String notWhen,
            List<String> cautions,
            String remedy) {
        Kind kind = vocabulary.kind(item.kind()).orElseThrow();
        String label = kind.label().substring(0, 1).toUpperCase(Locale.ROOT)
                + kind.label().substring(1);
        String seen = (kind.isCounted() ? label + " {about}" : "Seen")
                + (limit.isPresent() ? ": {seen}; the limit is {limit}." : ": {seen}.");
        StringBuilder text = new StringBuilder("  - id: ").append(id).append('\n');
        text.append("    title: ").append(quoted(title)).append('\n');
        if (kind.isCounted()) {
            text.append("    about: ").append(kind.id()).append('\n');
        }
        text.append("    stage: ").append(item.stage().word()).append('\n');
        text.append("    consequence: ").append(consequence.word()).append('\n');
        text.append("    bands:\n      found: {urgency: ")
                .append(urgency.word())
                .append(", seen: ")
                .append(quoted(seen))
                .append("}\n");
        text.append("    why: ").append(quoted(why)).append('\n');
        text.append("    do: ").append(quoted(action)).append('\n');
        if (!remedy.isEmpty()) {
            text.append("    remedy: ").append(remedy).append('\n');
        }
        if (!cautions.isEmpty()) {
            text.append("    cautions: [").append(String.join(", ", cautions)).append("]\n");
        }
        text.append("    not-when: ").append(quoted(notWhen)).append('\n');
        text.append("    basis: ours\n    status: trial\n    scenarios:\n");
        Map<String, String> with = new LinkedHashMap<>();
        only.ifPresent(one -> with.put(one.id(), onlyWords.get(0)));
        if (how.equals("is")) {
            for (String word : words) {
                scenario(text, word.replace('-', ' '), item, word, with, "found found", "");
            }
            item.values().get(0).choices().stream()
                    .filter(word -> !words.contains(word))
                    .forEach(word -> scenario(text, word.replace('-', ' '), item, word, with, expected(item), ""));
        } else {
            byLimit(text, item, how, limit.orElseThrow(), with);
        }
        scenario(text, "not looked at", item, "", with, "undetermined", "missing: [" + item.id() + "]");
        if (only.isPresent()) {
            only.get().values().get(0).choices().stream()
                    .filter(word -> !onlyWords.contains(word))
                    .findFirst()
                    .ifPresent(word -> scenario(
                            text,
                            "another kind: " + word.replace('-', ' '),
                            item,
                            found(item, how, words, limit),
                            Map.of(only.get().id(), word),
                            only.get().isStructural() ? "not-applicable" : "in-order",
                            ""));
        }
        return text.toString();
    }

    private static String expected(ItemType item) {
        return item.isStructural() ? "not-applicable" : "in-order";
    }

    /** Exactly on the limit, and a step to either side. */
    private static List<String> around(String how, Limit limit) {
        if (how.equals("older-than")) {
            var on = ScenarioReader.USUAL_DAY.minus(limit.period());
            return List.of(
                    on.minusDays(1).toString(), on.toString(), on.plusDays(1).toString());
        }
        List<Limit> moved = Limits.moved(limit);
        return List.of(moved.get(0).written(), limit.written(), moved.get(1).written());
    }

    private static boolean finds(String how, int place) {
        return switch (how) {
            case "above" -> place == 2;
            case "at-or-above" -> place >= 1;
            case "at-or-below" -> place <= 1;
            default -> place == 0;
        };
    }

    private static String found(ItemType item, String how, List<String> words, Optional<Limit> limit) {
        if (limit.isEmpty()) {
            return words.get(0);
        }
        int place = how.endsWith("above") ? 2 : 0;
        return around(how, limit.get()).get(place);
    }

    private void byLimit(StringBuilder text, ItemType item, String how, Limit limit, Map<String, String> with) {
        List<String> values = around(how, limit);
        String[] names = {"a step below the limit", "exactly on the limit", "a step above the limit"};
        if (how.equals("older-than")) {
            names = new String[] {"a day older than the limit", "exactly as old as the limit", "a day younger"};
        }
        for (int i = 0; i < values.size(); i++) {
            scenario(
                    text,
                    names[i],
                    item,
                    values.get(i),
                    with,
                    finds(how, i) ? "found found" : expected(item),
                    i == 1 ? "on-limit: " + limit.id() : "");
        }
    }

    private void scenario(
            StringBuilder text,
            String name,
            ItemType item,
            String value,
            Map<String, String> with,
            String expect,
            String more) {
        Map<String, List<String>> groups = new LinkedHashMap<>();
        String plural = "";
        Map<String, String> answers = new LinkedHashMap<>(with);
        if (!value.isEmpty()) {
            answers.put(item.id(), value);
        }
        Kind own = vocabulary.kind(item.kind()).orElseThrow();
        if (own.isCounted()) {
            plural = own.plural();
            groups.put(plural, new ArrayList<>(List.of("tag: A")));
        }
        for (Map.Entry<String, String> answer : answers.entrySet()) {
            ItemType one = vocabulary.item(answer.getKey()).orElseThrow();
            Kind kind = vocabulary.kind(one.kind()).orElseThrow();
            String group = kind.isCounted()
                    ? kind.plural()
                    : kind.placement() == Kind.Placement.SITE ? kind.id() : one.group();
            groups.computeIfAbsent(group, g -> new ArrayList<>()).add(one.name() + ": " + answer.getValue());
        }
        List<String> parts = new ArrayList<>();
        for (Map.Entry<String, List<String>> group : groups.entrySet()) {
            String inner = "{" + String.join(", ", group.getValue()) + "}";
            parts.add(group.getKey() + ": " + (group.getKey().equals(plural) ? "[" + inner + "]" : inner));
        }
        text.append("      - name: ").append(quoted(name)).append('\n');
        text.append("        given: {").append(String.join(", ", parts)).append("}\n");
        text.append("        expect: ").append(expect).append('\n');
        if (!more.isEmpty()) {
            text.append("        ").append(more).append('\n');
        }
    }
}
