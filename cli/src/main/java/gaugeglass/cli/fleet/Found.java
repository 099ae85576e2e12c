package gaugeglass.cli.fleet;

import gaugeglass.engine.book.Urgency;

/** A practice with the urgency at which it stands, packed into one character: the fleet keeps millions of them. */
final class Found {
    private static final int BITS = 3;

    private Found() {}

    static char of(int practice, Urgency urgency) {
        int packed = practice << BITS | urgency.ordinal();
        if (packed > Character.MAX_VALUE) {
            throw new IllegalStateException("there are more practices than a fleet can count: " + practice);
        }
        return (char) packed;
    }

    static int practice(char found) {
        return found >> BITS;
    }

    static int urgency(char found) {
        return found & (1 << BITS) - 1;
    }
}
