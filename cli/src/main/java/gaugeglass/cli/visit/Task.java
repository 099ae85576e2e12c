package gaugeglass.cli.visit;

import gaugeglass.engine.reading.SourceText;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;

/**
 * One inspection that is to be read.
 *
 * @param name what it is called in messages
 * @param linesBefore how many lines of the file stand before its first
 * @param text gives its text, when the time has come
 */
public record Task(String name, int linesBefore, Text text) {

    /** Where a text comes from. */
    public interface Text {
        /**
         * Reads it.
         *
         * @throws Mistakes when it cannot be read
         */
        String read();
    }

    /** A whole file. */
    static Task of(Path file) {
        return new Task(file.toString(), 0, () -> SourceText.read(file));
    }

    /** A stream to its end. */
    static Task of(String name, InputStream in) {
        return new Task(name, 0, () -> SourceText.read(name, in));
    }

    /** What is known already to be of no use. */
    static Task unusable(String name, int line, String what, String expected) {
        Mistakes mistakes = new Mistakes(List.of(new Mistake(name, line, 0, "", what, expected, "")));
        return new Task(name, 0, () -> {
            throw mistakes;
        });
    }

    /** A mistake with its line counted from the top of the file. */
    Mistake placed(Mistake mistake) {
        return linesBefore == 0 || mistake.line() == 0
                ? mistake
                : new Mistake(
                        mistake.file(),
                        mistake.line() + linesBefore,
                        mistake.column(),
                        mistake.where(),
                        mistake.what(),
                        mistake.expected(),
                        mistake.nearest());
    }
}
