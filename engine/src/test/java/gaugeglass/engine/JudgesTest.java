package gaugeglass.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gaugeglass.engine.book.Book;
import gaugeglass.engine.book.RuleEntry;
import gaugeglass.engine.build.RulebookBuild.Built;
import gaugeglass.engine.drools.Evidence;
import gaugeglass.engine.drools.Judges;
import gaugeglass.engine.drools.JudgesDisagree;
import gaugeglass.engine.drools.Verdict;
import gaugeglass.engine.drools.Verdict.Outcome;
import gaugeglass.engine.facts.Facts;
import gaugeglass.engine.facts.Missing;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.toy.ChainSize;
import gaugeglass.engine.toy.ChainWear;
import gaugeglass.engine.toy.Workshop;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** Two judges over one set of compiled rules: they refuse an index that does not fit, and they must agree. */
class JudgesTest {
    private static final LocalDate DAY = LocalDate.of(2026, 9, 14);

    private final Built built = Workshop.built();
    private final Book book = built.stored().book();

    private Judges judges(List<RuleEntry> entries) {
        return Judges.of(book.models(), entries, built.loader());
    }

    private List<RuleEntry> with(String rule, UnaryOperator<List<RuleEntry.Step>> change) {
        List<RuleEntry> entries = new ArrayList<>();
        for (RuleEntry entry : book.rules()) {
            entries.add(
                    !entry.name().equals(rule)
                            ? entry
                            : new RuleEntry(
                                    entry.card(),
                                    entry.band(),
                                    entry.variant(),
                                    entry.file(),
                                    entry.line(),
                                    entry.needs(),
                                    entry.limits(),
                                    change.apply(new ArrayList<>(entry.steps()))));
        }
        assertThat(entries).isNotEqualTo(book.rules());
        return entries;
    }

    private Facts facts(Observations observations) {
        return Facts.of(observations, State.AS_LEFT, DAY, book.allLimits(), new Workshop().reckonings());
    }

    private Observations.Builder visit() {
        return Observations.of(built.stored().vocabulary(), "1");
    }

    private Map<String, Verdict> judge(Observations observations) {
        Map<String, Verdict> verdicts = new LinkedHashMap<>();
        for (Verdict verdict : judges(book.rules()).judge(facts(observations), rule -> book.card(rule.card())
                .about()
                .replace("bicycle", ""))) {
            verdicts.put(verdict.rule().name() + " " + verdict.subject(), verdict);
        }
        return verdicts;
    }

    @Test
    void an_index_with_a_pattern_too_few_is_refused() {
        assertThatThrownBy(() -> judges(with("chain.worn / far", steps -> steps.subList(0, 1))))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("\"chain.worn / far\" does not fit its index: it has 2 patterns, not 1");
    }

    @Test
    void an_index_over_another_type_is_refused() {
        assertThatThrownBy(() -> judges(with("chain.worn / far", steps -> {
                    steps.set(1, steps.get(0));
                    return steps;
                })))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("a pattern is over " + ChainWear.class.getName());
    }

    @Test
    void an_index_with_other_constraints_is_refused() {
        assertThatThrownBy(() -> judges(with("chain.worn / far", steps -> {
                    RuleEntry.Step step = steps.get(1);
                    steps.set(1, new RuleEntry.Step(step.type(), "vv", step.keyBinds(), step.join(), step.literal()));
                    return steps;
                })))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("a pattern has 1 constraints, not 2");
    }

    @Test
    void a_rule_in_the_index_that_is_not_compiled_is_refused_and_the_other_way_round() {
        List<RuleEntry> fewer = new ArrayList<>(book.rules());
        RuleEntry gone = fewer.remove(3);
        assertThatThrownBy(() -> judges(fewer))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("compiled but not indexed")
                .hasMessageContaining(gone.name());
        List<RuleEntry> more = new ArrayList<>(book.rules());
        more.add(new RuleEntry("no", "such", "", "", 0, List.of(), List.of(), List.of()));
        assertThatThrownBy(() -> judges(more))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("\"no / such\" is indexed but not compiled");
        assertThatThrownBy(() -> Judges.of(List.of("no.such.Model"), List.of(), built.loader()))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("no.such.Model cannot be loaded");
    }

    @Test
    void judges_that_see_different_matches_give_no_verdict() {
        // The second judge is told to look for wheels where the rule counts brakes.
        Judges judges = judges(with("brake.none / none", steps -> {
            RuleEntry.Step step = steps.get(0);
            steps.set(0, new RuleEntry.Step(step.type(), step.checks(), step.keyBinds(), step.join(), "wheel"));
            return steps;
        }));
        Observations none = visit().fitted("brake", State.AS_FOUND, 0).build();

        assertThatThrownBy(() -> judges.judge(
                        facts(none), rule -> book.card(rule.card()).about().replace("bicycle", "")))
                .isInstanceOf(JudgesDisagree.class)
                .hasMessageContaining("brake.none / none");
    }

    @Test
    void a_subject_that_is_no_tag_of_the_kind_is_a_fault() {
        Observations one =
                visit().fitted("wheel", State.AS_FOUND, 1).tag("wheel", "rear").build();
        assertThatThrownBy(() -> judges(book.rules()).judge(facts(one), rule -> book.card(rule.card())
                        .about()
                        .replace("bicycle", "")
                        .replace("wheel", "brake")))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("not all of which is a brake");
    }

    @Test
    void evidence_holds_the_matched_facts_and_the_bound_words() {
        ChainWear worn = new ChainWear(Quantity.of("0.7", Unit.PERCENT));
        Verdict verdict = judge(visit().seen(worn).build()).get("chain.worn / worn ");

        assertThat(verdict.outcome()).isEqualTo(Outcome.FOUND);
        assertThat(verdict.missing()).isEmpty();
        assertThat(verdict.evidence())
                .containsExactly(new Evidence(
                        List.of(book.limits().get("chain.wear"), worn),
                        Map.of("most", Quantity.of("0.5", Unit.PERCENT), "wear", worn.wear())));
    }

    @Test
    void what_is_open_names_only_the_answers_that_a_match_hangs_on() {
        Verdict short_ = judge(visit().seen(new ChainSize(Quantity.of(50, Unit.INCH), 90))
                        .build())
                .get("chain.short / short ");
        assertThat(short_.outcome()).isEqualTo(Outcome.UNDETERMINED);
        assertThat(short_.evidence()).isEmpty();
        assertThat(short_.missing()).containsExactly(new Missing("chain.spares", "", ""));

        assertThat(judge(visit().seen(new ChainSize(Quantity.of(50, Unit.INCH), 110))
                                .build())
                        .get("chain.short / short ")
                        .outcome())
                .as("long enough, whatever the spares")
                .isEqualTo(Outcome.IN_ORDER);
    }
}
