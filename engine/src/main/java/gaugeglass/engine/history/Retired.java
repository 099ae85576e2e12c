package gaugeglass.engine.history;

import gaugeglass.engine.reading.Form;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * An id that was released and is no more.
 *
 * @param sort what it was the id of
 * @param id never given to anything else
 * @param since the version that no longer has it
 * @param instead the ids of the same sort that stand in its place; may be none
 * @param why the reason, as a sentence
 */
public record Retired(Sort sort, String id, String since, List<String> instead, String why) {
    public Retired {
        instead = List.copyOf(instead);
    }

    /** Reads one as {@link #write} gives it; what is wrong is left with the form. */
    public static Retired read(Form form) {
        Sort sort = form.word("sort", Sort.class, Sort.CHECK);
        if (!form.has("sort")) {
            form.text("sort");
        }
        Retired retired =
                new Retired(sort, form.text("id"), form.text("since"), form.texts("instead"), form.text("why"));
        if (!retired.since().isEmpty() && !Versions.isVersion(retired.since())) {
            form.wrong("since", "\"" + retired.since() + "\" is no version", "a version such as 1.2.0", "");
        }
        form.close();
        return retired;
    }

    /** As keys and texts. */
    Map<String, Object> write() {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("sort", sort.word());
        all.put("id", id);
        all.put("since", since);
        all.put("instead", instead);
        all.put("why", why);
        return all;
    }

    /** What stands in its place, in words. */
    public String replacement() {
        return instead.isEmpty() ? "nothing in its place" : String.join(" and ", instead);
    }
}
