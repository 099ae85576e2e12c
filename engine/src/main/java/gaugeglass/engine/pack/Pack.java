package gaugeglass.engine.pack;

import gaugeglass.engine.book.Caution;
import gaugeglass.engine.book.LaidOn;
import gaugeglass.engine.book.LimitLayer;
import gaugeglass.engine.book.Remedy;
import gaugeglass.engine.book.Source;
import gaugeglass.engine.book.Urgency;
import gaugeglass.engine.book.Waiver;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Words;
import java.util.List;
import java.util.Map;

/**
 * What a pack says, read and not yet laid over anything.
 *
 * @param files what it was read from
 * @param name its short name, the same over all its versions
 * @param title its name for people
 * @param version its version: three whole numbers with dots
 * @param level whose it is
 * @param tailors the name of the rulebook that it is laid over
 * @param madeFor the version of that rulebook which it was made for
 * @param by who answers for it
 * @param limits its values of limits
 * @param settled the answers about the place that it gives once for all
 * @param wordings other words for cards
 * @param urgencies other urgencies for bands
 * @param dropped items it leaves unasked
 * @param waivers its waivers
 * @param replaced the checks of the rulebook in whose place it puts its own
 * @param cautions cautions of its own
 * @param remedies lines of work of its own
 */
public record Pack(
        PackFiles files,
        String name,
        String title,
        String version,
        LimitLayer.Level level,
        String tailors,
        String madeFor,
        String by,
        LimitLayer limits,
        List<Settled> settled,
        List<Wording> wordings,
        List<Urgencies> urgencies,
        List<Dropped> dropped,
        List<Waiving> waivers,
        List<Replaced> replaced,
        Map<String, Caution> cautions,
        Map<String, Remedy> remedies) {

    /** What begins the id of an observation that a pack may settle: what is required at a place. */
    public static final String REQUIRED = "required.";

    public Pack {
        settled = List.copyOf(settled);
        wordings = List.copyOf(wordings);
        urgencies = List.copyOf(urgencies);
        dropped = List.copyOf(dropped);
        waivers = List.copyOf(waivers);
        replaced = List.copyOf(replaced);
    }

    /** Where something stands in a pack. */
    public record Place(String file, int line, int column, String where) {
        Mistake wrong(String what, String expected, String nearest) {
            return new Mistake(file, line, column, where, what, expected, nearest);
        }
    }

    /**
     * Other words for a card; an empty text leaves the card's own.
     *
     * @param alsoDo what is added to what is to be done
     * @param addCautions ids of cautions that are added
     */
    public record Wording(
            String card,
            String title,
            String why,
            String action,
            String alsoDo,
            String notWhen,
            List<String> addCautions,
            Place place) {
        /** Every text of it. */
        public List<String> texts() {
            return List.of(title, why, action, alsoDo, notWhen);
        }
    }

    /** Another urgency for one band of a card. */
    public record Urgencies(String card, String band, Urgency urgency, Place place) {}

    /** An item that is not asked, with why. */
    public record Dropped(String item, String why, Place place) {}

    /** A check of the rulebook in whose place the pack puts its own of the same id, with why. */
    public record Replaced(String check, String why, Place place) {}

    /** A waiver with its place. */
    public record Waiving(Waiver waiver, Place place) {}

    /**
     * An answer about what is required at a place, the same for every inspection there.
     *
     * @param item the observation's id
     * @param answer one of its choices
     * @param sources the documents behind it
     * @param line its line in the file
     * @param column its column there
     */
    public record Settled(String item, String answer, List<Source> sources, int line, int column) {
        public Settled {
            sources = List.copyOf(sources);
        }
    }

    /** How it is named in results. */
    public LaidOn laidOn() {
        return new LaidOn(
                name,
                title,
                version,
                Words.of(level),
                files.hash(),
                replaced.stream().map(Replaced::check).toList());
    }
}
