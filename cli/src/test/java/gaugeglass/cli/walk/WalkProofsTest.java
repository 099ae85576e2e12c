package gaugeglass.cli.walk;

import static gaugeglass.cli.walk.Walked.CHECKLISTS;
import static gaugeglass.cli.walk.Walked.FULL;
import static gaugeglass.cli.walk.Walked.begun;
import static gaugeglass.cli.walk.Walked.church;
import static gaugeglass.cli.walk.Walked.facts;
import static gaugeglass.cli.walk.Walked.indexOf;
import static gaugeglass.cli.walk.Walked.unit;
import static gaugeglass.cli.walk.Walked.walk;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import gaugeglass.checklists.Checklist;
import gaugeglass.checklists.Interview;
import gaugeglass.cli.command.Ran;
import gaugeglass.engine.Assessment.Permit;
import gaugeglass.engine.Assessment.Word;
import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.vocabulary.Stage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a walk does when things go wrong around it, and what it takes in one go. */
class WalkProofsTest {
    @TempDir
    Path folder;

    private Path path() {
        return folder.resolve("visit.yaml");
    }

    private static List<Typist.Screen> screens() {
        return Typist.screens(FULL, church());
    }

    private Answer answer(String item) {
        return unit(path()).answers().stream()
                .filter(answer -> answer.item().id().equals(item))
                .findFirst()
                .orElseThrow();
    }

    // ---- panels

    @Test
    void a_part_left_out_stays_open_and_is_asked_on() {
        walk(FULL, begun().type("none", "- 4 ppm", "q"), path());
        assertThat(facts(unit(path())))
                .containsKeys("site.gas-smell  AS_FOUND", "site.co  AS_FOUND")
                .doesNotContainKeys("site.gas-meter  AS_FOUND", "site.co-outdoors  AS_FOUND");
        TypedTalk again = new TypedTalk().type("0 % 1 ppm", "q");
        walk(FULL, again, path());
        assertThat(again.screen()).contains("At the door").doesNotContain("How much carbon monoxide is in the boiler");
        assertThat(facts(unit(path()))).containsKeys("site.gas-meter  AS_FOUND", "site.co-outdoors  AS_FOUND");
    }

    @Test
    void a_line_with_one_wrong_word_is_taken_not_at_all_and_says_which_part() {
        TypedTalk talk = begun().type("none", "0 % 4 psi 1 ppm", "0 % 4 ppm 1 ppm 1 1 7", "q");
        walk(FULL, talk, path());
        assertThat(talk.screen())
                .contains("part 2: \"4 psi\": psi is a unit of gauge pressure")
                .contains("\"7\" is more than was asked")
                .contains("Nothing of this line was taken");
        assertThat(unit(path()).answers()).hasSize(1);
    }

    @Test
    void parts_are_answered_by_their_numbers_with_reasons_notes_and_pictures() {
        TypedTalk talk =
                begun().type("none", "2=4 ppm; 3 = 1 ppm", "n2 by the flue", "p3 yard.jpg", "?1", "u1 no meter", "q");
        walk(FULL, talk, path());
        assertThat(answer("site.co").note()).isEqualTo("by the flue");
        assertThat(answer("site.co-outdoors").photos()).containsExactly("yard.jpg");
        assertThat(answer("site.gas-meter").unread()).isEqualTo("no meter");
        assertThat(talk.screen()).contains("Look: ");
    }

    @Test
    void what_an_answer_in_the_line_closes_takes_no_word_and_what_it_opens_does() {
        List<Typist.Screen> screens = screens();
        int at = indexOf(screens, "site.air-pressure-from");
        for (String line : List.of("by-output barometer 14.6 psia", "by-output elevation 300 ft")) {
            Path path = folder.resolve(line.length() + ".yaml");
            walk(FULL, begun().type(Typist.lines(screens.subList(0, at))).type(line, "q"), path);
            assertThat(facts(unit(path)).keySet().stream()
                            .filter(key -> key.startsWith("site.barometer") || key.startsWith("site.elevation"))
                            .toList())
                    .hasSize(1);
        }
    }

    @Test
    void nothing_answers_all_parts_at_once() {
        for (String line : List.of("1", "all", "ok", "*", "=", "")) {
            Path path = folder.resolve("visit-" + line.length() + line.hashCode() + ".yaml");
            walk(FULL, begun().type(Typist.lines(screens().subList(0, 2))).type(line, "q"), path);
            assertThat(unit(path).answers().size()).isLessThan(11);
        }
    }

    // ---- keys and readings

    @Test
    void switches_are_taken_as_keys_in_the_order_heard_with_their_times() {
        List<Typist.Screen> screens = screens();
        int at = indexOf(screens, "cutoff-test.switches");
        TypedTalk talk = begun().type(Typist.lines(screens.subList(0, at)))
                .type("go", "flame-out held", "q")
                .press("bxfb\n");
        walk(FULL, talk, path());
        Answer heard = answer("cutoff-test.switches");
        assertThat(heard.typed()).isEqualTo("burner-then-feeder");
        assertThat(heard.note()).isEqualTo("heard burner at 0.0 s, feeder at 3.0 s, burner at 4.5 s");
        assertThat(talk.screen()).contains("(no such key)");
        assertThat(unit(path()).answers())
                .anySatisfy(one -> assertThat(one.item().id()).isEqualTo("cutoff-test.heat-call"));
    }

    @Test
    void the_level_of_the_slow_drain_is_taken_against_time_by_the_clock() {
        List<Typist.Screen> screens = screens();
        int at = indexOf(screens, "cutoff-test.fall");
        TypedTalk talk = begun().type(Typist.lines(screens.subList(0, at)))
                .type("go", "3 in", "3 psi", "2 1/2 in", "1 in", "", "q");
        walk(FULL, talk, path());
        assertThat(answer("cutoff-test.fall").note()).isEqualTo("read 3 in at 0 s, 2 1/2 in at 2 s, 1 in at 3 s");
        assertThat(facts(unit(path())).get("cutoff-test.fall Float/slow-drain AS_FOUND"))
                .contains("begin=3 in", "end=1 in", "time=3 s");
        assertThat(talk.screen()).contains("Not understood: 3 psi");
    }

    @Test
    void the_level_of_the_slow_drain_is_taken_from_a_note_with_its_times() {
        List<Typist.Screen> screens = screens();
        int at = indexOf(screens, "cutoff-test.fall");
        TypedTalk talk = begun().type(Typist.lines(screens.subList(0, at)))
                .type("go", "3 in", "", "go", "0 s 5 in", "1 min 2 1/2 in", "90 s 1/2 in", "")
                .type("moved 1 s 10 s after-level in-glass noted", "f", "", "q");
        walk(FULL, talk, path());
        assertThat(talk.screen()).contains("Two readings are needed");
        assertThat(answer("cutoff-test.fall").note()).isEqualTo("read 5 in at 0 s, 2 1/2 in at 60 s, 1/2 in at 90 s");
        assertThat(facts(unit(path())).get("cutoff-test.fall Float/slow-drain AS_FOUND"))
                .contains("begin=5 in", "end=1/2 in", "time=90 s");
        // Three inches in a minute are faster than a slow drain may be.
        assertThat(talk.screen()).contains("The slow drain was no slow one (cutoff Float)", "fell 3 in in a minute");
    }

    @Test
    void what_an_earlier_answer_closes_is_set_aside_listed_and_not_judged() {
        List<Typist.Screen> screens = screens();
        int at = indexOf(screens, "cutoff-test.switches");
        TypedTalk talk = begun().type(Typist.lines(screens.subList(0, at)))
                .type("go", "not-done", "q")
                .press("f\n");
        walk(FULL, talk, path());
        Observations observations = unit(path());
        assertThat(Interview.of(FULL, observations).setAside())
                .singleElement()
                .satisfies(aside -> assertThat(aside.item().id()).isEqualTo("cutoff-test.switches"));
        assertThat(Interview.of(FULL, observations).judged().answers())
                .noneSatisfy(one -> assertThat(one.item().id()).isEqualTo("cutoff-test.switches"));
        // assess takes the file as the walk does, and lists what it leaves out.
        assertThat(Ran.of("assess", path().toString()).out().replaceAll("\\s+", " "))
                .contains("cutoff-test.switches of Float/cold-flush: set aside and not judged");
    }

    // ---- tables

    @Test
    void rows_pasted_from_a_spreadsheet_answer_piece_by_piece_and_raise_the_count() {
        List<Typist.Screen> screens = screens();
        int at = indexOf(screens, "gauge.role");
        TypedTalk talk = begun().type(Typist.lines(screens.subList(0, at)))
                .type("t", "2", "Tag\tRole\tTop figure\tSiphon")
                .type("back room\telsewhere\t30\tu behind a wall", ".", "q");
        walk(FULL, talk, path());
        Observations observations = unit(path());
        assertThat(observations.roster("gauge").tags(State.AS_FOUND)).hasSize(3).contains("back room");
        assertThat(facts(observations))
                .containsKey("gauge.role back room AS_FOUND")
                .containsEntry("gauge.siphon back room AS_FOUND", "unread: behind a wall");
        List<Typist.Screen> rest = Typist.screens(FULL, church(), observations);
        assertThat(rest).anySatisfy(screen -> assertThat(screen.gives()).contains("gauge.dial-start"));
        assertThat(talk.screen()).contains("3 answers about 1 of the gauges; new: back room");
    }

    @Test
    void wrong_cells_are_named_by_row_and_column_and_nothing_is_lost() throws IOException {
        List<Typist.Screen> screens = screens();
        int at = indexOf(screens, "gauge.role");
        TypedTalk talk = begun().type(Typist.lines(screens.subList(0, at)))
                .type(
                        "t",
                        "2",
                        "tag;role;top-figure;colour",
                        "X1;elsewere;30;red",
                        ";elsewhere;30;",
                        "X2;elsewhere;many;blue",
                        ".")
                .type("", "q");
        walk(FULL, talk, path());
        assertThat(talk.screen())
                .contains("line 2, row X1, column role: \"elsewere\" is not one of the answers")
                .contains("Did you mean elsewhere?")
                .contains("line 3, column tag: the row has no tag")
                .contains("line 4, row X2, column top-figure")
                .contains("line 1, column colour: no question about a pressure gauge is called that");
        assertThat(facts(unit(path())))
                .containsKeys("gauge.top-figure X1 AS_FOUND", "gauge.role X2 AS_FOUND")
                .doesNotContainKeys("gauge.role X1 AS_FOUND", "gauge.top-figure X2 AS_FOUND");
        String kept = Files.readString(folder.resolve("visit.yaml.table.csv"));
        assertThat(kept).contains("X1;elsewere;30;red");
        Files.writeString(folder.resolve("visit.yaml.table.csv"), kept.replace("elsewere", "elsewhere"));
        walk(FULL, new TypedTalk().readsOn().type("t visit.yaml.table.csv", "2", "q"), path());
        assertThat(facts(unit(path()))).containsKey("gauge.role X1 AS_FOUND");
    }

    // ---- what goes wrong with the file

    @Test
    void a_full_disk_is_said_and_the_last_good_state_kept_until_there_is_room() {
        Path full = Path.of("/dev/full");
        assumeThat(full).exists();
        Path next = folder.resolve(".visit.yaml.next");
        TypedTalk talk = begun().type("none")
                .then(() -> link(next, full))
                .type("0 % 4 ppm 1 ppm 1 1")
                .then(() -> delete(next))
                .type("", "q");
        walk(FULL, talk, path());
        assertThat(talk.screen()).contains("THIS ANSWER IS NOT YET ON DISK: No space left on device");
        assertThat(unit(path()).answers()).hasSize(6);
        walk(FULL, new TypedTalk().then(() -> link(next, full)).type("none", "q"), path());
        assertThat(unit(path()).answers()).hasSize(6);
    }

    private static void link(Path from, Path to) {
        try {
            Files.createSymbolicLink(from, to);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void delete(Path file) {
        try {
            Files.delete(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void a_folder_that_may_not_be_written_to_is_said_and_the_file_left_as_it_is() throws Exception {
        walk(FULL, begun().type("none"), path());
        String before = Files.readString(path());
        Files.deleteIfExists(folder.resolve(".visit.yaml.lock"));
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("r-xr-xr-x"));
        try {
            List<String> command = new ArrayList<>();
            if (Files.isWritable(folder)) {
                // The root user may write everywhere, unless the process is started without that power.
                assumeThat(Path.of("/usr/bin/setpriv")).exists();
                command.addAll(List.of("/usr/bin/setpriv", "--bounding-set=-dac_override,-dac_read_search"));
            }
            command.addAll(List.of(
                    Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-cp",
                    System.getProperty("java.class.path"),
                    KilledWalk.class.getName(),
                    path().toString()));
            Process process =
                    new ProcessBuilder(command).redirectErrorStream(true).start();
            process.getOutputStream().close();
            String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(process.waitFor()).isZero();
            assertThat(said).contains("visit.yaml: cannot be written: access is denied");
            assertThat(Files.readString(path())).isEqualTo(before);
            try (Stream<Path> all = Files.list(folder)) {
                assertThat(all.map(file -> file.getFileName().toString()))
                        .containsExactlyInAnyOrder("visit.yaml", "visit.yaml.before");
            }
        } finally {
            Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
        }
    }

    @Test
    void a_file_cut_off_at_any_line_is_noticed_and_the_state_before_taken() throws IOException {
        walk(FULL, begun().type(Typist.lines(screens().subList(0, 30))), path());
        String whole = Files.readString(path());
        String before = Files.readString(folder.resolve("visit.yaml.before"));
        int noticed = 0;
        for (int end = whole.indexOf('\n'); end < whole.length() - 1; end = whole.indexOf('\n', end + 1)) {
            if (end % 7 == 0 || whole.indexOf('\n', end + 1) == whole.length() - 1) {
                Files.writeString(path(), whole.substring(0, end + 1));
                Files.writeString(folder.resolve("visit.yaml.before"), before);
                TypedTalk talk = new TypedTalk().type("9", "1", "q");
                assertThat(walk(FULL, talk, path())).isEmpty();
                assertThat(talk.screen()).contains("THE END OF visit.yaml IS MISSING");
                assertThat(Files.readString(path())).isEqualTo(before);
                noticed++;
            }
        }
        assertThat(noticed).isGreaterThan(5);
        assertThat(folder.resolve("visit.yaml.cut-off")).exists();
        assertThat(folder.resolve("visit.yaml.cut-off-2")).exists();
    }

    @Test
    void a_file_cut_off_inside_a_line_or_emptied_gives_the_choice_too_and_leaving_touches_nothing() throws IOException {
        walk(FULL, begun().type(Typist.lines(screens().subList(0, 12))), path());
        String whole = Files.readString(path());
        for (int end : new int[] {0, 17, whole.length() / 2, whole.length() - 4}) {
            Files.writeString(path(), whole.substring(0, end));
            TypedTalk talk = new TypedTalk().type("q");
            assertThat(walk(FULL, talk, path())).isEmpty();
            assertThat(talk.screen()).contains("THE END OF visit.yaml IS MISSING");
            assertThat(Files.readString(path())).isEqualTo(whole.substring(0, end));
        }
    }

    @Test
    void a_file_cut_off_that_came_alone_is_noticed_by_its_first_line_by_walk_and_by_assess() throws IOException {
        walk(FULL, begun().type(Typist.lines(screens().subList(0, 12))), path());
        String whole = Files.readString(path());
        assertThat(Ran.of("assess", path().toString()).code()).isZero();
        Files.delete(folder.resolve("visit.yaml.before"));
        int end = whole.lastIndexOf('\n', whole.length() * 2 / 3) + 1;
        Files.writeString(path(), whole.substring(0, end));
        for (String command : List.of("assess", "check", "report")) {
            Ran ran = Ran.of(command, path().toString());
            assertThat(ran.code()).as(command).isEqualTo(3);
            assertThat(ran.out() + ran.err()).contains("the end of this file is missing");
        }
        TypedTalk talk = new TypedTalk().type("1", "2", "q");
        assertThat(walk(FULL, talk, path())).isEmpty();
        assertThat(talk.screen())
                .contains("THE END OF visit.yaml IS MISSING", "There is no state before it here", "One of 2, q.");
        // What is left may be used by whoever says so.
        Files.writeString(path(), whole.substring(whole.indexOf('\n') + 1, end));
        assertThat(Ran.of("assess", path().toString()).code()).isZero();
    }

    @Test
    void a_file_written_by_hand_is_walked_without_a_question() throws IOException {
        Files.copy(Path.of("..", "docs", "examples", "half-answered.yaml"), path());
        TypedTalk talk = new TypedTalk().type("q");
        assertThat(walk(FULL, talk, path())).isEmpty();
        assertThat(talk.screen()).doesNotContain("IS MISSING");
    }

    // ---- the beginning

    @Test
    void the_first_lines_have_help_and_can_be_left_and_another_boiler_is_a_yes_or_a_no() {
        walk(FULL, new TypedTalk().type("?", "q"), path());
        assertThat(path()).doesNotExist();
        TypedTalk talk = new TypedTalk().type("chapel", "", "P. Example", "B1", "maybe", "yes", "B2", "no", "2", "q");
        walk(FULL, talk, path());
        assertThat(talk.screen()).contains("y for yes, n or Enter for no.");
        assertThat(Walked.read(path()).units()).hasSize(2);
    }

    // ---- whole walks

    @Test
    void a_sound_two_pipe_start_up_opens_its_gates_and_leaves_nothing_undetermined() {
        Checklist twoPipe = CHECKLISTS.checklist("two-pipe-start-up").orElseThrow();
        Observations mill = Walked.example("sound-mill.yaml").units().get(0).observations();
        List<Typist.Screen> screens = Typist.screensByNumber(twoPipe, mill);
        TypedTalk talk = begun().type(Typist.lines(screens)).type("");
        assertThat(walk(twoPipe, talk, path())).isEmpty();
        assertThat(talk.screen()).contains("Firing [").contains("has been put.");
        assertThat(talk.linesLeft()).isZero();
        assertThat(Walked.assess(path()).testFiring().permit()).isEqualTo(Permit.NOTHING_FOUND_AGAINST);
        assertThat(Walked.assess(path()).release().permit()).isEqualTo(Permit.NOTHING_FOUND_AGAINST);
        assertThat(Walked.assess(path()).count(Word.UNDETERMINED)).isZero();
        int questions =
                screens.stream().mapToInt(screen -> screen.gives().size()).sum();
        int keys = screens.stream().mapToInt(Typist.Screen::keys).sum();
        // Counted, not aimed at: a mill with its traps is more than the ordinary boiler of the ninety screens.
        assertThat(keys)
                .as("%d screens, %d questions, %d keys", screens.size(), questions, keys)
                .isLessThan(1800);
    }

    @Test
    void the_sound_examples_answer_every_question_that_is_asked() {
        for (String[] pair :
                new String[][] {{"one-pipe-start-up", "well-kept-church.yaml"}, {"two-pipe-start-up", "sound-mill.yaml"}
                }) {
            Checklist checklist = CHECKLISTS.checklist(pair[0]).orElseThrow();
            Interview interview = Interview.of(
                    checklist, Walked.example(pair[1]).units().get(0).observations());
            assertThat(interview.steps())
                    .as(pair[1])
                    .noneMatch(step ->
                            step.status() == Interview.Status.OPEN || step.status() == Interview.Status.WAITING);
        }
    }

    @Test
    void every_checklist_is_walked_to_its_end_with_made_up_answers_when_hot() {
        for (Checklist checklist : CHECKLISTS.all()) {
            // Until the boiler is hot as in a sound visit where that has an answer, as the firing stage closes again
            // over
            // what forbids firing.
            Observations sound = checklist.system().equals("one-pipe")
                    ? church()
                    : Walked.example("sound-mill.yaml").units().get(0).observations();
            Observations given = IntStream.range(0, 40)
                    .mapToObj(seed -> Walked.random(checklist, seed, sound, item -> item.stage() != Stage.HOT))
                    .filter(visit -> Walked.RULEBOOK
                                    .assess(visit, Walked.DAY)
                                    .testFiring()
                                    .permit()
                            == Permit.NOTHING_FOUND_AGAINST)
                    .findFirst()
                    .orElseThrow();
            Path path = folder.resolve(checklist.id() + ".yaml");
            TypedTalk talk = begun().readsOn().type(Typist.lines(Typist.screens(checklist, given)));
            assertThat(walk(checklist, talk, path)).isEmpty();
            assertThat(talk.screen()).as(checklist.id()).contains("has been put.");
            assertThat(talk.linesLeft()).isZero();
            assertThat(facts(unit(path))).isEqualTo(facts(given));
        }
    }

    @Test
    void with_made_up_answers_before_the_fire_the_firing_stage_opens_only_where_nothing_stands_against_it() {
        for (Checklist checklist : CHECKLISTS.all()) {
            Observations given = Walked.random(checklist, 5, church(), item -> false);
            Path path = folder.resolve(checklist.id() + ".yaml");
            TypedTalk talk = begun().readsOn().type(Typist.lines(Typist.screens(checklist, given)));
            assertThat(walk(checklist, talk, path)).isEmpty();
            boolean clear = Walked.assess(path).testFiring().permit() == Permit.NOTHING_FOUND_AGAINST;
            assertThat(talk.screen().contains("Firing [")).isEqualTo(clear);
            assertThat(facts(given).entrySet()).containsAll(facts(unit(path)).entrySet());
        }
    }

    @Test
    void two_boilers_are_walked_one_after_the_other_and_share_what_is_said_of_the_site() {
        List<Typist.Screen> first = screens();
        TypedTalk talk = new TypedTalk()
                .type("chapel", "", "P. Example", "B1", "y", "B2", "n", "1")
                .type(Typist.lines(first))
                .type("");
        walk(FULL, talk, path());
        Observations second = Walked.read(path()).units().get(1).observations();
        List<Typist.Screen> rest = Typist.screens(FULL, church(), second);
        assertThat(rest.size()).isLessThan(first.size());
        walk(FULL, new TypedTalk().type("2").type(Typist.lines(rest)).type(""), path());
        for (var unit : Walked.read(path()).units()) {
            assertThat(Walked.RULEBOOK
                            .assess(unit.observations(), Walked.DAY)
                            .release()
                            .permit())
                    .isEqualTo(Permit.NOTHING_FOUND_AGAINST);
        }
    }

    @Test
    void no_screen_is_higher_than_a_terminal() {
        TypedTalk talk = begun().type(Typist.lines(screens())).type("");
        walk(FULL, talk, path());
        List<String> high = new ArrayList<>();
        for (String screen : talk.screen().split("----\n")) {
            int end = screen.indexOf("\n> ");
            int rows = screen.substring(0, Math.max(end, 0))
                    .lines()
                    .mapToInt(line -> Math.max(1, AskScreen.rows(line)))
                    .sum();
            if (rows > 23) {
                high.add(rows + " rows:\n" + screen);
            }
        }
        assertThat(high).isEmpty();
    }
}
