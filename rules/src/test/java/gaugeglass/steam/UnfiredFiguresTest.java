package gaugeglass.steam;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.book.Basis;
import gaugeglass.engine.book.Limit;
import gaugeglass.engine.book.Source;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.steam.proof.SteamProof;
import java.time.Period;
import org.junit.jupiter.api.Test;

/** The figures that decide what is judged before anything is fired, beside the documents they come from. */
class UnfiredFiguresTest {
    private static Limit limit(String id) {
        return SteamProof.stored().book().limits().get(id);
    }

    /** 2018 International Residential Code, Appendix D, D.2 (4): 20 percent of the lower explosive limit or greater. */
    @Test
    void a_fifth_of_the_explosive_limit_empties_the_building() {
        assertThat(limit("site.gas-share-of-lel").quantity()).isEqualTo(Quantity.of(20, Unit.PERCENT));
    }

    /** 2018 International Residential Code, Appendix D, D.2 (3): below 30 ppm the inspection can continue. */
    @Test
    void thirty_ppm_of_carbon_monoxide_end_the_work() {
        assertThat(limit("site.co-appliances-off").quantity()).isEqualTo(Quantity.of(30, Unit.PARTS_PER_MILLION));
    }

    /** From memory, medium certainty: 70 ppm, same appendix. It must not be what a stop stands on. */
    @Test
    void the_level_for_leaving_is_not_passed_off_as_read_and_no_stop_needs_it() {
        Limit leave = limit("site.co-leave");
        assertThat(leave.quantity()).isEqualTo(Quantity.of(70, Unit.PARTS_PER_MILLION));
        assertThat(leave.basis()).isEqualTo(Basis.OURS);
        assertThat(leave.sources()).noneMatch(source -> source.known() == Source.Known.READ);
        assertThat(limit("site.co-appliances-off").quantity()).isLessThan(leave.quantity());
    }

    /** 40 CFR 50.8: 9 ppm over eight hours (from memory, high certainty). */
    @Test
    void nine_ppm_over_outdoors_are_left_alone() {
        assertThat(limit("site.co-over-outdoors").quantity()).isEqualTo(Quantity.of(9, Unit.PARTS_PER_MILLION));
    }

    /** New Jersey boiler rules: 18 in clear for service. */
    @Test
    void eighteen_inches_are_kept_clear() {
        assertThat(limit("site.service-clearance").quantity())
                .isEqualTo(Quantity.of(18, Unit.INCH))
                .isEqualTo(Quantity.of("1.5", Unit.FOOT));
    }

    /** ASME Boiler and Pressure Vessel Code, Section IV, HG-401.1: 15 psi (from memory, high certainty). */
    @Test
    void no_safety_valve_is_set_above_fifteen_pounds() {
        assertThat(limit("relief.highest-set-pressure").quantity()).isEqualTo(Quantity.of(15, Unit.PSI));
    }

    /** UFC 3-430-07: pressure test yearly, lever weekly; National Board, second-hand: yearly and quarterly. */
    @Test
    void safety_valves_are_proved_yearly_and_lifted_at_an_interval_within_what_is_in_print() {
        assertThat(limit("relief.pressure-interval").period()).isEqualTo(Period.ofYears(1));
        assertThat(limit("relief.lever-interval").period().toTotalMonths()).isZero();
        assertThat(limit("relief.lever-interval").period().getDays()).isBetween(7, 92);
    }

    /** Published steam-boiler examples take 80 % of 400,000 Btu/h for an output of 320,000. Common practice. */
    @Test
    void output_is_taken_as_four_fifths_of_input() {
        assertThat(limit("plate.output-of-input").quantity()).isEqualTo(Quantity.of(80, Unit.PERCENT));
    }
}
