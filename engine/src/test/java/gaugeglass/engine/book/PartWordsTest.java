package gaugeglass.engine.book;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.toy.Bicycles;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Words in braces in what a line of work needs: what they stand for, and what a build says of wrong ones. */
class PartWordsTest {
    private static List<Mistake> mistakes(String part, String takeAlong) {
        return PartWords.mistakes(
                "remedies.yaml",
                new Remedy("new-pad", "Fit a new pad", List.of(part), List.of(takeAlong)),
                Bicycles.vocabulary(),
                Set.of("", "brake"));
    }

    @Test
    void an_item_stands_for_all_its_values_and_a_value_for_itself() {
        assertThat(PartWords.place(Bicycles.vocabulary(), "chain.size")
                        .orElseThrow()
                        .value())
                .isEqualTo(-1);
        assertThat(PartWords.place(Bicycles.vocabulary(), "chain.size.links")
                        .orElseThrow()
                        .value())
                .isEqualTo(1);
        assertThat(PartWords.place(Bicycles.vocabulary(), "chain.size.colour")).isEmpty();
        assertThat(PartWords.place(Bicycles.vocabulary(), "chain")).isEmpty();
        assertThat(PartWords.place(Bicycles.vocabulary(), "")).isEmpty();
    }

    @Test
    void what_was_seen_is_filled_in_as_it_is() {
        assertThat(PartWords.filled("a pad, {brake.kind}, for {frame.number}", name -> "$1 \\ " + name))
                .isEqualTo("a pad, $1 \\ brake.kind, for $1 \\ frame.number");
    }

    @ParameterizedTest
    @ValueSource(strings = {"a pad", "a pad, {brake.kind}", "a pad for {frame.material}", "{chain.size.links} links"})
    void what_is_seen_of_the_unit_or_of_the_thing_itself_may_be_named(String part) {
        assertThat(mistakes(part, "a spanner")).isEmpty();
    }

    @Test
    void what_names_nothing_is_told_with_the_nearest_item() {
        assertThat(mistakes("a pad, {brake.kimd}", "a spanner")).singleElement().satisfies(mistake -> {
            assertThat(mistake.what()).isEqualTo("{brake.kimd} is no observation");
            assertThat(mistake.nearest()).isEqualTo("brake.kind");
        });
    }

    /** A wheel's answer is no brake's; a pull's has two keys; what is reckoned is not observed; and once is of nothing. */
    @Test
    void what_is_not_seen_of_the_thing_is_told() {
        assertThat(mistakes("a pad, {wheel.place}", "a spanner")).hasSize(1);
        assertThat(mistakes("a pad, {pull.grip}", "a spanner")).hasSize(1);
        assertThat(mistakes("a pad", "a spanner for {brake.kind}")).hasSize(1);
        assertThat(mistakes("a pad, {brake.kind", "a spanner")).hasSize(1);
    }
}
