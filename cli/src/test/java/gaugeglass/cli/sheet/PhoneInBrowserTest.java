package gaugeglass.cli.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import gaugeglass.checklists.Checklist;
import gaugeglass.checklists.Checklists;
import gaugeglass.checklists.Interview;
import gaugeglass.checklists.Interview.Status;
import gaugeglass.checklists.Interview.Step;
import gaugeglass.checklists.Question;
import gaugeglass.engine.Assessment;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.book.Urgency;
import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.InspectionReader;
import gaugeglass.engine.observation.InspectionWriter;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.quantity.Dimension;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.QuantityFormatException;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.Component;
import gaugeglass.engine.vocabulary.Stage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** The page for a phone in a real browser, at a phone's size, from the file system. */
class PhoneInBrowserTest {
    private static final Rulebook RULEBOOK = Rulebook.load(PhoneInBrowserTest.class.getClassLoader());
    private static final Checklists CHECKLISTS = Checklists.standard(RULEBOOK.vocabulary());
    private static final Path CORPUS = Path.of("../engine/src/test/resources/gaugeglass/engine/quantity");

    /** Takes storage away as some phones do from pages that were opened as a file. */
    private static final String REFUSE = "Object.defineProperty(window, 'localStorage',"
            + " {get() { throw new DOMException('refused', 'SecurityError'); }});";

    @TempDir
    private Path folder;

    private Checklist checklist = CHECKLISTS.checklist("one-pipe-start-up").orElseThrow();
    private Path page;
    private Browser browser;

    @BeforeEach
    void open() throws Exception {
        assumeTrue(
                Browser.found().isPresent(),
                "There is no Chromium on this machine's PATH, so the page for a phone was not tried in a browser.");
        page = written(checklist);
        Files.createDirectory(folder.resolve("saved"));
        browser = Browser.open(folder.resolve("profile"));
        browser.downloadsTo(folder.resolve("saved"));
    }

    private Path written(Checklist of) throws IOException {
        return Files.writeString(
                folder.resolve("sheet.html"),
                PhoneSheet.html(
                        RULEBOOK,
                        SingleAnswerStops.of(RULEBOOK),
                        of,
                        "Local code comes before every line of this list."));
    }

    @AfterEach
    void close() throws Exception {
        if (browser != null) {
            try {
                assertThat(browser.errors()).isEmpty();
                assertThat(browser.requests()).allMatch(url -> url.startsWith("file:") || url.startsWith("blob:"));
            } finally {
                browser.close();
            }
        }
    }

    private static Inspection church() throws IOException {
        return example("well-kept-church.yaml");
    }

    private static Inspection example(String name) throws IOException {
        return new InspectionReader(RULEBOOK.vocabulary())
                .read(name, Files.readString(Path.of("../docs/examples", name)));
    }

    private String heading() {
        return browser.text("document.querySelector('#screen h1').textContent");
    }

    private String shown() {
        return browser.text("document.body.innerText");
    }

    private void begin(String site, String by) {
        browser.await("document.querySelector('#screen form') !== null");
        String[] typed = {site, "", "B1", by, "2026-09-14"};
        for (int i = 0; i < typed.length; i++) {
            if (!typed[i].isEmpty()) {
                browser.type("document.querySelectorAll('#screen form input')[" + i + "]", typed[i]);
            }
        }
        browser.button("Begin");
    }

    private static String answered(String word) {
        return "[...document.querySelectorAll('#screen .choices button, #screen .numbers button')].find((one) =>"
                + " one.textContent.split(':')[0] === " + Browser.quoted(word.replace('-', ' ')) + ")";
    }

    /** Answers what is asked as an inspection does. */
    private void answer(Step step, Observations observations) {
        Question question = step.question();
        assertThat(heading()).isEqualTo(question.ask());
        if (!step.keys().isEmpty()) {
            assertThat(browser.text("document.getElementById('where').textContent"))
                    .endsWith(" " + step.keys().get(0));
        }
        if (question.isCount()) {
            List<String> tags = observations.roster(question.kind()).tags(State.AS_FOUND);
            browser.tap(answered(String.valueOf(tags.size())));
            if (!tags.isEmpty()) {
                for (int i = 0; i < tags.size(); i++) {
                    browser.type("document.querySelectorAll('#screen form input')[" + i + "]", tags.get(i));
                }
                browser.button("Keep");
            }
            return;
        }
        Optional<Answer> given = observations.answer(question.item().orElseThrow(), step.keys(), State.AS_FOUND);
        if (given.orElseThrow().fact().isEmpty()) {
            browser.tap("document.querySelector('#screen details summary')");
            browser.type(
                    "document.querySelector('#screen details input')",
                    given.get().unread());
            browser.button("Keep that it could not be told");
            return;
        }
        Answer answer = given.get();
        String[] typed = answer.typed().split(" \\| ");
        List<Component> parts = question.item().orElseThrow().values();
        if (question.take() == Question.Take.EVENTS && typed[0].contains("-then-")) {
            for (String word : typed[0].split("-then-")) {
                browser.tap("[...document.querySelectorAll('.marks button')].find((one) => one.textContent.startsWith("
                        + Browser.quoted(word + " ") + "))");
            }
            browser.button("That was all");
        } else if (parts.size() == 1 && parts.get(0).form() == Component.Form.CHOICE) {
            browser.tap(answered(typed[0]));
        } else {
            for (int i = 0; i < parts.size(); i++) {
                String part = "document.querySelector('#screen form').children[" + i + "]";
                if (parts.get(i).form() == Component.Form.CHOICE) {
                    browser.tap(part + ".querySelector('input[value=' + JSON.stringify(" + Browser.quoted(typed[i])
                            + ") + '] + label')");
                } else {
                    browser.type(part + ".querySelector('input')", typed[i]);
                }
            }
            if (parts.size() > 1) {
                browser.button("Keep this answer");
                return;
            }
            browser.enter();
        }
    }

    private List<Step> asked(Observations observations) {
        return Interview.of(checklist, observations).steps().stream()
                .filter(step -> step.status() == Status.ANSWERED || step.status() == Status.OPEN)
                .toList();
    }

    private Inspection saved() throws Exception {
        Path file = download();
        String json = Files.readString(file);
        return new InspectionReader(RULEBOOK.vocabulary())
                .read(file.getFileName().toString(), json);
    }

    private Path download() throws Exception {
        browser.tap(
                "[...document.querySelectorAll('#screen button')].find((one) => one.textContent.startsWith('Save '))");
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(20);
        while (System.nanoTime() < end) {
            try (Stream<Path> all = Files.list(folder.resolve("saved"))) {
                List<Path> files =
                        all.filter(path -> path.toString().endsWith(".json")).toList();
                if (!files.isEmpty() && Files.size(files.get(0)) > 0) {
                    return files.get(0);
                }
            }
            Thread.sleep(50);
        }
        throw new IllegalStateException("nothing was saved");
    }

    private static void same(Assessment one, Assessment other) {
        assertThat(one.testFiring()).isEqualTo(other.testFiring());
        assertThat(one.release()).isEqualTo(other.release());
        assertThat(one.outcomes()).isEqualTo(other.outcomes());
        assertThat(one.findings()).isEqualTo(other.findings());
        assertThat(one.wanting()).isEqualTo(other.wanting());
    }

    @Test
    void a_whole_start_up_is_walked_reloaded_half_way_saved_and_judged_as_the_example_is() throws Exception {
        walkedAsTheExample(church());
    }

    @Test
    void a_sound_two_pipe_start_up_is_judged_as_its_example_and_clears_both_gates() throws Exception {
        checklist = CHECKLISTS.checklist("two-pipe-start-up").orElseThrow();
        page = written(checklist);
        Assessment assessment = walkedAsTheExample(example("sound-mill.yaml"));
        assertThat(assessment.testFiring().permit()).isEqualTo(Assessment.Permit.NOTHING_FOUND_AGAINST);
        assertThat(assessment.release().permit()).isEqualTo(Assessment.Permit.NOTHING_FOUND_AGAINST);
        assertThat(assessment.count(Assessment.Word.UNDETERMINED)).isZero();
    }

    private Assessment walkedAsTheExample(Inspection example) throws Exception {
        Observations observations = example.units().get(0).observations();
        List<Step> steps = asked(observations);
        browser.go(page);
        begin("chapel-lane", "P. Example");
        int half = steps.size() / 2;
        for (int i = 0; i < steps.size(); i++) {
            if (i == half) {
                browser.reload();
                assertThat(shown()).contains("A visit is kept on this phone", "chapel-lane");
                browser.button("Go on with it");
            }
            answer(steps.get(i), observations);
        }
        assertThat(heading()).isEqualTo("Every question has been put");
        assertThat(shown()).contains("gaugeglass assess");

        Inspection saved = saved();
        assertThat(saved.units().get(0).checklist()).isEqualTo(checklist.id());
        Assessment assessment = RULEBOOK.assess(saved.units().get(0).observations(), saved.date());
        same(assessment, RULEBOOK.assess(observations, example.date()));
        return assessment;
    }

    @Test
    void a_file_in_yaml_is_opened_gone_on_with_and_judged_the_same() throws Exception {
        Inspection church = church();
        Path yaml = Path.of("../docs/examples/well-kept-church.yaml").toRealPath();
        browser.go(page);
        browser.await("document.getElementById('opening') !== null");
        browser.choose("#opening", yaml);
        browser.await("document.querySelector('#screen h1').textContent === 'Every question has been put'");
        browser.button("Overview");
        browser.tap("[...document.querySelectorAll('#screen .listed')].find((one) =>"
                + " one.textContent.startsWith('Do you smell gas'))");
        browser.tap(answered("none"));
        browser.button("Overview");
        browser.button("Save");
        Inspection saved = saved();
        assertThat(saved.siteName()).isEqualTo(church.siteName());
        same(
                RULEBOOK.assess(saved.units().get(0).observations(), saved.date()),
                RULEBOOK.assess(church.units().get(0).observations(), church.date()));
    }

    @Test
    void what_is_no_inspection_or_has_lost_its_end_is_not_opened_and_told_in_words() throws Exception {
        Map<String, String> told = new LinkedHashMap<>();
        told.put("format: 1\nsite: {id: a\n", "cannot be read");
        told.put("format: 1\nformat: 1\n", "duplicated");
        told.put("{\"format\": 1", "it is no whole file");
        told.put("- 1\n", "It is no inspection.");
        told.put("format: 2\n", "It is not of format 1");
        told.put(InspectionWriter.FIRST_LINE + "\nformat: 1\nsite: {id: a}\n", "Its end is missing.");
        for (Map.Entry<String, String> one : told.entrySet()) {
            Path file = Files.writeString(folder.resolve("file-" + one.getKey().hashCode() + ".yaml"), one.getKey());
            browser.go(page);
            browser.await("document.getElementById('opening') !== null");
            browser.choose("#opening", file);
            browser.await("document.querySelector('#screen [role=alert]').textContent !== ''");
            assertThat(browser.text("document.querySelector('#screen [role=alert]').textContent"))
                    .as(one.getKey())
                    .contains(one.getValue());
        }
    }

    @Test
    void two_boilers_are_walked_in_one_visit_and_share_what_is_said_of_the_site() throws Exception {
        Observations observations = church().units().get(0).observations();
        browser.go(page);
        begin("chapel-lane", "P. Example");
        List<Step> ofSite = asked(observations).stream()
                .takeWhile(step -> step.question().kind().equals("site"))
                .toList();
        for (Step step : ofSite) {
            answer(step, observations);
        }
        String firstOfBoiler = heading();
        browser.button("Overview");
        browser.button("Boilers");
        sound("boilers");
        browser.type("document.querySelector('#screen form input')", "b1");
        browser.button("Add it");
        assertThat(shown()).contains("Another one is called so.");
        browser.type("document.querySelector('#screen form input')", "B2");
        browser.button("Add it");
        // What was said of the site is not asked again; which boiler it is stands above each question.
        assertThat(heading()).isEqualTo(firstOfBoiler);
        assertThat(browser.text("document.getElementById('where').textContent")).startsWith("B2 | ");
        from("system-kind", asked(observations).get(ofSite.size()).question().id(), observations);
        browser.reload();
        browser.button("Go on with it");
        assertThat(browser.text("document.getElementById('where').textContent")).startsWith("B2 | ");
        browser.button("Overview");
        browser.button("Boilers");
        browser.tap("[...document.querySelectorAll('#screen .choice')].find((one) => one.textContent === 'B1')");
        assertThat(heading()).isEqualTo(firstOfBoiler);

        browser.button("Save");
        Inspection saved = saved();
        assertThat(saved.units()).extracting(Inspection.Visited::id).containsExactly("B1", "B2");
        assertThat(saved.units().get(0).observations().answers())
                .hasSameSizeAs(saved.site())
                .hasSize(ofSite.size());
        assertThat(saved.units().get(1).observations().answers().size()).isGreaterThan(ofSite.size() + 5);
    }

    /** Walks to the first question of these. */
    private void until(String id, Observations observations) {
        for (Step step : asked(observations)) {
            if (step.question().id().equals(id)) {
                return;
            }
            answer(step, observations);
        }
    }

    @Test
    void the_accessibility_engine_finds_nothing_on_any_sort_of_screen() throws Exception {
        Observations observations = church().units().get(0).observations();
        browser.go(page);
        sound("start");
        begin("chapel-lane", "P. Example");
        sound("choice");
        until("site-co", observations);
        sound("quantity");
        browser.type("document.querySelector('#screen form input')", "30 feet");
        sound("wrong");
        from("cutoff-count", "site-co", observations);
        sound("count");
        browser.tap(answered("2"));
        sound("tags");
        browser.button("Overview");
        sound("overview");
        browser.button("Save");
        sound("save");
        browser.reload();
        sound("kept");
        browser.button("Go on with it");
        browser.button("Back");
        browser.tap("[...document.querySelectorAll('#screen button')].find((one) =>"
                + " one.textContent.startsWith('Do you smell gas'))");
        browser.tap(answered("smelled"));
        assertThat(heading()).startsWith("Do not fire: ");
        sound("stop");
    }

    private void from(String id, String first, Observations observations) {
        boolean isOn = false;
        for (Step step : asked(observations)) {
            isOn |= step.question().id().equals(first);
            if (step.question().id().equals(id)) {
                return;
            }
            if (isOn) {
                answer(step, observations);
            }
        }
    }

    /** Labels, contrast, names, order of headings: every rule that the engine has, none left out. */
    private void sound(String name) throws IOException {
        if (!browser.value("typeof axe === 'object'").asBoolean(false)) {
            try (InputStream axe = PhoneInBrowserTest.class.getResourceAsStream("/axe.min.js")) {
                browser.value(new String(axe.readAllBytes(), StandardCharsets.UTF_8) + "; 1");
            }
        }
        picture(name);
        JsonNode found =
                browser.value("axe.run(document).then((all) => all.violations.map((one) => one.id + ': ' + one.help"
                        + " + ' ' + one.nodes.map((node) => node.html).join(' ')))");
        assertThat(found.values()).as(name).isEmpty();
        assertThat(browser.value("document.documentElement.scrollWidth <= window.innerWidth")
                        .asBoolean(false))
                .as(name + " is no wider than the phone")
                .isTrue();
        // A finger in a glove: 44 px is what WCAG 2.5.5 asks of a target.
        assertThat(browser.value(
                                "Math.min(...[...document.querySelectorAll('button')].filter((one) => one.offsetParent)"
                                        + ".map((one) => one.getBoundingClientRect().height))")
                        .asDouble(100))
                .as(name)
                .isGreaterThanOrEqualTo(44);
        assertThat(browser.text("document.activeElement.tagName")).as(name).isIn("H1", "INPUT", "BODY", "BUTTON");
    }

    private void picture(String name) throws IOException {
        browser.picture(Files.createDirectories(Path.of("target/phone")).resolve(name + ".png"));
    }

    @Test
    void a_phone_that_keeps_nothing_says_so_and_offers_the_file_when_a_stage_is_over() throws Exception {
        Observations observations = church().units().get(0).observations();
        browser.before(REFUSE);
        browser.go(page);
        begin("chapel-lane", "P. Example");
        assertThat(browser.text("document.getElementById('warning').textContent"))
                .contains("keeps nothing");
        boolean isArrival = true;
        List<Step> steps = asked(observations);
        int at = 0;
        while (isArrival) {
            answer(steps.get(at++), observations);
            isArrival = steps.get(at).section().stage() == Stage.ARRIVAL;
        }
        assertThat(heading()).isEqualTo("Save the file now");
        picture("refused");
        Path file = download();
        browser.button("Go on");
        assertThat(heading()).isEqualTo(steps.get(at).question().ask());

        // Gone on with on another page, as on another day: what was saved is all there is.
        browser.reload();
        browser.choose("#opening", file);
        browser.await("document.querySelector('#screen h1').textContent === "
                + Browser.quoted(steps.get(at).question().ask()));
        answer(steps.get(at), observations);
        assertThat(heading()).isEqualTo(steps.get(at + 1).question().ask());
    }

    @Test
    void the_firing_stage_stays_closed_while_a_single_answer_forbids_it_or_something_is_open() throws Exception {
        Observations observations = church().units().get(0).observations();
        browser.go(page);
        begin("chapel-lane", "P. Example");
        for (Step step : asked(observations)) {
            if (!step.section().stage().isBeforeFiring()) {
                break;
            }
            if (step.question().id().equals("cutoff-wiring")
                    && step.keys().get(0).equals("Float")) {
                browser.tap(answered("jumpered"));
                assertThat(heading()).isEqualTo("Do not fire: The cutoff is bypassed");
                String shown = shown();
                RULEBOOK.book().card("cutoff.bypassed").cautions().forEach(id -> assertThat(shown)
                        .contains(RULEBOOK.book().cautions().get(id).text()));
                browser.button("I have read this");
            } else if (step.question().id().equals("site-wiring")) {
                browser.button("Skip");
            } else {
                answer(step, observations);
            }
        }
        assertThat(heading()).isEqualTo("The firing stage is closed");
        sound("closed");
        assertThat(shown()).contains("The cutoff is bypassed", "It is not answered", "gaugeglass assess");

        // What was passed over is answered here; what was found is put right, and both states are kept.
        browser.tap("[...document.querySelectorAll('#screen .listed')].find((one) => one.textContent.includes('wiring')"
                + " && !one.textContent.includes('jumpered'))");
        browser.tap(answered("sound"));
        assertThat(heading()).isEqualTo("The firing stage is closed");
        putRight("jumpered", "in-circuit");
        assertThat(browser.text("document.getElementById('where').textContent")).startsWith("Firing");

        browser.button("Save");
        Inspection saved = saved();
        Assessment assessment = RULEBOOK.assess(saved.units().get(0).observations(), saved.date());
        assertThat(assessment.findings())
                .anyMatch(finding -> finding.rule().equals("cutoff.bypassed") && !finding.isStanding());
        assertThat(assessment.testFiring().permit()).isEqualTo(Assessment.Permit.NOTHING_FOUND_AGAINST);
    }

    /** From the list of what stands in the way: the answer that says this is answered again as it is now. */
    private void putRight(String found, String now) throws Exception {
        browser.tap("[...document.querySelectorAll('#screen .listed')].find((one) => one.textContent.includes('" + found
                + "'))");
        browser.button("It was put right or tested again: answer as it is now");
        browser.tap(answered(now));
    }

    @Test
    void gas_found_and_mended_keeps_both_states_of_the_site() throws Exception {
        Observations observations = church().units().get(0).observations();
        browser.go(page);
        begin("chapel-lane", "P. Example");
        for (Step step : asked(observations)) {
            if (!step.section().stage().isBeforeFiring()) {
                break;
            }
            if (step.question().gives().equals("site.gas-smell")) {
                browser.tap(answered("smelled"));
                browser.button("I have read this");
            } else {
                answer(step, observations);
            }
        }
        assertThat(heading()).isEqualTo("The firing stage is closed");
        putRight("smelled", "none");
        assertThat(browser.text("document.getElementById('where').textContent")).startsWith("Firing");

        browser.button("Save");
        Inspection saved = saved();
        assertThat(saved.site())
                .filteredOn(answer -> answer.item().id().equals("site.gas-smell"))
                .extracting(Answer::state)
                .containsExactly(State.AS_FOUND, State.AS_LEFT);
        Assessment assessment = RULEBOOK.assess(saved.units().get(0).observations(), saved.date());
        assertThat(assessment.findings()).anySatisfy(finding -> {
            assertThat(finding.rule()).isEqualTo("site.gas-odour");
            assertThat(finding.isStanding()).isFalse();
        });
        assertThat(assessment.testFiring().permit()).isEqualTo(Assessment.Permit.NOTHING_FOUND_AGAINST);
    }

    /** Everything that one answer can make wrong before firing is wrong here at once. */
    private static Observations spoiled(Observations sound, SingleAnswerStops stops) {
        Observations.Builder spoiled = sound.toBuilder();
        for (Answer answer : sound.answers()) {
            String member = answer.keys().size() < 2
                    ? ""
                    : Words.of((Enum<?>) answer.keys().get(1));
            stops.of(answer.item().id(), member).stream()
                    .filter(stop -> stop.words().size() == 1)
                    .findFirst()
                    .ifPresent(stop -> answer.item().completions(answer.keys()).stream()
                            .filter(fact -> Words.of((Enum<?>)
                                            answer.item().valuesOf(fact).get(0))
                                    .equals(stop.words().get(0)))
                            .forEach(fact -> spoiled.without(answer)
                                    .put(new Answer(
                                            answer.item(),
                                            answer.keys(),
                                            State.AS_FOUND,
                                            Optional.of(fact),
                                            "",
                                            "",
                                            List.of(),
                                            "",
                                            stop.words().get(0)))));
        }
        return spoiled.build();
    }

    @Test
    void each_stop_that_is_shown_is_one_that_the_engine_finds_in_the_saved_file_and_none_is_missing() throws Exception {
        SingleAnswerStops stops = SingleAnswerStops.of(RULEBOOK);
        Observations observations = spoiled(church().units().get(0).observations(), stops);
        browser.go(page);
        begin("hall", "P. Example");
        Set<String> shown = new TreeSet<>();
        for (Step step : asked(observations)) {
            if (!step.section().stage().isBeforeFiring()) {
                continue;
            }
            if (step.status() != Status.ANSWERED) {
                browser.button("Skip");
                continue;
            }
            answer(step, observations);
            while (heading().startsWith("Do not fire: ")) {
                shown.add(heading().substring("Do not fire: ".length()));
                browser.button("I have read this");
            }
        }
        assertThat(heading()).isEqualTo("The firing stage is closed");
        browser.button("Save");
        Inspection saved = saved();
        Assessment assessment = RULEBOOK.assess(saved.units().get(0).observations(), saved.date());
        Set<String> cards = stops.all().stream().map(stop -> stop.card().id()).collect(Collectors.toSet());

        assertThat(assessment.testFiring().permit()).isEqualTo(Assessment.Permit.FORBIDDEN);
        assertThat(shown)
                .hasSizeGreaterThan(15)
                .isEqualTo(assessment.findings().stream()
                        .filter(finding -> finding.urgency() == Urgency.STOP && cards.contains(finding.rule()))
                        .map(Assessment.Finding::title)
                        .collect(Collectors.toCollection(TreeSet::new)));
    }

    @Test
    void what_could_not_be_told_before_firing_keeps_it_closed_where_a_stop_hangs_on_it() throws Exception {
        browser.go(page);
        begin("s", "P. Example");
        browser.tap("document.querySelector('#screen details summary')");
        browser.type("document.querySelector('#screen details input')", "a cold");
        browser.enter();
        assertThat(browser.text("JSON.stringify(JSON.parse(localStorage.getItem(localStorage.key(0))).visit.site)"))
                .contains("\"unread\":\"a cold\"");
        browser.button("Overview");
        assertThat(shown()).contains("could not be read: a cold");
    }

    @Test
    void a_hostile_name_and_note_are_shown_as_they_were_typed_and_do_nothing() throws Exception {
        String hostile = "<img src=x onerror=\"window.harmed=1\">";
        browser.go(page);
        begin(hostile.replace("/", ""), hostile);
        browser.tap("[...document.querySelectorAll('summary')].find((one) => one.textContent === 'Note, photos')");
        browser.type(
                "[...document.querySelectorAll('#screen details')].find((one) => one.textContent.startsWith('Note'))"
                        + ".querySelector('input')",
                "</script><script>window.harmed=1</script>");
        browser.tap(answered("none"));
        browser.button("Save");
        assertThat(shown()).contains(hostile);
        Path file = download();
        assertThat(file.getFileName().toString()).matches("[A-Za-z0-9._-]+");
        browser.reload();
        assertThat(shown()).contains(hostile);
        assertThat(browser.value("window.harmed === undefined && document.querySelector('img') === null")
                        .asBoolean(false))
                .isTrue();
        assertThat(new InspectionReader(RULEBOOK.vocabulary())
                        .read("x", Files.readString(file))
                        .siteId())
                .isEqualTo(hostile);
    }

    @Test
    void keys_alone_lead_through_it_and_mark_what_is_heard() throws Exception {
        Observations observations = church().units().get(0).observations();
        browser.go(page);
        begin("chapel-lane", "P. Example");
        assertThat(browser.text("document.activeElement.tagName")).isEqualTo("H1");
        browser.key("Tab", "Tab", 9);
        assertThat(browser.text("document.activeElement.textContent")).isEqualTo("none");
        browser.enter();
        assertThat(heading()).isNotEqualTo(asked(observations).get(0).question().ask());

        from("cutoff-test-switches", asked(observations).get(1).question().id(), observations);
        sound("hearing");
        browser.value("document.querySelector('.marks button').focus()");
        browser.key("b", "KeyB", 66);
        browser.key("f", "KeyF", 70);
        browser.button("That was all");
        String kept = browser.text("localStorage.getItem(localStorage.key(0))");
        assertThat(kept).contains("burner-then-feeder").containsPattern("heard burner at 0\\.0 s, feeder at [0-9.]+ s");
    }

    /** The corpora of the reader of inspection files, word for word: what it takes and what it refuses. */
    @Test
    void quantities_are_read_as_the_engine_reads_them() throws Exception {
        browser.go(page);
        Set<String> known = new LinkedHashSet<>();
        browser.value("Object.keys(JSON.parse(document.getElementById('data').textContent).dimensions)")
                .values()
                .forEach(name -> known.add(name.asString()));
        int read = 0;
        for (String corpus : List.of("taken.txt", "refused.txt")) {
            for (String line : Files.readAllLines(CORPUS.resolve(corpus))) {
                String[] parts = line.split(" \\| ", 3);
                if (line.startsWith("#") || parts.length < 2 || !known.contains(parts[0])) {
                    continue;
                }
                String text = unescaped(parts[1]);
                Dimension dimension = Dimension.valueOf(parts[0]);
                String expected;
                try {
                    expected = exact(Quantity.parse(text, dimension)
                            .valueIn(Unit.of(dimension).get(0)));
                } catch (QuantityFormatException e) {
                    expected = "refused";
                }
                assertThat(browser.text(
                                "(() => { try { const read = gaugeglass.readQuantity(" + Browser.quoted(text) + ", '"
                                        + dimension + "'); return read.base.n + '/' + read.base.d; }"
                                        + " catch (refused) { return 'refused'; } })()"))
                        .as(line)
                        .isEqualTo(expected);
                read++;
            }
        }
        assertThat(read).isGreaterThan(100);
    }

    private static String exact(Rational value) {
        return value.numerator() + "/" + value.denominator();
    }

    /** The corpora are ASCII, with other characters by their numbers. */
    private static String unescaped(String text) {
        StringBuilder plain = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            if (text.startsWith("\\u", i)) {
                plain.append((char) Integer.parseInt(text.substring(i + 2, i + 6), 16));
                i += 5;
            } else {
                plain.append(text.charAt(i));
            }
        }
        return plain.toString();
    }
}
