package gaugeglass.cli.command;

import gaugeglass.engine.book.Urgency;
import gaugeglass.engine.text.Words;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Understands the usual command lines of {@code assess} and {@code check} without the command line library, whose
 * loading would be a good part of the time to an answer.
 *
 * <p>It knows the exact words only. At anything else, right or wrong, it gives up and {@link FullLine} takes over, so
 * that there is one place for help, for short forms and for telling what is wrong. A test holds the two against each
 * other.
 */
final class QuickLine {
    private QuickLine() {}

    /** The options of {@code assess}; empty when the full reading is needed. */
    static Optional<AssessOptions> assess(String[] args) {
        List<String> words = new ArrayList<>();
        boolean lines = false;
        Optional<As> as = Optional.empty();
        Optional<Urgency> failAt = Optional.empty();
        Optional<LocalDate> date = Optional.empty();
        List<String> packs = new ArrayList<>();
        for (int i = 1; i < args.length; i++) {
            String arg = args[i];
            if (isWord(arg)) {
                words.add(arg);
                continue;
            }
            if (arg.equals("--lines") && !lines) {
                lines = true;
                continue;
            }
            int equals = arg.indexOf('=');
            String name = equals < 0 ? arg : arg.substring(0, equals);
            if (equals < 0 && ++i == args.length) {
                return Optional.empty();
            }
            String value = equals < 0 ? args[i] : arg.substring(equals + 1);
            boolean understood =
                    switch (name) {
                        case "--as" -> as.isEmpty() && (as = constant(As.values(), value)).isPresent();
                        case "--fail-at" ->
                            failAt.isEmpty() && (failAt = constant(Urgency.values(), value)).isPresent();
                        case "--date" -> date.isEmpty() && (date = date(value)).isPresent();
                        case "--pack" -> isWord(value) && !value.equals("-") && packs.add(value);
                        default -> false;
                    };
            if (!understood) {
                return Optional.empty();
            }
        }
        return words.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new AssessOptions(words, lines, as.orElse(As.TEXT), failAt, date, packs, Optional.empty()));
    }

    /** The options of {@code check}; empty when the full reading is needed. */
    static Optional<CheckOptions> check(String[] args) {
        List<String> words = new ArrayList<>();
        boolean lines = false;
        for (int i = 1; i < args.length; i++) {
            if (isWord(args[i])) {
                words.add(args[i]);
            } else if (args[i].equals("--lines") && !lines) {
                lines = true;
            } else {
                return Optional.empty();
            }
        }
        return words.isEmpty() ? Optional.empty() : Optional.of(new CheckOptions(words, lines, List.of()));
    }

    private static boolean isWord(String arg) {
        return arg.equals("-") || !arg.isEmpty() && arg.charAt(0) != '-' && arg.charAt(0) != '@';
    }

    static <E extends Enum<E>> Optional<E> constant(E[] all, String word) {
        for (E one : all) {
            if (Words.of(one).equals(word)) {
                return Optional.of(one);
            }
        }
        return Optional.empty();
    }

    /** A date as year, month and day with hyphens, and no other way. */
    static Optional<LocalDate> date(String text) {
        try {
            return text.length() == 10 ? Optional.of(LocalDate.parse(text)) : Optional.empty();
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
