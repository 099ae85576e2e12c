package gaugeglass.cli.report;

import gaugeglass.engine.Assessment.Wanting;
import gaugeglass.engine.book.Book;
import gaugeglass.engine.facts.Missing;
import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.Subjects;
import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Words for what things are about: subjects, questions, places in a file. */
public final class Naming {
    /** As many things are named in a phrase; of more only how many there are. */
    private static final int MOST_NAMED = 4;

    private final Vocabulary vocabulary;
    private final Book book;

    public Naming(Vocabulary vocabulary, Book book) {
        this.vocabulary = vocabulary;
        this.book = book;
    }

    /** A practice and what it is about, in one phrase. */
    public String title(String rule, String subject) {
        String about = subject(book.card(rule).about(), subject);
        return book.card(rule).title() + (about.isEmpty() ? "" : " (" + about + ")");
    }

    /**
     * A practice and all that it was found of, in one phrase.
     *
     * @param subjects one or more; beyond a few only their number is named, and {@link #which} tells them
     */
    public String title(String rule, List<String> subjects) {
        if (subjects.size() == 1) {
            return title(rule, subjects.get(0));
        }
        return book.card(rule).title() + " (" + subjects(book.card(rule).about(), subjects) + ")";
    }

    /** Several things of one kind in one phrase; beyond a few only their number. */
    public String subjects(String kindId, List<String> subjects) {
        Optional<Kind> kind = vocabulary.kind(kindId).map(vocabulary::counted);
        if (kind.isEmpty() || subjects.size() == 1 || subjects.contains(Subjects.NOT_LISTED)) {
            List<String> names = new ArrayList<>();
            subjects.forEach(subject -> names.add(subject(kindId, subject)));
            return String.join(", ", names);
        }
        int tagged = byTag(subjects).size();
        String several = tagged == 1 ? kind.get().label() : several(kind.get().label());
        return isLeftOut(subjects) ? tagged + " " + several : several + " " + which(subjects);
    }

    /** Whether a phrase of several things leaves out which. */
    public static boolean isLeftOut(List<String> subjects) {
        return byTag(subjects).size() > MOST_NAMED && !subjects.contains(Subjects.NOT_LISTED);
    }

    /** The tags of several things, each once, with what it was of them behind it. */
    public static String which(List<String> subjects) {
        List<String> tags = new ArrayList<>();
        byTag(subjects)
                .forEach((tag, members) ->
                        tags.add(members.isEmpty() ? tag : tag + " (" + String.join(", ", members) + ")"));
        return String.join(", ", tags);
    }

    private static Map<String, List<String>> byTag(List<String> subjects) {
        Map<String, List<String>> tags = new LinkedHashMap<>();
        for (String subject : subjects) {
            List<String> members = tags.computeIfAbsent(tag(subject), k -> new ArrayList<>());
            if (subject.indexOf('/') >= 0) {
                members.add(member(subject));
            }
        }
        return tags;
    }

    /** What something is about, without its kind. */
    public static String shortly(String subject) {
        return which(List.of(subject));
    }

    /** Orders tags as people do: T-9 before T-10. */
    static int compare(String one, String other) {
        int i = 0;
        int j = 0;
        while (i < one.length() && j < other.length()) {
            int iEnd = digits(one, i);
            int jEnd = digits(other, j);
            if (iEnd > i && jEnd > j) {
                String a = one.substring(i, iEnd);
                String b = other.substring(j, jEnd);
                int width = Math.max(a.length(), b.length());
                int compared = "0"
                        .repeat(width - a.length())
                        .concat(a)
                        .compareTo("0".repeat(width - b.length()).concat(b));
                if (compared != 0) {
                    return compared;
                }
                i = iEnd;
                j = jEnd;
            } else if (one.charAt(i) != other.charAt(j)) {
                return Character.compare(one.charAt(i), other.charAt(j));
            } else {
                i++;
                j++;
            }
        }
        int left = Integer.compare(one.length() - i, other.length() - j);
        return left != 0 ? left : one.compareTo(other);
    }

    private static int digits(String text, int from) {
        int end = from;
        while (end < text.length() && text.charAt(end) >= '0' && text.charAt(end) <= '9') {
            end++;
        }
        return end;
    }

    /** The tag in a subject. */
    static String tag(String subject) {
        int slash = subject.indexOf('/');
        return slash < 0 ? subject : subject.substring(0, slash);
    }

    private static String member(String subject) {
        return subject.substring(subject.indexOf('/') + 1).replace('-', ' ');
    }

    /** More than one of a kind. */
    private static String several(String label) {
        boolean regular = !label.isEmpty() && "sxy".indexOf(label.charAt(label.length() - 1)) < 0;
        return regular ? label + "s" : label;
    }

    /** What a practice is about; empty for the unit, which the heading names. */
    public String subject(String kindId, String subject) {
        if (subject.isEmpty()) {
            return "";
        }
        Optional<Kind> kind = vocabulary.kind(kindId);
        Optional<Kind> counted = kind.map(vocabulary::counted);
        String label = counted.map(Kind::label).orElse("");
        String tag = tag(subject);
        String member = subject.indexOf('/') < 0 ? "" : ", " + member(subject);
        if (tag.equals(Subjects.NOT_LISTED)) {
            return label.isEmpty() ? "one that is not described" : "a " + label + " that is not described";
        }
        return (label.isEmpty() ? "" : label + " ") + tag + member;
    }

    /** The question behind a missing answer. */
    public String question(Missing missing) {
        Optional<ItemType> item = vocabulary.item(missing.item());
        if (item.isPresent()) {
            return item.get().ask();
        }
        for (Kind kind : vocabulary.kinds()) {
            if (kind.countId().equals(missing.item())) {
                return counting(kind.label());
            }
            if (kind.id().equals(missing.item())) {
                return "Describe each " + kind.label() + ".";
            }
        }
        return missing.item();
    }

    /** How many of a kind there are, as a question. */
    public static String counting(String label) {
        String several = several(label);
        return several.equals(label) ? "How many are fitted: " + label + "?" : "How many " + several + " are fitted?";
    }

    /** What the question is asked of. */
    public String asked(Missing missing) {
        return vocabulary
                .item(missing.item())
                .map(item -> subject(item.kind(), missing.subject()))
                .orElse("");
    }

    /** What one question is asked of, as far as it is of anything. */
    public String asked(List<Wanting> same) {
        Optional<ItemType> item = vocabulary.item(same.get(0).answer().item());
        List<String> subjects = new ArrayList<>();
        for (Wanting one : same) {
            if (!one.answer().subject().isEmpty() && item.isPresent()) {
                subjects.add(one.answer().subject());
            }
        }
        return subjects.isEmpty() ? "" : subjects(item.get().kind(), subjects);
    }

    /** Missing answers by their question, each where its first stood. */
    public Map<String, List<Wanting>> byQuestion(List<Wanting> wanting) {
        Map<String, List<Wanting>> byQuestion = new LinkedHashMap<>();
        for (Wanting one : wanting) {
            byQuestion
                    .computeIfAbsent(question(one.answer()), k -> new ArrayList<>())
                    .add(one);
        }
        return byQuestion;
    }

    /** Where the answer goes in an inspection file. */
    public String place(Missing missing) {
        Optional<ItemType> item = vocabulary.item(missing.item());
        if (item.isEmpty()) {
            for (Kind kind : vocabulary.kinds()) {
                if (kind.countId().equals(missing.item())) {
                    return kind.plural() + "/fitted";
                }
                if (kind.id().equals(missing.item())) {
                    return kind.plural() + "/each";
                }
            }
            return missing.item();
        }
        return place(item.get(), missing.subject());
    }

    /** Where an answer stands in an inspection file. */
    public String place(ItemType item, String subject) {
        Kind kind = vocabulary.kind(item.kind()).orElseThrow();
        if (subject.isEmpty()) {
            return kind.id().equals(vocabulary.site().id())
                    ? kind.id() + "/" + item.name()
                    : item.group() + "/" + item.name();
        }
        Kind counted = vocabulary.counted(kind);
        int slash = subject.indexOf('/');
        StringBuilder place = new StringBuilder(counted.plural())
                .append('/')
                .append(tag(subject))
                .append('/');
        if (slash >= 0) {
            place.append(kind.plural())
                    .append('/')
                    .append(subject, slash + 1, subject.length())
                    .append('/');
        }
        return place.append(item.name()).toString();
    }

    public String place(Answer answer) {
        return place(answer.item(), answer.subject());
    }

    /** An observation as a question with its answer. */
    public String told(Object fact) {
        if (fact instanceof Record record) {
            Optional<ItemType> item = vocabulary.item(record.getClass());
            if (item.isPresent()) {
                return item.get().ask() + " " + values(item.get(), record);
            }
        }
        return String.valueOf(fact);
    }

    /** What was seen, without the question. */
    public String values(ItemType item, Record fact) {
        StringBuilder words = new StringBuilder();
        List<Object> values = item.valuesOf(fact);
        for (int i = 0; i < values.size(); i++) {
            if (i > 0) {
                words.append(", ");
            }
            if (values.size() > 1) {
                words.append(Words.hyphened(item.values().get(i).name()).replace('-', ' '))
                        .append(' ');
            }
            words.append(Words.spoken(values.get(i)));
        }
        return words.toString();
    }

    /** What was answered, in words; also that it could not be read. */
    public static String answered(Answer answer) {
        if (answer.fact().isEmpty()) {
            return "could not be read: " + answer.unread();
        }
        List<String> words = new ArrayList<>();
        for (Object value : answer.item().valuesOf(answer.fact().get())) {
            words.add(Words.spoken(value));
        }
        return String.join(", ", words);
    }
}
