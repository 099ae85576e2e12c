package gaugeglass.steam.reckoned;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.vocabulary.Seen;
import gaugeglass.steam.observed.SteamTemperatures.ProbePlace;
import gaugeglass.steam.observed.SteamTemperatures.SteamProbePlace;
import gaugeglass.steam.observed.SteamTemperatures.SteamTemperature;
import gaugeglass.steam.reckon.Saturation;
import java.util.List;

/**
 * Between which two temperatures the steam stands: as read in the steam, and higher by what is usual where the probe was
 * strapped to the pipe.
 */
final class TrueSteam {
    static final String LOW_AT_LEAST = "steam.strap-on-low-least";
    static final String LOW_AT_MOST = "steam.strap-on-low-most";
    static final List<Class<? extends Record>> NEEDS = List.of(SteamProbePlace.class, SteamTemperature.class);

    private TrueSteam() {}

    static Quantity coolest(Seen seen) {
        return read(seen, LOW_AT_LEAST);
    }

    static Quantity hottest(Seen seen) {
        return read(seen, LOW_AT_MOST);
    }

    private static Quantity read(Seen seen, String reads) {
        Quantity read = seen.the(SteamTemperature.class).temperature();
        return seen.the(SteamProbePlace.class).place() == ProbePlace.IMMERSED ? read : read.plus(seen.limit(reads));
    }

    /** By how much a temperature is above that of steam at a gauge pressure; below zero where it is under it. */
    static Quantity above(Quantity temperature, Quantity gauge, Quantity barometer) {
        return temperature.minus(Saturation.temperature(gauge, barometer));
    }
}
