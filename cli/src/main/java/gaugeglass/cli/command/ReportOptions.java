package gaugeglass.cli.command;

import gaugeglass.cli.printed.PaperSize;
import gaugeglass.cli.printed.Reader;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What {@code report} is asked to do.
 *
 * @param word the inspection: a file, or {@code -} for standard input
 * @param reader whom it is for
 * @param out where the page goes; {@code -} for standard output
 * @param size the sheets
 * @param pdf whether a PDF is put beside the page
 * @param csv where the work goes as a table; empty where it does not
 * @param json where it goes as JSON; empty where it does not
 * @param date the day for which to judge; empty for the visit's own
 * @param packs what is named to be laid over the rulebook
 */
record ReportOptions(
        String word,
        Reader reader,
        String out,
        PaperSize size,
        boolean pdf,
        Optional<Path> csv,
        Optional<Path> json,
        Optional<LocalDate> date,
        List<String> packs) {}
