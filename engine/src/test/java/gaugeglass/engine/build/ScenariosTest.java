package gaugeglass.engine.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import gaugeglass.engine.build.ScenarioRunner.Ran;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import gaugeglass.engine.toy.Workshop;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Scenarios are read strictly, run in both states, and what a card lacks is told. */
class ScenariosTest {
    private final ScenarioRunner runner = new ScenarioRunner(
            Workshop.built().stored(), new Workshop(), Workshop.built().loader());

    private List<Scenario> read(String card, String... scenarios) {
        StringBuilder text = new StringBuilder("cards:\n  - id: ").append(card).append("\n    scenarios:\n");
        for (String scenario : scenarios) {
            text.append(scenario.indent(6).replaceFirst("^      ", "      - ").replace("\n      ", "\n        "));
        }
        return ScenarioReader.read(
                Map.of("a.cards.yaml", text.toString()),
                runner.rulebook().vocabulary(),
                runner.rulebook().book().cards(),
                runner.rulebook().book().limits().keySet());
    }

    private List<String> faults(String card, String scenario) {
        return runner.run(read(card, scenario).get(0)).faults();
    }

    private List<String> mistakes(String card, String... scenarios) {
        Mistakes thrown = catchThrowableOfType(Mistakes.class, () -> read(card, scenarios));
        return thrown.all().stream().map(Mistake::message).toList();
    }

    @Test
    void a_scenario_that_comes_out_as_expected_has_no_faults() {
        assertThat(faults("chain.worn", """
                        name: far
                        given: {chain: {wear: 1.2 %}}
                        expect: found far
                        """)).isEmpty();
        assertThat(faults("chain.worn", """
                        name: on the limit
                        given: {chain: {wear: 0.5 %}}
                        expect: in-order
                        on-limit: chain.wear
                        """)).isEmpty();
        assertThat(faults("ride.grinding", """
                        name: a sign is judged too
                        given: {ride: {noise: grinding}}
                        expect: found seen
                        """)).isEmpty();
        assertThat(faults("shop.cold", """
                        name: the site stands beside the unit
                        given: {site: {temperature: 30 F, floor: level}}
                        expect: found cold
                        """)).isEmpty();
    }

    @Test
    void a_scenario_that_comes_out_otherwise_says_what_was_expected_and_what_came() {
        Ran ran = runner.run(read("wheel.soft", """
                        name: soft
                        given:
                          wheels:
                            - {tag: A, place: rear, pressure: 20 psi}
                            - {tag: B, place: front}
                        expect: found soft
                        """).get(0));
        assertThat(ran.report()).isEqualTo("""
                        a.cards.yaml:4: wheel.soft: soft
                          expected found soft for A, came out undetermined (missing: wheel.marked of A)
                          expected found soft for B, came out not-applicable""");
    }

    @Test
    void each_subject_is_expected_for_and_none_is_forgotten() {
        assertThat(faults("wheel.soft", """
                        name: two
                        given: {wheels: [{tag: A, place: front}, {tag: B, place: rear}]}
                        expect: {A: not-applicable, C: in-order}
                        """))
                .containsExactly(
                        "expected in-order for C, which is not there; there is [A, B]",
                        "nothing is expected for B, which came out undetermined (missing: wheel.marked of B)");
    }

    @Test
    void both_states_are_expected_where_something_was_done() {
        String given = """
                name: replaced
                given: {chain: {wear: 1.2 %}, as-left: {chain: {wear: 0 %}}}
                expect: in-order
                """;
        assertThat(faults("chain.worn", given + "as-found: found far\n")).isEmpty();
        assertThat(faults("chain.worn", given + "as-found: found worn\n"))
                .containsExactly("expected found worn at arrival, came out found far");
        assertThat(mistakes("chain.worn", given))
                .containsExactly("a.cards.yaml:6:17: cards/1/scenarios/1: something was done on this visit, but only"
                        + " its end is expected; expected as-found: what the card says at arrival");
        assertThat(mistakes("chain.worn", """
                        name: nothing done
                        given: {chain: {wear: 0 %}}
                        expect: in-order
                        as-found: in-order
                        """))
                .hasSize(1)
                .first()
                .asString()
                .contains("nothing was done on this visit");
    }

    @Test
    void what_is_missing_must_be_named_and_a_reading_must_lie_on_its_limit() {
        assertThat(faults("chain.short", """
                        name: no spares seen
                        given: {chain: {size: {length: 50 in, links: 90}}}
                        expect: undetermined
                        missing: [chain.spares, chain.size]
                        """))
                .containsExactly("expected chain.size among what is missing; named is [chain.spares]");
        assertThat(faults("chain.worn", """
                        name: beside the limit
                        given: {chain: {wear: 0.4 %}}
                        expect: in-order
                        on-limit: chain.wear
                        """))
                .containsExactly("it is said to lie on the limit chain.wear (0.5 %), but moving that by 0.05 % either"
                        + " way changes nothing");
    }

    @Test
    void a_scenario_is_read_strictly_and_all_its_mistakes_are_named() {
        assertThat(mistakes("chain.worn", """
                        name: one
                        gven: {}
                        given:
                        expect: found wron
                        """, """
                        name: one
                        date: tomorrow
                        given: {}
                        expect: in-ordr
                        missing: [chain.waer]
                        on-limit: chain.weer
                        """, """
                        name: three
                        given: {chain: {waer: 0.4 %}}
                        expect: in-order
                        """))
                .satisfiesExactlyInAnyOrder(
                        m -> assertThat(m)
                                .contains(":7:")
                                .contains("\"found wron\" names no band")
                                .contains("\"worn\"?"),
                        m -> assertThat(m)
                                .contains(":5:")
                                .contains("\"gven\" is not a key here")
                                .contains("\"given\"?"),
                        m -> assertThat(m).contains(":8:").contains("another scenario of this name"),
                        m -> assertThat(m).contains(":9:").contains("\"tomorrow\" is no date"),
                        m -> assertThat(m)
                                .contains(":11:")
                                .contains("\"in-ordr\" is no outcome")
                                .contains("\"in-order\"?"),
                        m -> assertThat(m)
                                .contains(":12:")
                                .contains("chain.waer")
                                .contains("\"chain.wear\"?"),
                        m -> assertThat(m)
                                .contains(":13:")
                                .contains("chain.weer")
                                .contains("\"chain.wear\"?"),
                        m -> assertThat(m).contains(":15:").contains("\"waer\"").contains("\"wear\"?"));
    }

    @Test
    void what_a_card_lacks_is_told_exactly() {
        ScenariosWanting wanting = new ScenariosWanting(runner, new Workshop());
        assertThat(wanting.of(runner.rulebook().book().card("frame.old"), List.of()))
                .containsExactly(
                        "found old, by the rule \"frame.old / old\"",
                        "undetermined",
                        "in-order",
                        "not-applicable",
                        "on-limit: frame.life");
        assertThat(wanting.of(runner.rulebook().book().card("brake.none"), List.of()))
                .as("it looks at nothing but what is fitted, and at no item")
                .containsExactly("found none, by the rule \"brake.none / none\"", "undetermined");

        List<Ran> ran = new ArrayList<>();
        read("frame.old", """
                        name: old
                        given: {frame: {material: aluminium, made: 2000-01-01}}
                        expect: found old
                        """, """
                        name: on the limit
                        given: {frame: {material: aluminium, made: 2014-09-14}}
                        expect: in-order
                        on-limit: frame.life
                        """).forEach(scenario -> ran.add(runner.run(scenario)));
        assertThat(wanting.of(runner.rulebook().book().card("frame.old"), ran))
                .containsExactly("undetermined", "not-applicable");
    }
}
