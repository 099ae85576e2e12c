package gaugeglass.steam.handbook;

import static gaugeglass.engine.quantity.Dimension.ABSOLUTE_PRESSURE;
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

import gaugeglass.engine.quantity.Dimension;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.text.Nearest;
import gaugeglass.engine.text.Words;
import gaugeglass.steam.reckon.Combustion;
import gaugeglass.steam.reckon.Cycling;
import gaugeglass.steam.reckon.Deposits;
import gaugeglass.steam.reckon.Firing;
import gaugeglass.steam.reckon.Fuel;
import gaugeglass.steam.reckon.GasInput;
import gaugeglass.steam.reckon.GaugeGrade;
import gaugeglass.steam.reckon.GaugeScale;
import gaugeglass.steam.reckon.Load;
import gaugeglass.steam.reckon.LowWaterTime;
import gaugeglass.steam.reckon.MakeUp;
import gaugeglass.steam.reckon.OilInput;
import gaugeglass.steam.reckon.PipeFlow;
import gaugeglass.steam.reckon.PipeLoss;
import gaugeglass.steam.reckon.PressureReading;
import gaugeglass.steam.reckon.Saturation;
import gaugeglass.steam.reckon.Season;
import gaugeglass.steam.reckon.Sizes;
import gaugeglass.steam.reckon.StaticHead;
import gaugeglass.steam.reckon.TrapLoss;
import gaugeglass.steam.reckon.WaterMeter;
import gaugeglass.steam.reckon.Worked;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Every reckoning there is, by name, in the order of a visit. */
public final class Handbook {
    private static final List<Entry> ENTRIES = List.of(
            entry("pressure", "A pressure in every unit that dials carry, and where it stands on a dial")
                    .range("any gauge pressure; with a grade, on the dial")
                    .need("pressure", measure(PRESSURE), "gauge pressure; with -, or the word vacuum, below zero")
                    .maybe("dial", measure(PRESSURE), "highest figure of the dial")
                    .maybe("grade", choice(GaugeGrade.class, GaugeGrade::mark), "accuracy grade printed on the dial")
                    .example("pressure=1.5 psi", "dial=30 psi", "grade=b")
                    .works(Handbook::pressure),
            entry("saturation", "Temperature, latent heat and volume of steam at a gauge pressure")
                    .range("0.1 to 240 psia in all, barometer 8 to 16 psia")
                    .need("pressure", measure(PRESSURE), "gauge pressure of the steam")
                    .barometer()
                    .example("pressure=2 psi", "barometer=12.2 psia")
                    .works(told -> Saturation.at(told.quantity("pressure"), told.quantity("barometer"))),
            entry("steam-pressure", "Gauge pressure that goes with a steam temperature")
                    .range("33 to 400 F, barometer 8 to 16 psia")
                    .need("temperature", measure(TEMPERATURE), "temperature of the steam")
                    .barometer()
                    .example("temperature=218.5 F")
                    .works(told -> Saturation.of(told.quantity("temperature"), told.quantity("barometer"))),
            entry("load", "Radiators to connected load, condensing rate, required output and oversize ratio")
                    .range("radiators in the tables, 1 to 2000 entries; gross output to 100 million Btu/h")
                    .need("radiators", new Input.Survey(), "the survey")
                    .maybe("output", measure(POWER), "gross output of the boiler")
                    .steam("1 psi")
                    .barometer()
                    .example(
                            "radiators=40 x 3-column 26 in; 30 x 5-tube 32 in; 6 x wall 7A; 20 ft x 2 in pipe",
                            "output=200000 Btu/h")
                    .works(Handbook::load),
            entry("radiation", "The same from square feet EDR already known")
                    .range("above 0 to 100,000 ft2 EDR; gross output to 100 million Btu/h")
                    .need("edr", measure(AREA), "connected radiation, square feet EDR")
                    .maybe("output", measure(POWER), "gross output of the boiler")
                    .steam("1 psi")
                    .barometer()
                    .example("edr=850 ft2", "output=400000 Btu/h")
                    .works(told -> ofRadiation(told, told.quantity("edr"))),
            entry("gas-input", "Input of a gas burner clocked at the meter")
                    .range("dial 0.01 to 1000 ft3, 5 s to 1 h, 400 to 3500 Btu/ft3")
                    .need("dial", measure(VOLUME), "gas for one turn of the test dial")
                    .given("turns", new Input.Number(), "turns timed", "1")
                    .need("time", measure(TIME), "how long they took")
                    .given("heat", measure(HEAT_BY_VOLUME), "gross heating value of the gas", "1026 Btu/ft3")
                    .maybe("nameplate", measure(POWER), "highest input on the nameplate")
                    .example("dial=0.5 ft3", "time=22 s", "heat=1000 Btu/ft3", "nameplate=80000 Btu/h")
                    .works(Handbook::gasInput),
            entry("oil-input", "Input of an oil burner from its nozzle and pressure")
                    .range("nozzle 0.2 to 50 gal/h, 60 to 300 psi, 100,000 to 180,000 Btu/gal")
                    .need("nozzle", measure(VOLUME_FLOW), "what the nozzle is marked at 100 psi")
                    .need("pressure", measure(PRESSURE), "pressure at the nozzle")
                    .given("within", measure(PRESSURE), "how far that reading may be off either way", "5 psi")
                    .given("heat", measure(HEAT_BY_VOLUME), "gross heating value of the oil", "138000 Btu/gal")
                    .maybe("nameplate", measure(POWER), "highest input on the nameplate")
                    .example("nozzle=1.30 gph", "pressure=140 psi")
                    .works(Handbook::oilInput),
            entry("output", "Output from input and efficiency, both on the gross heating value")
                    .range("input to 100 million Btu/h, efficiency 40 to 100 %")
                    .need("input", measure(POWER), "input")
                    .need("efficiency", measure(RATIO), "efficiency")
                    .example("input=400000 Btu/h", "efficiency=80 %")
                    .works(told -> Firing.output(told.quantity("input"), told.quantity("efficiency"))),
            entry("co-air-free", "Carbon monoxide free of excess air")
                    .range("0 to 50,000 ppm, oxygen 0 to below 20.9 %")
                    .need("co", measure(RATIO), "carbon monoxide in the sample")
                    .need("o2", measure(RATIO), "oxygen in the sample")
                    .example("co=50 ppm", "o2=7 %")
                    .works(told -> Combustion.airFreeCo(told.quantity("co"), told.quantity("o2"))),
            entry("excess-air", "Air left over after burning")
                    .range("oxygen 0 to below 20.9 %; natural gas, propane, No. 1 and No. 2 oil")
                    .fuel()
                    .need("o2", measure(RATIO), "oxygen in the sample")
                    .example("fuel=natural-gas", "o2=7 %")
                    .works(told -> Combustion.excessAir(fuel(told), told.quantity("o2"))),
            entry("expected-co2", "Carbon dioxide that must go with an oxygen reading")
                    .range("oxygen 0 to below 20.9 %; natural gas, propane, No. 1 and No. 2 oil")
                    .fuel()
                    .need("o2", measure(RATIO), "oxygen in the sample")
                    .maybe("co2", measure(RATIO), "carbon dioxide read beside it")
                    .example("fuel=oil-2", "o2=5 %", "co2=11.5 %")
                    .works(told -> told.perhaps("co2")
                            .map(co2 -> Combustion.expectedCarbonDioxide(fuel(told), told.quantity("o2"), co2))
                            .orElseGet(() -> Combustion.expectedCarbonDioxide(fuel(told), told.quantity("o2")))),
            entry("stack-loss", "Heat lost up the flue, on the net heating value")
                    .range("flue to 1500 F, oxygen 0 to below 20.9 %; natural gas, propane, No. 1 and No. 2 oil")
                    .fuel()
                    .need("flue", measure(TEMPERATURE), "temperature of the flue gas")
                    .need("air", measure(TEMPERATURE), "temperature of the combustion air")
                    .need("o2", measure(RATIO), "oxygen in the sample")
                    .example("fuel=natural-gas", "flue=180 C", "air=20 C", "o2=5 %")
                    .works(told -> Combustion.stackLoss(
                            fuel(told), told.quantity("flue"), told.quantity("air"), told.quantity("o2"))),
            entry("gross-efficiency", "Combustion efficiency of natural gas, on the gross heating value")
                    .range("oxygen 2 to 10 %, rise 200 to 600 F; outside, the table has nothing")
                    .need("o2", measure(RATIO), "oxygen in the sample")
                    .need("rise", measure(TEMPERATURE_DIFFERENCE), "flue gas less combustion air")
                    .example("o2=6 %", "rise=350 F")
                    .works(told -> Combustion.grossEfficiency(told.quantity("o2"), told.quantity("rise"))),
            entry("fuel-saved", "Fuel that a better efficiency saves")
                    .range("efficiencies 40 to 100 %")
                    .need("before", measure(RATIO), "efficiency before")
                    .need("after", measure(RATIO), "efficiency after, on the same heating value")
                    .example("before=78.2 %", "after=83.1 %")
                    .works(told -> Combustion.fuelSaved(told.quantity("before"), told.quantity("after"))),
            entry("water-used", "Water through a meter, with rollover and replacement")
                    .range("readings of zero and more; digits 2 to 9")
                    .need("before", measure(VOLUME), "reading then")
                    .need("after", measure(VOLUME), "reading now")
                    .maybe("digits", new Input.Number(), "digits of the dial, if it rolled over")
                    .maybe("old-last", measure(VOLUME), "last reading of a meter that was replaced")
                    .maybe("new-first", measure(VOLUME), "first reading of the meter that replaced it")
                    .example("before=9998 gal", "after=12 gal", "digits=4")
                    .works(Handbook::waterUsed),
            entry("make-up", "Make-up water by the day, by the degree day, and as a share of the steam made")
                    .range("above 0 to 10 years; 0.1 to 240 psia")
                    .need("used", measure(VOLUME), "water used between the readings")
                    .maybe("time", measure(TIME), "time between the readings")
                    .maybe("degree-days", measure(DEGREE_DAYS), "degree days between the readings")
                    .maybe("output", measure(POWER), "output of the boiler while the burner runs")
                    .maybe("burner-hours", measure(TIME), "time the burner ran between the readings")
                    .steam("0 psi")
                    .barometer()
                    .example(
                            "used=60 gal",
                            "time=30 d",
                            "degree-days=900 F-days",
                            "output=400000 Btu/h",
                            "burner-hours=300 h")
                    .works(Handbook::makeUp),
            entry("scale", "Hardness that make-up brought in")
                    .range("0 to 10 million gal, 0 to 100 gr/gal")
                    .need("water", measure(VOLUME), "make-up since the last cleaning")
                    .need("hardness", measure(WEIGHT_BY_VOLUME), "hardness of it")
                    .example("water=1000 gal", "hardness=10 gr/gal")
                    .works(told -> Deposits.scale(told.quantity("water"), told.quantity("hardness"))),
            entry("oxygen", "Oxygen that make-up brought in, and the iron it can eat")
                    .range("0 to 10 million gal, 0 to 30 C")
                    .need("water", measure(VOLUME), "make-up")
                    .given("temperature", measure(TEMPERATURE), "temperature of it", "50 F")
                    .example("water=1000 gal", "temperature=50 F")
                    .works(told -> Deposits.oxygen(told.quantity("water"), told.quantity("temperature"))),
            entry("concentration", "Cycles of concentration of the boiler's water")
                    .range("boiler 0 to 50,000 mg/L, feed above 0 to 50,000 mg/L")
                    .need("boiler", measure(WEIGHT_BY_VOLUME), "dissolved solids of the boiler's water")
                    .need("feed", measure(WEIGHT_BY_VOLUME), "dissolved solids of the feed")
                    .example("boiler=2400 mg/L", "feed=200 mg/L")
                    .works(told -> Deposits.cycles(told.quantity("boiler"), told.quantity("feed"))),
            entry("low-water-time", "Minutes from normal level to the cutoff at full fire with no feed")
                    .range("water above 0 to 10,000 gal, output to 100 million Btu/h")
                    .need(
                            "volume",
                            measure(VOLUME),
                            "water between normal level and cutoff, let down cold into a bucket")
                    .need("output", measure(POWER), "output at full fire")
                    .steam("1 psi")
                    .barometer()
                    .example("volume=6 gal", "output=240000 Btu/h")
                    .works(told -> LowWaterTime.minutes(
                            told.quantity("volume"),
                            told.quantity("output"),
                            told.quantity("pressure"),
                            told.quantity("barometer"))),
            entry("static-head", "Height over the water line that lets the water come back by itself")
                    .range("one-pipe drop 0 to 5 psi, two-pipe cut-out 0 to 15 psi, water 40 to 275 F")
                    .need("returns", choice(StaticHead.Returns.class, Words::of), "how the water comes back")
                    .need("pressure", measure(PRESSURE), "one-pipe: drop to the end of the main; two-pipe: cut-out")
                    .given("water", measure(TEMPERATURE), "temperature of the water in the return", "212 F")
                    .maybe("height", measure(LENGTH), "height that is there")
                    .example("returns=one-pipe-gravity", "pressure=0.5 psi", "height=24 in")
                    .works(Handbook::staticHead),
            entry("equalizer", "Least size of the equalizer")
                    .range("steam above 0 to 100,000 lb/h")
                    .need("steam", measure(MASS_FLOW), "steam that the boiler makes")
                    .example("steam=320 lb/h")
                    .works(told -> Sizes.equalizer(told.quantity("steam"))),
            entry("drain", "Least size of the bottom drain")
                    .range("steam above 0 to 100,000 lb/h")
                    .need("steam", measure(MASS_FLOW), "steam that the boiler makes")
                    .example("steam=320 lb/h")
                    .works(told -> Sizes.drain(told.quantity("steam"))),
            entry("safety-valve", "Least capacity of the safety valve")
                    .range("output to 100 million Btu/h, or surface to 20,000 ft2")
                    .maybe("output", measure(POWER), "most that the boiler can give")
                    .maybe("surface", measure(AREA), "heating surface of a steel boiler, instead")
                    .given("kind", choice(Sizes.Surface.class, Words::of), "what surface that is", "firetube")
                    .example("output=320000 Btu/h")
                    .works(Handbook::safetyValve),
            entry("combustion-air", "Free and gross area of the combustion air opening")
                    .range("input to 100 million Btu/h, free share above 0 to 100 %")
                    .need("input", measure(POWER), "input of everything that burns in the room")
                    .given("rule", choice(Sizes.AirRule.class, Words::of), "rule that applies", "north-carolina")
                    .given("louver", choice(Sizes.Louver.class, Words::of), "what stands in the opening", "metal")
                    .maybe("free", measure(RATIO), "share of the louver that is free, from its maker")
                    .example("input=400000 Btu/h", "louver=wood")
                    .works(Handbook::combustionAir),
            entry("steam-speed", "Speed of steam in a pipe")
                    .range("steam to 100,000 lb/h, pipe 1/2 to 12 in")
                    .need("steam", measure(MASS_FLOW), "steam that goes through")
                    .need("size", measure(LENGTH), "nominal size, schedule 40")
                    .steam("1 psi")
                    .barometer()
                    .example("steam=125 lb/h", "size=2 in")
                    .works(told -> PipeFlow.speed(
                            told.quantity("steam"),
                            told.quantity("size"),
                            told.quantity("pressure"),
                            told.quantity("barometer"))),
            entry("pipe-capacity", "Radiation that a main, riser or runout carries")
                    .range("sizes in the tables; mains above 0 to 400 ft")
                    .need("service", choice(PipeFlow.Service.class, Words::of), "what the pipe does")
                    .need("size", measure(LENGTH), "nominal size")
                    .given("length", measure(LENGTH), "equivalent length of run of a main", "200 ft")
                    .maybe("load", measure(AREA), "connected radiation, square feet EDR")
                    .example("service=main", "size=2 in", "length=200 ft", "load=400 ft2")
                    .works(Handbook::pipeCapacity),
            entry("trap-loss", "Steam through a trap failed open, and what it costs")
                    .range("orifice above 0 to 1 in, 0 to 150 psi")
                    .need("orifice", measure(LENGTH), "orifice of its seat")
                    .need("pressure", measure(PRESSURE), "pressure ahead of it")
                    .given("constant", choice(TrapLoss.Constants.class, Words::of), "whose constant", "doe")
                    .maybe("hours", measure(TIME), "how long it goes on")
                    .maybe("price", new Input.Money(), "price of a million Btu of fuel")
                    .given("efficiency", measure(RATIO), "efficiency of the boiler, gross", "80 %")
                    .barometer()
                    .example("orifice=1/8 in", "pressure=2 psi", "hours=2310 h", "price=10 dollars")
                    .works(Handbook::trapLoss),
            entry("season-hours", "Hours at full load that a season comes to")
                    .range("0 to 20,000 F-days, rise 20 to 150 F")
                    .need("degree-days", measure(DEGREE_DAYS), "degree days of the season")
                    .need("rise", measure(TEMPERATURE_DIFFERENCE), "design indoor less outdoor temperature")
                    .example("degree-days=7699 F-days", "rise=80 F")
                    .works(told -> Season.hours(told.quantity("degree-days"), told.quantity("rise"))),
            entry("pipe-loss", "Heat that a bare steam pipe gives off")
                    .range("pipe 1/2 to 12 in, steam from 20 F above the room to 500 F")
                    .need("size", measure(LENGTH), "nominal size, schedule 40")
                    .need("length", measure(LENGTH), "bare length")
                    .steam("1 psi")
                    .given("room", measure(TEMPERATURE), "temperature of the air around it", "70 F")
                    .barometer()
                    .example("size=2 in", "length=50 ft", "pressure=2 psi")
                    .works(Handbook::pipeLoss),
            entry("cycles", "Cycles an hour and length of burns from burner times")
                    .range("2 to 500 burns within a day")
                    .need("burns", new Input.Burns(), "when the flame came and went")
                    .example("burns=10:00-10:04:30 10:09-10:13 10:18:30-10:22:30")
                    .works(told -> Cycling.of(told.burns("burns"))));

    private Handbook() {}

    /** Every reckoning, in the order of a visit. */
    public static List<Entry> all() {
        return ENTRIES;
    }

    /** The reckoning of a name. */
    public static Optional<Entry> find(String name) {
        return ENTRIES.stream().filter(entry -> entry.name().equals(name)).findFirst();
    }

    /** The name nearest to a mistyped one. */
    public static Optional<String> nearest(String name) {
        return Nearest.to(name, ENTRIES.stream().map(Entry::name).toList());
    }

    private static Worked pressure(Told told) {
        Quantity pressure = told.quantity("pressure");
        if (!told.has("dial")) {
            if (told.has("grade")) {
                throw new IllegalArgumentException("grade: of use only with dial, the highest figure of the dial");
            }
            return PressureReading.of(pressure);
        }
        GaugeScale scale = GaugeScale.to(told.quantity("dial"));
        return told.has("grade")
                ? PressureReading.on(pressure, scale, grade(told.word("grade")))
                : PressureReading.on(pressure, scale);
    }

    private static GaugeGrade grade(String word) {
        return Arrays.stream(GaugeGrade.values())
                .filter(grade -> grade.mark().equalsIgnoreCase(word))
                .findFirst()
                .orElseThrow();
    }

    private static Worked load(Told told) {
        Worked survey = Load.survey(told.radiators("radiators"));
        return survey.then(ofRadiation(told, survey.result()));
    }

    private static Worked ofRadiation(Told told, Quantity edr) {
        Quantity pressure = told.quantity("pressure");
        Quantity barometer = told.quantity("barometer");
        return told.perhaps("output")
                .map(output -> Load.oversize(edr, pressure, barometer, output))
                .orElseGet(() -> Load.of(edr, pressure, barometer));
    }

    private static Worked gasInput(Told told) {
        Worked input = GasInput.clocked(
                told.quantity("dial"), told.number("turns"), told.quantity("time"), told.quantity("heat"));
        return told.perhaps("nameplate")
                .map(plate -> input.then(Firing.againstNameplate(
                        input.result(), input.quantity(GasInput.LOWEST), input.quantity(GasInput.HIGHEST), plate)))
                .orElse(input);
    }

    private static Worked oilInput(Told told) {
        Worked input = OilInput.nozzle(
                told.quantity("nozzle"), told.quantity("pressure"), told.quantity("within"), told.quantity("heat"));
        return told.perhaps("nameplate")
                .map(plate -> input.then(Firing.againstNameplate(
                        input.result(), input.quantity(OilInput.LOWEST), input.quantity(OilInput.HIGHEST), plate)))
                .orElse(input);
    }

    private static Worked waterUsed(Told told) {
        Quantity before = told.quantity("before");
        Quantity after = told.quantity("after");
        if (told.has("old-last") || told.has("new-first")) {
            if (!told.has("old-last") || !told.has("new-first")) {
                throw new IllegalArgumentException("a replaced meter needs both old-last and new-first");
            }
            return WaterMeter.replaced(before, told.quantity("old-last"), told.quantity("new-first"), after);
        }
        if (!told.has("digits")) {
            return WaterMeter.used(before, after);
        }
        Rational digits = told.number("digits");
        if (!digits.isWhole() || digits.numerator().bitLength() > 8) {
            throw new IllegalArgumentException("digits of " + digits + "; expected a whole number, 2 to 9");
        }
        return WaterMeter.used(before, after, digits.numerator().intValue());
    }

    private static Worked makeUp(Told told) {
        Quantity used = told.quantity("used");
        if (told.has("output") != told.has("burner-hours")) {
            throw new IllegalArgumentException("the share of steam needs both output and burner-hours");
        }
        List<Worked> parts = new ArrayList<>();
        told.perhaps("time").ifPresent(time -> parts.add(MakeUp.perDay(used, time)));
        told.perhaps("degree-days").ifPresent(cold -> parts.add(MakeUp.perDegreeDay(used, cold)));
        told.perhaps("burner-hours")
                .ifPresent(hours -> parts.add(MakeUp.shareOfSteam(
                        used, told.quantity("output"), hours, told.quantity("pressure"), told.quantity("barometer"))));
        return parts.stream()
                .reduce(Worked::then)
                .orElseThrow(() -> new IllegalArgumentException(
                        "nothing to put the water in proportion to; expected time, degree-days, or output with"
                                + " burner-hours"));
    }

    private static Worked staticHead(Told told) {
        StaticHead.Returns returns = told.choice("returns", StaticHead.Returns.class);
        Quantity pressure = told.quantity("pressure");
        Quantity water = told.quantity("water");
        return told.perhaps("height")
                .map(height -> StaticHead.needed(returns, pressure, water, height))
                .orElseGet(() -> StaticHead.needed(returns, pressure, water));
    }

    private static Worked safetyValve(Told told) {
        if (told.has("output") == told.has("surface")) {
            throw new IllegalArgumentException("expected either output, or the heating surface of a steel boiler");
        }
        return told.has("output")
                ? Sizes.safetyValve(told.quantity("output"))
                : Sizes.safetyValve(told.quantity("surface"), told.choice("kind", Sizes.Surface.class));
    }

    private static Worked combustionAir(Told told) {
        Quantity input = told.quantity("input");
        Sizes.AirRule rule = told.choice("rule", Sizes.AirRule.class);
        return told.perhaps("free")
                .map(free -> Sizes.combustionAir(input, rule, free))
                .orElseGet(() -> Sizes.combustionAir(input, rule, told.choice("louver", Sizes.Louver.class)));
    }

    private static Worked pipeCapacity(Told told) {
        PipeFlow.Service service = told.choice("service", PipeFlow.Service.class);
        Quantity size = told.quantity("size");
        Quantity length = told.quantity("length");
        return told.perhaps("load")
                .map(load -> PipeFlow.capacity(service, size, length, load))
                .orElseGet(() -> PipeFlow.capacity(service, size, length));
    }

    private static Worked trapLoss(Told told) {
        Quantity pressure = told.quantity("pressure");
        Quantity barometer = told.quantity("barometer");
        Worked loss = TrapLoss.through(
                told.quantity("orifice"), pressure, barometer, told.choice("constant", TrapLoss.Constants.class));
        if (told.has("hours") != told.has("price")) {
            throw new IllegalArgumentException("what it costs needs both hours and price");
        }
        if (!told.has("hours")) {
            return loss;
        }
        Worked steam = Saturation.at(pressure, barometer);
        Told.Price price = told.price("price");
        return loss.then(TrapLoss.cost(
                loss.result(),
                told.quantity("hours"),
                steam.quantity(Saturation.LATENT_HEAT),
                told.quantity("efficiency"),
                price.amount(),
                price.currency()));
    }

    private static Worked pipeLoss(Told told) {
        Worked steam = Saturation.at(told.quantity("pressure"), told.quantity("barometer"));
        return PipeLoss.bare(told.quantity("size"), told.quantity("length"), steam.result(), told.quantity("room"));
    }

    private static Fuel fuel(Told told) {
        return told.choice("fuel", Fuel.class);
    }

    private static Input.Kind measure(Dimension dimension) {
        return new Input.Measure(dimension);
    }

    private static <E extends Enum<E>> Input.Kind choice(Class<E> type, Function<E, String> word) {
        return new Input.Choice(Stream.of(type.getEnumConstants())
                .map(constant -> word.apply(constant).toLowerCase(java.util.Locale.ROOT))
                .toList());
    }

    private static Draft entry(String name, String title) {
        return new Draft(name, title);
    }

    /** An entry that is being written. */
    private static final class Draft {
        private final String name;
        private final String title;
        private final List<Input> inputs = new ArrayList<>();
        private String range = "";
        private List<String> example = List.of();

        Draft(String name, String title) {
            this.name = name;
            this.title = title;
        }

        Draft range(String words) {
            range = words;
            return this;
        }

        Draft need(String input, Input.Kind kind, String what) {
            inputs.add(new Input(input, kind, what, Input.Need.REQUIRED, ""));
            return this;
        }

        Draft given(String input, Input.Kind kind, String what, String otherwise) {
            inputs.add(new Input(input, kind, what, Input.Need.DEFAULTED, otherwise));
            return this;
        }

        Draft maybe(String input, Input.Kind kind, String what) {
            inputs.add(new Input(input, kind, what, Input.Need.OPTIONAL, ""));
            return this;
        }

        Draft barometer() {
            return given(
                    "barometer",
                    measure(ABSOLUTE_PRESSURE),
                    "barometer at the place, not reduced to sea level",
                    "14.696 psia");
        }

        Draft steam(String otherwise) {
            return given("pressure", measure(PRESSURE), "gauge pressure of the steam", otherwise);
        }

        Draft fuel() {
            return need("fuel", choice(Fuel.class, Words::of), "what is burnt");
        }

        Draft example(String... pairs) {
            example = List.of(pairs);
            return this;
        }

        Entry works(Function<Told, Worked> work) {
            return new Entry(name, title, range, inputs, example, work);
        }
    }
}
