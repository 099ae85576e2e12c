package gaugeglass.cli;

import gaugeglass.cli.command.Commands;
import gaugeglass.cli.command.Shell;
import gaugeglass.cli.paper.Screen;
import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDateTime;

/** The entry of the command line. */
public final class Main {
    /** The launcher tells here how many columns the terminal has; it is not set where standard output is none. */
    private static final String TERMINAL = "gaugeglass.terminal";

    /** Here it tells the same of standard error. */
    private static final String WATCHED = "gaugeglass.watched";

    private Main() {}

    /**
     * Does what the command line says and ends the process with a code that tells how it went.
     *
     * @param args the words of the command line
     */
    public static void main(String[] args) {
        // Not System.out: it swallows what goes wrong, and its character set cannot be chosen.
        OutputStream out = new BufferedOutputStream(new FileOutputStream(FileDescriptor.out), 1 << 14);
        OutputStream err = new FileOutputStream(FileDescriptor.err);
        // A file stream by itself tries to seek, which a pipe refuses.
        Shell shell = new Shell(
                new BufferedInputStream(new FileInputStream(FileDescriptor.in)),
                out,
                err,
                screen(),
                !env("GAUGEGLASS_DEBUG").isEmpty(),
                version(),
                Runtime.getRuntime().availableProcessors(),
                Main.class.getClassLoader());
        shell.at(LocalDateTime::now, () -> System.nanoTime() / 1_000_000);
        shell.home(Main::home);
        shell.watched(columns(System.getProperty(WATCHED, ""), 0));
        int code;
        try {
            code = Commands.run(args, shell);
        } catch (RuntimeException | Error e) {
            shell.sayFault("", e);
            code = 4;
        }
        // Runtime.halt would be quicker still, and would lose what is not yet written.
        System.exit(code);
    }

    private static Screen screen() {
        String terminal = System.getProperty(TERMINAL, "");
        boolean colour = !terminal.isEmpty()
                && env("NO_COLOR").isEmpty()
                && !env("TERM").isEmpty()
                && !env("TERM").equals("dumb");
        int width = columns(env("COLUMNS"), columns(terminal, Screen.WIDEST));
        return new Screen(width, charset(), colour);
    }

    /** Where packs that were taken, keys and what was compiled are kept. */
    private static Path home() {
        String own = env("GAUGEGLASS_HOME");
        if (!own.isEmpty()) {
            return Path.of(own);
        }
        String data = env("XDG_DATA_HOME");
        return (data.isEmpty() ? Path.of(System.getProperty("user.home", "."), ".local", "share") : Path.of(data))
                .resolve("gaugeglass");
    }

    private static int columns(String text, int otherwise) {
        try {
            int columns = Integer.parseInt(text.strip());
            return columns > 0 ? columns : otherwise;
        } catch (NumberFormatException e) {
            return otherwise;
        }
    }

    /** What standard output can show; ASCII where that is not known. */
    private static Charset charset() {
        for (String property : new String[] {"stdout.encoding", "sun.stdout.encoding", "native.encoding"}) {
            String name = System.getProperty(property, "");
            try {
                if (!name.isEmpty()) {
                    return Charset.forName(name);
                }
            } catch (IllegalArgumentException e) {
                // A name that this Java does not know is as good as none.
            }
        }
        return StandardCharsets.US_ASCII;
    }

    private static String version() {
        String version = Main.class.getPackage().getImplementationVersion();
        return version == null ? "unpackaged" : version;
    }

    private static String env(String name) {
        String value = System.getenv(name);
        return value == null ? "" : value;
    }
}
