package gaugeglass.steam;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.reading.Form;
import gaugeglass.engine.reading.NodeReader;
import gaugeglass.engine.text.Mistake;
import gaugeglass.steam.proof.MutantProof;
import gaugeglass.steam.proof.SteamProof;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Every rule is broken in every small way, one at a time, and some scenario of its card must notice. */
class MutantsTest {
    private static final Path LISTED = Path.of("src/test/resources/surviving-mutants.yaml");

    @Test
    void every_broken_rule_is_noticed_by_a_scenario() throws IOException {
        Map<String, String> listed = listed();
        // With -Dmutants=TEXT only those of rules whose name has the text.
        String wanted = System.getProperty("mutants", "");
        listed.keySet().removeIf(title -> !title.contains(wanted));
        MutantProof.Result result = MutantProof.run(SteamProof.texts(), SteamProof.scenarios(), wanted);
        System.out.println("mutants: " + result.tried() + " run, "
                + result.survivors().size() + " survive, " + result.uncompiled().size() + " are no rules");
        result.uncompiled().forEach(one -> System.out.println("  no rule: " + one));

        TreeSet<String> unlisted = new TreeSet<>(result.survivors());
        unlisted.removeAll(listed.keySet());
        assertThat(unlisted)
                .as("broken rules that no scenario notices, as \"rule: change\"; write a scenario that differs in that"
                        + " one answer, or list it with its reason in surviving-mutants.yaml")
                .isEmpty();
        TreeSet<String> stale = new TreeSet<>(listed.keySet());
        stale.removeAll(result.survivors());
        assertThat(stale)
                .as("listed in surviving-mutants.yaml, but noticed by a scenario now, or no mutant any more")
                .isEmpty();
    }

    private static Map<String, String> listed() throws IOException {
        List<Mistake> mistakes = new ArrayList<>();
        Form form = Form.of(
                LISTED.toString(),
                "",
                NodeReader.read(LISTED.toString(), Files.readString(LISTED), mistakes),
                mistakes);
        Map<String, String> listed = new TreeMap<>();
        for (Form one : form.forms("survivors")) {
            listed.put(one.text("mutant"), one.text("because"));
            one.close();
        }
        form.close();
        assertThat(mistakes).as("what is wrong in the list").isEmpty();
        return listed;
    }
}
