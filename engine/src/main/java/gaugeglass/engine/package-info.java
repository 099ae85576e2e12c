/**
 * Observations in, outcomes and ranked findings out; knows no trade.
 *
 * <p>A program loads a rulebook once, reads what was seen, and has it judged. Nothing is kept between two calls, and any
 * number of threads may use one rulebook:
 *
 * <pre>{@code
 * Rulebook rulebook = Rulebook.load(loader);
 * Inspection inspection = InspectionReader.read(rulebook.vocabulary(), "visit.yaml", text);
 * for (Inspection.Visited unit : inspection.units()) {
 *     Assessment assessment = rulebook.assess(unit.observations(), inspection.date());
 *     say(unit.id() + ": " + assessment.testFiring().permit().word());
 *     for (Assessment.Finding finding : assessment.findings()) {
 *         say(finding.urgency().word() + " " + finding.rule() + ": " + finding.title());
 *     }
 *     for (Assessment.Wanting wanting : assessment.wanting()) {
 *         say("wanting " + wanting.answer().item());
 *     }
 * }
 * }</pre>
 *
 * <p>What was seen need not come from a file: {@link gaugeglass.engine.observation.Observations} has a builder. A visit
 * is judged anew after each answer; that is quick enough to do while somebody types.
 */
@NullMarked
package gaugeglass.engine;

import org.jspecify.annotations.NullMarked;
