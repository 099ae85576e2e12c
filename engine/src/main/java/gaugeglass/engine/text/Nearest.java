package gaugeglass.engine.text;

import java.util.Collection;
import java.util.Optional;

/**
 * The known word that a mistyped one most likely meant.
 *
 * <p>Closeness counts single letters added, dropped, changed or swapped with their neighbour;
 * capitals do not count.
 */
public final class Nearest {

    /** Longer input is no slip of the finger, and comparing it would only cost time. */
    private static final int LONGEST = 64;

    private Nearest() {}

    /**
     * The known word closest to what was typed, or nothing when no word is close enough to be worth
     * offering.
     *
     * <p>Words of one letter must match but for capitals, words of up to five letters may differ by
     * one slip, up to eight by two, longer ones by three. Between equally close words the
     * alphabetically first is taken, so the answer does not depend on the order of the collection.
     */
    public static Optional<String> to(String typed, Collection<String> known) {
        if (typed.isEmpty() || typed.length() > LONGEST) {
            return Optional.empty();
        }
        int allowed = slipsAllowed(typed.length());
        String best = "";
        int bestSlips = allowed + 1;
        for (String word : known) {
            if (Math.abs(word.length() - typed.length()) > allowed) {
                continue;
            }
            int slips = slips(typed, word);
            if (slips < bestSlips || slips == bestSlips && slips <= allowed && word.compareTo(best) < 0) {
                best = word;
                bestSlips = slips;
            }
        }
        return bestSlips <= allowed ? Optional.of(best) : Optional.empty();
    }

    private static int slipsAllowed(int length) {
        if (length < 2) {
            return 0;
        }
        return length < 6 ? 1 : length < 9 ? 2 : 3;
    }

    /** Optimal string alignment distance. */
    private static int slips(String one, String other) {
        int[] beforeLast = new int[other.length() + 1];
        int[] last = new int[other.length() + 1];
        int[] row = new int[other.length() + 1];
        for (int j = 0; j < last.length; j++) {
            last[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            row[0] = i;
            char a = Character.toLowerCase(one.charAt(i - 1));
            for (int j = 1; j <= other.length(); j++) {
                char b = Character.toLowerCase(other.charAt(j - 1));
                int cost = Math.min(Math.min(row[j - 1], last[j]) + 1, last[j - 1] + (a == b ? 0 : 1));
                if (i > 1
                        && j > 1
                        && a == Character.toLowerCase(other.charAt(j - 2))
                        && b == Character.toLowerCase(one.charAt(i - 2))) {
                    cost = Math.min(cost, beforeLast[j - 2] + 1);
                }
                row[j] = cost;
            }
            int[] spare = beforeLast;
            beforeLast = last;
            last = row;
            row = spare;
        }
        return last[other.length()];
    }
}
