package gaugeglass.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.Rulebook;
import gaugeglass.engine.book.Book;
import gaugeglass.engine.pack.PackFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An inspection of some time ago, judged again by what judged it then, or told why not. */
class AsThenTest {
    private static final Book BOOK =
            Rulebook.load(AsThenTest.class.getClassLoader()).book();
    private static final String OTHER = "0123456789abcdef".repeat(4);

    @TempDir
    private Path folder;

    private Path shared;

    @BeforeEach
    void a_folder_of_published_packs() throws IOException {
        shared = Files.createDirectory(folder.resolve("shared"));
    }

    /** Publishes a version of a pack that lets a float serve so many years, and gives its digest. */
    private String published(String version, int years) throws IOException {
        Path pack = Files.createDirectories(folder.resolve("elm-" + version + "-" + years));
        Files.writeString(pack.resolve("pack.yaml"), """
                pack: elm
                title: Elm Heating standard
                version: %s
                level: company
                tailors: standard practice
                made-for: %s
                by: Training lead
                """.formatted(version, BOOK.version()));
        Files.writeString(pack.resolve("limits.yaml"), "limits:\n  cutoff.float-service-life: " + years + " years\n");
        assertThat(Ran.of("pack", "publish", pack.toString(), shared.toString()).err())
                .isEmpty();
        return PackFiles.read(pack).hash();
    }

    private static String record(String version, String digest) {
        return "judged-by:\n  rulebook: " + BOOK.name() + "\n  version: " + version + "\n  digest: " + digest + "\n";
    }

    private static String laidOn(String version, String digest) {
        return "  packs:\n    - {pack: elm, version: " + version + ", digest: " + digest + "}\n";
    }

    private String visit(String record) throws IOException {
        return Files.writeString(folder.resolve("visit.yaml"), """
                        format: 1
                        site: {id: elm-hall}
                        visit: {date: 2026-09-14}
                        %sboilers:
                          - id: B1
                            cutoffs: {fitted: 1, each: [{tag: A, kind: float, installed: 2017-09-01}]}
                        """.formatted(record))
                .toString();
    }

    private Ran asThen(String visit) {
        return Ran.of("assess", visit, "--as-then", shared.toString());
    }

    @Test
    void by_the_rulebook_alone_it_is_judged_by_the_rulebook_alone_whatever_lies_beside_it() throws IOException {
        published("1.0.0", 8);
        String visit = visit(record(BOOK.version(), BOOK.hash()));
        Files.writeString(folder.resolve("packs.yaml"), "packs: [shared/elm-1.0.0.zip]\n");

        Ran ran = asThen(visit);

        assertThat(ran.code()).isZero();
        assertThat(ran.err()).contains("judged by what judged it then: standard practice " + BOOK.version());
        assertThat(ran.out())
                .isEqualTo(Ran.of("assess", visit, "--pack", "none").out());
        assertThat(Ran.of("assess", visit).out())
                .contains("Elm Heating standard")
                .isNotEqualTo(ran.out());
    }

    @Test
    void the_pack_of_the_recorded_digest_is_found_among_later_ones() throws IOException {
        String digest = published("1.0.0", 8);
        published("1.1.0", 15);
        String visit = visit(record(BOOK.version(), BOOK.hash()) + laidOn("1.0.0", digest));

        Ran ran = asThen(visit);

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("Elm Heating standard 1.0.0", "past its service life");
        String later = shared.resolve("elm-1.1.0.zip").toString();
        assertThat(Ran.of("assess", visit, "--pack", later).out()).doesNotContain("past its service life");
    }

    private void isRefused(String visit, String... words) {
        Ran ran = asThen(visit);

        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains(words).doesNotContain("judged by what judged it then");
    }

    @Test
    void a_pack_that_is_not_there_is_told_with_those_of_its_name_that_are() throws IOException {
        published("1.0.0", 8);
        published("1.1.0", 9);

        isRefused(
                visit(record(BOOK.version(), BOOK.hash()) + laidOn("1.0.0", OTHER)),
                "judged-by: the pack elm 1.0.0 with digest 0123456789ab is not in ",
                "of this name there is one of this version with digest ",
                ", which is another, and version 1.1.0",
                "expected elm-1.0.0.zip as it was published then");
    }

    @Test
    void another_version_of_the_rulebook_is_told_with_what_would_be_needed() throws IOException {
        isRefused(
                visit(record("0.0.5", OTHER)),
                "it was judged by version 0.0.5 of standard practice, and this is " + BOOK.version(),
                "expected the program of version 0.0.5");
    }

    @Test
    void a_rulebook_changed_without_a_new_version_is_not_taken_for_the_same() throws IOException {
        isRefused(
                visit(record(BOOK.version(), OTHER)),
                "with digest 0123456789ab, and this one has digest "
                        + BOOK.hash().substring(0, 12),
                "the rules were changed without a new version");
    }

    @Test
    void everything_that_differs_is_told_at_once() throws IOException {
        isRefused(
                visit(record("0.0.5", OTHER) + laidOn("1.0.0", OTHER)),
                "expected the program of version 0.0.5",
                "expected elm-1.0.0.zip");
    }

    @Test
    void a_file_that_records_nothing_is_not_judged_as_if_it_were_known() throws IOException {
        isRefused(visit(""), "the file does not record what judged it");
    }

    @Test
    void a_spoiled_record_is_told_with_its_place_by_every_command() throws IOException {
        String visit = visit(record(BOOK.version(), "not-a-digest"));

        isRefused(visit, "visit.yaml:7:11: judged-by: this is no digest");
        assertThat(Ran.of("check", visit).err()).contains("visit.yaml:7:11: judged-by: this is no digest");
    }

    @Test
    void a_published_pack_with_a_spoiled_zip_beside_it_is_found_all_the_same() throws IOException {
        String digest = published("1.0.0", 8);
        Files.writeString(shared.resolve("elm-0.9.0.zip"), "spoiled on the way");

        assertThat(asThen(visit(record(BOOK.version(), BOOK.hash()) + laidOn("1.0.0", digest)))
                        .code())
                .isZero();
    }

    @Test
    void packs_and_day_are_those_of_then_and_not_to_be_named() throws IOException {
        String visit = visit(record(BOOK.version(), BOOK.hash()));

        for (String[] more : new String[][] {{"--pack", "none"}, {"--date", "2026-09-14"}, {visit}}) {
            String[] line = new String[more.length + 4];
            System.arraycopy(new String[] {"assess", visit, "--as-then", shared.toString()}, 0, line, 0, 4);
            System.arraycopy(more, 0, line, 4, more.length);
            assertThat(Ran.of(line)).extracting(Ran::code, Ran::out).containsExactly(2, "");
        }
    }

    @Test
    void the_owners_decision_leaves_the_record_as_it_was() throws IOException {
        String digest = published("1.0.0", 8);
        String visit = visit(record(BOOK.version(), BOOK.hash()) + laidOn("1.0.0", digest));
        Ran ran = Ran.of(
                "decide",
                visit,
                "cutoff.past-service-life",
                "deferred",
                "--by",
                "Owner",
                "--on",
                "2026-09-20",
                "--pack",
                shared.resolve("elm-1.0.0.zip").toString());

        assertThat(ran.err()).isEmpty();
        assertThat(Files.readString(Path.of(visit))).contains(laidOn("1.0.0", digest), "deferred");
        assertThat(asThen(visit).code()).isZero();
    }
}
