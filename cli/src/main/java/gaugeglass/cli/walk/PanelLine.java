package gaugeglass.cli.walk;

import gaugeglass.checklists.Checklist;
import gaugeglass.checklists.Interview;
import gaugeglass.checklists.Interview.Status;
import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Kind;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One typed line that answers several parts of a panel.
 *
 * <p>A line is taken whole or not at all: were a word of it not understood and the rest kept, what follows it could
 * have slipped to the wrong part.
 */
final class PanelLine {
    /** Leaves a part open. */
    private static final String LEFT_OUT = "-";

    private static final String CANNOT = "u";
    private static final String SAME = "=";
    private static final Pattern ADDRESSED = Pattern.compile("(\\d)\\s*[=:]\\s*(.+)");

    private final Checklist checklist;
    private final LocalDate visit;
    private final String at;
    private final List<Place> places;
    private final Function<Place, Optional<Answer>> remembered;

    private Observations so;
    private final List<Given> given = new ArrayList<>();

    /**
     * What was typed for one part.
     *
     * @param number the part's number on the screen
     * @param answer the answer; empty for a count, and where it cannot be told and the reason is not typed yet
     * @param count how many; only where the part counts
     * @param echo as understood
     */
    record Given(int number, Place place, Optional<Answer> answer, Optional<Integer> count, String echo) {}

    /**
     * What came of a line.
     *
     * @param given for each part that was answered, in the panel's order; nothing where there is a complaint
     * @param complaint what is wrong with the line; empty where nothing is
     */
    record Result(List<Given> given, String complaint) {}

    private static final class Wrong extends Exception {
        private static final long serialVersionUID = 1L;

        Wrong(String words) {
            super(words, null, false, false);
        }
    }

    /**
     * Readies the reading of a line.
     *
     * @param places the parts on the screen, by their numbers from 1
     * @param remembered what last visit's file tells of identity
     * @param at the time of the answers
     */
    PanelLine(
            Checklist checklist,
            Observations observations,
            List<Place> places,
            Function<Place, Optional<Answer>> remembered,
            LocalDate visit,
            String at) {
        this.checklist = checklist;
        this.so = observations;
        this.places = places;
        this.remembered = remembered;
        this.visit = visit;
        this.at = at;
    }

    /**
     * Reads a line.
     *
     * @param order the numbers of the parts that a line without numbers goes over
     */
    Result read(String typed, List<Integer> order) {
        try {
            List<String> pieces = pieces(typed);
            if (ADDRESSED.matcher(pieces.get(0)).matches()) {
                for (String piece : pieces) {
                    addressed(piece);
                }
            } else if (pieces.size() > 1) {
                apart(pieces, order);
            } else {
                inOrder(new Tokens(typed, visit), order);
            }
            return new Result(List.copyOf(given), "");
        } catch (Wrong e) {
            return new Result(List.of(), e.getMessage());
        }
    }

    /** A semicolon, or a comma before a space, ends an answer. */
    private static List<String> pieces(String typed) {
        List<String> pieces = new ArrayList<>();
        for (String piece : typed.split(";|,\\s")) {
            if (!piece.isBlank()) {
                pieces.add(piece.strip());
            }
        }
        return pieces.isEmpty() ? List.of(typed) : pieces;
    }

    private void addressed(String piece) throws Wrong {
        Matcher matcher = ADDRESSED.matcher(piece);
        if (!matcher.matches()) {
            throw new Wrong("\"" + piece + "\" does not say which part it answers; type it as 2=" + piece);
        }
        int number = Integer.parseInt(matcher.group(1));
        if (number < 1 || number > places.size()) {
            throw new Wrong("there is no part " + number);
        }
        Status status = status(number);
        if (status == Status.CLOSED || status == Status.WAITING) {
            throw new Wrong("part " + number + " is not asked as things stand: "
                    + (status == Status.CLOSED ? "another answer closes it" : "answer what it hangs on first"));
        }
        whole(number, matcher.group(2));
    }

    private void apart(List<String> pieces, List<Integer> order) throws Wrong {
        int next = 0;
        for (int number : order) {
            if (next < pieces.size() && isAsked(number)) {
                whole(number, pieces.get(next++));
            }
        }
        if (next < pieces.size()) {
            throw new Wrong("\"" + pieces.get(next) + "\" is more than was asked");
        }
    }

    private void whole(int number, String piece) throws Wrong {
        Tokens tokens = new Tokens(piece, visit);
        one(number, tokens);
        if (!tokens.isAtEnd()) {
            throw new Wrong("part " + number + ": \"" + tokens.rest() + "\" is left over");
        }
    }

    private void inOrder(Tokens tokens, List<Integer> order) throws Wrong {
        for (int number : order) {
            if (tokens.isAtEnd()) {
                return;
            }
            // A part that an answer before it on this line closes takes no word.
            if (isAsked(number)) {
                one(number, tokens);
            }
        }
        if (!tokens.isAtEnd()) {
            throw new Wrong("\"" + tokens.rest() + "\" is more than was asked");
        }
    }

    private boolean isAsked(int number) {
        Status status = status(number);
        return status == Status.OPEN || status == Status.ANSWERED;
    }

    private Status status(int number) {
        Place place = places.get(number - 1);
        return Interview.of(checklist, so).status(place.question().gives(), place.keys());
    }

    private void one(int number, Tokens tokens) throws Wrong {
        Place place = places.get(number - 1);
        String word = tokens.next();
        if (word.equals(LEFT_OUT)) {
            tokens.pass();
            return;
        }
        if (word.equalsIgnoreCase(CANNOT)) {
            tokens.pass();
            if (!place.question().isCount()) {
                // Only so that what hangs on it is found to be asked; the reason is still to come.
                so = so.toBuilder()
                        .put(Answer.unread(place.question().item().orElseThrow(), place.keys(), State.AS_FOUND, "?"))
                        .build();
            }
            given.add(new Given(number, place, Optional.empty(), Optional.empty(), "cannot tell"));
            return;
        }
        if (place.question().isCount()) {
            count(number, place, tokens);
            return;
        }
        ItemType item = place.question().item().orElseThrow();
        Answer answer;
        String echo;
        if (word.equals(SAME)) {
            Answer same = remembered
                    .apply(place)
                    .orElseThrow(() -> new Wrong("part " + number + ": nothing is known of last visit"));
            tokens.pass();
            answer = new Answer(item, place.keys(), State.AS_FOUND, same.fact(), "", "", List.of(), at, same.typed());
            echo = "as last visit";
        } else {
            Taken taken;
            try {
                taken = tokens.take(item);
            } catch (Tokens.Unfit e) {
                throw new Wrong("part " + number + ": " + e.getMessage());
            }
            answer = new Answer(
                    item,
                    place.keys(),
                    State.AS_FOUND,
                    Optional.of(item.make(place.keys(), taken.values())),
                    "",
                    taken.note(),
                    List.of(),
                    at,
                    taken.typed());
            echo = taken.echo();
        }
        so = so.toBuilder().without(answer).put(answer).build();
        given.add(new Given(number, place, Optional.of(answer), Optional.empty(), echo));
    }

    private void count(int number, Place place, Tokens tokens) throws Wrong {
        Kind kind = so.vocabulary().kind(place.question().kind()).orElseThrow();
        String word = tokens.next();
        int how =
                Count.read(word, kind).orElseThrow(() -> new Wrong("part " + number + ": " + Count.wrong(word, kind)));
        tokens.pass();
        so = so.toBuilder().fitted(kind.id(), State.AS_FOUND, how).build();
        given.add(new Given(number, place, Optional.empty(), Optional.of(how), String.valueOf(how)));
    }
}
