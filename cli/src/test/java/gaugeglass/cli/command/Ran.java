package gaugeglass.cli.command;

import gaugeglass.cli.paper.Screen;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDateTime;

/** One command run inside the test, with everything it said. */
public record Ran(int code, String out, String err) {
    /** Packs that were taken, keys and what was compiled, for all tests. */
    public static final Path HOME = Path.of("target/test-home").toAbsolutePath();

    private static final Screen PLAIN = new Screen(80, StandardCharsets.US_ASCII, false);

    public static Ran of(String... args) {
        return on(PLAIN, "", args);
    }

    public static Ran withInput(String input, String... args) {
        return on(PLAIN, input, args);
    }

    static Ran on(Screen screen, String input, String... args) {
        return on(screen, input.getBytes(StandardCharsets.UTF_8), 2, args);
    }

    /** With what the program brings along found elsewhere. */
    static Ran from(ClassLoader loader, String... args) {
        return on(PLAIN, new byte[0], 2, loader, args);
    }

    static Ran on(Screen screen, byte[] input, int threads, String... args) {
        return on(screen, input, threads, Ran.class.getClassLoader(), args);
    }

    private static Ran on(Screen screen, byte[] input, int threads, ClassLoader loader, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Shell shell = new Shell(
                        new ByteArrayInputStream(input), out, err, screen, false, "of the test", threads, loader)
                .at(() -> LocalDateTime.of(2026, 9, 14, 8, 30), () -> 0)
                .home(() -> HOME);
        int code = Commands.run(args, shell);
        boolean json = out.size() > 0 && "{[".indexOf(out.toByteArray()[0]) >= 0;
        Charset charset = json ? StandardCharsets.UTF_8 : screen.charset();
        return new Ran(code, out.toString(charset), err.toString(screen.charset()));
    }
}
