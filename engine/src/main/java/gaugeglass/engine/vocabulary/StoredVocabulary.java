package gaugeglass.engine.vocabulary;

import gaugeglass.engine.text.PackedReader;
import gaugeglass.engine.text.PackedWriter;
import java.util.List;

/** Writes a vocabulary into a stored rulebook and reads it back without loading the observation classes. */
public final class StoredVocabulary {
    private static final Kind.Placement[] PLACEMENTS = Kind.Placement.values();
    private static final Stage[] STAGES = Stage.values();
    private static final Component.Form[] FORMS = Component.Form.values();

    private StoredVocabulary() {}

    public static void write(PackedWriter out, Vocabulary vocabulary) {
        out.list(vocabulary.kinds(), StoredVocabulary::kind);
        out.list(vocabulary.items(), StoredVocabulary::item);
    }

    private static void kind(PackedWriter out, Kind kind) {
        out.text(kind.id());
        out.text(kind.plural());
        out.text(kind.label());
        out.constant(kind.placement());
        out.text(kind.parent());
        out.text(kind.members());
        out.number(kind.most());
    }

    private static void item(PackedWriter out, ItemType item) {
        out.text(item.id());
        out.text(item.kind());
        out.constant(item.stage());
        out.text(item.ask());
        out.text(item.look());
        out.flag(item.isStructural());
        out.flag(item.isCarried());
        out.flag(item.isReckoned());
        out.texts(item.unreadBecause());
        out.text(item.className());
        out.list(item.components(), StoredVocabulary::component);
    }

    private static void component(PackedWriter out, Component component) {
        out.text(component.name());
        out.constant(component.form());
        out.flag(component.key());
        out.text(component.type());
        out.texts(component.choices());
        out.text(component.unitName());
        out.text(component.from());
        out.text(component.to());
    }

    public static Vocabulary read(PackedReader in, ClassLoader loader) {
        List<Kind> kinds = in.list(StoredVocabulary::kind);
        return new Vocabulary(kinds, in.list(one -> item(one, loader)));
    }

    private static Kind kind(PackedReader in) {
        return new Kind(in.text(), in.text(), in.text(), in.constant(PLACEMENTS), in.text(), in.text(), in.number());
    }

    private static ItemType item(PackedReader in, ClassLoader loader) {
        return new ItemType(
                in.text(),
                in.text(),
                in.constant(STAGES),
                in.text(),
                in.text(),
                in.flag(),
                in.flag(),
                in.flag(),
                in.texts(),
                in.text(),
                in.list(StoredVocabulary::component),
                loader);
    }

    private static Component component(PackedReader in) {
        return new Component(
                in.text(), in.constant(FORMS), in.flag(), in.text(), in.texts(), in.text(), in.text(), in.text());
    }
}
