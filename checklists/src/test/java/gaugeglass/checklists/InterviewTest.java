package gaugeglass.checklists;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.checklists.Interview.Status;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.InspectionReader;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.vocabulary.Kind;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What an earlier answer closes, where what it closes is a count. */
class InterviewTest {
    private static final Rulebook RULEBOOK = Rulebook.load(InterviewTest.class.getClassLoader());
    private static final Checklist FULL = Checklists.standard(RULEBOOK.vocabulary())
            .checklist("two-pipe-start-up")
            .orElseThrow();

    private static Observations boiler(String system) {
        return new InspectionReader(RULEBOOK.vocabulary())
                .read("visit", """
                        format: 1
                        site: {id: hall}
                        visit: {date: 2026-09-14}
                        boilers:
                          - id: B1
                            system: {%s}
                            trap-survey: {record: on-record}
                            traps:
                              fitted: 1
                              each:
                                - {tag: T1, kind: thermostatic, heard: {unread: too loud}}
                        """.formatted(system))
                .units()
                .get(0)
                .observations();
    }

    private static Interview interview(String system) {
        return Interview.of(FULL, boiler(system));
    }

    @Test
    void what_hangs_on_a_count_that_is_not_asked_is_closed_and_not_waiting() {
        Interview onePipe = interview("kind: one-pipe");
        assertThat(onePipe.status("trap.fitted", List.of())).isEqualTo(Status.CLOSED);
        assertThat(onePipe.status("trap-survey.record", List.of())).isEqualTo(Status.CLOSED);
        assertThat(onePipe.status("trap-survey.done", List.of())).isEqualTo(Status.CLOSED);
        assertThat(onePipe.status("trap.kind", List.of("T1"))).isEqualTo(Status.CLOSED);
        assertThat(onePipe.status("trap.heard", List.of("T1"))).isEqualTo(Status.CLOSED);
    }

    @Test
    void what_was_answered_of_it_and_the_count_itself_are_set_aside_listed_and_not_judged() {
        Interview onePipe = interview("kind: one-pipe");
        assertThat(onePipe.setAside().stream().map(Answer::item).map(item -> item.id()))
                .containsExactly("trap-survey.record", "trap.kind", "trap.heard");
        assertThat(onePipe.countsSetAside()).extracting(Kind::id).containsExactly("trap");
        Observations judged = onePipe.judged();
        assertThat(judged.answers())
                .singleElement()
                .satisfies(answer -> assertThat(answer.item().id()).isEqualTo("system.kind"));
        assertThat(judged.roster("trap").tags()).isEmpty();
        assertThat(RULEBOOK.assess(judged, Answering.DAY).outcomes())
                .noneMatch(outcome -> outcome.subject().startsWith("T1"));
    }

    @Test
    void nothing_of_it_is_set_aside_while_the_answer_that_decides_is_open_and_where_it_opens_the_count() {
        Interview open = interview("return-height: 30 in");
        assertThat(open.status("trap.fitted", List.of())).isEqualTo(Status.WAITING);
        assertThat(open.status("trap-survey.record", List.of())).isEqualTo(Status.WAITING);
        assertThat(open.status("trap.kind", List.of("T1"))).isEqualTo(Status.WAITING);
        Interview twoPipe = interview("kind: two-pipe-traps");
        assertThat(twoPipe.status("trap.kind", List.of("T1"))).isEqualTo(Status.ANSWERED);
        for (Interview one : List.of(open, twoPipe)) {
            assertThat(one.setAside()).isEmpty();
            assertThat(one.countsSetAside()).isEmpty();
            assertThat(one.judged().roster("trap").tags()).hasSize(1);
        }
    }
}
