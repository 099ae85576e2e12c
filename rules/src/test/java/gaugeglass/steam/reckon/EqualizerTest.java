package gaugeglass.steam.reckon;

import static gaugeglass.engine.quantity.Unit.BTU_PER_HOUR;
import static gaugeglass.engine.quantity.Unit.INCH;
import static gaugeglass.engine.quantity.Unit.POUND_PER_HOUR;
import static gaugeglass.engine.quantity.Unit.STEAM_HORSEPOWER;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EqualizerTest {

    /** District of Columbia mechanical code, Table 1007.2: to 250 lb/h 1 1/2 in, 251 to 2000 2 1/2 in, above 4 in. */
    @ParameterizedTest
    @CsvSource({"1, 1.5", "250, 1.5", "251, 2.5", "2000, 2.5", "2001, 4", "20000, 4"})
    void the_table_gives_the_size(int poundsPerHour, String inches) {
        assertThat(Equalizer.leastSize(Quantity.of(poundsPerHour, POUND_PER_HOUR)))
                .isEqualTo(Quantity.of(inches, INCH));
    }

    /** Ours: the table says nothing of what lies between its rows, so the larger pipe is asked for. */
    @Test
    void between_two_rows_the_larger_size_is_asked_for() {
        assertThat(Equalizer.leastSize(Quantity.of("250.001", POUND_PER_HOUR))).isEqualTo(Quantity.of("2.5", INCH));
    }

    /** US DOE Steam Tip Sheet 16: one boiler horsepower is 33,475 Btu/h; common knowledge: 34.5 lb/h from and at 212 F. */
    @Test
    void a_boiler_horsepower_makes_34_and_a_half_pounds_an_hour() {
        assertThat(Equalizer.steam(Quantity.of(33_475, BTU_PER_HOUR))).isEqualTo(Quantity.of("34.5", POUND_PER_HOUR));
        assertThat(Equalizer.steam(Quantity.of(10, STEAM_HORSEPOWER))).isEqualTo(Quantity.of(345, POUND_PER_HOUR));
    }

    /** IAPWS-IF97: steam at 0 psig takes 970.1 Btu/lb from water at 212 F. */
    @Test
    void steam_from_and_at_212_agrees_with_the_steam_table() {
        double pounds = Equalizer.steam(Quantity.of(970_100, BTU_PER_HOUR))
                .in(Unit.POUND_PER_HOUR)
                .doubleValue();
        assertThat(pounds).isCloseTo(1000, within(1.0));
    }

    @Test
    void what_lies_outside_the_table_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Equalizer.leastSize(Quantity.of(20_001, POUND_PER_HOUR)))
                .withMessage("steam of 20001 lb/h; expected 0 lb/h to 20000 lb/h");
    }
}
