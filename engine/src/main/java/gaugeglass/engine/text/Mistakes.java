package gaugeglass.engine.text;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Thrown when something that a person wrote cannot be used; carries every independent mistake
 * found.
 */
public final class Mistakes extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<Mistake> all;

    public Mistakes(List<Mistake> all) {
        super(all.stream().map(Mistake::message).collect(Collectors.joining("\n")));
        this.all = List.copyOf(all);
    }

    public List<Mistake> all() {
        return all;
    }
}
