package gaugeglass.cli.command;

import gaugeglass.cli.pack.AsThen;
import gaugeglass.cli.pack.Laying;
import gaugeglass.cli.paper.Screen;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.book.Book;
import gaugeglass.engine.book.LaidOn;
import gaugeglass.engine.book.StoredBook;
import gaugeglass.engine.history.History;
import gaugeglass.engine.observation.JudgedBy;
import gaugeglass.engine.pack.Tailoring;
import gaugeglass.engine.reading.SourceText;
import gaugeglass.engine.text.Plain;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** What a command has around it: streams, a screen, and a rulebook that is loaded when it is asked for. */
public final class Shell {
    private final InputStream in;
    private final OutputStream out;
    private final OutputStream err;
    private final Screen screen;
    private final boolean debug;
    private final String version;
    private final int threads;
    private final ClassLoader loader;
    private Optional<StoredBook> stored = Optional.empty();

    /** Optional, so that no class of packs is loaded where none is laid on. */
    private Optional<Tailoring> tailoring = Optional.empty();

    /** Where the classes of the packs are too, when some are laid on. */
    private ClassLoader tailored;

    private Supplier<Path> home = () -> {
        throw new IllegalStateException("this shell was not told where the user's own things are");
    };
    private boolean canWrite = true;
    private int watched;
    private int barred;
    private Supplier<LocalDateTime> now = () -> {
        throw new IllegalStateException("this shell was not given the time");
    };
    private LongSupplier millis = () -> 0;

    /**
     * Puts a shell together.
     *
     * @param out takes results and nothing else
     * @param err takes everything that is said beside them
     * @param screen what text is laid out for
     * @param debug whether a fault of the program shows where it happened
     * @param version the program's
     * @param threads how many to use where there is much to judge
     * @param loader where the rulebook and all else is that the program brings with it
     */
    public Shell(
            InputStream in,
            OutputStream out,
            OutputStream err,
            Screen screen,
            boolean debug,
            String version,
            int threads,
            ClassLoader loader) {
        this.in = in;
        this.out = out;
        this.err = err;
        this.screen = screen;
        this.debug = debug;
        this.version = version;
        this.threads = threads;
        this.loader = loader;
        this.tailored = loader;
    }

    /** Gives it the time of day and a clock that only runs forward; without them nothing can be walked. */
    public Shell at(Supplier<LocalDateTime> now, LongSupplier millis) {
        this.now = now;
        this.millis = millis;
        return this;
    }

    /** Tells it where the user's own things are: packs that were taken, keys, what was compiled. */
    public Shell home(Supplier<Path> home) {
        this.home = home;
        return this;
    }

    ClassLoader loader() {
        return loader;
    }

    Path home() {
        return home.get();
    }

    /** The name of the file that tells which packs are laid on for the inspections beside it. */
    static final String BESIDE = "packs.yaml";

    /**
     * Lays packs over the rulebook for everything that is asked of this shell from now on.
     *
     * @param packs those named on the command line; where none is, those that a file beside the inspections names
     * @param inspections the words that name the inspections
     * @throws gaugeglass.engine.text.Mistakes when a pack cannot be used
     */
    void lay(List<String> packs, List<String> inspections) {
        if (!packs.isEmpty() || hasBeside(inspections)) {
            Optional<Laying.Laid> laid = Laying.over(untouched(), packs, inspections, BESIDE, home, loader);
            if (laid.isPresent()) {
                tailoring = Optional.of(laid.get().tailoring());
                tailored = laid.get().loader();
                laid.get().ages().forEach(line -> say("gaugeglass: " + line));
            } else {
                tailoring = Optional.empty();
            }
        }
    }

    /**
     * Lays on what judged an inspection when it was made, and nothing else.
     *
     * @param folder where packs are published
     * @throws gaugeglass.engine.text.Mistakes with all that differs from what is there
     */
    void layAsThen(String inspection, Path folder) {
        JudgedBy recorded = JudgedBy.read(inspection, SourceText.read(Path.of(inspection)));
        List<Path> packs = AsThen.packs(
                inspection,
                recorded,
                folder,
                untouched().book(),
                untouched().vocabulary().unit().id(),
                History.of(loader));
        lay(
                packs.isEmpty()
                        ? List.of(Laying.NONE)
                        : packs.stream().map(Path::toString).toList(),
                List.of());
        say("gaugeglass: judged by what judged it then: " + recorded.rulebook() + " " + recorded.version()
                + recorded.packs().stream()
                        .map(pack -> ", " + pack.name() + " " + pack.version())
                        .collect(Collectors.joining()));
    }

    /** Looked for here, so that nothing of packs is loaded to find that there is none. */
    private static boolean hasBeside(List<String> inspections) {
        for (String word : inspections) {
            try {
                Path path = Path.of(word);
                if (Files.exists(path.resolveSibling(BESIDE)) || Files.exists(path.resolve(BESIDE))) {
                    return true;
                }
            } catch (InvalidPathException e) {
                // Whoever reads the inspections says so.
            }
        }
        return false;
    }

    /** Tells that somebody watches what is said beside the results, on a screen of so many columns; 0 where nobody does. */
    public Shell watched(int columns) {
        this.watched = columns;
        return this;
    }

    int watched() {
        return watched;
    }

    LocalDateTime now() {
        return now.get();
    }

    LongSupplier millis() {
        return millis;
    }

    InputStream in() {
        return in;
    }

    Screen screen() {
        return screen;
    }

    String version() {
        return version;
    }

    int threads() {
        return threads;
    }

    /** The rulebook with its judges, made ready anew by each call. */
    Rulebook rulebook() {
        return tailoring.isEmpty() ? Rulebook.of(untouched(), loader) : Rulebook.of(tailoring.get(), tailored);
    }

    /** The same, ready sooner for a single visit: reading it goes on while other threads make the judges ready. */
    Rulebook rulebookForOne() {
        Executor beside = building -> {
            Thread thread = new Thread(building, "rules");
            thread.setDaemon(true);
            thread.start();
        };
        if (tailoring.isPresent()) {
            return Rulebook.of(tailoring.get(), tailored, beside);
        }
        Rulebook rulebook = Rulebook.forOne(StoredBook.PATH, storedText(), loader, beside);
        stored = Optional.of(rulebook.stored());
        return rulebook;
    }

    /** What is laid over the rulebook, lowest first. */
    List<LaidOn> packs() {
        return tailoring.isEmpty() ? List.of() : tailoring.get().laidOn();
    }

    /** The ids of the items that the packs leave unasked. */
    Set<String> notAsked() {
        return tailoring.isEmpty() ? Set.of() : tailoring.get().notAsked();
    }

    /** The text of a file of a pack that is laid on, by the name that messages give it; empty where none has it. */
    Optional<String> packFile(String place) {
        return tailoring.isEmpty() ? Optional.empty() : tailoring.get().text(place);
    }

    /** What can be observed; far sooner there than the judges. */
    Vocabulary vocabulary() {
        return stored().vocabulary();
    }

    /** What the rulebook says; far sooner there than the judges. */
    Book book() {
        return stored().book();
    }

    private StoredBook stored() {
        return tailoring.isEmpty() ? untouched() : tailoring.get().stored();
    }

    StoredBook untouched() {
        if (stored.isEmpty()) {
            stored = Optional.of(StoredBook.read(StoredBook.PATH, storedText(), loader));
        }
        return stored.get();
    }

    private String storedText() {
        return resource(StoredBook.PATH)
                .orElseThrow(() -> new IllegalStateException("there is no rulebook in this program"));
    }

    /** A text that the program brings with it; empty where it has none of that name. */
    Optional<String> resource(String path) {
        try (InputStream resource = loader.getResourceAsStream(path)) {
            return resource == null
                    ? Optional.empty()
                    : Optional.of(new String(resource.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + path, e);
        }
    }

    /** Prints results for people; the text has passed through {@link gaugeglass.cli.paper.Paper}. */
    void print(String text) {
        write(text.getBytes(screen.charset()));
    }

    /** Prints results for programs, always in UTF-8. */
    void printJson(String text) {
        write(text.getBytes(StandardCharsets.UTF_8));
    }

    private void write(byte[] bytes) {
        try {
            if (canWrite) {
                out.write(bytes);
            }
        } catch (IOException e) {
            canWrite = false;
        }
    }

    /** Passes on what was printed; false when it does not arrive. */
    boolean flush() {
        try {
            out.flush();
        } catch (IOException e) {
            canWrite = false;
        }
        return canWrite;
    }

    /** Whether everything printed so far arrived, as far as is known. */
    boolean canWrite() {
        return canWrite;
    }

    /** Says one line beside the results. What it quotes of a user's is made harmless. */
    synchronized void say(String words) {
        bar("");
        err(Plain.of(words) + "\n");
    }

    /** Shows one line beside the results in the place of the one shown before; an empty one takes it away. */
    synchronized void bar(String line) {
        if (barred > 0 || !line.isEmpty()) {
            err("\r" + line + " ".repeat(Math.max(0, barred - line.length())) + (line.isEmpty() ? "\r" : ""));
        }
        barred = line.length();
    }

    private void err(String words) {
        try {
            err.write(words.getBytes(screen.charset()));
            err.flush();
        } catch (IOException e) {
            // Nobody is left to be told.
        }
    }

    /** Tells of a fault of the program. */
    public void sayFault(String where, Throwable fault) {
        String what = fault.getMessage() == null
                ? ""
                : ": " + fault.getMessage().lines().findFirst().orElse("");
        say("gaugeglass: " + (where.isEmpty() ? "" : where + ": ")
                + "this is a fault of the program, and it gives no verdict here: "
                + fault.getClass().getSimpleName() + what);
        if (debug) {
            StringWriter trace = new StringWriter();
            fault.printStackTrace(new PrintWriter(trace));
            trace.toString().lines().forEach(line -> say(line.replace("\t", "    ")));
        } else {
            say("gaugeglass: with GAUGEGLASS_DEBUG=1 it shows where; please report that with the file");
        }
    }
}
