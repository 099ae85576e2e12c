package gaugeglass.engine.vocabulary;

import java.util.List;

/**
 * What one trade observes: its kinds of equipment, its observations and its reckonings.
 *
 * <p>An implementation has a public constructor without parameters; the rulebook names it.
 */
public interface Trade {
    /** The kinds: exactly one site, exactly one unit, and any counted or fixed kinds. */
    List<Kind> kinds();

    /**
     * The observation records, in the order in which a visit takes them; each carries {@link Item}.
     */
    List<Class<? extends Record>> items();

    /** The reckonings, in the order in which they may use one another's results. */
    List<Reckoning> reckonings();
}
