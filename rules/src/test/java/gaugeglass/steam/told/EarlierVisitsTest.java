package gaugeglass.steam.told;

import static gaugeglass.steam.proof.OneBoiler.RULEBOOK;
import static gaugeglass.steam.proof.OneBoiler.visit;
import static gaugeglass.steam.proof.OneBoiler.word;
import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.Assessment;
import gaugeglass.engine.Assessment.Finding;
import gaugeglass.engine.Assessment.Word;
import gaugeglass.engine.book.Card;
import gaugeglass.steam.proof.OneBoiler;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What the findings in an inspection file tell, judged as a whole visit. */
class EarlierVisitsTest {
    private static final String FAILING = """
            cutoffs: {fitted: 1, each: [{tag: LW-1, kind: float, tests: {bowl-drain: {result: kept-firing}}}]}
            """;

    private static Assessment assess(String earlier, String boiler) {
        return OneBoiler.assess(visit("", earlier + "\n", "records: {open-finding: none-open}\n" + boiler));
    }

    private static String finding(String rule, String subject, String foundOn, String decision) {
        return "{rule: " + rule + ", boiler: B1, " + subject + "urgency: season, found-on: " + foundOn + decision + "}";
    }

    private static String decided(String word) {
        return ", decision: " + word + ", decided-by: the owner, decided-on: 2025-10-01";
    }

    private static String earlier(String... findings) {
        return "earlier: [" + String.join(", ", findings) + "]";
    }

    @Test
    void every_check_that_tells_of_a_failed_device_is_in_the_rulebook_and_about_that_device() {
        Map<String, Set<String>> all = Map.of(
                "cutoff", EarlierVisits.CUTOFF_FAILED,
                "control", EarlierVisits.CONTROL_FAILED,
                "safety-valve", EarlierVisits.SAFETY_VALVE_FAILED,
                "", EarlierVisits.FEEDER_FAILED);
        all.forEach((kind, rules) -> assertThat(rules).allSatisfy(rule -> {
            Card card = RULEBOOK.book().cards().get(rule);
            assertThat(card).isNotNull();
            assertThat(card.about()).isEqualTo(kind);
        }));
    }

    @Test
    void a_decision_counts_with_a_name_and_a_day() {
        String rule = "record.owner-decision-missing";
        String found = "2025-09-10";
        assertThat(word(assess(earlier(finding("piping.header-low", "", found, decided("refused"))), ""), rule))
                .isEqualTo(Word.IN_ORDER);
        for (String half : List.of("", ", decision: refused", ", decision: refused, decided-by: the owner")) {
            assertThat(word(
                            assess(
                                    earlier(
                                            finding("piping.header-low", "", found, decided("done")),
                                            finding("relief.discharge", "subject: S, ", found, half)),
                                    ""),
                            rule))
                    .as(half)
                    .isEqualTo(Word.FOUND);
        }
    }

    @Test
    void no_findings_are_in_order_and_unknown_ones_are_not() {
        for (String rule : List.of("record.owner-decision-missing", "record.deferred")) {
            assertThat(word(assess("earlier: []", ""), rule)).isEqualTo(Word.IN_ORDER);
            assertThat(word(assess("earlier:", ""), rule)).isEqualTo(Word.UNDETERMINED);
            assertThat(word(assess("", ""), rule)).isEqualTo(Word.UNDETERMINED);
        }
    }

    @Test
    void a_finding_of_another_boiler_tells_nothing_of_this_one() {
        String another = finding("piping.header-low", "", "2020-09-10", decided("deferred"))
                .replace("B1", "B2");
        assertThat(word(assess(earlier(another), ""), "record.deferred")).isEqualTo(Word.IN_ORDER);
    }

    @Test
    void the_oldest_of_what_is_deferred_counts_and_what_was_refused_or_done_does_not() {
        Assessment assessment = assess(
                earlier(
                        finding("piping.header-low", "", "2025-09-10", decided("deferred")),
                        finding("relief.discharge", "subject: S, ", "2024-09-12", decided("deferred")),
                        finding("gauge.unreadable", "subject: G, ", "2019-09-12", decided("refused")),
                        finding("relief.not-tested", "subject: S, ", "2018-09-12", decided("done"))),
                "");
        Finding found = assessment.findings().stream()
                .filter(one -> one.rule().equals("record.deferred"))
                .findFirst()
                .orElseThrow();
        assertThat(found.band()).isEqualTo("again");
        assertThat(found.seen().get(0)).contains("2024-09-12");
    }

    @Test
    void a_device_fails_again_only_where_it_was_mended_in_between() {
        String rule = "record.repeat-failure";
        String failed = "cutoff.float-seized";
        String on = "2025-09-10";
        String mended = finding(failed, "subject: LW-1, ", on, decided("done"));
        assertThat(word(assess(earlier(mended), FAILING), rule)).isEqualTo(Word.FOUND);
        // What was never mended is one failure, still open; other devices and other findings are no failure of this
        // one.
        String rest = FAILING + "controls: {fitted: 0}\nsafety-valves: {fitted: 0}\n";
        String left = finding(failed, "subject: LW-1, ", on, decided("deferred"));
        String other = finding(failed, "subject: LW-2, ", on, decided("done"));
        String lesser = finding("cutoff.past-service-life", "subject: LW-1, ", on, decided("done"));
        for (String one : List.of(left, other, lesser)) {
            assertThat(word(assess(earlier(one), rest), rule)).as(one).isEqualTo(Word.IN_ORDER);
        }
        assertThat(word(assess(earlier(left, mended), rest), rule)).isEqualTo(Word.FOUND);
        // On paper, and not at hand.
        assertThat(word(assess("", rest), rule)).isEqualTo(Word.UNDETERMINED);
    }

    @Test
    void the_feeder_is_the_only_one_and_has_no_tag() {
        String trial = "feeder: {make-up: automatic, trial: no-water}\n";
        assertThat(word(
                        assess(earlier(finding("feeder.locked-out", "", "2025-09-10", decided("done"))), trial),
                        "record.repeat-failure"))
                .isEqualTo(Word.FOUND);
    }
}
