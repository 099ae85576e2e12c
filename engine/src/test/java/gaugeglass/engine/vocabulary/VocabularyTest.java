package gaugeglass.engine.vocabulary;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class VocabularyTest {
    /** A part named as a word of the rule grammar. */
    @Item(id = "shop.rule", of = "shop", stage = Stage.ARRIVAL, ask = "Which rule hangs on the wall?")
    public record RuleOnTheWall(String rule) {}

    private static final class OneItem implements Trade {
        @Override
        public List<Kind> kinds() {
            return List.of(Kind.site("town", "town"), Kind.unit("shop", "shops", "shop"));
        }

        @Override
        public List<Class<? extends Record>> items() {
            return List.of(RuleOnTheWall.class);
        }

        @Override
        public List<Reckoning> reckonings() {
            return List.of();
        }
    }

    @Test
    void a_part_whose_name_breaks_the_rule_compiler_is_refused_by_name() {
        assertThatThrownBy(() -> Vocabulary.of(new OneItem()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("RuleOnTheWall.rule")
                .hasMessageContaining("choose another");
    }
}
