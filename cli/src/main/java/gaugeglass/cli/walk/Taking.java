package gaugeglass.cli.walk;

import gaugeglass.checklists.Question;
import gaugeglass.engine.observation.AnswerText;
import gaugeglass.engine.quantity.Dimension;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.QuantityFormatException;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.quantity.Unit;
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
import java.util.stream.Collectors;

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
        try {
            Tokens tokens = new Tokens(typed, visit);
            Taken whole = tokens.take(item);
            if (tokens.isAtEnd()) {
                return Optional.of(whole);
            }
        } catch (Tokens.Unfit e) {
            if (item.values().size() == 1) {
                talk.say("Not understood: " + e.getMessage());
                return Optional.empty();
            }
        }
        return partByPart(typed);
    }

    private Optional<Taken> partByPart(String typed) {
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
            AnswerText.Typed read = AnswerText.read(item, part, Tokens.chosen(part, text), visit);
            if (read.value().isEmpty()) {
                read.mistake().ifPresent(this::explain);
                return Optional.empty();
            }
            Object value = read.value().get();
            values.add(value);
            texts.add(value instanceof Enum<?> choice ? Words.of(choice) : text);
            echoes.add(Tokens.echo(part, value));
            if (!read.remark().isEmpty()) {
                remarks.add(read.remark());
            }
        }
        return Optional.of(
                new Taken(values, String.join(" | ", texts), String.join(", ", echoes), String.join("; ", remarks)));
    }

    private void explain(Mistake mistake) {
        talk.say("Not understood: " + Tokens.said(mistake));
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
        Optional<Taken> taken = take(Question.heard(List.copyOf(heard)));
        return taken.map(one -> new Taken(
                one.values(), one.typed(), one.echo(), times.isEmpty() ? "" : "heard " + String.join(", ", times)));
    }

    /** One reading, as typed, and when it was taken, in seconds. */
    private record Reading(String text, Rational at) {}

    /**
     * Readings against time: the clock's, or the time typed before each. Where they are not the answer itself they go with it; the
     * first, the last and the time between them are the answer where it wants just these, else it is asked for.
     */
    private Optional<Taken> readings() {
        Optional<Dimension> other = question.readings();
        talk.say("Type each reading and Enter; an empty line ends it. "
                + (isFall()
                        ? "From a note: the time first, as 90 s 2 in."
                        : other.isPresent() ? "They are kept, with their times." : "The last reading is the answer."));
        List<Reading> readings = new ArrayList<>();
        long first = -1;
        while (true) {
            String text = talk.line("reading > ").strip();
            long now = talk.millis();
            if (text.isEmpty()) {
                break;
            }
            first = first < 0 ? now : first;
            Reading reading = timed(text).orElse(new Reading(text, Rational.of((now - first) / 1000)));
            Optional<String> wrong = unread(reading.text());
            if (wrong.isPresent()) {
                talk.say("Not understood: " + wrong.get());
                continue;
            }
            readings.add(reading);
            talk.say("   " + told(reading));
        }
        if (readings.isEmpty()) {
            return Optional.empty();
        }
        String read = "read " + readings.stream().map(Taking::told).collect(Collectors.joining(", "));
        if (isFall()) {
            return fall(readings.get(0), readings.get(readings.size() - 1), read);
        }
        while (true) {
            if (other.isPresent()) {
                talk.say(question.ask());
                screen.part(item.values().get(0));
            }
            Optional<Taken> taken = take(
                    other.isPresent()
                            ? talk.line("and so > ").strip()
                            : readings.get(readings.size() - 1).text());
            if (taken.isPresent() || other.isEmpty()) {
                return taken.map(one -> new Taken(one.values(), one.typed(), one.echo(), read));
            }
        }
    }

    private static String told(Reading reading) {
        return reading.text() + " at " + reading.at() + " s";
    }

    /** A reading with its time before it; empty where no time stands there. */
    private Optional<Reading> timed(String text) {
        for (int space = text.indexOf(' '); space > 0; space = text.indexOf(' ', space + 1)) {
            String rest = text.substring(space).strip();
            try {
                Rational at =
                        Quantity.parse(text.substring(0, space), Dimension.TIME).valueIn(Unit.SECOND);
                if (unread(rest).isEmpty()) {
                    return Optional.of(new Reading(rest, at));
                }
            } catch (QuantityFormatException e) {
                // The time may be longer: 1 1/2 min.
            }
        }
        return Optional.empty();
    }

    /** Whether the answer is a first reading, a last one and the time between them. */
    private boolean isFall() {
        List<Component> parts = item.values();
        return question.readings().isPresent()
                && parts.size() == 3
                && isOf(parts.get(0), question.readings().get())
                && isOf(parts.get(1), question.readings().get())
                && isOf(parts.get(2), Dimension.TIME);
    }

    private static boolean isOf(Component part, Dimension dimension) {
        return part.form() == Component.Form.QUANTITY && part.unit().dimension() == dimension;
    }

    private Optional<Taken> fall(Reading first, Reading last, String read) {
        try {
            Tokens tokens = new Tokens(
                    first.text() + " " + last.text() + " " + last.at().minus(first.at()) + " s", visit);
            Taken whole = tokens.take(item);
            return Optional.of(new Taken(whole.values(), whole.typed(), whole.echo(), read));
        } catch (Tokens.Unfit e) {
            talk.say("Not understood: " + e.getMessage() + ". Two readings are needed, the later one last.");
            return Optional.empty();
        }
    }

    /** What is wrong with a reading; empty where it is understood. */
    private Optional<String> unread(String text) {
        if (question.readings().isEmpty()) {
            return AnswerText.read(item, item.values().get(0), text, visit)
                    .mistake()
                    .map(Tokens::said);
        }
        try {
            Quantity.parse(text, question.readings().get());
            return Optional.empty();
        } catch (QuantityFormatException e) {
            return Optional.of(e.typed() + ": " + e.problem() + ". Expected " + e.expected());
        }
    }
}
