package gaugeglass.cli.walk;

import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.AnswerText;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.Roster;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.observation.Subjects;
import gaugeglass.engine.reading.Form;
import gaugeglass.engine.reading.Node;
import gaugeglass.engine.reading.TableReader;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import gaugeglass.engine.text.Nearest;
import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.Component;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Rows of a table about one counted kind: a line of headings, then a line for each piece of equipment.
 *
 * <p>The first heading is {@code tag}; the others are the words of the kind's items, and where an item has several
 * parts, those of the item and the part: {@code reading-inlet}. Cells stand apart by tabs, commas or semicolons. An
 * empty cell is no answer; {@code u why} is one that cannot be told.
 */
final class Rows {
    static final String TAG = "tag";

    private final Kind kind;
    private final LocalDate visit;
    private final String at;
    private final Map<String, Column> columns = new LinkedHashMap<>();
    private final List<Mistake> mistakes = new ArrayList<>();

    private record Column(ItemType item, Component part) {}

    /**
     * What a table holds.
     *
     * @param tags every tag in it, in order
     * @param answers every cell that was understood
     * @param mistakes the cells, rows and columns that were not, each with its row and column
     */
    record Read(List<String> tags, List<Answer> answers, List<Mistake> mistakes) {}

    Rows(Vocabulary vocabulary, Kind kind, LocalDate visit, String at) {
        this.kind = kind;
        this.visit = visit;
        this.at = at;
        for (ItemType item : vocabulary.items()) {
            if (item.kind().equals(kind.id()) && !item.isReckoned()) {
                List<Component> parts = item.values();
                for (Component part : parts) {
                    String heading = parts.size() == 1 ? item.name() : item.name() + "-" + Words.hyphened(part.name());
                    columns.put(heading, new Column(item, part));
                }
            }
        }
    }

    /** The headings that a table of this kind may have. */
    List<String> headings() {
        List<String> all = new ArrayList<>(List.of(TAG));
        all.addAll(columns.keySet());
        return all;
    }

    Read read(String text) {
        List<Form> forms;
        try {
            forms = TableReader.read("table", text, mistakes);
        } catch (Mistakes e) {
            return new Read(List.of(), List.of(), e.all());
        }
        Set<String> tags = new LinkedHashSet<>();
        List<Answer> answers = new ArrayList<>();
        Set<String> unknown = new LinkedHashSet<>();
        for (Form form : forms) {
            for (String heading : form.fields().all().keySet()) {
                if (!heading.equals(TAG) && !columns.containsKey(heading) && unknown.add(heading)) {
                    mistakes.add(new Mistake(
                            "table",
                            1,
                            0,
                            "column " + heading,
                            "no question about a " + kind.label() + " is called that; the column was not taken",
                            "one of " + String.join(", ", headings()),
                            Nearest.to(heading, headings()).orElse("")));
                }
            }
            Optional<String> tag = tag(form, tags);
            tag.ifPresent(name -> {
                tags.add(name);
                answers.addAll(row(form, name));
            });
        }
        return new Read(List.copyOf(tags), answers, List.copyOf(mistakes));
    }

    private static Optional<String> cell(Form form, String heading) {
        return Optional.ofNullable(form.fields().all().get(heading))
                .map(Node.Field::value)
                .filter(Node.Scalar.class::isInstance)
                .map(node -> ((Node.Scalar) node).text().strip());
    }

    private Optional<String> tag(Form form, Set<String> tags) {
        int line = form.fields().line();
        Optional<String> tag = cell(form, TAG);
        String problem = "";
        if (tag.isEmpty()) {
            problem = "the row has no tag; it was not taken";
        } else if (tag.get().indexOf('/') >= 0
                || tag.get().indexOf('\\') >= 0
                || tag.get().equals(Subjects.NOT_LISTED)
                || tag.get().length() > 40) {
            problem = "\"" + tag.get() + "\" is no tag; the row was not taken";
        } else if (tags.contains(tag.get())) {
            problem = "\"" + tag.get() + "\" has a row already; this one was not taken";
        }
        if (!problem.isEmpty()) {
            mistakes.add(new Mistake(
                    "table", line, 0, "column " + TAG, problem, "a short name without a slash, once in the table", ""));
            return Optional.empty();
        }
        return tag;
    }

    private List<Answer> row(Form form, String tag) {
        List<Answer> answers = new ArrayList<>();
        Set<String> done = new LinkedHashSet<>();
        for (Column column : columns.values()) {
            if (done.add(column.item().id())) {
                answer(form, tag, column.item()).ifPresent(answers::add);
            }
        }
        return answers;
    }

    private Optional<Answer> answer(Form form, String tag, ItemType item) {
        List<Object> keys = List.of(tag);
        List<Object> values = new ArrayList<>();
        List<String> texts = new ArrayList<>();
        List<String> remarks = new ArrayList<>();
        int empty = 0;
        for (Map.Entry<String, Column> column : columns.entrySet()) {
            if (column.getValue().item() != item) {
                continue;
            }
            Component part = column.getValue().part();
            String text = cell(form, column.getKey()).orElse("");
            if (text.isEmpty()) {
                empty++;
            } else if (text.equals("u") || text.startsWith("u ")) {
                String reason = text.substring(1).strip();
                if (reason.isEmpty()) {
                    wrong(form, tag, column.getKey(), "\"u\" without a reason", "u and why it cannot be told", "");
                    return Optional.empty();
                }
                return Optional.of(
                        new Answer(item, keys, State.AS_FOUND, Optional.empty(), reason, "", List.of(), at, ""));
            } else {
                AnswerText.Typed read = AnswerText.read(item, part, Tokens.chosen(part, text), visit);
                read.mistake()
                        .ifPresent(mistake -> wrong(
                                form, tag, column.getKey(), mistake.what(), mistake.expected(), mistake.nearest()));
                if (read.value().isEmpty()) {
                    return Optional.empty();
                }
                values.add(read.value().get());
                texts.add(read.value().get() instanceof Enum<?> choice ? Words.of(choice) : text);
                if (!read.remark().isEmpty()) {
                    remarks.add(read.remark());
                }
            }
        }
        if (values.isEmpty()) {
            return Optional.empty();
        }
        if (empty > 0) {
            wrong(
                    form,
                    tag,
                    item.name(),
                    "only " + values.size() + " of its " + (values.size() + empty) + " parts",
                    "all of them",
                    "");
            return Optional.empty();
        }
        return Optional.of(new Answer(
                item,
                keys,
                State.AS_FOUND,
                Optional.of(item.make(keys, values)),
                "",
                String.join("; ", remarks),
                List.of(),
                at,
                String.join(" | ", texts)));
    }

    private void wrong(Form form, String tag, String heading, String what, String expected, String nearest) {
        mistakes.add(new Mistake(
                "table", form.fields().line(), 0, "row " + tag + ", column " + heading, what, expected, nearest));
    }

    /** The tags of a table that are not described yet. */
    static List<String> added(Observations observations, Kind kind, List<String> tags) {
        Roster roster = observations.roster(kind.id());
        return tags.stream()
                .filter(tag -> !roster.tags(State.AS_FOUND).contains(tag))
                .toList();
    }

    /** The counted kinds that a table may be about: those that have questions of their own. */
    static List<Kind> kinds(Vocabulary vocabulary) {
        return vocabulary.kinds().stream()
                .filter(kind -> kind.isCounted()
                        && vocabulary.items().stream()
                                .anyMatch(item -> item.kind().equals(kind.id()) && !item.isReckoned()))
                .toList();
    }
}
