package gaugeglass.cli.pack;

import gaugeglass.cli.visit.Judge;
import gaugeglass.cli.visit.Judged;
import gaugeglass.cli.visit.Sources;
import gaugeglass.cli.visit.Task;
import gaugeglass.engine.Assessment;
import gaugeglass.engine.Assessment.Finding;
import gaugeglass.engine.Assessment.Outcome;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Words;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Past inspections judged by two rulebooks, each for its own day, and what comes out otherwise. */
public final class Replay {
    private final Judge before;
    private final Judge after;
    private boolean whole = true;

    public Replay(Rulebook before, Rulebook after) {
        this.before = new Judge(before, Optional.empty());
        this.after = new Judge(after, Optional.empty());
    }

    /** Whether every inspection could be used. */
    public boolean isWhole() {
        return whole;
    }

    /** A line for each outcome that differs, and a closing one. */
    public List<String> of(List<String> words, InputStream in) {
        List<String> lines = new ArrayList<>();
        int judged = 0;
        int differing = 0;
        try (Sources sources = new Sources(words, false, in)) {
            while (sources.hasNext()) {
                Task task = sources.next();
                Judged one = before.judge(task);
                Judged other = after.judge(task);
                if (one instanceof Judged.Visit first && other instanceof Judged.Visit second) {
                    judged++;
                    int had = lines.size();
                    for (int i = 0; i < first.units().size(); i++) {
                        differences(
                                first.name() + ", "
                                        + first.units().get(i).visited().id(),
                                first.units().get(i).assessment(),
                                second.units().get(i).assessment(),
                                lines);
                    }
                    differing += lines.size() > had ? 1 : 0;
                } else {
                    whole = false;
                    Judged bad = one instanceof Judged.Visit ? other : one;
                    if (bad instanceof Judged.Unusable unusable) {
                        for (Mistake mistake : unusable.mistakes()) {
                            lines.add(mistake.message());
                        }
                    } else {
                        lines.add(bad.name() + ": a fault of the program, and no verdict");
                    }
                }
            }
        }
        lines.add(judged + (judged == 1 ? " inspection" : " inspections") + " judged twice, " + differing
                + " with another outcome");
        return lines;
    }

    private static void differences(String name, Assessment before, Assessment after, List<String> lines) {
        gate(name, "test firing", before.testFiring(), after.testFiring(), lines);
        gate(name, "release", before.release(), after.release(), lines);
        Map<String, String> was = told(before);
        Map<String, String> is = told(after);
        was.forEach((key, text) -> {
            String now = is.getOrDefault(key, "no longer checked");
            if (!now.equals(text)) {
                lines.add(name + ": " + key + ": " + text + " becomes " + now);
            }
        });
        is.forEach((key, text) -> {
            if (!was.containsKey(key)) {
                lines.add(name + ": " + key + ": newly checked, " + text);
            }
        });
    }

    private static void gate(
            String name, String what, Assessment.Gate before, Assessment.Gate after, List<String> lines) {
        if (before.permit() != after.permit()) {
            lines.add(name + ": " + what + ": " + Words.spoken(before.permit()) + " becomes "
                    + Words.spoken(after.permit()));
        }
    }

    private static Map<String, String> told(Assessment assessment) {
        Map<String, String> told = new LinkedHashMap<>();
        for (Outcome outcome : assessment.outcomes()) {
            told.put(key(outcome.rule(), outcome.subject()), Words.spoken(outcome.outcome()));
        }
        for (Finding finding : assessment.findings()) {
            told.put(
                    key(finding.rule(), finding.subject()),
                    "found " + finding.band() + " (" + finding.urgency().word() + ", " + Words.spoken(finding.state())
                            + ")");
        }
        for (Assessment.Waived waived : assessment.waived()) {
            told.put(key(waived.finding().rule(), waived.finding().subject()), "found, and waived");
        }
        return told;
    }

    private static String key(String rule, String subject) {
        return subject.isEmpty() ? rule : rule + ":" + subject;
    }
}
