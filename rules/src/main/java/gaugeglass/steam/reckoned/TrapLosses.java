package gaugeglass.steam.reckoned;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Counted;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Seen;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.steam.observed.AirPressures.AirPressureFrom;
import gaugeglass.steam.observed.AirPressures.Barometer;
import gaugeglass.steam.observed.AirPressures.Elevation;
import gaugeglass.steam.observed.Traps.FuelPrice;
import gaugeglass.steam.observed.Traps.SeasonDegreeDays;
import gaugeglass.steam.reckon.Saturation;
import gaugeglass.steam.reckon.Season;
import gaugeglass.steam.reckon.TrapLoss;
import gaugeglass.steam.reckon.TrapLoss.Constants;
import gaugeglass.steam.reckon.Worked;
import gaugeglass.steam.reckoned.ControlSettings.OperatingCutOut;
import gaugeglass.steam.reckoned.TrapStates.BehindTrap;
import gaugeglass.steam.reckoned.TrapStates.TrapBehind;
import java.util.List;

/**
 * What the traps that blow let through, in an hour and over a season, and what it costs.
 *
 * <p>At most: the constant is the one that gives US DOE Steam Tip Sheet 1's table, for choked flow, which a heating boiler's
 * pressure does not make. One seat is taken for all.
 */
public final class TrapLosses {
    static final String SEAT = "trap.seat";
    static final String DESIGN_RISE = "site.design-rise";

    /** In the order in which they may use one another's results. */
    public static final List<Reckoning> ALL = List.of(new Steam(), new Money());

    private static final Quantity ATMOSPHERE = Quantity.of(0, Unit.PSI);
    private static final Rational CENTS = Rational.of(100);

    private TrapLosses() {}

    /**
     * The steam that blowing traps let through at most.
     *
     * @param traps how many blow
     * @param pressure ahead of them: the operating cut-out, and none where that is below the air
     * @param flow of all together
     * @param steam over a season's hours at full load
     * @param fuel that it takes
     */
    @Item(
            id = "trap-set.loss",
            look =
                    "loss = k x abs x d^2 for each blowing trap (US DOE); all = lost x hours; fuel = all x latent / (eff / 100); hours = DD x day / rise.",
            of = "boiler",
            stage = Stage.HOT,
            ask = "How much steam do the blowing traps let through at most, and what fuel does it take?")
    public record TrapSteamLost(
            @Counted(from = 1, to = 1000) int traps,

            @Measured(unit = Unit.PSI, from = "0", to = "90")
            Quantity pressure,

            @Measured(unit = Unit.POUND_PER_HOUR, from = "0", to = "1000000")
            Quantity flow,

            @Measured(unit = Unit.POUND, from = "0", to = "10000000000")
            Quantity steam,

            @Measured(unit = Unit.BTU, from = "0", to = "100000000000000")
            Quantity fuel) {}

    /** What that fuel costs over a season, in the money it is billed in. */
    @Item(
            id = "trap-set.cost",
            look = "cost = fuel / million x price.",
            of = "boiler",
            stage = Stage.HOT,
            ask = "What does the steam lost cost over a season?")
    public record TrapMoneyLost(
            @Counted(from = 0, to = 2000000000) int money) {}

    /** Works out the steam. */
    public static final class Steam implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return TrapSteamLost.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(
                    TrapBehind.class,
                    OperatingCutOut.class,
                    AirPressureFrom.class,
                    Barometer.class,
                    Elevation.class,
                    SeasonDegreeDays.class);
        }

        @Override
        public List<String> limits() {
            return List.of(SEAT, DESIGN_RISE, GrossOutputReckoning.SHARE);
        }

        @Override
        public List<TrapSteamLost> work(Seen seen, String which) {
            int traps = (int) seen.each(TrapBehind.class).stream()
                    .filter(trap -> trap.what() == BehindTrap.STEAM)
                    .count();
            if (traps == 0) {
                return List.of();
            }
            Quantity setting = seen.the(OperatingCutOut.class).pressure();
            Quantity pressure = setting.isBelow(ATMOSPHERE) ? ATMOSPHERE : setting;
            Quantity air = LocalAir.usual(seen);
            Quantity hours = Season.hours(seen.the(SeasonDegreeDays.class).cold(), seen.limit(DESIGN_RISE))
                    .quantity(Season.HOURS);
            Quantity one = TrapLoss.through(seen.limit(SEAT), pressure, air, Constants.DOE)
                    .quantity(TrapLoss.LOSS);
            Worked season = TrapLoss.cost(
                    one,
                    hours,
                    Saturation.latentHeat(pressure, air),
                    seen.limit(GrossOutputReckoning.SHARE),
                    Rational.ZERO,
                    "");
            return List.of(new TrapSteamLost(
                    traps,
                    pressure,
                    one.times(traps).roundedToDigits(2),
                    season.quantity(TrapLoss.OVER_TIME).times(traps).roundedToDigits(2),
                    season.quantity(TrapLoss.FUEL).times(traps).roundedToDigits(3)));
        }
    }

    /** Works out the money. */
    public static final class Money implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return TrapMoneyLost.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(TrapSteamLost.class, FuelPrice.class);
        }

        @Override
        public List<TrapMoneyLost> work(Seen seen, String which) {
            Rational million =
                    seen.the(TrapSteamLost.class).fuel().valueIn(Unit.BTU).dividedBy(Rational.of(1_000_000));
            Rational money = million.times(Rational.of(seen.the(FuelPrice.class).cents()))
                    .dividedBy(CENTS);
            long whole = money.numerator()
                    .add(money.denominator().shiftRight(1))
                    .divide(money.denominator())
                    .longValueExact();
            return List.of(new TrapMoneyLost((int) Math.min(whole, Integer.MAX_VALUE)));
        }
    }
}
