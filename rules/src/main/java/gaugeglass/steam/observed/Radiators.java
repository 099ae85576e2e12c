package gaugeglass.steam.observed;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Counted;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Of;
import gaugeglass.engine.vocabulary.Stage;
import java.util.List;

/**
 * The radiators one by one, where the sum is not on record.
 *
 * <p>A building may have hundreds: each has its sort and one row of what was counted and measured.
 */
public final class Radiators {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS = List.of(
            RadiatorSort.class, RadiatorSections.class, WallSections.class, HeatingPipe.class, RadiatorArea.class);

    private Radiators() {}

    /** How a radiator is built, as the tables of radiation tell them apart. */
    public enum RadiatorPattern {
        ONE_COLUMN,
        TWO_COLUMN,
        THREE_COLUMN,
        FOUR_COLUMN,
        THREE_TUBE,
        FOUR_TUBE,
        FIVE_TUBE,
        SIX_TUBE,
        WALL_SECTIONS,
        BARE_PIPE,
        /** Its square feet are known by its maker's list, or not at all. */
        OTHER_SORT
    }

    /** How a radiator is built. */
    @Item(
            id = "radiator.sort",
            of = "radiator",
            stage = Stage.HOT,
            structural = true,
            carried = true,
            ask = "What sort of radiator is it?",
            look = "Columns are wide castings, tubes slim ones; count them from the end, front to back.",
            unreadBecause = {"behind a cover", "room not opened"})
    public record RadiatorSort(@Of String which, RadiatorPattern pattern) {}

    /**
     * Sections of a column or tube radiator.
     *
     * @param height from the floor to the top of the iron
     */
    @Item(
            id = "radiator.sections",
            of = "radiator",
            stage = Stage.HOT,
            carried = true,
            ask = "How many sections has it, and how high is it from the floor?",
            look =
                    "Heights go by 18, 20, 22, 23, 26, 32, 38 and 45 in. One that the tables do not have is not rounded: measure again, or give its square feet.",
            unreadBecause = {"behind a cover", "room not opened"})
    public record RadiatorSections(
            @Of String which,
            @Counted(from = 1, to = 100) int sections,

            @Measured(unit = Unit.INCH, from = "6", to = "72")
            Quantity height) {}

    /** What a wall section is called. */
    public enum WallMark {
        SIZE_5A,
        SIZE_7A,
        SIZE_7B,
        SIZE_9A,
        SIZE_9B
    }

    /** Sections of a wall radiator. */
    @Item(
            id = "radiator.wall",
            of = "radiator",
            stage = Stage.HOT,
            carried = true,
            ask = "How many wall sections are there, and of which size?",
            look = "The figure is the square feet of one: a 7 is some 13 by 22 in, a 9 some 13 by 29 in.",
            unreadBecause = {"behind a cover", "room not opened"})
    public record WallSections(
            @Of String which, @Counted(from = 1, to = 100) int sections, WallMark size) {}

    /** Bare pipe that heats a room. */
    @Item(
            id = "radiator.pipe",
            of = "radiator",
            stage = Stage.HOT,
            carried = true,
            ask = "How long is the bare pipe that heats the room, and of which nominal size?",
            look = "Several rows: their lengths together. Mains and risers on their way to a radiator do not count.",
            unreadBecause = {"behind a cover", "room not opened"})
    public record HeatingPipe(
            @Of String which,

            @Measured(unit = Unit.FOOT, from = "1", to = "1000")
            Quantity length,

            @Measured(unit = Unit.INCH, from = "1/2", to = "12")
            Quantity size) {}

    /** The square feet of a radiator that the tables do not have. */
    @Item(
            id = "radiator.area",
            of = "radiator",
            stage = Stage.HOT,
            carried = true,
            ask = "How many square feet of radiation (EDR) has it by its maker's list?",
            unreadBecause = {"no list for it"})
    public record RadiatorArea(
            @Of String which,

            @Measured(unit = Unit.SQUARE_FOOT, from = "1", to = "2000")
            Quantity area) {}
}
