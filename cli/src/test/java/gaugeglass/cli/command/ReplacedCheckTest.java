package gaugeglass.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A check of the rulebook in whose place an invented company puts its own: what it judges, and that everything tells so. */
class ReplacedCheckTest {
    private static final String INSTEAD = "put in the place of the rulebook's own by Elm standard 1.0.0";

    @TempDir
    private static Path packs;

    private static String elm;

    @TempDir
    private Path folder;

    private static String manifest(String name, String level) {
        return """
                pack: %s
                title: %s standard
                version: 1.0.0
                level: %s
                tailors: standard practice
                made-for: 0.1.0-SNAPSHOT
                by: Nobody, this is a test
                """.formatted(name, name.equals("elm") ? "Elm" : "The " + name, level);
    }

    private static String write(String name, String level, String... filesAndTexts) throws IOException {
        Path pack = Files.createDirectories(packs.resolve(name));
        Files.writeString(pack.resolve("pack.yaml"), manifest(name, level));
        for (int i = 0; i < filesAndTexts.length; i += 2) {
            Files.writeString(pack.resolve(filesAndTexts[i]), filesAndTexts[i + 1]);
        }
        return pack.toString();
    }

    /** A siphon is cleaned sooner than by the rulebook; that nothing was written down is no finding of this one. */
    @BeforeAll
    static void a_signed_pack() throws IOException {
        elm = write("elm", "company", "replaced.yaml", """
                replaced:
                  - {check: siphon.control-not-cleaned, why: Our records are kept elsewhere and we clean twice a year.}
                """, "limits.yaml", """
                own:
                  - {id: elm.siphon-months, value: 6 months, measures: period, meaning: how long a siphon goes uncleaned with us, safer: lower, step: 1 day, basis: ours}
                """, "elm.drl", """
                // Twice a year, so that no siphon closes within a season.
                rule "siphon.control-not-cleaned / due"
                when
                    Visit( $today : date )
                    Limit( id == "elm.siphon-months", $months : period )
                    ControlSiphon( $about : which, siphon == SiphonFitted.FITTED )
                    ControlSiphonCleaned( which == $about, $cleaned : on, on < $today.minus($months) )
                then
                end
                """, "elm.cards.yaml", """
                cards:
                  - id: siphon.control-not-cleaned
                    title: The siphon is past our half year
                    about: control
                    stage: cold
                    consequence: people
                    bands:
                      due: {urgency: season, seen: "The siphon of control {about} was last cleaned on {cleaned}, longer ago than {months}."}
                    why: A siphon closes little by little.
                    do: Clean it cold and vented.
                    not-when: It was replaced since.
                    basis: ours
                    scenarios:
                      - {name: eight months, given: {controls: [{tag: P, siphon: fitted, siphon-cleaned: 2026-01-14}]}, expect: found due}
                      - {name: half a year to the day, given: {controls: [{tag: P, siphon: fitted, siphon-cleaned: 2026-03-14}]}, expect: in-order, on-limit: elm.siphon-months}
                      - {name: a day more, given: {controls: [{tag: P, siphon: fitted, siphon-cleaned: 2026-03-13}]}, expect: found due}
                      - {name: no siphon, given: {controls: [{tag: P, siphon: none, siphon-cleaned: 2000-09-13}]}, expect: not-applicable}
                      - {name: no date, given: {controls: [{tag: P, siphon: fitted, siphon-cleaned: {unread: not legible}}]}, expect: undetermined, missing: [control.siphon-cleaned]}
                """);
        // It is refused where an earlier run of the tests left the key, which will do.
        Ran.of("pack", "key", "of-the-replacing");
        assertThat(Ran.of("pack", "sign", elm, "--key", "of-the-replacing").err())
                .isEmpty();
    }

    private String visit(String control) throws IOException {
        return Files.writeString(folder.resolve("visit.yaml"), """
                        format: 1
                        site: {id: elm-hall}
                        visit: {date: 2026-09-14}
                        boilers:
                          - id: B1
                            controls: {fitted: 1, each: [{tag: P, siphon: fitted, %s}]}
                        """.formatted(control))
                .toString();
    }

    private static String flat(Ran ran) {
        assertThat(ran.err()).isEmpty();
        return ran.out().replaceAll("\\s+", " ");
    }

    @Test
    void its_scenarios_are_tried_as_those_of_any_check_of_a_pack() {
        assertThat(flat(Ran.of("pack", "try", elm)))
                .contains("5 scenarios of 1 check, all as expected; none is wanting");
    }

    @Test
    void the_packs_rule_finds_what_the_rulebooks_does_not() throws IOException {
        String visit = visit("siphon-record: on-record, siphon-cleaned: 2026-01-14");

        assertThat(flat(Ran.of("assess", visit))).doesNotContain("siphon is due for cleaning");
        assertThat(flat(Ran.of("assess", visit, "--pack", elm)))
                .contains("The siphon is past our half year", INSTEAD)
                .contains(
                        "Elm standard 1.0.0 (company), with checks of its own in the place of siphon.control-not-cleaned");
    }

    @Test
    void the_rulebooks_own_rules_of_it_judge_no_more_of_one_visit_or_of_many() throws IOException {
        String visit = visit("siphon-record: not-recorded, siphon-cleaned: 2026-09-01");
        Files.copy(Path.of(visit), folder.resolve("second.yaml"));

        assertThat(flat(Ran.of("assess", visit))).contains("siphon is due for cleaning");
        String one = flat(Ran.of("assess", visit, "--pack", elm, "--as", "jsonl"));
        assertThat(one)
                .contains("{\"rule\":\"siphon.control-not-cleaned\",\"subject\":\"P\",\"outcome\":\"in-order\"")
                .contains("\"replaces\":[\"siphon.control-not-cleaned\"]");
        String many = Ran.of("assess", folder.toString(), "--pack", elm, "--as", "jsonl")
                .out();
        assertThat(many.lines()).hasSize(2).allSatisfy(line -> assertThat(line)
                .contains("{\"rule\":\"siphon.control-not-cleaned\",\"subject\":\"P\",\"outcome\":\"in-order\""));
    }

    @Test
    void both_reports_the_rulebook_the_difference_and_the_check_tell_that_it_was_replaced() throws IOException {
        String visit = visit("siphon-record: on-record, siphon-cleaned: 2026-01-14");

        assertThat(flat(Ran.of("report", visit, "--pack", elm, "--for", "file", "--out", "-")))
                .contains("put in the place of the rulebook")
                .contains("own by Elm standard 1.0.0");
        assertThat(flat(Ran.of("report", visit, "--pack", elm, "--for", "owner", "--out", "-")))
                .contains("with checks of its own in the place of siphon.control-not-cleaned");
        assertThat(flat(Ran.of("pack", "check", elm)))
                .contains("with checks of its own in the place of siphon.control-not-cleaned");
        assertThat(flat(Ran.of("pack", "differs", elm)))
                .contains(
                        "Checks of the rulebook that its own stand in the place of - siphon.control-not-cleaned: The pressure"
                                + " control's siphon is due for cleaning [due now] BECOMES The siphon is past our half year [due"
                                + " season], " + INSTEAD + " - Our records are kept");
    }

    @Test
    void the_rulebook_with_the_pack_shows_it_as_replaced_alone_and_in_the_list() throws IOException {
        // A rulebook of signed packs, as a technician sees it.
        assertThat(flat(Ran.of("rulebook", "siphon.control-not-cleaned", "--pack", elm)))
                .contains("The siphon is past our half year", "This check is " + INSTEAD, "elm.siphon-months: 6 months")
                .doesNotContain("siphon.cleaning-interval");
        assertThat(flat(Ran.of("rulebook", "siphon", "--pack", elm))).contains("(" + INSTEAD + ")");
        assertThat(Ran.of("rulebook", "siphon.control-not-cleaned", "--pack", elm, "--as", "json")
                        .out())
                .contains("\"replaces\" : \"" + INSTEAD + "\"");
    }

    private static List<Error> faults(String schema, String json) {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Ran.of("schema", schema).out(), InputFormat.JSON)
                .validate(json, InputFormat.JSON);
    }

    @Test
    void programs_are_told_in_keys_that_the_published_schemas_know() throws IOException {
        String visit = visit("siphon-record: on-record, siphon-cleaned: 2026-01-14");
        String judged = Ran.of("assess", visit, "--pack", elm, "--as", "json").out();
        String fleet = Ran.of("fleet", visit, "--pack", elm, "--as", "json").out();

        assertThat(judged).contains("\"replaces\" : [");
        assertThat(fleet.replaceAll("\\s+", "")).contains("\"replaces\":[\"siphon.control-not-cleaned\"]");
        assertThat(faults("assessment", judged)).isEmpty();
        assertThat(faults("fleet", fleet)).isEmpty();
        assertThat(faults("fleet", fleet.replace("replaces", "replace"))).isNotEmpty();
    }

    private void isRefused(List<String> others, String... words) throws IOException {
        String visit = visit("siphon-record: on-record, siphon-cleaned: 2026-01-14");
        String[] line = new String[4 + 2 * others.size()];
        System.arraycopy(new String[] {"assess", visit, "--pack", elm}, 0, line, 0, 4);
        for (int i = 0; i < others.size(); i++) {
            line[4 + 2 * i] = "--pack";
            line[5 + 2 * i] = others.get(i);
        }
        Ran ran = Ran.of(line);
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains(words);
    }

    @Test
    void what_a_law_sets_a_limit_for_is_not_replaced() throws IOException {
        String county = write("county", "jurisdiction", "limits.yaml", """
                limits:
                  siphon.cleaning-interval:
                    value: 9 months
                    sources: [{name: a document invented for this test, known: read}]
                """);

        isRefused(
                List.of(county),
                "siphon.control-not-cleaned holds what was seen against siphon.cleaning-interval, which a standard or a law"
                        + " sets, so its rules stand as they are");
    }

    @Test
    void what_another_pack_made_urgent_is_not_replaced() throws IOException {
        String state = write(
                "state", "jurisdiction", "urgencies.yaml", "urgencies: {siphon.control-not-cleaned / due: stop}\n");

        isRefused(List.of(state), "The state standard has its own words or urgency for siphon.control-not-cleaned");
    }

    @Test
    void two_packs_cannot_replace_one_check() throws IOException {
        Path other = Files.createDirectories(packs.resolve("other"));
        for (String file : List.of("replaced.yaml", "elm.drl", "elm.cards.yaml", "limits.yaml")) {
            Files.writeString(
                    other.resolve(file),
                    Files.readString(Path.of(elm).resolve(file)).replace("elm.siphon-months", "other.siphon-months"));
        }
        write("other", "company");
        assertThat(Ran.of("pack", "sign", other.toString(), "--key", "of-the-replacing")
                        .err())
                .isEmpty();

        isRefused(List.of(other.toString()), "there is a check of this id below it");
    }
}
