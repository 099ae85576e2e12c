package gaugeglass.engine.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A unit of measure with its exact size in SI.
 *
 * <p>Sizes come from definitions, not from rounded tables: the inch is 0.0254 m, the pound
 * 0.45359237 kg (international agreement of 1959), standard gravity 9.80665 m/s2, the US gallon 231
 * cubic inches, the Btu that of the International Table, 1055.05585262 J; inches of water and of
 * mercury are the conventional ones, of a liquid of 1000 and 13595.1 kg/m3 under standard gravity.
 * NIST SP 811 lists the same factors, rounded to seven digits.
 *
 * <p>A symbol is ASCII and unique within its dimension. Temperatures are the only units whose zero
 * is not the zero of SI.
 */
public enum Unit {
    PSI(
            Dimension.PRESSURE,
            "psi",
            Size.PSI,
            "psi psig psigauge lb/in2 lbs/in2 lbf/in2 lb/sqin lbs/sqin lb/squareinch pounds/squareinch pounds/sqin"
                    + " lb lbs pound pounds # #/in2"),
    OUNCE_PER_SQUARE_INCH(
            Dimension.PRESSURE,
            "oz/in2",
            Size.PSI.dividedBy(Rational.of(16)),
            "oz/in2 oz/sqin ozs/sqin ounce/squareinch ounces/squareinch ounces/sqin osi oz ozs ounce ounces"),
    INCH_OF_WATER(
            Dimension.PRESSURE,
            "inH2O",
            Size.INCH_OF_WATER,
            "inh2o inwc inwg iwc iwg inwater inwatercolumn inwatergauge inwatergage inofh2o inofwc inofwater"
                    + " inofwatercolumn inofwatergauge inchh2o inchwc inchwater inchwatercolumn inchofwater"
                    + " inchofwatercolumn inchesh2o incheswc incheswg incheswater incheswatercolumn"
                    + " incheswatergauge inchesofh2o inchesofwc inchesofwater inchesofwatercolumn"),
    FOOT_OF_WATER(
            Dimension.PRESSURE,
            "ftH2O",
            Size.INCH_OF_WATER.times(Rational.of(12)),
            "fth2o ftwc ftwater ftofwater ftofh2o feetwater feetofwater feetofh2o footofwater"),
    INCH_OF_MERCURY(
            Dimension.PRESSURE,
            "inHg",
            Size.INCH_OF_MERCURY,
            "inhg inofhg inmercury inofmercury inchhg incheshg inchesofhg inchesmercury inchesofmercury"
                    + " inchofmercury"),
    PASCAL(Dimension.PRESSURE, "Pa", Rational.ONE, "pa pascal pascals"),
    MILLIBAR(Dimension.PRESSURE, "mbar", Rational.of(100), "mbar mbarg mb millibar millibars hpa"),
    KILOPASCAL(Dimension.PRESSURE, "kPa", Rational.of(1000), "kpa kpag kilopascal kilopascals"),
    BAR(Dimension.PRESSURE, "bar", Rational.of(100_000), "bar barg bars"),

    PSI_ABSOLUTE(Dimension.ABSOLUTE_PRESSURE, "psia", Size.PSI, "psia psiabs psiabsolute lb/in2abs lb/sqinabs"),
    INCH_OF_MERCURY_ABSOLUTE(
            Dimension.ABSOLUTE_PRESSURE,
            "inHg abs",
            Size.INCH_OF_MERCURY,
            "inhgabs inhga inhg inofhg inmercury inofmercury inchhg incheshg inchesofhg inchesmercury inchesofmercury"
                    + " inchofmercury"),
    MILLIBAR_ABSOLUTE(
            Dimension.ABSOLUTE_PRESSURE, "mbar abs", Rational.of(100), "mbarabs mbara mbar mb millibar millibars hpa"),
    KILOPASCAL_ABSOLUTE(
            Dimension.ABSOLUTE_PRESSURE, "kPa abs", Rational.of(1000), "kpaabs kpaa kpa kilopascal kilopascals"),

    MILLIMETRE(Dimension.LENGTH, "mm", Rational.of(1, 1000), "mm millimetre millimetres millimeter millimeters"),
    CENTIMETRE(Dimension.LENGTH, "cm", Rational.of(1, 100), "cm centimetre centimetres centimeter centimeters"),
    INCH(Dimension.LENGTH, "in", Size.INCH, "in ins inch inches"),
    FOOT(Dimension.LENGTH, "ft", Size.FOOT, "ft foot feet"),
    METRE(Dimension.LENGTH, "m", Rational.ONE, "m metre metres meter meters"),

    SQUARE_INCH(
            Dimension.AREA,
            "in2",
            Size.INCH.times(Size.INCH),
            "in2 sqin sqinch sqinches squarein squareinch squareinches"),
    SQUARE_FOOT(
            Dimension.AREA,
            "ft2",
            Size.FOOT.times(Size.FOOT),
            "ft2 sqft sqfoot sqfeet squareft squarefoot squarefeet sf"),
    SQUARE_METRE(Dimension.AREA, "m2", Rational.ONE, "m2 sqm squaremetre squaremetres squaremeter squaremeters"),

    LITRE(Dimension.VOLUME, "L", Rational.of(1, 1000), "l litre litres liter liters"),
    GALLON(Dimension.VOLUME, "gal", Size.GALLON, "gal gals gallon gallons usgal usgals usgallon usgallons"),
    IMPERIAL_GALLON(
            Dimension.VOLUME,
            "imp gal",
            Rational.of(454_609, 100_000_000),
            "impgal impgals impgallon impgallons imperialgal imperialgallon imperialgallons"),
    CUBIC_FOOT(Dimension.VOLUME, "ft3", Size.CUBIC_FOOT, "ft3 cuft cufoot cufeet cubicft cubicfoot cubicfeet cf"),
    CUBIC_METRE(Dimension.VOLUME, "m3", Rational.ONE, "m3 cum cubicm cubicmetre cubicmetres cubicmeter cubicmeters"),

    SECOND(Dimension.TIME, "s", Rational.ONE, "s sec secs second seconds"),
    MINUTE(Dimension.TIME, "min", Rational.of(60), "min mins minute minutes"),
    HOUR(Dimension.TIME, "h", Size.HOUR, "h hr hrs hour hours"),
    DAY(Dimension.TIME, "d", Rational.of(86_400), "d day days"),

    FAHRENHEIT(
            Dimension.TEMPERATURE,
            "F",
            Rational.of(5, 9),
            Rational.of(45_967, 100),
            "f degf degreef degreesf fahrenheit degfahrenheit degreesfahrenheit"),
    CELSIUS(
            Dimension.TEMPERATURE,
            "C",
            Rational.ONE,
            Rational.of(27_315, 100),
            "c degc degreec degreesc celsius degcelsius degreescelsius"),
    KELVIN(Dimension.TEMPERATURE, "K", Rational.ONE, "k kelvin"),

    FAHRENHEIT_DEGREE(
            Dimension.TEMPERATURE_DIFFERENCE,
            "F",
            Rational.of(5, 9),
            "f degf degreef degreesf fdeg fdegree fdegrees fahrenheit degfahrenheit degreesfahrenheit"
                    + " fahrenheitdegrees"),
    CELSIUS_DEGREE(
            Dimension.TEMPERATURE_DIFFERENCE,
            "C",
            Rational.ONE,
            "c degc degreec degreesc cdeg cdegree cdegrees celsius degcelsius degreescelsius celsiusdegrees"
                    + " k kelvin"),

    BTU_PER_HOUR(
            Dimension.POWER, "Btu/h", Size.BTU_PER_HOUR, "btu/h btus/h btuh btuhr btu/hr btus/hr btu/hour btus/hour"),
    THOUSAND_BTU_PER_HOUR(
            Dimension.POWER, "MBH", Size.BTU_PER_HOUR.times(Rational.of(1000)), "mbh kbtu/h kbtuh kbtu/hr kbtu/hour"),
    KILOWATT(Dimension.POWER, "kW", Rational.of(1000), "kw kilowatt kilowatts"),
    /**
     * The horsepower in which steam output is rated: 33,475 Btu/h (US DOE Steam Tip Sheet 16), not
     * a motor's.
     */
    STEAM_HORSEPOWER(Dimension.POWER, "bhp", Size.BTU_PER_HOUR.times(Rational.of(33_475)), "bhp"),

    OUNCE(Dimension.MASS, "oz", Size.POUND.dividedBy(Rational.of(16)), "oz ozs ounce ounces"),
    POUND(Dimension.MASS, "lb", Size.POUND, "lb lbs lbm pound pounds #"),
    KILOGRAM(Dimension.MASS, "kg", Rational.ONE, "kg kgs kilogram kilograms"),

    POUND_PER_HOUR(
            Dimension.MASS_FLOW,
            "lb/h",
            Size.POUND.dividedBy(Size.HOUR),
            "lb/h lb/hr lbs/h lbs/hr lb/hour lbs/hour pound/h pounds/h pounds/hr pounds/hour pph #/h #/hr"),
    KILOGRAM_PER_HOUR(Dimension.MASS_FLOW, "kg/h", Rational.of(1, 3600), "kg/h kg/hr kgs/h kg/hour kilograms/hour"),

    GALLON_PER_HOUR(
            Dimension.VOLUME_FLOW,
            "gal/h",
            Size.GALLON.dividedBy(Size.HOUR),
            "gal/h gal/hr gal/hour gals/h gals/hr gals/hour gallons/h gallons/hr gallons/hour gph usgph"),
    GALLON_PER_MINUTE(
            Dimension.VOLUME_FLOW,
            "gpm",
            Size.GALLON.dividedBy(Rational.of(60)),
            "gpm usgpm gal/min gals/min gallons/min gal/minute gallons/minute"),
    CUBIC_FOOT_PER_HOUR(
            Dimension.VOLUME_FLOW,
            "ft3/h",
            Size.CUBIC_FOOT.dividedBy(Size.HOUR),
            "ft3/h ft3/hr ft3/hour cfh cuft/h cuft/hr cuft/hour cubicfeet/h cubicfeet/hr cubicfeet/hour"),
    CUBIC_FOOT_PER_MINUTE(
            Dimension.VOLUME_FLOW,
            "ft3/min",
            Size.CUBIC_FOOT.dividedBy(Rational.of(60)),
            "ft3/min ft3/minute cfm cuft/min cubicfeet/min cubicfeet/minute"),
    LITRE_PER_MINUTE(
            Dimension.VOLUME_FLOW,
            "L/min",
            Rational.of(1, 60_000),
            "l/min l/minute lpm litres/min litres/minute liters/min liters/minute"),
    CUBIC_METRE_PER_HOUR(Dimension.VOLUME_FLOW, "m3/h", Rational.of(1, 3600), "m3/h m3/hr m3/hour"),
    GALLON_PER_DAY(
            Dimension.VOLUME_FLOW,
            "gal/d",
            Size.GALLON.dividedBy(Rational.of(86_400)),
            "gal/d gal/day gals/day gallons/day gpd"),

    FOOT_PER_SECOND(Dimension.VELOCITY, "ft/s", Size.FOOT, "ft/s ft/sec ft/second fps feet/s feet/sec feet/second"),
    FOOT_PER_MINUTE(
            Dimension.VELOCITY,
            "ft/min",
            Size.FOOT.dividedBy(Rational.of(60)),
            "ft/min ft/minute fpm feet/min feet/minute"),
    METRE_PER_SECOND(
            Dimension.VELOCITY, "m/s", Rational.ONE, "m/s m/sec metres/second meters/second metres/s meters/s"),

    BTU(Dimension.HEAT, "Btu", Size.BTU, "btu btus"),
    /** A hundred thousand Btu of the International Table; that of US gas bills is smaller by 0.02 %. */
    THERM(Dimension.HEAT, "therm", Size.BTU.times(Rational.of(100_000)), "therm therms"),
    MEGAJOULE(Dimension.HEAT, "MJ", Rational.of(1_000_000), "mj megajoule megajoules"),
    KILOWATT_HOUR(Dimension.HEAT, "kWh", Rational.of(3_600_000), "kwh kwhr kwhrs kilowatthour kilowatthours"),

    BTU_PER_POUND(
            Dimension.HEAT_BY_WEIGHT,
            "Btu/lb",
            Size.BTU.dividedBy(Size.POUND),
            "btu/lb btu/lbs btus/lb btu/lbm btu/pound"),
    KILOJOULE_PER_KILOGRAM(Dimension.HEAT_BY_WEIGHT, "kJ/kg", Rational.of(1000), "kj/kg"),

    BTU_PER_CUBIC_FOOT(
            Dimension.HEAT_BY_VOLUME,
            "Btu/ft3",
            Size.BTU.dividedBy(Size.CUBIC_FOOT),
            "btu/ft3 btus/ft3 btu/cuft btu/cubicft btu/cubicfoot btu/scf btu/cf"),
    BTU_PER_GALLON(
            Dimension.HEAT_BY_VOLUME,
            "Btu/gal",
            Size.BTU.dividedBy(Size.GALLON),
            "btu/gal btus/gal btu/gals btu/gallon btu/usgal"),
    MEGAJOULE_PER_CUBIC_METRE(Dimension.HEAT_BY_VOLUME, "MJ/m3", Rational.of(1_000_000), "mj/m3"),

    BTU_PER_HOUR_FOOT(
            Dimension.POWER_BY_LENGTH,
            "Btu/h ft",
            Size.BTU_PER_HOUR.dividedBy(Size.FOOT),
            "btu/hft btu/hrft btuhft btuh/ft btu/h/ft btu/hr/ft btuhr/ft"),
    WATT_PER_METRE(Dimension.POWER_BY_LENGTH, "W/m", Rational.ONE, "w/m watts/m watts/metre watts/meter"),

    CUBIC_FOOT_PER_POUND(
            Dimension.VOLUME_BY_WEIGHT,
            "ft3/lb",
            Size.CUBIC_FOOT.dividedBy(Size.POUND),
            "ft3/lb cuft/lb ft3/lbm cubicft/lb cubicfeet/lb cubicfeet/pound"),
    CUBIC_METRE_PER_KILOGRAM(Dimension.VOLUME_BY_WEIGHT, "m3/kg", Rational.ONE, "m3/kg"),

    /** Water treatment's measure of hardness: 1/7000 lb in a US gallon, 17.118 mg/L. */
    GRAIN_PER_GALLON(
            Dimension.WEIGHT_BY_VOLUME,
            "gr/gal",
            Size.POUND.dividedBy(Rational.of(7000)).dividedBy(Size.GALLON),
            "gr/gal gr/usgal grain/gal grains/gal grain/gallon grains/gallon gpg"),
    MILLIGRAM_PER_LITRE(Dimension.WEIGHT_BY_VOLUME, "mg/L", Rational.of(1, 1000), "mg/l mg/litre mg/liter g/m3"),
    POUND_PER_GALLON(
            Dimension.WEIGHT_BY_VOLUME,
            "lb/gal",
            Size.POUND.dividedBy(Size.GALLON),
            "lb/gal lbs/gal lb/gallon lbs/gallon pounds/gallon"),

    PER_HOUR(Dimension.FREQUENCY, "per h", Rational.of(1, 3600), "perh perhr perhour times/h times/hr times/hour"),
    PER_DAY(Dimension.FREQUENCY, "per d", Rational.of(1, 86_400), "perd perday times/d times/day"),

    FAHRENHEIT_DAY(
            Dimension.DEGREE_DAYS,
            "F-days",
            Rational.of(5 * 86_400, 9),
            "fdays fday degreedays degreeday degfdays degfday fdegreedays dd hdd"),
    CELSIUS_DAY(
            Dimension.DEGREE_DAYS, "C-days", Rational.of(86_400), "cdays cday degcdays degcday cdegreedays kdays kday"),

    GALLON_PER_FAHRENHEIT_DAY(
            Dimension.VOLUME_BY_DEGREE_DAY,
            "gal/F-day",
            Size.GALLON.dividedBy(Rational.of(5 * 86_400, 9)),
            "gal/fday gal/degreeday gal/dd gal/hdd gallons/degreeday"),
    LITRE_PER_CELSIUS_DAY(
            Dimension.VOLUME_BY_DEGREE_DAY,
            "L/C-day",
            Rational.of(1, 86_400_000),
            "l/cday l/kday litres/cday liters/cday"),

    PERCENT(Dimension.RATIO, "%", Rational.of(1, 100), "% percent pct"),
    PARTS_PER_MILLION(Dimension.RATIO, "ppm", Rational.of(1, 1_000_000), "ppm ppmv parts/million"),
    /**
     * So many times as much. It is written out because a bare 5 where shares are expected may mean
     * 5 %.
     */
    TIMES(Dimension.RATIO, "times", Rational.ONE, "times x");

    private static final Unit[][] BY_DIMENSION = byDimension();

    private final Dimension dimension;
    private final String symbol;
    private final Rational factor;
    private final Rational offset;

    /**
     * Squeezed spellings, each between two spaces: one string to search beats a table to build at
     * start-up.
     */
    private final String spellings;

    Unit(Dimension dimension, String symbol, Rational factor, String spellings) {
        this(dimension, symbol, factor, Rational.ZERO, spellings);
    }

    Unit(Dimension dimension, String symbol, Rational factor, Rational offset, String spellings) {
        this.dimension = dimension;
        this.symbol = symbol;
        this.factor = factor;
        this.offset = offset;
        this.spellings = spaced(spellings);
    }

    /** What the unit measures. */
    public Dimension dimension() {
        return dimension;
    }

    /** The one way this project prints the unit: ASCII, unique within the dimension. */
    public String symbol() {
        return symbol;
    }

    /**
     * The spellings the parser takes, lower case and without spaces, points and hyphens; in order
     * of commonness.
     */
    public List<String> spellings() {
        List<String> result = new ArrayList<>();
        int start = 1;
        for (int end = spellings.indexOf(' ', start); end >= 0; end = spellings.indexOf(' ', start)) {
            result.add(spellings.substring(start, end));
            start = end + 1;
        }
        return List.copyOf(result);
    }

    /** The units of a dimension, in a fixed order. */
    public static List<Unit> of(Dimension dimension) {
        return List.of(BY_DIMENSION[dimension.ordinal()]);
    }

    /**
     * The unit of a dimension that is spelled so; capitals, spaces, points and hyphens do not
     * count.
     */
    public static Optional<Unit> spelled(String spelling, Dimension dimension) {
        return withKey(QuantityText.squeeze(spelling), dimension);
    }

    static Optional<Unit> withKey(String key, Dimension dimension) {
        if (!key.isEmpty() && key.indexOf(' ') < 0) {
            String between = spaced(key);
            for (Unit unit : BY_DIMENSION[dimension.ordinal()]) {
                if (unit.spellings.contains(between)) {
                    return Optional.of(unit);
                }
            }
        }
        return Optional.empty();
    }

    /** Not with plus signs, for the reason given in {@link Dimension}. */
    private static String spaced(String text) {
        return " ".concat(text).concat(" ");
    }

    /** The same value in the SI unit of the dimension. */
    Rational toBase(Rational value) {
        return (offset.signum() == 0 ? value : value.plus(offset)).times(factor);
    }

    /** The value in this unit of a value in the SI unit of the dimension. */
    Rational fromBase(Rational base) {
        Rational scaled = base.dividedBy(factor);
        return offset.signum() == 0 ? scaled : scaled.minus(offset);
    }

    /**
     * The unit in which a distance between two values in this unit is given: itself, unless this is
     * a point's.
     */
    Unit distanceUnit() {
        return switch (this) {
            case FAHRENHEIT -> FAHRENHEIT_DEGREE;
            case CELSIUS, KELVIN -> CELSIUS_DEGREE;
            case PSI_ABSOLUTE -> PSI;
            case INCH_OF_MERCURY_ABSOLUTE -> INCH_OF_MERCURY;
            case MILLIBAR_ABSOLUTE -> MILLIBAR;
            case KILOPASCAL_ABSOLUTE -> KILOPASCAL;
            default -> this;
        };
    }

    private static Unit[][] byDimension() {
        Unit[] all = values();
        Unit[][] result = new Unit[Dimension.values().length][];
        for (int d = 0; d < result.length; d++) {
            int count = 0;
            for (Unit unit : all) {
                if (unit.dimension.ordinal() == d) {
                    count++;
                }
            }
            result[d] = new Unit[count];
            for (int u = all.length - 1; u >= 0; u--) {
                if (all[u].dimension.ordinal() == d) {
                    result[d][--count] = all[u];
                }
            }
        }
        return result;
    }

    /**
     * Exact sizes that several units share; an enum's constants cannot use its own static fields.
     */
    private static final class Size {
        static final Rational INCH = Rational.of(254, 10_000);
        static final Rational FOOT = Rational.of(3048, 10_000);
        static final Rational CUBIC_FOOT = FOOT.times(FOOT).times(FOOT);
        static final Rational GALLON = INCH.times(INCH).times(INCH).times(Rational.of(231));
        static final Rational POUND = Rational.of(45_359_237, 100_000_000);
        static final Rational GRAVITY = Rational.of(980_665, 100_000);
        static final Rational PSI = POUND.times(GRAVITY).dividedBy(INCH.times(INCH));
        static final Rational INCH_OF_WATER = Rational.of(1000).times(GRAVITY).times(INCH);
        static final Rational INCH_OF_MERCURY =
                Rational.of(135_951, 10).times(GRAVITY).times(INCH);
        static final Rational HOUR = Rational.of(3600);
        static final Rational BTU = Rational.of(105_505_585_262L, 100_000_000L);
        static final Rational BTU_PER_HOUR = BTU.dividedBy(HOUR);

        private Size() {}
    }
}
