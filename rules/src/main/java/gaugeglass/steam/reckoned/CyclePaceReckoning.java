package gaugeglass.steam.reckoned;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Seen;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.steam.observed.Burns.BurnTimes;
import gaugeglass.steam.reckon.Cycling;
import gaugeglass.steam.reckon.Cycling.Spell;
import gaugeglass.steam.reckon.Worked;
import java.util.ArrayList;
import java.util.List;

/**
 * How long the burns are and how often they come.
 *
 * <p>Unknown for want of another burn where there are fewer than two, or where two of them overlap.
 */
public final class CyclePaceReckoning implements Reckoning {
    private static final String BURN = "burn";

    /**
     * The pace of the burner.
     *
     * @param mean length of a burn
     * @param often burns an hour
     */
    @Item(
            id = "cycling.pace",
            look = "mean = (on + last) / n / sixty; cycles = (n - 1) / span x hour.",
            of = "boiler",
            stage = Stage.HOT,
            ask = "How long do the burns last, and how often do they come?")
    public record CyclePace(
            @Measured(unit = Unit.MINUTE, from = "0", to = "1440")
            Quantity mean,

            @Measured(unit = Unit.PER_HOUR, from = "0", to = "1000000000")
            Quantity often) {}

    @Override
    public Class<? extends Record> gives() {
        return CyclePace.class;
    }

    @Override
    public List<Class<? extends Record>> needs() {
        return List.of(BurnTimes.class);
    }

    @Override
    public List<CyclePace> work(Seen seen, String which) {
        List<Spell> spells = new ArrayList<>();
        for (BurnTimes burn : seen.each(BurnTimes.class)) {
            if (burn.out().isAtMost(burn.lit())) {
                throw seen.another(BURN, "one of them ends before it begins");
            }
            spells.add(new Spell(burn.lit().valueIn(Unit.SECOND), burn.out().valueIn(Unit.SECOND)));
        }
        if (spells.size() < 2) {
            throw seen.another(BURN, "a cycle ends where the next burn begins");
        }
        spells.sort((one, other) -> one.lit().compareTo(other.lit()));
        for (int i = 1; i < spells.size(); i++) {
            if (spells.get(i).lit().compareTo(spells.get(i - 1).out()) <= 0) {
                throw seen.another(BURN, "two of them overlap");
            }
        }
        Worked sheet = Cycling.watched(spells);
        return List.of(new CyclePace(sheet.quantity(Cycling.MEAN), sheet.quantity(Cycling.PER_HOUR_LINE)));
    }
}
