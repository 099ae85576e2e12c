package gaugeglass.cli.command;

import gaugeglass.engine.vocabulary.Decision;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

/**
 * What {@code decide} is asked to do.
 *
 * @param file the inspection
 * @param finding the rule, with {@code :} and the subject where it is about one of several; empty to be asked
 * @param decision what was decided; none where it is to be asked
 * @param by who decided; empty where it is to be asked
 * @param on when; {@link LocalDate#EPOCH} where it is to be asked
 * @param note what was said about it; may be empty
 * @param boiler its id; empty where only one has the finding
 * @param packs what is named to be laid over the rulebook
 */
record DecideOptions(
        Path file,
        String finding,
        Decision decision,
        String by,
        LocalDate on,
        String note,
        String boiler,
        List<String> packs) {}
