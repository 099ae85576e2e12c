package gaugeglass.cli.walk;

import gaugeglass.checklists.Interview.Status;
import gaugeglass.checklists.Panel;
import gaugeglass.checklists.Question;
import gaugeglass.cli.report.Naming;
import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.vocabulary.ItemType;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One panel being answered: its parts on one screen, in one line or one by one.
 *
 * <p>Each part has an answer of its own. Nothing is filled in, and no key answers several parts.
 */
final class PanelAsk {
    /** An order about one part: {@code u2 no lamp}, {@code n2 new last year}, {@code p2 glass.jpg}, {@code ?2}. */
    private static final Pattern ABOUT_PART = Pattern.compile("\\.?([unpUNP?])(\\d)(?:\\s+(.*))?");

    private final Walk walk;
    private final Talk talk;
    private final AskScreen screen;
    private final List<Place> places;

    /** Whether it was answered before, so that Enter leaves what stands. */
    private final boolean again;

    PanelAsk(Walk walk, List<Place> places) {
        this.walk = walk;
        this.talk = walk.talk();
        this.screen = walk.screen();
        this.places = places;
        this.again = places.stream().allMatch(walk::isAnswered);
    }

    void ask() {
        show();
        while (true) {
            List<Integer> open = open();
            if (open.isEmpty() && !again) {
                walk.answered(places);
                return;
            }
            if (again) {
                talk.say("Enter leaves what stands.");
            }
            String typed = talk.line("> ").strip();
            if (typed.isEmpty()) {
                if (again) {
                    walk.answered(places);
                    return;
                }
                talk.say("Nothing was typed. Type the answers in order, s to leave them for later, or ? for help.");
                continue;
            }
            Matcher part = ABOUT_PART.matcher(typed);
            if (part.matches()) {
                aboutPart(
                        part.group(1).toLowerCase(Locale.ROOT),
                        part.group(2),
                        Optional.ofNullable(part.group(3)).orElse("").strip());
            } else {
                Optional<Order> order = Order.of(typed, false);
                if (order.isPresent()) {
                    if (obey(order.get(), open)) {
                        return;
                    }
                } else if (typed.equalsIgnoreCase("go") && live().isPresent()) {
                    go(live().get());
                } else {
                    line(typed, again ? all() : open);
                }
            }
            List<Integer> left = open();
            if (!left.isEmpty() && !left.equals(open)) {
                talk.say("Still open:");
                left.forEach(number -> part(number, false));
            }
        }
    }

    private Place place(int number) {
        return places.get(number - 1);
    }

    private List<Integer> all() {
        List<Integer> numbers = new ArrayList<>();
        for (int number = 1; number <= places.size(); number++) {
            numbers.add(number);
        }
        return numbers;
    }

    /** The parts to be answered, and those that hang on one of them. */
    private List<Integer> open() {
        List<Integer> numbers = new ArrayList<>();
        Set<String> open = new LinkedHashSet<>();
        for (int number = 1; number <= places.size(); number++) {
            Question question = place(number).question();
            Status status = walk.status(place(number));
            boolean hangs = status == Status.WAITING
                    && walk.current(place(number)).isEmpty()
                    && question.askWhen().stream().anyMatch(condition -> open.contains(condition.item()));
            if (status == Status.OPEN || hangs) {
                open.add(question.gives());
                numbers.add(number);
            }
        }
        return numbers;
    }

    private void show() {
        Place first = places.get(0);
        Panel panel = first.section().panel(first.question()).orElseThrow();
        walk.headLine(first);
        Set<String> cautions = new LinkedHashSet<>();
        for (Place place : places) {
            walk.caution(place.question())
                    .filter(caution -> cautions.add(caution.id()))
                    .ifPresent(screen::caution);
        }
        talk.say(panel.title());
        if (!panel.look().isEmpty()) {
            talk.say("   Look: " + panel.look());
        }
        walk.reason(places);
        int middle = Math.min(2, places.size());
        int rows = 9;
        for (Place place : places) {
            rows += AskScreen.rows(place.question().look()) + 3;
        }
        boolean looks = rows <= AskScreen.ROOM;
        for (int number = 1; number <= places.size(); number++) {
            part(number, looks);
        }
        talk.say("In order, as 1 2 1 (- leaves open) or " + middle + "=1. u" + middle + ": cannot tell. ?" + middle
                + ": look. ?: help");
        if (live().isPresent()) {
            Question question = place(live().get()).question();
            talk.say(
                    question.take() == Question.Take.EVENTS
                            ? "go: mark " + live().get() + " by keys as you hear it."
                            : "go: type readings for " + live().get() + " as you take them; times are kept.");
        }
    }

    private void part(int number, boolean look) {
        Place place = place(number);
        screen.numbered(number, place.question(), look, hangsOn(place.question()));
        walk.current(place).ifPresent(answer -> talk.say("     Answered: " + Naming.answered(answer)));
        walk.remembered(place)
                .ifPresent(answer -> talk.say("     Last visit: " + Naming.answered(answer) + "  (= for the same)"));
    }

    /** In words, what another part must be answered with for this one to be asked. */
    private String hangsOn(Question question) {
        List<String> words = new ArrayList<>();
        question.askWhen().forEach(condition -> {
            for (int number = 1; number <= places.size(); number++) {
                Question other = place(number).question();
                if (other.gives().equals(condition.item())) {
                    words.add(number + " is " + choices(other, condition.words()));
                }
            }
        });
        return String.join(" and ", words);
    }

    /** Choices by their numbers, which are on the screen; counts by their words. */
    private static String choices(Question question, List<String> words) {
        List<String> known =
                question.item().map(item -> item.values().get(0).choices()).orElse(List.of());
        List<String> runs = new ArrayList<>();
        int from = 0;
        for (int i = 0; i < words.size(); i++) {
            int at = known.indexOf(words.get(i));
            boolean last = i + 1 == words.size() || at < 0 || known.indexOf(words.get(i + 1)) != at + 1;
            if (last) {
                int first = known.indexOf(words.get(from));
                runs.add(at < 0 ? words.get(i) : first == at ? String.valueOf(at + 1) : first + 1 + "-" + (at + 1));
                from = i + 1;
            }
        }
        return String.join(" or ", runs);
    }

    private Optional<Integer> live() {
        return open().stream()
                .filter(number -> place(number).question().take() != Question.Take.TYPED)
                .findFirst();
    }

    /** Takes a part by keys or readings; it may be taken before what it hangs on is answered, as it happens before. */
    private void go(int number) {
        Place place = place(number);
        ItemType item = place.question().item().orElseThrow();
        new Taking(talk, screen, item, place.question(), walk.date()).take("go").ifPresent(taken -> {
            walk.keep(List.of(new Answer(
                    item,
                    place.keys(),
                    State.AS_FOUND,
                    Optional.of(item.make(place.keys(), taken.values())),
                    "",
                    taken.note(),
                    List.of(),
                    walk.at(),
                    taken.typed())));
            talk.say("   = " + number + " " + taken.echo());
        });
    }

    private void line(String typed, List<Integer> order) {
        PanelLine.Result result = new PanelLine(
                        walk.checklist(), walk.observations(), places, walk::remembered, walk.date(), walk.at())
                .read(typed, order);
        if (!result.complaint().isEmpty()) {
            talk.say("Not understood: " + result.complaint());
            talk.say("Nothing of this line was taken.");
            return;
        }
        List<Answer> answers = new ArrayList<>();
        List<String> echoes = new ArrayList<>();
        for (PanelLine.Given given : result.given()) {
            given.answer().ifPresent(answers::add);
            echoes.add(given.number() + " " + given.echo());
        }
        if (!answers.isEmpty()) {
            walk.keep(answers);
        }
        if (!echoes.isEmpty()) {
            talk.say("   = " + String.join("; ", echoes));
        }
        for (PanelLine.Given given : result.given()) {
            given.count().ifPresent(number -> walk.count(given.place(), String.valueOf(number), State.AS_FOUND));
            if (given.answer().isEmpty() && given.count().isEmpty()) {
                talk.say(given.number() + " " + given.place().question().ask());
                walk.cannot(given.place(), "");
            }
        }
    }

    private void aboutPart(String letter, String digit, String rest) {
        int number = Integer.parseInt(digit);
        if (number < 1 || number > places.size()) {
            talk.say("There is no part " + number + " here.");
            return;
        }
        Place place = place(number);
        switch (letter) {
            case "u" -> {
                if (walk.status(place) == Status.CLOSED || walk.status(place) == Status.WAITING) {
                    talk.say("Part " + number + " is not asked as things stand.");
                } else if (walk.cannot(place, rest)) {
                    talk.say("   = " + number + " cannot tell");
                }
            }
            case "n" -> walk.note(place, rest, false);
            case "p" -> walk.note(place, rest, true);
            default -> {
                screen.question(place.question(), walk.caution(place.question()));
                walk.reason(List.of(place));
                screen.choices(place.question());
            }
        }
    }

    /** Does what was ordered; true when the panel has been left. */
    private boolean obey(Order order, List<Integer> open) {
        switch (order.verb()) {
            case CANNOT, NOTE, PHOTO -> {
                if (open.size() == 1) {
                    aboutPart(String.valueOf(order.verb().letter()), String.valueOf(open.get(0)), order.words());
                } else {
                    talk.say("Say for which part, as " + order.verb().letter() + "2.");
                }
                return false;
            }
            case HELP -> {
                screen.panelHelp();
                return false;
            }
            case SKIP -> {
                walk.skip(open.stream().map(this::place).toList());
                return true;
            }
            case BACK -> {
                return walk.back();
            }
            default -> {
                return walk.obey(order, places.get(places.size() - 1));
            }
        }
    }
}
