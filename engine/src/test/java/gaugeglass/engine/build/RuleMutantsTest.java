package gaugeglass.engine.build;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.build.RuleMutants.Mutant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class RuleMutantsTest {
    private static List<String> changes(String conditions) {
        List<WrittenRule> rules =
                RuleFile.read("a.drl", "rule \"a.b / c\"\nwhen\n" + conditions + "\nthen\nend\n", new ArrayList<>());
        return RuleMutants.of(rules.get(0)).stream().map(Mutant::change).toList();
    }

    @Test
    void every_condition_is_dropped_and_every_comparison_turned_round_and_moved() {
        assertThat(changes("""
                        Visit( $today : date )
                        Limit( id == "x.y", $life : period )
                        BrakeKind( $about : which, sort in (BrakeSort.RIM, BrakeSort.DISC) )
                        WheelTrued( which == $about, on < $today.minus($life) )
                        FrameCrack( crack != Crack.OPEN || crack == Crack.HAIRLINE )
                        """))
                .containsExactly(
                        "BrakeKind 3 without sort in (BrakeSort.RIM, BrakeSort.DISC)",
                        "BrakeKind 3 with sort not in (BrakeSort.RIM, BrakeSort.DISC)",
                        "without the pattern WheelTrued 4",
                        "WheelTrued 4 without which == $about",
                        "WheelTrued 4 with which != $about",
                        "WheelTrued 4 without on < $today.minus($life)",
                        "WheelTrued 4 with on >= $today.minus($life)",
                        "WheelTrued 4 with on <= $today.minus($life)",
                        "WheelTrued 4 with on < $today.plus($life)",
                        "without the pattern FrameCrack 5",
                        "FrameCrack 5 without crack != Crack.OPEN || crack == Crack.HAIRLINE",
                        "FrameCrack 5 with crack == Crack.OPEN || crack == Crack.HAIRLINE",
                        "FrameCrack 5 with crack != Crack.OPEN && crack == Crack.HAIRLINE",
                        "FrameCrack 5 with crack != Crack.OPEN || crack != Crack.HAIRLINE");
    }

    @Test
    void what_stands_in_quotes_is_left_alone() {
        assertThat(changes("FrameNumber( number == \"a < b in c\" )"))
                .containsExactly(
                        "FrameNumber 1 without number == \"a < b in c\"",
                        "FrameNumber 1 with number != \"a < b in c\"");
    }

    @Test
    void a_rule_written_back_is_read_as_the_same_rule() {
        String text = "rule \"a.b / c / d\"\nwhen\n    ChainWear( $wear : wear, wear > $most, wear < 1 )\nthen\nend\n";
        WrittenRule rule = RuleFile.read("a.drl", text, new ArrayList<>()).get(0);
        assertThat(rule.text()).isEqualTo(text);
        assertThat(RuleFile.read("a.drl", rule.text(), new ArrayList<>())).containsExactly(rule);
    }
}
