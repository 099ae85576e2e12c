package gaugeglass.cli.walk;

import java.util.List;

/**
 * An answer as it was taken.
 *
 * @param values for each part of the item, in order
 * @param typed as typed
 * @param echo as understood
 * @param note what goes with it, such as times
 */
record Taken(List<Object> values, String typed, String echo, String note) {}
