package gaugeglass.steam.reckon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import com.hummeling.if97.IF97;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.steam.reckon.Cycling.Burn;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Reckonings over their whole range: against a reference library where there is one, else what must hold everywhere. */
class ReckoningSweepsTest {
    private static final Quantity SEA_LEVEL = Saturation.STANDARD_ATMOSPHERE;
    private static final double PASCALS_PER_PSI = 6894.757293168;

    /** Latent heat and volume against IAPWS-IF97 asked directly, from deep vacuum to the end of the range. */
    @Test
    void latent_heat_and_volume_follow_the_reference_library() throws Exception {
        IF97 table = new IF97(IF97.UnitSystem.SI);
        for (int tenths = -140; tenths <= 2250; tenths += 5) {
            Quantity gauge = Quantity.of(tenths, Unit.PSI).dividedBy(10);
            double pascals = 101_325 + tenths / 10.0 * PASCALS_PER_PSI;
            double latent =
                    (table.specificEnthalpySaturatedVapourP(pascals) - table.specificEnthalpySaturatedLiquidP(pascals))
                            / 2326;
            double volume = table.specificVolumeSaturatedVapourP(pascals) / (0.028316846592 / 0.45359237);
            assertThat(number(Saturation.latentHeat(gauge, SEA_LEVEL), Unit.BTU_PER_POUND))
                    .isCloseTo(latent, within(0.051));
            assertThat(number(Saturation.steamVolume(gauge, SEA_LEVEL), Unit.CUBIC_FOOT_PER_POUND))
                    .isCloseTo(volume, within(0.0051));
        }
    }

    /** Clapeyron: hfg = T (vg - vf) dp/dT ties latent heat to volume and temperature, whatever the formulation. */
    @Test
    void temperature_latent_heat_and_volume_go_together() {
        for (int psi = 0; psi <= 30; psi++) {
            double below = kelvins(psi - 0.5);
            double above = kelvins(psi + 0.5);
            double volume =
                    number(Saturation.steamVolume(Quantity.of(psi, Unit.PSI), SEA_LEVEL), Unit.CUBIC_METRE_PER_KILOGRAM)
                            - 0.00105;
            double latent = (below + above) / 2 * volume * PASCALS_PER_PSI / (above - below) / 1000;
            double found =
                    number(Saturation.latentHeat(Quantity.of(psi, Unit.PSI), SEA_LEVEL), Unit.KILOJOULE_PER_KILOGRAM);
            // The temperatures are rounded to 0.01 F over a step of some 3 F.
            assertThat(found).as("%s psi", psi).isCloseTo(latent, within(found * 0.006));
        }
    }

    @Test
    void more_oxygen_means_more_air_free_carbon_monoxide_and_more_loss() {
        Quantity last = Quantity.of(-1, Unit.PARTS_PER_MILLION);
        Quantity lastAir = Quantity.of(-1, Unit.PERCENT);
        Quantity lastLoss = Quantity.of(-1, Unit.PERCENT);
        Quantity lastCo2 = Quantity.of(100, Unit.PERCENT);
        for (int tenths = 0; tenths < 209; tenths++) {
            Quantity oxygen = Quantity.of(Rational.of(tenths, 10), Unit.PERCENT);
            Quantity co = Combustion.airFreeCo(Quantity.of(100, Unit.PARTS_PER_MILLION), oxygen)
                    .result();
            Quantity air = Combustion.excessAir(Fuel.OIL_2, oxygen).result();
            Quantity co2 = Combustion.expectedCarbonDioxide(Fuel.OIL_2, oxygen).result();
            Quantity loss = Combustion.stackLoss(
                            Fuel.OIL_2, Quantity.of(400, Unit.FAHRENHEIT), Quantity.of(70, Unit.FAHRENHEIT), oxygen)
                    .result();
            assertThat(co).isGreaterThan(last).isGreaterThanOrEqualTo(Quantity.of(100, Unit.PARTS_PER_MILLION));
            assertThat(air).isGreaterThan(lastAir);
            assertThat(loss).isGreaterThan(lastLoss);
            assertThat(co2).isLessThan(lastCo2);
            // Excess air the long way round: dilution of CO2 by air, which has none.
            double most = number(Fuel.OIL_2.mostCarbonDioxide(), Unit.PERCENT) / 100;
            double now = number(co2, Unit.PERCENT) / 100;
            double dryPerAir = 0.79 / (1 - most);
            assertThat(number(air, Unit.TIMES)).isCloseTo((most / now - 1) * dryPerAir, within(1e-9));
            last = co;
            lastAir = air;
            lastLoss = loss;
            lastCo2 = co2;
        }
    }

    @Test
    void efficiency_between_table_figures_lies_between_them_and_is_refused_outside() {
        Quantity last = Quantity.of(100, Unit.PERCENT);
        for (int rise = 200; rise <= 600; rise += 7) {
            Quantity now = efficiency("6.3", rise);
            assertThat(now).isLessThan(last);
            assertThat(now).isLessThanOrEqualTo(efficiency("5", rise)).isGreaterThanOrEqualTo(efficiency("7", rise));
            last = now;
        }
        for (String oxygen : List.of("1.99", "10.01")) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> efficiency(oxygen, 300))
                    .withMessageContaining("expected 2 % to 10 %");
        }
        assertThatIllegalArgumentException().isThrownBy(() -> efficiency("5", 199));
        assertThatIllegalArgumentException().isThrownBy(() -> efficiency("5", 601));
    }

    /**
     * A heat balance that shares nothing with the table: methane, 1013 Btu/ft3 gross; mean heat in Btu/ft3 F of carbon dioxide
     * 0.0260, nitrogen 0.0184, air 0.0185, water vapour 0.0219; 50.3 Btu to condense a ft3 of vapour at 60 F (handbooks,
     * memory, high). The sheet's gas is not pure methane: within 1.3 points.
     */
    @Test
    void efficiency_agrees_with_a_heat_balance_of_methane() {
        for (int oxygen = 2; oxygen <= 10; oxygen++) {
            for (int rise = 200; rise <= 600; rise += 50) {
                double excess = 9.524 * oxygen / (21 - oxygen) * 0.895;
                double lost = (0.0260 + 7.524 * 0.0184 + excess * 0.0185 + 2 * 0.0219) * rise + 2 * 50.3;
                assertThat(number(efficiency(String.valueOf(oxygen), rise), Unit.PERCENT))
                        .as("%s %%, %s F", oxygen, rise)
                        .isCloseTo(100 * (1 - lost / 1013), within(1.3));
            }
        }
    }

    @Test
    void a_meter_over_any_reading_counts_what_went_through() {
        Random random = new Random(20);
        for (int i = 0; i < 2000; i++) {
            int digits = 2 + random.nextInt(6);
            long dial = Math.round(Math.pow(10, digits));
            long before = (long) (random.nextDouble() * dial);
            long used = (long) (random.nextDouble() * (dial / 2 + 1));
            Quantity found = WaterMeter.used(
                            Quantity.of(before, Unit.CUBIC_FOOT),
                            Quantity.of((before + used) % dial, Unit.CUBIC_FOOT),
                            digits)
                    .result();
            assertThat(found).isEqualTo(Quantity.of(used, Unit.CUBIC_FOOT));
        }
    }

    @Test
    void sizes_never_shrink_as_steam_grows_and_their_steps_belong_to_the_smaller() {
        for (String file : List.of("equalizer.csv", "drain.csv")) {
            Quantity last = Quantity.of(0, Unit.INCH);
            for (int steam = 1; steam <= 10_000; steam += 3) {
                Quantity pounds = Quantity.of(steam, Unit.POUND_PER_HOUR);
                Quantity size = (file.startsWith("eq") ? Sizes.equalizer(pounds) : Sizes.drain(pounds)).result();
                assertThat(size).isGreaterThanOrEqualTo(last);
                last = size;
            }
        }
    }

    @Test
    void trap_loss_grows_with_the_square_of_the_orifice_and_with_pressure() {
        for (int sixteenths = 1; sixteenths <= 8; sixteenths++) {
            Quantity once = trap(sixteenths, 15, TrapLoss.Constants.DOE);
            assertThat(trap(2 * sixteenths, 15, TrapLoss.Constants.DOE)).isEqualTo(once.times(4));
            assertThat(trap(sixteenths, 16, TrapLoss.Constants.DOE)).isGreaterThan(once);
            assertThat(trap(sixteenths, 15, TrapLoss.Constants.NAPIER)).isGreaterThan(once);
            assertThat(trap(sixteenths, 15, TrapLoss.Constants.UTILITY)).isLessThan(once);
        }
        for (int psi = 0; psi < 30; psi++) {
            boolean warns = TrapLoss.through(
                            Quantity.of("1/8", Unit.INCH),
                            Quantity.of(psi, Unit.PSI),
                            SEA_LEVEL,
                            TrapLoss.Constants.DOE)
                    .warnings()
                    .stream()
                    .anyMatch(warning -> warning.contains("not choked"));
            assertThat(warns).isEqualTo(psi < 12);
        }
    }

    /** Critical flow of dry saturated steam begins near 0.545 to 0.577 of the pressure ahead (handbooks, memory, high). */
    @Test
    void the_border_of_choked_flow_is_on_the_careful_side() {
        double border = number(Constant.of("choked-above").in(Unit.PSI), Unit.PSI);
        assertThat(border).isGreaterThan(14.696 / 0.577 - 14.696).isLessThan(14.696 / 0.54 - 14.696);
    }

    @Test
    void bare_pipe_loses_more_when_hotter_wider_or_longer_and_nothing_like_insulated() {
        Quantity room = Quantity.of(70, Unit.FAHRENHEIT);
        Quantity lastSize = Quantity.of(0, Unit.BTU_PER_HOUR);
        for (PipeSize size : PipeSize.all()) {
            Quantity last = Quantity.of(0, Unit.BTU_PER_HOUR);
            for (int steam = 90; steam <= 500; steam += 10) {
                Quantity now = PipeLoss.bare(
                                size.nominal(), Quantity.of(10, Unit.FOOT), Quantity.of(steam, Unit.FAHRENHEIT), room)
                        .result();
                assertThat(now).isGreaterThan(last);
                last = now;
            }
            assertThat(last).isGreaterThan(lastSize);
            lastSize = last;
        }
    }

    @Test
    void even_burns_give_their_own_rate() {
        for (int minutes = 2; minutes <= 30; minutes++) {
            List<Burn> burns = new ArrayList<>();
            LocalTime start = LocalTime.of(23, 30);
            for (int i = 0; i < 8; i++) {
                burns.add(new Burn(start, start.plusMinutes(minutes - 1)));
                start = start.plusMinutes(minutes);
            }
            Worked cycles = Cycling.of(burns);
            assertThat(cycles.result().value()).isEqualTo(Rational.of(60, minutes));
            assertThat(cycles.quantity(Cycling.MEAN)).isEqualTo(Quantity.of(minutes - 1, Unit.MINUTE));
            assertThat(cycles.quantity(Cycling.SHARE).valueIn(Unit.TIMES)).isEqualTo(Rational.of(minutes - 1, minutes));
        }
        Burn one = new Burn(LocalTime.of(10, 0), LocalTime.of(10, 5));
        assertThatIllegalArgumentException().isThrownBy(() -> Cycling.of(List.of(one)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Cycling.of(List.of(one, new Burn(LocalTime.of(9, 0), LocalTime.of(9, 30)), one)))
                .withMessageContaining("out of order");
    }

    @Test
    void speed_is_volume_flow_over_the_bore() {
        for (PipeSize size : PipeSize.all()) {
            for (int steam = 10; steam <= 1000; steam += 90) {
                double radius = number(size.inside(), Unit.FOOT) / 2;
                Quantity two = Quantity.of(2, Unit.PSI);
                double expected = steam
                        * number(Saturation.steamVolume(two, SEA_LEVEL), Unit.CUBIC_FOOT_PER_POUND)
                        / 3600
                        / (Math.PI * radius * radius);
                assertThat(number(
                                PipeFlow.speed(Quantity.of(steam, Unit.POUND_PER_HOUR), size.nominal(), two, SEA_LEVEL)
                                        .result(),
                                Unit.FOOT_PER_SECOND))
                        .isCloseTo(expected, within(expected * 1e-9));
            }
        }
    }

    @Test
    void two_surveys_together_take_what_they_take_apart() {
        List<Radiator> one = Radiator.parse("12 x 2-column 38 in; 10 ft x 1 1/2 in pipe");
        List<Radiator> other = Radiator.parse("9 x 6-tube 20 in; 3 x wall 5A; 17.5 ft2");
        List<Radiator> both = new ArrayList<>(one);
        both.addAll(other);
        assertThat(Load.survey(both).result())
                .isEqualTo(Load.survey(one).result().plus(Load.survey(other).result()));
    }

    private static Quantity trap(int sixteenths, int psi, TrapLoss.Constants constant) {
        return TrapLoss.through(
                        Quantity.of(Rational.of(sixteenths, 16), Unit.INCH),
                        Quantity.of(psi, Unit.PSI),
                        SEA_LEVEL,
                        constant)
                .result();
    }

    private static Quantity efficiency(String oxygen, int rise) {
        return Combustion.grossEfficiency(Quantity.of(oxygen, Unit.PERCENT), Quantity.of(rise, Unit.FAHRENHEIT_DEGREE))
                .result();
    }

    private static double kelvins(double psi) {
        Quantity gauge = Quantity.of(Rational.of(java.math.BigDecimal.valueOf(psi)), Unit.PSI);
        return number(Saturation.temperature(gauge, SEA_LEVEL), Unit.KELVIN);
    }

    private static double number(Quantity quantity, Unit unit) {
        return quantity.in(unit).doubleValue();
    }
}
