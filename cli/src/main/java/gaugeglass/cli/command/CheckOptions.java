package gaugeglass.cli.command;

import java.util.List;

/**
 * What {@code check} is asked to do.
 *
 * @param words files, folders, {@code -} for standard input
 * @param lines whether each of them holds an inspection on each line
 */
record CheckOptions(List<String> words, boolean lines) {
    CheckOptions {
        words = List.copyOf(words);
    }
}
