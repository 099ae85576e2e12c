package gaugeglass.cli.walk;

import gaugeglass.engine.observation.AnswerText;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.Component;
import gaugeglass.engine.vocabulary.ItemType;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The words of a typed line, taken one answer after another. */
final class Tokens {
    /** The longest answer in words that is looked for: {@code feeder then burner}, {@code 1 h 20 min 5 s}. */
    private static final int LONGEST = 8;

    private final List<String> words;
    private final LocalDate visit;
    private int at;

    Tokens(String typed, LocalDate visit) {
        this.words = List.of(typed.strip().split("\\s+"));
        this.visit = visit;
    }

    /** Thrown where the next words are no answer to what is asked. */
    static final class Unfit extends Exception {
        private static final long serialVersionUID = 1L;

        Unfit(String words) {
            super(words, null, false, false);
        }
    }

    boolean isAtEnd() {
        return at >= words.size();
    }

    /** The next word, without taking it. */
    String next() {
        return words.get(at);
    }

    void pass() {
        at++;
    }

    /** Everything that is left. */
    String rest() {
        return String.join(" ", words.subList(at, words.size()));
    }

    /** Takes the next answer to an item, part by part. */
    Taken take(ItemType item) throws Unfit {
        List<Object> values = new ArrayList<>();
        List<String> texts = new ArrayList<>();
        List<String> echoes = new ArrayList<>();
        List<String> remarks = new ArrayList<>();
        for (Component part : item.values()) {
            if (isAtEnd()) {
                throw new Unfit("the " + Words.hyphened(part.name()).replace('-', ' ') + " is wanting");
            }
            One one = one(item, part);
            values.add(one.value);
            texts.add(one.value instanceof Enum<?> choice ? Words.of(choice) : one.text);
            echoes.add(echo(part, one.value));
            if (!one.remark.isEmpty()) {
                remarks.add(one.remark);
            }
        }
        return new Taken(values, String.join(" | ", texts), String.join(", ", echoes), String.join("; ", remarks));
    }

    private record One(Object value, String text, String remark) {}

    /** The longest run of the next words that is an answer. */
    private One one(ItemType item, Component part) throws Unfit {
        int most =
                switch (part.form()) {
                    case CHOICE, QUANTITY -> LONGEST;
                    case COUNT, DATE -> 1;
                    case TEXT -> words.size();
                };
        Optional<Mistake> mistake = Optional.empty();
        for (int end = Math.min(words.size(), at + most); end > at; end--) {
            String text = String.join(" ", words.subList(at, end));
            AnswerText.Typed read = AnswerText.read(item, part, chosen(part, text), visit);
            if (read.value().isPresent()) {
                at = end;
                return new One(read.value().get(), text, read.remark());
            }
            // Of a choice the first word alone is meant; a quantity reaches to the word that is no number.
            boolean meant = part.form() != Component.Form.QUANTITY || end <= unitOf(at) + 1;
            if (meant && (mistake.isEmpty() || part.form() != Component.Form.QUANTITY)) {
                mistake = read.mistake();
            }
        }
        throw new Unfit(mistake.map(Tokens::said).orElse("\"" + rest() + "\" is not understood"));
    }

    private int unitOf(int from) {
        for (int i = from; i < words.size(); i++) {
            if (words.get(i).chars().anyMatch(Character::isLetter)
                    || words.get(i).endsWith("%")) {
                return i;
            }
        }
        return words.size() - 1;
    }

    /** A choice may be typed as its number. */
    static String chosen(Component part, String text) {
        if (part.form() != Component.Form.CHOICE) {
            return text;
        }
        try {
            int number = Integer.parseInt(text);
            return number >= 1 && number <= part.choices().size()
                    ? part.choices().get(number - 1)
                    : text;
        } catch (NumberFormatException e) {
            return text;
        }
    }

    /** A quantity is shown as typed and in its usual unit, so that a wrong unit is noticed. */
    static String echo(Component part, Object value) {
        if (value instanceof Quantity quantity && quantity.unit() != part.unit()) {
            return quantity + " = " + quantity.in(part.unit(), 4).toPlainString() + " "
                    + part.unit().symbol();
        }
        return Words.spoken(value);
    }

    static String said(Mistake mistake) {
        StringBuilder words = new StringBuilder(mistake.what());
        if (!mistake.expected().isEmpty()) {
            words.append(". Expected ").append(mistake.expected());
        }
        if (!mistake.nearest().isEmpty()) {
            words.append(". Did you mean ").append(mistake.nearest()).append("?");
        }
        return words.toString();
    }
}
