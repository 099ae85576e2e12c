package gaugeglass.engine.book;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything a rulebook says, looked up by id.
 *
 * @param name the rulebook's name
 * @param version the rulebook's version
 * @param hash a digest of the files it was made from
 * @param cards by id
 * @param limits by id
 * @param cautions by id
 * @param remedies by id
 * @param diagnoses in order
 * @param rules the index, in order
 * @param models the names of the compiled rules' model classes
 * @param replaced the checks in whose place a pack puts its own, by id, with the pack as people name it
 */
public record Book(
        String name,
        String version,
        String hash,
        Map<String, Card> cards,
        Map<String, Limit> limits,
        Map<String, Caution> cautions,
        Map<String, Remedy> remedies,
        List<Diagnosis> diagnoses,
        List<RuleEntry> rules,
        List<String> models,
        Map<String, String> replaced) {

    /** A book as it was built, nothing of which is replaced. */
    public Book(
            String name,
            String version,
            String hash,
            Map<String, Card> cards,
            Map<String, Limit> limits,
            Map<String, Caution> cautions,
            Map<String, Remedy> remedies,
            List<Diagnosis> diagnoses,
            List<RuleEntry> rules,
            List<String> models) {
        this(name, version, hash, cards, limits, cautions, remedies, diagnoses, rules, models, Map.of());
    }

    public Book {
        cards = Collections.unmodifiableMap(new LinkedHashMap<>(cards));
        limits = Collections.unmodifiableMap(new LinkedHashMap<>(limits));
        cautions = Collections.unmodifiableMap(new LinkedHashMap<>(cautions));
        remedies = Collections.unmodifiableMap(new LinkedHashMap<>(remedies));
        diagnoses = List.copyOf(diagnoses);
        rules = List.copyOf(rules);
        models = List.copyOf(models);
        replaced = Collections.unmodifiableMap(new LinkedHashMap<>(replaced));
    }

    /** The card that must be there. */
    public Card card(String id) {
        return Optional.ofNullable(cards.get(id))
                .orElseThrow(() -> new IllegalStateException("no card is called " + id));
    }

    public Band band(RuleEntry rule) {
        return card(rule.card())
                .band(rule.band())
                .orElseThrow(() -> new IllegalStateException("the card of " + rule.name() + " has no such band"));
    }

    public Collection<Limit> allLimits() {
        return limits.values();
    }

    /** The same book with other limits in force. */
    public Book withLimits(Map<String, Limit> others) {
        return new Book(name, version, hash, cards, others, cautions, remedies, diagnoses, rules, models, replaced);
    }

    /** What is said of a check that a pack put in the place of the rulebook's own; empty of all others. */
    public Optional<String> replacement(String card) {
        return Optional.ofNullable(replaced.get(card)).map(pack -> "put in the place of the rulebook's own by " + pack);
    }
}
