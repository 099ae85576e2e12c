package gaugeglass.steam.reckoned;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Counted;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Of;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Seen;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.steam.observed.AirPressures.AirPressureFrom;
import gaugeglass.steam.observed.AirPressures.Barometer;
import gaugeglass.steam.observed.AirPressures.Elevation;
import gaugeglass.steam.observed.Returns.PumpType;
import gaugeglass.steam.observed.Returns.ReceiverPump;
import gaugeglass.steam.observed.Returns.VacuumHeld;
import gaugeglass.steam.observed.Systems.SystemReturn;
import gaugeglass.steam.observed.Systems.WaterReturn;
import gaugeglass.steam.observed.Traps.OtherOutlets;
import gaugeglass.steam.observed.Traps.SteamAhead;
import gaugeglass.steam.observed.Traps.TrapHeard;
import gaugeglass.steam.observed.Traps.TrapJudged;
import gaugeglass.steam.observed.Traps.TrapKind;
import gaugeglass.steam.observed.Traps.TrapProof;
import gaugeglass.steam.observed.Traps.TrapRow;
import gaugeglass.steam.observed.Traps.TrapSound;
import gaugeglass.steam.observed.Traps.TrapType;
import gaugeglass.steam.reckon.Saturation;
import java.util.List;

/**
 * What each trap's readings say of it, and how many of the set have failed.
 *
 * <p>A trap is held against the steam table at the pressure of its <em>return</em>. A return that is open to the air
 * cannot be hotter than 212 F by the sea, so a blowing trap's outlet is well below the boiler's steam and would pass beside
 * it. The weather moves that figure by less than two degrees, which the limits allow for. The share of the set is one reckoning over all of them: no trap is ever compared with another.
 */
public final class TrapStates {
    static final String NEAR = "trap.near-saturation";
    static final String OVER_INLET = "trap.outlet-over-inlet";
    static final String COLD_BELOW = "trap.cold-below";
    static final String SHARE_SEASON = "trap.failed-share-season";

    /** In the order in which they may use one another's results. */
    public static final List<Reckoning> ALL =
            List.of(new Boils(), new Heat(), new Source(), new Behind(), new Warmth(), new Result(), new Failed());

    private static final Quantity ATMOSPHERE = Quantity.of(0, Unit.PSI);
    private static final Quantity LEAST_LEFT = Quantity.of(1, Unit.PSI_ABSOLUTE);

    private TrapStates() {}

    /** What is behind a trap. */
    public enum BehindTrap {
        /** Nothing near steam. */
        NO_STEAM,
        STEAM,
        /** Steam that may have come from a neighbor. */
        STEAM_FROM_ANYWHERE,
        /** Water as hot as steam, or steam: its temperatures do not tell. */
        STEAM_OR_WATER
    }

    /** Whether heat gets to a trap. */
    public enum TrapWarmth {
        WARM,
        /** Steam is called for and does not get to it. */
        COLD,
        /** It is cold, and may be so because what is ahead of it takes all the steam. */
        COLD_AND_THROTTLED
    }

    /** What a trap counts as in the set. */
    public enum TrapResult {
        GOOD,
        /** Failed, open or shut. */
        FAILED,
        NOT_JUDGED
    }

    /** The temperature at which water boils in the returns; nothing there that is not steam is hotter. */
    @Item(
            id = "return.boils",
            look = "Tsat(air pressure), or Tsat(air pressure - vacuum held) with a vacuum pump (IAPWS-IF97).",
            of = "boiler",
            stage = Stage.HOT,
            ask = "At what temperature does water boil in the returns?")
    public record ReturnBoils(
            @Measured(unit = Unit.FAHRENHEIT, from = "90", to = "220")
            Quantity temperature) {}

    /** How hot a trap's outlet is, by its return. */
    public enum OutletHeat {
        /** Too cool for steam. */
        BELOW_BOILING,
        NEAR_BOILING
    }

    /**
     * How hot a trap's outlet is. Of a thermostatic trap it tells; others let out water as hot as steam.
     *
     * @param outlet as read
     * @param boils where water boils in the returns; where the outlet is too cool whatever that is, the least it can be
     */
    @Item(
            id = "trap.heat",
            look = "Near boiling if its outlet is no more than the limit below the return's boiling point.",
            of = "trap",
            stage = Stage.HOT,
            ask = "How hot is this trap's outlet, by its return?")
    public record TrapHeat(
            @Of String which,
            OutletHeat heat,

            @Measured(unit = Unit.FAHRENHEIT, from = "32", to = "300")
            Quantity outlet,

            @Measured(unit = Unit.FAHRENHEIT, from = "90", to = "220")
            Quantity boils) {}

    /** Where the heat at a trap's outlet can have come from. */
    public enum HeatSource {
        THIS_TRAP_ONLY,
        /** A neighbor may have sent it along the return. */
        ANYWHERE
    }

    /** Where the heat at a trap's outlet can have come from. */
    @Item(
            id = "trap.heat-source",
            look =
                    "From anywhere if other outlets are hot, or its outlet is hotter than its inlet by more than the limit; else from this trap only.",
            of = "trap",
            stage = Stage.HOT,
            ask = "Where can the heat at this trap's outlet have come from?")
    public record TrapHeatSource(@Of String which, HeatSource source) {}

    /** What is behind a trap, as it was seen, heard, or read from its temperatures. */
    @Item(
            id = "trap.behind",
            look =
                    "As judged by sight or sound, else by its temperatures; a trap that lets out water as hot as steam is not told by them.",
            of = "trap",
            stage = Stage.HOT,
            ask = "What is behind this trap?")
    public record TrapBehind(@Of String which, BehindTrap what) {}

    /** Whether heat gets to a trap, by the temperature before it. */
    @Item(
            id = "trap.warmth",
            look =
                    "Warm if the temperature before it is no lower than the limit; else cold, or cold and throttled where something meters the steam.",
            of = "trap",
            stage = Stage.HOT,
            ask = "Does heat get to this trap?")
    public record TrapWarm(@Of String which, TrapWarmth warmth) {}

    /** What a trap counts as in the set. */
    @Item(
            id = "trap.result",
            look = "By what is behind it and whether heat gets to it; not judged where steam may come from elsewhere.",
            of = "trap",
            stage = Stage.HOT,
            ask = "Is this trap good, failed, or not judged?")
    public record TrapCounts(@Of String which, TrapResult result) {}

    /**
     * How many traps of the set have failed, open or shut.
     *
     * @param failed at least so many
     * @param among of so many that could be judged; of all that are fitted, where the failed ones are enough even so
     * @param share the first out of the second
     */
    @Item(
            id = "trap-set.failed",
            look = "Traps that let steam through, of those that were judged.",
            of = "boiler",
            stage = Stage.HOT,
            ask = "How many of the traps have failed?")
    public record TrapsFailed(
            @Counted(from = 0, to = 1000) int failed,
            @Counted(from = 0, to = 1000) int among,

            @Measured(unit = Unit.PERCENT, from = "0", to = "100")
            Quantity share) {}

    /** Works out at what temperature water boils in the returns. */
    public static final class Boils implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return ReturnBoils.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(
                    SystemReturn.class,
                    ReceiverPump.class,
                    VacuumHeld.class,
                    AirPressureFrom.class,
                    Barometer.class,
                    Elevation.class);
        }

        @Override
        public List<ReturnBoils> work(Seen seen, String which) {
            boolean isUnderVacuum = isUnderVacuum(seen);
            Quantity air = LocalAir.usual(seen);
            Quantity gauge = isUnderVacuum ? below(seen.the(VacuumHeld.class).vacuum(), air) : ATMOSPHERE;
            return List.of(new ReturnBoils(Saturation.temperature(gauge, air)));
        }

        private static boolean isUnderVacuum(Seen seen) {
            return seen.the(SystemReturn.class).way() == WaterReturn.PUMPED
                    && seen.the(ReceiverPump.class).kind() == PumpType.VACUUM;
        }

        /** No vacuum is deeper than the air is heavy: what a gauge shows beyond that is held to the last pound. */
        private static Quantity below(Quantity vacuum, Quantity air) {
            Quantity gauge = ATMOSPHERE.minus(vacuum);
            Quantity deepest = LEAST_LEFT.minus(air);
            return gauge.isBelow(deepest) ? deepest : gauge;
        }
    }

    /** Works out how hot a trap's outlet is. */
    public static final class Heat implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return TrapHeat.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(TrapRow.class, SystemReturn.class, ReceiverPump.class, ReturnBoils.class);
        }

        @Override
        public List<String> limits() {
            return List.of(NEAR);
        }

        @Override
        public List<TrapHeat> work(Seen seen, String which) {
            Quantity outlet = seen.of(TrapRow.class, which).outlet();
            Quantity near = seen.limit(NEAR);
            // An outlet that is too cool under any air, or any vacuum, is judged without asking for either.
            if (isTooCool(outlet, Least.UNDER_VACUUM, near)) {
                return heat(which, OutletHeat.BELOW_BOILING, outlet, Least.UNDER_VACUUM);
            }
            if (!Boils.isUnderVacuum(seen) && isTooCool(outlet, Least.OPEN, near)) {
                return heat(which, OutletHeat.BELOW_BOILING, outlet, Least.OPEN);
            }
            Quantity boils = seen.the(ReturnBoils.class).temperature();
            return heat(
                    which,
                    isTooCool(outlet, boils, near) ? OutletHeat.BELOW_BOILING : OutletHeat.NEAR_BOILING,
                    outlet,
                    boils);
        }

        private static boolean isTooCool(Quantity outlet, Quantity boils, Quantity near) {
            return outlet.isBelow(boils.minus(near));
        }

        private static List<TrapHeat> heat(String which, OutletHeat heat, Quantity outlet, Quantity boils) {
            return List.of(new TrapHeat(which, heat, outlet, boils));
        }

        /** The lowest boiling points there can be; worked out when the first trap's outlet was read. */
        private static final class Least {
            private static final Quantity AIR = Quantity.of(Integer.parseInt(Barometer.LEAST), Unit.PSI_ABSOLUTE);
            private static final Quantity OPEN = Saturation.temperature(ATMOSPHERE, AIR);
            private static final Quantity UNDER_VACUUM = Saturation.temperature(LEAST_LEFT.minus(AIR), AIR);

            private Least() {}
        }
    }

    /** Works out where the heat at a trap's outlet can have come from. */
    public static final class Source implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return TrapHeatSource.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(TrapRow.class);
        }

        @Override
        public List<String> limits() {
            return List.of(OVER_INLET);
        }

        @Override
        public List<TrapHeatSource> work(Seen seen, String which) {
            TrapRow row = seen.of(TrapRow.class, which);
            boolean fromElsewhere = row.others() == OtherOutlets.SOME_HOT
                    || row.outlet().isAbove(row.inlet().plus(seen.limit(OVER_INLET)));
            return List.of(new TrapHeatSource(which, fromElsewhere ? HeatSource.ANYWHERE : HeatSource.THIS_TRAP_ONLY));
        }
    }

    /** Works out what is behind a trap, by whatever it was judged. */
    public static final class Behind implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return TrapBehind.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(TrapKind.class, TrapJudged.class, TrapHeard.class, TrapHeat.class, TrapHeatSource.class);
        }

        @Override
        public List<TrapBehind> work(Seen seen, String which) {
            TrapType kind = seen.of(TrapKind.class, which).kind();
            if (kind == TrapType.NONE_FITTED) {
                return List.of();
            }
            return switch (seen.of(TrapJudged.class, which).proof()) {
                case NO_STEAM_AT_IT -> List.of();
                case BY_SIGHT_OR_SOUND -> {
                    boolean blows = seen.of(TrapHeard.class, which).sound() == TrapSound.BLOWS;
                    yield behind(which, blows ? BehindTrap.STEAM : BehindTrap.NO_STEAM);
                }
                case BY_TEMPERATURE ->
                    behind(
                            which,
                            kind == TrapType.THERMOSTATIC ? byTemperature(seen, which) : BehindTrap.STEAM_OR_WATER);
            };
        }

        private static BehindTrap byTemperature(Seen seen, String which) {
            if (seen.of(TrapHeat.class, which).heat() == OutletHeat.BELOW_BOILING) {
                return BehindTrap.NO_STEAM;
            }
            return seen.of(TrapHeatSource.class, which).source() == HeatSource.ANYWHERE
                    ? BehindTrap.STEAM_FROM_ANYWHERE
                    : BehindTrap.STEAM;
        }

        private static List<TrapBehind> behind(String which, BehindTrap what) {
            return List.of(new TrapBehind(which, what));
        }
    }

    /** Works out whether heat gets to a trap. */
    public static final class Warmth implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return TrapWarm.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(TrapKind.class, TrapJudged.class, TrapRow.class);
        }

        @Override
        public List<String> limits() {
            return List.of(COLD_BELOW);
        }

        @Override
        public List<TrapWarm> work(Seen seen, String which) {
            if (seen.of(TrapKind.class, which).kind() == TrapType.NONE_FITTED
                    || seen.of(TrapJudged.class, which).proof() != TrapProof.BY_TEMPERATURE) {
                return List.of();
            }
            TrapRow row = seen.of(TrapRow.class, which);
            TrapWarmth warmth = row.inlet().isAtLeast(seen.limit(COLD_BELOW))
                    ? TrapWarmth.WARM
                    : row.ahead() == SteamAhead.FULL ? TrapWarmth.COLD : TrapWarmth.COLD_AND_THROTTLED;
            return List.of(new TrapWarm(which, warmth));
        }
    }

    /** Works out what a trap counts as. */
    public static final class Result implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return TrapCounts.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(TrapJudged.class, TrapBehind.class, TrapWarm.class);
        }

        @Override
        public List<TrapCounts> work(Seen seen, String which) {
            BehindTrap behind = seen.of(TrapBehind.class, which).what();
            if (seen.of(TrapJudged.class, which).proof() == TrapProof.BY_SIGHT_OR_SOUND) {
                return counts(which, behind == BehindTrap.STEAM ? TrapResult.FAILED : TrapResult.GOOD);
            }
            return counts(
                    which,
                    switch (seen.of(TrapWarm.class, which).warmth()) {
                        case COLD -> TrapResult.FAILED;
                        case COLD_AND_THROTTLED -> TrapResult.NOT_JUDGED;
                        case WARM ->
                            switch (behind) {
                                case NO_STEAM -> TrapResult.GOOD;
                                case STEAM -> TrapResult.FAILED;
                                case STEAM_FROM_ANYWHERE, STEAM_OR_WATER -> TrapResult.NOT_JUDGED;
                            };
                    });
        }

        private static List<TrapCounts> counts(String which, TrapResult result) {
            return List.of(new TrapCounts(which, result));
        }
    }

    /** Counts the failed ones. */
    public static final class Failed implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return TrapsFailed.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return List.of(TrapCounts.class);
        }

        @Override
        public List<String> limits() {
            return List.of(SHARE_SEASON);
        }

        @Override
        public List<TrapsFailed> work(Seen seen, String which) {
            int fitted = seen.tags("trap").size();
            // Failed traps that are too many of all that are fitted are too many of those that can be judged,
            // whatever the traps that were not reached would say.
            int tooMany = tooMany(fitted, seen.limit(SHARE_SEASON));
            if (tooMany <= fitted && seen.atLeast(tooMany, TrapCounts.class, Failed::isFailed)) {
                return List.of(new TrapsFailed(tooMany, fitted, share(tooMany, fitted)));
            }
            List<TrapCounts> all = seen.each(TrapCounts.class);
            int failed = (int) all.stream().filter(Failed::isFailed).count();
            int judged = (int) all.stream()
                    .filter(trap -> trap.result() != TrapResult.NOT_JUDGED)
                    .count();
            return judged == 0 ? List.of() : List.of(new TrapsFailed(failed, judged, share(failed, judged)));
        }

        private static boolean isFailed(TrapCounts trap) {
            return trap.result() == TrapResult.FAILED;
        }

        /** The least number of failed ones, two or more, that is above the share of all; one more than all where none is. */
        private static int tooMany(int fitted, Quantity share) {
            int failed = 2;
            while (failed <= fitted && !share(failed, fitted).isAbove(share)) {
                failed++;
            }
            return failed;
        }

        private static Quantity share(int failed, int among) {
            return Quantity.of(Rational.of(100L * failed, among), Unit.PERCENT);
        }
    }
}
