package gaugeglass.steam;

import static gaugeglass.steam.proof.OneBoiler.RULEBOOK;
import static gaugeglass.steam.proof.OneBoiler.assess;
import static gaugeglass.steam.proof.OneBoiler.word;
import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.Assessment;
import gaugeglass.engine.Assessment.Outcome;
import gaugeglass.engine.Assessment.Permit;
import gaugeglass.engine.Assessment.Word;
import gaugeglass.engine.book.Limit;
import gaugeglass.engine.book.Urgency;
import java.time.Period;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Figures and demands of published documents about glass and cutoff, and a sound visit under which nothing stays open. */
class WaterFiguresTest {
    private static final Set<String> SUBJECTS = Set.of("water-level", "low-water-cutoff", "cutoff-test");

    private static Limit limit(String id) {
        return RULEBOOK.book().limits().get(id);
    }

    /** ASME Boiler and Pressure Vessel Code, Section IV, HG-603: at least 1 in above the lowest permissible level. */
    @Test
    void the_glass_begins_an_inch_above_the_lowest_permissible_level() {
        assertThat(word(assess("glass: {above-lowest: 1 in}"), "level.glass-too-low"))
                .isEqualTo(Word.IN_ORDER);
        assertThat(word(assess("glass: {above-lowest: 15/16 in}"), "level.glass-too-low"))
                .isEqualTo(Word.FOUND);
        assertThat(word(assess("glass: {above-lowest: 25 mm}"), "level.glass-too-low"))
                .isEqualTo(Word.FOUND);
    }

    /**
     * Code of Maryland Regulations 09.12.01.04 A(1)(b) and Kansas Administrative Regulations 49-52-11(c): the lowest
     * water line is not lower than the lowest visible part of the glass.
     */
    @Test
    void a_cutoff_acts_no_lower_than_the_lowest_visible_part_of_the_glass() {
        assertThat(word(assess(cutoff("mark: 0 in")), "cutoff.mark-below-glass"))
                .isEqualTo(Word.IN_ORDER);
        assertThat(word(assess(cutoff("mark: -1/16 in")), "cutoff.mark-below-glass"))
                .isEqualTo(Word.FOUND);
        assertThat(limit("cutoff.mark-least").least()).isEqualTo("0 in");
    }

    /** South Dakota Administrative Rules 61:08:05:07: each automatically fired steam boiler has one or more. */
    @Test
    void an_automatically_fired_boiler_has_a_cutoff() {
        Assessment none = assess("burner: {firing: automatic}\ncutoffs: {fitted: 0}");
        assertThat(none.findings()).anyMatch(f -> f.rule().equals("cutoff.none") && f.urgency() == Urgency.STOP);
        assertThat(none.testFiring().permit()).isEqualTo(Permit.FORBIDDEN);
        assertThat(word(assess("burner: {firing: hand-fired}\ncutoffs: {fitted: 0}"), "cutoff.none"))
                .isEqualTo(Word.NOT_APPLICABLE);
    }

    /** South Dakota Administrative Rules 61:08:05:07: a float-operated one beside the electrode type. Others differ. */
    @Test
    void a_float_beside_a_probe_is_asked_for_only_where_it_is_required() {
        String probe = cutoff("kind: probe");
        assertThat(word(assess("required: {float-with-probe: required}\n" + probe), "cutoff.float-beside-probe"))
                .isEqualTo(Word.FOUND);
        assertThat(word(assess("required: {float-with-probe: not-required}\n" + probe), "cutoff.float-beside-probe"))
                .isEqualTo(Word.NOT_APPLICABLE);
        assertThat(word(assess(probe), "cutoff.float-beside-probe")).isEqualTo(Word.UNDETERMINED);
    }

    /** Kansas Administrative Regulations 49-52-11(c): a secondary cutoff, with manual reset, without a floor of size. */
    @Test
    void a_second_cutoff_with_manual_reset_is_asked_for_only_where_it_is_required() {
        String rules = "required: {second-cutoff: required, manual-reset-cutoff: required}\n";
        assertThat(assess(rules + cutoff("reset: automatic")).findings())
                .extracting(Assessment.Finding::rule)
                .contains("cutoff.second-required", "cutoff.manual-reset-missing");
        String two = "cutoffs: {fitted: 2, each: [{tag: A, reset: automatic}, {tag: B, reset: manual}]}";
        assertThat(assess(rules + two).findings())
                .extracting(Assessment.Finding::rule)
                .doesNotContain("cutoff.second-required", "cutoff.manual-reset-missing");
    }

    /** New York, 12 NYCRR 4-5.14: no shut-off valve of any type, and a cross tee at every right-angle turn. */
    @Test
    void a_cutoffs_connection_has_clean_outs_and_no_valve() {
        Assessment assessment = assess(cutoff("connection-valve: open, cleanouts: lacking"));
        assertThat(assessment.findings())
                .extracting(Assessment.Finding::rule)
                .contains("cutoff.valve-in-connection", "cutoff.no-cleanout");
    }

    /** ASME CSD-1, Appendix D (from memory, medium certainty): the slow drain at start-up and half-yearly. */
    @Test
    void a_slow_drain_counts_for_half_a_year() {
        assertThat(limit("cutoff.slow-drain-interval").period()).isEqualTo(Period.ofMonths(6));
    }

    /** ASME Section VI (from memory, medium certainty): opened once a year. */
    @Test
    void a_cutoff_is_opened_once_a_year() {
        assertThat(limit("cutoff.opening-interval").period()).isEqualTo(Period.ofYears(1));
    }

    /** Common practice, without a source: a float cutoff is due at ten years. */
    @Test
    void a_float_serves_ten_years() {
        assertThat(limit("cutoff.float-service-life").period()).isEqualTo(Period.ofYears(10));
    }

    /** The grades of proof, from nothing to the slow drain; common practice, and for the last ASME CSD-1, Appendix D. */
    @Test
    void each_grade_of_proof_leaves_the_next_one_wanting() {
        String no = "{result: not-done}";
        String out = "{result: flame-out, heat-call: held, pressure: below-cut-out, feed: shut, level: in-glass}";
        assertThat(wanting(no, no, no, no)).contains("cutoff.not-proven-firing", "cutoff.slow-drain-missing");
        assertThat(wanting("{result: flame-out}", no, no, no))
                .contains("cutoff.hand-press-only", "cutoff.slow-drain-missing")
                .doesNotContain("cutoff.not-proven-firing");
        assertThat(wanting(no, "{result: burner-idle, float: moved}", no, no))
                .contains("cutoff.cold-flush-only", "cutoff.slow-drain-missing");
        assertThat(wanting(no, no, out, no)).containsExactly("cutoff.slow-drain-missing");
        assertThat(wanting(no, no, out, out)).isEmpty();
        assertThat(wanting(no, no, "{result: flame-out, heat-call: not-held, float: moved}", out))
                .isEmpty();
    }

    private static List<String> wanting(String hand, String flush, String bowl, String slow) {
        Set<String> proofs = Set.of(
                "cutoff.not-proven-firing",
                "cutoff.hand-press-only",
                "cutoff.cold-flush-only",
                "cutoff.slow-drain-missing");
        Assessment assessment = assess(cutoff("kind: float, slow-drain-record: none-on-record, tests: {hand-press: "
                + hand + ", cold-flush: " + flush + ", bowl-drain: " + bowl + ", slow-drain: " + slow + "}"));
        List<String> found = assessment.findings().stream()
                .map(Assessment.Finding::rule)
                .filter(proofs::contains)
                .toList();
        assertThat(RULEBOOK.book().cards().values())
                .filteredOn(card -> proofs.contains(card.id()))
                .allMatch(card -> card.release());
        return found;
    }

    private static String cutoff(String answers) {
        return "cutoffs: {fitted: 1, each: [{tag: A, " + answers + "}]}";
    }

    /** Common practice: a sound boiler, looked at from arrival to the last test, leaves none of these practices open. */
    @Test
    void a_sound_visit_leaves_nothing_found_and_nothing_open() {
        Assessment sound = assess("""
                burner: {firing: automatic}
                required: {second-cutoff: required, manual-reset-cutoff: required, float-with-probe: not-required}
                level:
                  line: in-glass
                  boiler-heat: cold
                  apparent: 4 in
                  normal: 4 in
                  proven: 4 in
                  swing: 1/2 in
                  fall: 1 in
                  return-time: 4 min
                glass:
                  upper-valve: open
                  lower-valve: open
                  leak: dry
                  drain: works
                  guard: in-place
                  condition: clear
                  above-lowest: 1 1/2 in
                  lower-passage: promptly
                  upper-passage: promptly
                  above-line: dry
                feeder: {make-up: automatic, power: live, supply: ready, action: not-feeding, level: 2 in}
                cutoffs:
                  fitted: 2
                  each:
                    - tag: float
                      kind: float
                      function: cutoff-with-feeder-contacts
                      reset: automatic
                      feeder-wiring: wired
                      installed: 2021-08-01
                      wiring: in-circuit
                      connection-valve: none
                      connection-outlet: none
                      cleanouts: at-every-turn
                      test-tapping: free
                      flush-valve: works
                      mark: 1 1/2 in
                      contacts: permitting
                      opening: on-record
                      opened: 2026-09-14
                      flush-log: kept-weekly
                      off-season: stood-idle
                      flush-manner: shut-and-repeated
                      last-flush: clear
                      makers-order: as-heard
                      slow-drain-record: on-record
                      slow-drained: 2025-09-10
                      tests:
                        hand-press: {result: not-done}
                        cold-flush: {result: burner-idle, float: moved, switches: burner-then-feeder, refill: 4 s, feeder-water: shut-for-test}
                        bowl-drain: {result: flame-out, heat-call: held, pressure: below-cut-out, feed: live, float: moved, switches: burner-then-feeder, time: 1 s, refill: 4 s, recovery: after-level, feeder-water: water-came}
                        slow-drain: {result: flame-out, heat-call: held, pressure: below-cut-out, feed: shut, float: moved, switches: burner-then-feeder, time: 1 s, level: in-glass, level-notes: noted, fall: {begin: 3 in, end: 3/4 in, time: 120 s}, recovery: after-level, feeder-water: shut-for-test}
                    - tag: probe
                      kind: probe
                      function: burner-switch
                      reset: manual
                      feeder-wiring: not-wired
                      installed: 2021-08-01
                      wiring: in-circuit
                      connection-valve: none
                      connection-outlet: none
                      cleanouts: no-piping
                      flush-valve: no-bowl
                      mark: 1/2 in
                      contacts: permitting
                      opening: on-record
                      opened: 2026-09-14
                      flush-manner: not-flushed
                      last-flush: not-flushed
                      slow-drain-record: none-on-record
                      tests:
                        hand-press: {result: flame-out, float: moved, time: 1 s, recovery: held-for-reset}
                        cold-flush: {result: not-done}
                        bowl-drain: {result: not-done}
                        slow-drain: {result: flame-out, heat-call: held, pressure: below-cut-out, feed: shut, float: moved, time: 1 s, level: in-glass, level-notes: not-noted, recovery: held-for-reset}
                """);
        List<Outcome> ours = sound.outcomes().stream()
                .filter(outcome ->
                        SUBJECTS.contains(RULEBOOK.book().card(outcome.rule()).subject()))
                .toList();
        assertThat(ours).hasSizeGreaterThan(40);
        assertThat(ours)
                .filteredOn(outcome -> outcome.outcome() == Word.FOUND || outcome.outcome() == Word.UNDETERMINED)
                .isEmpty();
    }
}
