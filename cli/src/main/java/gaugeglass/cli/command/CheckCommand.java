package gaugeglass.cli.command;

import gaugeglass.cli.paper.Paper;
import gaugeglass.cli.paper.Style;
import gaugeglass.cli.visit.InOrder;
import gaugeglass.cli.visit.Judge;
import gaugeglass.cli.visit.Judged;
import gaugeglass.cli.visit.Sources;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.InspectionReader;
import gaugeglass.engine.text.Mistake;

/** Reads inspections and tells whether they can be used; judges nothing. */
final class CheckCommand {
    private final Shell shell;
    private int code = Code.JUDGED;

    private CheckCommand(Shell shell) {
        this.shell = shell;
    }

    /** Reads everything, in the order named. */
    static int run(CheckOptions options, Shell shell) {
        CheckCommand command = new CheckCommand(shell);
        shell.lay(options.packs(), options.words());
        InspectionReader reader = new InspectionReader(shell.vocabulary());
        int threads = Sources.isOne(options.words(), options.lines()) ? 1 : shell.threads();
        try (Sources sources = new Sources(options.words(), options.lines(), shell.in())) {
            InOrder.run(sources, task -> Judge.check(reader, task), command::take, threads);
        }
        if (!shell.flush()) {
            shell.say("gaugeglass: the results could not be written to the end");
            return Code.FAULT;
        }
        return command.code;
    }

    private boolean take(Judged judged) {
        if (judged instanceof Judged.Visit visit) {
            Paper paper = new Paper(shell.screen());
            paper.hanging("", "    ", told(visit.name(), visit.inspection()), Style.PLAIN);
            visit.inspection()
                    .remarks()
                    .forEach(remark -> paper.hanging("    ", "      ", remark.toString(), Style.PLAIN));
            shell.print(paper.toString());
        } else if (judged instanceof Judged.Unusable unusable) {
            code = Math.max(code, Code.UNUSABLE);
            shell.flush();
            for (Mistake mistake : unusable.mistakes()) {
                shell.say(mistake.message());
            }
        } else if (judged instanceof Judged.Fault fault) {
            code = Code.FAULT;
            shell.flush();
            shell.sayFault(fault.name(), fault.cause());
        }
        return shell.canWrite();
    }

    private static String told(String name, Inspection inspection) {
        int answers = inspection.site().size();
        for (Inspection.Visited visited : inspection.units()) {
            answers +=
                    visited.observations().answers().size() - inspection.site().size();
        }
        int boilers = inspection.units().size();
        return name + ": can be used; visit of " + inspection.date() + " to " + inspection.siteId() + ", "
                + (boilers == 1 ? "1 boiler" : boilers + " boilers") + ", "
                + (answers == 1 ? "1 answer" : answers + " answers");
    }
}
