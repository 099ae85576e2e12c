package gaugeglass.engine.vocabulary;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

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

    /** What earlier visits' findings tell of this one; nothing where the trade asks for none of it. */
    default List<Telling> tellings() {
        return List.of();
    }

    /**
     * What nobody may write into a text of this trade, as patterns that a text must not match, each with why.
     *
     * <p>It guards what packs say; the rulebook's own texts are proven otherwise.
     */
    default Map<Pattern, String> neverSaid() {
        return Map.of();
    }
}
