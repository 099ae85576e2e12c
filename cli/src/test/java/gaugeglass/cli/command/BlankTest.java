package gaugeglass.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class BlankTest {
    @Test
    void a_blank_inspection_can_be_used_as_it_is_and_settles_nothing() {
        Ran blank = Ran.of("blank", "--site", "elm-hall", "--boiler", "North", "--date", "2026-10-01");

        assertThat(blank.code()).isZero();
        assertThat(Ran.withInput(blank.out(), "check", "-").out())
                .contains("can be used; visit of 2026-10-01 to elm-hall, 1 boiler, 0")
                .contains("answers");
        Ran judged = Ran.withInput(blank.out(), "assess", "-", "--as", "json", "--fail-at", "stop");
        assertThat(judged.code()).isEqualTo(1);
        assertThat(judged.out())
                .contains("\"boiler\" : \"North\"")
                .contains("\"inOrder\" : 0", "\"notApplicable\" : 0")
                .contains("\"release\" : \"not-known\"");
    }

    @Test
    void without_a_date_it_is_for_today() {
        assertThat(Ran.of("blank").out()).contains("date: 2026-09-14");
    }

    @Test
    void the_schemas_are_printed() {
        assertThat(Ran.of("schema", "checklists").out()).contains("https://json-schema.org/draft/2020-12/schema");
        assertThat(Ran.of("schema", "inspection").out()).contains("https://json-schema.org/draft/2020-12/schema");
        assertThat(Ran.of("schema", "assessment").out()).contains("https://json-schema.org/draft/2020-12/schema");
    }
}
