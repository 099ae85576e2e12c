package gaugeglass.steam.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Walks through every sequence of choices, or through random ones. */
final class Chooser {
    /** Ends a run that leads nowhere. */
    static class DeadEnd extends RuntimeException {
        private static final long serialVersionUID = 1L;

        DeadEnd() {
            super(null, null, false, false);
        }
    }

    /** There is nothing of the kind here, and it is known that there is not. */
    static final class Nothing extends DeadEnd {
        private static final long serialVersionUID = 1L;
    }

    private final List<Integer> taken = new ArrayList<>();
    private final List<Integer> widths = new ArrayList<>();
    private int at;
    private Random random;

    /** A number from 0 to {@code width} - 1. */
    int choose(int width) {
        if (width == 0) {
            throw new DeadEnd();
        }
        if (random != null) {
            return random.nextInt(width);
        }
        if (at == taken.size()) {
            taken.add(0);
            widths.add(width);
        }
        return taken.get(at++);
    }

    /** Goes on to the next sequence; false when all were walked through. */
    boolean next() {
        at = 0;
        while (!taken.isEmpty()) {
            int last = taken.size() - 1;
            if (taken.get(last) + 1 < widths.get(last)) {
                taken.set(last, taken.get(last) + 1);
                return true;
            }
            taken.remove(last);
            widths.remove(last);
        }
        return false;
    }

    /** From here on chooses at random. */
    void shuffle(Random random) {
        this.random = random;
    }
}
