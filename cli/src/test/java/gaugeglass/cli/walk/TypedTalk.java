package gaugeglass.cli.walk;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Plays the person: types prepared lines and keys, and keeps what was shown. */
final class TypedTalk implements Talk {
    private final Deque<String> lines = new ArrayDeque<>();
    private final Deque<Character> keys = new ArrayDeque<>();
    private final List<String> shown = new ArrayList<>();
    private final StringBuilder all = new StringBuilder();
    private long now;
    private int typed;
    private int breakOffAfter = Integer.MAX_VALUE;
    private boolean readsOn;
    private final Map<Integer, Runnable> doing = new HashMap<>();

    TypedTalk type(String... more) {
        lines.addAll(List.of(more));
        return this;
    }

    TypedTalk press(String letters) {
        for (char letter : letters.toCharArray()) {
            keys.add(letter);
        }
        return this;
    }

    /** Presses Enter by itself wherever that is asked for after something was shown. */
    TypedTalk readsOn() {
        readsOn = true;
        return this;
    }

    /** Does something when everything prepared so far has been typed. */
    TypedTalk then(Runnable what) {
        doing.put(typed + lines.size(), what);
        return this;
    }

    /** Is cut off once so many lines have been typed. */
    TypedTalk breakOffAfter(int number) {
        breakOffAfter = number;
        return this;
    }

    @Override
    public void say(String text) {
        shown.add(text);
        all.append(text).append('\n');
    }

    @Override
    public void page() {
        shown.add("----");
        all.append("----\n");
    }

    @Override
    public String line(String prompt) {
        all.append(prompt);
        if (readsOn && prompt.startsWith("Press Enter")) {
            all.append('\n');
            return "";
        }
        Optional.ofNullable(doing.remove(typed)).ifPresent(Runnable::run);
        if (lines.isEmpty() || typed >= breakOffAfter) {
            throw new Ended();
        }
        String line = lines.poll();
        typed++;
        now += 1000;
        all.append(line).append('\n');
        return line;
    }

    @Override
    public Key key() {
        if (keys.isEmpty()) {
            throw new Ended();
        }
        now += 1500;
        return new Key(keys.poll(), now);
    }

    @Override
    public long millis() {
        return now;
    }

    /** Everything shown and typed, in order. */
    String screen() {
        return all.toString();
    }

    int linesLeft() {
        return lines.size();
    }
}
