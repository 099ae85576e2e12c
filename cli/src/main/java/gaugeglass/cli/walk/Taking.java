package gaugeglass.cli.walk;

import gaugeglass.checklists.Question;
import gaugeglass.engine.observation.AnswerText;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.Component;
import gaugeglass.engine.vocabulary.ItemType;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Takes the answer to one question: typed, by keys as things are heard, or as readings against time. */
final class Taking {
    private final Talk talk;
    private final AskScreen screen;
    private final ItemType item;
    private final Question question;
    private final LocalDate visit;

    Taking(Talk talk, AskScreen screen, ItemType item, Question question, LocalDate visit) {
        this.talk = talk;
        this.screen = screen;
        this.item = item;
        this.question = question;
        this.visit = visit;
    }

    /** Understands what was typed, asking on where the question wants more; empty where it is not understood. */
    Optional<Taken> take(String typed) {
        if (question.take() == Question.Take.EVENTS
                && typed.toLowerCase(Locale.ROOT).equals("go")) {
            return events();
        }
        if (question.take() == Question.Take.READINGS
                && typed.toLowerCase(Locale.ROOT).equals("go")) {
            return readings();
        }
        List<Object> values = new ArrayList<>();
        List<String> texts = new ArrayList<>();
        List<String> echoes = new ArrayList<>();
        List<String> remarks = new ArrayList<>();
        String text = typed;
        for (Component part : item.values()) {
            if (!values.isEmpty()) {
                screen.part(part);
                text = talk.line(Words.hyphened(part.name()).replace('-', ' ') + " > ")
                        .strip();
            }
            AnswerText.Typed read = AnswerText.read(item, part, chosen(part, text), visit);
            if (read.value().isEmpty()) {
                read.mistake().ifPresent(this::explain);
                return Optional.empty();
            }
            Object value = read.value().get();
            values.add(value);
            texts.add(value instanceof Enum<?> choice ? Words.of(choice) : text);
            echoes.add(echo(part, value));
            if (!read.remark().isEmpty()) {
                remarks.add(read.remark());
            }
        }
        return Optional.of(
                new Taken(values, String.join(" | ", texts), String.join(", ", echoes), String.join("; ", remarks)));
    }

    /** A choice may be typed as its number. */
    private static String chosen(Component part, String text) {
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

    private void explain(Mistake mistake) {
        StringBuilder words = new StringBuilder("Not understood: ").append(mistake.what());
        if (!mistake.expected().isEmpty()) {
            words.append(". Expected ").append(mistake.expected());
        }
        if (!mistake.nearest().isEmpty()) {
            words.append(". Did you mean ").append(mistake.nearest()).append("?");
        }
        talk.say(words.toString());
    }

    /** A quantity is shown as typed and in its usual unit, so that a wrong unit is noticed. */
    private static String echo(Component part, Object value) {
        if (value instanceof Quantity quantity && quantity.unit() != part.unit()) {
            return quantity + " = " + quantity.in(part.unit(), 4).toPlainString() + " "
                    + part.unit().symbol();
        }
        return Words.spoken(value);
    }

    private Optional<Taken> events() {
        StringBuilder keys = new StringBuilder();
        question.events()
                .forEach((letter, word) ->
                        keys.append("  ").append(letter).append(" = ").append(word));
        talk.say("Press a key the moment you hear it:" + keys + "   Enter = that was all");
        Set<String> heard = new LinkedHashSet<>();
        List<String> times = new ArrayList<>();
        long first = -1;
        while (true) {
            Talk.Key key = talk.key();
            if (key.letter() == '\n' || key.letter() == '\r') {
                break;
            }
            String word = question.events().get(String.valueOf(Character.toLowerCase(key.letter())));
            if (word == null) {
                talk.say("   (no such key)");
                continue;
            }
            first = first < 0 ? key.millis() : first;
            long after = key.millis() - first;
            times.add(word + " at " + after / 1000 + "." + after / 100 % 10 + " s");
            talk.say("   " + times.get(times.size() - 1));
            heard.add(word);
        }
        String order = heard.isEmpty()
                ? "nothing"
                : heard.size() == 1 ? heard.iterator().next() + "-only" : String.join("-then-", heard);
        Optional<Taken> taken = take(order);
        return taken.map(one -> new Taken(
                one.values(), one.typed(), one.echo(), times.isEmpty() ? "" : "heard " + String.join(", ", times)));
    }

    private Optional<Taken> readings() {
        talk.say("Type each reading and Enter; an empty line ends it. The last reading is the answer.");
        List<String> times = new ArrayList<>();
        String lastReading = "";
        long first = -1;
        while (true) {
            String text = talk.line("reading > ").strip();
            if (text.isEmpty()) {
                break;
            }
            AnswerText.Typed read = AnswerText.read(item, item.values().get(0), text, visit);
            if (read.value().isEmpty()) {
                read.mistake().ifPresent(this::explain);
                continue;
            }
            long now = talk.millis();
            first = first < 0 ? now : first;
            times.add(text + " at " + (now - first) / 1000 + " s");
            lastReading = text;
        }
        if (lastReading.isEmpty()) {
            return Optional.empty();
        }
        return take(lastReading).map(one -> new Taken(one.values(), one.typed(), one.echo(), String.join(", ", times)));
    }
}
