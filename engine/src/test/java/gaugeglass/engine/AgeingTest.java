package gaugeglass.engine;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.Assessment.Due;
import gaugeglass.engine.Assessment.Outcome;
import gaugeglass.engine.Assessment.Word;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.InspectionReader;
import gaugeglass.engine.toy.Workshop;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What will be found by waiting alone. */
class AgeingTest {
    private static Inspection.Visited bicycle(String frame) {
        String text =
                "format: 1\nsite: {id: yard}\nvisit: {date: 2026-09-14}\nbicycles: [{id: R1, frame: " + frame + "}]\n";
        return new InspectionReader(Workshop.rulebook().vocabulary())
                .read("visit.yaml", text)
                .units()
                .get(0);
    }

    private static List<Due> due(String frame) {
        return Workshop.rulebook().due(bicycle(frame).observations());
    }

    private static boolean isFound(Inspection.Visited visited, LocalDate day) {
        List<Outcome> outcomes =
                Workshop.rulebook().assess(visited.observations(), day).outcomes();
        return outcomes.stream()
                .anyMatch(outcome -> outcome.rule().equals("frame.old") && outcome.outcome() == Word.FOUND);
    }

    @ParameterizedTest
    @CsvSource({"2020-02-29", "2019-08-31", "2021-03-01", "2016-02-29", "2024-12-31"})
    void the_day_is_the_first_on_which_the_rule_finds(LocalDate made) {
        Inspection.Visited visited = bicycle("{material: aluminium, made: " + made + "}");

        Due due = Workshop.rulebook().due(visited.observations()).get(0);

        assertThat(due.rule()).isEqualTo("frame.old");
        assertThat(due.limit()).isEqualTo("frame.life");
        assertThat(due.since()).contains(made);
        assertThat(isFound(visited, due.day().orElseThrow())).isTrue();
        assertThat(isFound(visited, due.day().orElseThrow().minusDays(1))).isFalse();
    }

    @Test
    void what_a_limit_is_not_for_never_falls_due() {
        assertThat(due("{material: steel, made: 1990-01-01}")).isEmpty();
    }

    @Test
    void without_its_date_it_falls_due_on_no_known_day() {
        assertThat(due("{material: aluminium}"))
                .containsExactly(
                        new Due("frame.old", "", "frame.made", "frame.life", Optional.empty(), Optional.empty()));
    }

    @Test
    void where_it_is_not_known_what_it_is_it_may_be_of_that_kind_but_its_date_is_known() {
        assertThat(due("{made: 2020-01-01}")).isEmpty();
    }
}
