package gaugeglass.steam.reckon;

import static gaugeglass.engine.quantity.Unit.BTU_PER_HOUR;
import static gaugeglass.engine.quantity.Unit.CUBIC_FOOT_PER_MINUTE;
import static gaugeglass.engine.quantity.Unit.SQUARE_FOOT;
import static gaugeglass.engine.quantity.Unit.SQUARE_INCH;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.steam.proof.SteamProof;
import org.junit.jupiter.api.Test;

class CombustionAirTest {
    private static Quantity limit(String id) {
        return SteamProof.stored().book().limits().get(id).quantity();
    }

    /** North Carolina, 13 NCAC 13 .0419: 1 in2 of free area for each 2000 Btu/h. */
    @Test
    void two_thousand_btu_an_hour_need_a_square_inch() {
        Quantity perMillion = limit("site.air-area-per-million");
        assertThat(CombustionAir.needed(Quantity.of(2000, BTU_PER_HOUR), perMillion))
                .isEqualTo(Quantity.of(1, SQUARE_INCH));
        assertThat(CombustionAir.needed(Quantity.of(400_000, BTU_PER_HOUR), perMillion))
                .isEqualTo(Quantity.of(200, SQUARE_INCH));
    }

    /** North Carolina, 13 NCAC 13 .0419: or 0.2 ft3/min for each 1000 Btu/h by fan. */
    @Test
    void a_thousand_btu_an_hour_need_a_fifth_of_a_cubic_foot_a_minute() {
        assertThat(CombustionAir.needed(Quantity.of(1000, BTU_PER_HOUR), limit("site.air-flow-per-million")))
                .isEqualTo(Quantity.of("0.2", CUBIC_FOOT_PER_MINUTE));
    }

    @Test
    void what_lies_outside_the_range_is_refused() {
        Quantity perMillion = limit("site.air-area-per-million");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CombustionAir.needed(Quantity.of(50_000_001, BTU_PER_HOUR), perMillion));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CombustionAir.needed(Quantity.of(1, SQUARE_FOOT), perMillion));
    }
}
