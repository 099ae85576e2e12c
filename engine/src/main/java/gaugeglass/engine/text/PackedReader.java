package gaugeglass.engine.text;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Reads what a {@link PackedWriter} wrote, in the same order. */
public final class PackedReader {
    private final String packed;
    private int at;

    public PackedReader(String packed) {
        this.packed = packed;
    }

    /**
     * A text.
     *
     * @throws IllegalStateException when no text stands here
     */
    public String text() {
        int length = number();
        if (length > packed.length() - at) {
            throw damaged();
        }
        at += length;
        return packed.substring(at - length, at);
    }

    /**
     * A whole number.
     *
     * @throws IllegalStateException when no number stands here
     */
    public int number() {
        int number = 0;
        int from = at;
        while (at < packed.length()) {
            char c = packed.charAt(at++);
            if (c == ' ' && at > from + 1) {
                return number;
            }
            if (c < '0' || c > '9' || at > from + 9) {
                throw damaged();
            }
            number = 10 * number + c - '0';
        }
        throw damaged();
    }

    public boolean flag() {
        return number() == 1;
    }

    public <E extends Enum<E>> E constant(E[] constants) {
        int number = number();
        if (number >= constants.length) {
            throw damaged();
        }
        return constants[number];
    }

    public List<String> texts() {
        return list(PackedReader::text);
    }

    public <T> List<T> list(Function<PackedReader, T> read) {
        int number = number();
        if (number > packed.length()) {
            throw damaged();
        }
        List<T> all = new ArrayList<>(number);
        for (int i = 0; i < number; i++) {
            all.add(read.apply(this));
        }
        return all;
    }

    /** Whether everything has been read. */
    public boolean isAtEnd() {
        return at == packed.length();
    }

    private IllegalStateException damaged() {
        return new IllegalStateException("the stored rulebook is damaged at character " + at);
    }
}
