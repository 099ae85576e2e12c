package gaugeglass.cli.command;

import gaugeglass.engine.text.Mistakes;
import java.util.Optional;

/** The way from a command line to a command. */
public final class Commands {
    private Commands() {}

    /**
     * Does what a command line says.
     *
     * @return the exit code: 0 judged, 1 found with {@code --fail-at}, 2 wrong command line, 3 a file could not be used,
     *     4 a fault of the program
     */
    public static int run(String[] args, Shell shell) {
        try {
            return command(args, shell);
        } catch (Mistakes e) {
            // A pack that cannot be used: then nothing is judged without it.
            e.all().forEach(mistake -> shell.say(mistake.message()));
            return Code.UNUSABLE;
        }
    }

    private static int command(String[] args, Shell shell) {
        if (args.length > 0 && args[0].equals("assess")) {
            Optional<AssessOptions> options = QuickLine.assess(args);
            if (options.isPresent()) {
                return AssessCommand.run(options.get(), shell);
            }
        }
        if (args.length > 0 && args[0].equals("check")) {
            Optional<CheckOptions> options = QuickLine.check(args);
            if (options.isPresent()) {
                return CheckCommand.run(options.get(), shell);
            }
        }
        return FullLine.run(args, shell);
    }
}
