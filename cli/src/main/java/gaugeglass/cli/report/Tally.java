package gaugeglass.cli.report;

import gaugeglass.engine.Assessment;
import gaugeglass.engine.Assessment.Finding;
import gaugeglass.engine.book.Urgency;
import java.util.EnumMap;
import java.util.Map;

/** How many findings of which urgency stand, and how many were put right. */
record Tally(Map<Urgency, Integer> byUrgency, int putRight) {

    static Tally of(Assessment assessment) {
        Map<Urgency, Integer> byUrgency = new EnumMap<>(Urgency.class);
        int putRight = 0;
        for (Finding finding : assessment.findings()) {
            if (finding.isStanding()) {
                byUrgency.merge(finding.urgency(), 1, Integer::sum);
            } else {
                putRight++;
            }
        }
        return new Tally(byUrgency, putRight);
    }

    int standing(Urgency urgency) {
        return byUrgency.getOrDefault(urgency, 0);
    }
}
