package gaugeglass.cli.visit;

import gaugeglass.engine.reading.SourceText;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;

/** One inspection on each line of a stream; lines without anything on them are passed over. */
final class Lines implements Iterator<Task> {
    private final String name;
    private final InputStream in;
    private int line;
    private boolean ended;
    private Optional<Task> next;

    Lines(String name, InputStream in) {
        this.name = name;
        this.in = new BufferedInputStream(in, 1 << 16);
        this.next = Optional.empty();
        this.next = advance();
    }

    @Override
    public boolean hasNext() {
        return next.isPresent();
    }

    @Override
    public Task next() {
        Task task = next.orElseThrow(NoSuchElementException::new);
        next = advance();
        return task;
    }

    private Optional<Task> advance() {
        while (!ended) {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream(4096);
            boolean tooLong = false;
            boolean blank = true;
            try {
                int b = in.read();
                for (; b >= 0 && b != '\n'; b = in.read()) {
                    blank &= b == ' ' || b == '\t' || b == '\r';
                    // The rest of an endless line is passed over, not kept.
                    if (bytes.size() <= SourceText.LARGEST) {
                        bytes.write(b);
                    } else {
                        tooLong = true;
                    }
                }
                ended = b < 0;
            } catch (IOException e) {
                ended = true;
                String reason = Optional.ofNullable(e.getMessage()).orElse("no more is known");
                return Optional.of(Task.unusable(name, line + 1, "this cannot be read further: " + reason, ""));
            }
            line++;
            if (tooLong) {
                return Optional.of(
                        Task.unusable(name, line, "this line is too long", "at most " + SourceText.LARGEST + " bytes"));
            }
            if (!blank) {
                byte[] text = bytes.toByteArray();
                return Optional.of(new Task(name, line - 1, () -> json(text)));
            }
        }
        return Optional.empty();
    }

    private String json(byte[] bytes) {
        String text = SourceText.of(name, bytes);
        String start = text.startsWith("\uFEFF") ? text.substring(1) : text;
        if (!start.stripLeading().startsWith("{")) {
            throw new Mistakes(List.of(new Mistake(
                    name, 1, 1, "", "this line is no JSON object", "one whole inspection as JSON on each line", "")));
        }
        return text;
    }
}
