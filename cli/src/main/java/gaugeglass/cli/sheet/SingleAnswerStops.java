package gaugeglass.cli.sheet;

import gaugeglass.engine.Assessment;
import gaugeglass.engine.Assessment.Finding;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.book.Book;
import gaugeglass.engine.book.Card;
import gaugeglass.engine.book.Limit;
import gaugeglass.engine.book.RuleEntry;
import gaugeglass.engine.book.Urgency;
import gaugeglass.engine.facts.Fitted;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
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
import java.util.Set;
import java.util.TreeSet;

/**
 * Every answer that forbids firing by itself, whatever else is seen.
 *
 * <p>Nobody keeps a list of them: the engine is asked, for each answer that can be given, what it finds when that answer
 * is all it knows. Of a choice every word is tried. A quantity or a number is tried at every limit that it could be held
 * against and between each two of them, where no rule can tell one value from the next.
 */
public final class SingleAnswerStops {
    /** The tag of the piece of equipment that an answer is tried on. */
    private static final String ANY = "any";

    /** No rule of these looks at the day; where one did, its answer would be a date, and dates are not tried. */
    private static final LocalDate DAY = LocalDate.EPOCH;

    private final Rulebook rulebook;
    private final Vocabulary vocabulary;
    private final List<Stop> stops = new ArrayList<>();
    private final Set<String> gating = new LinkedHashSet<>();

    /**
     * One or more answers to one question that are a stop.
     *
     * @param item the id of the item, or of a count
     * @param member for a fixed set, the member it was answered for; empty otherwise
     * @param words the words of the answer, one for each part; empty where it is a value in a span
     * @param from the least value, in the usual unit or as a number; zero where it is words
     * @param fromIncluded whether the least value itself is a stop
     * @param to the greatest value
     * @param toIncluded whether the greatest value itself is a stop
     * @param card what is found then
     */
    public record Stop(
            String item,
            String member,
            List<String> words,
            Rational from,
            boolean fromIncluded,
            Rational to,
            boolean toIncluded,
            Card card) {
        public Stop {
            words = List.copyOf(words);
        }

        /** Whether it is a span of values rather than a word. */
        public boolean isSpan() {
            return words.isEmpty();
        }

        /** Whether a value lies in the span. */
        public boolean holds(Rational value) {
            int low = value.compareTo(from);
            int high = value.compareTo(to);
            return isSpan() && (low > 0 || fromIncluded && low == 0) && (high < 0 || toIncluded && high == 0);
        }
    }

    private SingleAnswerStops(Rulebook rulebook) {
        this.rulebook = rulebook;
        this.vocabulary = rulebook.vocabulary();
    }

    /** Asks the engine. */
    public static SingleAnswerStops of(Rulebook rulebook) {
        SingleAnswerStops all = new SingleAnswerStops(rulebook);
        Set<String> asked = all.asked();
        for (ItemType item : all.vocabulary.items()) {
            if (asked.contains(item.id())) {
                all.item(item);
            }
        }
        for (Kind kind : all.vocabulary.kinds()) {
            if (kind.isCounted() && asked.contains(kind.countId())) {
                all.count(kind);
            }
        }
        return all;
    }

    /** All of them, in the order of the vocabulary. */
    public List<Stop> all() {
        return List.copyOf(stops);
    }

    /** Those of one question. */
    public List<Stop> of(String item, String member) {
        return stops.stream()
                .filter(stop -> stop.item().equals(item) && stop.member().equals(member))
                .toList();
    }

    /** The questions whose answer a stop before firing needs; while one of them is not known, nor is the gate. */
    public Set<String> gating() {
        return Set.copyOf(gating);
    }

    // ---- which questions

    /** The questions that a stop looks at at all. */
    private Set<String> asked() {
        Book book = rulebook.book();
        Set<String> asked = new LinkedHashSet<>();
        for (RuleEntry rule : book.rules()) {
            Card card = book.card(rule.card());
            if (card.sign() || book.band(rule).urgency() != Urgency.STOP) {
                continue;
            }
            Set<String> own = new LinkedHashSet<>();
            rule.needs().forEach(need -> vocabulary.item(need).ifPresent(item -> behind(item, own)));
            for (RuleEntry.Step step : rule.steps()) {
                if (step.type().equals(Fitted.class.getName())
                        && !step.literal().isEmpty()) {
                    own.add(vocabulary.kind(step.literal()).orElseThrow().countId());
                }
            }
            asked.addAll(own);
            if (card.stage().isBeforeFiring()) {
                gating.addAll(own);
            }
        }
        return asked;
    }

    private void behind(ItemType item, Set<String> into) {
        if (item.isReckoned()) {
            rulebook.workedOutFrom(item).forEach(from -> behind(from, into));
        } else {
            into.add(item.id());
        }
    }

    // ---- which answers

    private void item(ItemType item) {
        Kind kind = vocabulary.kind(item.kind()).orElseThrow();
        if (kind.isFixed()) {
            for (Object member : vocabulary.members(kind)) {
                item(item, List.of(ANY, member), Words.of((Enum<?>) member));
            }
        } else {
            item(item, kind.isCounted() ? List.of(ANY) : List.of(), "");
        }
    }

    private void item(ItemType item, List<Object> keys, String member) {
        List<Component> parts = item.values();
        if (item.isFinite()) {
            for (Record answer : item.completions(keys)) {
                List<String> words = new ArrayList<>();
                item.valuesOf(answer).forEach(value -> words.add(Words.of((Enum<?>) value)));
                for (String card : found(one(item).seen(answer).build())) {
                    stops.add(new Stop(
                            item.id(), member, words, Rational.ZERO, true, Rational.ZERO, true, book().card(card)));
                }
            }
        } else if (parts.size() == 1 && parts.get(0).form() == Component.Form.QUANTITY) {
            Component part = parts.get(0);
            spans(item.id(), member, limits(part), false, value -> one(item)
                    .seen(item.make(keys, List.of(Quantity.of(value, part.unit()))))
                    .build());
        } else if (parts.size() == 1 && parts.get(0).form() == Component.Form.COUNT) {
            spans(
                    item.id(),
                    member,
                    numbers(
                            Integer.parseInt(parts.get(0).from()),
                            Integer.parseInt(parts.get(0).to())),
                    true,
                    value -> one(item)
                            .seen(item.make(keys, List.of(value.numerator().intValueExact())))
                            .build());
        }
    }

    private void count(Kind kind) {
        spans(kind.countId(), "", numbers(0, kind.most()), true, value -> Observations.of(vocabulary, ANY)
                .fitted(kind.id(), State.AS_FOUND, value.numerator().intValueExact())
                .build());
    }

    private Book book() {
        return rulebook.book();
    }

    /** Nothing but the piece of equipment that the item is about. */
    private Observations.Builder one(ItemType item) {
        Observations.Builder nothing = Observations.of(vocabulary, ANY);
        Kind counted = vocabulary.counted(vocabulary.kind(item.kind()).orElseThrow());
        return counted.isCounted() ? nothing.tag(counted.id(), ANY) : nothing;
    }

    /** The cards found as a stop. */
    private Set<String> found(Observations observations) {
        Assessment assessment = rulebook.assess(observations, DAY);
        Set<String> found = new TreeSet<>();
        for (Finding finding : assessment.findings()) {
            if (finding.urgency() == Urgency.STOP) {
                found.add(finding.rule());
            }
        }
        return found;
    }

    // ---- values in a span

    /** The ends of a part's span, zero, and every limit in between, in its usual unit. */
    private List<Rational> limits(Component part) {
        Rational least = part.least().value();
        Rational most = part.most().value();
        Set<Rational> points = new TreeSet<>(List.of(least, most));
        add(points, Rational.ZERO, least, most);
        for (Limit limit : book().allLimits()) {
            if (limit.value() instanceof Quantity quantity
                    && quantity.dimension() == part.unit().dimension()) {
                add(points, quantity.valueIn(part.unit()), least, most);
            }
        }
        return List.copyOf(points);
    }

    private static void add(Set<Rational> points, Rational value, Rational least, Rational most) {
        if (value.compareTo(least) > 0 && value.compareTo(most) < 0) {
            points.add(value);
        }
    }

    /** The ends of a span of whole numbers, and every limit with its neighbours. */
    private List<Rational> numbers(int least, int most) {
        Set<Rational> points = new TreeSet<>(List.of(Rational.of(least), Rational.of(most)));
        List<Integer> near = new ArrayList<>(List.of(0, 1));
        for (Limit limit : book().allLimits()) {
            if (limit.value() instanceof Integer number) {
                near.add(number);
            }
        }
        for (int number : near) {
            for (int by = -1; by <= 1; by++) {
                add(points, Rational.of(number + by), Rational.of(least), Rational.of(most));
            }
        }
        return List.copyOf(points);
    }

    private interface Seen {
        Observations with(Rational value);
    }

    /** Tries each point and, unless only whole numbers count, the stretch between each two of them. */
    private void spans(String item, String member, List<Rational> points, boolean whole, Seen seen) {
        Map<String, Open> open = new LinkedHashMap<>();
        for (int i = 0; i < points.size(); i++) {
            Rational point = points.get(i);
            step(item, member, open, found(seen.with(point)), point, point, true);
            if (i + 1 < points.size()) {
                Rational next = points.get(i + 1);
                Rational middle = point.plus(next).dividedBy(Rational.of(2));
                if (whole && next.minus(point).equals(Rational.ONE)) {
                    continue;
                }
                if (whole) {
                    middle = point.plus(Rational.ONE);
                }
                step(item, member, open, found(seen.with(middle)), point, next, false);
            }
        }
        close(item, member, open, Set.of());
    }

    /** A span that is being followed. */
    private record Open(Rational from, boolean fromIncluded, Rational to, boolean toIncluded) {}

    private void step(
            String item,
            String member,
            Map<String, Open> open,
            Set<String> found,
            Rational from,
            Rational to,
            boolean isPoint) {
        close(item, member, open, found);
        for (String card : found) {
            Open before = open.get(card);
            open.put(
                    card,
                    before == null
                            ? new Open(from, isPoint, to, isPoint)
                            : new Open(before.from(), before.fromIncluded(), to, isPoint));
        }
    }

    private void close(String item, String member, Map<String, Open> open, Set<String> but) {
        for (String card : List.copyOf(open.keySet())) {
            if (!but.contains(card)) {
                Open span = open.remove(card);
                stops.add(new Stop(
                        item,
                        member,
                        List.of(),
                        span.from(),
                        span.fromIncluded(),
                        span.to(),
                        span.toIncluded(),
                        book().card(card)));
            }
        }
    }
}
