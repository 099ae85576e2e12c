package gaugeglass.engine.book;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.text.PackedReader;
import gaugeglass.engine.text.PackedWriter;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.engine.vocabulary.StoredVocabulary;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.math.BigInteger;
import java.time.Period;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * A rulebook in the form in which a build leaves it and a start reads it: one text that holds the vocabulary, the words,
 * the limits and the index of the compiled rules.
 *
 * @param trade the class name of the trade
 * @param vocabulary its items
 * @param book its words, limits and index
 */
public record StoredBook(String trade, Vocabulary vocabulary, Book book) {
    /** Where a build leaves a rulebook on the class path. */
    public static final String PATH = "gaugeglass/rulebook.packed";

    private static final String MARK = "gaugeglass rulebook 3";

    private static final Urgency[] URGENCIES = Urgency.values();
    private static final Stage[] STAGES = Stage.values();
    private static final Consequence[] CONSEQUENCES = Consequence.values();
    private static final Basis[] BASES = Basis.values();
    private static final Source.Known[] KNOWN = Source.Known.values();
    private static final Limit.Safer[] SAFER = Limit.Safer.values();
    private static final Clue.When[] WHEN = Clue.When.values();
    private static final Unit[] UNITS = Unit.values();

    /** What a limit's value may be. */
    private static final int QUANTITY = 0;

    private static final int PERIOD = 1;
    private static final int COUNT = 2;

    /**
     * Reads a stored rulebook.
     *
     * @param name what to call it in messages
     * @param text what {@link #write} gave
     * @param loader where the observation classes are
     * @throws IllegalStateException when it is not a stored rulebook of this version of the program
     */
    public static StoredBook read(String name, String text, ClassLoader loader) {
        PackedReader in = opened(name, text);
        String trade = in.text();
        List<String> models = in.texts();
        Vocabulary vocabulary = StoredVocabulary.read(in, loader);
        Book book = new Book(
                in.text(),
                in.text(),
                in.text(),
                byId(in.list(StoredBook::card), Card::id),
                byId(in.list(StoredBook::limit), Limit::id),
                byId(in.list(one -> new Caution(one.text(), one.text(), one.text())), Caution::id),
                byId(in.list(one -> new Remedy(one.text(), one.text(), one.texts(), one.texts())), Remedy::id),
                in.list(StoredBook::diagnosis),
                in.list(StoredBook::rule),
                models);
        if (!in.isAtEnd()) {
            throw new IllegalStateException(name + " holds more than a rulebook");
        }
        return new StoredBook(trade, vocabulary, book);
    }

    /**
     * The names of its compiled rules alone, which are wanted first.
     *
     * @throws IllegalStateException as {@link #read}
     */
    public static List<String> models(String name, String text) {
        PackedReader in = opened(name, text);
        in.text();
        return in.texts();
    }

    private static PackedReader opened(String name, String text) {
        PackedReader in = new PackedReader(text);
        if (!text.startsWith(MARK.length() + " " + MARK) || !in.text().equals(MARK)) {
            throw new IllegalStateException(name + " is no stored rulebook of this version of the program");
        }
        return in;
    }

    private static <T> Map<String, T> byId(List<T> list, Function<T, String> id) {
        Map<String, T> all = new LinkedHashMap<>();
        for (T one : list) {
            all.put(id.apply(one), one);
        }
        return all;
    }

    /** The stored form. */
    public String write() {
        PackedWriter out = new PackedWriter();
        out.text(MARK);
        out.text(trade);
        out.texts(book.models());
        StoredVocabulary.write(out, vocabulary);
        out.text(book.name());
        out.text(book.version());
        out.text(book.hash());
        out.list(book.cards().values(), StoredBook::card);
        out.list(book.limits().values(), StoredBook::limit);
        out.list(book.cautions().values(), (to, one) -> {
            to.text(one.id());
            to.text(one.title());
            to.text(one.text());
        });
        out.list(book.remedies().values(), (to, one) -> {
            to.text(one.id());
            to.text(one.work());
            to.texts(one.parts());
            to.texts(one.takeAlong());
        });
        out.list(book.diagnoses(), StoredBook::diagnosis);
        out.list(book.rules(), StoredBook::rule);
        return out.packed();
    }

    private static void card(PackedWriter out, Card card) {
        out.text(card.id());
        out.text(card.subject());
        out.text(card.title());
        out.text(card.about());
        out.constant(card.stage());
        out.constant(card.consequence());
        out.flag(card.release());
        out.flag(card.sign());
        out.list(card.bands().values(), (to, band) -> {
            to.text(band.name());
            to.constant(band.urgency());
            to.text(band.seen());
            to.list(band.variants().entrySet(), (one, variant) -> {
                one.text(variant.getKey());
                one.text(variant.getValue());
            });
        });
        out.text(card.why());
        out.text(card.action());
        out.text(card.remedy());
        out.texts(card.cautions());
        out.text(card.notWhen());
        out.constant(card.basis());
        sources(out, card.sources());
        out.text(card.status());
        out.text(card.since());
        out.text(card.file());
        out.number(card.line());
    }

    private static Card card(PackedReader in) {
        return new Card(
                in.text(),
                in.text(),
                in.text(),
                in.text(),
                in.constant(STAGES),
                in.constant(CONSEQUENCES),
                in.flag(),
                in.flag(),
                byId(in.list(StoredBook::band), Band::name),
                in.text(),
                in.text(),
                in.text(),
                in.texts(),
                in.text(),
                in.constant(BASES),
                sources(in),
                in.text(),
                in.text(),
                in.text(),
                in.number());
    }

    private static Band band(PackedReader in) {
        String name = in.text();
        Urgency urgency = in.constant(URGENCIES);
        String seen = in.text();
        Map<String, String> variants = new LinkedHashMap<>();
        for (int left = in.number(); left > 0; left--) {
            variants.put(in.text(), in.text());
        }
        return new Band(name, urgency, seen, variants);
    }

    private static void sources(PackedWriter out, List<Source> sources) {
        out.list(sources, (to, source) -> {
            to.text(source.name());
            to.constant(source.known());
        });
    }

    private static List<Source> sources(PackedReader in) {
        return in.list(one -> new Source(one.text(), one.constant(KNOWN)));
    }

    private static void limit(PackedWriter out, Limit limit) {
        out.text(limit.id());
        out.text(limit.written());
        value(out, limit.value());
        out.text(limit.meaning());
        out.constant(limit.safer());
        out.text(limit.least());
        out.text(limit.most());
        out.text(limit.step());
        out.constant(limit.basis());
        sources(out, limit.sources());
        out.text(limit.reviewBy());
        out.text(limit.layer());
    }

    private static Limit limit(PackedReader in) {
        String id = in.text();
        String written = in.text();
        return new Limit(
                id,
                value(in),
                written,
                in.text(),
                in.constant(SAFER),
                in.text(),
                in.text(),
                in.text(),
                in.constant(BASES),
                sources(in),
                in.text(),
                in.text());
    }

    /** Not as it is written: reading every limit's text anew would take a start longer than all else that is stored. */
    private static void value(PackedWriter out, Object value) {
        if (value instanceof Quantity quantity) {
            out.number(QUANTITY);
            out.text(quantity.value().numerator().toString());
            out.text(quantity.value().denominator().toString());
            out.constant(quantity.unit());
            out.text(quantity.typed().orElse(""));
        } else if (value instanceof Period period) {
            out.number(PERIOD);
            out.text(period.toString());
        } else {
            out.number(COUNT);
            out.text(value.toString());
        }
    }

    private static Object value(PackedReader in) {
        int form = in.number();
        String text = in.text();
        return switch (form) {
            case QUANTITY ->
                Quantity.typed(
                        Rational.of(new BigInteger(text), new BigInteger(in.text())), in.constant(UNITS), in.text());
            case PERIOD -> Period.parse(text);
            default -> Integer.valueOf(text);
        };
    }

    private static void diagnosis(PackedWriter out, Diagnosis diagnosis) {
        out.text(diagnosis.id());
        out.text(diagnosis.cause());
        out.text(diagnosis.about());
        out.list(diagnosis.points(), StoredBook::clue);
        out.list(diagnosis.against(), StoredBook::clue);
        out.text(diagnosis.settledBy());
        out.text(diagnosis.settle());
        out.number(diagnosis.enough());
    }

    private static Diagnosis diagnosis(PackedReader in) {
        return new Diagnosis(
                in.text(),
                in.text(),
                in.text(),
                in.list(StoredBook::clue),
                in.list(StoredBook::clue),
                in.text(),
                in.text(),
                in.number());
    }

    private static void clue(PackedWriter out, Clue clue) {
        out.text(clue.card());
        out.constant(clue.outcome());
        out.number(clue.weight());
        out.text(clue.says());
    }

    private static Clue clue(PackedReader in) {
        return new Clue(in.text(), in.constant(WHEN), in.number(), in.text());
    }

    private static void rule(PackedWriter out, RuleEntry rule) {
        out.text(rule.card());
        out.text(rule.band());
        out.text(rule.variant());
        out.text(rule.file());
        out.number(rule.line());
        out.texts(rule.needs());
        out.texts(rule.limits());
        out.list(rule.steps(), (to, step) -> {
            to.text(step.type());
            to.text(step.checks());
            to.texts(step.keyBinds());
            to.text(step.join());
            to.text(step.literal());
        });
    }

    private static RuleEntry rule(PackedReader in) {
        return new RuleEntry(
                in.text(),
                in.text(),
                in.text(),
                in.text(),
                in.number(),
                in.texts(),
                in.texts(),
                in.list(step -> new RuleEntry.Step(step.text(), step.text(), step.texts(), step.text(), step.text())));
    }
}
