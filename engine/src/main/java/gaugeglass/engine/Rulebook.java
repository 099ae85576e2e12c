package gaugeglass.engine;

import gaugeglass.engine.book.Book;
import gaugeglass.engine.book.Card;
import gaugeglass.engine.book.LaidOn;
import gaugeglass.engine.book.Limit;
import gaugeglass.engine.book.RuleEntry;
import gaugeglass.engine.book.StoredBook;
import gaugeglass.engine.book.Waiver;
import gaugeglass.engine.drools.Judges;
import gaugeglass.engine.facts.Facts;
import gaugeglass.engine.facts.Slot;
import gaugeglass.engine.observation.JudgedBy;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.pack.Tailoring;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Reckoning;
import gaugeglass.engine.vocabulary.Trade;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;

/**
 * The rules of a trade, compiled, with their words and limits. Immutable; any number of threads may assess with one.
 */
public final class Rulebook {
    private final StoredBook stored;
    private final List<Reckoning> reckonings;
    private final Trade trade;
    private final Judges judges;
    private volatile Optional<Ageing> ageing = Optional.empty();

    /** Optional, so that no class of packs is loaded where there is none. */
    private final Optional<Tailoring> tailoring;

    private Rulebook(StoredBook stored, Trade trade, Judges judges, Optional<Tailoring> tailoring) {
        this.stored = stored;
        this.reckonings = List.copyOf(trade.reckonings());
        this.trade = trade;
        this.judges = judges;
        this.tailoring = tailoring;
    }

    /**
     * Loads the rulebook that a build left on a class path.
     *
     * @throws IllegalStateException when there is none, or when its parts do not fit one another
     */
    public static Rulebook load(ClassLoader loader) {
        try (InputStream in = loader.getResourceAsStream(StoredBook.PATH)) {
            if (in == null) {
                throw new IllegalStateException("there is no " + StoredBook.PATH + " on the class path");
            }
            return of(
                    StoredBook.read(StoredBook.PATH, new String(in.readAllBytes(), StandardCharsets.UTF_8), loader),
                    loader);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + StoredBook.PATH, e);
        }
    }

    /** Makes a rulebook of a stored one whose classes are in {@code loader}. */
    public static Rulebook of(StoredBook stored, ClassLoader loader) {
        Book book = stored.book();
        return of(stored, loader, Judges.of(book.models(), book.rules(), loader), Optional.empty());
    }

    /** Makes a rulebook with packs laid over it, whose classes are in {@code loader}. */
    public static Rulebook of(Tailoring tailoring, ClassLoader loader) {
        Book book = tailoring.stored().book();
        return of(
                tailoring.stored(),
                loader,
                Judges.of(book.models(), book.rules(), tailoring.replaced(), loader),
                Optional.of(tailoring));
    }

    /** The same, ready sooner for one visit. */
    public static Rulebook of(Tailoring tailoring, ClassLoader loader, Executor builder) {
        Book book = tailoring.stored().book();
        return of(
                tailoring.stored(),
                loader,
                Judges.forOne(
                        book.models(),
                        CompletableFuture.completedFuture(book.rules()),
                        tailoring.replaced(),
                        loader,
                        builder),
                Optional.of(tailoring));
    }

    /**
     * Reads a stored rulebook, and lets part of the making go on beside the caller from the first. It is ready sooner for
     * one visit, and a little slower for each of many.
     *
     * @param name what to call it in messages
     * @param text its stored form
     * @param builder runs what takes longest, on another thread than the caller's; the first assessment waits for it
     * @throws IllegalStateException as {@link StoredBook#read}
     */
    public static Rulebook forOne(String name, String text, ClassLoader loader, Executor builder) {
        CompletableFuture<List<RuleEntry>> entries = new CompletableFuture<>();
        Judges judges = Judges.forOne(StoredBook.models(name, text), entries, Map.of(), loader, builder);
        try {
            StoredBook stored = StoredBook.read(name, text, loader);
            entries.complete(stored.book().rules());
            return of(stored, loader, judges, Optional.empty());
        } finally {
            // Nobody may wait for what does not come.
            entries.cancel(false);
        }
    }

    private static Rulebook of(StoredBook stored, ClassLoader loader, Judges judges, Optional<Tailoring> tailoring) {
        return new Rulebook(stored, trade(stored.trade(), loader), judges, tailoring);
    }

    private static Trade trade(String name, ClassLoader loader) {
        try {
            return Class.forName(name, true, loader)
                    .asSubclass(Trade.class)
                    .getDeclaredConstructor()
                    .newInstance();
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("the trade " + name + " cannot be loaded", e);
        }
    }

    /** What can be observed. */
    public Vocabulary vocabulary() {
        return stored.vocabulary();
    }

    /** The items that a reckoned one is worked out from, in the reckoning's order; none for one that is observed. */
    public List<ItemType> workedOutFrom(ItemType item) {
        List<ItemType> from = new ArrayList<>();
        for (Reckoning reckoning : givers(item)) {
            reckoning.needs().forEach(need -> vocabulary().item(need).ifPresent(from::add));
        }
        return from;
    }

    /** The limits that a reckoned item is worked out with; none for one that is observed. */
    public List<Limit> workedOutWith(ItemType item) {
        List<Limit> with = new ArrayList<>();
        for (Reckoning reckoning : givers(item)) {
            reckoning.limits().forEach(limit -> with.add(book().limits().get(limit)));
        }
        return with;
    }

    private List<Reckoning> givers(ItemType item) {
        return reckonings.stream()
                .filter(reckoning -> vocabulary()
                        .item(reckoning.gives())
                        .filter(item::equals)
                        .isPresent())
                .toList();
    }

    /**
     * What can be worked out of a visit to one unit, as it was left.
     *
     * @param observations what was seen
     * @param date the day for which ages and intervals are reckoned
     * @return in the order of the reckonings, then the roster's; what lacks an answer is left out
     */
    public List<Record> reckoned(Observations observations, LocalDate date) {
        Facts facts = Facts.of(observed(observations), State.AS_LEFT, date, book().allLimits(), reckonings);
        List<Record> all = new ArrayList<>();
        for (Reckoning reckoning : reckonings) {
            for (Slot slot : facts.table(reckoning.gives()).all()) {
                slot.fact().ifPresent(fact -> all.add((Record) fact));
            }
        }
        return all;
    }

    /** The words, limits and index. */
    public Book book() {
        return stored.book();
    }

    /** All of it that was stored. */
    public StoredBook stored() {
        return stored;
    }

    /** What was laid over the rulebook, lowest first; nothing for the rulebook alone. */
    public List<LaidOn> packs() {
        return tailoring.isEmpty() ? List.of() : tailoring.get().laidOn();
    }

    /** The record of what judges by this rulebook, for the file of an inspection. */
    public JudgedBy judgedBy() {
        Book book = book();
        return new JudgedBy(
                book.name(),
                book.version(),
                book.hash(),
                packs().stream()
                        .map(pack -> new JudgedBy.Pack(pack.name(), pack.version(), pack.hash()))
                        .toList());
    }

    /** The ids of the items that the packs leave unasked. */
    public Set<String> notAsked() {
        return tailoring.isEmpty() ? Set.of() : tailoring.get().notAsked();
    }

    /** The items that the packs add, in their order. */
    public List<ItemType> added() {
        return tailoring.isEmpty() ? List.of() : tailoring.get().added();
    }

    /**
     * What counts as observed: what earlier findings tell is part of it where they are known and, with packs, a
     * jurisdiction's answers about what is required there.
     */
    public Observations observed(Observations observations) {
        Observations told = observations.earlier().isEmpty() ? observations : Told.with(trade.tellings(), observations);
        return tailoring.isEmpty() ? told : tailoring.get().observed(told);
    }

    /**
     * Judges one visit to one unit.
     *
     * @param observations what was seen
     * @param date the day for which ages and intervals are reckoned
     * @return the same for the same arguments, always
     * @throws gaugeglass.engine.drools.JudgesDisagree when the two judges differ: a fault of the program
     */
    public Assessment assess(Observations observations, LocalDate date) {
        return assess(observations, date, "");
    }

    /**
     * Judges one visit to one unit at a site, whose waivers then count.
     *
     * @param site the site's id; with an empty one no waiver covers anything
     */
    public Assessment assess(Observations observations, LocalDate date, String site) {
        return new Assessing(this, observed(observations), date, site).assess();
    }

    List<Waiver> waivers() {
        return tailoring.isEmpty() ? List.of() : tailoring.get().waivers();
    }

    /**
     * What will be found of a unit by waiting alone: what wears out, and what has to be done again.
     *
     * <p>It holds for what was seen, as left; whether a thing is of a kind that a limit is for, the rules themselves tell.
     * Looked at are the rules that hold one dated answer against one span of time.
     *
     * @param observations what was seen
     * @return by the rulebook's order, then subject; without a day where the date was not seen
     */
    public List<Assessment.Due> due(Observations observations) {
        Optional<Ageing> known = ageing;
        if (known.isEmpty()) {
            // Two threads may both make it; they make the same.
            known = Optional.of(Ageing.of(this));
            ageing = known;
        }
        return known.get().due(observed(observations));
    }

    List<Reckoning> reckonings() {
        return reckonings;
    }

    Judges judges() {
        return judges;
    }

    /** The counted kind a card is about; empty text where it is about the unit. */
    String counted(Card card) {
        return card.about().isEmpty() || card.about().equals(vocabulary().unit().id()) ? "" : card.about();
    }
}
