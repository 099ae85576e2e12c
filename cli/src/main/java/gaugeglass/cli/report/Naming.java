package gaugeglass.cli.report;

import gaugeglass.engine.book.Book;
import gaugeglass.engine.facts.Missing;
import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.Subjects;
import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Words for what things are about: subjects, questions, places in a file. */
public final class Naming {
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

    /** What a practice is about; empty for the unit, which the heading names. */
    public String subject(String kindId, String subject) {
        if (subject.isEmpty()) {
            return "";
        }
        Optional<Kind> kind = vocabulary.kind(kindId);
        Optional<Kind> counted = kind.map(vocabulary::counted);
        String label = counted.map(Kind::label).orElse("");
        int slash = subject.indexOf('/');
        String tag = slash < 0 ? subject : subject.substring(0, slash);
        String member = slash < 0 ? "" : ", " + subject.substring(slash + 1).replace('-', ' ');
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
        boolean regular = !label.isEmpty() && "sxy".indexOf(label.charAt(label.length() - 1)) < 0;
        return regular ? "How many " + label + "s are fitted?" : "How many are fitted: " + label + "?";
    }

    /** What the question is asked of. */
    public String asked(Missing missing) {
        return vocabulary
                .item(missing.item())
                .map(item -> subject(item.kind(), missing.subject()))
                .orElse("");
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
        String tag = slash < 0 ? subject : subject.substring(0, slash);
        StringBuilder place =
                new StringBuilder(counted.plural()).append('/').append(tag).append('/');
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
