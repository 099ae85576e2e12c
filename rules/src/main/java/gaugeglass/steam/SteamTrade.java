package gaugeglass.steam;

import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Telling;
import gaugeglass.engine.vocabulary.Trade;
import gaugeglass.steam.observed.AirPressures;
import gaugeglass.steam.observed.BoilerCondition;
import gaugeglass.steam.observed.BoilerPlate;
import gaugeglass.steam.observed.Burner;
import gaugeglass.steam.observed.BurnerCare;
import gaugeglass.steam.observed.Burns;
import gaugeglass.steam.observed.Coil;
import gaugeglass.steam.observed.Controls;
import gaugeglass.steam.observed.CutoffTests;
import gaugeglass.steam.observed.Cutoffs;
import gaugeglass.steam.observed.DraftTests;
import gaugeglass.steam.observed.Feeder;
import gaugeglass.steam.observed.Firing;
import gaugeglass.steam.observed.FlameTests;
import gaugeglass.steam.observed.FlueGas;
import gaugeglass.steam.observed.Gauges;
import gaugeglass.steam.observed.InputMeasures;
import gaugeglass.steam.observed.LastVisit;
import gaugeglass.steam.observed.Mains;
import gaugeglass.steam.observed.Piping;
import gaugeglass.steam.observed.Radiation;
import gaugeglass.steam.observed.Radiators;
import gaugeglass.steam.observed.Records;
import gaugeglass.steam.observed.Returns;
import gaugeglass.steam.observed.SafetyValves;
import gaugeglass.steam.observed.Siphons;
import gaugeglass.steam.observed.Site;
import gaugeglass.steam.observed.SkimAndDrain;
import gaugeglass.steam.observed.SteamTemperatures;
import gaugeglass.steam.observed.Systems;
import gaugeglass.steam.observed.Traps;
import gaugeglass.steam.observed.WaterLevel;
import gaugeglass.steam.observed.WaterUse;
import gaugeglass.steam.reckoned.AirFreeReckoning;
import gaugeglass.steam.reckoned.ControlSettings;
import gaugeglass.steam.reckoned.CutoffProofs;
import gaugeglass.steam.reckoned.CutoffsFitted;
import gaugeglass.steam.reckoned.CyclePaceReckoning;
import gaugeglass.steam.reckoned.DrainReckoning;
import gaugeglass.steam.reckoned.EqualizerReckoning;
import gaugeglass.steam.reckoned.ExitVelocityReckoning;
import gaugeglass.steam.reckoned.FanAirReckoning;
import gaugeglass.steam.reckoned.GaugeAgainstSteam;
import gaugeglass.steam.reckoned.GaugeDials;
import gaugeglass.steam.reckoned.GrossOutputReckoning;
import gaugeglass.steam.reckoned.LoadReckoning;
import gaugeglass.steam.reckoned.LocalAir;
import gaugeglass.steam.reckoned.MainFigures;
import gaugeglass.steam.reckoned.MeasuredInputs;
import gaugeglass.steam.reckoned.PressureRoster;
import gaugeglass.steam.reckoned.ReliefReckoning;
import gaugeglass.steam.reckoned.ReserveReckoning;
import gaugeglass.steam.reckoned.ReturnHeads;
import gaugeglass.steam.reckoned.RoomAirReckoning;
import gaugeglass.steam.reckoned.RoomCoRiseReckoning;
import gaugeglass.steam.reckoned.SlowFall;
import gaugeglass.steam.reckoned.SteamFromTemperature;
import gaugeglass.steam.reckoned.TrapLosses;
import gaugeglass.steam.reckoned.TrapStates;
import gaugeglass.steam.reckoned.WaterUsed;
import gaugeglass.steam.told.EarlierVisits;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Everything that is observed at a low-pressure steam boiler. */
public final class SteamTrade implements Trade {
    @Override
    public List<Kind> kinds() {
        return List.of(
                Kind.site("site", "site"),
                Kind.unit("boiler", "boilers", "boiler"),
                Kind.counted("cutoff", "cutoffs", "low-water cutoff", 6),
                Kind.fixed("cutoff-test", "tests", "cutoff test", "cutoff", CutoffTests.Method.class),
                Kind.counted("gauge", "gauges", "pressure gauge", 6),
                Kind.counted("control", "controls", "pressure control", 6),
                Kind.counted("safety-valve", "safety-valves", "safety valve", 4),
                Kind.counted("trap", "traps", "steam trap", 1000),
                Kind.counted("main", "mains", "steam main", 24),
                Kind.counted("radiator", "surveyed-radiators", "radiator", 1000),
                Kind.counted("burn", "burns", "burn", 100),
                Kind.counted("meter-reading", "meter-readings", "meter reading", 5000));
    }

    /** In the order of a visit. */
    @Override
    public List<Class<? extends Record>> items() {
        return Stream.of(
                        Site.ITEMS,
                        AirPressures.ITEMS,
                        Records.ITEMS,
                        LastVisit.ITEMS,
                        Firing.ITEMS,
                        WaterLevel.ITEMS,
                        Feeder.ITEMS,
                        BoilerPlate.ITEMS,
                        BoilerCondition.ITEMS,
                        SkimAndDrain.ITEMS,
                        Burner.ITEMS,
                        BurnerCare.ITEMS,
                        FlameTests.ITEMS,
                        DraftTests.ITEMS,
                        FlueGas.ITEMS,
                        InputMeasures.ITEMS,
                        Burns.ITEMS,
                        Systems.ITEMS,
                        Piping.ITEMS,
                        Radiation.ITEMS,
                        Radiators.ITEMS,
                        Mains.ITEMS,
                        Coil.ITEMS,
                        SafetyValves.ITEMS,
                        Cutoffs.ITEMS,
                        CutoffTests.ITEMS,
                        Gauges.ITEMS,
                        Siphons.ITEMS,
                        Controls.ITEMS,
                        SteamTemperatures.ITEMS,
                        Returns.ITEMS,
                        Traps.ITEMS,
                        WaterUse.ITEMS)
                .flatMap(List::stream)
                .toList();
    }

    @Override
    public List<Reckoning> reckonings() {
        List<Reckoning> site = List.of(
                new RoomCoRiseReckoning(),
                new RoomAirReckoning(),
                new FanAirReckoning(),
                new GrossOutputReckoning(),
                new ReliefReckoning(),
                new EqualizerReckoning(),
                new DrainReckoning(),
                new ReserveReckoning());
        return Stream.<List<Reckoning>>of(
                        CutoffProofs.ALL,
                        List.of(new SlowFall()),
                        CutoffsFitted.ALL,
                        site,
                        PressureRoster.ALL,
                        ControlSettings.ALL,
                        GaugeDials.ALL,
                        List.of(new AirFreeReckoning()),
                        MeasuredInputs.ALL,
                        LoadReckoning.ALL,
                        List.of(new CyclePaceReckoning()),
                        List.of(new LocalAir(), new SteamFromTemperature()),
                        GaugeAgainstSteam.ALL,
                        ReturnHeads.ALL,
                        TrapStates.ALL,
                        TrapLosses.ALL,
                        List.of(new ExitVelocityReckoning()),
                        MainFigures.ALL,
                        WaterUsed.ALL)
                .flatMap(List::stream)
                .toList();
    }

    @Override
    public List<Telling> tellings() {
        return EarlierVisits.ALL;
    }

    @Override
    public Map<Pattern, String> neverSaid() {
        return Map.of(
                Pattern.compile("(?i)\\b(un)?safe(ly|ty of the boiler)?\\b"),
                "it calls something safe, which is never said of a boiler",
                Pattern.compile(
                        "(?i)\\b(let|add|run|pour|put|admit|feed|fill)(ting|ing|ning|s|ds)?\\b[^.;]*\\b(water|boiler)\\b"),
                "it speaks of letting water in, which is left to the rulebook's own words: a boiler that is or may be hot and dry takes"
                        + " none");
    }
}
