package gaugeglass.steam.proof;

import gaugeglass.engine.Assessment;
import gaugeglass.engine.Assessment.Word;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.InspectionReader;
import gaugeglass.engine.observation.Observations;

/** An invented visit to one boiler, of which a test tells only what matters to it, and the rulebook as the build left it. */
public final class OneBoiler {
    public static final Rulebook RULEBOOK = Rulebook.load(OneBoiler.class.getClassLoader());

    private OneBoiler() {}

    /** A visit on 2026-09-14. */
    public static Inspection visit(String boiler) {
        return visit("", "", boiler);
    }

    /**
     * The same.
     *
     * @param site what the site says besides its id, behind a comma; may be empty
     * @param before keys of the file that stand before the boilers, each on a line; may be empty
     * @param boiler the boiler's own keys
     */
    public static Inspection visit(String site, String before, String boiler) {
        return InspectionReader.read(
                RULEBOOK.vocabulary(),
                "visit",
                "format: 1\nsite: {id: invented" + site + "}\nvisit: {date: 2026-09-14}\n" + before
                        + "boilers:\n  - id: B1\n" + boiler.indent(4));
    }

    /** What was seen of the boiler. */
    public static Observations seen(Inspection visit) {
        return visit.units().get(0).observations();
    }

    public static Assessment assess(String boiler) {
        return assess(visit(boiler));
    }

    public static Assessment assess(Inspection visit) {
        return RULEBOOK.assess(seen(visit), visit.date());
    }

    /** What became of a check that is about the boiler, or of the first of its subjects. */
    public static Word word(Assessment assessment, String rule) {
        return assessment.outcomes().stream()
                .filter(outcome -> outcome.rule().equals(rule))
                .findFirst()
                .orElseThrow()
                .outcome();
    }
}
