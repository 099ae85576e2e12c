package gaugeglass.engine.book;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.text.Words;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A number that decides a verdict, kept apart from the rules that use it. It is a fact of every
 * session.
 *
 * @param id its name
 * @param value a {@link Quantity}, a {@link Period} or an {@link Integer}
 * @param written the value as it is written in the table
 * @param meaning what it limits, in words
 * @param safer the direction in which it is the more cautious
 * @param least the end of the span in which a company may move it; empty where it may not be moved
 *     that way
 * @param most the other end
 * @param step the smallest difference that matters when it is read; tests move a limit by it
 * @param basis what it stands on
 * @param sources documents
 * @param reviewBy when somebody must look at it again; empty where it does not age
 * @param layer who set the value in force
 */
public record Limit(
        String id,
        Object value,
        String written,
        String meaning,
        Safer safer,
        String least,
        String most,
        String step,
        Basis basis,
        List<Source> sources,
        String reviewBy,
        String layer) {

    /** The direction in which a limit is the more cautious. */
    public enum Safer {
        LOWER,
        HIGHER,
        NEITHER;

        public String word() {
            return Words.of(this);
        }
    }

    /** The same limit with another value; nothing is checked here. */
    public Limit with(Object value, String written, String layer) {
        return new Limit(id, value, written, meaning, safer, least, most, step, basis, sources, reviewBy, layer);
    }

    /** The same limit as a law sets it, by these documents besides those it had. */
    public Limit setByLaw(List<Source> documents) {
        List<Source> all = new ArrayList<>(documents);
        all.addAll(sources);
        return new Limit(id, value, written, meaning, safer, least, most, step, Basis.STANDARD, all, reviewBy, layer);
    }

    public Quantity quantity() {
        return as(Quantity.class, "a quantity");
    }

    public Period period() {
        return as(Period.class, "a period");
    }

    public int number() {
        return as(Integer.class, "a whole number");
    }

    private <T> T as(Class<T> type, String words) {
        if (!type.isInstance(value)) {
            throw new IllegalStateException("the limit " + id + " is " + written + ", which is not " + words);
        }
        return type.cast(value);
    }

    /** The document it is set by, where there is one. */
    public Optional<Source> firstSource() {
        return sources.stream().findFirst();
    }

    @Override
    public String toString() {
        return written;
    }
}
