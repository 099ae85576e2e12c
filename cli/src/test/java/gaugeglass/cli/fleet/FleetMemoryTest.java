package gaugeglass.cli.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.cli.visit.Judged;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.InspectionReader;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.reading.SourceText;
import gaugeglass.steam.reckoned.MakeUpYear;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What a fleet keeps, weighed: little for each boiler, and nothing for each visit. */
class FleetMemoryTest {
    private static final Path VISIT = Path.of("../docs/examples/neglected-hall.yaml");
    private static final int MANY = 100_000;
    private static final int MOST_BYTES = 1024;

    /** As many as are kept; the visit itself has no meter. */
    private static final List<MakeUpYear> YEARS = IntStream.range(0, WaterYears.MOST)
            .mapToObj(ago -> new MakeUpYear(
                    LocalDate.of(2026 - ago, 9, 14), 365, Quantity.of(60, Unit.GALLON), Optional.empty()))
            .toList();

    private final Rulebook rulebook = Rulebook.load(getClass().getClassLoader());
    private final Summing summing = new Summing(rulebook);
    private final Fleet fleet = new Fleet(summing);

    private Summary hall() {
        Inspection inspection =
                new InspectionReader(rulebook.vocabulary()).read(VISIT.toString(), SourceText.read(VISIT));
        List<Judged.Unit> units = inspection.units().stream()
                .map(one -> new Judged.Unit(one, rulebook.assess(one.observations(), inspection.date())))
                .toList();
        return summing.of(new Judged.Visit(VISIT.toString(), inspection, inspection.date(), units));
    }

    /** Nothing in it is shared with another one, as with visits that were read. */
    private static Summary another(Summary one, int site) {
        return new Summary(
                "site-" + site,
                "The hall of place " + site,
                one.visited(),
                one.date(),
                one.units().stream()
                        .map(unit -> new Summary.Unit(
                                new String(unit.id().toCharArray()),
                                unit.testFiring(),
                                unit.release(),
                                unit.found().clone(),
                                unit.counts().clone(),
                                unit.words(),
                                unit.open(),
                                unit.due(),
                                YEARS))
                        .toList());
    }

    private static long heap() throws InterruptedException {
        for (int i = 0; i < 3; i++) {
            System.gc();
            Thread.sleep(20);
        }
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }

    @Test
    void a_hundred_thousand_boilers_take_less_than_a_kibibyte_each() throws InterruptedException {
        Summary hall = hall();
        long before = heap();
        for (int i = 0; i < MANY; i++) {
            fleet.add(another(hall, i));
        }
        long each = (heap() - before) / MANY;

        assertThat(fleet.sites).hasSize(MANY);
        assertThat(each).isBetween(100L, (long) MOST_BYTES);
    }

    @Test
    void a_hundred_thousand_visits_to_the_same_boilers_take_nothing() throws InterruptedException {
        Summary hall = hall();
        for (int i = 0; i < 10; i++) {
            fleet.add(another(hall, i));
        }
        long before = heap();
        for (int i = 0; i < MANY; i++) {
            fleet.add(another(hall, i % 10));
        }

        assertThat(fleet.visits).isEqualTo(MANY + 10);
        assertThat(heap() - before).isLessThan(MANY);
    }
}
