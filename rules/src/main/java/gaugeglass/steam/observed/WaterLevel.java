package gaugeglass.steam.observed;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Stage;
import java.util.List;

/**
 * What is seen of the water in the boiler and of the glass that shows it.
 *
 * <p>Every height has one datum: the lowest part of the glass in which water can be seen, which is the upper edge of its
 * bottom nut. Above it is positive, below it negative.
 */
public final class WaterLevel {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS = List.of(
            WaterLine.class,
            BoilerHeat.class,
            ApparentLevel.class,
            NormalLevel.class,
            GlassUpperValve.class,
            GlassLowerValve.class,
            GlassLeak.class,
            GlassDrain.class,
            GlassGuard.class,
            GlassCondition.class,
            GlassAboveLowest.class,
            LowerPassage.class,
            UpperPassage.class,
            ProvenLevel.class,
            WaterReserve.class,
            LevelSwing.class,
            GlassAboveLine.class,
            LevelFall.class,
            LevelReturn.class);

    private WaterLevel() {}

    /** Where the glass shows its water line. */
    public enum LineSeen {
        IN_GLASS,
        /** Empty, full or blocked: it is not known which. */
        NONE_VISIBLE,
        /** The glass is full and both of its passages are known to be open. */
        PROVED_OVER_GLASS
    }

    /** Whether a boiler is hot, as far as it can be told from outside. */
    public enum HeatState {
        HOT_OR_FIRING,
        COLD,
        CANNOT_BE_TOLD
    }

    /** How one of the two glass valves stands. */
    public enum GlassValveState {
        OPEN,
        SHUT,
        STUCK,
        NOT_FITTED
    }

    /** Whether the glass fittings hold water. */
    public enum GlassTightness {
        DRY,
        LEAKING
    }

    /** Whether the glass can be drained. */
    public enum GlassDrainState {
        WORKS,
        STUCK,
        NOT_FITTED
    }

    /** Whether the glass has its guard. */
    public enum GuardState {
        IN_PLACE,
        MISSING
    }

    /** What the glass itself looks like. */
    public enum GlassLook {
        CLEAR,
        CLOUDY,
        ETCHED,
        CRACKED
    }

    /** How a passage of the glass ran when only it was open. */
    public enum PassageRun {
        PROMPTLY,
        SLOWLY,
        NOT_AT_ALL,
        NOT_TRIED
    }

    /** What hangs in the glass above the water line while the boiler steams. */
    public enum GlassWall {
        DRY,
        DROPS
    }

    /** Where the water line shows on arrival. */
    @Item(
            id = "level.line",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "Does a water line show in the glass?",
            look =
                    "Look from a distance, before anything is touched. A full glass counts as proved only on a cold boiler whose"
                            + " two glass passages both ran; otherwise the answer is that none is visible.",
            unreadBecause = {"no light", "glass too dirty", "cannot be reached"})
    public record WaterLine(LineSeen line) {}

    /** Whether the boiler is hot on arrival. */
    @Item(
            id = "level.boiler-heat",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "Is the boiler hot or firing, cold, or can it not be told?",
            look = "Flame, burner noise, gauge, warmth felt from a distance. Cold means cool to the hand all over.")
    public record BoilerHeat(HeatState state) {}

    /** What looks like the water line before the glass is blown down. */
    @Item(
            id = "level.apparent",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "How far above the lowest visible part of the glass does the line seem to stand, as found?",
            look = "From the upper edge of the glass's bottom nut, before the glass is blown down.",
            unreadBecause = {"no line visible"})
    public record ApparentLevel(
            @Measured(unit = Unit.INCH, from = "0", to = "36")
            Quantity height) {}

    /** The normal water line. */
    @Item(
            id = "level.normal",
            of = "boiler",
            stage = Stage.COLD,
            carried = true,
            ask = "How far above the lowest visible part of the glass is the normal water line?",
            look = "The maker's mark on the boiler or its plate, or the company's tag.",
            unreadBecause = {"no mark", "no maker's sheet"})
    public record NormalLevel(
            @Measured(unit = Unit.INCH, from = "0", to = "36")
            Quantity height) {}

    /** The upper glass valve. */
    @Item(id = "glass.upper-valve", of = "boiler", stage = Stage.COLD, ask = "How does the upper glass valve stand?")
    public record GlassUpperValve(GlassValveState state) {}

    /** The lower glass valve. */
    @Item(id = "glass.lower-valve", of = "boiler", stage = Stage.COLD, ask = "How does the lower glass valve stand?")
    public record GlassLowerValve(GlassValveState state) {}

    /** Leaks at the glass. */
    @Item(
            id = "glass.leak",
            of = "boiler",
            stage = Stage.COLD,
            ask = "Are the glass's valves and nuts dry, or do they leak?",
            look = "White crust or a green trail is a leak that dried.")
    public record GlassLeak(GlassTightness state) {}

    /** The drain under the glass. */
    @Item(id = "glass.drain", of = "boiler", stage = Stage.COLD, ask = "Does the drain of the glass work?")
    public record GlassDrain(GlassDrainState state) {}

    /** The guard round the glass. */
    @Item(id = "glass.guard", of = "boiler", stage = Stage.COLD, ask = "Is the glass's guard in its place?")
    public record GlassGuard(GuardState state) {}

    /** What the glass looks like. */
    @Item(
            id = "glass.condition",
            of = "boiler",
            stage = Stage.COLD,
            ask = "What does the glass itself look like?",
            look = "Etching and thinning begin at the top, where condensate runs down.")
    public record GlassCondition(GlassLook look) {}

    /** How far the visible glass stands above the lowest permissible level. */
    @Item(
            id = "glass.above-lowest",
            of = "boiler",
            stage = Stage.COLD,
            ask = "How far above the lowest permissible water level is the lowest visible part of the glass?",
            look = "The lowest level is the maker's mark on the boiler or in the sheet. Below the mark is negative.",
            unreadBecause = {"no mark", "no maker's sheet"})
    public record GlassAboveLowest(
            @Measured(unit = Unit.INCH, from = "-12", to = "24")
            Quantity distance) {}

    /** How the lower passage of the glass ran. */
    @Item(
            id = "glass.lower-passage",
            of = "boiler",
            stage = Stage.COLD,
            ask = "Upper valve shut, glass drained, drain shut: how did water come back through the lower passage?",
            look = "Only where the boiler is cold, or water is known to stand in the glass.")
    public record LowerPassage(PassageRun ran) {}

    /** How the upper passage of the glass ran. */
    @Item(
            id = "glass.upper-passage",
            of = "boiler",
            stage = Stage.COLD,
            ask = "Lower valve shut, drain open: how did the upper passage blow, or draw air on a cold boiler?",
            look = "Only where the boiler is cold, or water is known to stand in the glass.")
    public record UpperPassage(PassageRun ran) {}

    /** Where the water stands once the glass has been proven. */
    @Item(
            id = "level.proven",
            of = "boiler",
            stage = Stage.COLD,
            ask = "Glass blown down and back at rest: how far above its lowest visible part does the water stand?",
            look = "Both glass valves open, burner off, returns back.",
            unreadBecause = {"glass not blown down", "no line visible"})
    public record ProvenLevel(
            @Measured(unit = Unit.INCH, from = "0", to = "36")
            Quantity height) {}

    /** How much water the boiler holds between its normal line and the line at which the fire goes out. */
    @Item(
            id = "level.reserve",
            of = "boiler",
            stage = Stage.COLD,
            carried = true,
            ask = "How much water runs out between the normal line and the line at which the cutoff acts?",
            look =
                    "Let the cold boiler down from one to the other into a bucket that is marked, once; or from the maker's"
                            + " sheet.",
            unreadBecause = {"not let down that far", "not in the maker's sheet"})
    public record WaterReserve(
            @Measured(unit = Unit.GALLON, from = "0.1", to = "1000")
            Quantity volume) {}

    /** How far the water line moves while the boiler steams. */
    @Item(
            id = "level.swing",
            of = "boiler",
            stage = Stage.HOT,
            ask = "Steaming steadily, how far does the water line travel up and down?",
            look = "From the lowest to the highest point over a few minutes.",
            unreadBecause = {"never steamed steadily"})
    public record LevelSwing(
            @Measured(unit = Unit.INCH, from = "0", to = "24")
            Quantity travel) {}

    /** What hangs in the glass above the line. */
    @Item(
            id = "glass.above-line",
            of = "boiler",
            stage = Stage.HOT,
            ask = "While steaming, is the glass dry above the water line, or do drops run in it?",
            unreadBecause = {"never steamed steadily"})
    public record GlassAboveLine(GlassWall wall) {}

    /** How far the level sinks over one firing. */
    @Item(
            id = "level.fall",
            of = "boiler",
            stage = Stage.HOT,
            ask = "How far does the mean level sink from the start of a firing to its end?",
            unreadBecause = {"no whole firing watched"})
    public record LevelFall(
            @Measured(unit = Unit.INCH, from = "0", to = "24")
            Quantity depth) {}

    /** How long the level takes to come back after a firing. */
    @Item(
            id = "level.return-time",
            of = "boiler",
            stage = Stage.HOT,
            ask = "How long after the burner stopped was the level back where it began?",
            look = "With no water fed. A level that never comes back is no slow return: water is being lost or held.",
            unreadBecause = {"no whole firing watched", "did not come back while watched"})
    public record LevelReturn(
            @Measured(unit = Unit.MINUTE, from = "0", to = "240")
            Quantity time) {}
}
