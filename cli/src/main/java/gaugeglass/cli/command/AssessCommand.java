package gaugeglass.cli.command;

import gaugeglass.cli.report.JsonReport;
import gaugeglass.cli.report.TextReport;
import gaugeglass.cli.visit.InOrder;
import gaugeglass.cli.visit.Judge;
import gaugeglass.cli.visit.Judged;
import gaugeglass.cli.visit.Sources;
import gaugeglass.cli.visit.Task;
import gaugeglass.engine.Assessment;
import gaugeglass.engine.Assessment.Finding;
import gaugeglass.engine.Assessment.Permit;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.book.Urgency;
import gaugeglass.engine.reading.NodeWriter;
import gaugeglass.engine.text.Mistake;
import java.util.Map;

/** Judges inspections and prints what they come to. */
final class AssessCommand {
    private final AssessOptions options;
    private final Shell shell;
    private final Judge judge;
    private final TextReport text;
    private final JsonReport json;
    private final boolean isOne;
    private int code = Code.JUDGED;
    private int judged;
    private int unusable;
    private int failed;

    private AssessCommand(AssessOptions options, Shell shell) {
        this.options = options;
        this.shell = shell;
        this.isOne = Sources.isOne(options.words(), options.lines());
        if (options.asThen().isPresent()) {
            shell.layAsThen(options.words().get(0), options.asThen().get());
        } else {
            shell.lay(options.packs(), options.words());
        }
        Rulebook rulebook = isOne ? shell.rulebookForOne() : shell.rulebook();
        this.judge = new Judge(rulebook, options.date());
        this.text = new TextReport(rulebook, shell.screen());
        this.json = new JsonReport(rulebook);
    }

    /** Judges everything, in the order named; results come out as they are ready. */
    static int run(AssessOptions options, Shell shell) {
        return new AssessCommand(options, shell).run();
    }

    /** One inspection with what is to be printed of it. */
    private record Printed(Judged judged, String out, boolean fails) {}

    private int run() {
        boolean array = options.as() == As.JSON && !isOne;
        if (array) {
            shell.printJson("[");
        }
        try (Sources sources = new Sources(options.words(), options.lines(), shell.in())) {
            InOrder.run(sources, this::work, this::take, isOne ? 1 : shell.threads());
        }
        if (array) {
            shell.printJson(judged + unusable + failed == 0 ? "]\n" : "\n]\n");
        }
        if (!shell.flush()) {
            shell.say("gaugeglass: the results could not be written to the end");
            code = Code.FAULT;
        }
        if (!isOne) {
            shell.say("gaugeglass: " + count(judged) + " judged"
                    + (unusable == 0 ? "" : ", " + unusable + " could not be used")
                    + (failed == 0 ? "" : ", " + failed + " not judged by a fault of the program"));
        }
        return code;
    }

    private static String count(int inspections) {
        return inspections == 1 ? "1 inspection" : inspections + " inspections";
    }

    private Printed work(Task task) {
        Judged one = judge.judge(task);
        try {
            return new Printed(one, out(one), fails(one));
        } catch (RuntimeException e) {
            Judged.Fault fault = new Judged.Fault(task.name(), e);
            return new Printed(fault, out(fault), false);
        }
    }

    private String out(Judged one) {
        if (options.as() != As.TEXT) {
            Map<String, Object> tree = tree(one);
            return options.as() == As.JSONL ? NodeWriter.line(tree) + "\n" : NodeWriter.pretty(tree);
        }
        if (!(one instanceof Judged.Visit visit)) {
            return "";
        }
        StringBuilder out = new StringBuilder();
        for (Judged.Unit unit : visit.units()) {
            if (out.length() > 0) {
                out.append('\n').append("=".repeat(shell.screen().width())).append("\n\n");
            }
            out.append(text.of(visit.inspection(), unit.visited(), unit.assessment()));
        }
        return out.toString();
    }

    private Map<String, Object> tree(Judged one) {
        if (one instanceof Judged.Visit visit) {
            Map<String, Object> tree = json.visit(visit.name(), visit.inspection(), visit.date());
            visit.units().forEach(unit -> json.add(tree, unit.visited(), unit.assessment()));
            return tree;
        }
        return one instanceof Judged.Unusable unusable
                ? JsonReport.unusable(unusable.name(), unusable.mistakes())
                : JsonReport.fault(one.name(), "this is a fault of the program, and there is no verdict");
    }

    private boolean fails(Judged one) {
        if (options.failAt().isPresent() && one instanceof Judged.Visit visit) {
            for (Judged.Unit unit : visit.units()) {
                if (fails(unit.assessment(), options.failAt().get())) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean fails(Assessment assessment, Urgency failAt) {
        // A permit that is refused says no less than one that is not known.
        if (assessment.testFiring().permit() != Permit.NOTHING_FOUND_AGAINST
                || assessment.release().permit() != Permit.NOTHING_FOUND_AGAINST) {
            return true;
        }
        for (Finding finding : assessment.findings()) {
            if (finding.isStanding() && !failAt.isAbove(finding.urgency())) {
                return true;
            }
        }
        return false;
    }

    /** Prints one result; false when nobody takes any more. */
    private boolean take(Printed printed) {
        boolean first = judged + unusable + failed == 0;
        if (options.as() == As.JSON) {
            shell.printJson((isOne ? "" : first ? "\n" : ",\n") + printed.out() + (isOne ? "\n" : ""));
        } else if (options.as() == As.JSONL) {
            shell.printJson(printed.out());
        } else if (!printed.out().isEmpty()) {
            if (judged > 0) {
                shell.print("\n" + "=".repeat(shell.screen().width()) + "\n\n");
            }
            shell.print(printed.out());
        }
        if (printed.judged() instanceof Judged.Unusable one) {
            unusable++;
            worse(Code.UNUSABLE);
            if (!shell.flush()) {
                return false;
            }
            for (Mistake mistake : one.mistakes()) {
                shell.say(mistake.message());
            }
        } else if (printed.judged() instanceof Judged.Fault one) {
            failed++;
            worse(Code.FAULT);
            shell.flush();
            shell.sayFault(one.name(), one.cause());
        } else {
            judged++;
            if (printed.fails()) {
                worse(Code.FOUND);
            }
        }
        return shell.canWrite();
    }

    private void worse(int other) {
        code = Math.max(code, other);
    }
}
