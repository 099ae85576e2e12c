package gaugeglass.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The invented company's pack among the examples, from one end to the other. */
class CompanyPackTest {
    private static final String HARROW = "../docs/examples/packs/harrow-heating";
    private static final String VISIT = """
            format: 1
            site: {id: elm-hall}
            visit: {date: 2026-09-14}
            boilers:
              - id: B1
                clearance: {stored: none, service: 12 in}
                cutoffs: {fitted: 1, each: [{tag: A, kind: float, installed: 2017-09-01}]}
                safety-valves:
                  fitted: 1
                  each: [{tag: S, lever-record: none}]
            """;

    @TempDir
    private Path folder;

    private Ran assess(String visit, String... more) throws IOException {
        Path file = Files.writeString(folder.resolve("visit.yaml"), visit);
        String[] line = new String[more.length + 4];
        line[0] = "assess";
        line[1] = file.toString();
        line[2] = "--pack";
        line[3] = HARROW;
        System.arraycopy(more, 0, line, 4, more.length);
        return Ran.of(line);
    }

    @Test
    void both_waivers_are_shown_in_their_own_section_and_nowhere_else() throws IOException {
        String out = assess(VISIT).out().replaceAll("\\s+", " ");

        String waived = out.substring(out.indexOf("WAIVED"), out.indexOf("NOT JUDGED"));
        assertThat(waived)
                .contains("The cutoff is older than our standard allows", "By Training lead", "until 2027-04-30")
                .contains("The wall is moved with the new");
        assertThat(out.replace(waived, "")).doesNotContain("older than our standard", "wall is moved");
    }

    @Test
    void the_companys_limit_finds_what_the_standard_does_not() throws IOException {
        String other = VISIT.replace("elm-hall", "oak-hall");

        assertThat(assess(other).out())
                .contains(
                        "The cutoff is older than our standard allows", "8 years", "the office keeps two of each kind")
                .doesNotContain("WAIVED");
        Path file = folder.resolve("visit.yaml");
        assertThat(Ran.of("assess", file.toString()).out()).doesNotContain("past its service life");
    }

    @Test
    void the_urgency_is_the_companys() throws IOException {
        assertThat(assess(VISIT.replace("elm-hall", "oak-hall"), "--as", "jsonl")
                        .out())
                .contains("\"rule\":\"cutoff.past-service-life\",\"subject\":\"A\",\"urgency\":\"season\"");
    }

    @Test
    void what_is_added_to_a_stop_stands_behind_its_own_words() throws IOException {
        assertThat(assess(VISIT).out().replaceAll("\\s+", " "))
                .contains("Write the day on the tag and send a picture of it to the office.");
    }

    @Test
    void a_lapsed_waiver_and_an_unused_one_are_told_and_cover_nothing() throws IOException {
        String out = assess(VISIT.replace("2026-09-14", "2027-06-01").replace("service: 12 in", "service: 30 in"))
                .out()
                .replaceAll("\\s+", " ");

        assertThat(out)
                .contains("counts for nothing: it lapsed after 2027-04-30, and what it covered is found")
                .contains("counts for nothing: nothing was found that it could cover")
                .contains("1. The safety valve")
                .contains("The cutoff is older than our standard allows (low-water cutoff A)");
    }

    @Test
    void a_dropped_item_stays_unknown_and_says_why() throws IOException {
        assertThat(assess(VISIT, "--as", "jsonl").out())
                .contains(
                        "\"item\":\"records.device-dates\",\"subject\":\"\",\"reason\":\"not asked: the office keeps");
    }

    @Test
    void every_report_tells_what_is_waived() throws IOException {
        assess(VISIT);
        for (String reader : new String[] {"owner", "file"}) {
            Ran ran = Ran.of(
                    "report", folder.resolve("visit.yaml").toString(), "--pack", HARROW, "--for", reader, "--out", "-");
            assertThat(ran.out()).contains("<h3>Waived</h3>", "The wall is moved with the new");
        }
    }
}
