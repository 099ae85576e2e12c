package gaugeglass.steam.reckon;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Vocabulary;
import gaugeglass.steam.SteamTrade;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How each figure of a report is worked out is told, and where a sheet works it out, in the sheet's own formulas. */
class FormulasToldTest {
    private static final Vocabulary VOCABULARY = Vocabulary.of(new SteamTrade());

    private static String told(String item) {
        return VOCABULARY.item(item).orElseThrow().look();
    }

    private static Quantity of(long number, Unit unit) {
        return Quantity.of(number, unit);
    }

    private static void tells(String item, Worked sheet, String... lines) {
        for (String name : lines) {
            assertThat(sheet.lines())
                    .filteredOn(line -> line.what().equals(name))
                    .as(name)
                    .isNotEmpty()
                    .allSatisfy(line -> assertThat(told(item)).contains(line.formula()));
        }
    }

    @Test
    void everything_that_is_reckoned_says_how() {
        assertThat(VOCABULARY.items().stream().filter(ItemType::isReckoned)).hasSizeGreaterThan(50);
        assertThat(VOCABULARY.items().stream()
                        .filter(item -> item.isReckoned() && item.look().isBlank())
                        .map(ItemType::id))
                .as("each @Item that is reckoned says under look how it is worked out; reports print it")
                .isEmpty();
    }

    @Test
    void what_is_told_is_the_formula_of_the_sheet() {
        tells(
                "water-use.share",
                MakeUp.shareOfSteam(
                        of(40, Unit.GALLON),
                        of(280000, Unit.BTU_PER_HOUR),
                        of(1080, Unit.HOUR),
                        of(0, Unit.PSI),
                        Saturation.STANDARD_ATMOSPHERE),
                MakeUp.SHARE,
                "water used, by weight",
                "steam made");
        tells(
                "cycling.pace",
                Cycling.of(List.of(
                        new Cycling.Burn(LocalTime.of(6, 0), LocalTime.of(6, 5)),
                        new Cycling.Burn(LocalTime.of(6, 9), LocalTime.of(6, 14)))),
                Cycling.MEAN,
                Cycling.PER_HOUR_LINE);
        tells(
                "load.output-of-need",
                Load.oversize(
                        of(820, Unit.SQUARE_FOOT),
                        of(1, Unit.PSI),
                        Saturation.STANDARD_ATMOSPHERE,
                        of(280000, Unit.BTU_PER_HOUR)),
                Load.HEAT,
                Load.REQUIRED,
                Load.OVERSIZE);
        tells("water-use.scale", Deposits.scale(of(40, Unit.GALLON), of(8, Unit.GRAIN_PER_GALLON)), Deposits.SCALE);
        tells(
                "combustion.air-free",
                Combustion.airFreeCo(of(50, Unit.PARTS_PER_MILLION), of(6, Unit.PERCENT)),
                Combustion.AIR_FREE);
    }
}
