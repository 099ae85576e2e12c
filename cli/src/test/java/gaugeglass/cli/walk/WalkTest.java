package gaugeglass.cli.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import gaugeglass.checklists.Checklist;
import gaugeglass.checklists.Checklists;
import gaugeglass.engine.Assessment;
import gaugeglass.engine.Assessment.Permit;
import gaugeglass.engine.Assessment.Word;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.InspectionReader;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.vocabulary.Decision;
import gaugeglass.engine.vocabulary.Earlier;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Kind;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WalkTest {
    private static final LocalDate DAY = LocalDate.of(2026, 9, 14);
    private static final Rulebook RULEBOOK = Rulebook.load(WalkTest.class.getClassLoader());
    private static final Checklist FULL = Checklists.standard(RULEBOOK.vocabulary())
            .checklist("one-pipe-start-up")
            .orElseThrow();

    private static final Checklist RE_VISIT = Checklists.standard(RULEBOOK.vocabulary())
            .checklist("one-pipe-re-visit")
            .orElseThrow();

    @TempDir
    Path folder;

    private static Inspection example(String name) {
        try {
            Path path = Path.of("..", "docs", "examples", name);
            return new InspectionReader(RULEBOOK.vocabulary()).read(name, Files.readString(path));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Observations church() {
        return example("well-kept-church.yaml").units().get(0).observations();
    }

    private Walking.Outcome walk(TypedTalk talk, Path path) {
        return walk(FULL, talk, path);
    }

    private Walking.Outcome walk(Checklist checklist, TypedTalk talk, Path path) {
        List<String> complaints = new ArrayList<>();
        Walking.Outcome outcome = new Walking(RULEBOOK, DAY, () -> "09:00")
                .walk(talk, path, Optional.empty(), Optional.of(checklist.id()), complaints::add);
        assertThat(complaints).isEmpty();
        return outcome;
    }

    private Inspection read(Path path) throws IOException {
        return new InspectionReader(RULEBOOK.vocabulary()).read("visit.yaml", Files.readString(path));
    }

    private static Assessment assess(Inspection inspection) {
        return RULEBOOK.assess(inspection.units().get(0).observations(), inspection.date());
    }

    @Test
    void a_sound_start_up_is_walked_to_its_end_with_both_gates_clear() throws IOException {
        List<Typist.Screen> screens = Typist.screens(FULL, church());
        TypedTalk talk = new TypedTalk()
                .type("chapel", "The chapel", "P. Example", "B1", "n")
                .type(Typist.lines(screens))
                .type("");
        Path path = folder.resolve("visit.yaml");
        assertThat(walk(talk, path)).as(talk.screen()).isEqualTo(Walking.Outcome.FINISHED);
        Assessment assessment = assess(read(path));
        assertThat(assessment.testFiring().permit()).isEqualTo(Permit.NOTHING_FOUND_AGAINST);
        assertThat(assessment.release().permit()).isEqualTo(Permit.NOTHING_FOUND_AGAINST);
        assertThat(assessment.count(Word.UNDETERMINED)).isZero();
        assertThat(talk.linesLeft()).isZero();
    }

    @Test
    void a_start_up_of_an_ordinary_boiler_takes_no_more_than_ninety_screens() {
        // Two cutoffs, two gauges, two controls and a safety valve; the bar of ninety is the project's own.
        List<Typist.Screen> full = Typist.screensByNumber(FULL, church());
        List<Typist.Screen> shorter = Typist.screensByNumber(RE_VISIT, church());
        int questions = full.stream().mapToInt(screen -> screen.gives().size()).sum();
        int keys = full.stream().mapToInt(Typist.Screen::keys).sum();
        String counted = full.size() + " screens, " + questions + " questions, " + keys + " keys; re-visit "
                + shorter.size() + " screens";
        assertThat(full.size()).as(counted).isLessThanOrEqualTo(90);
        assertThat(shorter.size()).as(counted).isLessThan(full.size());
    }

    @Test
    void a_sound_re_visit_is_shorter_and_clears_both_gates_too() throws IOException {
        List<Typist.Screen> screens = Typist.screens(RE_VISIT, church());
        Path path = folder.resolve("visit.yaml");
        walk(
                RE_VISIT,
                new TypedTalk()
                        .type("chapel", "", "P. Example", "B1", "n")
                        .type(Typist.lines(screens))
                        .type(""),
                path);
        assertThat(assess(read(path)).testFiring().permit()).isEqualTo(Permit.NOTHING_FOUND_AGAINST);
        assertThat(assess(read(path)).release().permit()).isEqualTo(Permit.NOTHING_FOUND_AGAINST);
    }

    @Test
    void what_was_put_right_keeps_both_states_and_opens_the_firing_stage() throws IOException {
        List<Typist.Screen> screens = Typist.screens(FULL, Walked.with(church(), "cutoff.wiring", "jumpered"));
        int jumper = Walked.indexOf(screens, "cutoff.wiring") + 1;
        Path path = folder.resolve("visit.yaml");
        TypedTalk talk = new TypedTalk()
                .type("chapel", "", "P. Example", "B1", "n")
                .type(Typist.lines(screens.subList(0, jumper)))
                .type("")
                // At the next screen the finding is put right: its questions are asked again, of which one has changed.
                .type("l", "1", "in-circuit", "")
                .type(Typist.lines(screens.subList(jumper, screens.size())))
                .type("");
        walk(talk, path);
        Assessment assessment = assess(read(path));
        assertThat(assessment.findings()).as(talk.screen()).anySatisfy(finding -> {
            assertThat(finding.rule()).isEqualTo("cutoff.bypassed");
            assertThat(finding.state()).isEqualTo(Assessment.Standing.PUT_RIGHT);
        });
        assertThat(assessment.testFiring().permit()).isEqualTo(Permit.NOTHING_FOUND_AGAINST);
    }

    @Test
    void a_dispute_is_kept_with_its_reason_and_forbids_as_before() throws IOException {
        TypedTalk talk = new TypedTalk()
                .type("chapel", "", "P. Example", "B1", "n")
                .type("smelled", "", "d", "1", "it is paint", "q");
        Path path = folder.resolve("visit.yaml");
        walk(talk, path);
        assertThat(read(path).units().get(0).observations().disputes())
                .singleElement()
                .satisfies(dispute -> assertThat(dispute.because()).isEqualTo("it is paint"));
        assertThat(assess(read(path)).testFiring().permit()).isEqualTo(Permit.FORBIDDEN);
    }

    @Test
    void gas_smelled_found_and_mended_keeps_both_states_and_opens_the_firing_stage() throws IOException {
        List<Typist.Screen> screens = Typist.screens(FULL, Walked.with(church(), "site.gas-smell", "smelled"));
        int smelled = Walked.indexOf(screens, "site.gas-smell") + 1;
        int leak = Walked.indexOf(screens, "site.gas-leak") + 1;
        Path path = folder.resolve("visit.yaml");
        TypedTalk talk = new TypedTalk()
                .type("chapel", "", "P. Example", "B1", "n")
                .type(Typist.lines(screens.subList(0, smelled)))
                .type("")
                .type(Typist.lines(screens.subList(smelled, leak)))
                // The union is mended; what the finding rests on is asked again: smell, meter, joints.
                .type("l", "1", "none", "0 %", "none-found")
                .type(Typist.lines(screens.subList(leak, screens.size())))
                .type("");
        walk(talk, path);
        assertThat(talk.screen())
                .contains("*** DO NOT FIRE ***")
                .contains("It is put right; what was found stays on record.");
        assertThat(talk.linesLeft()).isZero();
        assertThat(Files.readString(path))
                .containsPattern("(?s)site:.*as-left: \\{?\\s*at: \"09:00\",?\\s+gas-smell: none.*\nvisit:");
        Assessment assessment = assess(read(path));
        assertThat(assessment.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.rule()).isEqualTo("site.gas-odour");
            assertThat(finding.state()).isEqualTo(Assessment.Standing.PUT_RIGHT);
            assertThat(finding.retest()).hasSize(1);
        });
        assertThat(assessment.testFiring().permit()).isEqualTo(Permit.NOTHING_FOUND_AGAINST);
        assertThat(assessment.release().permit()).isEqualTo(Permit.NOTHING_FOUND_AGAINST);
    }

    @Test
    void what_is_put_right_too_soon_says_what_is_still_to_be_answered_and_shows_both_states() throws IOException {
        TypedTalk talk = new TypedTalk()
                .type("chapel", "", "P. Example", "B1", "n")
                .type("smelled", "", "l", "1", "none", "b", "", "0 % 4 ppm 1 ppm 1 1", "q");
        Path path = folder.resolve("visit.yaml");
        walk(talk, path);
        assertThat(talk.screen())
                .contains("It stands until this is answered too, as it is now: ")
                .contains("What does the combustible-gas meter show")
                .contains("Answered: smelled")
                .contains("As left: none");
        assertThat(assess(read(path)).testFiring().permit()).isEqualTo(Permit.FORBIDDEN);
    }

    @Test
    void a_stop_of_the_site_looked_at_again_and_still_there_stands() throws IOException {
        TypedTalk talk = new TypedTalk()
                .type("chapel", "", "P. Example", "B1", "n")
                .type("smelled", "", "l", "1", "smelled", "q");
        Path path = folder.resolve("visit.yaml");
        walk(talk, path);
        assertThat(talk.screen()).contains("It still stands.");
        assertThat(assess(read(path)).testFiring().permit()).isEqualTo(Permit.FORBIDDEN);
    }

    @Test
    void notes_pictures_reasons_and_skips_are_kept_and_back_asks_again() throws IOException {
        TypedTalk talk = new TypedTalk()
                .type("chapel", "", "P. Example", "B1", "n")
                .type("none", "b", "n at the door", "p door.jpg", "")
                .type("u1 no meter here", "1=0 %", "s", "q");
        Path path = folder.resolve("visit.yaml");
        walk(talk, path);
        assertThat(read(path).site()).anySatisfy(answer -> {
            assertThat(answer.item().id()).isEqualTo("site.gas-smell");
            assertThat(answer.note()).isEqualTo("at the door");
            assertThat(answer.photos()).containsExactly("door.jpg");
        });
        assertThat(read(path).site()).anySatisfy(answer -> {
            assertThat(answer.item().id()).isEqualTo("site.gas-meter");
            assertThat(answer.fact()).isPresent();
        });
        assertThat(read(path).site()).hasSize(2);
    }

    @Test
    void of_last_visit_identity_and_dates_are_shown_and_never_a_reading() throws IOException {
        Path path = folder.resolve("visit.yaml");
        List<String> complaints = new ArrayList<>();
        TypedTalk talk = new TypedTalk()
                .type("P. Example")
                .type(Typist.lines(Typist.screens(FULL, church(), leftNothing())))
                .type("");
        new Walking(RULEBOOK, DAY, () -> "09:00")
                .walk(
                        talk,
                        path,
                        Optional.of(Path.of("..", "docs", "examples", "well-kept-church.yaml")),
                        Optional.of(FULL.id()),
                        complaints::add);
        assertThat(complaints).isEmpty();
        int remembered = 0;
        String[] screens = talk.screen().split("----\n");
        for (String screen : screens) {
            for (ItemType item : RULEBOOK.vocabulary().items()) {
                if (screen.contains("\n" + item.ask() + "\n") && screen.contains("Last visit: ")) {
                    assertThat(item.isCarried()).as(screen).isTrue();
                    remembered++;
                }
            }
        }
        assertThat(remembered).isPositive();
    }

    private static Observations leftNothing() {
        return Observations.of(RULEBOOK.vocabulary(), "B1").earlier(List.of()).build();
    }

    @Test
    void what_last_visit_found_is_carried_with_what_was_put_right_and_what_the_owner_decided() throws IOException {
        Path last = folder.resolve("last.yaml");
        String jumper = Files.readString(Path.of("..", "docs", "examples", "jumper-removed.yaml"))
                .replace("device-dates: all-recorded", "device-dates: some-not-recorded");
        Files.writeString(
                last,
                jumper.replace(
                        "boilers:\n",
                        "decisions:\n  - {rule: site.device-dates-unknown, boiler: B1, decision: deferred, decided-by: The"
                                + " owner, decided-on: 2026-09-20}\nboilers:\n"));
        Path path = folder.resolve("visit.yaml");
        new Walking(RULEBOOK, DAY.plusYears(1), () -> "09:00")
                .walk(
                        new TypedTalk().type("P. Example", "none", "q"),
                        path,
                        Optional.of(last),
                        Optional.of(FULL.id()),
                        words -> {});
        List<Earlier> earlier = read(path).earlier();
        assertThat(earlier)
                .filteredOn(one -> one.rule().equals("cutoff.bypassed"))
                .extracting(Earlier::decision, Earlier::decidedBy)
                .containsExactly(tuple(Decision.DONE, "P. Example"));
        assertThat(earlier)
                .filteredOn(one -> one.rule().equals("site.device-dates-unknown"))
                .extracting(Earlier::decision, Earlier::decidedBy, Earlier::decidedOn)
                .containsExactly(tuple(Decision.DEFERRED, "The owner", "2026-09-20"));
        assertThat(read(path).units().get(0).observations().earlier()).contains(earlier);
    }

    @Test
    void opening_a_file_and_leaving_it_keeps_the_state_before() throws IOException {
        Path path = folder.resolve("visit.yaml");
        walk(new TypedTalk().type("chapel", "", "P. Example", "B1", "n").type("none", "0 %"), path);
        String now = Files.readString(path);
        String before = Files.readString(folder.resolve("visit.yaml.before"));
        assertThat(before).isNotEqualTo(now);
        walk(new TypedTalk().type("q"), path);
        assertThat(Files.readString(path)).isEqualTo(now);
        assertThat(Files.readString(folder.resolve("visit.yaml.before"))).isEqualTo(before);
    }

    @Test
    void a_clock_set_back_loses_nothing() throws IOException {
        Path path = folder.resolve("visit.yaml");
        walk(new TypedTalk().type("chapel", "", "P. Example", "B1", "n").type("none"), path);
        List<String> complaints = new ArrayList<>();
        new Walking(RULEBOOK, DAY.minusYears(3), () -> "01:00")
                .walk(new TypedTalk().type("0 %"), path, Optional.empty(), Optional.empty(), complaints::add);
        assertThat(complaints).isEmpty();
        assertThat(read(path).date()).isEqualTo(DAY);
        assertThat(read(path).site()).hasSize(2);
    }

    @Test
    void a_walk_cut_off_anywhere_loses_no_answer_and_goes_on_where_it_was() throws IOException {
        List<Typist.Screen> screens = Typist.screens(FULL, church());
        Random random = new Random(7);
        Path path = folder.resolve("visit.yaml");
        walk(new TypedTalk().type("chapel", "", "P. Example", "B1", "n"), path);
        int done = 0;
        while (done < screens.size()) {
            int now = Math.min(screens.size() - done, random.nextInt(9));
            List<String> lines = new ArrayList<>(List.of(Typist.lines(screens.subList(done, done + now))));
            walk(new TypedTalk().type(lines.toArray(new String[0])), path);
            done += now;
            if (done > 0) {
                assertThat(facts(read(path).units().get(0).observations()))
                        .as("after %d screens", done)
                        .isEqualTo(facts(screens.get(done - 1).after()));
            }
            if (done < screens.size() && screens.get(done).lines().size() > 1) {
                // A screen of several lines is begun and cut off after one: what was taken of it is there.
                TypedTalk begun = new TypedTalk().type(screens.get(done).lines().get(0));
                walk(begun, path);
                List<Typist.Screen> rest =
                        Typist.screens(FULL, church(), read(path).units().get(0).observations());
                screens = Stream.concat(screens.subList(0, done).stream(), rest.stream())
                        .toList();
            }
        }
        walk(new TypedTalk().type(""), path);
        assertThat(assess(read(path)).release().permit()).isEqualTo(Permit.NOTHING_FOUND_AGAINST);
    }

    /** What was answered, without when and how. */
    private static Map<String, String> facts(Observations observations) {
        Map<String, String> facts = new TreeMap<>();
        observations
                .answers()
                .forEach(answer -> facts.put(
                        answer.item().id() + " " + answer.subject() + " " + answer.state(),
                        answer.fact().map(String::valueOf).orElse("unread: " + answer.unread())));
        for (Kind kind : RULEBOOK.vocabulary().kinds()) {
            if (kind.isCounted()) {
                facts.put(kind.id(), String.valueOf(observations.roster(kind.id())));
            }
        }
        return facts;
    }

    @Test
    void a_stop_interrupts_with_its_caution_and_the_firing_stage_stays_closed() throws IOException {
        List<Typist.Screen> screens = Typist.screens(FULL, Walked.with(church(), "cutoff.wiring", "jumpered"));
        int jumper = Walked.indexOf(screens, "cutoff.wiring") + 1;
        TypedTalk talk = new TypedTalk()
                .type("chapel", "", "P. Example", "B1", "n")
                .type(Typist.lines(screens.subList(0, jumper)))
                .type("")
                .type(Typist.lines(screens.subList(jumper, screens.size())))
                .type("q", "q", "q");
        Path path = folder.resolve("visit.yaml");
        walk(talk, path);
        assertThat(talk.screen())
                .contains("*** DO NOT FIRE ***")
                .contains("THE FIRING STAGE IS CLOSED")
                .doesNotContain("Firing [")
                .contains("! Live terminals");
        assertThat(assess(read(path)).testFiring().permit()).isEqualTo(Permit.FORBIDDEN);
    }
}
