package gaugeglass.cli.command;

import gaugeglass.cli.walk.Walking;
import java.nio.file.Path;
import java.time.format.DateTimeFormatter;
import java.util.Optional;

/** The interview in a terminal. */
final class WalkCommand {
    private WalkCommand() {}

    static int run(Path file, Optional<Path> last, Optional<String> checklist, Shell shell) {
        Walking walking =
                new Walking(shell.rulebook(), shell.now().toLocalDate(), () -> DateTimeFormatter.ofPattern("HH:mm")
                        .format(shell.now()));
        Walking.Outcome outcome = walking.inTerminal(
                file, last, checklist, shell.screen(), shell.millis(), words -> shell.say("gaugeglass: " + words));
        return outcome == Walking.Outcome.UNUSABLE ? Code.UNUSABLE : Code.JUDGED;
    }
}
