package gaugeglass.engine.vocabulary;

import gaugeglass.engine.reading.Form;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Writes a vocabulary into a stored rulebook and reads it back without loading the observation
 * classes.
 */
public final class StoredVocabulary {
    private StoredVocabulary() {}

    public static Map<String, Object> write(Vocabulary vocabulary) {
        List<Object> kinds = new ArrayList<>();
        for (Kind kind : vocabulary.kinds()) {
            Map<String, Object> fields = new LinkedHashMap<>();
            fields.put("id", kind.id());
            fields.put("plural", kind.plural());
            fields.put("label", kind.label());
            fields.put("placement", kind.placement().name());
            put(fields, "parent", kind.parent());
            put(fields, "members", kind.members());
            put(fields, "most", kind.most() == 0 ? "" : String.valueOf(kind.most()));
            kinds.add(fields);
        }
        List<Object> items = new ArrayList<>();
        for (ItemType item : vocabulary.items()) {
            Map<String, Object> fields = new LinkedHashMap<>();
            fields.put("id", item.id());
            fields.put("of", item.kind());
            fields.put("stage", item.stage().name());
            fields.put("ask", item.ask());
            put(fields, "look", item.look());
            put(fields, "structural", item.isStructural() ? "yes" : "");
            put(fields, "carried", item.isCarried() ? "yes" : "");
            put(fields, "reckoned", item.isReckoned() ? "yes" : "");
            if (!item.unreadBecause().isEmpty()) {
                fields.put("unread-because", item.unreadBecause());
            }
            fields.put("class", item.className());
            List<Object> parts = new ArrayList<>();
            for (Component component : item.components()) {
                Map<String, Object> part = new LinkedHashMap<>();
                part.put("name", component.name());
                part.put("form", component.form().name());
                put(part, "key", component.key() ? "yes" : "");
                put(part, "type", component.type());
                if (!component.choices().isEmpty()) {
                    part.put("choices", component.choices());
                }
                put(part, "unit", component.unitName());
                put(part, "from", component.from());
                put(part, "to", component.to());
                parts.add(part);
            }
            fields.put("parts", parts);
            items.add(fields);
        }
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("kinds", kinds);
        all.put("items", items);
        return all;
    }

    private static void put(Map<String, Object> fields, String key, String text) {
        if (!text.isEmpty()) {
            fields.put(key, text);
        }
    }

    public static Vocabulary read(Form form, ClassLoader loader) {
        List<Kind> kinds = new ArrayList<>();
        for (Form kind : form.forms("kinds")) {
            kinds.add(new Kind(
                    kind.text("id"),
                    kind.text("plural"),
                    kind.text("label"),
                    Kind.Placement.valueOf(kind.text("placement")),
                    kind.text("parent", ""),
                    kind.text("members", ""),
                    Integer.parseInt(kind.text("most", "0"))));
        }
        List<ItemType> items = new ArrayList<>();
        for (Form item : form.forms("items")) {
            List<Component> parts = new ArrayList<>();
            for (Form part : item.forms("parts")) {
                parts.add(new Component(
                        part.text("name"),
                        Component.Form.valueOf(part.text("form")),
                        part.text("key", "").equals("yes"),
                        part.text("type", ""),
                        part.texts("choices"),
                        part.text("unit", ""),
                        part.text("from", ""),
                        part.text("to", "")));
            }
            items.add(new ItemType(
                    item.text("id"),
                    item.text("of"),
                    Stage.valueOf(item.text("stage")),
                    item.text("ask"),
                    item.text("look", ""),
                    item.text("structural", "").equals("yes"),
                    item.text("carried", "").equals("yes"),
                    item.text("reckoned", "").equals("yes"),
                    item.texts("unread-because"),
                    item.text("class"),
                    parts,
                    loader));
        }
        return new Vocabulary(kinds, items);
    }
}
