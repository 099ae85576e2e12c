package gaugeglass.cli.fleet;

import gaugeglass.cli.visit.Judged;
import gaugeglass.engine.Assessment;
import gaugeglass.engine.Assessment.Finding;
import gaugeglass.engine.Assessment.Outcome;
import gaugeglass.engine.Assessment.Permit;
import gaugeglass.engine.Assessment.Wanting;
import gaugeglass.engine.Assessment.Word;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.book.Card;
import gaugeglass.engine.book.Limit;
import gaugeglass.engine.book.Urgency;
import gaugeglass.engine.observation.Subjects;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.steam.reckoned.GrossOutputReckoning;
import gaugeglass.steam.reckoned.MakeUpYear;
import gaugeglass.steam.reckoned.WaterUsed;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Makes summaries of judged visits; used by any number of threads at once. */
public final class Summing {
    private final Rulebook rulebook;
    final Numbers practices = new Numbers();
    final Numbers items = new Numbers();

    public Summing(Rulebook rulebook) {
        this.rulebook = rulebook;
        for (Card card : rulebook.book().cards().values()) {
            if (!card.sign()) {
                practices.of(card.id());
            }
        }
        // All that an answer can be missing to; filled here, as many threads read it later.
        for (ItemType item : rulebook.vocabulary().items()) {
            items.of(item.id());
        }
        for (Kind kind : rulebook.vocabulary().kinds()) {
            if (kind.isCounted()) {
                items.of(kind.countId());
            }
            items.of(kind.id());
        }
    }

    /** What is counted of a visit. */
    public Summary of(Judged.Visit visit) {
        List<Summary.Unit> units = new ArrayList<>();
        for (Judged.Unit unit : visit.units()) {
            units.add(unit(unit, visit.inspection().date()));
        }
        return new Summary(
                visit.inspection().siteId(),
                visit.inspection().siteName(),
                visit.inspection().date(),
                visit.date(),
                units);
    }

    private Summary.Unit unit(Judged.Unit unit, LocalDate visited) {
        Assessment assessment = unit.assessment();
        byte[] words = new byte[practices.size()];
        Arrays.fill(words, (byte) -1);
        for (Outcome outcome : assessment.outcomes()) {
            // What is found of one of several is found; the words are in that order.
            int practice = practices.known(outcome.rule());
            int word = outcome.outcome().ordinal();
            words[practice] = (byte) (words[practice] < 0 ? word : Math.min(words[practice], word));
        }
        Map<Integer, Urgency> worst = new TreeMap<>();
        char[] counts = new char[Urgency.values().length];
        for (Finding finding : assessment.findings()) {
            int practice = practices.known(finding.rule());
            words[practice] = (byte) Word.FOUND.ordinal();
            if (finding.isStanding()) {
                worst.merge(practice, finding.urgency(), (a, b) -> a.isAbove(b) ? a : b);
                counts[finding.urgency().ordinal()]++;
            }
        }
        char[] found = new char[worst.size()];
        int next = 0;
        for (Map.Entry<Integer, Urgency> one : worst.entrySet()) {
            found[next++] = Found.of(one.getKey(), one.getValue());
        }
        return new Summary.Unit(
                assessment.unit(),
                permit(assessment.testFiring().permit()),
                permit(assessment.release().permit()),
                found,
                counts,
                words,
                open(assessment),
                rulebook.due(unit.visited().observations()),
                // The year is that of the visit, for whatever day it is judged.
                MakeUpYear.of(
                        unit.visited().observations(),
                        limit(GrossOutputReckoning.SHARE),
                        visited,
                        limit(WaterUsed.LOOK_BACK)));
    }

    /** The limits in force. */
    Map<String, Limit> limits() {
        return rulebook.book().limits();
    }

    private Quantity limit(String id) {
        return limits().get(id).quantity();
    }

    private static int permit(Permit permit) {
        return permit.ordinal();
    }

    private List<Summary.Open> open(Assessment assessment) {
        Map<Integer, Summary.Open> open = new TreeMap<>();
        for (Wanting wanting : assessment.wanting()) {
            int item = items.known(wanting.answer().item());
            boolean isUnread = !wanting.answer().reason().isEmpty()
                    && !wanting.answer().subject().equals(Subjects.NOT_LISTED);
            open.merge(
                    item,
                    new Summary.Open(item, isUnread, wanting.holdsGate()),
                    (a, b) -> new Summary.Open(item, a.isUnread() && b.isUnread(), a.holdsGate() || b.holdsGate()));
        }
        return List.copyOf(open.values());
    }
}
