package gaugeglass.cli.command;

import java.util.List;

/**
 * What {@code check} is asked to do.
 *
 * @param words files, folders, {@code -} for standard input
 * @param lines whether each of them holds an inspection on each line
 * @param packs what is named to be laid over the rulebook
 */
record CheckOptions(List<String> words, boolean lines, List<String> packs) {
    CheckOptions {
        packs = List.copyOf(packs);
        words = List.copyOf(words);
    }
}
