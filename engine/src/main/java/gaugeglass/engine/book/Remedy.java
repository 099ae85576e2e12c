package gaugeglass.engine.book;

import java.util.List;

/**
 * One line of work; findings with the same remedy are put right together.
 *
 * @param id its name
 * @param work what is done, as an order line
 * @param parts what it needs for each thing it is done to; {@link PartWords} says what stands for what was seen
 * @param takeAlong what it needs once, however many things it is done to
 */
public record Remedy(String id, String work, List<String> parts, List<String> takeAlong) {
    public Remedy {
        parts = List.copyOf(parts);
        takeAlong = List.copyOf(takeAlong);
    }
}
