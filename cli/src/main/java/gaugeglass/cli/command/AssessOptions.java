package gaugeglass.cli.command;

import gaugeglass.engine.book.Urgency;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What {@code assess} is asked to do.
 *
 * @param words files, folders, {@code -} for standard input
 * @param lines whether each of them holds an inspection on each line
 * @param as the form of the results
 * @param failAt the urgency from which on a finding makes the exit code 1; empty where none does
 * @param date the day for which to judge; empty for each visit's own
 * @param packs what is named to be laid over the rulebook
 * @param asThen the folder of published packs, where one inspection is to be judged by what judged it when it was made
 */
record AssessOptions(
        List<String> words,
        boolean lines,
        As as,
        Optional<Urgency> failAt,
        Optional<LocalDate> date,
        List<String> packs,
        Optional<Path> asThen) {
    AssessOptions {
        words = List.copyOf(words);
        packs = List.copyOf(packs);
    }
}
