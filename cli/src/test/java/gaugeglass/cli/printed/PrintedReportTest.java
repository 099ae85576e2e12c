package gaugeglass.cli.printed;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.cli.report.Alike;
import gaugeglass.cli.report.Naming;
import gaugeglass.cli.visit.Judged;
import gaugeglass.engine.Assessment.Finding;
import gaugeglass.engine.vocabulary.ItemType;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import nu.validator.client.EmbeddedValidator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What stands on the page, for whom, and that it is sound HTML. */
class PrintedReportTest {
    private static final String TEXT = Reports.text(Reports.NEGLECTED);

    private static String html(Reader reader) {
        return Reports.report(TEXT, reader, PaperSize.LETTER).html();
    }

    /** The page without its marks. */
    private static String words(String html) {
        return Reports.flowing(html.replaceAll("(?s)<style>.*?</style>", " ")
                .replaceAll("<[^>]*>", "")
                .replace("&#39;", "'")
                .replace("&#34;", "\"")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&amp;", "&"));
    }

    @ParameterizedTest
    @EnumSource(Reader.class)
    void the_validator_of_html_has_nothing_to_say(Reader reader) throws Exception {
        List<String> texts = new ArrayList<>(List.of(TEXT, Reports.longVisit(), ManyAlikeTest.visit()));
        try (Stream<Path> examples = Files.list(Path.of("../docs/examples"))) {
            examples.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .forEach(file -> texts.add(Reports.text(file)));
        }
        assertThat(texts).hasSizeGreaterThan(8);
        for (String text : texts) {
            EmbeddedValidator validator = new EmbeddedValidator();
            validator.setOutputFormat(EmbeddedValidator.OutputFormat.GNU);
            validator.setForceHTML(true);
            String html = Reports.report(text, reader, PaperSize.LETTER).html();
            String said = validator.validate(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8)));

            // The page is XML too, so that paper and screen are laid out from one text; closing strokes are only
            // remarked on.
            assertThat(said.lines().filter(line -> !line.contains("info:") && !line.contains("info warning")))
                    .isEmpty();
        }
    }

    @Test
    void the_validator_finds_what_is_wrong() throws Exception {
        EmbeddedValidator validator = new EmbeddedValidator();
        validator.setOutputFormat(EmbeddedValidator.OutputFormat.GNU);
        validator.setForceHTML(true);
        String spoiled = html(Reader.OWNER).replace("<main>", "<main><td>");

        assertThat(validator.validate(new ByteArrayInputStream(spoiled.getBytes(StandardCharsets.UTF_8))))
                .contains("error");
    }

    @ParameterizedTest
    @EnumSource(Reader.class)
    void the_same_visit_gives_the_same_bytes(Reader reader) throws Exception {
        PrintedReport one = Reports.report(TEXT, reader, PaperSize.A4);
        PrintedReport other = Reports.report(TEXT, reader, PaperSize.A4);

        assertThat(one.html()).isEqualTo(other.html());
        assertThat(one.workAsCsv()).isEqualTo(other.workAsCsv());
        assertThat(one.workAsJson()).isEqualTo(other.workAsJson());
        assertThat(one.pdf()).isEqualTo(other.pdf());
    }

    @ParameterizedTest
    @EnumSource(Reader.class)
    void nothing_is_fetched_from_anywhere(Reader reader) {
        String html = html(reader).replace("xmlns=\"http://www.w3.org/2000/svg\"", "");

        assertThat(html)
                .doesNotContainPattern("(?i)(src|href|srcset|action|poster|data)=\"(?!data:)")
                .doesNotContainPattern("(?i)url\\(|@import|<script|<link|<iframe|<object|<embed|<base")
                .contains("src=\"data:image/jpeg;base64,");
    }

    @ParameterizedTest
    @EnumSource(Reader.class)
    void every_standing_finding_is_told_with_why_what_to_do_and_its_cautions(Reader reader) {
        Judged.Visit visit = Reports.judged(TEXT);
        String words = words(html(reader));
        List<Finding> findings = visit.units().get(0).assessment().findings();

        assertThat(findings).hasSizeGreaterThan(5);
        Alike.of(findings)
                .forEach(alike -> alike.seen().forEach(seen -> assertThat(words).contains(Reports.flowing(seen))));
        for (Finding finding : findings) {
            assertThat(words).contains(finding.title());
            if (finding.isStanding()) {
                assertThat(words)
                        .contains("Why it matters: " + Reports.flowing(finding.why()))
                        .contains("What to do: " + Reports.flowing(finding.action()));
                finding.cautions().forEach(id -> assertThat(words)
                        .contains(Reports.flowing(
                                Reports.RULEBOOK.book().cautions().get(id).text())));
            }
        }
    }

    @Test
    void the_most_urgent_come_first() {
        String words = words(html(Reader.OWNER));

        assertThat(words)
                .containsSubsequence("Forbidden", "Do not fire", "Put right before leaving", "This heating season");
    }

    @Test
    void nobody_is_told_that_anything_is_safe() {
        for (Reader reader : Reader.values()) {
            assertThat(words(html(reader))).doesNotContainPattern("(?i)\\b(is|be|are) safe\\b");
        }
    }

    @Test
    void it_defers_to_those_who_come_before_it() {
        assertThat(words(html(Reader.OWNER)))
                .contains("local code", "authority having jurisdiction", "maker's instructions", "licensed");
    }

    @Test
    void a_jumper_that_was_taken_out_shows_how_it_was_found_and_how_it_was_left() {
        String text =
                TEXT.replace("wire taken out and handed over}", "wire taken out}\n            connection-valve: none");

        for (Reader reader : Reader.values()) {
            assertThat(words(Reports.report(text, reader, PaperSize.LETTER).html()))
                    .containsSubsequence(
                            "Put right on this visit",
                            "The cutoff is bypassed",
                            "Found:",
                            "LW-1 are jumpered",
                            "Tested again:",
                            "in circuit");
        }
    }

    @Test
    void findings_with_one_remedy_are_one_line_of_work() {
        String words = words(html(Reader.OWNER));

        assertThat(words)
                .contains("low-water cutoffs LW-1, LW-2puts right 2 findings")
                .contains("done deferred refused");
    }

    @Test
    void a_line_of_work_names_its_parts_with_what_was_read_and_says_what_was_not() {
        String words = words(html(Reader.OWNER));

        assertThat(words)
                .contains("Parts: 2 x gasket for the low-water cutoff there (kind: float).")
                .contains("(kind: float; duty: not known; reset: not known), with gasket.")
                .contains("Take along: meter for the burner's circuit.", "the normal line (5 in).")
                .doesNotContain("{", "}");
        assertThat(Reports.report(TEXT, Reader.OWNER, PaperSize.LETTER).workAsJson())
                .containsPattern("\"number\" : 2,\\s+\"what\" : \"gasket for the low-water cutoff")
                .containsPattern("\"subjects\" : \\[\\s*\"LW-1\",\\s*\"LW-2\"");
    }

    @Test
    void a_decision_stands_on_its_finding_and_on_its_line_of_work() {
        assertThat(words(html(Reader.OWNER)).split("done by the caretaker on 2026-09-15", -1))
                .hasSize(3);
    }

    @Test
    void the_file_keeps_every_answer_with_its_note_reason_and_photo() {
        String words = words(html(Reader.FILE));
        Naming naming = new Naming(Reports.RULEBOOK.vocabulary(), Reports.RULEBOOK.book());

        Reports.judged(TEXT).units().get(0).visited().observations().answers().forEach(answer -> {
            assertThat(words).contains(Reports.flowing(answer.item().ask()));
            answer.fact().ifPresent(fact -> assertThat(words).contains(naming.values(answer.item(), fact)));
            if (!answer.unread().isEmpty()) {
                assertThat(words).contains("could not be read: " + answer.unread());
            }
            assertThat(words).contains(answer.note());
            answer.photos().forEach(photo -> assertThat(words).contains(photo));
        });
    }

    @Test
    void the_file_keeps_every_outcome_every_limit_the_rulebook_and_what_was_found_before() {
        String words = words(html(Reader.FILE));

        Reports.judged(TEXT).units().get(0).assessment().outcomes().forEach(outcome -> assertThat(words)
                .contains(outcome.rule()));
        Reports.RULEBOOK.book().allLimits().forEach(limit -> assertThat(words).contains(limit.id(), limit.written()));
        assertThat(words)
                .contains(
                        Reports.RULEBOOK.book().hash(), Reports.RULEBOOK.book().version())
                .contains("deferred by the owner on 2025-09-10");
    }

    @Test
    void the_file_keeps_every_reckoning_with_its_formula_and_the_limits_in_it() {
        String text = Reports.text(Path.of("../docs/examples/sound-mill.yaml"));
        Judged.Unit unit = Reports.judged(text).units().get(0);
        Naming naming = new Naming(Reports.RULEBOOK.vocabulary(), Reports.RULEBOOK.book());
        String words = words(Reports.report(text, Reader.FILE, PaperSize.A4).html());
        List<Record> facts = Reports.RULEBOOK.reckoned(
                unit.visited().observations(), unit.assessment().date());

        assertThat(facts).hasSizeGreaterThan(40);
        for (Record fact : facts) {
            ItemType item = Reports.RULEBOOK.vocabulary().item(fact.getClass()).orElseThrow();
            assertThat(words).contains(item.ask(), naming.values(item, fact), Reports.flowing(item.look()));
            Reports.RULEBOOK.workedOutWith(item).forEach(limit -> assertThat(words)
                    .contains("limit " + limit.id() + ", " + limit.written()));
        }
        assertThat(words).contains("share = water / steam x 100; water = used x weight; steam = output / hfg x hours");
    }

    @Test
    void pictures_say_in_words_what_they_show() {
        String html = html(Reader.OWNER);

        assertThat(html).contains("role=\"img\"", "<title id=\"u1-glass-t\">Gauge glass</title>");
        assertThat(words(html))
                .contains("Water seemed to stand 6 in.", "Water proven 4-1/2 in.", "Cutoff LW-1 1-1/4 in.")
                .contains("The mark of cutoff LW-2 could not be read (lagged over).");
    }

    @Test
    void hostile_names_and_notes_are_harmless() throws Exception {
        String text = TEXT.replace(
                        "name: Elm Hall (invented)", "name: \"<script>alert(1)</script> \\u202Egnp \\u001b[31m &amp;\"")
                .replace("name: Old number one", "name: \"\\\"'><img src=x onerror=alert(1)>\"")
                .replace("note: Keys at the caretaker's.", "note: \"${7*7} @template.x() <!-- \\u0007 ]]>\"")
                .replace("a brown rim on the glass", "\"</td></table><style>*{display:none}</style>\"");
        for (Reader reader : Reader.values()) {
            PrintedReport report = Reports.report(text, reader, PaperSize.LETTER);
            String html = report.html();

            assertThat(html)
                    .doesNotContain("<script", "<img src=x", "</td></table><style>", "\u202E", "\u001b", "\u0000")
                    .contains("&lt;script&gt;alert(1)", "\\u202egnp", "\\u001b[31m", "${7*7} @template.x()");
            assertThat(Reports.flowing(Reports.pdfText(report.pdf()))).contains("<script>alert(1)</script>");
        }
    }

    @Test
    void a_photo_that_is_not_there_is_told_in_words() {
        assertThat(words(html(Reader.OWNER)))
                .contains("The photo gone.jpg is not shown: there is no such file beside the inspection.");
    }
}
