package gaugeglass.engine.history;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.function.Function;

/** The records of a rulebook's releases, read when they are asked for: most runs need none. */
public final class History {
    /** Where they lie on a class path: {@code VERSION.yaml} for each release. */
    public static final String FOLDER = "gaugeglass/history/";

    /** What the record of the rulebook that is there is called; its build writes it. */
    public static final String HERE = "here.yaml";

    private final Function<String, Optional<String>> texts;

    private History(Function<String, Optional<String>> texts) {
        this.texts = texts;
    }

    /**
     * A history.
     *
     * @param texts gives the text of a file of {@link #FOLDER} by its name, where there is one
     */
    public static History of(Function<String, Optional<String>> texts) {
        return new History(texts);
    }

    /** The history on a class path. */
    public static History of(ClassLoader loader) {
        return new History(name -> {
            try (InputStream in = loader.getResourceAsStream(FOLDER + name)) {
                return in == null
                        ? Optional.empty()
                        : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
            } catch (IOException e) {
                throw new UncheckedIOException("cannot read " + FOLDER + name, e);
            }
        });
    }

    /**
     * The record of the rulebook that is there.
     *
     * @throws IllegalStateException when its build left none
     */
    public Release here() {
        return read(HERE).orElseThrow(() -> new IllegalStateException("there is no " + FOLDER + HERE));
    }

    /** The record of a release; empty where none was kept, as for a version that was never released. */
    public Optional<Release> release(String version) {
        return Versions.isReleased(version) ? read(version + ".yaml") : Optional.empty();
    }

    private Optional<Release> read(String name) {
        return texts.apply(name).map(text -> Release.read(FOLDER + name, text));
    }
}
