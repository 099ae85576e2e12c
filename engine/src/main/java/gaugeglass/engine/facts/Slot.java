package gaugeglass.engine.facts;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** A place that one fact takes, whether it is known or not. */
public final class Slot {
    private final Class<?> type;
    private final List<Object> keys;
    private final @Nullable Object fact;
    private final boolean structural;
    private final List<Missing> lacking;
    private final Supplier<? extends List<?>> listing;
    private final Supplier<?> witnessing;
    private @Nullable List<?> candidates;
    private @Nullable Object witness;

    private Slot(
            Class<?> type,
            List<Object> keys,
            @Nullable Object fact,
            boolean structural,
            List<Missing> lacking,
            Supplier<? extends List<?>> listing,
            Supplier<?> witnessing) {
        this.type = type;
        this.keys = keys;
        this.fact = fact;
        this.structural = structural;
        this.lacking = lacking;
        this.listing = listing;
        this.witnessing = witnessing;
    }

    static Slot known(
            Class<?> type,
            List<Object> keys,
            Object fact,
            boolean structural,
            Supplier<? extends List<?>> listing,
            Supplier<?> witnessing) {
        return new Slot(type, keys, fact, structural, List.of(), listing, witnessing);
    }

    /** A place that is known to hold nothing. */
    static Slot empty(
            Class<?> type,
            List<Object> keys,
            boolean structural,
            Supplier<? extends List<?>> listing,
            Supplier<?> witnessing) {
        return new Slot(type, keys, null, structural, List.of(), listing, witnessing);
    }

    static Slot unknown(
            Class<?> type,
            List<Object> keys,
            List<Missing> lacking,
            Supplier<? extends List<?>> listing,
            Supplier<?> witnessing) {
        return new Slot(type, keys, null, false, lacking, listing, witnessing);
    }

    public Class<?> type() {
        return type;
    }

    /** The parts that tell which one it is about. */
    public List<Object> keys() {
        return keys;
    }

    public Optional<Object> fact() {
        return Optional.ofNullable(fact);
    }

    public boolean isKnown() {
        return fact != null;
    }

    /** Whether it is known that nothing stands here. */
    public boolean isEmpty() {
        return fact == null && lacking.isEmpty();
    }

    /** Whether what it holds is known and tells what is fitted, rather than how it is doing. */
    public boolean isStructural() {
        return structural;
    }

    /** The answers whose lack makes it unknown; none when it is known what stands here, or that nothing does. */
    public List<Missing> lacking() {
        return lacking;
    }

    /** Every fact that may stand here; empty where they cannot be listed. */
    public List<?> candidates() {
        if (candidates == null) {
            candidates = listing.get();
        }
        return candidates;
    }

    /** A fact with this slot's keys whose other parts mean nothing. */
    public Object witness() {
        if (witness == null) {
            witness = witnessing.get();
        }
        return witness;
    }
}
