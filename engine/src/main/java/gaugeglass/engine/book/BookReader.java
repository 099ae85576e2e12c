package gaugeglass.engine.book;

import gaugeglass.engine.quantity.Dimension;
import gaugeglass.engine.quantity.Periods;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.QuantityFormatException;
import gaugeglass.engine.reading.Form;
import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.Stage;
import java.time.Period;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads cards, limits, cautions, remedies, diagnoses and index entries, as people write them and as
 * they are stored.
 */
public final class BookReader {
    private BookReader() {}

    /** A card; its scenarios are left to whoever proves it. */
    public static Card card(Form form, String subject) {
        form.node("scenarios");
        boolean sign = form.text("sign", "no").equals("yes");
        Map<String, Band> bands = new LinkedHashMap<>();
        form.form("bands").byKey().forEach((name, band) -> {
            Map<String, String> variants = new LinkedHashMap<>();
            if (band.has("variants")) {
                Form all = band.form("variants");
                all.fields().all().keySet().forEach(variant -> variants.put(variant, all.text(variant)));
            }
            Urgency urgency = band.word("urgency", Urgency.class, Urgency.WATCH);
            if (!sign && !band.has("urgency")) {
                band.text("urgency");
            }
            bands.put(name, new Band(name, urgency, band.text("seen"), variants));
            band.close();
        });
        if (bands.isEmpty()) {
            form.wrong("bands", "a card has at least one band", "bands: with a name, an urgency and what was seen", "");
        }
        Card card = new Card(
                form.text("id"),
                form.text("subject", subject),
                form.text("title"),
                form.text("about", ""),
                form.word("stage", Stage.class, Stage.COLD),
                sign
                        ? form.word("consequence", Consequence.class, Consequence.COMFORT)
                        : requiredWord(form, "consequence", Consequence.class, Consequence.PEOPLE),
                form.text("release", "no").equals("yes"),
                sign,
                java.util.Collections.unmodifiableMap(bands),
                sign ? form.text("why", "") : form.text("why"),
                sign ? form.text("do", "") : form.text("do"),
                form.text("remedy", ""),
                form.texts("cautions"),
                sign ? form.text("not-when", "") : form.text("not-when"),
                requiredWord(form, "basis", Basis.class, Basis.PRACTICE),
                sources(form),
                form.text("status", "trial"),
                form.text("since", "0.1.0"),
                form.text("file", form.file()),
                Integer.parseInt(form.text("line", String.valueOf(form.fields().line()))));
        if (!form.has("stage")) {
            form.text("stage");
        }
        form.close();
        return card;
    }

    private static <E extends Enum<E>> E requiredWord(Form form, String key, Class<E> type, E otherwise) {
        if (!form.has(key)) {
            form.text(key);
        }
        return form.word(key, type, otherwise);
    }

    /** The documents under {@code sources}; none where there is no such key. */
    public static List<Source> sources(Form form) {
        List<Source> sources = new ArrayList<>();
        for (Form source : form.forms("sources")) {
            sources.add(new Source(
                    source.text("name"), requiredWord(source, "known", Source.Known.class, Source.Known.MEMORY_LOW)));
            source.close();
        }
        return sources;
    }

    /** A limit, with its value read in what it measures. */
    public static Limit limit(Form form, String layer) {
        String written = form.text("value");
        String measures = form.text("measures");
        Limit limit = new Limit(
                form.text("id"),
                value(form, "value", written, measures),
                written,
                form.text("meaning"),
                requiredWord(form, "safer", Limit.Safer.class, Limit.Safer.NEITHER),
                form.text("least", ""),
                form.text("most", ""),
                form.text("step"),
                requiredWord(form, "basis", Basis.class, Basis.STANDARD),
                sources(form),
                form.text("review-by", ""),
                form.text("layer", layer));
        for (String key : List.of("least", "most")) {
            if (form.has(key)) {
                value(form, key, form.text(key), measures);
            }
        }
        form.close();
        return limit;
    }

    /** Reads a limit's value: a quantity of the named dimension, a period or a count. */
    private static Object value(Form form, String key, String text, String measures) {
        try {
            return value(text, measures);
        } catch (QuantityFormatException e) {
            form.wrong(key, e.problem(), e.expected(), e.nearest().orElse(""));
        } catch (IllegalArgumentException e) {
            form.wrong(key, String.valueOf(e.getMessage()), "a " + measures, "");
        }
        return Period.ZERO;
    }

    /** Reads a value of the kind that {@code measures} names. */
    public static Object value(String text, String measures) {
        if (measures.equals("period")) {
            return Periods.parse(text);
        }
        if (measures.equals("count")) {
            return Integer.valueOf(text);
        }
        for (Dimension dimension : Dimension.values()) {
            if (Words.of(dimension).equals(measures)) {
                return Quantity.parse(text, dimension);
            }
        }
        throw new IllegalArgumentException("\"" + measures + "\" is nothing a limit can measure");
    }

    /** What a value measures, as it is written in the table. */
    public static String measures(Object value) {
        if (value instanceof Period) {
            return "period";
        }
        return value instanceof Quantity quantity ? Words.of(quantity.dimension()) : "count";
    }

    public static Caution caution(Form form) {
        Caution caution = new Caution(form.text("id"), form.text("title"), form.text("text"));
        form.close();
        return caution;
    }

    public static Remedy remedy(Form form) {
        Remedy remedy = new Remedy(form.text("id"), form.text("work"), form.texts("parts"), form.texts("take-along"));
        form.close();
        return remedy;
    }

    public static Diagnosis diagnosis(Form form) {
        Diagnosis diagnosis = new Diagnosis(
                form.text("id"),
                form.text("cause"),
                form.text("about", ""),
                clues(form, "for"),
                clues(form, "against"),
                form.text("settled-by"),
                form.text("settle"),
                number(form, "enough", 3));
        form.close();
        return diagnosis;
    }

    private static List<Clue> clues(Form form, String key) {
        List<Clue> clues = new ArrayList<>();
        for (Form clue : form.forms(key)) {
            boolean inOrder = clue.has("in-order");
            String card = inOrder ? clue.text("in-order") : clue.text("found");
            clue.has("found");
            clues.add(new Clue(
                    card,
                    inOrder ? Clue.When.IN_ORDER : Clue.When.FOUND,
                    number(clue, "weight", 1),
                    clue.text("says")));
            clue.close();
        }
        return clues;
    }

    private static int number(Form form, String key, int otherwise) {
        String text = form.text(key, String.valueOf(otherwise));
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException e) {
            form.wrong(key, "\"" + text + "\" is no whole number", "a whole number", "");
            return otherwise;
        }
    }
}
