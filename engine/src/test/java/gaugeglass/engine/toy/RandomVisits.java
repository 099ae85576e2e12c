package gaugeglass.engine.toy;

import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.Roster.Presence;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.vocabulary.Component;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Makes random observations of any vocabulary; the same seed makes the same ones. */
public final class RandomVisits {
    /** The day before which all random dates lie. */
    public static final LocalDate DAY = LocalDate.of(2026, 9, 14);

    private static final String[] PIECES = {
        "a",
        "é",
        "B2",
        " ",
        "  ",
        ": ",
        " #",
        "#",
        "-",
        "- ",
        "\"",
        "'",
        "“",
        "”",
        "{",
        "}",
        "[",
        "]",
        ",",
        "&",
        "*",
        "!",
        "|",
        ">",
        "%",
        "@",
        "`",
        "\n",
        "\t",
        "\u00A0",
        "\u202F",
        "\u2028",
        "\u0085",
        "🔧",
        "null",
        "~",
        "yes",
        "1.5",
        "<<",
        "\u001B[2J",
        "\\",
        "?",
        "=",
        "漢",
        " | "
    };

    private final Vocabulary vocabulary;
    private final Random random;

    public RandomVisits(Vocabulary vocabulary, long seed) {
        this.vocabulary = vocabulary;
        this.random = new Random(seed);
    }

    /** Observations of one unit; about a third of all questions stays open, and some could not be read. */
    public Observations next(String unit) {
        Observations.Builder builder = Observations.of(vocabulary, unit);
        for (Kind kind : vocabulary.kinds()) {
            if (kind.isCounted()) {
                roster(builder, kind);
            }
        }
        Observations rosters = builder.build();
        for (ItemType item : vocabulary.items()) {
            if (!item.isReckoned()) {
                Kind kind = vocabulary.kind(item.kind()).orElseThrow();
                for (List<Object> keys : keys(rosters, kind)) {
                    answers(builder, rosters, item, kind, keys);
                }
            }
        }
        if (random.nextInt(3) == 0) {
            builder.dispute(new Observations.Dispute("some.rule", "", text()));
        }
        return builder.build();
    }

    private void roster(Observations.Builder builder, Kind kind) {
        int way = random.nextInt(5);
        if (way == 0) {
            return;
        }
        if (way == 1) {
            builder.uncounted(kind.id(), text());
            return;
        }
        int number = random.nextInt(kind.most() + 1);
        builder.fitted(kind.id(), State.AS_FOUND, number);
        int described = number == 0 ? 0 : random.nextInt(number + 1);
        for (int i = 0; i < described; i++) {
            builder.tag(kind.id(), "T" + i, random.nextInt(6) == 0 ? Presence.AS_FOUND : Presence.THROUGHOUT);
        }
        if (random.nextInt(6) == 0 && number < kind.most()) {
            builder.tag(kind.id(), "new one", Presence.AS_LEFT);
        }
        if (random.nextInt(6) == 0) {
            builder.fitted(kind.id(), State.AS_LEFT, kind.most());
        }
    }

    private List<List<Object>> keys(Observations rosters, Kind kind) {
        List<List<Object>> all = new ArrayList<>();
        switch (kind.placement()) {
            case COUNTED:
                rosters.roster(kind.id()).tags().forEach(tag -> all.add(List.of(tag.name())));
                break;
            case FIXED:
                rosters.roster(kind.parent()).tags().forEach(tag -> vocabulary
                        .members(kind)
                        .forEach(member -> all.add(List.of(tag.name(), member))));
                break;
            default:
                all.add(List.of());
        }
        return all;
    }

    private void answers(
            Observations.Builder builder, Observations rosters, ItemType item, Kind kind, List<Object> keys) {
        Presence presence = keys.isEmpty()
                ? Presence.THROUGHOUT
                : rosters.roster(vocabulary.counted(kind).id()).tags().stream()
                        .filter(tag -> tag.name().equals(keys.get(0)))
                        .findFirst()
                        .orElseThrow()
                        .presence();
        if (presence != Presence.AS_LEFT && random.nextInt(3) > 0) {
            builder.put(answer(item, keys, State.AS_FOUND));
        }
        if (presence != Presence.AS_FOUND && random.nextInt(presence == Presence.AS_LEFT ? 2 : 5) == 0) {
            builder.put(answer(item, keys, State.AS_LEFT));
        }
    }

    private Answer answer(ItemType item, List<Object> keys, State state) {
        boolean plain = random.nextBoolean();
        String note = plain ? "" : text();
        List<String> photos = plain || random.nextBoolean() ? List.of() : List.of("a.jpg", text());
        String at = random.nextInt(3) > 0 ? "" : "09:" + (10 + random.nextInt(3));
        if (random.nextInt(5) == 0) {
            return new Answer(item, keys, state, Optional.empty(), text(), note, photos, at, "");
        }
        List<Object> values = new ArrayList<>();
        for (Component component : item.values()) {
            values.add(value(item, component));
        }
        return new Answer(item, keys, state, Optional.of(item.make(keys, values)), "", note, photos, at, "");
    }

    private Object value(ItemType item, Component component) {
        return switch (component.form()) {
            case CHOICE ->
                item.constants(component)[random.nextInt(component.choices().size())];
            case QUANTITY -> {
                Rational from = component.least().value();
                Rational span = component.most().value().minus(from);
                yield Quantity.of(from.plus(span.times(Rational.of(random.nextInt(97), 96))), component.unit());
            }
            case COUNT -> {
                int from = Integer.parseInt(component.from());
                yield from + random.nextInt(Integer.parseInt(component.to()) - from + 1);
            }
            case DATE -> DAY.minusDays(random.nextInt(20_000));
            case TEXT -> text();
        };
    }

    /** A text with whatever upsets a reader, without spaces at its ends. */
    private String text() {
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(5); i >= 0; i--) {
            text.append(PIECES[random.nextInt(PIECES.length)]);
        }
        String stripped = text.toString().strip();
        return stripped.isEmpty() ? "x" : stripped;
    }
}
