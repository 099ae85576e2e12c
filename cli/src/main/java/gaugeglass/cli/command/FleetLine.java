package gaugeglass.cli.command;

import gaugeglass.cli.command.FullLine.Wrong;
import gaugeglass.cli.fleet.FleetTable;
import gaugeglass.engine.book.Urgency;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** The part of the command line that is about many visits together. */
final class FleetLine {
    private static final int TOP = 10;

    private FleetLine() {}

    static CommandSpec spec() {
        CommandSpec fleet = FullLine.command(
                "fleet",
                "Judge any number of inspections and print what they come to together: the worst sites, the most common"
                        + " findings, what falls due, make-up that stands out, what is left open, and which checks never found anything.");
        fleet.addPositional(FullLine.inputs());
        fleet.addOption(FullLine.lines());
        fleet.addOption(FullLine.pack());
        fleet.addOption(
                FullLine.valued("--as", "FORM", "Results as text, csv (one table, see --table) or json (everything)."));
        fleet.addOption(
                FullLine.valued(
                        "--table",
                        "NAME",
                        "Which table csv holds: sites (unless told), findings, due, make-up, open, never-found; every row of it."));
        fleet.addOption(FullLine.valued(
                "--top", "ROWS", "How many rows of each table the text shows; " + TOP + " unless told."));
        fleet.addOption(FullLine.valued(
                "--fail-at",
                "URGENCY",
                "Exit with 1 when a boiler's latest visit leaves a finding this urgent or more, or a permit that is"
                        + " forbidden or not known: stop, now, season, plan, watch."));
        fleet.addOption(FullLine.valued(
                "--date",
                "YYYY-MM-DD",
                "Judge for this day instead of each visit's own, and count from it what falls due."));
        return fleet;
    }

    static FleetOptions fleet(ParseResult said) throws Wrong {
        FleetOptions.Form as = said.hasMatchedOption("--as")
                ? FullLine.constant("--as", FleetOptions.Form.values(), FullLine.value(said, "--as"))
                : FleetOptions.Form.TEXT;
        if (said.hasMatchedOption("--table") && as != FleetOptions.Form.CSV) {
            throw new Wrong("--table goes with --as csv; text and json hold every table");
        }
        if (said.hasMatchedOption("--top") && as != FleetOptions.Form.TEXT) {
            throw new Wrong("--top goes with text; csv and json hold every row");
        }
        return new FleetOptions(
                FullLine.inputs(said),
                said.matchedOptionValue("--lines", false),
                as,
                said.hasMatchedOption("--table")
                        ? FullLine.constant("--table", FleetTable.values(), FullLine.value(said, "--table"))
                        : FleetTable.SITES,
                said.hasMatchedOption("--top") ? rows(FullLine.value(said, "--top")) : TOP,
                said.hasMatchedOption("--fail-at")
                        ? Optional.of(
                                FullLine.constant("--fail-at", Urgency.values(), FullLine.value(said, "--fail-at")))
                        : Optional.empty(),
                FullLine.date(said),
                FullLine.packs(said));
    }

    private static int rows(String text) throws Wrong {
        try {
            int rows = Integer.parseInt(text);
            if (rows > 0) {
                return rows;
            }
        } catch (NumberFormatException e) {
            // Told below.
        }
        throw new Wrong("--top: \"" + text + "\" is no number of rows; expected a whole number from 1");
    }
}
