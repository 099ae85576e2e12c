package gaugeglass.steam.observed;

import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Of;
import gaugeglass.engine.vocabulary.Stage;
import java.time.LocalDate;
import java.util.List;

/**
 * What is seen of the siphon under each gauge and each pressure control.
 *
 * <p>Where several stand on one siphon, each is answered alike.
 */
public final class Siphons {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS = List.of(
            GaugeSiphon.class,
            GaugeSiphonBore.class,
            GaugeSiphonWater.class,
            GaugeSiphonRecord.class,
            GaugeSiphonCleaned.class,
            ControlSiphon.class,
            ControlSiphonBore.class,
            ControlSiphonWater.class,
            ControlSiphonRecord.class,
            ControlSiphonCleaned.class);

    private Siphons() {}

    /** Whether water stands between the steam and the instrument. */
    public enum SiphonFitted {
        FITTED,
        NONE
    }

    /** Whether a siphon lets pressure through. */
    public enum SiphonBore {
        CLEAR,
        BLOCKED
    }

    /** Whether a siphon holds its water. */
    public enum SiphonWater {
        FILLED,
        NOT_FILLED
    }

    /** Whether the last cleaning is on record. */
    public enum SiphonRecord {
        ON_RECORD,
        NOT_RECORDED
    }

    /** Whether the gauge has a siphon. */
    @Item(
            id = "gauge.siphon",
            of = "gauge",
            stage = Stage.ARRIVAL,
            structural = true,
            carried = true,
            ask = "Is there a siphon under this gauge?",
            look = "A pigtail, a U-bend or a siphon body that keeps water between steam and gauge.",
            unreadBecause = {"lagged over"})
    public record GaugeSiphon(@Of String which, SiphonFitted siphon) {}

    /** Whether the gauge's siphon is clear. */
    @Item(
            id = "gauge.siphon-bore",
            of = "gauge",
            stage = Stage.COLD,
            ask = "Is this gauge's siphon clear right through, and its tapping too?",
            look = "Cold and vented: take it off, blow or rod it through, look into the boiler tapping.",
            unreadBecause = {"would not come apart", "boiler not cold"})
    public record GaugeSiphonBore(@Of String which, SiphonBore bore) {}

    /** Whether the gauge's siphon was filled. */
    @Item(
            id = "gauge.siphon-water",
            of = "gauge",
            stage = Stage.COLD,
            ask = "Was this gauge's siphon filled with water before firing?",
            look = "After any opening. A siphon left dry lets steam in.")
    public record GaugeSiphonWater(@Of String which, SiphonWater water) {}

    /** Whether a cleaning of the gauge's siphon is on record. */
    @Item(
            id = "gauge.siphon-record",
            of = "gauge",
            stage = Stage.COLD,
            ask = "Is it on record when this gauge's siphon was last cleaned?",
            look = "Today counts.")
    public record GaugeSiphonRecord(@Of String which, SiphonRecord cleaning) {}

    /** When the gauge's siphon was last cleaned. */
    @Item(
            id = "gauge.siphon-cleaned",
            of = "gauge",
            stage = Stage.COLD,
            carried = true,
            ask = "When was this gauge's siphon last cleaned?",
            unreadBecause = {"record not legible"})
    public record GaugeSiphonCleaned(@Of String which, LocalDate on) {}

    /** Whether the control has a siphon. */
    @Item(
            id = "control.siphon",
            of = "control",
            stage = Stage.ARRIVAL,
            structural = true,
            carried = true,
            ask = "Is there a siphon under this pressure control?",
            look = "A pigtail, a U-bend or a siphon body that keeps water between steam and control.",
            unreadBecause = {"lagged over"})
    public record ControlSiphon(@Of String which, SiphonFitted siphon) {}

    /** Whether the control's siphon is clear. */
    @Item(
            id = "control.siphon-bore",
            of = "control",
            stage = Stage.COLD,
            ask = "Is this control's siphon clear right through, and its tapping too?",
            look = "Cold and vented: take it off, blow or rod it through, look into the boiler tapping.",
            unreadBecause = {"would not come apart", "boiler not cold"})
    public record ControlSiphonBore(@Of String which, SiphonBore bore) {}

    /** Whether the control's siphon was filled. */
    @Item(
            id = "control.siphon-water",
            of = "control",
            stage = Stage.COLD,
            ask = "Was this control's siphon filled with water before firing?",
            look = "After any opening. A siphon left dry lets steam in.")
    public record ControlSiphonWater(@Of String which, SiphonWater water) {}

    /** Whether a cleaning of the control's siphon is on record. */
    @Item(
            id = "control.siphon-record",
            of = "control",
            stage = Stage.COLD,
            ask = "Is it on record when this control's siphon was last cleaned?",
            look = "Today counts.")
    public record ControlSiphonRecord(@Of String which, SiphonRecord cleaning) {}

    /** When the control's siphon was last cleaned. */
    @Item(
            id = "control.siphon-cleaned",
            of = "control",
            stage = Stage.COLD,
            carried = true,
            ask = "When was this control's siphon last cleaned?",
            unreadBecause = {"record not legible"})
    public record ControlSiphonCleaned(@Of String which, LocalDate on) {}
}
