package gaugeglass.cli.picture;

import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.text.Words;
import gaugeglass.engine.vocabulary.ItemType;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The pictures that can be drawn of one unit. Only what was seen is drawn, as it was left; what could not be read is
 * written as such.
 */
public final class PicturesSeen {
    private static final String GAUGE = "gauge";
    private static final String CONTROL = "control";
    private static final String CUTOFF = "cutoff";

    /** The observations that pictures are drawn from. A vocabulary without them gives no pictures. */
    static final List<String> ITEMS = List.of(
            "gauge.role",
            "gauge.unit",
            "gauge.top-figure",
            "gauge.dial-start",
            "gauge.at-cut-out",
            "gauge.with-steam",
            "control.role",
            "control.dial",
            "control.cut-in-mark",
            "control.cut-out-mark",
            "control.differential-mark",
            "level.apparent",
            "level.proven",
            "level.normal",
            "feeder.level",
            "cutoff.mark");

    private final Observations observations;
    private final String prefix;

    private PicturesSeen(Observations observations, String prefix) {
        this.observations = observations;
        this.prefix = prefix;
    }

    /**
     * Draws what was seen of a unit.
     *
     * @param prefix begins the id of each picture
     * @return the glass, then each gauge in the roster's order; none where nothing of them was looked at
     */
    public static List<Picture> of(Observations observations, String prefix) {
        return new PicturesSeen(observations, prefix).all();
    }

    private List<Picture> all() {
        List<Picture> pictures = new ArrayList<>();
        glass().ifPresent(pictures::add);
        int number = 0;
        for (String tag : observations.roster(GAUGE).tags(State.AS_LEFT)) {
            Optional<Picture> dial = dial(tag, ++number);
            dial.ifPresent(pictures::add);
        }
        return pictures;
    }

    // ---- the glass

    private Optional<Picture> glass() {
        List<Glass.Level> marks = new ArrayList<>();
        List<String> unread = new ArrayList<>();
        for (String tag : observations.roster(CUTOFF).tags(State.AS_LEFT)) {
            quantity("cutoff.mark", List.of(tag), 0)
                    .ifPresent(height -> marks.add(new Glass.Level("cutoff " + tag, height)));
            unread("cutoff.mark", List.of(tag), "The mark of cutoff " + tag).ifPresent(unread::add);
        }
        quantity("feeder.level", List.of(), 0).ifPresent(height -> marks.add(new Glass.Level("feeder", height)));
        unread("feeder.level", List.of(), "The level at which the feeder begins")
                .ifPresent(unread::add);
        quantity("level.normal", List.of(), 0).ifPresent(height -> marks.add(new Glass.Level("normal line", height)));
        unread("level.normal", List.of(), "The normal water line").ifPresent(unread::add);
        Glass.Seen seen = new Glass.Seen(
                quantity("level.proven", List.of(), 0),
                reason("level.proven", List.of()).orElse(""),
                quantity("level.apparent", List.of(), 0),
                marks,
                unread);
        return seen.hasHeights() ? Optional.of(Glass.of(prefix + "-glass", seen)) : Optional.empty();
    }

    // ---- a dial

    private Optional<Picture> dial(String tag, int number) {
        List<Object> keys = List.of(tag);
        boolean isLookedAt = observations.answers().stream()
                .anyMatch(answer ->
                        answer.item().kind().equals(GAUGE) && answer.keys().equals(keys));
        if (!isLookedAt) {
            return Optional.empty();
        }
        List<Dial.Reading> readings = new ArrayList<>();
        quantity("gauge.with-steam", keys, 0)
                .ifPresent(reading -> readings.add(new Dial.Reading("with steam up", reading)));
        if (readings.isEmpty()) {
            quantity("gauge.at-cut-out", keys, 0)
                    .ifPresent(
                            reading -> readings.add(new Dial.Reading("when the control stopped the burner", reading)));
        }
        boolean isElsewhere =
                word("gauge.role", keys).filter("elsewhere"::equals).isPresent();
        return Optional.of(Dial.of(
                prefix + "-gauge-" + number,
                new Dial.Seen(
                        tag,
                        word("gauge.unit", keys).flatMap(PicturesSeen::unit),
                        value("gauge.top-figure", keys, 0).map(Integer.class::cast),
                        word("gauge.dial-start", keys).filter("vacuum"::equals).isPresent(),
                        reason("gauge.unit", keys)
                                .or(() -> reason("gauge.top-figure", keys))
                                .orElse(""),
                        readings,
                        isElsewhere ? List.of() : ranges())));
    }

    private static Optional<Unit> unit(String word) {
        return Optional.ofNullable(
                switch (word) {
                    case "psi" -> Unit.PSI;
                    case "ounces" -> Unit.OUNCE_PER_SQUARE_INCH;
                    case "inches-of-water" -> Unit.INCH_OF_WATER;
                    case "inches-of-mercury" -> Unit.INCH_OF_MERCURY;
                    case "kilopascals" -> Unit.KILOPASCAL;
                    case "millibars" -> Unit.MILLIBAR;
                    case "bars" -> Unit.BAR;
                    default -> null;
                });
    }

    private List<Dial.Range> ranges() {
        List<Dial.Range> ranges = new ArrayList<>();
        for (String tag : observations.roster(CONTROL).tags(State.AS_LEFT)) {
            List<Object> keys = List.of(tag);
            Optional<String> role = word("control.role", keys);
            boolean isLimit = role.filter("high-limit"::equals).isPresent();
            if (isLimit || role.filter("operating"::equals).isPresent()) {
                ranges.add(range((isLimit ? "high limit " : "operating control ") + tag, keys, isLimit));
            }
        }
        return ranges;
    }

    /** What a control's marks mean depends on what is printed beside them; where that was not seen, they mean nothing. */
    private Dial.Range range(String name, List<Object> keys, boolean isLimit) {
        Optional<Quantity> in = quantity("control.cut-in-mark", keys, 0);
        Optional<Quantity> out = quantity("control.cut-out-mark", keys, 0);
        Optional<Quantity> between = quantity("control.differential-mark", keys, 0);
        return switch (word("control.dial", keys).orElse("")) {
            case "cut-in-plus-differential" ->
                new Dial.Range(name, in, in.flatMap(start -> between.map(start::plus)), isLimit);
            case "cut-out-less-differential" ->
                new Dial.Range(name, out.flatMap(end -> between.map(end::minus)), out, isLimit);
            case "cut-in-and-cut-out" -> new Dial.Range(name, in, out, isLimit);
            case "cut-out-only" -> new Dial.Range(name, Optional.empty(), out, isLimit);
            default -> new Dial.Range(name, Optional.empty(), Optional.empty(), isLimit);
        };
    }

    // ---- answers, as left where anything was done

    private Optional<Answer> answer(String id, List<Object> keys) {
        Optional<ItemType> item = observations.vocabulary().item(id);
        return item.flatMap(type -> observations
                .answer(type, keys, State.AS_LEFT)
                .or(() -> observations.answer(type, keys, State.AS_FOUND)));
    }

    private Optional<Object> value(String id, List<Object> keys, int part) {
        return answer(id, keys).flatMap(answer -> answer.fact()
                .map(fact -> answer.item().valuesOf(fact).get(part)));
    }

    private Optional<Quantity> quantity(String id, List<Object> keys, int part) {
        return value(id, keys, part).map(Quantity.class::cast);
    }

    private Optional<String> word(String id, List<Object> keys) {
        return value(id, keys, 0).map(value -> Words.of((Enum<?>) value));
    }

    private Optional<String> reason(String id, List<Object> keys) {
        return answer(id, keys).map(Answer::unread).filter(reason -> !reason.isEmpty());
    }

    private Optional<String> unread(String id, List<Object> keys, String what) {
        return reason(id, keys).map(reason -> what + " could not be read (" + reason + ").");
    }
}
