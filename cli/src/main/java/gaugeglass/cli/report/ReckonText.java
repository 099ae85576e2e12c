package gaugeglass.cli.report;

import gaugeglass.cli.paper.Paper;
import gaugeglass.cli.paper.Screen;
import gaugeglass.cli.paper.Style;
import gaugeglass.engine.book.Source;
import gaugeglass.steam.handbook.Entry;
import gaugeglass.steam.handbook.Input;
import gaugeglass.steam.reckon.Worked;
import java.util.List;

/** Reckonings as text: a sheet that somebody can check by hand. */
public final class ReckonText {
    private final Screen screen;

    public ReckonText(Screen screen) {
        this.screen = screen;
    }

    /** Every reckoning on a line, and how to ask for one. */
    public String list(List<Entry> entries) {
        Paper paper = new Paper(screen);
        paper.line("What can be reckoned", Style.STRONG);
        paper.gap();
        int widest = widest(entries.stream().map(Entry::name).toList());
        for (Entry entry : entries) {
            paper.hanging("  " + padded(entry.name(), widest + 2), entry.title(), Style.PLAIN);
        }
        paper.gap();
        paper.line("One of them with its values:", Style.PLAIN);
        Entry example = entries.get(0);
        for (Entry entry : entries) {
            example = entry.name().equals("co-air-free") ? entry : example;
        }
        paper.hanging("  ", "    ", line(example), Style.PLAIN);
        paper.line(
                "A name alone explains itself, with a worked example: gaugeglass reckon " + example.name(),
                Style.PLAIN);
        return paper.toString();
    }

    /** What a reckoning wants to be told, and its example worked out. */
    public String explained(Entry entry, Worked example) {
        Paper paper = new Paper(screen);
        paper.line(entry.name() + ": " + lowered(entry.title()), Style.STRONG);
        paper.gap();
        int widest = widest(entry.inputs().stream().map(Input::name).toList());
        for (Input input : entry.inputs()) {
            paper.hanging(
                    "  " + padded(input.name() + "=", widest + 3),
                    input.what() + "; " + input.kind().form() + need(input),
                    Style.PLAIN);
        }
        paper.gap();
        paper.hanging("Range   ", entry.range() + "; outside it, no answer is given", Style.PLAIN);
        paper.gap();
        paper.line("Example", Style.STRONG);
        paper.hanging("  ", "    ", line(entry), Style.PLAIN);
        paper.gap();
        sheet(paper, example);
        return paper.toString();
    }

    /** A reckoning worked out. */
    public String worked(Entry entry, Worked worked) {
        Paper paper = new Paper(screen);
        paper.line(entry.title(), Style.STRONG);
        paper.gap();
        sheet(paper, worked);
        return paper.toString();
    }

    /** The example as it is typed. */
    public static String line(Entry entry) {
        StringBuilder line = new StringBuilder("gaugeglass reckon ").append(entry.name());
        for (String pair : entry.example()) {
            int at = pair.indexOf('=');
            String value = pair.substring(at + 1);
            boolean isPlain = value.chars().allMatch(c -> c > ' ' && c != ';' && c != '"' && c != '*');
            line.append(' ').append(pair, 0, at + 1).append(isPlain ? value : "\"" + value + "\"");
        }
        return line.toString();
    }

    private void sheet(Paper paper, Worked worked) {
        int symbols = widest(worked.given().stream().map(Worked.Given::symbol).toList());
        int values = Math.min(
                22, widest(worked.given().stream().map(Worked.Given::value).toList()));
        for (Worked.Given given : worked.given()) {
            paper.hanging(
                    "  " + padded(given.symbol(), symbols + 2) + padded(given.value(), values + 2),
                    given.what(),
                    Style.PLAIN);
        }
        paper.gap();
        for (Worked.Line line : worked.lines()) {
            paper.hanging("  ", "      ", line.what() + ", " + line.symbol() + " = " + line.formula(), Style.PLAIN);
            if (!line.numbers().isEmpty()) {
                paper.hanging("      = ", "        ", line.numbers(), Style.PLAIN);
            }
            paper.hanging("      = ", "        ", line.answer().shown(), Style.PLAIN);
        }
        paper.gap();
        paper.hanging("Answer  ", worked.main() + ": " + worked.answer().shown(), Style.STRONG);
        paper.hanging("Basis   ", worked.basis().word(), Style.PLAIN);
        String lead = "Source  ";
        for (Source source : worked.sources()) {
            paper.hanging(lead, source.name() + known(source), Style.PLAIN);
            lead = "        ";
        }
        lead = "Mind    ";
        for (String warning : worked.warnings()) {
            paper.hanging(lead, warning, Style.PLAIN);
            lead = "        ";
        }
    }

    /** How surely a source is known, as what follows its name; nothing where it was read. */
    public static String known(Source source) {
        return switch (source.known()) {
            case READ -> "";
            case READ_SECOND_HAND -> " (read second hand)";
            case MEMORY_HIGH -> " (from memory, high certainty)";
            case MEMORY_MEDIUM -> " (from memory, medium certainty)";
            case MEMORY_LOW -> " (from memory, low certainty)";
        };
    }

    /** What is to be said of an input that may be left out. */
    public static String need(Input input) {
        return switch (input.need()) {
            case REQUIRED -> "";
            case DEFAULTED -> "; " + input.otherwise() + " unless told";
            case OPTIONAL -> "; may be left out";
        };
    }

    private static String lowered(String title) {
        return Character.toLowerCase(title.charAt(0)) + title.substring(1);
    }

    private static int widest(List<String> words) {
        return words.stream().mapToInt(String::length).max().orElse(0);
    }

    private static String padded(String word, int width) {
        // A word too wide for its column still keeps its distance from the next.
        return word.length() >= width ? word + "  " : word + " ".repeat(width - word.length());
    }
}
