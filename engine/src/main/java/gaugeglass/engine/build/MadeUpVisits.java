package gaugeglass.engine.build;

import gaugeglass.engine.book.Limit;
import gaugeglass.engine.observation.Answer;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.observation.Roster;
import gaugeglass.engine.observation.State;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.vocabulary.Component;
import gaugeglass.engine.vocabulary.ItemType;
import gaugeglass.engine.vocabulary.Kind;
import gaugeglass.engine.vocabulary.Vocabulary;
import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Random;

/** Visits made up from the vocabulary, many of whose readings lie on or beside a limit. */
public final class MadeUpVisits {
    private final Vocabulary vocabulary;
    private final List<Limit> limits;
    private final LocalDate date;
    private final Random random;

    public MadeUpVisits(Vocabulary vocabulary, Collection<Limit> limits, LocalDate date, long seed) {
        this.vocabulary = vocabulary;
        this.limits = List.copyOf(limits);
        this.date = date;
        this.random = new Random(seed);
    }

    /**
     * The next visit.
     *
     * @param share how many of the questions are answered, 0 to 1
     * @param again how many of those are answered a second time, as left
     */
    public Observations next(double share, double again) {
        Observations.Builder builder = Observations.of(vocabulary, "1");
        for (Kind kind : vocabulary.kinds()) {
            if (kind.isCounted()) {
                int tags = random.nextInt(Math.min(3, kind.most()) + 1);
                for (int i = 0; i < tags; i++) {
                    builder.tag(
                            kind.id(),
                            String.valueOf((char) ('A' + i)),
                            random.nextDouble() >= again
                                    ? Roster.Presence.THROUGHOUT
                                    : random.nextBoolean() ? Roster.Presence.AS_FOUND : Roster.Presence.AS_LEFT);
                }
                if (random.nextDouble() < share + 0.2) {
                    int more = random.nextInt(4) == 0 && tags < kind.most() ? 1 : 0;
                    builder.fitted(kind.id(), State.AS_FOUND, tags + more);
                }
            }
        }
        Observations rosters = builder.build();
        for (ItemType item : vocabulary.items()) {
            if (item.isReckoned()) {
                continue;
            }
            for (List<Object> keys : keys(item, rosters)) {
                if (random.nextDouble() < share) {
                    builder.put(answer(item, keys, State.AS_FOUND));
                    if (random.nextDouble() < again) {
                        builder.put(answer(item, keys, State.AS_LEFT));
                    }
                }
            }
        }
        return builder.build();
    }

    private Answer answer(ItemType item, List<Object> keys, State state) {
        return random.nextInt(20) == 0
                ? Answer.unread(item, keys, state, "not to be read")
                : Answer.seen(item, keys, state, item.make(keys, row(item)));
    }

    private List<List<Object>> keys(ItemType item, Observations rosters) {
        Kind kind = vocabulary.kind(item.kind()).orElseThrow();
        Kind counted = vocabulary.counted(kind);
        if (!counted.isCounted()) {
            return List.of(List.of());
        }
        List<List<Object>> keys = new ArrayList<>();
        for (Roster.Tag tag : rosters.roster(counted.id()).tags()) {
            if (kind.isFixed()) {
                vocabulary.members(kind).forEach(member -> keys.add(List.of(tag.name(), member)));
            } else {
                keys.add(List.of(tag.name()));
            }
        }
        return keys;
    }

    private List<Object> row(ItemType item) {
        List<Object> row = new ArrayList<>();
        item.values().forEach(component -> row.add(value(item, component)));
        return row;
    }

    private Object value(ItemType item, Component component) {
        List<Object> near = new ArrayList<>();
        switch (component.form()) {
            case CHOICE:
                return pick(List.of(item.constants(component)));
            case TEXT:
                return "text";
            case DATE:
                near.add(date.minusDays(random.nextInt(9000)));
                for (Limit limit : limits) {
                    if (limit.value() instanceof Period period) {
                        near.add(date.minus(period).plusDays(random.nextInt(3) - 1));
                    }
                }
                return pick(near);
            case COUNT:
                int from = Integer.parseInt(component.from());
                int to = Integer.parseInt(component.to());
                return from + random.nextInt(Math.min(to - from, 4) + 1);
            default:
                Quantity least = component.least();
                Quantity most = component.most();
                for (Limit limit : limits) {
                    if (limit.value() instanceof Quantity quantity && quantity.dimension() == least.dimension()) {
                        near.add(quantity);
                        Limits.moved(limit).forEach(moved -> near.add(moved.value()));
                    }
                }
                near.removeIf(one -> ((Quantity) one).compareTo(least) < 0 || ((Quantity) one).compareTo(most) > 0);
                if (near.isEmpty() || random.nextInt(3) == 0) {
                    return least.plus(most.minus(least).times(Rational.of(random.nextInt(101), 100)));
                }
                return pick(near);
        }
    }

    private <T> T pick(List<T> all) {
        return all.get(random.nextInt(all.size()));
    }
}
