package gaugeglass.steam.reckoned;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Of;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Seen;
import gaugeglass.engine.vocabulary.Stage;
import gaugeglass.steam.observed.AirPressures.Barometer;
import gaugeglass.steam.observed.Gauges.DialUnit;
import gaugeglass.steam.observed.Gauges.GaugeRole;
import gaugeglass.steam.observed.Gauges.GaugeUnitPrinted;
import gaugeglass.steam.observed.Gauges.GaugeUse;
import gaugeglass.steam.observed.Gauges.GaugeWithSteam;
import gaugeglass.steam.reckon.Saturation;
import gaugeglass.steam.reckoned.LocalAir.AirPressure;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** What the steam's temperature says of a gauge's reading: by how much they part, and whether another unit would fit. */
public final class GaugeAgainstSteam {
    /** In the order in which they may use one another's results. */
    public static final List<Reckoning> ALL = List.of(new Hotter(), new Cooler(), new Fit());

    static final String DIFFERENCE = "gauge.steam-difference";

    private static final Quantity LOWEST_READING = Quantity.of(-7, Unit.PSI);
    private static final Quantity HIGHEST_READING = Quantity.of(60, Unit.PSI);

    private GaugeAgainstSteam() {}

    /** Whether the printed unit fits the steam's temperature. */
    public enum UnitFit {
        FITS,
        ANOTHER_UNIT_WOULD,
        NO_UNIT_WOULD
    }

    /**
     * By how much the steam is at least hotter than a gauge says.
     *
     * @param which the gauge
     * @param reading what the gauge said
     * @param steam the pressure that the steam's temperature stands for at the least
     * @param difference below zero where the steam may be cooler
     */
    @Item(
            id = "gauge.steam-hotter",
            look =
                    "difference = steam temperature, as cool as the probe's place allows, - Tsat(reading + air pressure) (IAPWS-IF97).",
            of = "gauge",
            stage = Stage.HOT,
            ask = "By how much is the steam hotter than this gauge says?")
    public record GaugeSteamHotter(
            @Of String which,

            @Measured(unit = Unit.PSI, from = "-7", to = "60")
            Quantity reading,

            @Measured(unit = Unit.PSI, from = "-16", to = "140")
            Quantity steam,

            @Measured(unit = Unit.FAHRENHEIT_DEGREE, from = "-400", to = "400")
            Quantity difference) {}

    /**
     * By how much the steam is at least cooler than a gauge says.
     *
     * @param which the gauge
     * @param reading what the gauge said
     * @param steam the pressure that the steam's temperature stands for at the most
     * @param difference below zero where the steam may be hotter
     */
    @Item(
            id = "gauge.steam-cooler",
            look =
                    "difference = Tsat(reading + air pressure) - steam temperature, as hot as the probe's place allows (IAPWS-IF97).",
            of = "gauge",
            stage = Stage.HOT,
            ask = "By how much is the steam cooler than this gauge says?")
    public record GaugeSteamCooler(
            @Of String which,

            @Measured(unit = Unit.PSI, from = "-7", to = "60")
            Quantity reading,

            @Measured(unit = Unit.PSI, from = "-16", to = "140")
            Quantity steam,

            @Measured(unit = Unit.FAHRENHEIT_DEGREE, from = "-400", to = "400")
            Quantity difference) {}

    /** Whether the figure on the dial would fit the steam's temperature in the printed unit or only in another. */
    @Item(
            id = "gauge.unit-fit",
            look =
                    "A unit fits if Tsat(figure read in that unit + air pressure) is no further from the steam's temperature than the limit (IAPWS-IF97).",
            of = "gauge",
            stage = Stage.HOT,
            ask = "Does the printed unit fit the steam's temperature, or only another?")
    public record GaugeUnitFit(@Of String which, DialUnit printed, UnitFit fit) {}

    private static List<Class<? extends Record>> needs(List<Class<? extends Record>> first) {
        List<Class<? extends Record>> needs = new ArrayList<>(first);
        needs.addAll(TrueSteam.NEEDS);
        needs.add(AirPressure.class);
        needs.add(Barometer.class);
        return needs;
    }

    /** Works out by how much the steam is hotter. */
    public static final class Hotter implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return GaugeSteamHotter.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return GaugeAgainstSteam.needs(List.of(GaugeRole.class, GaugeWithSteam.class));
        }

        @Override
        public List<String> limits() {
            return List.of(TrueSteam.LOW_AT_LEAST, DIFFERENCE);
        }

        @Override
        public List<GaugeSteamHotter> work(Seen seen, String which) {
            if (seen.of(GaugeRole.class, which).role() == GaugeUse.ELSEWHERE) {
                return List.of();
            }
            Quantity reading = seen.of(GaugeWithSteam.class, which).reading();
            Quantity steam = TrueSteam.coolest(seen);
            Quantity most = seen.limit(DIFFERENCE);
            Quantity air = LocalAir.deciding(
                    seen, at -> TrueSteam.above(steam, reading, at).isAbove(most));
            return List.of(new GaugeSteamHotter(
                    which, reading, Saturation.pressure(steam, air), TrueSteam.above(steam, reading, air)));
        }
    }

    /** Works out by how much the steam is cooler. */
    public static final class Cooler implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return GaugeSteamCooler.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return GaugeAgainstSteam.needs(List.of(GaugeRole.class, GaugeWithSteam.class));
        }

        @Override
        public List<String> limits() {
            return List.of(TrueSteam.LOW_AT_MOST, DIFFERENCE);
        }

        @Override
        public List<GaugeSteamCooler> work(Seen seen, String which) {
            if (seen.of(GaugeRole.class, which).role() == GaugeUse.ELSEWHERE) {
                return List.of();
            }
            Quantity reading = seen.of(GaugeWithSteam.class, which).reading();
            Quantity steam = TrueSteam.hottest(seen);
            Quantity most = seen.limit(DIFFERENCE);
            Quantity air =
                    LocalAir.deciding(seen, at -> below(steam, reading, at).isAbove(most));
            return List.of(
                    new GaugeSteamCooler(which, reading, Saturation.pressure(steam, air), below(steam, reading, air)));
        }
    }

    private static Quantity below(Quantity steam, Quantity reading, Quantity air) {
        return Saturation.temperature(reading, air).minus(steam);
    }

    /** Works out whether another unit would fit. */
    public static final class Fit implements Reckoning {
        @Override
        public Class<? extends Record> gives() {
            return GaugeUnitFit.class;
        }

        @Override
        public List<Class<? extends Record>> needs() {
            return GaugeAgainstSteam.needs(List.of(GaugeRole.class, GaugeUnitPrinted.class, GaugeWithSteam.class));
        }

        @Override
        public List<String> limits() {
            return List.of(TrueSteam.LOW_AT_LEAST, TrueSteam.LOW_AT_MOST, DIFFERENCE);
        }

        @Override
        public List<GaugeUnitFit> work(Seen seen, String which) {
            if (seen.of(GaugeRole.class, which).role() == GaugeUse.ELSEWHERE) {
                return List.of();
            }
            DialUnit printed = seen.of(GaugeUnitPrinted.class, which).printed();
            Quantity reading = seen.of(GaugeWithSteam.class, which).reading();
            Quantity coolest = TrueSteam.coolest(seen);
            Quantity hottest = TrueSteam.hottest(seen);
            Quantity most = seen.limit(DIFFERENCE);
            Function<Quantity, UnitFit> fit = at -> {
                if (fits(reading, at, coolest, hottest, most)) {
                    return UnitFit.FITS;
                }
                for (DialUnit other : DialUnit.values()) {
                    Quantity same = Quantity.of(reading.valueIn(printed.unit()), other.unit());
                    if (same.isAtLeast(LOWEST_READING)
                            && same.isAtMost(HIGHEST_READING)
                            && fits(same, at, coolest, hottest, most)) {
                        return UnitFit.ANOTHER_UNIT_WOULD;
                    }
                }
                return UnitFit.NO_UNIT_WOULD;
            };
            return List.of(new GaugeUnitFit(which, printed, fit.apply(LocalAir.deciding(seen, fit))));
        }

        private static boolean fits(Quantity reading, Quantity air, Quantity coolest, Quantity hottest, Quantity most) {
            return TrueSteam.above(coolest, reading, air).isAtMost(most)
                    && below(hottest, reading, air).isAtMost(most);
        }
    }
}
