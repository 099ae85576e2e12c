package gaugeglass.engine.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class NearestTest {

    private static final List<String> WORDS = List.of("kettle", "kettles", "saucepan", "spoon", "spool", "cup");

    @Test
    void a_swapped_dropped_added_or_changed_letter_is_seen_through() {
        assertThat(Nearest.to("ktetle", WORDS)).contains("kettle");
        assertThat(Nearest.to("ketle", WORDS)).contains("kettle");
        assertThat(Nearest.to("saucepann", WORDS)).contains("saucepan");
        assertThat(Nearest.to("saucebam", WORDS)).contains("saucepan");
        assertThat(Nearest.to("Cup", WORDS)).contains("cup");
    }

    @Test
    void a_word_that_is_near_to_nothing_gets_no_offer() {
        assertThat(Nearest.to("bicycle", WORDS)).isEmpty();
        assertThat(Nearest.to("c", WORDS)).isEmpty();
        assertThat(Nearest.to("", WORDS)).isEmpty();
        assertThat(Nearest.to("cup", List.of())).isEmpty();
        assertThat(Nearest.to("k".repeat(10_000), WORDS)).isEmpty();
    }

    @Test
    void equally_near_words_give_the_first_by_alphabet_in_any_order() {
        assertThat(Nearest.to("spoo", List.of("spoon", "spool"))).contains("spool");
        assertThat(Nearest.to("spoo", List.of("spool", "spoon"))).contains("spool");
        assertThat(Nearest.to("spoo", Set.of("spool", "spoon", "cup"))).contains("spool");
    }

    @Test
    void the_nearer_word_wins_over_the_earlier_one() {
        assertThat(Nearest.to("kettlse", List.of("kettle", "kettlers"))).contains("kettle");
        assertThat(Nearest.to("kettles", List.of("kettle", "kettles"))).contains("kettles");
    }
}
