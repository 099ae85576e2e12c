package gaugeglass.steam;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.book.Card;
import gaugeglass.engine.build.Scenario;
import gaugeglass.engine.build.ScenarioRunner;
import gaugeglass.engine.build.ScenariosWanting;
import gaugeglass.steam.proof.SteamProof;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every card is proven by the scenarios under it. */
class ScenariosTest {
    @TestFactory
    Stream<DynamicTest> every_scenario_comes_out_as_its_card_says() {
        // With -Dscenario=TEXT only those whose title has the text.
        String wanted = System.getProperty("scenario", "");
        return SteamProof.scenarios().stream()
                .filter(scenario -> scenario.title().contains(wanted))
                .map(scenario -> DynamicTest.dynamicTest(scenario.title(), () -> {
                    ScenarioRunner.Ran ran = SteamProof.runner().run(scenario);
                    if (!ran.faults().isEmpty()) {
                        Assertions.fail(ran.report());
                    }
                }));
    }

    @TestFactory
    Stream<DynamicTest> every_card_has_the_scenarios_that_prove_it() {
        List<ScenarioRunner.Ran> all = new ArrayList<>();
        for (Scenario scenario : SteamProof.scenarios()) {
            all.add(SteamProof.runner().run(scenario));
        }
        ScenariosWanting wanting = new ScenariosWanting(SteamProof.runner(), new SteamTrade());
        return SteamProof.stored().book().cards().values().stream()
                .map((Card card) ->
                        DynamicTest.dynamicTest(card.id() + " is complete", () -> assertThat(wanting.of(card, all))
                                .as(card.file() + ":" + card.line() + ": scenarios that " + card.id() + " lacks")
                                .isEmpty()));
    }
}
