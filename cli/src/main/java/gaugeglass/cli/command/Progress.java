package gaugeglass.cli.command;

import gaugeglass.cli.visit.Sources;
import java.util.Optional;
import me.tongfei.progressbar.DelegatingProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;

/** How far a long work is, as a bar beside the results; nothing at all where nobody watches. */
final class Progress implements AutoCloseable {
    private static final int MILLIS_BETWEEN = 500;
    private static final long KIBIBYTE = 1024;

    private final Shell shell;
    private final Sources sources;
    private final Optional<ProgressBar> bar;
    private int done;

    private Progress(Shell shell, Sources sources, Optional<ProgressBar> bar) {
        this.shell = shell;
        this.sources = sources;
        this.bar = bar;
    }

    /** A bar over the bytes that are read, where standard error is a terminal. */
    static Progress of(Shell shell, Sources sources) {
        if (shell.watched() == 0) {
            return new Progress(shell, sources, Optional.empty());
        }
        ProgressBar bar = new ProgressBarBuilder()
                .setTaskName("judging")
                .setStyle(ProgressBarStyle.ASCII)
                .setUnit(" kB", 1)
                .setInitialMax(-1)
                .setUpdateIntervalMillis(MILLIS_BETWEEN)
                .setConsumer(new DelegatingProgressBarConsumer(shell::bar, shell.watched() - 1))
                .build();
        return new Progress(shell, sources, Optional.of(bar));
    }

    /** One inspection more. */
    void step() {
        done++;
        if (bar.isPresent()) {
            // Of a folder the size is known only once it was looked through.
            sources.size().ifPresent(size -> bar.get().maxHint(size / KIBIBYTE));
            bar.get().stepTo(sources.taken() / KIBIBYTE);
            bar.get().setExtraMessage(" " + done);
        }
    }

    @Override
    public void close() {
        if (bar.isPresent()) {
            bar.get().close();
            shell.bar("");
        }
    }
}
