package gaugeglass.steam;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.book.Limit;
import gaugeglass.engine.build.Scenario;
import gaugeglass.engine.build.ScenarioRunner.Came;
import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.steam.proof.SteamProof;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Equal quantities in different units come out alike, on both sides of and on every limit.
 *
 * <p>Every card has a scenario on each limit that it hangs on, and scenarios a step beyond. Each is judged again with every
 * quantity that was answered written in another unit of its dimension, until each has been written in all of them, and
 * again with the limits so written.
 */
class EveryUnitTest {
    private static final int MOST_UNITS = Stream.of(Unit.values())
            .mapToInt(unit -> Unit.of(unit.dimension()).size())
            .max()
            .orElseThrow();

    @TestFactory
    Stream<DynamicTest> what_was_measured_comes_out_alike_in_every_unit() {
        return SteamProof.scenarios().stream()
                .filter(scenario -> !quantities(scenario).isEmpty())
                .map(scenario -> DynamicTest.dynamicTest(scenario.title(), () -> {
                    Collection<Limit> limits = limits(0);
                    for (State state : State.values()) {
                        Map<String, Came> typed = SteamProof.runner().came(scenario, state, limits);
                        for (int turn = 1; turn < MOST_UNITS; turn++) {
                            assertThat(came(scenario, state, turn, limits))
                                    .as("%s, each quantity %d units on: %s", state, turn, quantities(scenario))
                                    .isEqualTo(typed);
                        }
                    }
                }));
    }

    @TestFactory
    Stream<DynamicTest> a_limit_says_the_same_in_every_unit() {
        return SteamProof.scenarios().stream()
                .filter(scenario -> !scenario.onLimits().isEmpty())
                .map(scenario -> DynamicTest.dynamicTest(scenario.title(), () -> {
                    Map<String, Came> written = SteamProof.runner().came(scenario, State.AS_LEFT, limits(0));
                    for (int turn = 1; turn < MOST_UNITS; turn++) {
                        assertThat(SteamProof.runner().came(scenario, State.AS_LEFT, limits(turn)))
                                .as("each limit %d units on", turn)
                                .isEqualTo(written);
                    }
                }));
    }

    @Test
    void every_unit_of_pressure_has_its_turn() {
        List<Unit> turns = new ArrayList<>();
        for (int turn = 0; turn < MOST_UNITS; turn++) {
            turns.add(turned(Quantity.of(1, Unit.PSI), turn).unit());
        }
        assertThat(turns)
                .contains(
                        Unit.PSI,
                        Unit.OUNCE_PER_SQUARE_INCH,
                        Unit.INCH_OF_WATER,
                        Unit.INCH_OF_MERCURY,
                        Unit.KILOPASCAL);
    }

    private static Map<String, Came> came(Scenario scenario, State state, int turn, Collection<Limit> limits) {
        Observations.Builder builder = scenario.given().toBuilder();
        for (Answer answer : scenario.given().answers()) {
            answer.fact().ifPresent(fact -> {
                List<Object> values = new ArrayList<>();
                for (Object value : answer.item().valuesOf(fact)) {
                    values.add(value instanceof Quantity quantity ? turned(quantity, turn) : value);
                }
                Record turned = answer.item().make(answer.keys(), values);
                builder.without(answer);
                builder.put(Answer.seen(answer.item(), answer.keys(), answer.state(), turned));
            });
        }
        return SteamProof.runner().came(scenario.card(), builder.build(), scenario.date(), state, limits);
    }

    private static Collection<Limit> limits(int turn) {
        Map<String, Limit> limits = new LinkedHashMap<>();
        SteamProof.stored().book().limits().forEach((id, limit) -> {
            Object value = limit.value() instanceof Quantity quantity ? turned(quantity, turn) : limit.value();
            limits.put(id, limit.with(value, limit.written(), limit.layer()));
        });
        return limits.values();
    }

    private static List<Quantity> quantities(Scenario scenario) {
        List<Quantity> all = new ArrayList<>();
        for (Answer answer : scenario.given().answers()) {
            answer.fact().ifPresent(fact -> answer.item().valuesOf(fact).forEach(value -> {
                if (value instanceof Quantity quantity) {
                    all.add(quantity);
                }
            }));
        }
        return all;
    }

    /** The same amount in the unit so many places on, round and round, among those of its dimension. */
    private static Quantity turned(Quantity quantity, int turn) {
        List<Unit> units = Unit.of(quantity.dimension());
        return quantity.inUnit(units.get((units.indexOf(quantity.unit()) + turn) % units.size()));
    }
}
