package gaugeglass.engine.text;

import java.util.Collection;
import java.util.function.BiConsumer;

/**
 * Writes texts, numbers and lists one after another, each text with its length before it, for {@link PackedReader}.
 *
 * <p>A start reads some ten thousand texts. Cutting them out of one string by their length takes a small part of the
 * time that any format takes which has to be looked through for its marks.
 */
public final class PackedWriter {
    private final StringBuilder packed = new StringBuilder(1 << 16);

    public void text(String text) {
        number(text.length());
        packed.append(text);
    }

    /** A whole number, not negative. */
    public void number(int number) {
        if (number < 0) {
            throw new IllegalArgumentException(number + " is negative");
        }
        packed.append(number).append(' ');
    }

    public void flag(boolean flag) {
        number(flag ? 1 : 0);
    }

    public void constant(Enum<?> constant) {
        number(constant.ordinal());
    }

    public void texts(Collection<String> texts) {
        list(texts, PackedWriter::text);
    }

    public <T> void list(Collection<T> all, BiConsumer<PackedWriter, T> write) {
        number(all.size());
        for (T one : all) {
            write.accept(this, one);
        }
    }

    /** Everything written so far. */
    public String packed() {
        return packed.toString();
    }
}
