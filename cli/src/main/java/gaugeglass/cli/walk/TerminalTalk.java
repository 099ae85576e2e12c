package gaugeglass.cli.walk;

import gaugeglass.cli.paper.Paper;
import gaugeglass.cli.paper.Screen;
import gaugeglass.cli.paper.Style;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.function.LongSupplier;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.Reference;
import org.jline.reader.UserInterruptException;
import org.jline.terminal.Attributes;
import org.jline.terminal.Terminal;

/** A conversation in a real terminal. It only ever adds lines, so that slow links and screen readers keep up. */
final class TerminalTalk implements Talk {
    private final Terminal terminal;
    private final LineReader reader;
    private final Screen screen;
    private final LongSupplier millis;

    TerminalTalk(Terminal terminal, Screen screen, LongSupplier millis) {
        this.terminal = terminal;
        this.reader = LineReaderBuilder.builder()
                .terminal(terminal)
                .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
                .option(LineReader.Option.BRACKETED_PASTE, false)
                .variable(LineReader.DISABLE_HISTORY, true)
                .build();
        // A tab is part of a pasted table; there is nothing here to complete.
        reader.getKeyMaps().get(LineReader.MAIN).bind(new Reference(LineReader.SELF_INSERT), "\t");
        this.screen = screen;
        this.millis = millis;
    }

    @Override
    public void say(String text) {
        Paper paper = new Paper(screen);
        int indent = 0;
        while (indent < text.length() && text.charAt(indent) == ' ') {
            indent++;
        }
        // What a number leads goes on below its first word.
        boolean numbered = text.length() > indent + 2 && text.charAt(indent + 1) == '\u00a0' && indent == 1;
        String further = " ".repeat(numbered ? indent + 2 : indent);
        paper.hanging(text.substring(0, indent), further, text.substring(indent), style(text));
        write(paper.toString());
    }

    private static Style style(String text) {
        return text.startsWith("***") || text.startsWith("THE ") ? Style.ALARM : Style.PLAIN;
    }

    @Override
    public void page() {
        Paper paper = new Paper(screen);
        paper.rule('-');
        write("\n" + paper);
    }

    private void write(String text) {
        PrintWriter out = terminal.writer();
        out.print(text);
        out.flush();
    }

    @Override
    public String line(String prompt) {
        try {
            return reader.readLine(prompt);
        } catch (EndOfFileException | UserInterruptException e) {
            throw new Ended();
        }
    }

    @Override
    public Key key() {
        Attributes before = terminal.enterRawMode();
        try {
            int read = terminal.reader().read();
            if (read < 0 || read == 3 || read == 4) {
                throw new Ended();
            }
            return new Key(read == '\r' ? '\n' : (char) read, millis());
        } catch (IOException e) {
            throw new Ended();
        } finally {
            terminal.setAttributes(before);
        }
    }

    @Override
    public long millis() {
        return millis.getAsLong();
    }
}
