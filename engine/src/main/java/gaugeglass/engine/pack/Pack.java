package gaugeglass.engine.pack;

import gaugeglass.engine.book.LaidOn;
import gaugeglass.engine.book.LimitLayer;
import gaugeglass.engine.book.Source;
import gaugeglass.engine.text.Words;
import java.util.List;

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
        List<Settled> settled) {

    /** What begins the id of an observation that a pack may settle: what is required at a place. */
    public static final String REQUIRED = "required.";

    public Pack {
        settled = List.copyOf(settled);
    }

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
        return new LaidOn(name, title, version, Words.of(level), files.hash());
    }
}
