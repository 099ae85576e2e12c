package gaugeglass.cli.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.cli.sheet.SingleAnswerStops.Stop;
import gaugeglass.engine.Assessment.Finding;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.book.Card;
import gaugeglass.engine.book.RuleEntry;
import gaugeglass.engine.book.Urgency;
import gaugeglass.engine.facts.Fitted;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.Component;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Kind;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What the engine says of single answers, held against what the index of the rules tells of them. */
class SingleAnswerStopsTest {
    private static final Rulebook RULEBOOK = Rulebook.load(SingleAnswerStopsTest.class.getClassLoader());
    private static final SingleAnswerStops STOPS = SingleAnswerStops.of(RULEBOOK);

    /** The index is made from the rules' text, the stops by judging: neither knows of the other. */
    @Test
    void every_stop_rule_that_looks_at_one_observed_answer_is_among_them() {
        Set<String> wanted = new TreeSet<>();
        for (RuleEntry rule : RULEBOOK.book().rules()) {
            Card card = RULEBOOK.book().card(rule.card());
            boolean counts = rule.steps().stream().anyMatch(step -> step.type().equals(Fitted.class.getName()));
            if (card.sign() || RULEBOOK.book().band(rule).urgency() != Urgency.STOP) {
                continue;
            }
            if (rule.needs().isEmpty() && counts) {
                wanted.add(card.id());
            }
            if (rule.needs().size() == 1 && !counts) {
                ItemType item = RULEBOOK.vocabulary().item(rule.needs().get(0)).orElseThrow();
                long looks = rule.steps().stream()
                        .filter(step -> step.type().equals(item.className()))
                        .count();
                if (!item.isReckoned() && looks == 1) {
                    wanted.add(card.id());
                }
            }
        }
        Set<String> found = STOPS.all().stream().map(stop -> stop.card().id()).collect(Collectors.toSet());

        assertThat(wanted).hasSizeGreaterThan(10);
        assertThat(found).containsAll(wanted);
    }

    @Test
    void each_is_a_stop_of_a_question_that_has_that_answer() {
        for (Stop stop : STOPS.all()) {
            assertThat(stop.card().worst()).as(stop.item()).isEqualTo(Urgency.STOP);
            assertThat(stop.card().cautions()).as(stop.card().id()).isNotEmpty();
            RULEBOOK.vocabulary().item(stop.item()).ifPresent(item -> {
                int part = 0;
                for (String word : stop.words()) {
                    assertThat(item.values().get(part++).choices()).contains(word);
                }
                if (stop.isSpan()) {
                    assertThat(item.values().get(0).form()).isNotEqualTo(Component.Form.CHOICE);
                }
            });
        }
    }

    /** Asked again, with values that were not tried: a little inside and outside of each end, and far inside. */
    @Test
    void a_reading_is_a_stop_exactly_where_the_engine_finds_one() {
        Rational little = Rational.of(1, 1_000_000);
        int judged = 0;
        for (Stop stop : STOPS.all()) {
            ItemType item = RULEBOOK.vocabulary().item(stop.item()).orElse(null);
            if (item == null || !stop.isSpan() || item.values().get(0).form() != Component.Form.QUANTITY) {
                continue;
            }
            Component part = item.values().get(0);
            for (Rational value : List.of(
                    stop.from().minus(little),
                    stop.from(),
                    stop.from().plus(little),
                    stop.from().plus(stop.to()).dividedBy(Rational.of(3)),
                    stop.to().minus(little),
                    stop.to(),
                    stop.to().plus(little))) {
                Quantity quantity = Quantity.of(value, part.unit());
                if (quantity.isBelow(part.least()) || quantity.isAbove(part.most())) {
                    continue;
                }
                assertThat(foundWith(item, stop.member(), quantity)
                                .contains(stop.card().id()))
                        .as(stop.item() + " " + quantity)
                        .isEqualTo(STOPS.of(stop.item(), stop.member()).stream()
                                .anyMatch(one -> one.card().equals(stop.card()) && one.holds(value)));
                judged++;
            }
        }
        assertThat(judged).isGreaterThan(15);
    }

    private static Set<String> foundWith(ItemType item, String member, Object value) {
        Kind kind = RULEBOOK.vocabulary().kind(item.kind()).orElseThrow();
        Observations.Builder seen = Observations.of(RULEBOOK.vocabulary(), "B1");
        List<Object> keys = new ArrayList<>();
        if (kind.isCounted() || kind.isFixed()) {
            seen.tag(RULEBOOK.vocabulary().counted(kind).id(), "A");
            keys.add("A");
        }
        RULEBOOK.vocabulary().members(kind).stream()
                .filter(one -> Words.of((Enum<?>) one).equals(member))
                .forEach(keys::add);
        return RULEBOOK
                .assess(seen.seen(item.make(keys, List.of(value))).build(), LocalDate.of(2026, 9, 14))
                .findings()
                .stream()
                .filter(finding -> finding.urgency() == Urgency.STOP)
                .map(Finding::rule)
                .collect(Collectors.toSet());
    }

    /** Common practice: from a fifth of the lower explosive limit everybody leaves; the meter reads in per cent of it. */
    @Test
    void a_fifth_of_the_explosive_limit_is_one() {
        assertThat(STOPS.of("site.gas-meter", ""))
                .anyMatch(stop -> stop.card().id().equals("site.gas-odour")
                        && stop.holds(Rational.of(20))
                        && !stop.holds(Rational.of(19)));
    }
}
