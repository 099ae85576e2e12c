package gaugeglass.cli.walk;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.checklists.Checklist;
import gaugeglass.checklists.Checklists;
import gaugeglass.checklists.Interview;
import gaugeglass.checklists.Interview.Step;
import gaugeglass.engine.Assessment;
import gaugeglass.engine.Assessment.Permit;
import gaugeglass.engine.Assessment.Word;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.InspectionReader;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.ItemType;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WalkTest {
    private static final LocalDate DAY = LocalDate.of(2026, 9, 14);
    private static final Rulebook RULEBOOK = Rulebook.load(WalkTest.class.getClassLoader());
    private static final Checklist FULL = Checklists.standard(RULEBOOK.vocabulary())
            .checklist("one-pipe-start-up")
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

    /** What somebody types who gives the answers of a visit: the lines of each answer, question by question. */
    private static List<List<String>> typing(Observations given) {
        return typing(FULL, given);
    }

    private static List<List<String>> typing(Checklist checklist, Observations given) {
        List<List<String>> answers = new ArrayList<>();
        Observations so = Observations.of(given.vocabulary(), given.unit()).build();
        Optional<Step> next = Interview.of(checklist, so).next();
        while (next.isPresent()) {
            Step step = next.get();
            List<String> lines = new ArrayList<>();
            Observations.Builder builder = so.toBuilder();
            if (step.question().isCount()) {
                String kind = step.question().kind();
                List<String> tags = given.roster(kind).tags(State.AS_FOUND);
                lines.add(String.valueOf(tags.size()));
                lines.addAll(tags);
                builder.fitted(kind, State.AS_FOUND, tags.size());
                tags.forEach(tag -> builder.tag(kind, tag));
            } else {
                ItemType item = step.question().item().orElseThrow();
                Optional<Answer> answer = given.answer(item, step.keys(), State.AS_FOUND);
                Optional<Record> fact = answer.flatMap(Answer::fact);
                if (fact.isPresent()) {
                    for (Object value : item.valuesOf(fact.get())) {
                        lines.add(value instanceof Enum<?> choice ? Words.of(choice) : String.valueOf(value));
                    }
                    builder.put(Answer.seen(item, step.keys(), State.AS_FOUND, fact.get()));
                } else {
                    String reason = answer.map(Answer::unread)
                            .filter(text -> !text.isEmpty())
                            .orElse("not for this one");
                    lines.add(".u " + reason);
                    builder.put(Answer.unread(item, step.keys(), State.AS_FOUND, reason));
                }
            }
            answers.add(lines);
            so = builder.build();
            next = Interview.of(checklist, so).next();
        }
        return answers;
    }

    private static String[] lines(List<List<String>> answers) {
        return answers.stream().flatMap(List::stream).toArray(String[]::new);
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
        List<List<String>> typing =
                typing(example("well-kept-church.yaml").units().get(0).observations());
        TypedTalk talk = new TypedTalk()
                .type("chapel", "The chapel", "P. Example", "B1", "")
                .type(lines(typing))
                .type("");
        Path path = folder.resolve("visit.yaml");
        assertThat(walk(talk, path)).as(talk.screen()).isEqualTo(Walking.Outcome.FINISHED);
        Assessment assessment = assess(read(path));
        assertThat(assessment.testFiring().permit()).isEqualTo(Permit.NOTHING_FOUND_AGAINST);
        assertThat(assessment.release().permit()).isEqualTo(Permit.NOTHING_FOUND_AGAINST);
        assertThat(assessment.count(Word.UNDETERMINED)).isZero();
        assertThat(talk.linesLeft()).isZero();
        // A visit to a boiler with two cutoffs, two gauges, two controls and a safety valve.
        assertThat(typing.size()).as("questions put").isLessThan(260);
    }

    @Test
    void a_sound_re_visit_is_shorter_and_clears_both_gates_too() throws IOException {
        Checklist shorter = Checklists.standard(RULEBOOK.vocabulary())
                .checklist("one-pipe-re-visit")
                .orElseThrow();
        Observations church = example("well-kept-church.yaml").units().get(0).observations();
        List<List<String>> typing = typing(shorter, church);
        assertThat(typing.size()).isLessThan(typing(church).size());
        Path path = folder.resolve("visit.yaml");
        walk(
                shorter,
                new TypedTalk()
                        .type("chapel", "", "P. Example", "B1", "")
                        .type(lines(typing))
                        .type(""),
                path);
        assertThat(assess(read(path)).testFiring().permit()).isEqualTo(Permit.NOTHING_FOUND_AGAINST);
        assertThat(assess(read(path)).release().permit()).isEqualTo(Permit.NOTHING_FOUND_AGAINST);
    }

    @Test
    void what_was_put_right_keeps_both_states_and_opens_the_firing_stage() throws IOException {
        List<List<String>> typing =
                typing(example("well-kept-church.yaml").units().get(0).observations());
        int jumper = typing.indexOf(List.of("in-circuit"));
        List<List<String>> with = new ArrayList<>(typing.subList(0, jumper));
        with.add(List.of("jumpered", ""));
        // The next question is answered by an order: the finding is put right, its question asked again as it is left.
        with.add(List.of("l", "1", "in-circuit"));
        with.addAll(typing.subList(jumper + 1, typing.size()));
        Path path = folder.resolve("visit.yaml");
        TypedTalk talk = new TypedTalk()
                .type("chapel", "", "P. Example", "B1", "")
                .type(lines(with))
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
                .type("chapel", "", "P. Example", "B1", "")
                .type("smelled", "", "d", "1", "it is paint", "q");
        Path path = folder.resolve("visit.yaml");
        walk(talk, path);
        assertThat(read(path).units().get(0).observations().disputes())
                .singleElement()
                .satisfies(dispute -> assertThat(dispute.because()).isEqualTo("it is paint"));
        assertThat(assess(read(path)).testFiring().permit()).isEqualTo(Permit.FORBIDDEN);
    }

    @Test
    void notes_pictures_reasons_and_skips_are_kept_and_back_asks_again() throws IOException {
        TypedTalk talk = new TypedTalk()
                .type("chapel", "", "P. Example", "B1", "")
                .type("none", "n at the door", "p door.jpg", "u no meter here", "b", "0 %", "s", "q");
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
        Inspection church = example("well-kept-church.yaml");
        List<List<String>> typing = typing(church.units().get(0).observations());
        Path path = folder.resolve("visit.yaml");
        List<String> complaints = new ArrayList<>();
        TypedTalk talk = new TypedTalk().type("P. Example").type(lines(typing)).type("");
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

    @Test
    void opening_a_file_and_leaving_it_keeps_the_state_before() throws IOException {
        Path path = folder.resolve("visit.yaml");
        walk(new TypedTalk().type("chapel", "", "P. Example", "B1", "").type("none", "0 %"), path);
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
        walk(new TypedTalk().type("chapel", "", "P. Example", "B1", "").type("none"), path);
        List<String> complaints = new ArrayList<>();
        new Walking(RULEBOOK, DAY.minusYears(3), () -> "01:00")
                .walk(new TypedTalk().type("0 %"), path, Optional.empty(), Optional.empty(), complaints::add);
        assertThat(complaints).isEmpty();
        assertThat(read(path).date()).isEqualTo(DAY);
        assertThat(read(path).site()).hasSize(2);
    }

    @Test
    void a_walk_cut_off_anywhere_loses_no_answer_and_goes_on_where_it_was() throws IOException {
        List<List<String>> typing =
                typing(example("well-kept-church.yaml").units().get(0).observations());
        Random random = new Random(7);
        Path path = folder.resolve("visit.yaml");
        TypedTalk begun = new TypedTalk().type("chapel", "", "P. Example", "B1", "");
        walk(begun, path);
        int done = 0;
        while (done < typing.size()) {
            int now = Math.min(typing.size() - done, random.nextInt(9));
            List<String> lines = new ArrayList<>(List.of(lines(typing.subList(done, done + now))));
            if (done + now < typing.size()) {
                // The next answer is begun, and cut off before its last line.
                List<String> begunAnswer = typing.get(done + now);
                lines.addAll(begunAnswer.subList(0, random.nextInt(begunAnswer.size())));
            }
            walk(new TypedTalk().type(lines.toArray(new String[0])), path);
            done += now;
            assertThat(answered(read(path))).as("answers after %d", done).isEqualTo(answers(typing, done));
        }
        walk(new TypedTalk().type(""), path);
        assertThat(assess(read(path)).release().permit()).isEqualTo(Permit.NOTHING_FOUND_AGAINST);
    }

    private static int answered(Inspection inspection) {
        Observations observations = inspection.units().get(0).observations();
        int counted = 0;
        for (String kind : List.of("cutoff", "gauge", "control", "safety-valve")) {
            counted += observations.roster(kind).asFound().isPresent() ? 1 : 0;
        }
        return observations.answers().size() + counted;
    }

    private static int answers(List<List<String>> typing, int done) {
        return typing.subList(0, done).size();
    }

    @Test
    void a_stop_interrupts_with_its_caution_and_the_firing_stage_stays_closed() throws IOException {
        List<List<String>> typing =
                typing(example("well-kept-church.yaml").units().get(0).observations());
        typing.set(typing.indexOf(List.of("in-circuit")), List.of("jumpered", ""));
        TypedTalk talk = new TypedTalk()
                .type("chapel", "", "P. Example", "B1", "")
                .type(lines(typing))
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
