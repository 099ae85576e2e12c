package gaugeglass.cli.report;

import gaugeglass.engine.Assessment.Finding;
import gaugeglass.engine.Assessment.Ref;
import gaugeglass.engine.Assessment.Waived;
import gaugeglass.engine.book.Waiver;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Findings that differ in nothing but what they are about and what was read there: one check, band, urgency and state. They
 * are said once, with everything that they are about.
 */
public final class Alike {
    /** As many readings of one finding as somebody compares. */
    private static final int MOST_SEEN = 4;

    private final List<Finding> all;

    private Alike(List<Finding> all) {
        this.all = List.copyOf(all);
    }

    /** Gathers findings; each group stands where its first finding stood. */
    public static List<Alike> of(Collection<Finding> findings) {
        Map<String, List<Finding>> groups = new LinkedHashMap<>();
        for (Finding finding : findings) {
            String key = finding.rule() + " " + finding.band() + " " + finding.urgency() + " " + finding.state();
            groups.computeIfAbsent(key, k -> new ArrayList<>()).add(finding);
        }
        List<Alike> all = new ArrayList<>();
        for (List<Finding> group : groups.values()) {
            group.sort((one, other) -> Naming.compare(one.subject(), other.subject()));
            all.add(new Alike(group));
        }
        return all;
    }

    /** Gathers what is waived: by waiver in the order in which they come, and what is alike under each. */
    public static Map<Waiver, List<Alike>> byWaiver(List<Waived> waived) {
        Map<Waiver, List<Finding>> findings = new LinkedHashMap<>();
        for (Waived one : waived) {
            findings.computeIfAbsent(one.waiver(), k -> new ArrayList<>()).add(one.finding());
        }
        Map<Waiver, List<Alike>> all = new LinkedHashMap<>();
        findings.forEach((waiver, found) -> all.put(waiver, of(found)));
        return all;
    }

    /** The subjects of some references, by check, in their order; a check stands where its first stood. */
    public static Map<String, List<String>> byRule(Collection<Ref> refs) {
        Map<String, List<String>> groups = new LinkedHashMap<>();
        for (Ref ref : refs) {
            groups.computeIfAbsent(ref.rule(), k -> new ArrayList<>()).add(ref.subject());
        }
        for (List<String> subjects : groups.values()) {
            subjects.sort(Naming::compare);
        }
        return groups;
    }

    /** All of them, in the order of their tags; one or more. */
    public List<Finding> all() {
        return all;
    }

    public Finding first() {
        return all.get(0);
    }

    public boolean isOne() {
        return all.size() == 1;
    }

    /** What they are about. */
    public List<String> subjects() {
        List<String> subjects = new ArrayList<>();
        all.forEach(finding -> subjects.add(finding.subject()));
        return subjects;
    }

    /**
     * What was seen, one entry for each that differs. Where it differs in the tag alone it is said of the first, and that it
     * is the same of the others.
     */
    public List<String> seen() {
        if (isOne()) {
            return first().seen();
        }
        Map<List<String>, List<Finding>> same = new LinkedHashMap<>();
        for (Finding finding : all) {
            List<String> without = new ArrayList<>();
            finding.seen().forEach(sentence -> without.add(without(sentence, Naming.tag(finding.subject()))));
            same.computeIfAbsent(without, k -> new ArrayList<>()).add(finding);
        }
        List<String> seen = new ArrayList<>();
        if (same.size() == 1 && Naming.isLeftOut(subjects())) {
            return List.of(String.join(" ", first().seen()) + " The same of the others.");
        }
        for (List<Finding> group : same.values()) {
            List<String> others = new ArrayList<>();
            group.subList(1, group.size()).forEach(finding -> others.add(Naming.shortly(finding.subject())));
            seen.add(String.join(" ", group.get(0).seen())
                    + (others.isEmpty() ? "" : " The same of " + String.join(", ", others) + "."));
        }
        return seen;
    }

    /**
     * What was seen, as far as it tells what is meant.
     *
     * @param rest said in the place of what is left out
     */
    public List<String> seenInShort(String rest) {
        List<String> seen = seen();
        if (seen.size() <= MOST_SEEN + 1) {
            return seen;
        }
        List<String> some = new ArrayList<>(seen.subList(0, MOST_SEEN));
        some.add(rest);
        return some;
    }

    /** The tags, where a title of all of them only counts them; empty otherwise. */
    public String which() {
        return Naming.isLeftOut(subjects()) ? Naming.which(subjects()) : "";
    }

    /** A text of each finding, with what it is of; what all of them say stands alone, and nothing for empty ones. */
    public List<String> each(Function<Finding, String> text) {
        return eachOf(finding -> {
            String said = text.apply(finding);
            return said.isEmpty() ? List.of() : List.of(said);
        });
    }

    /** Some texts of each finding, with what they are of; what all of them say stands alone. */
    public List<String> eachOf(Function<Finding, List<String>> texts) {
        Map<String, List<String>> bySaid = new LinkedHashMap<>();
        for (Finding finding : all) {
            for (String said : texts.apply(finding)) {
                bySaid.computeIfAbsent(said, k -> new ArrayList<>()).add(Naming.shortly(finding.subject()));
            }
        }
        List<String> each = new ArrayList<>();
        bySaid.forEach((said, of) -> each.add(of.size() == all.size() ? said : String.join(", ", of) + ": " + said));
        return each;
    }

    private static String without(String sentence, String tag) {
        if (tag.isEmpty()) {
            return sentence;
        }
        StringBuilder left = new StringBuilder();
        int from = 0;
        for (int at = sentence.indexOf(tag); at >= 0; at = sentence.indexOf(tag, at + tag.length())) {
            int end = at + tag.length();
            boolean isWord = (at == 0 || !isPartOfWord(sentence.charAt(at - 1)))
                    && (end == sentence.length() || !isPartOfWord(sentence.charAt(end)));
            if (isWord) {
                left.append(sentence, from, at).append('\u0000');
                from = end;
            }
        }
        return left.append(sentence, from, sentence.length()).toString();
    }

    private static boolean isPartOfWord(char c) {
        return Character.isLetterOrDigit(c) || c == '-';
    }
}
