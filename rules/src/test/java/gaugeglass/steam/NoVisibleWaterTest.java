package gaugeglass.steam;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.Assessment;
import gaugeglass.engine.Assessment.Finding;
import gaugeglass.engine.Assessment.Permit;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.book.Book;
import gaugeglass.engine.book.Remedy;
import gaugeglass.engine.book.Urgency;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.InspectionReader;
import gaugeglass.steam.proof.SteamProof;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What is said to somebody who stands before a boiler that shows no water.
 *
 * <p>US Navy, NAVEDTRA 14279, safety precautions for boilers: kill the fire, let the boiler cool slowly, open it for
 * inspection, and feed no cold water before it has cooled.
 */
class NoVisibleWaterTest {
    /** Words that would have water let into a boiler. */
    private static final Pattern LETS_WATER_IN = Pattern.compile(
            "(?:^|[,;:] |\\bthen |\\band |\\bto |\\bby )(?:re)?fill(?:ing)?\\b"
                    + "|\\brefill"
                    + "|\\bfill(?:ing)? (?:it|the boiler|up|again)\\b"
                    + "|\\b(?:is|be) (?:re)?filled\\b"
                    + "|\\bfeed(?:ing)? (?:it|the boiler|water|by hand|slowly)\\b"
                    + "|\\bfed\\b"
                    + "|\\btop(?:ped|ping)? (?:it |the boiler )?up\\b"
                    + "|\\b(?:add|adding|let|letting|admit|admitting|pour|pouring|run|running|introduce|give|bring)\\b"
                    + "[^.;:]*(?<!low-)\\bwater\\b"
                    + "|\\bput(?:ting)? (?:some |cold )?water\\b"
                    + "|\\bwater (?:goes in|into (?:it|the boiler)|in(?=[ ,.;]*$|,))"
                    + "|\\bopen[^.;]*\\b(?:feed|feeder|make-up|bypass)\\b"
                    + "|\\b(?:restore|turn on|switch on)[^.;]*\\b(?:feed|feeder|pump|water)\\b",
            Pattern.CASE_INSENSITIVE);

    /** Words that forbid it, put it off until the boiler is cold, or speak of a cutoff's bowl alone. */
    private static final Pattern FORBIDS = Pattern.compile(
            "\\b(?:no|never|nothing|cold|bowl)\\b|\\bdo not\\b"
                    + "|\\bbefore (?:it is filled|anything is fed|any refilling)\\b",
            Pattern.CASE_INSENSITIVE);

    private static final Rulebook RULEBOOK = Rulebook.load(NoVisibleWaterTest.class.getClassLoader());

    /** The sentences of a text that would have water let in. */
    /** A siphon's water seal is filled by hand at the gauge; the sentence must name it and nothing else that is filled. */
    private static boolean fillsASiphon(String sentence) {
        return sentence.contains("the siphon") && !sentence.contains("boiler");
    }

    private static List<String> dangerous(String text) {
        return Stream.of(text.split("(?<=[.!?])\\s+"))
                .filter(sentence -> LETS_WATER_IN.matcher(sentence).find())
                .filter(sentence -> !FORBIDS.matcher(sentence).find())
                .filter(sentence -> !fillsASiphon(sentence))
                .toList();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Add water to the boiler.",
                "Shut off the fuel and let water in slowly.",
                "Add water before firing.",
                "Once the glow is gone, the boiler is filled again.",
                "If it is not too hot, put water in it.",
                "Refill the boiler.",
                "Leave it a while, then fill it to the normal line.",
                "Feed the boiler by hand.",
                "Top it up.",
                "Open the bypass of the feeder.",
                "Turn on the feed pump.",
                "Restore the feed and wait.",
                "Bring the water back to its line.",
                "The boiler should be fed until water shows.",
                "Fill it with water before it is fired.",
                "Clean the siphon and fill the boiler."
            })
    void advice_that_could_kill_is_recognised(String advice) {
        assertThat(dangerous(advice)).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Never let water into it.",
                "No water goes in before the boiler is cold.",
                "Add the low-water cutoff that is required here.",
                "Shut the drain and let the bowl fill.",
                "Leave the burner off and let the boiler go cold."
            })
    void words_that_let_nothing_in_are_left_alone(String words) {
        assertThat(dangerous(words)).isEmpty();
    }

    /** Warmth, feeder, and other trouble with the level, in every combination. */
    static Stream<String> visits() {
        List<String> visits = new ArrayList<>();
        for (String heat : List.of("hot-or-firing", "cold", "cannot-be-told", "{unread: cannot be reached}", "")) {
            for (String feeder : List.of(
                    "feeder: {make-up: automatic, power: live, supply: ready, action: not-feeding, level: 2 in}",
                    "feeder: {make-up: automatic, power: live, supply: ready, action: feeding, level: 2 in}",
                    "feeder: {make-up: automatic, power: dead, supply: shut-off, action: not-feeding, level: 2 in}",
                    "feeder: {make-up: by-hand}",
                    "")) {
                for (String proven :
                        List.of("proven: 0 in, normal: 4 in", "proven: 9 in, normal: 4 in", "normal: 4 in")) {
                    for (String flooded : List.of("", "flooded: no-sign", FLOODED)) {
                        visits.add(visit("none-visible", heat, feeder, proven, flooded));
                    }
                }
            }
        }
        return visits.stream();
    }

    private static final String FLOODED = "flooded: equipment-was-under-water";

    private static String visit(String line, String heat, String feeder, String proven, String flooded) {
        return """
                format: 1
                site: {id: invented%s}
                visit: {date: 2026-09-14}
                boilers:
                  - id: B1
                    burner: {firing: automatic}
                    level: {line: %s, %s%s}
                    glass: {lower-passage: not-at-all, upper-passage: not-tried, condition: cloudy}
                    cutoffs:
                      fitted: 1
                      each:
                        - tag: A
                          kind: float
                          mark: -1 in
                          contacts: permitting
                          wiring: jumpered
                          off-season: stood-idle
                          last-flush: rust-flakes
                          tests:
                            hand-press: {result: burner-idle}
                            cold-flush: {result: not-done}
                            bowl-drain: {result: kept-firing, float: did-not-move}
                            slow-drain: {result: flame-out, level: out-of-glass}
                """.formatted(
                                flooded.isEmpty() ? "" : ", " + flooded,
                                line,
                                proven,
                                heat.isEmpty() ? "" : ", boiler-heat: " + heat)
                + (feeder.isEmpty() ? "" : "    " + feeder + "\n");
    }

    private static Assessment assess(String visit) {
        Inspection inspection = InspectionReader.read(RULEBOOK.vocabulary(), "visit", visit);
        return RULEBOOK.assess(inspection.units().get(0).observations(), inspection.date());
    }

    /** Everything that a report of this assessment may say. */
    private static List<String> texts(Assessment assessment) {
        Book book = RULEBOOK.book();
        List<String> texts = new ArrayList<>();
        for (Finding finding : assessment.findings()) {
            texts.add(finding.title() + ".");
            texts.addAll(finding.seen());
            texts.add(finding.why());
            texts.add(finding.action());
            texts.add(book.card(finding.rule()).notWhen());
            finding.cautions().forEach(id -> texts.add(book.cautions().get(id).text()));
            if (!finding.remedy().isEmpty()) {
                Remedy remedy = book.remedies().get(finding.remedy());
                texts.add(remedy.work() + ".");
                remedy.parts().forEach(part -> texts.add(part + "."));
                remedy.takeAlong().forEach(part -> texts.add(part + "."));
            }
        }
        assessment.diagnoses().forEach(cause -> {
            texts.add(cause.cause() + ".");
            texts.add(cause.settle());
            cause.points().forEach(said -> texts.add(said.text()));
            cause.against().forEach(said -> texts.add(said.text()));
        });
        return texts;
    }

    @ParameterizedTest
    @MethodSource("visits")
    void nothing_that_is_said_lets_water_into_a_boiler_that_shows_none(String visit) {
        Assessment assessment = assess(visit);
        assertThat(assessment.findings()).anyMatch(f -> f.rule().equals("level.none-visible"));
        assertThat(texts(assessment).stream()
                        .flatMap(text -> dangerous(text).stream())
                        .toList())
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("visits")
    void no_visible_water_forbids_firing_whatever_else_is_unknown(String visit) {
        Assessment assessment = assess(visit);
        assertThat(assessment.testFiring().permit()).isEqualTo(Permit.FORBIDDEN);
        assertThat(assessment.release().permit()).isEqualTo(Permit.FORBIDDEN);
        Finding finding = assessment.findings().stream()
                .filter(f -> f.rule().equals("level.none-visible"))
                .findFirst()
                .orElseThrow();
        assertThat(finding.urgency()).isEqualTo(Urgency.STOP);
        assertThat(finding.cautions()).contains("no-visible-water");
        assertThat(finding.action())
                .contains("fuel", "away from the boiler", "feeder", "feed pump", "no blowdown", "lift no valve")
                .contains("Keep everybody away", "cool by itself", "inspected", "cause");
    }

    @Test
    void what_is_said_was_seen_fits_what_is_known_of_the_heat() {
        String[][] cases = {
            {"hot-or-firing", "hot or firing"},
            {"cold", "cold boiler"},
            {"cannot-be-told", "counts as hot"},
            {"{unread: cannot be reached}", "counts as dry and as hot"},
            {"", "counts as dry and as hot"}
        };
        for (String[] one : cases) {
            Assessment assessment = assess(visit("none-visible", one[0], "", "normal: 4 in", ""));
            assertThat(assessment.findings().stream()
                            .filter(f -> f.rule().equals("level.none-visible"))
                            .flatMap(f -> f.seen().stream()))
                    .as(one[0])
                    .singleElement()
                    .asString()
                    .contains(one[1]);
        }
    }

    /** Whatever is found together, on any boiler: no text of the rulebook lets water in without a condition beside it. */
    @Test
    void no_text_of_the_rulebook_lets_water_in_unconditionally() {
        Book book = SteamProof.stored().book();
        List<String> texts = new ArrayList<>();
        book.cards().values().forEach(card -> {
            texts.add(card.title() + ".");
            texts.add(card.why());
            texts.add(card.action());
            texts.add(card.notWhen());
            card.bands().values().forEach(band -> {
                texts.add(band.seen());
                texts.addAll(band.variants().values());
            });
        });
        book.cautions().values().forEach(caution -> texts.add(caution.text()));
        book.remedies().values().forEach(remedy -> {
            texts.add(remedy.work() + ".");
            remedy.parts().forEach(part -> texts.add(part + "."));
            remedy.takeAlong().forEach(part -> texts.add(part + "."));
        });
        book.diagnoses().forEach(diagnosis -> {
            texts.add(diagnosis.cause() + ".");
            texts.add(diagnosis.settle());
        });
        Predicate<String> speaksOfWater = text -> text.contains("water");
        assertThat(texts).filteredOn(speaksOfWater).isNotEmpty();
        assertThat(texts.stream().flatMap(text -> dangerous(text).stream()).toList())
                .isEmpty();
    }
}
