package gaugeglass.cli.command;

import gaugeglass.cli.walk.VisitFile;
import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Puts files where they are wanted, each whole or not at all, and says so. */
final class Written {
    private final Shell shell;
    private int code = Code.JUDGED;

    Written(Shell shell) {
        this.shell = shell;
    }

    void put(Path path, byte[] bytes) {
        Path next = path.resolveSibling("." + path.getFileName() + ".next");
        try {
            Files.write(next, bytes);
            try {
                Files.move(next, path, StandardCopyOption.ATOMIC_MOVE);
            } catch (AtomicMoveNotSupportedException e) {
                Files.move(next, path, StandardCopyOption.REPLACE_EXISTING);
            }
            shell.say("gaugeglass: wrote " + path);
        } catch (IOException e) {
            shell.say("gaugeglass: " + path + ": it could not be written: " + VisitFile.reason(e));
            code = Code.FAULT;
        }
    }

    /** How it went so far. */
    int code() {
        return code;
    }
}
