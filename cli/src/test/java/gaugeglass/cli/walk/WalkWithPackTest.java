package gaugeglass.cli.walk;

import static gaugeglass.cli.walk.Walked.DAY;
import static gaugeglass.cli.walk.Walked.indexOf;
import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.checklists.Checklist;
import gaugeglass.checklists.Checklists;
import gaugeglass.cli.command.Ran;
import gaugeglass.cli.pack.Laying;
import gaugeglass.engine.Assessment;
import gaugeglass.engine.Assessment.Finding;
import gaugeglass.engine.Assessment.Permit;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.book.StoredBook;
import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.InspectionReader;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.ItemType;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A visit walked by the rules and the questions of the invented company among the examples. */
class WalkWithPackTest {
    private static final Path EXAMPLE = Path.of("../docs/examples/packs/harrow-heating");

    @TempDir
    private static Path packs;

    private static Rulebook rulebook;
    private static Checklist checklist;

    @TempDir
    private Path folder;

    /** Signed by a key of this test's own, as a pack with rules is not laid on otherwise. */
    @BeforeAll
    static void laidOn() throws IOException {
        Path pack = Files.createDirectory(packs.resolve("harrow-heating"));
        try (Stream<Path> all = Files.list(EXAMPLE)) {
            for (Path path : (Iterable<Path>) all::iterator) {
                Files.copy(path, pack.resolve(path.getFileName()));
            }
        }
        // It is refused where an earlier run of the tests left the key, which will do.
        Ran.of("pack", "key", "of-the-walk");
        assertThat(Ran.of("pack", "sign", pack.toString(), "--key", "of-the-walk")
                        .err())
                .isEmpty();
        ClassLoader loader = WalkWithPackTest.class.getClassLoader();
        try (InputStream in = loader.getResourceAsStream(StoredBook.PATH)) {
            StoredBook standard =
                    StoredBook.read(StoredBook.PATH, new String(in.readAllBytes(), StandardCharsets.UTF_8), loader);
            Laying.Laid laid = Laying.over(
                            standard, List.of(pack.toString()), List.of(), "packs.yaml", () -> Ran.HOME, loader)
                    .orElseThrow();
            rulebook = Rulebook.of(laid.tailoring(), laid.loader());
        }
        checklist = Checklists.of(rulebook).checklist("one-pipe-start-up").orElseThrow();
    }

    private static Inspection read(Path path) throws IOException {
        return new InspectionReader(rulebook.vocabulary())
                .read(path.getFileName().toString(), Files.readString(path));
    }

    private static Answer answer(String item, List<Object> keys, Object value) {
        ItemType type = rulebook.vocabulary().item(item).orElseThrow();
        return Answer.seen(type, keys, State.AS_FOUND, type.make(keys, List.of(value)));
    }

    private static Object choice(String item, String word) {
        ItemType type = rulebook.vocabulary().item(item).orElseThrow();
        return Arrays.stream(type.constants(type.values().get(0)))
                .filter(constant -> Words.of((Enum<?>) constant).equals(word))
                .findFirst()
                .orElseThrow();
    }

    /** The sound church, its float nine years old, and what the company asks besides. */
    private static Observations given() throws IOException {
        Observations church = read(Path.of("../docs/examples/well-kept-church.yaml"))
                .units()
                .get(0)
                .observations();
        Answer old = answer("cutoff.installed", List.of("Float"), LocalDate.of(2017, 9, 1));
        return church.toBuilder()
                .without(old)
                .put(old)
                .put(answer("burner.cover-screws", List.of(), choice("burner.cover-screws", "some-missing")))
                .build();
    }

    @Test
    void the_added_item_is_asked_the_dropped_one_is_not_and_the_packs_rules_find_and_waive() throws IOException {
        List<Typist.Screen> screens = Typist.screens(checklist, given());
        Path path = folder.resolve("visit.yaml");
        TypedTalk talk = new TypedTalk()
                .type("elm-hall", "", "P. Example", "B1", "n")
                .type(Typist.lines(screens))
                .type("");
        List<String> complaints = new ArrayList<>();
        new Walking(rulebook, DAY, () -> "09:00")
                .walk(talk, path, Optional.empty(), Optional.of(checklist.id()), complaints::add);
        assertThat(complaints).isEmpty();
        assertThat(talk.linesLeft()).isZero();

        // Added and dropped, against what is asked without the pack.
        String dropped = Walked.RULEBOOK
                .vocabulary()
                .item("records.device-dates")
                .orElseThrow()
                .ask();
        assertThat(indexOf(screens, "burner.cover-screws")).isNotNegative();
        assertThat(screens).noneMatch(screen -> screen.asks("records.device-dates"));
        assertThat(Typist.screens(Walked.FULL, Walked.church()))
                .anyMatch(screen -> screen.asks("records.device-dates"))
                .noneMatch(screen -> screen.asks("burner.cover-screws"));
        assertThat(talk.screen())
                .contains("Are all screws of the burner's cover in place?")
                .doesNotContain(dropped);

        // Found as soon as it is certain, and waived for this site alone, with who answers for it.
        assertThat(talk.screen())
                .contains("This heating season: Screws of the burner's cover are missing")
                .contains("A spare for this float cutoff is to be ordered (cutoff Float)")
                .contains("Waived: The cutoff is older than our standard allows (cutoff Float)")
                .contains("By Training lead, from 2026-09-01 until 2027-04-30: The boiler is replaced in spring")
                .doesNotContain("This heating season: The cutoff is older");
        Inspection walked = read(path);
        Assessment assessment = rulebook.assess(walked.units().get(0).observations(), walked.date(), walked.siteId());
        assertThat(assessment.findings())
                .extracting(Finding::rule)
                .contains("cover.screws-missing", "harrow.float-to-watch")
                .doesNotContain("cutoff.past-service-life");
        assertThat(assessment.waived())
                .extracting(one -> one.finding().rule())
                .containsExactly("cutoff.past-service-life");
        assertThat(assessment.testFiring().permit()).isEqualTo(Permit.NOTHING_FOUND_AGAINST);

        // What judged it is in the file, and it can be judged again as then from the folder of published packs.
        assertThat(walked.judgedBy()).isEqualTo(rulebook.judgedBy());
        assertThat(walked.judgedBy().packs()).singleElement().extracting("name").isEqualTo("harrow-heating");
        Ran then = Ran.of("assess", path.toString(), "--as-then", packs.toString());
        assertThat(then.code()).isZero();
        assertThat(then.out())
                .isEqualTo(Ran.of(
                                "assess",
                                path.toString(),
                                "--pack",
                                packs.resolve("harrow-heating").toString())
                        .out());
    }

    @Test
    void at_another_site_nothing_is_waived() throws IOException {
        List<Typist.Screen> screens = Typist.screens(checklist, given());
        int dated = indexOf(screens, "cutoff.installed") + 1;
        TypedTalk talk = new TypedTalk()
                .type("chapel", "", "P. Example", "B1", "n")
                .type(Typist.lines(screens.subList(0, dated)))
                .type("f", "", "q");
        new Walking(rulebook, DAY, () -> "09:00")
                .walk(talk, folder.resolve("visit.yaml"), Optional.empty(), Optional.of(checklist.id()), words -> {});
        assertThat(talk.screen())
                .contains("This heating season: The cutoff is older than our standard allows (cutoff Float)")
                .doesNotContain("Waived");
    }
}
