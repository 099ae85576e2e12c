package gaugeglass.engine.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gaugeglass.engine.build.RulebookBuild;
import gaugeglass.engine.history.Change.Fate;
import gaugeglass.engine.text.Mistakes;
import gaugeglass.engine.toy.Workshop;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Two releases of the toy rulebook, and what is told of the way from one to the other. */
class HistoryTest {
    private static final Release BEFORE = Workshop.built().release();

    private static Release built(String file, String text, String instead) {
        Map<String, String> texts = new TreeMap<>(Workshop.texts());
        assertThat(texts.getOrDefault(file, text)).contains(text);
        texts.merge(file, instead, (old, now) -> old.replace(text, now));
        return RulebookBuild.build("toy", "1.1.0", "gaugeglass.engine.toy.later", new Workshop(), texts)
                .release();
    }

    @Test
    void a_record_is_read_back_as_it_was_written() {
        assertThat(Release.read("1.yaml", BEFORE.write())).isEqualTo(BEFORE);
        assertThat(BEFORE.said().get(Sort.LIMIT)).containsKey("frame.life");
        assertThat(BEFORE.said().get(Sort.CHECK)).containsKey("frame.cracked");
        assertThat(BEFORE.said().get(Sort.ITEM)).hasSizeGreaterThan(10);
    }

    @Test
    void the_same_rulebook_has_no_changes() {
        assertThat(BEFORE.changesTo(BEFORE)).isEmpty();
    }

    @Test
    void a_moved_limit_is_told_with_both_values_and_nothing_else_is() {
        Release later = built("limits.yaml", "value: 12 years", "value: 11 years");

        assertThat(BEFORE.changesTo(later))
                .containsExactly(
                        new Change(Sort.LIMIT, "frame.life", Fate.CHANGED, "value \"12 years\", now \"11 years\""));
    }

    @Test
    void another_meaning_of_a_limit_is_told_though_its_value_is_the_same() {
        Release later = built("limits.yaml", "how long an aluminium frame serves", "how long a frame serves");

        assertThat(BEFORE.changesTo(later)).singleElement().satisfies(change -> assertThat(change.told())
                .contains("meaning", "aluminium"));
    }

    @Test
    void other_conditions_of_a_check_are_told_though_its_words_are_the_same() {
        Release later = built("frame.drl", "> $", ">= $");

        assertThat(BEFORE.changesTo(later)).isNotEmpty().allSatisfy(change -> {
            assertThat(change.sort()).isEqualTo(Sort.CHECK);
            assertThat(change.told()).isEqualTo("its conditions are others");
        });
    }

    @Test
    void a_new_limit_is_new_and_seen_from_the_later_release_the_other_is_gone() {
        Map<Sort, Map<String, Map<String, String>>> fewer = new TreeMap<>(BEFORE.said());
        Map<String, Map<String, String>> limits = new TreeMap<>(fewer.get(Sort.LIMIT));
        limits.remove("frame.life");
        fewer.put(Sort.LIMIT, limits);
        Release without = new Release("toy", "0.9.0", "", fewer, List.of());

        assertThat(without.changesTo(BEFORE)).singleElement().satisfies(change -> assertThat(change.fate())
                .isEqualTo(Fate.NEW));
        assertThat(BEFORE.changesTo(without))
                .containsExactly(new Change(Sort.LIMIT, "frame.life", Fate.GONE, "it is no more"));
        assertThat(BEFORE.vanishedIn(without)).containsExactly("limit frame.life");
    }

    @Test
    void a_retired_id_is_told_with_what_stands_in_its_place_and_has_not_vanished() {
        Retired retired = new Retired(Sort.LIMIT, "frame.years", "1.1.0", List.of("frame.life"), "It was named anew.");
        Map<Sort, Map<String, Map<String, String>>> more = new TreeMap<>(BEFORE.said());
        Map<String, Map<String, String>> limits = new TreeMap<>(more.get(Sort.LIMIT));
        limits.put("frame.years", Map.of("value", "12 years"));
        more.put(Sort.LIMIT, limits);
        Release old = new Release("toy", "0.9.0", "", more, List.of());
        Release later = new Release("toy", "1.1.0", "", BEFORE.said(), List.of(retired));

        assertThat(old.vanishedIn(BEFORE)).containsExactly("limit frame.years");
        assertThat(old.vanishedIn(later)).isEmpty();
        assertThat(old.changesTo(later))
                .singleElement()
                .satisfies(
                        change -> assertThat(change.line())
                                .isEqualTo(
                                        "limit frame.years: retired with version 1.1.0; instead of it: frame.life. It was named anew."));
    }

    @Test
    void a_table_of_retired_ids_is_part_of_the_record() {
        Release later = built(
                "retired.yaml",
                "",
                "retired:\n  - {sort: check, id: frame.bent, since: 1.1.0, instead: [frame.cracked], why: One check.}\n");

        assertThat(later.retired(Sort.CHECK, "frame.bent")).isPresent();
        assertThat(Release.read("1.1.0.yaml", later.write())).isEqualTo(later);
    }

    @Test
    void an_id_that_is_still_there_cannot_be_retired_and_what_replaces_it_must_be_known() {
        assertThatThrownBy(
                        () -> built(
                                "retired.yaml",
                                "",
                                "retired:\n  - {sort: check, id: frame.cracked, since: 1.1.0, instead: [frame.bent], why: Why not.}\n"))
                .isInstanceOf(Mistakes.class)
                .hasMessageContaining("there is a check of this id all the same")
                .hasMessageContaining("\"frame.bent\", which is to stand in its place, is no check");
    }

    @Test
    void versions_are_ordered_by_number_and_one_in_work_stands_before_its_release() {
        assertThat(Versions.compare("0.10.0", "0.9.0")).isPositive();
        assertThat(Versions.compare("1.0.0-SNAPSHOT", "1.0.0")).isNegative();
        assertThat(Versions.compare("1.0.0-SNAPSHOT", "0.9.9")).isPositive();
        assertThat(Versions.isReleased("1.0.0-SNAPSHOT")).isFalse();
        assertThat(Versions.isVersion("../1.0.0")).isFalse();
    }

    @Test
    void a_version_that_is_none_is_looked_for_nowhere() {
        History history = History.of(name -> {
            throw new AssertionError(name);
        });

        assertThat(history.release("../../secret")).isEmpty();
        assertThat(history.release("1.0.0-SNAPSHOT")).isEmpty();
    }

    @Test
    void a_release_is_found_by_its_version() {
        History history =
                History.of(name -> name.equals("1.0.0.yaml") ? Optional.of(BEFORE.write()) : Optional.empty());

        assertThat(history.release("1.0.0")).contains(BEFORE);
        assertThat(history.release("1.0.1")).isEmpty();
    }
}
