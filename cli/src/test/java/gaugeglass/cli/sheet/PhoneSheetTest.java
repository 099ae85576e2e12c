package gaugeglass.cli.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.checklists.Checklist;
import gaugeglass.checklists.Checklists;
import gaugeglass.checklists.Question;
import gaugeglass.cli.sheet.SingleAnswerStops.Stop;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.vocabulary.ItemType;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import nu.validator.client.EmbeddedValidator;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** What lies in the page for a phone; what it does is tried in a browser. */
class PhoneSheetTest {
    private static final Rulebook RULEBOOK = Rulebook.load(PhoneSheetTest.class.getClassLoader());
    private static final Checklists CHECKLISTS = Checklists.standard(RULEBOOK.vocabulary());
    private static final SingleAnswerStops STOPS = SingleAnswerStops.of(RULEBOOK);

    private static String html(Checklist checklist) {
        return PhoneSheet.html(RULEBOOK, STOPS, checklist, "Local code comes first.");
    }

    private static Checklist startUp() {
        return CHECKLISTS.checklist("one-pipe-start-up").orElseThrow();
    }

    private static JsonNode data(String html) {
        String start = "<script type=\"application/json\" id=\"data\">";
        int from = html.indexOf(start) + start.length();
        return Browser.read(html.substring(from, html.indexOf("</script>", from)));
    }

    @Test
    void the_same_checklist_gives_the_same_bytes() {
        assertThat(html(startUp()))
                .isEqualTo(PhoneSheet.html(
                        RULEBOOK, SingleAnswerStops.of(RULEBOOK), startUp(), "Local code comes first."));
    }

    @Test
    void every_question_is_in_it_with_every_answer_and_every_condition() {
        for (Checklist checklist : CHECKLISTS.all()) {
            JsonNode data = data(html(checklist));
            int asked = 0;
            for (JsonNode section : data.get("sections").values()) {
                for (JsonNode index : section.get("questions").values()) {
                    Question question = checklist.questions().get(asked++);
                    JsonNode written = data.get("questions").get(index.asInt());
                    assertThat(written.get("gives").asString()).isEqualTo(question.gives());
                    assertThat(written.get("ask").asString()).isEqualTo(question.ask());
                    assertThat(written.get("when").size())
                            .isEqualTo(question.askWhen().size());
                    question.item().ifPresent(item -> {
                        int part = 0;
                        for (var component : item.values()) {
                            JsonNode choices = written.get("parts").get(part++).path("choices");
                            assertThat(choices.valueStream()
                                            .map(choice -> choice.get("word").asString()))
                                    .containsExactlyElementsOf(component.choices());
                        }
                    });
                    if (!question.caution().isEmpty()) {
                        assertThat(data.get("cautions").has(question.caution())).isTrue();
                    }
                }
            }
            assertThat(asked).isEqualTo(checklist.questions().size());
        }
    }

    @Test
    void the_stops_in_it_are_the_engines_with_their_cautions() {
        JsonNode data = data(html(startUp()));
        List<Stop> wanted = STOPS.all();

        assertThat(data.get("stops").size()).isEqualTo(wanted.size());
        for (int i = 0; i < wanted.size(); i++) {
            JsonNode written = data.get("stops").get(i);
            Stop stop = wanted.get(i);
            JsonNode card = data.get("cards").get(written.get("card").asInt());
            assertThat(written.get("item").asString()).isEqualTo(stop.item());
            assertThat(written.get("member").asString()).isEqualTo(stop.member());
            assertThat(written.get("words").valueStream().map(JsonNode::asString))
                    .containsExactlyElementsOf(stop.words());
            assertThat(card.get("title").asString()).isEqualTo(stop.card().title());
            assertThat(card.get("action").asString()).isEqualTo(stop.card().action());
            for (String caution : stop.card().cautions()) {
                assertThat(data.get("cautions").get(caution).get("text").asString())
                        .isEqualTo(RULEBOOK.book().cautions().get(caution).text());
            }
        }
    }

    /** A stop that is not the checklist's own is none of the page's business; one that is must be there. */
    @Test
    void a_short_visit_carries_the_stops_of_what_it_asks() {
        for (Checklist checklist : CHECKLISTS.all()) {
            Set<String> asked = new LinkedHashSet<>();
            checklist.questions().forEach(question -> asked.add(question.gives()));

            assertThat(data(html(checklist)).get("stops").size()).isEqualTo((int) STOPS.all().stream()
                    .filter(stop -> asked.contains(stop.item()))
                    .count());
        }
    }

    @Test
    void nothing_is_fetched_from_anywhere_and_nothing_but_its_own_script_may_run() {
        String html = html(startUp());

        assertThat(html)
                .contains("default-src 'none'; script-src 'sha256-", "; style-src 'sha256-")
                .doesNotContain("unsafe-inline", "unsafe-eval")
                .doesNotContainPattern("(?i)<(link|iframe|object|embed|base|img)\\b|@import|(?-i)\\burl\\(")
                .doesNotContainPattern(
                        "(?i)\\b(innerHTML|outerHTML|insertAdjacentHTML|document\\.write|eval|fetch|XMLHttpRequest)\\b")
                .doesNotContainPattern("(?i)<[a-z][^>]*\\son[a-z]+=");
        assertThat(html.split("<script", -1)).hasSize(3);
    }

    @Test
    void the_validator_of_html_has_nothing_to_say() throws Exception {
        EmbeddedValidator validator = new EmbeddedValidator();
        validator.setOutputFormat(EmbeddedValidator.OutputFormat.GNU);
        validator.setForceHTML(true);

        assertThat(validator
                        .validate(new ByteArrayInputStream(html(startUp()).getBytes(StandardCharsets.UTF_8)))
                        .lines()
                        .filter(line -> !line.contains("info:") && !line.contains("info warning")))
                .isEmpty();
    }

    @Test
    void every_item_of_the_checklist_has_a_place_in_the_file() {
        JsonNode data = data(html(startUp()));
        for (JsonNode question : data.get("questions").values()) {
            JsonNode kind = data.get("kinds").get(question.get("kind").asString());
            assertThat(kind.get("placement").asString()).isIn("site", "unit", "counted", "fixed");
            if (!question.get("counts").asBoolean()) {
                ItemType item = RULEBOOK.vocabulary()
                        .item(question.get("gives").asString())
                        .orElseThrow();
                assertThat(question.get("key").asString()).isEqualTo(item.name());
            }
        }
    }
}
