package gaugeglass.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What two invented jurisdictions change. The differences are those of real ones, named in the packs: North Dakota caps the
 * dial at 60 psi, Kansas wants a second cutoff with manual reset, South Dakota a float beside a probe; the intervals of the
 * safety valve are those of UFC 3-430-07 (weekly) and the National Board (quarterly), the openings those of 13 NCAC 13 .0419
 * (1 in2 for each 2000 Btu/h) and of the National Fuel Gas Code (1 in2 for each 1000 Btu/h, from memory).
 */
class JurisdictionPacksTest {
    private static final Path PACKS = Path.of("../docs/examples/packs");
    private static final String ALDER = PACKS.resolve("alder-county").toString();
    private static final String BRAE = PACKS.resolve("brae-state").toString();
    private static final String VISIT = """
            format: 1
            site:
              id: elm-hall
              air-route: openings
              air-way: clear
              room-input: 400000 Btu/h
              air-free-area: 200 in2
            visit: {date: 2026-09-14}
            boilers:
              - id: B1
                required: {gauge-dial-ceiling: does-not-apply, second-cutoff: not-required, float-with-probe: not-required}
                cutoffs: {fitted: 1, each: [{tag: A, kind: probe}]}
                gauges: {fitted: 1, each: [{tag: G, role: boilers-own, unit: psi, top-figure: 100}]}
                safety-valves:
                  fitted: 1
                  each: [{tag: S, lever-record: dated, lever-tested: 2026-08-25, pressure-record: dated, pressure-tested: 2026-06-01}]
            """;

    @TempDir
    private Path folder;

    private Path visit() throws IOException {
        return Files.writeString(folder.resolve("visit.yaml"), VISIT);
    }

    private static String outcome(Ran ran, String rule) {
        assertThat(ran.err()).isEmpty();
        String mark = "{\"rule\":\"" + rule + "\",\"subject\":\"";
        int at = ran.out().lastIndexOf(mark);
        String rest = ran.out().substring(at);
        int from = rest.indexOf("\"outcome\":\"") + "\"outcome\":\"".length();
        return rest.substring(from, rest.indexOf('"', from));
    }

    private void isJudged(String rule, String byStandard, String inAlder, String inBrae) throws IOException {
        String visit = visit().toString();
        assertThat(outcome(Ran.of("assess", visit, "--as", "jsonl"), rule)).isEqualTo(byStandard);
        assertThat(outcome(Ran.of("assess", visit, "--as", "jsonl", "--pack", ALDER), rule))
                .isEqualTo(inAlder);
        assertThat(outcome(Ran.of("assess", visit, "--as", "jsonl", "--pack", BRAE), rule))
                .isEqualTo(inBrae);
    }

    @Test
    void a_dial_of_a_hundred_psi_is_too_high_only_where_the_dial_is_capped() throws IOException {
        isJudged("gauge.scale-out-of-range", "in-order", "found", "in-order");
    }

    @Test
    void one_cutoff_is_too_few_only_where_two_are_required() throws IOException {
        isJudged("cutoff.second-required", "not-applicable", "found", "not-applicable");
    }

    @Test
    void a_probe_alone_is_found_only_where_a_float_must_stand_beside_it() throws IOException {
        isJudged("cutoff.float-beside-probe", "not-applicable", "not-applicable", "found");
    }

    @Test
    void a_lever_lifted_twenty_days_ago_is_late_only_where_weekly_is_the_rule() throws IOException {
        isJudged("relief.not-tested", "in-order", "found", "in-order");
    }

    @Test
    void openings_that_do_for_one_code_are_short_by_the_other() throws IOException {
        isJudged("site.combustion-air", "in-order", "in-order", "found");
    }

    @Test
    void the_text_tells_what_judged_and_who_settled_what_is_required() throws IOException {
        String out = Ran.of("assess", visit().toString(), "--pack", ALDER).out();

        assertThat(out)
                .contains(
                        "Judged by: standard practice",
                        "then Alder County boiler rules",
                        "1.0.0 (jurisdiction), digest")
                .contains("required/second-cutoff: settled by Alder County boiler rules")
                .contains("says not-required", "(Alder County boiler rules 1.0.0)");
    }

    @Test
    void the_json_names_the_pack_with_version_and_digest() throws IOException {
        String out = Ran.of("assess", visit().toString(), "--pack", BRAE, "--as", "jsonl")
                .out();

        assertThat(out)
                .containsPattern(
                        "\"packs\":\\[\\{\"name\":\"brae-state\",\"title\":\"State of Brae boiler rules\","
                                + "\"version\":\"1.0.0\",\"level\":\"jurisdiction\",\"hash\":\"[0-9a-f]{64}\",\"replaces\":\\[]}]");
    }

    @Test
    void both_reports_name_the_pack() throws IOException {
        for (String reader : new String[] {"owner", "file"}) {
            Ran ran = Ran.of("report", visit().toString(), "--pack", ALDER, "--for", reader, "--out", "-");

            assertThat(ran.err()).isEmpty();
            assertThat(ran.out()).contains("Alder County boiler rules 1.0.0 (jurisdiction)");
        }
    }

    @Test
    void the_rulebook_shows_whose_value_is_in_force() {
        String out = Ran.of("rulebook", "--limits", "--pack", ALDER).out();

        assertThat(out)
                .contains("relief.lever-interval: 7 days", "boiler rules 1.0.0; a company may set it")
                .contains("UFC 3-430-07: safety valves tried by hand weekly");
    }

    @Test
    void a_file_beside_the_inspections_lays_a_pack_on_for_every_command() throws IOException {
        String visit = visit().toString();
        String named = Ran.of("assess", visit, "--pack", ALDER).out();
        Files.writeString(
                folder.resolve("packs.yaml"),
                "packs: [\"" + PACKS.resolve("alder-county").toAbsolutePath().normalize() + "\"]\n");

        assertThat(Ran.of("assess", visit).out()).isEqualTo(named);
        assertThat(Ran.of("assess", folder.toString()).out()).isEqualTo(named);
        assertThat(Ran.of("report", visit, "--out", "-").out()).contains("Alder County boiler rules 1.0.0");
        assertThat(Ran.of("check", visit).code()).isZero();
        assertThat(Ran.of("assess", visit, "--pack", BRAE).out())
                .contains("State of Brae")
                .doesNotContain("Alder");
        assertThat(Ran.of("assess", visit, "--pack", "none").out()).doesNotContain("Judged by");
    }

    @Test
    void two_jurisdictions_that_contradict_one_another_are_refused_and_nothing_is_judged() throws IOException {
        Ran ran = Ran.of("assess", visit().toString(), "--pack", ALDER, "--pack", BRAE);

        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err())
                .contains("92 days is less cautious than 7 days, which Alder County boiler rules 1.0.0 sets")
                .contains("State of Brae boiler rules says does-not-apply and Alder County boiler rules says applies of"
                        + " required.gauge-dial-ceiling");
    }

    @Test
    void the_packs_among_the_examples_are_no_inspections() {
        Ran ran = Ran.of("assess", "../docs/examples", "--as", "jsonl");

        assertThat(ran.code()).isZero();
        assertThat(ran.err()).doesNotContain("pack");
    }
}
