package gaugeglass.cli.command;

import gaugeglass.cli.fleet.FleetTable;
import gaugeglass.engine.book.Urgency;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What {@code fleet} is asked to do.
 *
 * @param words files, folders, {@code -} for standard input
 * @param lines whether each of them holds an inspection on each line
 * @param as the form of the results
 * @param table which table is wanted where the form holds one only
 * @param top how many rows of each table people are shown
 * @param failAt the urgency from which on a finding makes the exit code 1; empty where none does
 * @param date the day for which to judge; empty for each visit's own
 * @param packs what is named to be laid over the rulebook
 */
record FleetOptions(
        List<String> words,
        boolean lines,
        Form as,
        FleetTable table,
        int top,
        Optional<Urgency> failAt,
        Optional<LocalDate> date,
        List<String> packs) {
    FleetOptions {
        words = List.copyOf(words);
        packs = List.copyOf(packs);
    }

    /** In which form the results are printed. */
    enum Form {
        /** For people. */
        TEXT,
        /** One table for a spreadsheet. */
        CSV,
        /** One JSON text. */
        JSON
    }
}
