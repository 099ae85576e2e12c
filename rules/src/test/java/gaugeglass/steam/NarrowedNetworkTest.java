package gaugeglass.steam;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.book.Book;
import gaugeglass.engine.book.RuleEntry;
import gaugeglass.engine.build.MadeUpVisits;
import gaugeglass.engine.build.Scenario;
import gaugeglass.engine.drools.Judges;
import gaugeglass.engine.drools.Verdict;
import gaugeglass.engine.facts.Facts;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Vocabulary;
import gaugeglass.steam.proof.SteamProof;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;

/**
 * A network of only the rules that a visit can match sees what the network of all rules sees: for one visit the first is
 * made, for many the second.
 */
class NarrowedNetworkTest {
    private static final LocalDate DAY = LocalDate.of(2026, 9, 14);
    private static final ClassLoader LOADER = NarrowedNetworkTest.class.getClassLoader();

    private final Book book = SteamProof.stored().book();
    private final Vocabulary vocabulary = SteamProof.stored().vocabulary();
    private final List<Reckoning> reckonings = new SteamTrade().reckonings();
    private final Judges whole = Judges.of(book.models(), book.rules(), LOADER);
    private int found;

    @Test
    void it_sees_every_match_of_every_scenario() {
        for (Scenario scenario : SteamProof.scenarios()) {
            compare(scenario.given(), scenario.date(), scenario.title());
        }
        assertThat(found).as("matches compared").isGreaterThan(300);
    }

    @Test
    void it_sees_every_match_of_visits_made_up_at_random() {
        MadeUpVisits visits = new MadeUpVisits(vocabulary, book.allLimits(), DAY, 7);
        for (int i = 0; i < 60; i++) {
            compare(visits.next((i % 4 + 1) / 4.0, i % 3 == 0 ? 0.2 : 0), DAY, "visit " + i);
        }
        assertThat(found).as("matches compared").isGreaterThan(300);
    }

    private void compare(Observations visit, LocalDate date, String title) {
        Judges narrowed = Judges.forOne(
                book.models(), CompletableFuture.completedFuture(book.rules()), Map.of(), LOADER, Runnable::run);
        for (State state : State.values()) {
            Facts facts = Facts.of(visit, state, date, book.allLimits(), reckonings);
            List<Verdict> expected = whole.judge(facts, this::about);
            List<Verdict> seen = narrowed.judge(facts, this::about);
            assertThat(seen).as(title).hasSameSizeAs(expected);
            for (int i = 0; i < seen.size(); i++) {
                Verdict one = seen.get(i);
                Verdict other = expected.get(i);
                assertThat(one.rule()).isEqualTo(other.rule());
                assertThat(one.subject()).isEqualTo(other.subject());
                assertThat(one.outcome()).as("%s: %s", title, one.rule().name()).isEqualTo(other.outcome());
                assertThat(new HashSet<>(one.evidence())).as(title).isEqualTo(new HashSet<>(other.evidence()));
                assertThat(one.missing()).as(title).isEqualTo(other.missing());
                found += one.evidence().size();
            }
        }
    }

    /** The counted kind that a rule's card is about; nothing where it is about the boiler. */
    private String about(RuleEntry rule) {
        String about = book.card(rule.card()).about();
        return about.equals(vocabulary.unit().id()) ? "" : about;
    }
}
