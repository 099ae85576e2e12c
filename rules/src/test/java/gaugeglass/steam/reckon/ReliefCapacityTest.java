package gaugeglass.steam.reckon;

import static gaugeglass.engine.quantity.Unit.BTU_PER_HOUR;
import static gaugeglass.engine.quantity.Unit.KILOWATT;
import static gaugeglass.engine.quantity.Unit.POUND_PER_HOUR;
import static gaugeglass.engine.quantity.Unit.SQUARE_FOOT;
import static gaugeglass.engine.quantity.Unit.SQUARE_METRE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.steam.reckon.ReliefCapacity.Tubes;
import org.junit.jupiter.api.Test;

class ReliefCapacityTest {

    /** New York code rule 4, 4-5.2: output in Btu/h over 1000. An input of 400,000 at 80 % is an output of 320,000. */
    @Test
    void an_input_of_400_000_at_80_percent_needs_320_pounds_an_hour() {
        Quantity output = Quantity.of(400_000, BTU_PER_HOUR).times(4).dividedBy(5);
        assertThat(ReliefCapacity.byOutput(output)).isEqualTo(Quantity.of(320, POUND_PER_HOUR));
    }

    /** New York code rule 4, 4-5.2, oil or gas: 8 lb/h for each square foot of a firetube boiler, 10 of a watertube. */
    @Test
    void sixty_square_feet_of_firetube_need_480_pounds_an_hour_and_of_watertube_600() {
        Quantity surface = Quantity.of(60, SQUARE_FOOT);
        assertThat(ReliefCapacity.bySurface(surface, Tubes.FIRE)).isEqualTo(Quantity.of(480, POUND_PER_HOUR));
        assertThat(ReliefCapacity.bySurface(surface, Tubes.WATER)).isEqualTo(Quantity.of(600, POUND_PER_HOUR));
    }

    @Test
    void what_it_is_written_in_makes_no_difference() {
        Quantity output = Quantity.of(320_000, BTU_PER_HOUR);
        assertThat(ReliefCapacity.byOutput(output.inUnit(KILOWATT))).isEqualTo(ReliefCapacity.byOutput(output));
        Quantity surface = Quantity.of(60, SQUARE_FOOT);
        assertThat(ReliefCapacity.bySurface(surface.inUnit(SQUARE_METRE), Tubes.FIRE))
                .isEqualTo(ReliefCapacity.bySurface(surface, Tubes.FIRE));
    }

    @Test
    void what_lies_outside_the_ranges_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ReliefCapacity.byOutput(Quantity.of(20_000_001, BTU_PER_HOUR)))
                .withMessage("gross output of 20000001 Btu/h; expected 0 Btu/h to 20000000 Btu/h");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ReliefCapacity.bySurface(Quantity.of(-1, SQUARE_FOOT), Tubes.FIRE));
        assertThatIllegalArgumentException().isThrownBy(() -> ReliefCapacity.byOutput(Quantity.of(1, SQUARE_FOOT)));
    }
}
