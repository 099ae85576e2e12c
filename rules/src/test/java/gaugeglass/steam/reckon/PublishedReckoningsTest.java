package gaugeglass.steam.reckon;

import static gaugeglass.engine.quantity.Dimension.AREA;
import static gaugeglass.engine.quantity.Dimension.DEGREE_DAYS;
import static gaugeglass.engine.quantity.Dimension.HEAT_BY_VOLUME;
import static gaugeglass.engine.quantity.Dimension.LENGTH;
import static gaugeglass.engine.quantity.Dimension.MASS_FLOW;
import static gaugeglass.engine.quantity.Dimension.POWER;
import static gaugeglass.engine.quantity.Dimension.PRESSURE;
import static gaugeglass.engine.quantity.Dimension.RATIO;
import static gaugeglass.engine.quantity.Dimension.TEMPERATURE;
import static gaugeglass.engine.quantity.Dimension.TEMPERATURE_DIFFERENCE;
import static gaugeglass.engine.quantity.Dimension.TIME;
import static gaugeglass.engine.quantity.Dimension.VOLUME;
import static gaugeglass.engine.quantity.Dimension.VOLUME_FLOW;
import static gaugeglass.engine.quantity.Dimension.WEIGHT_BY_VOLUME;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import gaugeglass.engine.quantity.Dimension;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.steam.reckon.PipeFlow.Service;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Each reckoning against a figure that was printed outside this project, to the last digit printed.
 *
 * <p>The source stands beside each. "Read" means read there or in an excerpt; "memory" is said where it was not.
 */
class PublishedReckoningsTest {
    private static final Quantity SEA_LEVEL = Saturation.STANDARD_ATMOSPHERE;
    private static final Quantity FIELD_GAS = q("1000 Btu/ft3", HEAT_BY_VOLUME);

    // ---- load

    /** ASHRAE Journal, September 2009 (read): 240 Btu/h per ft2 EDR, 1.33 for piping and pickup. */
    @Test
    void five_hundred_feet_ask_for_160_000_gross() {
        Worked load = Load.of(q("500 ft2", AREA), q("1 psi", PRESSURE), SEA_LEVEL);
        assertThat(load.quantity(Load.HEAT)).isEqualTo(q("120000 Btu/h", POWER));
        assertThat(load.quantity(Load.REQUIRED)).isEqualTo(q("160000 Btu/h", POWER));
        printed(load.quantity(Load.CONDENSING), "124.0", Unit.POUND_PER_HOUR);
        Worked other = Load.oversize(q("850 ft2", AREA), q("1 psi", PRESSURE), SEA_LEVEL, q("400000 Btu/h", POWER));
        printed(other.result(), "1.471", Unit.TIMES);
    }

    /** 240 / hfg at 0 psi, 970.1 Btu/lb (IAPWS-IF97): 0.2474 lb/h per ft2; 0.5 gpm per 1000 ft2 (common practice). */
    @Test
    void a_square_foot_condenses_a_quarter_of_a_pound() {
        Worked load = Load.of(q("1000 ft2", AREA), q("0 psi", PRESSURE), SEA_LEVEL);
        printed(load.quantity(Load.CONDENSING), "247.4", Unit.POUND_PER_HOUR);
        double gallonsAMinute = number(load.quantity(Load.CONDENSING), Unit.POUND_PER_HOUR) / 60 / 8.345;
        assertThat(gallonsAMinute).isCloseTo(0.5, within(0.01));
    }

    /** A worked figure printed in a radiation table (read): 7 sections of 5-tube, 38 in, are 35 ft2. */
    @Test
    void seven_sections_of_five_tubes_are_thirty_five_feet() {
        assertThat(Load.survey(Radiator.parse("7 x 5-tube 38 in")).result()).isEqualTo(q("35 ft2", AREA));
    }

    /** Bare pipe, pi x OD / 12 with the diameters of ASME B36.10M (memory, high): 1 in 0.344, 2 in 0.622, 4 in 1.178. */
    @ParameterizedTest
    @CsvSource({"1 in, 0.344", "2 in, 0.622", "4 in, 1.178"})
    void a_foot_of_bare_pipe(String size, String printed) {
        printed(Load.survey(Radiator.parse("1 ft x " + size + " pipe")).result(), printed, Unit.SQUARE_FOOT);
    }

    @Test
    void a_height_that_is_in_no_table_is_refused_with_those_that_are() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Radiator.parse("6 x 3-column 29 in"))
                .withMessage("no figure for a 3-column radiator 29 in high; known heights: 18, 22, 26, 32, 38, 45 in."
                        + " Measure again from the floor, or give its square feet EDR");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Radiator.parse("6 x 3-colum 26 in"))
                .withMessageEndingWith("did you mean 3-column?");
        assertThatIllegalArgumentException().isThrownBy(() -> Radiator.parse("6 x 1-column 45 in"));
        assertThatIllegalArgumentException().isThrownBy(() -> Radiator.parse("4 x wall 8A"));
        assertThatIllegalArgumentException().isThrownBy(() -> Radiator.parse("6 x 3-column"));
        assertThatIllegalArgumentException().isThrownBy(() -> Radiator.parse("0 x 3-column 26 in"));
        assertThatIllegalArgumentException().isThrownBy(() -> Radiator.parse(" ; "));
    }

    // ---- firing rate

    /** A published clocking table for a 1 ft3 dial (read): 36 s 100, 48 s 75, 60 s 60 ft3/h. */
    @ParameterizedTest
    @CsvSource({"1 ft3, 36 s, 100", "1 ft3, 48 s, 75", "1 ft3, 60 s, 60", "0.01 m3, 16 s, 79.46"})
    void clocked_gas(String dial, String time, String printed) {
        Worked input = GasInput.clocked(q(dial, VOLUME), Rational.ONE, q(time, TIME), FIELD_GAS);
        printed(input.quantity(GasInput.GAS), printed, Unit.CUBIC_FOOT_PER_HOUR);
    }

    /** Published example (read): half-foot dial, 22 s, 1000 Btu/ft3: printed 81,820; a second either way is 4.5 %. */
    @Test
    void half_a_foot_in_twenty_two_seconds() {
        Worked input = GasInput.clocked(q("0.5 ft3", VOLUME), Rational.ONE, q("22 s", TIME), FIELD_GAS);
        assertThat(input.answer().shown()).isEqualTo("81820 Btu/h");
        double middle = number(input.result(), Unit.BTU_PER_HOUR);
        assertThat(number(input.quantity(GasInput.HIGHEST), Unit.BTU_PER_HOUR) / middle)
                .isCloseTo(22.0 / 21, within(1e-12));
        assertThat(number(input.quantity(GasInput.LOWEST), Unit.BTU_PER_HOUR) / middle)
                .isCloseTo(22.0 / 23, within(1e-12));
        assertThat(input.warnings()).anyMatch(warning -> warning.contains("less than a minute"));
        Worked minute = GasInput.clocked(q("0.5 ft3", VOLUME), Rational.of(3), q("60 s", TIME), FIELD_GAS);
        assertThat(minute.warnings()).noneMatch(warning -> warning.contains("less than a minute"));
    }

    /** A published nozzle table (read): 1.30 gal/h at 140 psi gives 1.54. At 100 psi a nozzle gives its mark. */
    @Test
    void a_nozzle_above_its_rating() {
        Quantity mark = q("1.30 gal/h", VOLUME_FLOW);
        Quantity heat = Fuel.OIL_2.heatingValue();
        Quantity sure = q("0 psi", PRESSURE);
        Worked higher = OilInput.nozzle(mark, q("140 psi", PRESSURE), sure, heat);
        printed(higher.quantity(OilInput.OIL), "1.54", Unit.GALLON_PER_HOUR);
        printed(higher.quantity(OilInput.OIL), "1.538", Unit.GALLON_PER_HOUR);
        Worked rated = OilInput.nozzle(mark, q("100 psi", PRESSURE), sure, heat);
        assertThat(rated.quantity(OilInput.OIL)).isEqualTo(mark);
        assertThat(rated.quantity(OilInput.LOWEST)).isEqualTo(rated.result());
    }

    /** 40 CFR 98, Table C-1 (read). */
    @ParameterizedTest
    @CsvSource({
        "NATURAL_GAS, 1026 Btu/ft3",
        "PROPANE, 2516 Btu/ft3",
        "OIL_1, 139000 Btu/gal",
        "OIL_2, 138000 Btu/gal",
        "OIL_4, 146000 Btu/gal",
        "OIL_5, 140000 Btu/gal",
        "OIL_6, 150000 Btu/gal"
    })
    void gross_heating_values(Fuel fuel, String printed) {
        assertThat(fuel.heatingValue()).isEqualTo(q(printed, HEAT_BY_VOLUME));
    }

    // ---- combustion

    /** 50 ppm at 7 % is 75 (20.9 basis); 1200 at 6 % is 1683 (printed 1680 on a basis of 21, read). */
    @ParameterizedTest
    @CsvSource({"50, 7, 75", "1200, 6, 1683", "50, 0, 50"})
    void carbon_monoxide_free_of_air(String co, String oxygen, String printed) {
        printed(airFree(co, oxygen), printed, Unit.PARTS_PER_MILLION);
    }

    /** The limit of ANSI Z21.13 (read second hand), 400 ppm air-free: at 7 % oxygen 266 ppm passes and 267 does not. */
    @Test
    void the_limit_of_400_lies_between_266_and_267_at_seven_percent() {
        Quantity limit = q("400 ppm", RATIO);
        assertThat(airFree("266", "7").isAtMost(limit)).isTrue();
        assertThat(airFree("267", "7").isAbove(limit)).isTrue();
        // 400 x 13.9 / 20.9 exactly; in doubles such a figure may fall on either side.
        Quantity exactly = Quantity.of(Rational.of(5560, 1).dividedBy(Rational.of(209, 10)), Unit.PARTS_PER_MILLION);
        assertThat(Combustion.airFreeCo(exactly, q("7 %", RATIO)).result()).isEqualTo(limit);
    }

    @Test
    void air_is_no_flue_sample() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> airFree("10", "20.9"))
                .withMessage("oxygen of 20.9 %: that is air and no flue sample; expected 0 % to below 20.9 % in the dry"
                        + " flue gas");
        assertThatIllegalArgumentException().isThrownBy(() -> airFree("10", "21"));
        assertThat(Combustion.airFreeCo(q("10 ppm", RATIO), q("15 %", RATIO)).warnings())
                .isEmpty();
        assertThat(Combustion.airFreeCo(q("10 ppm", RATIO), q("15.1 %", RATIO)).warnings())
                .hasSize(1);
    }

    /** US DOE Steam Tip Sheet 4 (read), excess-air column for natural gas: 9.5, 15.0, 28.1, 44.9, 81.6 %. */
    @ParameterizedTest
    @CsvSource({"2, 9.5", "3, 15.0", "5, 28.1", "7, 44.9", "10, 81.6"})
    void excess_air_of_natural_gas(String oxygen, double printed) {
        Quantity air =
                Combustion.excessAir(Fuel.NATURAL_GAS, q(oxygen + " %", RATIO)).result();
        assertThat(number(air, Unit.PERCENT)).isCloseTo(printed, within(0.06));
    }

    /** The whole table of US DOE Steam Tip Sheet 4 (read), typed here a second time. */
    @ParameterizedTest
    @CsvSource({
        "2,  85.4, 83.1, 80.8, 78.4, 76.0",
        "3,  85.2, 82.8, 80.4, 77.9, 75.4",
        "5,  84.7, 82.1, 79.5, 76.7, 74.0",
        "7,  84.1, 81.2, 78.2, 75.2, 72.1",
        "10, 82.8, 79.3, 75.6, 71.9, 68.2"
    })
    void gross_efficiency_of_natural_gas(
            String oxygen, String at200, String at300, String at400, String at500, String at600) {
        List<String> row = List.of(at200, at300, at400, at500, at600);
        for (int i = 0; i < row.size(); i++) {
            Worked found = Combustion.grossEfficiency(
                    q(oxygen + " %", RATIO), q((200 + 100 * i) + " F", TEMPERATURE_DIFFERENCE));
            assertThat(found.result()).isEqualTo(q(row.get(i) + " %", RATIO));
        }
    }

    /** The same sheet's example (read): from 78.2 to 83.1 % saves 5.9 % of the fuel. */
    @Test
    void a_tune_up_saves_fuel() {
        printed(Combustion.fuelSaved(q("78.2 %", RATIO), q("83.1 %", RATIO)).result(), "5.9", Unit.PERCENT);
    }

    /** 1. BImSchV (2010), Annex 2 (memory, high): gas 180/20 C at 5 % oxygen 8.04 %, light oil 7.92 %. */
    @ParameterizedTest
    @CsvSource({"NATURAL_GAS, 8.04", "OIL_2, 7.92"})
    void flue_gas_loss_on_the_net_value(Fuel fuel, String printed) {
        Worked loss = Combustion.stackLoss(fuel, q("180 C", TEMPERATURE), q("20 C", TEMPERATURE), q("5 %", RATIO));
        printed(loss.result(), printed, Unit.PERCENT);
        Worked inFahrenheit =
                Combustion.stackLoss(fuel, q("356 F", TEMPERATURE), q("68 F", TEMPERATURE), q("5 %", RATIO));
        assertThat(inFahrenheit.result()).isEqualTo(loss.result());
    }

    /** The form of the same annex for a CO2 reading (memory, high): A1 is 0.38 for gas, 0.50 oil, 0.42 liquid gas. */
    @ParameterizedTest
    @CsvSource({"NATURAL_GAS, 0.38", "OIL_2, 0.50", "PROPANE, 0.42"})
    void the_two_forms_of_the_loss_formula_go_together(Fuel fuel, double a1) {
        double a2 = number(fuel.siegertA2(), Unit.TIMES);
        double most = number(fuel.mostCarbonDioxide(), Unit.PERCENT);
        assertThat(a2 * most / 21).isCloseTo(a1, within(0.01));
    }

    /** Dry CO2 at no excess air, handbooks (memory, high): natural gas 11.7-12.0, No. 2 15.4-15.6, propane 13.7-14.0. */
    @ParameterizedTest
    @CsvSource({"NATURAL_GAS, 11.7, 12.0", "OIL_2, 15.4, 15.6", "PROPANE, 13.7, 14.0"})
    void most_carbon_dioxide(Fuel fuel, double from, double to) {
        assertThat(number(fuel.mostCarbonDioxide(), Unit.PERCENT)).isBetween(from, to);
    }

    /** Hand-worked: CO2 falls in a straight line from its most at 0 % oxygen to nothing at 21 %. */
    @Test
    void oxygen_and_carbon_dioxide_of_a_fuel_go_together() {
        Worked goes = Combustion.expectedCarbonDioxide(Fuel.NATURAL_GAS, q("0 %", RATIO));
        assertThat(goes.result()).isEqualTo(q("12 %", RATIO));
        Worked apart = Combustion.expectedCarbonDioxide(Fuel.OIL_2, q("10.5 %", RATIO), q("9.7 %", RATIO));
        assertThat(apart.result()).isEqualTo(q("7.7 %", RATIO));
        assertThat(apart.quantity(Combustion.APART)).isEqualTo(q("2 %", RATIO));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Combustion.expectedCarbonDioxide(Fuel.OIL_6, q("5 %", RATIO)));
    }

    // ---- water

    /** Hand-worked: 400,000 Btu/h for 300 burner hours and 60 gal is 0.405 %. */
    @Test
    void sixty_gallons_are_four_thousandths_of_the_steam() {
        Worked share = MakeUp.shareOfSteam(
                q("60 gal", VOLUME), q("400000 Btu/h", POWER), q("300 h", TIME), q("0 psi", PRESSURE), SEA_LEVEL);
        printed(share.result(), "0.405", Unit.PERCENT);
    }

    @Test
    void a_meter_that_rolls_over_counts_on_and_one_that_runs_back_is_refused() {
        assertThat(WaterMeter.used(q("9998 gal", VOLUME), q("12 gal", VOLUME), 4)
                        .result())
                .isEqualTo(q("14 gal", VOLUME));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WaterMeter.used(q("1000 gal", VOLUME), q("990 gal", VOLUME), 4))
                .withMessageContaining("rolled over it would have counted 9990 gal, more than half its dial");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WaterMeter.used(q("9998 gal", VOLUME), q("12 gal", VOLUME)))
                .withMessageContaining("meter reading fell from 9998 gal to 12 gal");
        // Exactly half the dial counts; one more does not.
        assertThat(WaterMeter.used(q("6000 gal", VOLUME), q("1000 gal", VOLUME), 4)
                        .result())
                .isEqualTo(q("5000 gal", VOLUME));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WaterMeter.used(q("6000 gal", VOLUME), q("1001 gal", VOLUME), 4));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WaterMeter.used(q("10000 gal", VOLUME), q("12 gal", VOLUME), 4))
                .withMessageContaining("at most 4 digits of gal");
        assertThat(WaterMeter.used(q("10 ft3", VOLUME), q("12 ft3", VOLUME)).result())
                .isEqualTo(q("2 ft3", VOLUME));
    }

    /** 1 ft3 is 7.4805 gal (NIST SP 811, memory, high). */
    @Test
    void cubic_feet_and_replaced_meters_are_counted() {
        printed(WaterMeter.used(q("10 ft3", VOLUME), q("11 ft3", VOLUME)).result(), "7.4805", Unit.GALLON);
        Worked replaced = WaterMeter.replaced(
                q("9000 gal", VOLUME), q("9100 gal", VOLUME), q("3 gal", VOLUME), q("40 gal", VOLUME));
        assertThat(replaced.result()).isEqualTo(q("137 gal", VOLUME));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WaterMeter.replaced(
                        q("9000 gal", VOLUME), q("8999 gal", VOLUME), q("3 gal", VOLUME), q("40 gal", VOLUME)));
    }

    /** Water treatment handbooks (common practice): 1000 gal at 10 grains is 1.43 lb. */
    @Test
    void hardness_in_pounds() {
        Worked scale = Deposits.scale(q("1000 gal", VOLUME), q("10 gr/gal", WEIGHT_BY_VOLUME));
        printed(scale.result(), "1.43", Unit.POUND);
        // 10 grains a gallon are 171 mg/L.
        Worked metric = Deposits.scale(q("1000 gal", VOLUME), q("171.18 mg/L", WEIGHT_BY_VOLUME));
        printed(metric.result(), "1.43", Unit.POUND);
    }

    /** Standard Methods (memory, high): 9.1 mg/L at 20 C. Fe and O by atomic weight: 4 x 55.845 / (3 x 31.998) = 2.327. */
    @Test
    void oxygen_in_pounds() {
        Worked oxygen = Deposits.oxygen(q("1000 gal", VOLUME), q("20 C", TEMPERATURE));
        printed(oxygen.result(), "0.0759", Unit.POUND);
        assertThat(number(oxygen.quantity(Deposits.IRON), Unit.POUND) / number(oxygen.result(), Unit.POUND))
                .isCloseTo(4 * 55.845 / (3 * 31.998), within(0.0005));
    }

    // ---- heads, sizes

    /** Handbooks of the trade (memory, high): 14 + 6 + 8 = 28 in for a half-psi one-pipe system. */
    @Test
    void a_small_one_pipe_system_needs_twenty_eight_inches() {
        Worked cool =
                StaticHead.needed(StaticHead.Returns.ONE_PIPE_GRAVITY, q("0.5 psi", PRESSURE), q("80 F", TEMPERATURE));
        printed(cool.result(), "28", Unit.INCH);
        Worked there = StaticHead.needed(
                StaticHead.Returns.ONE_PIPE_GRAVITY,
                q("0.5 psi", PRESSURE),
                q("80 F", TEMPERATURE),
                q("24 in", LENGTH));
        assertThat(there.quantity(StaticHead.SPARE))
                .isEqualTo(q("24 in", LENGTH).minus(cool.result()));
    }

    /** Common practice: about 29 to 30 in for each psi of cut-out where traps keep the returns at no pressure. */
    @Test
    void two_pipe_gravity_balances_the_cut_out_and_pumped_returns_nothing() {
        Worked head =
                StaticHead.needed(StaticHead.Returns.TWO_PIPE_GRAVITY, q("1 psi", PRESSURE), q("212 F", TEMPERATURE));
        assertThat(number(head.result(), Unit.INCH)).isBetween(29.0, 30.0);
        assertThat(number(head.quantity("balance alone"), Unit.INCH)).isCloseTo(28.9, within(0.05));
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        StaticHead.needed(StaticHead.Returns.PUMPED, q("1 psi", PRESSURE), q("212 F", TEMPERATURE)))
                .withMessageContaining("pumped need no height");
    }

    /** District of Columbia, Table 1007.2 (read): to 250 lb/h 1 1/2 in, 251 to 2000 2 1/2 in, above 4 in. */
    @ParameterizedTest
    @CsvSource({"1, 1 1/2", "250, 1 1/2", "250.1, 2 1/2", "251, 2 1/2", "2000, 2 1/2", "2001, 4", "9000, 4"})
    void equalizer(String steam, String printed) {
        assertThat(Sizes.equalizer(q(steam + " lb/h", MASS_FLOW)).answer().shown())
                .isEqualTo(printed + " in");
    }

    /** ASME Section IV HG-715 (memory, high). */
    @ParameterizedTest
    @CsvSource({"500, 3/4", "501, 1", "1250, 1", "1251, 1 1/4", "2500, 1 1/4", "2501, 1 1/2", "6000, 1 1/2", "6001, 2"})
    void bottom_drain(String steam, String printed) {
        assertThat(Sizes.drain(q(steam + " lb/h", MASS_FLOW)).answer().shown()).isEqualTo(printed + " in");
    }

    /** New York 4-5.2 (read): output / 1000, or 8 lb/h a square foot of firetube surface. 400,000 at 80 %: 320; 60 ft2: 480. */
    @Test
    void safety_valve() {
        Worked output = Firing.output(q("400000 Btu/h", POWER), q("80 %", RATIO));
        assertThat(Sizes.safetyValve(output.result()).result()).isEqualTo(q("320 lb/h", MASS_FLOW));
        assertThat(Sizes.safetyValve(q("60 ft2", AREA), Sizes.Surface.FIRETUBE).result())
                .isEqualTo(q("480 lb/h", MASS_FLOW));
        assertThat(Sizes.safetyValve(q("60 ft2", AREA), Sizes.Surface.WATERTUBE).result())
                .isEqualTo(q("600 lb/h", MASS_FLOW));
    }

    /** North Carolina 13 NCAC 13 .0419 (read): 1 in2 for 2000 Btu/h. Louvers 75 and 25 % free: IFGC (memory, high). */
    @Test
    void combustion_air_is_counted_free_and_not_gross() {
        Quantity input = q("400000 Btu/h", POWER);
        Worked hole = Sizes.combustionAir(input, Sizes.AirRule.NORTH_CAROLINA, Sizes.Louver.NONE);
        assertThat(hole.result()).isEqualTo(q("200 in2", AREA));
        assertThat(hole.quantity(Sizes.GROSS)).isEqualTo(q("200 in2", AREA));
        Worked wood = Sizes.combustionAir(input, Sizes.AirRule.NORTH_CAROLINA, Sizes.Louver.WOOD);
        assertThat(wood.result()).isEqualTo(q("200 in2", AREA));
        assertThat(wood.quantity(Sizes.GROSS)).isEqualTo(q("800 in2", AREA));
        Worked maker = Sizes.combustionAir(input, Sizes.AirRule.OUTDOORS_VERTICAL, q("50 %", RATIO));
        assertThat(maker.result()).isEqualTo(q("100 in2", AREA));
        assertThat(maker.quantity(Sizes.GROSS)).isEqualTo(q("200 in2", AREA));
        assertThat(maker.warnings()).contains("Each of the two openings must have it.");
    }

    // ---- pipes

    /** Hand-worked from ASME B36.10M and IAPWS-IF97: 125 lb/h at 1 psi in 2 in schedule 40 is 37.5 ft/s. */
    @Test
    void speed_in_a_two_inch_riser() {
        Worked speed = PipeFlow.speed(q("125 lb/h", MASS_FLOW), q("2 in", LENGTH), q("1 psi", PRESSURE), SEA_LEVEL);
        printed(speed.result(), "37.5", Unit.FOOT_PER_SECOND);
    }

    /** ASHVE Guide 1929 and 1930 (read), dripped main, 2 oz total drop; ASHVE Guide 1955 (read), one-pipe risers. */
    @ParameterizedTest
    @CsvSource({
        "MAIN, 2 in, 100 ft, 546",
        "MAIN, 2 in, 200 ft, 386",
        "MAIN, 2 in, 400 ft, 273",
        "MAIN, 3 in, 100 ft, 1645",
        "MAIN, 3 in, 200 ft, 1163",
        "MAIN, 3 in, 400 ft, 822",
        "MAIN, 4 in, 100 ft, 3475",
        "MAIN, 4 in, 200 ft, 2457",
        "MAIN, 4 in, 400 ft, 1738",
        "ONE_PIPE_RISER, 1 in, 1 ft, 45",
        "ONE_PIPE_RISER, 1 1/4 in, 1 ft, 98",
        "ONE_PIPE_RISER, 2 in, 1 ft, 288"
    })
    void what_a_pipe_carries(Service service, String size, String length, String printed) {
        assertThat(PipeFlow.capacity(service, q(size, LENGTH), q(length, LENGTH))
                        .result())
                .isEqualTo(q(printed + " ft2", AREA));
    }

    @Test
    void a_length_between_columns_gets_the_longer_ones_capacity() {
        assertThat(PipeFlow.capacity(Service.MAIN, q("2 in", LENGTH), q("150 ft", LENGTH))
                        .result())
                .isEqualTo(q("386 ft2", AREA));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PipeFlow.capacity(Service.MAIN, q("2 in", LENGTH), q("401 ft", LENGTH)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PipeFlow.capacity(Service.ONE_PIPE_RISER, q("5 in", LENGTH), q("1 ft", LENGTH)))
                .withMessageContaining("no figure for 5 in pipe as one pipe riser; expected one of 1, 1 1/4");
    }

    // ---- losses

    /** US DOE Steam Tip Sheet 1 (read), at 15 psi: 1/16 in 3.4, 1/8 in 13.7, 1/4 in 54.7 lb/h; 150 psi, 1/8 in: 75.8. */
    @ParameterizedTest
    @CsvSource({"1/16 in, 15 psi, 3.4", "1/8 in, 15 psi, 13.7", "1/4 in, 15 psi, 54.7", "1/8 in, 150 psi, 75.8"})
    void steam_through_an_open_trap(String orifice, String pressure, String printed) {
        Worked loss = TrapLoss.through(q(orifice, LENGTH), q(pressure, PRESSURE), SEA_LEVEL, TrapLoss.Constants.DOE);
        printed(loss.result(), printed, Unit.POUND_PER_HOUR);
        assertThat(loss.warnings()).noneMatch(warning -> warning.contains("not choked"));
    }

    /** A utility programme's worked case (read): 24.24 x 19.696 psia x 0.1875^2 = 16.78 lb/h, and $729.20 a year. */
    @Test
    void steam_through_an_open_trap_in_money() {
        Worked loss =
                TrapLoss.through(q("3/16 in", LENGTH), q("5 psi", PRESSURE), SEA_LEVEL, TrapLoss.Constants.UTILITY);
        assertThat(number(loss.result(), Unit.POUND_PER_HOUR)).isCloseTo(16.78, within(0.006));
        assertThat(loss.warnings()).anyMatch(warning -> warning.contains("not choked"));
        Worked cost = TrapLoss.cost(
                q("16.78 lb/h", MASS_FLOW),
                q("5808 h", TIME),
                q("960.8 Btu/lb", Dimension.HEAT_BY_WEIGHT),
                q("80 %", RATIO),
                Rational.of(623, 100),
                "dollars");
        assertThat(cost.number(TrapLoss.COST)
                        .toBigDecimal(java.math.MathContext.DECIMAL64)
                        .doubleValue())
                .isCloseTo(729.20, within(0.05));
    }

    /** A published estimate (read): 7699 degree days and 80 F are 2310 h. */
    @Test
    void season_hours() {
        Worked hours = Season.hours(q("7699 F-days", DEGREE_DAYS), q("80 F", TEMPERATURE_DIFFERENCE));
        printed(hours.result(), "2310", Unit.HOUR);
    }

    /**
     * US DOE Steam Tip Sheet 2, million Btu a year for 100 ft of bare horizontal pipe in 75 F still air. Read in its worked
     * example: 1 in 285 and 2 in 480 at 150 psi, 4 in 415 at 15 psi; the others from memory with high certainty.
     */
    @ParameterizedTest
    @CsvSource({
        "1 in, 150 psi, 285",
        "2 in, 150 psi, 480",
        "4 in, 15 psi, 415",
        "1 in, 15 psi, 140",
        "2 in, 15 psi, 235",
        "8 in, 15 psi, 740",
        "12 in, 15 psi, 1055",
        "4 in, 150 psi, 850",
        "8 in, 150 psi, 1540",
        "12 in, 150 psi, 2200"
    })
    void bare_pipe_within_five_percent_of_the_tip_sheet(String size, String pressure, double printed) {
        Quantity steam = Saturation.temperature(q(pressure, PRESSURE), SEA_LEVEL);
        Worked loss = PipeLoss.bare(q(size, LENGTH), q("100 ft", LENGTH), steam, q("75 F", TEMPERATURE));
        assertThat(number(loss.result(), Unit.BTU_PER_HOUR) * 8760 / 1e6).isCloseTo(printed, within(printed * 0.05));
    }

    /** Hand-worked: water over its rate. 6 gal at 7.987 lb/gal, 240,000 Btu/h at 968.0 Btu/lb: 11.6 min. */
    @Test
    void minutes_to_low_water() {
        Worked time =
                LowWaterTime.minutes(q("6 gal", VOLUME), q("240000 Btu/h", POWER), q("1 psi", PRESSURE), SEA_LEVEL);
        printed(time.result(), "11.6", Unit.MINUTE);
        // Steam tables printed before IF97 (Keenan and Keyes, memory, high): 59.8 lb/ft3 at 212 F is 7.99 lb/gal.
        assertThat(number(time.quantity("density of boiling water"), Unit.POUND_PER_GALLON))
                .isCloseTo(59.8 / 7.48052, within(0.01));
        assertThat(time.warnings()).anyMatch(warning -> warning.contains("no water in"));
    }

    private static Quantity airFree(String co, String oxygen) {
        return Combustion.airFreeCo(q(co + " ppm", RATIO), q(oxygen + " %", RATIO))
                .result();
    }

    private static Quantity q(String text, Dimension dimension) {
        return Quantity.parse(text, dimension);
    }

    private static double number(Quantity quantity, Unit unit) {
        return quantity.in(unit).doubleValue();
    }

    private static void printed(Quantity found, String printed, Unit unit) {
        BigDecimal figure = new BigDecimal(printed);
        assertThat(found.in(unit).setScale(figure.scale(), RoundingMode.HALF_UP))
                .isEqualTo(figure);
    }
}
