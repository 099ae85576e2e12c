package gaugeglass.cli.printed;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.cli.command.Ran;
import gaugeglass.cli.report.Alike;
import gaugeglass.cli.report.Naming;
import gaugeglass.cli.visit.Judged;
import gaugeglass.engine.Assessment;
import gaugeglass.engine.Assessment.Finding;
import gaugeglass.engine.Assessment.Word;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;

/** A building with four hundred traps: what is alike is said once, and no trap is hidden. */
class ManyAlikeTest {
    /** The hall of the examples, in which every third trap lets steam through, some are cold and some could not be read. */
    static String visit() {
        String hall = Reports.text(Path.of("../docs/examples/neglected-hall.yaml"));
        int from = hall.indexOf("    traps:\n");
        int to = hall.indexOf("    mains:\n");
        StringBuilder text = new StringBuilder("    traps:\n      fitted: 400\n      each:\n");
        for (int trap = 1; trap <= 400; trap++) {
            String outlet = trap % 3 == 0 ? trap % 2 == 0 ? "214 F" : "213 F" : "120 F";
            String row = trap % 29 == 0
                    ? "{ahead: full, inlet: 90 F, outlet: 85 F, others: none-hot}"
                    : trap % 31 == 0
                            ? "{unread: pipe covered}"
                            : "{ahead: full, inlet: 215 F, outlet: " + outlet + ", others: none-hot}";
            text.append("        - {tag: T-")
                    .append(trap)
                    .append(", kind: thermostatic, mounting: as-it-should, judged: by-temperature, row: ")
                    .append(row)
                    .append("}\n");
        }
        return hall.substring(0, from) + text + hall.substring(to);
    }

    private static final Judged.Visit VISIT = Reports.judged(visit());
    private static final Assessment ASSESSMENT = VISIT.units().get(0).assessment();

    private static List<String> failed() {
        List<String> tags = ASSESSMENT.findings().stream()
                .filter(finding -> finding.rule().equals("trap.failed-open"))
                .map(Finding::subject)
                .toList();
        assertThat(tags).hasSizeGreaterThan(100);
        return tags;
    }

    private static void holdsEach(String text, List<String> tags) {
        for (String tag : tags) {
            assertThat(Pattern.compile("\\b" + tag + "\\b").matcher(text).find())
                    .as(tag)
                    .isTrue();
        }
    }

    @Test
    void the_text_says_it_once_and_names_every_trap() {
        Ran ran = Ran.withInput(visit(), "assess", "-");
        String text = Reports.flowing(ran.out());

        assertThat(ran.out().lines()).hasSizeLessThan(800);
        assertThat(text.split("The trap lets steam into the return", -1)).hasSize(2);
        Matcher part = Pattern.compile("The trap lets steam into the return \\((\\d+) steam traps\\).*?Rule")
                .matcher(text);
        assertThat(part.find()).isTrue();
        assertThat(part.group(1)).isEqualTo(String.valueOf(failed().size()));
        holdsEach(part.group(), failed());
    }

    @Test
    void tests_of_one_cutoff_are_counted_as_that_cutoff() {
        Naming naming = new Naming(Reports.RULEBOOK.vocabulary(), Reports.RULEBOOK.book());
        List<String> five = List.of(
                "Float/hand-press", "Float/cold-flush", "Float/bowl-drain", "Probe/cold-flush", "Probe/bowl-drain");

        assertThat(naming.subjects("cutoff-test", five))
                .isEqualTo(
                        "low-water cutoffs Float (hand press, cold flush, bowl drain), Probe (cold flush, bowl drain)");
        assertThat(naming.subjects("cutoff-test", five.subList(0, 2)))
                .isEqualTo("low-water cutoff Float (hand press, cold flush)");
        assertThat(naming.subjects("cutoff-test", List.of("A/x", "B/x", "C/x", "D/x", "E/x")))
                .isEqualTo("5 low-water cutoffs");
    }

    @Test
    void counts_and_gates_are_those_of_the_single_findings() {
        String text = Reports.flowing(Ran.withInput(visit(), "assess", "-").out());
        long season = ASSESSMENT.findings().stream()
                .filter(finding -> finding.urgency() == gaugeglass.engine.book.Urgency.SEASON)
                .count();

        assertThat(text)
                .contains(season + " for this season")
                .contains(ASSESSMENT.count(Word.UNDETERMINED) + " not judged")
                .contains(ASSESSMENT.wanting().size() + " answers are missing");
    }

    @Test
    void the_owners_page_names_every_trap_once_said_and_stays_short() throws Exception {
        PrintedReport report = Reports.report(visit(), Reader.OWNER, PaperSize.LETTER);
        byte[] pdf = report.pdf();

        PdfTest.sound(pdf, PdfTest.size(PaperSize.LETTER));
        holdsEach(Reports.pdfText(pdf), failed());
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isLessThan(13);
        }
    }

    @Test
    void the_file_keeps_every_answer_and_outcome_of_every_trap() throws Exception {
        PrintedReport report = Reports.report(visit(), Reader.FILE, PaperSize.A4);
        byte[] pdf = report.pdf();
        String text = Reports.flowing(report.html().replaceAll("<[^>]*>", " "));

        PdfTest.sound(pdf, PdfTest.size(PaperSize.A4));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isBetween(15, 70);
        }
        for (int trap = 1; trap <= 400; trap++) {
            assertThat(text).containsPattern("T-" + trap + " kind: thermostatic; mounting: as it should;");
        }
        for (Assessment.Outcome outcome : ASSESSMENT.outcomes()) {
            Matcher row =
                    Pattern.compile(Pattern.quote(outcome.rule()) + "[^<]*").matcher(report.html());
            boolean isTold = false;
            while (row.find() && !isTold) {
                isTold = outcome.subject().isEmpty()
                        || Pattern.compile("[:, ]" + Pattern.quote(outcome.subject()) + "(,|$)")
                                .matcher(row.group())
                                .find();
            }
            assertThat(isTold).as(outcome.toString()).isTrue();
        }
    }

    @Test
    void one_line_of_work_counts_the_parts_and_the_json_lists_each() {
        String json = Reports.report(visit(), Reader.OWNER, PaperSize.LETTER).workAsJson();

        assertThat(json).contains("\"number\" : " + failed().size());
        holdsEach(json, failed());
    }

    @Test
    void what_differs_in_the_tag_alone_is_the_same_and_what_differs_in_a_reading_is_not() {
        List<Alike> alike = Alike.of(ASSESSMENT.findings().stream()
                .filter(finding -> finding.rule().equals("trap.failed-open"))
                .toList());

        assertThat(alike).hasSize(1);
        assertThat(alike.get(0).seen()).hasSize(2);
        assertThat(alike.get(0).seen().get(0)).contains("T-3 has 213 F").contains("The same of T-9, T-15");
        assertThat(alike.get(0).seen().get(1)).contains("T-6 has 214 F");
    }

    @Test
    void another_urgency_or_state_is_said_by_itself() {
        Finding one = ASSESSMENT.findings().stream()
                .filter(finding -> finding.rule().equals("trap.failed-open"))
                .findFirst()
                .orElseThrow();
        Finding arisen = new Finding(
                one.rule(),
                "T-x",
                one.urgency(),
                one.band(),
                Assessment.Standing.ARISEN,
                one.title(),
                one.seen(),
                one.limits(),
                one.why(),
                one.action(),
                one.remedy(),
                one.cautions(),
                one.consequence(),
                one.basis(),
                one.evidence(),
                one.retest(),
                "I saw none.");

        assertThat(Alike.of(List.of(one, arisen))).hasSize(2);
    }
}
