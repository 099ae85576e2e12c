package gaugeglass.engine.drools;

import java.util.List;
import java.util.Map;

/**
 * One match of one rule.
 *
 * @param facts what matched, pattern by pattern
 * @param bound the values of the rule's own variables, by name without the {@code $}
 */
public record Evidence(List<Object> facts, Map<String, Object> bound) {}
