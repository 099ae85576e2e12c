package gaugeglass.steam.reckon;

import gaugeglass.engine.book.Source;
import gaugeglass.engine.book.Source.Known;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** The documents that figures of the reckonings come from, by the short name that the tables use. */
final class Sources {
    private static final Map<String, Source> ALL = all();

    private Sources() {}

    static Source of(String id) {
        Source source = ALL.get(id);
        if (source == null) {
            throw new IllegalStateException("no source " + id);
        }
        return source;
    }

    private static Map<String, Source> all() {
        Map<String, Source> all = new LinkedHashMap<>();
        for (Table.Row row : Table.read("sources.csv").rows()) {
            Known known = Known.valueOf(row.text("known").replace('-', '_').toUpperCase(Locale.ROOT));
            all.put(row.text("id"), new Source(row.text("name"), known));
        }
        return all;
    }
}
