package gaugeglass.cli.walk;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;

/** A walk in a process of its own, to be killed: lines come in, and each screen is told as it is shown. */
final class KilledWalk {
    static final String SCREEN = "screen";

    private KilledWalk() {}

    /** Walks the file named. */
    public static void main(String[] arguments) {
        BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        PrintStream out = System.out;
        Talk talk = new Talk() {
            @Override
            public void say(String text) {
                // Only how far it came is told.
            }

            @Override
            public void page() {
                out.println(SCREEN);
                out.flush();
            }

            @Override
            public String line(String prompt) {
                try {
                    String line = in.readLine();
                    if (line == null) {
                        throw new Ended();
                    }
                    return line;
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            }

            @Override
            public Key key() {
                throw new Ended();
            }

            @Override
            public long millis() {
                return 0;
            }
        };
        new Walking(Walked.RULEBOOK, Walked.DAY, () -> "09:00")
                .walk(talk, Path.of(arguments[0]), Optional.empty(), Optional.of(Walked.FULL.id()), out::println);
    }
}
