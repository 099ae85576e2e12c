package gaugeglass.cli.command;

import gaugeglass.cli.fleet.Fleet;
import gaugeglass.cli.fleet.FleetCsv;
import gaugeglass.cli.fleet.FleetJson;
import gaugeglass.cli.fleet.FleetText;
import gaugeglass.cli.fleet.Summary;
import gaugeglass.cli.fleet.Summing;
import gaugeglass.cli.fleet.Totals;
import gaugeglass.cli.report.Naming;
import gaugeglass.cli.visit.InOrder;
import gaugeglass.cli.visit.Judge;
import gaugeglass.cli.visit.Judged;
import gaugeglass.cli.visit.Sources;
import gaugeglass.cli.visit.Task;
import gaugeglass.engine.Rulebook;
import java.io.Writer;
import java.util.Optional;

/** Judges any number of inspections and prints what they come to together. */
final class FleetCommand {
    private final FleetOptions options;
    private final Shell shell;
    private final Rulebook rulebook;
    private final Judge judge;
    private final Summing summing;
    private final Fleet fleet;
    private int code = Code.JUDGED;
    private int judged;
    private int unusable;
    private int failed;

    private FleetCommand(FleetOptions options, Shell shell) {
        this.options = options;
        this.shell = shell;
        shell.lay(options.packs(), options.words());
        this.rulebook = shell.rulebook();
        this.judge = new Judge(rulebook, options.date());
        this.summing = new Summing(rulebook);
        this.fleet = new Fleet(summing);
    }

    static int run(FleetOptions options, Shell shell) {
        return new FleetCommand(options, shell).run();
    }

    /** What became of one inspection, small enough to wait its turn. */
    private record Summed(Optional<Summary> summary, Optional<Judged> trouble) {}

    private int run() {
        try (Sources sources = new Sources(options.words(), options.lines(), shell.in());
                Progress progress = Progress.of(shell, sources)) {
            InOrder.run(
                    sources,
                    this::work,
                    one -> {
                        take(one);
                        progress.step();
                        return true;
                    },
                    shell.threads());
        }
        if (judged > 0) {
            Totals totals = new Totals(fleet);
            print(totals);
            if (options.failAt().isPresent() && totals.fails(options.failAt().get())) {
                worse(Code.FOUND);
            }
        }
        if (!shell.flush()) {
            shell.say("gaugeglass: the results could not be written to the end");
            worse(Code.FAULT);
        }
        shell.say("gaugeglass: " + judged + (judged == 1 ? " inspection judged" : " inspections judged")
                + (unusable == 0 ? "" : ", " + unusable + " could not be used")
                + (failed == 0 ? "" : ", " + failed + " not judged by a fault of the program"));
        return code;
    }

    private void print(Totals totals) {
        Naming naming = new Naming(rulebook.vocabulary(), rulebook.book());
        switch (options.as()) {
            case TEXT -> shell.print(new FleetText(totals, rulebook, naming, shell.screen(), options.top()).write());
            case CSV -> new FleetCsv(totals, rulebook.book(), naming).write(options.table(), out());
            case JSON -> new FleetJson(totals, rulebook, naming).write(shell::printJson);
        }
    }

    /** Standard output as a writer that need not be closed; in UTF-8. */
    private Writer out() {
        return new Writer() {
            @Override
            public void write(char[] text, int from, int length) {
                shell.printJson(new String(text, from, length));
            }

            @Override
            public void flush() {
                // Flushed when all is written.
            }

            @Override
            public void close() {
                // Standard output stays open.
            }
        };
    }

    private Summed work(Task task) {
        Judged one = judge.judge(task);
        if (!(one instanceof Judged.Visit visit)) {
            return new Summed(Optional.empty(), Optional.of(one));
        }
        try {
            return new Summed(Optional.of(summing.of(visit)), Optional.empty());
        } catch (RuntimeException e) {
            return new Summed(Optional.empty(), Optional.of(new Judged.Fault(task.name(), e)));
        }
    }

    private void take(Summed one) {
        if (one.summary().isPresent()) {
            judged++;
            fleet.add(one.summary().get());
        } else if (one.trouble().get() instanceof Judged.Unusable trouble) {
            unusable++;
            fleet.addUnusable();
            worse(Code.UNUSABLE);
            trouble.mistakes().forEach(mistake -> shell.say(mistake.message()));
        } else if (one.trouble().get() instanceof Judged.Fault trouble) {
            failed++;
            worse(Code.FAULT);
            shell.sayFault(trouble.name(), trouble.cause());
        }
    }

    private void worse(int other) {
        code = Math.max(code, other);
    }
}
