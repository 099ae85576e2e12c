package gaugeglass.engine.quantity;

/**
 * What kind of thing a quantity measures; only quantities of one dimension compare.
 *
 * <p>Two dimensions are <em>points</em> on a scale with a fixed beginning and have a dimension for
 * the distance between two of their points: a temperature and a temperature difference, an absolute
 * pressure and a gauge pressure. A point and a distance add up to a point; two points do not add up
 * to anything.
 */
public enum Dimension {
    /**
     * Pressure over that of the surrounding air, and differences of pressure; below zero is vacuum
     * or draft.
     */
    PRESSURE("gauge pressure", "psi, oz/in2, inH2O, inHg or kPa", true),
    /** Pressure over a perfect vacuum, as a barometer shows it. */
    ABSOLUTE_PRESSURE("absolute pressure", "psia, inHg, kPa or mbar", false),
    LENGTH("length", "in, ft, mm or m", true),
    AREA("area", "in2, ft2 or m2", false),
    VOLUME("volume", "gal, ft3, L or m3", false),
    /** Clock time; years and months are no fixed number of days and are read by {@link Periods}. */
    TIME("time", "s, min, h or d", false),
    TEMPERATURE("temperature", "F or C", true),
    TEMPERATURE_DIFFERENCE("temperature difference", "F or C", true),
    POWER("heat rate", "Btu/h, MBH or kW", true),
    MASS("weight", "lb, oz or kg", false),
    MASS_FLOW("weight per time", "lb/h or kg/h", true),
    VOLUME_FLOW("flow", "gal/h, gpm, ft3/h or L/min", true),
    VELOCITY("speed", "ft/s, ft/min or m/s", false),
    HEAT("heat", "Btu, therm, kWh or MJ", false),
    /** Heat taken up or given off by a weight of something, as in boiling. */
    HEAT_BY_WEIGHT("heat by weight", "Btu/lb or kJ/kg", false),
    /** What a fuel sold by volume gives when it is burnt. */
    HEAT_BY_VOLUME("heat by volume", "Btu/ft3, Btu/gal or MJ/m3", false),
    /** What a length of something gives off. */
    POWER_BY_LENGTH("heat rate by length", "Btu/h ft or W/m", true),
    VOLUME_BY_WEIGHT("volume by weight", "ft3/lb or m3/kg", false),
    /** How much of something is dissolved in water. */
    WEIGHT_BY_VOLUME("weight by volume", "gr/gal, mg/L or lb/gal", false),
    /** How often something happens. */
    FREQUENCY("how often", "per h or per d", false),
    /** How cold a stretch of time was: degrees short of a base temperature, day by day, added up. */
    DEGREE_DAYS("degree days", "F-days or C-days", false),
    VOLUME_BY_DEGREE_DAY("volume by degree day", "gal/F-day or L/C-day", false),
    RATIO("ratio", "%, ppm or times", true);

    private final String words;
    private final String usualUnits;
    private final boolean canBeNegative;
    private final String writtenAs;

    Dimension(String words, String usualUnits, boolean canBeNegative) {
        this.words = words;
        this.usualUnits = usualUnits;
        this.canBeNegative = canBeNegative;
        // Not with plus signs: the first plus that a process evaluates costs it 15 ms of set-up.
        // A share has no unit that anybody would call one.
        this.writtenAs = words.equals("ratio")
                ? "a number with ".concat(usualUnits)
                : "a number and a unit of "
                        .concat(words)
                        .concat(" (")
                        .concat(usualUnits)
                        .concat(")");
    }

    /** The dimension in plain words, as messages show it: {@code gauge pressure}. */
    public String words() {
        return words;
    }

    /**
     * The units people mostly write, as a phrase for a message: {@code psi, oz/in2, inH2O, inHg or
     * kPa}.
     */
    public String usualUnits() {
        return usualUnits;
    }

    /** How a quantity of this dimension is written, as a phrase for a message. */
    String writtenAs() {
        return writtenAs;
    }

    /** Whether a written value may be below zero. */
    boolean canBeNegative() {
        return canBeNegative;
    }

    /** Whether this is a point on a scale with a distance dimension of its own. */
    boolean isPoint() {
        return this == TEMPERATURE || this == ABSOLUTE_PRESSURE;
    }

    /**
     * The dimension of the distance between two values of this dimension: itself, unless it is a
     * point.
     */
    public Dimension distance() {
        return switch (this) {
            case TEMPERATURE -> TEMPERATURE_DIFFERENCE;
            case ABSOLUTE_PRESSURE -> PRESSURE;
            default -> this;
        };
    }
}
