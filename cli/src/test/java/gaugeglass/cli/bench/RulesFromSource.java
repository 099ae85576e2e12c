package gaugeglass.cli.bench;

import gaugeglass.engine.Rulebook;
import gaugeglass.engine.build.RulebookBuild;
import gaugeglass.engine.build.RulebookSource;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.InspectionReader;
import gaugeglass.engine.reading.SourceText;
import gaugeglass.engine.vocabulary.Trade;
import java.nio.file.Path;

/**
 * Judges one inspection with rules compiled in the same run: what {@code gaugeglass assess} would cost without the build
 * having compiled them. Printing is left out, which is in its favour.
 */
public final class RulesFromSource {
    private RulesFromSource() {}

    /**
     * Compiles, reads, judges, and prints how many outcomes there were.
     *
     * @param args folder of the rulebook's sources, the trade's class, an inspection file
     * @throws ReflectiveOperationException when there is no such trade
     */
    public static void main(String[] args) throws ReflectiveOperationException {
        Trade trade = Class.forName(args[1])
                .asSubclass(Trade.class)
                .getDeclaredConstructor()
                .newInstance();
        var built = RulebookBuild.build(
                "benchmark", "0", "gaugeglass.bench.compiled", trade, RulebookSource.files(Path.of(args[0])));
        Rulebook rulebook = Rulebook.of(built.stored(), built.loader());
        Inspection inspection =
                new InspectionReader(rulebook.vocabulary()).read(args[2], SourceText.read(Path.of(args[2])));
        int outcomes = 0;
        for (Inspection.Visited visited : inspection.units()) {
            outcomes += rulebook.assess(visited.observations(), inspection.date())
                    .outcomes()
                    .size();
        }
        System.out.println(outcomes + " outcomes");
    }
}
