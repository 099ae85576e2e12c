package gaugeglass.engine.observation;

import gaugeglass.engine.observation.Layout.Equipment;
import gaugeglass.engine.observation.Layout.FixedSet;
import gaugeglass.engine.observation.Layout.Part;
import gaugeglass.engine.observation.Layout.Question;
import gaugeglass.engine.reading.YamlWriter;
import gaugeglass.engine.vocabulary.Component;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * An inspection file without answers, to be filled in with an editor: each question stands as a comment above its key,
 * with its words or its unit. The reader takes it as it is, and finds no answer in it.
 */
public final class BlankInspection {
    private static final int WIDTH = 100;

    private final Layout layout;
    private final String siteId;
    private final LocalDate date;
    private final List<String> units = new ArrayList<>();
    private final Map<String, Integer> entries = new HashMap<>();
    private String siteName = "";
    private Predicate<ItemType> asked = item -> true;
    private Predicate<Kind> counted = kind -> true;
    private final StringBuilder text = new StringBuilder();

    private BlankInspection(Vocabulary vocabulary, String siteId, LocalDate date) {
        this.layout = new Layout(vocabulary);
        this.siteId = siteId;
        this.date = date;
    }

    /** The whole blank form of a vocabulary for one unit, with one example entry of each counted kind as a comment. */
    public static String of(Vocabulary vocabulary, String siteId, LocalDate date, String unit) {
        return of(vocabulary, siteId, date).unit(unit).write();
    }

    /** Begins a blank form; it needs at least one unit. */
    public static BlankInspection of(Vocabulary vocabulary, String siteId, LocalDate date) {
        return new BlankInspection(vocabulary, siteId, date);
    }

    public BlankInspection siteName(String name) {
        siteName = name;
        return this;
    }

    /** Adds a unit under its id. */
    public BlankInspection unit(String id) {
        units.add(id);
        return this;
    }

    /**
     * Puts so many entries of a counted kind there, without tags, instead of one as a comment.
     *
     * @throws IllegalArgumentException when it is no counted kind, or more than is believed of it
     */
    public BlankInspection entries(String kind, int number) {
        Kind known = layout.vocabulary
                .kind(kind)
                .filter(Kind::isCounted)
                .orElseThrow(() -> new IllegalArgumentException("\"" + kind + "\" is no kind that is counted"));
        if (number < 0 || number > known.most()) {
            throw new IllegalArgumentException(
                    number + " of " + known.plural() + " are not believed; 0 to " + known.most() + " are");
        }
        entries.put(kind, number);
        return this;
    }

    /** Leaves out every question that does not pass. */
    public BlankInspection askingOnly(Predicate<ItemType> wanted) {
        asked = wanted;
        return this;
    }

    /** Leaves out every counted kind that does not pass, with all that is asked of it. */
    public BlankInspection countingOnly(Predicate<Kind> wanted) {
        counted = wanted;
        return this;
    }

    /** The form as YAML text. */
    public String write() {
        comment(
                "",
                "An inspection to be filled in. What stands behind a key is the answer; a key with nothing behind it"
                        + " counts as not looked at. What was looked at and could not be read is written as {unread: \"why\"}."
                        + " A note, pictures and a time go beside an answer so:"
                        + " {value: ..., note: \"...\", photos: [a.jpg], at: \"09:40\"}.");
        line("", "format: " + Inspection.FORMAT);
        line("", layout.vocabulary.site().id() + ":");
        comment("  ", "A short name that stays the same over years.");
        line("  ", "id: " + YamlWriter.scalar(siteId));
        line("  ", "name:" + (siteName.isEmpty() ? "" : " " + YamlWriter.scalar(siteName)));
        questions("  ", layout.site.values(), true);
        line("", "visit:");
        line("  ", "date: " + date);
        line("  ", "by:");
        line("  ", "started:");
        line("", layout.unit.plural() + ":");
        for (String unit : units) {
            unit(unit, "    ");
        }
        return text.toString();
    }

    private void unit(String id, String in) {
        comment("  ", "A short name that stays the same over years.");
        line("  ", "- id: " + YamlWriter.scalar(id));
        line(in, "name:");
        layout.groups.forEach((group, questions) -> {
            if (isAsked(questions.values())) {
                text.append('\n');
                line(in, group + ":");
                questions(in + "  ", questions.values(), true);
            }
        });
        for (Map.Entry<String, Equipment> entry : layout.equipment.entrySet()) {
            if (counted.test(entry.getValue().kind)) {
                text.append('\n');
                equipment(in, entry.getKey(), entry.getValue());
            }
        }
        text.append('\n');
        comment(
                in,
                "After work was done or a test repeated: the same keys again with what holds then, for the "
                        + layout.unit.label() + " here, for a piece of equipment in its own entry and for the "
                        + layout.vocabulary.site().label() + " beside its answers.");
        comment(in, Layout.AS_LEFT + ":");
        comment(in, "  at: \"10:42\"");
    }

    private void equipment(String in, String plural, Equipment equipment) {
        Kind kind = equipment.kind;
        line(in, plural + ":");
        String inside = in + "  ";
        comment(
                inside,
                "How many are fitted, 0 to " + kind.most()
                        + "; or {unread: \"why\"} where they cannot be counted. Each of them has an entry below.");
        line(inside, "fitted:");
        int number = entries.getOrDefault(kind.id(), 0);
        if (number == 0) {
            comment(inside, "each:");
            one(inside + "# ", equipment, true);
        } else {
            line(inside, "each:");
            for (int i = 0; i < number; i++) {
                one(inside, equipment, i == 0);
            }
        }
    }

    private void one(String in, Equipment equipment, boolean withWords) {
        String inside = in + "    ";
        if (withWords) {
            comment(in + "  ", "A name for this " + equipment.kind.label() + " that stays the same over years.");
        }
        line(in, "  - tag:");
        questions(inside, equipment.questions.values(), withWords);
        equipment.sets.forEach((plural, set) -> {
            if (isAsked(set.questions.values())) {
                line(inside, plural + ":");
                members(inside + "  ", set, withWords);
            }
        });
    }

    private void members(String in, FixedSet set, boolean withWords) {
        boolean isFirst = withWords;
        for (String word : set.members.keySet()) {
            line(in, word + ":");
            questions(in + "  ", set.questions.values(), isFirst);
            isFirst = false;
        }
    }

    private boolean isAsked(Collection<Question> questions) {
        return questions.stream().anyMatch(question -> asked.test(question.item));
    }

    private void questions(String in, Collection<Question> questions, boolean withWords) {
        for (Question question : questions) {
            if (asked.test(question.item)) {
                question(in, question, withWords);
            }
        }
    }

    private void question(String in, Question question, boolean withWords) {
        boolean isOne = question.parts.size() == 1;
        if (withWords) {
            String hint = isOne ? " " + hint(question.parts.get(0)) : "";
            String unread = question.item.unreadBecause().isEmpty()
                    ? ""
                    : " Unread: " + String.join(", ", question.item.unreadBecause()) + ".";
            comment(in, "[" + question.item.stage().word() + "] " + question.item.ask() + hint + unread);
        }
        line(in, question.key() + ":");
        if (!isOne) {
            for (Part part : question.parts) {
                if (withWords) {
                    comment(in + "  ", hint(part));
                }
                line(in + "  ", part.key + ":");
            }
        }
    }

    private static String hint(Part part) {
        Component component = part.component;
        return switch (component.form()) {
            case CHOICE -> String.join(" | ", component.choices()) + ".";
            case QUANTITY -> "With its unit: " + part.span() + ".";
            case COUNT -> "A whole number, " + part.span() + ".";
            case DATE -> "A date such as 2026-09-14; a year and month, or a year, will do.";
            case TEXT -> "In words.";
        };
    }

    private void line(String in, String content) {
        text.append(in).append(content).append('\n');
    }

    /** The words of a sentence; what stands in braces is not broken. */
    private static List<String> pieces(String words) {
        List<String> pieces = new ArrayList<>();
        StringBuilder piece = new StringBuilder();
        boolean isInBraces = false;
        for (int i = 0; i < words.length(); i++) {
            char c = words.charAt(i);
            isInBraces = c == '{' || isInBraces && c != '}';
            if (c == ' ' && !isInBraces) {
                pieces.add(piece.toString());
                piece.setLength(0);
            } else {
                piece.append(c);
            }
        }
        pieces.add(piece.toString());
        return pieces;
    }

    /** A comment, broken into lines between words. */
    private void comment(String in, String words) {
        // The spaces that a key in an example is indented by stay.
        int lead = words.length() - words.stripLeading().length();
        StringBuilder row = new StringBuilder(words.substring(0, lead));
        boolean isEmpty = true;
        for (String word : pieces(words.substring(lead))) {
            if (!isEmpty && in.length() + 2 + row.length() + 1 + word.length() > WIDTH) {
                line(in, "# " + row);
                row.setLength(0);
                isEmpty = true;
            }
            row.append(isEmpty ? "" : " ").append(word);
            isEmpty = false;
        }
        line(in, "# " + row);
    }
}
