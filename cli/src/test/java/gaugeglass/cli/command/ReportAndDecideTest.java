package gaugeglass.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What {@code report} writes where, and what {@code decide} records. */
class ReportAndDecideTest {
    @TempDir
    private Path folder;

    private Path file;

    @BeforeEach
    void lay() throws Exception {
        file = folder.resolve("visit.yaml");
        Files.copy(Path.of("src/test/resources/reports/neglected.yaml"), file);
    }

    private Ran decide(String... words) {
        String[] all = new String[words.length + 2];
        all[0] = "decide";
        all[1] = file.toString();
        System.arraycopy(words, 0, all, 2, words.length);
        return Ran.of(all);
    }

    @Test
    void a_report_is_put_beside_its_inspection_and_named_after_it() {
        Ran ran = Ran.of("report", file.toString(), "--pdf");

        assertThat(ran.code()).isZero();
        assertThat(folder.resolve("visit.owner.html")).content().startsWith("<!DOCTYPE html>");
        assertThat(folder.resolve("visit.owner.pdf")).exists();
        assertThat(ran.out()).isEmpty();
    }

    @Test
    void lists_of_work_are_written_where_asked() {
        Path csv = folder.resolve("work.csv");
        Path json = folder.resolve("work.json");

        Ran ran = Ran.of(
                "report",
                file.toString(),
                "--for",
                "file",
                "--out",
                "-",
                "--csv",
                csv.toString(),
                "--json",
                json.toString());

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).startsWith("<!DOCTYPE html>").contains("full report");
        assertThat(csv).content().contains("cutoff.bypassed:LW-1");
        assertThat(json).content().contains("\"remedy\" : \"");
    }

    @Test
    void a_folder_that_is_not_there_is_told_and_ends_with_4() {
        Ran ran = Ran.of(
                "report",
                file.toString(),
                "--out",
                folder.resolve("no/where.html").toString());

        assertThat(ran.code()).isEqualTo(4);
        assertThat(ran.err()).contains("could not be written: its folder is not there");
    }

    @Test
    void an_inspection_that_cannot_be_used_has_no_report() throws Exception {
        Files.writeString(file, "format: 1\nsitee: {id: a}\n");

        Ran ran = Ran.of("report", file.toString());

        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err()).contains("sitee");
        assertThat(folder.resolve("visit.owner.html")).doesNotExist();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            report                                | a report is of one inspection; expected one file, or - for standard input
            report a b                            | "b" is one word too many
            report -                              | --out is missing: an inspection from standard input has no name to go by
            report a --for ownr                   | --for: "ownr" is not known; expected one of owner, file; did you mean "owner"?
            report a --paper a5                   | --paper: "a5" is not known; expected one of letter, a4; did you mean "a4"?
            report a --out a.pdf                  | --out: "a.pdf" does not end in .html; with --pdf the PDF is put beside the page
            report a --out - --pdf                | --pdf is put beside the page; expected --out with the name of a file
            report a.json --json a.json           | --json: "a.json" is the inspection itself
            report a --csv a.yaml                 | --csv: "a.yaml" does not end in .csv
            decide                                | no inspection file is named
            decide a x                            | the decision is missing; expected one of done, deferred, refused
            decide a x don --by me --on 2026-09-20 | "don" is no decision; expected one of done, deferred, refused; did you mean "done"?
            decide a x done                       | --by is missing: who decided
            decide a x done --by me               | --on is missing: the day it was decided, such as 2026-09-20
            decide a x done --by me --on 20.9.26  | --on: "20.9.26" is no date; expected year, month and day such as 2026-09-14
            decide a --by me                      | --by goes with a finding; without one you are asked for everything
            """)
    void a_wrong_line_is_told_and_ends_with_2(String line, String said) {
        Ran ran = Ran.of(line.split(" +"));

        assertThat(ran.err()).startsWith("gaugeglass: " + said + "\n");
        assertThat(ran.code()).isEqualTo(2);
    }

    @Test
    void a_decision_is_recorded_shown_in_the_next_report_and_the_file_before_is_kept() throws Exception {
        String before = Files.readString(file);

        Ran ran = decide(
                "cutoff.past-service-life:LW-2",
                "deferred",
                "--by",
                "The owner",
                "--on",
                "2026-09-20",
                "--note",
                "in spring");

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("Recorded: deferred by The owner on 2026-09-20.", "stands until");
        assertThat(Files.readString(folder.resolve("visit.yaml.before"))).isEqualTo(before);
        Ran.of("report", file.toString());
        assertThat(folder.resolve("visit.owner.html"))
                .content()
                .contains("deferred by The owner on 2026-09-20 (in spring)");
        assertThat(Ran.of("assess", file.toString()).code()).isZero();
    }

    @Test
    void nothing_but_the_decisions_changes_in_a_file_that_somebody_wrote() throws Exception {
        String before = "# our own words\r\n" + Files.readString(file).replace("\n", "\r\n");
        Files.writeString(file, before);

        decide("cutoff.past-service-life:LW-2", "deferred", "--by", "The owner", "--on", "2026-09-20");
        String after = Files.readString(file);

        int from = before.indexOf("decisions:");
        int to = before.indexOf("boilers:");
        assertThat(after).startsWith(before.substring(0, from)).endsWith(before.substring(to));
        assertThat(after.substring(from, after.indexOf("boilers:")))
                .contains("cutoff.weekly-flush-log", "cutoff.past-service-life", "deferred");
        assertThat(after.replace("\r\n", "")).doesNotContain("\n");
    }

    @Test
    void a_file_without_decisions_gets_them_behind_all_else() throws Exception {
        String text = Files.readString(file).replaceAll("(?s)decisions:.*?boilers:", "boilers:") + "# the end\n";
        Files.writeString(file, text);

        Ran ran = decide("cutoff.past-service-life:LW-2", "deferred", "--by", "The owner", "--on", "2026-09-20");

        assertThat(Files.readString(file)).startsWith(text).contains("decision: deferred");
        assertThat(ran.out()).doesNotContain("comments");
        assertThat(Ran.of("assess", file.toString()).code()).isZero();
    }

    @Test
    void a_file_laid_out_in_another_way_is_written_anew_and_that_is_said() throws Exception {
        Files.writeString(file, """
                # all in braces
                {format: 1, site: {id: elm-hall, co-alarm: none}, visit: {date: 2026-09-14},
                boilers: [{id: B1}]}
                """);

        Ran ran = decide("site.co-alarm-missing", "deferred", "--by", "The owner", "--on", "2026-09-20");

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("written anew, so comments in it are not kept");
        assertThat(Files.readString(file)).doesNotContain("# all in braces").contains("site.co-alarm-missing");
        assertThat(Files.readString(folder.resolve("visit.yaml.before"))).contains("# all in braces");
    }

    @Test
    void one_decision_may_be_about_all_that_a_check_found() throws Exception {
        Ran ran = decide("cutoff.weekly-flush-log:*", "deferred", "--by", "The owner", "--on", "2026-09-20");

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("low-water cutoffs LW-1, LW-2", "Before, it was: done by the caretaker");
        assertThat(Files.readString(file).split("decision: deferred", -1))
                .as("one of an earlier visit, two of this")
                .hasSize(4);
        assertThat(decide("cutoff.past-service-life:*", "deferred", "--by", "The owner", "--on", "2026-09-20")
                        .code())
                .isZero();
        assertThat(decide("cutoff.none:*", "deferred", "--by", "The owner", "--on", "2026-09-20")
                        .err())
                .contains("did not find");
    }

    @Test
    void a_later_decision_takes_the_place_of_the_earlier_one() throws Exception {
        decide("cutoff.past-service-life", "deferred", "--by", "The owner", "--on", "2026-09-20");
        Ran ran = decide("cutoff.past-service-life", "done", "--by", "The owner", "--on", "2026-10-20");

        assertThat(ran.out()).contains("Before, it was: deferred by The owner on 2026-09-20.");
        assertThat(Files.readString(file).split("cutoff.past-service-life", -1))
                .as("one of an earlier visit, one of this")
                .hasSize(3);
    }

    @Test
    void an_unknown_check_is_told_with_the_nearest_and_nothing_is_written() throws Exception {
        String before = Files.readString(file);

        Ran ran = decide("cutoff.past-servicelife", "done", "--by", "me", "--on", "2026-09-20");

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("no check is called", "did you mean \"cutoff.past-service-life\"?");
        assertThat(Files.readString(file)).isEqualTo(before);
    }

    @Test
    void what_the_visit_did_not_find_cannot_be_decided_on() {
        Ran ran = decide("relief.missing", "done", "--by", "me", "--on", "2026-09-20");
        Ran wrongTag = decide("cutoff.past-service-life:LW-1", "done", "--by", "me", "--on", "2026-09-20");

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("did not find relief.missing", "cutoff.past-service-life:LW-2");
        assertThat(wrongTag.code()).isEqualTo(2);
        assertThat(wrongTag.err()).contains("did you mean \"cutoff.past-service-life:LW-2\"?");
    }

    @Test
    void where_several_have_the_finding_it_must_be_said_which() {
        Ran ran = decide("cutoff.weekly-flush-log", "done", "--by", "me", "--on", "2026-09-20");

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("expected one of cutoff.weekly-flush-log:LW-1, cutoff.weekly-flush-log:LW-2");
    }

    @Test
    void nobody_decides_before_the_visit() {
        Ran ran = decide("cutoff.past-service-life", "done", "--by", "me", "--on", "2026-09-13");

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("before the visit of 2026-09-14");
    }

    @Test
    void json_files_and_files_that_are_not_there_are_told() throws Exception {
        Path json = Files.writeString(folder.resolve("visit.json"), "{}");

        Ran of = Ran.of("decide", json.toString(), "a", "done", "--by", "me", "--on", "2026-09-20");
        Ran gone =
                Ran.of("decide", folder.resolve("no.yaml").toString(), "a", "done", "--by", "me", "--on", "2026-09-20");

        assertThat(of.code()).isEqualTo(3);
        assertThat(of.err()).contains("decisions are written as YAML");
        assertThat(Files.readString(json)).isEqualTo("{}");
        assertThat(gone.code()).isEqualTo(3);
        assertThat(gone.err()).contains("there is no such file");
    }

    @Test
    void without_a_finding_all_are_listed_and_everything_is_asked_until_it_fits() throws Exception {
        Ran ran = Ran.withInput(
                "99\n1\nperhaps\nrefused\nThe owner\n2026-09-01\n2026-09-21\ncosts too much\n\n",
                "decide",
                file.toString());

        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .contains(" 1. The cutoff is bypassed", "Expected 1 to", "Expected one of done, deferred, refused")
                .contains("Recorded: refused by The owner on 2026-09-21.", "decided: refused by The owner");
        assertThat(Files.readString(file)).contains("costs too much");
    }

    @Test
    void an_input_that_ends_records_nothing() throws Exception {
        String before = Files.readString(file);

        Ran ran = Ran.withInput("1\ndone\n", "decide", file.toString());

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("Nothing was recorded.");
        assertThat(Files.readString(file)).isEqualTo(before);
    }
}
