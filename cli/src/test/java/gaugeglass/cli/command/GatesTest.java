package gaugeglass.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What little is known never opens a gate. */
class GatesTest {
    private static final String NOTHING = "format: 1\nsite: {id: elm-hall}\nvisit: {date: 2026-09-14}\n";

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "boilers: []\n",
                "boilers: [{id: B1}]\n",
                "boilers: [{id: B1, cutoffs: {fitted: }}]\n",
                "boilers: [{id: B1, cutoffs: {fitted: 1}}]\n",
                "boilers: [{id: B1, cutoffs: {fitted: {unread: behind the jacket}}}]\n",
                "boilers: [{id: B1}, {id: B2}]\n"
            })
    void an_inspection_with_next_to_nothing_in_it_opens_no_gate_and_fails(String boilers) {
        for (String urgency : List.of("stop", "now", "season", "plan", "watch")) {
            Ran ran = Ran.withInput(NOTHING + boilers, "assess", "-", "--as", "json", "--fail-at", urgency);

            assertThat(ran.code()).isEqualTo(1);
            assertThat(ran.out())
                    .contains("\"testFiring\" : \"not-known\"", "\"release\" : \"not-known\"")
                    .doesNotContain("nothing-found-against");
        }
        Ran text = Ran.withInput(NOTHING + boilers, "assess", "-");
        assertThat(text.code())
                .as("without --fail-at it was judged, and that is all")
                .isZero();
        assertThat(text.out())
                .contains("Attended test firing:            NOT KNOWN", "Release to automatic operation:  NOT KNOWN")
                .doesNotContain("nothing found against it");
    }

    @Test
    void what_was_seen_of_the_site_forbids_firing_where_no_boiler_is_described() {
        Ran ran = Ran.withInput(
                NOTHING.replace("elm-hall", "elm-hall, gas-smell: smelled"), "assess", "-", "--fail-at", "stop");

        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.out())
                .contains("no boiler is described in this file", "Attended test firing:            FORBIDDEN");
    }

    @Test
    void what_is_forbidden_is_said_before_all_else_and_what_is_grave_before_what_is_not() {
        Ran ran = Ran.withInput(
                NOTHING.replace("elm-hall", "elm-hall, gas-smell: smelled, drainage: takes-water")
                        + "boilers: [{id: B1}]\n",
                "assess",
                "-");

        assertThat(ran.out().lines().limit(5).toList()).anyMatch(line -> line.endsWith("FORBIDDEN"));
        assertThat(ran.out())
                .containsSubsequence(
                        "FORBIDDEN",
                        "licensed",
                        "DO NOT FIRE",
                        "THIS HEATING SEASON",
                        "NOT JUDGED",
                        "Found: 1 that forbid firing");
    }

    @Test
    void the_screen_is_eighty_columns_of_ascii_and_never_says_safe() {
        Ran ran = Ran.withInput(
                NOTHING.replace("elm-hall", "elm-hall, gas-smell: smelled, co: 200 ppm, frost: frozen")
                        + "boilers: [{id: B1, safety-valves: {fitted: 0}}]\n",
                "assess",
                "-");

        assertThat(ran.out()).matches("(?s)[\\x20-\\x7e\\n]+").doesNotContainPattern("(?i)\\bsafe\\b");
        assertThat(ran.out().lines())
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
        assertThat(ran.out().lines()).noneMatch(line -> line.endsWith(" "));
    }
}
