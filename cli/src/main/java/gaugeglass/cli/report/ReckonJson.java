package gaugeglass.cli.report;

import gaugeglass.engine.book.Source;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.steam.handbook.Entry;
import gaugeglass.steam.handbook.Input;
import gaugeglass.steam.reckon.Worked;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reckonings as trees for JSON.
 *
 * <p>Numbers are texts: as a decimal of twelve significant digits, and beside it the exact fraction. A number of JSON would
 * be read as a double.
 */
public final class ReckonJson {
    private static final MathContext DIGITS = new MathContext(12, RoundingMode.HALF_UP);

    private ReckonJson() {}

    /** What a reckoning is and wants. */
    public static Map<String, Object> entry(Entry entry) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("name", entry.name());
        tree.put("title", entry.title());
        tree.put("range", entry.range());
        List<Object> inputs = new ArrayList<>();
        for (Input input : entry.inputs()) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("name", input.name());
            one.put("what", input.what());
            one.put("form", input.kind().form());
            one.put("required", input.need() == Input.Need.REQUIRED);
            input.standIn().ifPresent(standIn -> one.put("otherwise", standIn));
            inputs.add(one);
        }
        tree.put("inputs", inputs);
        tree.put("example", entry.example());
        return tree;
    }

    /** The same with its example worked out. */
    public static Map<String, Object> explained(Entry entry, Worked example) {
        Map<String, Object> tree = entry(entry);
        tree.put("worked", sheet(example));
        return tree;
    }

    /** A reckoning worked out. */
    public static Map<String, Object> worked(Entry entry, Worked worked) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("name", entry.name());
        tree.putAll(sheet(worked));
        return tree;
    }

    private static Map<String, Object> sheet(Worked worked) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("answer", worked.main());
        tree.putAll(answer(worked.answer()));
        List<Object> given = new ArrayList<>();
        for (Worked.Given one : worked.given()) {
            Map<String, Object> tell = new LinkedHashMap<>();
            tell.put("symbol", one.symbol());
            tell.put("what", one.what());
            tell.put("value", one.value());
            given.add(tell);
        }
        tree.put("given", given);
        List<Object> lines = new ArrayList<>();
        for (Worked.Line line : worked.lines()) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("what", line.what());
            one.put("symbol", line.symbol());
            one.put("formula", line.formula());
            one.put("numbers", line.numbers());
            one.putAll(answer(line.answer()));
            lines.add(one);
        }
        tree.put("lines", lines);
        tree.put("basis", worked.basis().word());
        List<Object> sources = new ArrayList<>();
        for (Source source : worked.sources()) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("name", source.name());
            one.put("known", source.known().word());
            sources.add(one);
        }
        tree.put("sources", sources);
        tree.put("warnings", worked.warnings());
        return tree;
    }

    private static Map<String, Object> answer(Worked.Answer answer) {
        boolean isAmount = answer instanceof Worked.Amount;
        Rational number = isAmount ? ((Worked.Amount) answer).quantity().value() : ((Worked.Count) answer).number();
        String unit = isAmount ? ((Worked.Amount) answer).quantity().unit().symbol() : ((Worked.Count) answer).of();
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("value", number.toBigDecimal(DIGITS).stripTrailingZeros().toPlainString());
        tree.put("exact", number.numerator() + "/" + number.denominator());
        tree.put("unit", unit);
        tree.put("shown", answer.shown());
        return tree;
    }
}
