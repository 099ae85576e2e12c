package gaugeglass.cli.command;

import gaugeglass.cli.printed.PaperSize;
import java.util.List;
import java.util.Optional;

/**
 * What {@code sheet} is asked to do.
 *
 * @param word the inspection to fill in: a file, or {@code -} for standard input; empty for a blank sheet
 * @param checklist the id of a checklist; empty for the inspection's own
 * @param isForPhone whether it is the page for a phone; the printable one otherwise
 * @param out where the page goes; {@code -} for standard output; empty to be named after the inspection or the checklist
 * @param size the sheets
 * @param pdf whether a PDF is put beside the page
 * @param packs laid over the rulebook
 */
record SheetOptions(
        Optional<String> word,
        String checklist,
        boolean isForPhone,
        String out,
        PaperSize size,
        boolean pdf,
        List<String> packs) {}
