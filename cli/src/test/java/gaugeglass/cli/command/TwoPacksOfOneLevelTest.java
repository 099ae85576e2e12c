package gaugeglass.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A company's pack beside that of the owner of the sites, and a county's beneath a state's. All of them are invented. */
class TwoPacksOfOneLevelTest {
    private static final String VISIT = """
            format: 1
            site: {id: elm-hall}
            visit: {date: 2026-09-14}
            boilers:
              - id: B1
                cutoffs: {fitted: 1, each: [{tag: A, kind: float, installed: 2017-09-01}]}
            """;

    @TempDir
    private Path folder;

    private String pack(String name, String level, String file, String text) throws IOException {
        Path pack = Files.createDirectories(folder.resolve(name));
        Files.writeString(pack.resolve("pack.yaml"), """
                pack: %s
                title: %s
                version: 1.0.0
                level: %s
                tailors: standard practice
                made-for: 0.1.0-SNAPSHOT
                by: Training lead
                """.formatted(name, "The " + name, level));
        Files.writeString(pack.resolve(file), text);
        return pack.toString();
    }

    private static String law(String id, String value) {
        return "limits:\n  " + id + ":\n    value: " + value
                + "\n    sources: [{name: \"a document invented for this test\", known: read}]\n";
    }

    private Ran assess(String one, String other) throws IOException {
        String visit = Files.writeString(folder.resolve("visit.yaml"), VISIT).toString();
        return Ran.of("assess", visit, "--pack", one, "--pack", other);
    }

    private static void isRefused(Ran ran, String... words) {
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains(words).doesNotContain("Exception");
    }

    @Test
    void both_hold_and_both_are_named_in_the_order_given() throws IOException {
        String company = pack("company", "company", "limits.yaml", "limits: {cutoff.float-service-life: 8 years}\n");
        String owner = pack(
                "owner",
                "company",
                "words.yaml",
                "words: {cutoff.past-service-life: {title: The cutoff is due by the owner's own plan}}\n");

        Ran ran = assess(company, owner);

        assertThat(ran.err()).isEmpty();
        assertThat(ran.out())
                .contains("The cutoff is due by the owner's own plan", "8 years")
                .containsSubsequence("The company", "1.0.0 (company)", "The owner", "1.0.0 (company)");
        assertThat(assess(owner, company).out()).containsSubsequence("Judged by", "The owner", "The company");
    }

    @Test
    void one_limit_with_two_values_is_refused_in_either_order_and_both_are_named() throws IOException {
        String company = pack("company", "company", "limits.yaml", "limits: {cutoff.float-service-life: 8 years}\n");
        String owner = pack("owner", "company", "limits.yaml", "limits: {cutoff.float-service-life: 9 years}\n");

        isRefused(assess(company, owner), "The owner 1.0.0 sets 9 years, and The company 1.0.0 sets 8 years");
        isRefused(assess(owner, company), "The company 1.0.0 sets 8 years, and The owner 1.0.0 sets 9 years");
    }

    @Test
    void one_word_said_two_ways_is_refused_and_the_same_word_twice_is_not() throws IOException {
        String words = "words: {cutoff.past-service-life: {title: The cutoff is due}}\n";
        String company = pack("company", "company", "words.yaml", words);
        String owner = pack("owner", "company", "words.yaml", words.replace("is due", "is old"));

        isRefused(
                assess(company, owner),
                "The owner says \"The cutoff is old\" and The company says \"The cutoff is due\" of"
                        + " cutoff.past-service-life, title");
        assertThat(assess(company, pack("owner", "company", "words.yaml", words))
                        .err())
                .isEmpty();
    }

    @Test
    void one_urgency_given_two_ways_is_refused() throws IOException {
        String company =
                pack("company", "company", "urgencies.yaml", "urgencies: {cutoff.past-service-life / past: season}\n");
        String owner =
                pack("owner", "company", "urgencies.yaml", "urgencies: {cutoff.past-service-life / past: watch}\n");

        isRefused(assess(company, owner), "The owner says \"watch\" and The company says \"season\"");
    }

    @Test
    void a_county_may_be_stricter_than_its_state_and_never_milder() throws IOException {
        String state = pack("state", "jurisdiction", "limits.yaml", law("relief.lever-interval", "30 days"));
        String county = pack("county", "jurisdiction", "limits.yaml", law("relief.lever-interval", "7 days"));

        assertThat(assess(state, county).err()).isEmpty();
        assertThat(Ran.of("rulebook", "--limits", "--pack", state, "--pack", county)
                        .out())
                .contains("relief.lever-interval: 7 days");
        isRefused(assess(county, state), "30 days is less cautious than 7 days, which The county 1.0.0 sets");
    }

    @Test
    void what_either_law_sets_is_a_floor_to_the_company() throws IOException {
        String state = pack("state", "jurisdiction", "limits.yaml", law("relief.lever-interval", "30 days"));
        String county = pack("county", "jurisdiction", "limits.yaml", law("relief.pressure-interval", "1 year"));
        String company = pack("company", "company", "limits.yaml", "limits: {relief.lever-interval: 60 days}\n");
        String visit = Files.writeString(folder.resolve("visit.yaml"), VISIT).toString();

        isRefused(
                Ran.of("assess", visit, "--pack", company, "--pack", state, "--pack", county),
                "60 days is less cautious than 30 days, which The state 1.0.0 sets");
    }

    @Test
    void a_second_pack_of_a_level_may_no_more_loosen_a_standard_or_silence_a_stop_than_the_first() throws IOException {
        String first = pack("first", "company", "limits.yaml", "limits: {control.legal-pressure: 14 psi}\n");

        isRefused(
                assess(first, pack("second", "company", "limits.yaml", "limits: {control.legal-pressure: 16 psi}\n")),
                "16 psi");
        isRefused(
                assess(first, pack("third", "company", "urgencies.yaml", "urgencies: {cutoff.none / none: watch}\n")),
                "it forbids firing, and no pack lowers that");
    }
}
