package gaugeglass.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The invented company's pack among the examples, from one end to the other. */
class CompanyPackTest {
    private static final Path EXAMPLE = Path.of("../docs/examples/packs/harrow-heating");
    private static final String HARROW = Path.of("target/harrow-signed").toString();
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

    /** Signed with a key of this test's own: the example carries no key, as nobody's key should be in a release. */
    @BeforeAll
    static void signed() throws IOException {
        for (Path old : new Path[] {Ran.HOME.resolve("keys"), Ran.HOME.resolve("trusted"), Path.of(HARROW)}) {
            if (Files.exists(old)) {
                try (Stream<Path> all = Files.walk(old)) {
                    for (Path path : (Iterable<Path>) all.sorted(Comparator.reverseOrder())::iterator) {
                        Files.delete(path);
                    }
                }
            }
        }
        copy(EXAMPLE, Path.of(HARROW));
        assertThat(Ran.of("pack", "key", "of-the-test").code()).isZero();
        Ran ran = Ran.of("pack", "sign", HARROW, "--key", "of-the-test");
        assertThat(ran.err()).isEmpty();
    }

    private static void copy(Path from, Path to) throws IOException {
        Files.createDirectories(to);
        try (Stream<Path> all = Files.list(from)) {
            for (Path path : (Iterable<Path>) all::iterator) {
                Files.copy(path, to.resolve(path.getFileName()));
            }
        }
    }

    @Test
    void the_rule_written_by_form_judges_the_packs_own_observation() throws IOException {
        String visit = VISIT.replace(
                "    clearance:", "    burner: {firing: automatic, cover-screws: some-missing}\n    clearance:");

        assertThat(assess(visit, "--as", "jsonl").out())
                .contains("\"rule\":\"cover.screws-missing\",\"subject\":\"\",\"urgency\":\"season\"")
                .contains("{\"item\":\"burner.cover-screws\",\"subject\":\"\",\"answer\":\"some missing\"}");
        Path file = folder.resolve("visit.yaml");
        assertThat(Ran.of("assess", file.toString()).err()).contains("\"cover-screws\" is no key here");
    }

    @Test
    void the_rule_written_as_drl_finds_with_the_packs_own_limit() throws IOException {
        assertThat(assess(VISIT).out().replaceAll("\\s+", " "))
                .contains("A spare for this float cutoff is to be ordered", "longer than 5 years");
    }

    @Test
    void a_rule_of_the_pack_is_explained_with_its_conditions_and_scenarios() {
        String told =
                Ran.of("rulebook", "cover.screws-missing", "--pack", HARROW).out();

        assertThat(told)
                .contains(
                        "Found when (" + HARROW + "/cover.drl, line ",
                        "BurnerCoverScrewsValue.SOME_MISSING )",
                        "Proven by ");
        assertThat(Ran.of("rulebook", "cutoff.past-service-life", "--pack", HARROW)
                        .out())
                .contains(".drl, line ", "    CutoffInstalled( which == $about", "Proven by ");
    }

    @Test
    void the_schema_of_an_inspection_and_the_blank_one_have_what_the_pack_adds_and_lack_what_it_drops() {
        String schema = Ran.of("schema", "inspection", "--pack", HARROW).out();
        String blank = Ran.of("blank", "--pack", HARROW).out();

        assertThat(schema).contains("\"cover-screws\"", "\"some-missing\"");
        assertThat(Ran.of("schema", "inspection").out()).doesNotContain("cover-screws");
        assertThat(blank).contains("cover-screws:");
        assertThat(Ran.of("blank").out()).doesNotContain("cover-screws").contains("device-dates:");
        assertThat(blank).doesNotContain("device-dates:");
        assertThat(Ran.of("blank", "--system", "one-pipe", "--pack", HARROW).out())
                .contains("cover-screws:")
                .doesNotContain("device-dates:");
        assertThat(Ran.withInput(blank, "check", "-", "--pack", HARROW).code()).isZero();
        assertThat(Ran.of("schema", "fleet", "--pack", HARROW).err()).contains("a pack changes no other");
    }

    @Test
    void the_form_beside_the_pack_writes_what_is_in_it() throws IOException {
        Path pack = folder.resolve("harrow-heating");
        copy(EXAMPLE, pack);
        String rule = Files.readString(pack.resolve("cover.drl"));
        String card = Files.readString(pack.resolve("cover.cards.yaml"));
        Files.delete(pack.resolve("cover.drl"));
        Files.delete(pack.resolve("cover.cards.yaml"));

        Ran ran = Ran.of(
                "pack",
                "rule",
                pack.toString(),
                EXAMPLE.resolveSibling("harrow-cover.csv").toString());

        assertThat(ran.err()).isEmpty();
        assertThat(Files.readString(pack.resolve("cover.drl"))).isEqualTo(rule);
        assertThat(Files.readString(pack.resolve("cover.cards.yaml"))).isEqualTo(card);
        assertThat(Ran.of(
                                "pack",
                                "rule",
                                pack.toString(),
                                EXAMPLE.resolveSibling("harrow-cover.csv").toString())
                        .err())
                .contains("there is a card of this id in the pack");
    }

    @Test
    void its_scenarios_come_out_as_expected_and_none_is_wanting() {
        Ran ran = Ran.of("pack", "try", EXAMPLE.toString());

        assertThat(ran.out().replaceAll("\\s+", " "))
                .contains("9 scenarios of 2 checks, all as expected; none is wanting");
        assertThat(ran.code()).isZero();
    }

    @Test
    void a_rule_that_does_something_else_than_its_scenarios_say_is_told_with_its_place() throws IOException {
        Path pack = folder.resolve("harrow-heating");
        copy(EXAMPLE, pack);
        Path drl = pack.resolve("harrow.drl");
        Files.writeString(drl, Files.readString(drl).replace("on < $today", "on > $today"));

        Ran ran = Ran.of("pack", "try", pack.toString());

        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.out().replaceAll("\\s+", " "))
                .contains(
                        "harrow.cards.yaml:15: harrow.float-to-watch: six years old: expected found found for A, came out")
                .contains("not as expected");
        assertThat(Ran.of("pack", "sign", pack.toString(), "--key", "of-the-test")
                        .err())
                .contains("scenarios do not come out as expected");
    }

    @Test
    void a_file_changed_after_signing_is_refused_and_so_is_another_key() throws IOException {
        Path pack = folder.resolve("harrow-heating");
        copy(Path.of(HARROW), pack);
        Path words = pack.resolve("words.yaml");
        Files.writeString(words, Files.readString(words).replace("shelf", "van"));
        Path visit = Files.writeString(folder.resolve("visit.yaml"), VISIT);

        assertThat(Ran.of("assess", visit.toString(), "--pack", pack.toString()))
                .extracting(Ran::code, Ran::out)
                .containsExactly(3, "");
        assertThat(Ran.of("pack", "verify", pack.toString()).err())
                .contains("the pack was changed after it was signed");
        Path signature = pack.resolve("pack.signature");
        Files.writeString(signature, Files.readString(signature).replace("of-the-test", "somebody"));
        assertThat(Ran.of("pack", "verify", pack.toString()).err())
                .contains("it is signed by \"somebody\", a key that is not trusted here; trusted are of-the-test");
    }

    @Test
    void published_and_taken_it_judges_and_a_bad_one_leaves_the_last_good_copy() throws IOException {
        Path shared = Files.createDirectory(folder.resolve("shared"));
        assertThat(Ran.of("pack", "publish", HARROW, shared.toString()).code()).isZero();
        assertThat(Ran.of("pack", "take", shared.toString(), "harrow-heating").out())
                .contains("taken; use it with");
        Path visit = Files.writeString(folder.resolve("visit.yaml"), VISIT);
        String by =
                Ran.of("assess", visit.toString(), "--pack", "harrow-heating").out();
        assertThat(by).contains("Harrow Heating standard 1.0.0");

        Files.writeString(shared.resolve("harrow-heating-1.1.0.zip"), "spoiled on the way");
        Ran ran = Ran.of("pack", "take", shared.toString(), "harrow-heating");

        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err()).contains("this is no pack", "the copy taken before stays in use");
        assertThat(Ran.of("assess", visit.toString(), "--pack", "harrow-heating")
                        .out())
                .isEqualTo(by);
    }

    @Test
    void what_differs_and_what_would_have_come_out_otherwise_are_listed() throws IOException {
        assertThat(Ran.of("pack", "differs", EXAMPLE.toString()).out().replaceAll("\\s+", " "))
                .contains("cutoff.float-service-life: 10 years becomes 8 years (Harrow Heating standard 1.0.0)")
                .contains("Asked besides - burner.cover-screws", "Not asked - records.device-dates", "Waived - ");
        Path visit = Files.writeString(folder.resolve("visit.yaml"), VISIT.replace("elm-hall", "oak-hall"));
        String out = Ran.of("pack", "replay", EXAMPLE.toString(), visit.toString())
                .out()
                .replaceAll("\\s+", " ");
        assertThat(out)
                .contains("cutoff.past-service-life:A: in order becomes found past (season, standing)")
                .contains("harrow.float-to-watch:A: newly checked, found found (watch, standing)")
                .contains("1 inspection judged twice, 1 with another outcome");
    }

    @Test
    void the_walk_asks_the_packs_question_and_not_the_dropped_one() throws IOException {
        String sheet = Ran.of("sheet", "--checklist", "one-pipe-start-up", "--pack", HARROW, "--out", "-")
                .out();

        assertThat(sheet).contains("Are all screws of the burner");
        String without = Ran.of("sheet", "--checklist", "one-pipe-start-up", "--out", "-")
                .out();
        assertThat(without).doesNotContain("Are all screws of the burner");
    }

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
    void a_waived_finding_is_not_there_to_be_decided_on() throws IOException {
        Path file = folder.resolve("visit.yaml");
        String[] decided = {
            "decide",
            file.toString(),
            "cutoff.past-service-life:A",
            "done",
            "--by",
            "The owner",
            "--on",
            "2026-09-20",
            "--pack",
            HARROW
        };
        Files.writeString(file, VISIT);
        Ran waived = Ran.of(decided);
        assertThat(waived.code()).isEqualTo(2);
        assertThat(waived.err()).contains("did not find cutoff.past-service-life:A");
        Files.writeString(file, VISIT.replace("elm-hall", "oak-hall"));
        assertThat(Ran.of(decided).code()).isZero();
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
